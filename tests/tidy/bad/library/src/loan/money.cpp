// Uses libraries that are not for this floor.
#include <boost/multiprecision/cpp_int.hpp>
#include <fmt/format.h>
#include <unistd.h>

#include <vector>
