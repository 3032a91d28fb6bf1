// Reading an Accept-Language header.
#include "accepted_language.hpp"

#include <algorithm>
#include <cctype>
#include <optional>
#include <string>

#include <quoin/exact/decimal.hpp>

#include "http.hpp"

namespace quoin::apps {
namespace {

/// What stands before the first `mark`; it and the mark are taken off `text`.
std::string_view cut(std::string_view& text, char mark) {
    const std::size_t at = std::min(text.find(mark), text.size());
    const std::string_view before = text.substr(0, at);
    text.remove_prefix(std::min(at + 1, text.size()));
    return trimmed(before);
}

/// The language of a range: "es", "es-MX", "ES".
std::optional<Language> language_of(std::string_view range) {
    std::string first(cut(range, '-'));
    std::transform(first.begin(), first.end(), first.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::tolower(letter)); });
    return meaning_in(codes<Language>, first);
}

/// 1 where none is given; 0, "not this one", where it is no number from 0 to 1.
Decimal weight_of(std::string_view parameter) {
    const Decimal whole = Decimal::whole(1);
    if (parameter.empty()) return whole;
    if (!parameter.starts_with("q=") && !parameter.starts_with("Q=")) return {};
    const Decimal weight = Decimal::parse(parameter.substr(2)).value_or(Decimal{});
    return weight > whole || weight < Decimal{} ? Decimal{} : weight;
}

} // namespace

Language accepted_language(std::string_view header) {
    Language best = Language::english;
    Decimal highest{};
    while (!header.empty()) {
        std::string_view parameter = cut(header, ',');
        const auto language = language_of(cut(parameter, ';'));
        const Decimal weight = weight_of(trimmed(parameter));
        if (!language || weight <= highest) continue;
        best = *language;
        highest = weight;
    }
    return best;
}

} // namespace quoin::apps
