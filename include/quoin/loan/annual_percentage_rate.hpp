// The annual percentage rate by the actuarial method of 12 CFR 1026, Appendix J, for one advance
// and monthly payments of which the first falls one month after it.
//
//   annual_percentage_rate(Money::dollars(5000), 24 payments of $230)  ->  9.685...  (Appendix
//   J(c)(1)(i))
#pragma once

#include <optional>
#include <span>

#include <quoin/exact/money.hpp>
#include <quoin/exact/rate.hpp>

namespace quoin {

/// The yearly rate, twelve times the monthly one, at which the payments are worth the amount
/// financed; cut to a millionth of a percent, so that fewer digits round correctly. Nothing where
/// no rate from 0 to 100 percent does it.
[[nodiscard]] std::optional<Rate> annual_percentage_rate(Money amount_financed,
                                                         std::span<const Money> payments);

} // namespace quoin
