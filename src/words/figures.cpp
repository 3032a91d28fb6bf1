// Writing figures for people.
#include <quoin/words/figures.hpp>

#include <array>

namespace quoin {
namespace {

std::string with_commas(std::string digits) {
    for (std::size_t i = digits.size(); i > 3;) {
        i -= 3;
        digits.insert(i, ",");
    }
    return digits;
}

std::string grouped(std::string text, const char* unit) {
    const bool negative = text.front() == '-';
    if (negative) text.erase(0, 1);
    const std::size_t point = std::min(text.find('.'), text.size());
    return (negative ? "-" : "") + (unit + with_commas(text.substr(0, point))) + text.substr(point);
}

} // namespace

std::string dollars(Money amount) { return grouped(amount.text(), "$"); }

std::string signed_dollars(Money amount) { return (amount > Money{} ? "+" : "") + dollars(amount); }

std::string grouped(Decimal number) { return grouped(number.text(), ""); }

std::string fixed(Decimal number, int places) {
    std::int64_t unit = Decimal::one;
    for (int i = 0; i < places; ++i) unit /= 10;
    const std::int64_t units = divide_rounded(number.billionths(), unit, Rounding::half_away);
    std::string text = Decimal::billionths(units * unit).text();
    if (places == 0) return text;
    if (text.find('.') == std::string::npos) text += '.';
    const std::size_t have = text.size() - text.find('.') - 1;
    return text.append(static_cast<std::size_t>(places) - have, '0');
}

std::string percent_text(Decimal percent, int places) { return fixed(percent, places) + "%"; }

std::string rate_text(Rate rate) { return percent_text(rate.percent(), 3); }

std::string disclosed(Decimal percent) {
    return Decimal::parse(fixed(percent, 3)).value_or(percent).text();
}

std::string disclosed_text(Decimal percent) { return disclosed(percent) + "%"; }

std::string apr_text(const std::optional<Rate>& apr, const char* none) {
    return apr ? disclosed_text(apr->percent()) : none;
}

std::string english_date(Date date) {
    constexpr std::array<const char*, 12> months = {
        "January", "February", "March",     "April",   "May",      "June",
        "July",    "August",   "September", "October", "November", "December"};
    return std::string(months[date.month() - 1]) + " " + std::to_string(date.day()) + ", " +
           std::to_string(date.year());
}

std::string spanish_date(Date date) {
    constexpr std::array<const char*, 12> months = {
        "enero", "febrero", "marzo",      "abril",   "mayo",      "junio",
        "julio", "agosto",  "septiembre", "octubre", "noviembre", "diciembre"};
    return std::to_string(date.day()) + " de " + months[date.month() - 1] + " de " +
           std::to_string(date.year());
}

std::string short_date(Date date) {
    return std::to_string(date.month()) + "/" + std::to_string(date.day()) + "/" +
           std::to_string(date.year());
}

} // namespace quoin
