// Why nothing can be chosen for a home, in words.
#pragma once

#include <string>

#include <quoin/answers/fit.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

[[nodiscard]] std::string words(const FitBarred& barred, const Catalogue& say);

} // namespace quoin
