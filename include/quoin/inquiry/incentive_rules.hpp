// Which incentives an inquiry may be given, apart from what they may be used for.
#pragma once

#include <optional>

#include <quoin/inquiry/inquiry.hpp>
#include <quoin/text/why_not.hpp>

namespace quoin {

/// Why the plan, the lot or the dates of an inquiry rule an incentive out; nothing: they do not.
/// The lender it may be tied to is not looked at.
[[nodiscard]] std::optional<WhyNot> why_not_given(const Incentive& incentive,
                                                  const Inquiry& inquiry);

/// Why an incentive is not given with the loans of a rate sheet; nothing: it is.
[[nodiscard]] std::optional<WhyNot> why_not_given(const Incentive& incentive,
                                                  const RateSheet* sheet);

} // namespace quoin
