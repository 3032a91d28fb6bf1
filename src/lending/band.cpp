// Bands as text: comparisons for numbers, a name for named dimensions.
#include "band.hpp"

#include <algorithm>
#include <vector>

namespace quoin {
namespace {

/// Names of a named dimension, in the order of their enumerations; empty for numbers.
std::vector<std::string_view> names_in(Dimension dimension) {
    switch (dimension) {
    case Dimension::use:
        return {"first", "subsequent", "exempt"};
    case Dimension::area:
        return {"baseline", "ceiling"};
    default:
        return {};
    }
}

std::string_view trimmed(std::string_view text) {
    const std::size_t begin = text.find_first_not_of(' ');
    if (begin == std::string_view::npos) return {};
    return text.substr(begin, text.find_last_not_of(' ') - begin + 1);
}

/// Narrows a band by one comparison, such as "<= 95".
bool narrow(Band& band, std::string_view text) {
    const bool at_least = text.substr(0, 2) == ">=";
    const bool at_most = text.substr(0, 2) == "<=";
    if (text.empty()) return false;
    const char sign = text.front();
    if (sign != '<' && sign != '>' && sign != '=') return false;
    const auto value = Decimal::parse(trimmed(text.substr(at_least || at_most ? 2 : 1)));
    if (!value) return false;
    const std::int64_t edge = value->billionths();
    if (sign == '>' || sign == '=') {
        band.lowest = std::max(band.lowest, sign == '>' && !at_least ? edge + 1 : edge);
    }
    if (sign == '<' || sign == '=') {
        band.highest = std::min(band.highest, sign == '<' && !at_most ? edge - 1 : edge);
    }
    return true;
}

} // namespace

Band whole_of(Dimension dimension) {
    const auto count = static_cast<std::int64_t>(names_in(dimension).size());
    if (count == 0) return {Case::unset + 1, std::numeric_limits<std::int64_t>::max()};
    return {0, Decimal::whole(count - 1).billionths()};
}

std::int64_t step_of(Dimension dimension) { return names_in(dimension).empty() ? 1 : Decimal::one; }

std::string value_words(Dimension dimension, std::int64_t value) {
    const auto names = names_in(dimension);
    if (names.empty()) return Decimal::billionths(value).text();
    return std::string(names[static_cast<std::size_t>(value / Decimal::one)]);
}

std::optional<Band> parse_band(Dimension dimension, std::string_view text) {
    Band band;
    if (trimmed(text) == "any") return band;
    if (const auto names = names_in(dimension); !names.empty()) {
        const auto found = std::find(names.begin(), names.end(), trimmed(text));
        if (found == names.end()) return std::nullopt;
        band.lowest = band.highest = Decimal::whole(found - names.begin()).billionths();
        return band;
    }
    band.lowest = Case::unset + 1; // a value that is not known is in no numeric band
    for (std::size_t begin = 0; begin <= text.size();) {
        const std::size_t comma = std::min(text.find(',', begin), text.size());
        if (!narrow(band, trimmed(text.substr(begin, comma - begin)))) return std::nullopt;
        begin = comma + 1;
    }
    if (band.lowest > band.highest) return std::nullopt;
    return band;
}

} // namespace quoin
