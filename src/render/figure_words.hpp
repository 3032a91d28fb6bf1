// Wording what a rechecked figure is, and what it rests on.
#pragma once

#include <string>

#include <quoin/answers/recheck.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// "principal and interest, a month"
[[nodiscard]] std::string label_words(const FigureLabel& label, const Catalogue& say);
/// "fha annual_fee: ltv > 95, term > 180"; empty: none.
[[nodiscard]] std::string rule_words(const Ground& ground, const Catalogue& say);
/// "HUD Mortgagee Letter 2023-05"; empty: none.
[[nodiscard]] std::string source_words(const Ground& ground, const Catalogue& say);
/// All of it in a line: "rounding 12; fha annual_fee: ltv > 95; from 3/20/2023; published: HUD
/// Mortgagee Letter 2023-05".
[[nodiscard]] std::string ground_words(const Ground& ground, const Catalogue& say);

} // namespace quoin
