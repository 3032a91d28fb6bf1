// How an option stands for a home.
#include <quoin/home/standing.hpp>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

using Kind = OptionStanding::Kind;

bool is_chosen(const Pick& present, const Pick& pick) {
    if (present.level != pick.level) return false;
    if (pick.choice && pick.choice != present.choice) return false;
    return (!pick.quantity || pick.quantity == present.quantity) &&
           (!pick.spend || pick.spend == present.spend);
}

/// Looks for a chosen package that brings the pick or a better one.
void look_in_packages(const PriceBook& book, const Selection& selection, const Pick& pick,
                      OptionStanding& standing) {
    for (const Pick& chosen : selection.picks) {
        for (const OptionRef& part : at(book.options, chosen.option).parts) {
            if (!part.meets({pick.option, pick.level})) continue;
            standing.kind = Kind::held;
            standing.package = chosen.option;
            standing.better = part.level > pick.level;
            return;
        }
    }
}

} // namespace

OptionStanding option_standing(const PriceBook& book, const Selection& selection,
                               const Pick& pick) {
    const Pick* present = selection.find(pick.option);
    OptionStanding standing;
    if (present != nullptr && is_chosen(*present, pick)) {
        standing.kind = Kind::chosen;
    } else {
        look_in_packages(book, selection, pick, standing);
    }
    const bool another_choice =
        present != nullptr && at(book.options, pick.option).kind == OptionKind::choice;
    if (standing.kind == Kind::offered && !another_choice &&
        comes_with_plan(book, pick, selection.plan)) {
        standing.kind = Kind::included;
    }
    standing.takes_out = standing.kind != Kind::offered && present != nullptr;
    if (standing.takes_out) {
        standing.change = without_option(book, selection, pick.option);
    } else if (standing.kind == Kind::held) {
        standing.change = {selection, {}, {}, {}};
    } else {
        standing.change = with_pick(book, selection, pick);
    }
    const bool blocked = !standing.change.blocked.empty();
    if (standing.kind == Kind::offered && blocked) standing.kind = Kind::barred;
    ensure(!standing.takes_out || !blocked, "what is chosen can be taken out");
    return standing;
}

} // namespace quoin
