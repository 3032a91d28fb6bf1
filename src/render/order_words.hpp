// Which of two has cost less, when, in words: of loans, of points, of ways to come by an option.
#pragma once

#include <string>
#include <vector>

#include "words/order.hpp"
#include <quoin/answers/compare.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// "at closing", "through payment 43", "from payment 44 through payment 118", "from payment 119
/// on", "the whole time".
[[nodiscard]] std::string when_words(const CostStretch& stretch, const WhenWords& say);

/// "A costs less through payment 43; B costs less from payment 44 on". Stretches in which both
/// cost the same are told too.
[[nodiscard]] std::string order_words(const std::vector<CostStretch>& order,
                                      const std::string& first, const std::string& second,
                                      const Catalogue& say);

/// When points have paid for themselves: for good from a payment on, for a while, or never; a
/// sentence.
[[nodiscard]] std::string payback_words(const PointsPayback& payback, const Catalogue& say);

} // namespace quoin
