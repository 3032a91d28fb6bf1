// Reading and writing amounts of money from their own text.
#include <quoin/exact/money.hpp>

#include <charconv>
#include <iterator>

namespace quoin {
namespace {

/// "1,234,567.89" -> "1234567.89"; nothing where a comma stands anywhere but between thousands.
std::optional<std::string> without_commas(std::string_view text) {
    const std::string_view whole = text.substr(0, text.find_first_of(".eE"));
    if (text.find(',', whole.size()) != std::string_view::npos) return std::nullopt;
    if (whole.find(',') == std::string_view::npos) return std::string(text);
    if (whole.size() % 4 == 0) return std::nullopt; // "1000,000" and ",000"
    std::string plain;
    for (std::size_t i = 0; i < whole.size(); ++i) {
        const bool comma_place = (whole.size() - i) % 4 == 0;
        if ((whole[i] == ',') != comma_place) return std::nullopt;
        if (whole[i] != ',') plain += whole[i];
    }
    return plain + std::string(text.substr(whole.size()));
}

} // namespace

std::optional<Money> Money::parse(std::string_view text) {
    const bool negative = !text.empty() && text.front() == '-';
    if (negative) text.remove_prefix(1);
    if (!text.empty() && text.front() == '$') text.remove_prefix(1);
    if (!text.empty() && text.front() == '-') return std::nullopt;
    const auto plain = without_commas(text);
    if (!plain) return std::nullopt;
    const auto value = Decimal::parse(*plain);
    constexpr std::int64_t cent = Decimal::one / 100;
    if (!value || value->billionths() % cent != 0) return std::nullopt;
    const Money amount = cents(value->billionths() / cent);
    return negative ? -amount : amount;
}

std::string Money::text() const {
    const bool negative = count_ < 0;
    const auto cents =
        negative ? ~static_cast<std::uint64_t>(count_) + 1 : static_cast<std::uint64_t>(count_);
    char letters[24];
    char* end = letters;
    if (negative) *end++ = '-';
    end = std::to_chars(end, std::end(letters), cents / 100).ptr;
    *end++ = '.';
    *end++ = static_cast<char>('0' + cents / 10 % 10);
    *end++ = static_cast<char>('0' + cents % 10);
    return {letters, end};
}

} // namespace quoin
