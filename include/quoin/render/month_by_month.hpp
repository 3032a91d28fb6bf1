// A schedule as text, as CSV and as JSON.
#pragma once

#include <string>

#include <quoin/answers/month_by_month.hpp>

namespace quoin {

[[nodiscard]] std::string text_of(const MonthByMonthAnswer& answer);
[[nodiscard]] std::string csv_of(const MonthByMonthAnswer& answer);
[[nodiscard]] std::string json_text_of(const MonthByMonthAnswer& answer);

} // namespace quoin
