// The level payment of a loan: P r (1+r)^n / ((1+r)^n - 1), rounded once, half away from zero.
//
//   level_payment(Money::dollars(250000), Rate 6.5%, Months(360))  ->  $1,580.17
//
// The rate of a month is the yearly rate over twelve, unrounded. A rate of zero divides the loan by
// the months. Terms of 1 to 480 months; loans of 0 and more.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/rate.hpp>

namespace quoin {

/// The correctly rounded payment: the fast path where its proven bound decides, else the exact one.
[[nodiscard]] Money level_payment(Money loan, Rate rate, Months term);

/// The same figure in exact integers: slow, and the arbiter of every other way to reach it.
[[nodiscard]] Money level_payment_exact(Money loan, Rate rate, Months term);

/// The exact payments of many loans at one rate and term, whose powers are formed once.
[[nodiscard]] std::vector<Money> level_payments_exact(std::span<const Money> loans, Rate rate,
                                                      Months term);

/// The same figure in binary floating point with a proven error bound, or nothing where the bound
/// does not separate the value from a rounding tie: next to half a cent, and at a rate of zero.
[[nodiscard]] std::optional<Money> level_payment_fast(Money loan, Rate rate, Months term);

} // namespace quoin
