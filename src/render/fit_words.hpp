// Why nothing can be chosen for a home, in words.
#pragma once

#include <string>

#include <quoin/answers/fit.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

[[nodiscard]] std::string words(const FitBarred& barred, const Catalogue& say);

/// What a wish that was left out would be instead of.
[[nodiscard]] std::vector<std::string> instead_words(const FitLeftOut& left, const Catalogue& say);

} // namespace quoin
