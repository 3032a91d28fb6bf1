// Reading.
#include <fmt/format.h>
