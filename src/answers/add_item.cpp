// Answering what one option adds to a home as it stands.
#include "add_item.hpp"

#include "difference.hpp"
#include <quoin/home/standing.hpp>

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
    if (option.cutoff) item.cutoff = at(book.stages, *option.cutoff).name;
    item.later = option.later;
    return item;
}

} // namespace

std::vector<std::string> option_names(const PriceBook& book,
                                      const std::vector<Index<Option>>& options) {
    std::vector<std::string> names;
    for (const Index<Option> option : options) names.push_back(at(book.options, option).name);
    return names;
}

std::string level_name(const Option& option, std::optional<Index<Level>> level) {
    return level ? at(option.levels, *level).name : std::string{};
}

std::string form_name(const Option& option, const Pick& pick) {
    if (pick.choice) return at(option.choices, *pick.choice).name;
    return level_name(option, pick.level);
}

Standpoint standpoint(const Sitting& sitting, const Selection& selection) {
    Standpoint point;
    point.home = price_home(sitting.book(), selection);
    point.figures = sitting.figures(point.home);
    return point;
}

ChangeAdds change_adds(const Sitting& sitting, const Standpoint& now, const Change& change,
                       bool takes_out) {
    return change_adds(sitting, now, standpoint(sitting, change.selection), change, takes_out);
}

ChangeAdds change_adds(const Sitting& sitting, const Standpoint& now, const Standpoint& then,
                       const Change& change, bool takes_out) {
    const PriceBook& book = sitting.book();
    ChangeAdds adds;
    adds.along = option_names(book, takes_out ? change.also_removed : change.also_added);
    if (!takes_out) adds.instead = option_names(book, change.also_removed);
    adds.price = then.home.contract_price - now.home.contract_price;
    adds.by_scenario = differences(sitting, now.figures, then.figures);
    return adds;
}

AddsItem add_item(const Sitting& sitting, const Standpoint& now, const Pick& pick) {
    using Kind = OptionStanding::Kind;
    const PriceBook& book = sitting.book();
    AddsItem item = describe(sitting, pick);
    const OptionStanding standing = option_standing(book, sitting.inquiry().selection, pick);
    if (standing.kind == Kind::held) {
        item.standing = Standing::held;
        item.package = at(book.options, standing.package.value()).name;
        return item;
    }
    if (!standing.change.blocked.empty()) {
        item.standing = Standing::barred;
        item.why_not = why_not(book, standing.reason(), Naming::names);
        return item;
    }
    const bool chosen = standing.kind == Kind::chosen;
    item.standing = chosen ? Standing::chosen : Standing::offered;
    const Standpoint then = standpoint(sitting, standing.change.selection);
    ChangeAdds adds = change_adds(sitting, now, then, standing.change, chosen);
    item.price = adds.price;
    item.along = std::move(adds.along);
    item.instead = std::move(adds.instead);
    item.by_scenario = std::move(adds.by_scenario);
    if (chosen) {
        item.in_home = {now.home.contract_price - then.home.contract_price,
                        differences(sitting, then.figures, now.figures)};
    }
    return item;
}

} // namespace quoin
