// Answering what the furnished model shows.
#include <quoin/answers/shown.hpp>

#include <algorithm>

#include "add_item.hpp"
#include <quoin/home/standing.hpp>

namespace quoin {
namespace {

Pick pick_of(const Shown& shown) {
    return {shown.option.value(), shown.level, shown.choice, shown.quantity, shown.spend, false};
}

bool is_counted(const Option& option) {
    return option.kind != OptionKind::allowance && option.quantity.from != Quantity::From::one;
}

bool at_least(const Option& option, const Pick& yours, const Pick& shown, Index<Plan> plan) {
    if (yours.level < shown.level) return false;
    if (option.kind == OptionKind::allowance) return yours.spend >= shown.spend;
    return quantity_of(option, yours, plan) >= quantity_of(option, shown, plan);
}

void judge(const Sitting& sitting, const Shown& shown, ShownItem& item) {
    using Kind = OptionStanding::Kind;
    const PriceBook& book = sitting.book();
    const Selection& selection = sitting.inquiry().selection;
    const Pick as_shown = pick_of(shown);
    const Option& option = at(book.options, as_shown.option);
    item.price = charge(option, as_shown, selection.plan);
    const Pick* yours = selection.find(as_shown.option);
    if (yours != nullptr) {
        item.yours = charge(option, *yours, selection.plan);
        item.your_level = form_name(option, *yours);
        const bool enough = at_least(option, *yours, as_shown, selection.plan);
        item.standing = option.kind == OptionKind::choice ? ShownStanding::free_choice
                        : enough                          ? ShownStanding::yours
                                                          : ShownStanding::yours_partly;
        return;
    }
    const OptionStanding standing = option_standing(book, selection, as_shown);
    if (standing.barred_by_the_home()) {
        item.standing = ShownStanding::unavailable;
        item.why_not = why_not(book, standing.reason(), Naming::names);
        item.price.reset();
    } else if (option.kind == OptionKind::choice) {
        item.standing = ShownStanding::free_choice;
    } else if (standing.kind == Kind::included && option.kind == OptionKind::levels) {
        item.standing = ShownStanding::included;
    } else {
        item.standing = standing.kind == Kind::held ? ShownStanding::yours : ShownStanding::extra;
    }
}

ShownItem shown_item(const Sitting& sitting, const Shown& shown) {
    const PriceBook& book = sitting.book();
    ShownItem item;
    item.area = at(book.areas, shown.area).name;
    if (!shown.option) {
        item.name = shown.text;
        item.standing = ShownStanding::decor;
        return item;
    }
    const Option& option = at(book.options, *shown.option);
    item.name = option.name;
    item.as_shown = form_name(option, pick_of(shown));
    if (is_counted(option)) {
        item.quantity = quantity_of(option, pick_of(shown), book.model->plan);
        item.unit = option.unit;
    }
    judge(sitting, shown, item);
    return item;
}

void add_included(const Sitting& sitting, ShownAnswer& answer) {
    const PriceBook& book = sitting.book();
    for (const Included& included : book.included) {
        if (!allows(included.plans, sitting.inquiry().selection.plan)) continue;
        answer.included.push_back({at(book.areas, included.area).name, included.text});
    }
}

void add_areas(const PriceBook& book, ShownAnswer& answer) {
    const auto in = [](const Named& area) {
        return [&area](const auto& item) { return item.area == area.name; };
    };
    for (const Named& area : book.areas) {
        const auto& included = answer.included;
        const auto& items = answer.items;
        if (std::any_of(included.begin(), included.end(), in(area)) ||
            std::any_of(items.begin(), items.end(), in(area))) {
            answer.areas.push_back(area.name);
        }
    }
}

void add_up(ShownAnswer& answer) {
    for (const ShownItem& item : answer.items) {
        const Money price = item.price.value_or(Money{});
        answer.shown_total += price;
        if (item.standing == ShownStanding::extra) answer.missing += price;
        if (item.standing == ShownStanding::yours_partly) {
            answer.missing += std::max(price - item.yours.value_or(Money{}), Money{});
        }
    }
}

} // namespace

std::optional<ShownAnswer> shown(const Sitting& sitting) {
    const PriceBook& book = sitting.book();
    if (!book.model) return std::nullopt;
    const FurnishedModel& model = *book.model;
    const Plan& plan = at(book.plans, model.plan);
    ShownAnswer answer;
    answer.heading = heading_of(sitting);
    answer.model_plan = plan.name;
    answer.model_elevation = at(plan.elevations, model.elevation).name;
    if (model.lot) answer.model_lot = at(book.lots, *model.lot).id;
    answer.model_note = model.note;
    std::vector<Shown> ordered = model.shows;
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const Shown& a, const Shown& b) { return a.area < b.area; });
    for (const Shown& item : ordered) answer.items.push_back(shown_item(sitting, item));
    add_included(sitting, answer);
    add_areas(book, answer);
    add_up(answer);
    return answer;
}

} // namespace quoin
