// Reading and writing calendar days.
#include <quoin/exact/date.hpp>

#include <charconv>

namespace quoin {
namespace {

std::optional<unsigned> digits(std::string_view text) {
    unsigned number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return number;
}

std::string two(unsigned number) { return (number < 10 ? "0" : "") + std::to_string(number); }

} // namespace

std::optional<Date> Date::parse(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day || *year < 1900 || *year > 2200) return std::nullopt;
    return of(static_cast<int>(*year), *month, *day);
}

std::string Date::text() const {
    return std::to_string(year()) + "-" + two(month()) + "-" + two(day());
}

} // namespace quoin
