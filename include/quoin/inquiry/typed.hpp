// Figures typed by a person: text read as an amount, a number or a day within bounds.
//
// `name` is the option as it is typed, `expected` is what would do: its kind, and an example where
// it has one; the bounds are added to it. Each throws Refused where the text is not usable.
#pragma once

#include <string>

#include <quoin/exact/date.hpp>
#include <quoin/exact/decimal.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/wanted.hpp>

namespace quoin {

/// Throws Refused with this one problem.
[[noreturn]] void refuse(Problem problem);
/// Throws Refused: an option's text is not what is expected.
[[noreturn]] void refuse_typed(const std::string& name, const std::string& text, Wanted expected);

/// The largest amount that a person may type.
inline constexpr Money most_typed = Money::dollars(1'000'000'000);

/// Both ends are allowed.
[[nodiscard]] Money amount_typed(const std::string& name, const std::string& text, Money least,
                                 Money most, Wanted expected);
[[nodiscard]] Decimal number_typed(const std::string& name, const std::string& text, Decimal least,
                                   Decimal most, Wanted expected);
/// A whole number, or one of months or years.
[[nodiscard]] int whole_typed(const std::string& name, const std::string& text, int least, int most,
                              Wanted::Kind what = Wanted::Kind::whole_number);
/// A yearly rate in percent, from 0 to 100.
[[nodiscard]] Rate rate_typed(const std::string& name, const std::string& text, Wanted expected);
[[nodiscard]] Date day_typed(const std::string& name, const std::string& text);

} // namespace quoin
