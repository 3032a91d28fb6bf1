// How figures are written for people: $1,234.56, 6.125%, November 24, 2026.
#pragma once

#include <optional>
#include <string>

#include <quoin/exact/date.hpp>
#include <quoin/exact/decimal.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/rate.hpp>

namespace quoin {

[[nodiscard]] std::string dollars(Money amount);        ///< "$1,234.56", "-$3.00"
[[nodiscard]] std::string signed_dollars(Money amount); ///< "+$12.34", "-$3.00", "$0.00"
[[nodiscard]] std::string grouped(Decimal number);      ///< "1,612", "2.5"
/// A number cut or filled to exactly `places` decimals, half away from zero.
[[nodiscard]] std::string fixed(Decimal number, int places);
[[nodiscard]] std::string percent_text(Decimal percent, int places); ///< "6.125%"
[[nodiscard]] std::string rate_text(Rate rate);                      ///< "6.125%"
/// An APR or a total interest percentage as the federal forms print it: to three decimals, half
/// away from zero, the last zeros dropped (12 CFR 1026.37(o)(4)(ii)): "6.5", "7.005", "7".
[[nodiscard]] std::string disclosed(Decimal percent);
[[nodiscard]] std::string disclosed_text(Decimal percent); ///< "6.5%"
/// An APR likewise, or `none` where there is none.
[[nodiscard]] std::string apr_text(const std::optional<Rate>& apr, const char* none = "none");
[[nodiscard]] std::string english_date(Date date); ///< "November 24, 2026"
[[nodiscard]] std::string spanish_date(Date date); ///< "24 de noviembre de 2026"
[[nodiscard]] std::string short_date(Date date);   ///< "11/24/2026", in tables of either language

} // namespace quoin
