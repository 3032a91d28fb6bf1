// Wording which of two has cost less, when.
#include "order_words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace quoin {
namespace {

/// The stretches in which the first has cost no more, joined where they touch.
std::vector<CostStretch> no_dearer(const std::vector<CostStretch>& order) {
    std::vector<CostStretch> joined;
    bool touches = false;
    for (const CostStretch& stretch : order) {
        if (stretch.cheaper == Cheaper::second) {
            touches = false;
            continue;
        }
        if (touches) {
            joined.back().to = stretch.to;
        } else {
            joined.push_back(stretch);
        }
        touches = true;
    }
    return joined;
}

std::string after_words(int months) {
    if (months % 12 == 0) return months == 12 ? "1 year" : fmt::format("{} years", months / 12);
    return months == 1 ? "1 month" : fmt::format("{} months", months);
}

} // namespace

std::string when_words(const CostStretch& stretch, const char* unit) {
    const int from = stretch.from;
    if (!stretch.to) return from == 0 ? "throughout" : fmt::format("from {} {} on", unit, from);
    if (*stretch.to == 0) return "at the closing";
    if (from == 0) return fmt::format("through {} {}", unit, *stretch.to);
    if (from == *stretch.to) return fmt::format("with {} {}", unit, from);
    return fmt::format("from {} {} to {}", unit, from, *stretch.to);
}

std::string order_words(const std::vector<CostStretch>& order, const std::string& first,
                        const std::string& second) {
    std::vector<std::string> told;
    for (const CostStretch& stretch : order) {
        const std::string when = when_words(stretch);
        if (stretch.cheaper == Cheaper::neither) {
            told.push_back("both cost the same " + when);
        } else {
            told.push_back((stretch.cheaper == Cheaper::first ? first : second) + " costs less " +
                           when);
        }
    }
    return fmt::format("{}", fmt::join(told, "; "));
}

std::string payback_words(const PointsPayback& payback) {
    const std::vector<CostStretch> ahead = no_dearer(payback.order);
    if (ahead.empty()) return "they never pay for themselves";
    if (ahead.size() == 1 && !ahead.front().to) {
        const int from = ahead.front().from;
        return from == 0 ? "they cost nothing more from the closing on"
                         : "they have paid for themselves after " + after_words(from);
    }
    std::vector<std::string> told;
    for (const CostStretch& stretch : ahead) told.push_back(when_words(stretch));
    return fmt::format("they have paid for themselves {}, and at no other time",
                       fmt::join(told, " and "));
}

} // namespace quoin
