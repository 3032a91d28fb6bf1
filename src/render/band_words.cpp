// Putting the bands of a row into words.
#include "band_words.hpp"

#include <algorithm>
#include <array>
#include <vector>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <quoin/exact/decimal.hpp>

namespace quoin {
namespace {

enum class Kind { percent, money, months, plain };

struct Name {
    std::string_view written;
    Phrase<> JumpWords::*words;
    Kind kind;
};
constexpr std::array band_names{
    Name{"ltv", &JumpWords::ltv, Kind::percent},
    Name{"down", &JumpWords::down_payment, Kind::percent},
    Name{"term", &JumpWords::term, Kind::months},
    Name{"base_loan", &JumpWords::base_loan, Kind::money},
    Name{"loan", &JumpWords::loan, Kind::money},
    Name{"score", &JumpWords::score, Kind::plain},
    Name{"price", &JumpWords::price, Kind::money},
    Name{"dwelling_value", &JumpWords::dwelling_value, Kind::money},
};

std::vector<std::string_view> split(std::string_view text, std::string_view at) {
    std::vector<std::string_view> parts;
    for (std::size_t end = text.find(at); end != std::string_view::npos; end = text.find(at)) {
        parts.push_back(text.substr(0, end));
        text.remove_prefix(end + at.size());
    }
    if (!text.empty()) parts.push_back(text);
    return parts;
}

std::string number_words(std::string_view text, Kind kind, const JumpWords& say) {
    const auto number = Decimal::parse(std::string(text));
    if (!number) return std::string(text);
    if (kind == Kind::money) return "$" + grouped(*number);
    if (kind == Kind::percent) return say.percent(number->text());
    if (kind == Kind::months) return say.band_months(number->text());
    return number->text();
}

/// "> 90" is over 90; each comparison is an operator, a blank and a number.
std::string edge_words(std::string_view edge, Kind kind, const JumpWords& say) {
    const std::size_t blank = edge.find(' ');
    if (blank == std::string_view::npos) return std::string(edge);
    const std::string_view sign = edge.substr(0, blank);
    const std::string number = number_words(edge.substr(blank + 1), kind, say);
    if (sign == ">") return say.over(number);
    if (sign == ">=") return say.from(number);
    if (sign == "<") return say.under(number);
    if (sign == "<=") return say.up_to(number);
    return std::string(edge);
}

std::string part_words(std::string_view part, const JumpWords& say) {
    const std::size_t blank = part.find(' ');
    if (blank == std::string_view::npos) return std::string(part); // "any"
    const std::string_view written = part.substr(0, blank);
    const Name* known = nullptr;
    for (const Name& name : band_names) {
        if (name.written == written) known = &name;
    }
    const Kind kind = known != nullptr ? known->kind : Kind::plain;
    std::string edges;
    for (const std::string_view each : split(part.substr(blank + 1), ", ")) {
        const std::string edge = edge_words(each, kind, say);
        edges = edges.empty() ? edge : say.both_edges(edges, edge);
    }
    return say.band(known != nullptr ? (say.*known->words)() : std::string(written), edges);
}

} // namespace

std::string band_words(std::string_view written, std::string_view other, const JumpWords& say) {
    const std::vector<std::string_view> others = split(other, "; ");
    std::vector<std::string> words;
    for (const std::string_view part : split(written, "; ")) {
        const bool same = std::find(others.begin(), others.end(), part) != others.end();
        if (!same && part != "any") words.push_back(part_words(part, say));
    }
    return fmt::format("{}", fmt::join(words, ", "));
}

} // namespace quoin
