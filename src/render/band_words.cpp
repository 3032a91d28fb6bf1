// Putting the bands of a row into words.
#include "band_words.hpp"

#include <algorithm>
#include <array>
#include <vector>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <quoin/exact/decimal.hpp>
#include <quoin/render/format.hpp>

namespace quoin {
namespace {

enum class Kind { percent, money, months, plain };

struct Name {
    std::string_view written;
    std::string_view words;
    Kind kind;
};
constexpr std::array names{
    Name{"ltv", "LTV", Kind::percent},   Name{"down", "down payment", Kind::percent},
    Name{"term", "term", Kind::months},  Name{"base_loan", "base loan", Kind::money},
    Name{"loan", "loan", Kind::money},   Name{"score", "credit score", Kind::plain},
    Name{"price", "price", Kind::money}, Name{"dwelling_value", "dwelling value", Kind::money},
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

std::string number_words(std::string_view text, Kind kind) {
    const auto number = Decimal::parse(std::string(text));
    if (!number) return std::string(text);
    if (kind == Kind::money) return "$" + grouped(*number);
    if (kind == Kind::percent) return number->text() + " %";
    if (kind == Kind::months) return number->text() + " months";
    return number->text();
}

/// "> 90" is over 90; each comparison is an operator, a blank and a number.
std::string edge_words(std::string_view edge, Kind kind) {
    const std::size_t blank = edge.find(' ');
    if (blank == std::string_view::npos) return std::string(edge);
    const std::string_view sign = edge.substr(0, blank);
    const std::string number = number_words(edge.substr(blank + 1), kind);
    if (sign == ">") return "over " + number;
    if (sign == ">=") return "from " + number;
    if (sign == "<") return "under " + number;
    if (sign == "<=") return "up to " + number;
    return std::string(edge);
}

std::string part_words(std::string_view part) {
    const std::size_t blank = part.find(' ');
    if (blank == std::string_view::npos) return std::string(part); // "any"
    const std::string_view written = part.substr(0, blank);
    const Name* known = nullptr;
    for (const Name& name : names) {
        if (name.written == written) known = &name;
    }
    const Kind kind = known != nullptr ? known->kind : Kind::plain;
    std::vector<std::string> edges;
    for (const std::string_view edge : split(part.substr(blank + 1), ", ")) {
        edges.push_back(edge_words(edge, kind));
    }
    return fmt::format("{} {}", known != nullptr ? known->words : written, fmt::join(edges, " "));
}

} // namespace

std::string band_words(std::string_view written, std::string_view other) {
    const std::vector<std::string_view> others = split(other, "; ");
    std::vector<std::string> words;
    for (const std::string_view part : split(written, "; ")) {
        const bool same = std::find(others.begin(), others.end(), part) != others.end();
        if (!same && part != "any") words.push_back(part_words(part));
    }
    return fmt::format("{}", fmt::join(words, ", "));
}

} // namespace quoin
