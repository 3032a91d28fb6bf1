// Which of two has cost less, when, in words: of loans, of points, of ways to come by an option.
#pragma once

#include <string>
#include <vector>

#include "words/order.hpp"
#include <quoin/answers/compare.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// "at the closing", "through payment 43", "from payment 44 to 118", "from payment 119 on",
/// "throughout".
[[nodiscard]] std::string when_words(const CostStretch& stretch, const WhenWords& say);

/// "A costs less through payment 43; B costs less from payment 44 on". Stretches in which both
/// cost the same are told too.
[[nodiscard]] std::string order_words(const std::vector<CostStretch>& order,
                                      const std::string& first, const std::string& second,
                                      const Catalogue& say);

/// When points have paid for themselves: for good from a payment on, for a while, or never.
[[nodiscard]] std::string payback_words(const PointsPayback& payback, const Catalogue& say);

} // namespace quoin
