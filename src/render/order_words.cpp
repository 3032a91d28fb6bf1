// Wording which of two has cost less, when.
#include "order_words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <quoin/render/words.hpp>
#include <quoin/words/joined.hpp>

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

} // namespace

std::string when_words(const CostStretch& stretch, const WhenWords& say) {
    const int from = stretch.from;
    if (!stretch.to) return from == 0 ? say.throughout() : say.from_on(from);
    if (*stretch.to == 0) return say.at_closing();
    if (from == 0) return say.through(*stretch.to);
    if (from == *stretch.to) return say.with(from);
    return say.from_to(from, *stretch.to);
}

std::string order_words(const std::vector<CostStretch>& order, const std::string& first,
                        const std::string& second, const Catalogue& say) {
    std::vector<std::string> told;
    for (const CostStretch& stretch : order) {
        const std::string when = when_words(stretch, say.order.payments);
        if (stretch.cheaper == Cheaper::neither) {
            told.push_back(say.order.both_same(when));
        } else {
            told.push_back(
                say.order.costs_less(stretch.cheaper == Cheaper::first ? first : second, when));
        }
    }
    return fmt::format("{}", fmt::join(told, "; "));
}

std::string payback_words(const PointsPayback& payback, const Catalogue& say) {
    const OrderWords& of = say.order;
    const std::vector<CostStretch> ahead = no_dearer(payback.order);
    if (ahead.empty()) return of.never_paid_back();
    if (ahead.size() == 1 && !ahead.front().to) {
        const int from = ahead.front().from;
        return from == 0 ? of.nothing_more() : of.paid_back_after(term_text(Months(from), say));
    }
    std::vector<std::string> times;
    for (const CostStretch& stretch : ahead) times.push_back(when_words(stretch, of.payments));
    return of.paid_back_at_times(joined(times, Joint::both, say));
}

} // namespace quoin
