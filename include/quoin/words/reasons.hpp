// Why something cannot be had, and what would do instead, in words.
//
//   words_of(WhyNot{.kind = WhyNot::Kind::needs, .names = {"Third garage bay"}}, say)
//       ->  "needs Third garage bay"
#pragma once

#include <optional>
#include <string>

#include <quoin/text/wanted.hpp>
#include <quoin/text/why_not.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

[[nodiscard]] std::string words_of(const WhyNot& why, const Catalogue& say);
/// Empty where there is nothing to say.
[[nodiscard]] std::string words_of(const std::optional<WhyNot>& why, const Catalogue& say);
[[nodiscard]] std::string words_of(const Wanted& wanted, const Catalogue& say);

} // namespace quoin
