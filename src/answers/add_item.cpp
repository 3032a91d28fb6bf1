// Answering what one option adds to a home as it stands.
#include "add_item.hpp"

#include "difference.hpp"
#include <quoin/home/rules.hpp>

namespace quoin {
namespace {

int wish_rank(const Inquiry& inquiry, const Pick& pick) {
    for (const Wish& wish : inquiry.wishes) {
        if (wish.pick.option == pick.option && wish.pick.level == pick.level) return wish.rank;
    }
    return 0;
}

AddsItem describe(const Sitting& sitting, const Pick& pick) {
    const PriceBook& book = sitting.book();
    const Option& option = at(book.options, pick.option);
    AddsItem item;
    item.id = name_of(book, {pick.option, pick.level});
    item.name = option.name;
    item.level = level_name(option, pick.level);
    item.area = at(book.areas, option.area).name;
    item.wish = wish_rank(sitting.inquiry(), pick);
    item.quantity = quantity_of(option, pick, sitting.inquiry().selection.plan);
    item.unit = option.unit;
    item.note = option.note;
    item.structural = option.structural;
    item.work = option.work;
    if (option.cutoff >= 0) {
        item.cutoff = at(book.stages, option.cutoff).name;
    }
    item.later = option.later;
    return item;
}

std::vector<std::string> option_names(const PriceBook& book, const std::vector<int>& options) {
    std::vector<std::string> names;
    for (const int option : options) names.push_back(at(book.options, option).name);
    return names;
}

/// An option that is in the home, in just this form.
bool is_chosen(const Selection& selection, const Pick& pick) {
    const Pick* present = selection.find(pick.option);
    if (present == nullptr || present->level != pick.level) return false;
    if (pick.choice >= 0 && pick.choice != present->choice) return false;
    return (!pick.quantity || pick.quantity == present->quantity) &&
           (!pick.spend || pick.spend == present->spend);
}

bool offered_at_level(const PriceBook& book, const Pick& pick, int plan) {
    return at(book.options, pick.option).kind != OptionKind::levels ||
           unit_price(at(book.options, pick.option), pick.level, plan).has_value();
}

/// The chosen package that brings a pick already, or empty.
std::string package_with(const PriceBook& book, const Selection& selection, const Pick& pick) {
    for (const Pick& chosen : selection.picks) {
        const Option& package = at(book.options, chosen.option);
        for (const OptionRef& part : package.parts) {
            if (part.option == pick.option && part.level >= pick.level) return package.name;
        }
    }
    return {};
}

} // namespace

std::string level_name(const Option& option, int level) {
    return level < 0 ? std::string{} : at(option.levels, level).name;
}

Standpoint standpoint(const Sitting& sitting, const Selection& selection) {
    Standpoint point;
    point.home = price_home(sitting.book(), selection);
    point.figures = sitting.figures(point.home);
    return point;
}

AddsItem add_item(const Sitting& sitting, const Standpoint& now, const Pick& pick) {
    const PriceBook& book = sitting.book();
    const Selection& selection = sitting.inquiry().selection;
    AddsItem item = describe(sitting, pick);
    const bool chosen = is_chosen(selection, pick);
    item.package = chosen ? std::string{} : package_with(book, selection, pick);
    if (!item.package.empty()) {
        item.standing = Standing::held;
        return item;
    }
    const Change change =
        chosen ? without_option(book, selection, pick.option) : with_pick(book, selection, pick);
    if (!change.blocked.empty() || !offered_at_level(book, pick, selection.plan)) {
        item.standing = Standing::barred;
        item.why_not = change.blocked.empty()
                           ? "not offered on this plan"
                           : described(book, change.blocked.front(), Naming::names);
        return item;
    }
    item.standing = chosen ? Standing::chosen : Standing::offered;
    item.along = option_names(book, chosen ? change.also_removed : change.also_added);
    if (!chosen) item.instead = option_names(book, change.also_removed);
    const Standpoint then = standpoint(sitting, change.selection);
    item.price = then.home.contract_price - now.home.contract_price;
    item.by_scenario = differences(sitting, now.figures, then.figures);
    return item;
}

} // namespace quoin
