// Words: the names that a word of a file may take, each with what it means.
#pragma once

#include <string_view>
#include <utility>
#include <vector>

namespace quoin {

template <class Enum>
using Words = std::vector<std::pair<std::string_view, Enum>>;

} // namespace quoin
