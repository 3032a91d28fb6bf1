// Reads a price book, though it is below it.
#include "text/reader.hpp"

#include <quoin/exact/money.hpp>
#include <quoin/pricebook/option.hpp>
