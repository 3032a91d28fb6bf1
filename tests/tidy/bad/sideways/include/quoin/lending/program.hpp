// A loan program that knows the price book beside it.
#pragma once

#include <quoin/pricebook/option.hpp>
#include <quoin/quoin.hpp>
