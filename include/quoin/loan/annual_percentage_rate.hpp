// The annual percentage rate by the actuarial method of 12 CFR 1026, Appendix J, for one advance
// and monthly payments, the first of them after a month or an odd first period.
//
//   annual_percentage_rate(Money::dollars(5000), 24 payments of $230)  ->  9.685...  (Appendix
//   J(c)(1)(i))
#pragma once

#include <optional>
#include <span>

#include <quoin/exact/date.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/rate.hpp>

namespace quoin {

/// From the advance to the first payment: whole months, then odd days of a thirtieth of a month
/// each, which discount by simple interest (Appendix J(b)(5)).
struct FirstPeriod {
    int months = 1;
    int odd_days = 0;
};

/// Whole months counted back from the first payment, and the days left over (Appendix J(b)(5)(iv)).
/// Precondition: the advance is not after the first payment.
[[nodiscard]] FirstPeriod first_period(Date advance, Date first_payment);

/// The yearly rate, twelve times the monthly one, at which the payments are worth the amount
/// financed; cut to a millionth of a percent, every digit of it certain, so that fewer digits round
/// correctly. Nothing where no rate from 0 to 100 percent does it. Precondition: no payment is
/// negative.
[[nodiscard]] std::optional<Rate> annual_percentage_rate(Money amount_financed,
                                                         std::span<const Money> payments,
                                                         FirstPeriod first = {});

} // namespace quoin
