// Reading and writing calendar days.
#include <quoin/exact/date.hpp>

#include <charconv>
#include <chrono>

namespace quoin {
namespace {

namespace calendar = std::chrono;

calendar::year_month_day ymd_of(Date date) {
    return {calendar::year(date.year()), calendar::month(date.month()), calendar::day(date.day())};
}

calendar::sys_days days_of(Date date) { return ymd_of(date); }

/// Precondition: the day exists.
Date date_of(calendar::year_month_day ymd) {
    return Date::of(static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()),
                    static_cast<unsigned>(ymd.day()))
        .value();
}

std::optional<unsigned> digits(std::string_view text) {
    unsigned number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return number;
}

std::string two(unsigned number) { return (number < 10 ? "0" : "") + std::to_string(number); }

} // namespace

std::optional<Date> Date::of(int year, unsigned month, unsigned day) {
    const calendar::year_month_day ymd{calendar::year(year), calendar::month(month),
                                       calendar::day(day)};
    if (!ymd.ok()) return std::nullopt;
    Date date;
    date.year_ = static_cast<std::int16_t>(year);
    date.month_ = static_cast<std::uint8_t>(month);
    date.day_ = static_cast<std::uint8_t>(day);
    return date;
}

std::optional<Date> Date::parse(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day || *year < 1900 || *year > 2200) return std::nullopt;
    return of(static_cast<int>(*year), *month, *day);
}

int days_between(Date from, Date to) {
    return static_cast<int>((days_of(to) - days_of(from)).count());
}

Date plus_months(Date date, Months months) {
    const auto moved = ymd_of(date) + calendar::months(months.count());
    return date_of(moved.ok()
                       ? moved
                       : calendar::year_month_day(moved.year() / moved.month() / calendar::last));
}

Date plus_days(Date date, int days) { return date_of(days_of(date) + calendar::days(days)); }

std::string Date::text() const {
    return std::to_string(year()) + "-" + two(month()) + "-" + two(day());
}

} // namespace quoin
