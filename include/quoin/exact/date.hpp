// Date: a day of the calendar that exists, written as 2026-11-24.
//
//   Date::parse("2026-02-30")                     -> nothing
//   plus_months(Date 2027-01-31, Months(1))       -> 2027-02-28 (held at the month's end)
#pragma once

#include <chrono>
#include <compare>
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
    static constexpr std::optional<Date> of(int year, unsigned month, unsigned day) {
        const std::chrono::year_month_day ymd{std::chrono::year(year), std::chrono::month(month),
                                              std::chrono::day(day)};
        if (!ymd.ok()) return std::nullopt;
        return Date(ymd);
    }

    [[nodiscard]] constexpr int year() const { return static_cast<int>(ymd_.year()); }
    [[nodiscard]] constexpr unsigned month() const { return static_cast<unsigned>(ymd_.month()); }
    [[nodiscard]] constexpr unsigned day() const { return static_cast<unsigned>(ymd_.day()); }
    [[nodiscard]] std::string text() const;

    friend constexpr auto operator<=>(Date, Date) = default;
    /// Days from `from` to `to`; negative where `to` is earlier.
    friend constexpr int days_between(Date from, Date to) {
        return static_cast<int>(
            (std::chrono::sys_days(to.ymd_) - std::chrono::sys_days(from.ymd_)).count());
    }
    /// The same day `months` later; a day that the month lacks becomes the month's last.
    friend constexpr Date plus_months(Date date, Months months) {
        const auto moved = date.ymd_ + std::chrono::months(months.count());
        if (moved.ok()) return Date(moved);
        return Date(std::chrono::year_month_day(moved.year() / moved.month() / std::chrono::last));
    }
    friend constexpr Date plus_days(Date date, int days) {
        return Date(std::chrono::year_month_day(std::chrono::sys_days(date.ymd_) +
                                                std::chrono::days(days)));
    }
    friend constexpr Date first_of_month(Date date) {
        return Date(date.ymd_.year() / date.ymd_.month() / std::chrono::day(1));
    }

  private:
    constexpr explicit Date(std::chrono::year_month_day ymd) : ymd_(ymd) {}
    std::chrono::year_month_day ymd_{std::chrono::year(1970), std::chrono::January,
                                     std::chrono::day(1)};
};

} // namespace quoin
