// Date: a day of the calendar that exists, written as 2026-11-24.
//
//   Date::parse("2026-02-30")                     -> nothing
//   plus_months(Date 2027-01-31, Months(1))       -> 2027-02-28 (held at the month's end)
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include <quoin/exact/months.hpp>

namespace quoin {

class Date {
  public:
    constexpr Date() = default;

    /// "YYYY-MM-DD" of a day that exists in the years 1900 to 2200, or nothing.
    static std::optional<Date> parse(std::string_view text);
    static std::optional<Date> of(int year, unsigned month, unsigned day);

    [[nodiscard]] constexpr int year() const { return year_; }
    [[nodiscard]] constexpr unsigned month() const { return month_; }
    [[nodiscard]] constexpr unsigned day() const { return day_; }
    [[nodiscard]] std::string text() const;

    friend constexpr auto operator<=>(Date, Date) = default;
    /// Days from `from` to `to`; negative where `to` is earlier.
    friend int days_between(Date from, Date to);
    /// The same day `months` later; a day that the month lacks becomes the month's last.
    friend Date plus_months(Date date, Months months);
    friend Date plus_days(Date date, int days);
    friend constexpr Date first_of_month(Date date) {
        date.day_ = 1;
        return date;
    }

  private:
    // The library's own calendar day brings clocks, time zones and streams into every file.
    std::int16_t year_ = 1970;
    std::uint8_t month_ = 1;
    std::uint8_t day_ = 1;
};

} // namespace quoin
