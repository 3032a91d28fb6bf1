// Reading and writing decimals from their own text, digit by digit.
#include <quoin/exact/decimal.hpp>

#include <charconv>
#include <iterator>

namespace quoin {
namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// A literal taken apart: sign, digits with the point removed, and where the point stood.
struct Literal {
    bool negative = false;
    std::string digits;
    std::int64_t decimals = 0; ///< digits right of the point, after the exponent is applied
};

std::optional<std::int64_t> parse_exponent(std::string_view text) {
    if (text.empty()) return 0;
    text.remove_prefix(1); // e or E
    if (text.size() > 1 && text.front() == '+' && is_digit(text[1])) text.remove_prefix(1);
    int exponent = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), exponent);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return exponent;
}

std::optional<Literal> take_apart(std::string_view text) {
    Literal literal;
    if (!text.empty() && text.front() == '-') {
        literal.negative = true;
        text.remove_prefix(1);
    }
    bool point = false;
    std::size_t i = 0;
    for (; i < text.size() && (is_digit(text[i]) || (text[i] == '.' && !point)); ++i) {
        if (text[i] == '.') {
            point = true;
        } else {
            literal.digits += text[i];
            literal.decimals += point ? 1 : 0;
        }
    }
    if (literal.digits.empty() || (i > 0 && text[i - 1] == '.')) return std::nullopt;
    const std::string_view rest = text.substr(i);
    if (!rest.empty() && rest.front() != 'e' && rest.front() != 'E') return std::nullopt;
    const auto exponent = parse_exponent(rest);
    if (!exponent) return std::nullopt;
    literal.decimals -= *exponent;
    return literal;
}

void drop_trailing_zeros(Literal& literal) {
    while (literal.digits.size() > 1 && literal.digits.back() == '0') {
        literal.digits.pop_back();
        --literal.decimals;
    }
    if (literal.digits == "0") literal.decimals = 0;
}

} // namespace

std::optional<Decimal> Decimal::parse(std::string_view text) {
    auto literal = take_apart(text);
    if (!literal) return std::nullopt;
    drop_trailing_zeros(*literal);
    if (literal->decimals > max_decimals || literal->decimals < -max_decimals - 1) {
        return std::nullopt;
    }
    literal->digits.append(static_cast<std::size_t>(max_decimals - literal->decimals), '0');
    std::int64_t count = 0;
    for (const char digit : literal->digits) {
        if (__builtin_mul_overflow(count, 10, &count) ||
            __builtin_add_overflow(count, digit - '0', &count)) {
            return std::nullopt;
        }
    }
    return billionths(literal->negative ? -count : count);
}

std::string Decimal::text() const {
    const bool negative = count_ < 0;
    const auto size =
        negative ? ~static_cast<std::uint64_t>(count_) + 1 : static_cast<std::uint64_t>(count_);
    constexpr auto unit = static_cast<std::uint64_t>(one);
    char letters[32];
    char* end = letters;
    if (negative) *end++ = '-';
    end = std::to_chars(end, std::end(letters), size / unit).ptr;
    std::uint64_t rest = size % unit;
    if (rest != 0) *end++ = '.';
    for (std::uint64_t place = unit / 10; rest != 0; place /= 10) {
        *end++ = static_cast<char>('0' + rest / place);
        rest %= place;
    }
    return {letters, end};
}

} // namespace quoin
