// A conflict in words, for messages and for the line beside an option that cannot be had.
#include <quoin/home/rules.hpp>

#include <algorithm>
#include <string_view>

namespace quoin {
namespace {

template <class Item, class Name>
std::string listed(const std::vector<Item>& items, const Name& name, const char* last = " or ") {
    std::string text;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i > 0) text += i + 1 == items.size() ? last : ", ";
        text += name(items[i]);
    }
    return text;
}

/// "rear setback of 32 ft": a measure's name ends in its unit.
std::string words_of(const Measure& measure) {
    std::string name = measure.name;
    std::string unit;
    for (const std::string_view suffix : {"_sq_ft", "_ft"}) {
        if (!name.ends_with(suffix)) continue;
        unit = suffix;
        name.resize(name.size() - suffix.size());
        break;
    }
    std::string text = name + " of " + measure.value.text() + unit;
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

/// "Kitchen counters: Quartz".
std::string full_name(const PriceBook& book, const OptionRef& ref) {
    const Option& option = at(book.options, ref.option);
    if (ref.level < 0) return option.name;
    return option.name + ": " + at(option.levels, ref.level).name;
}

} // namespace

std::string described(const PriceBook& book, const Conflict& conflict, Naming naming) {
    const Option& option = at(book.options, conflict.option);
    const auto refs = [&] {
        return listed(conflict.others, [&](const OptionRef& ref) {
            return naming == Naming::ids ? name_of(book, ref) : full_name(book, ref);
        });
    };
    switch (conflict.barrier) {
    case Barrier::not_on_plan:
        return "not offered on this plan";
    case Barrier::not_on_elevation:
        return "only on elevation " + listed(option.only.elevations, [](auto& id) { return id; });
    case Barrier::not_on_lot:
        return "only on lot " +
               listed(option.only.lots, [&](int lot) { return at(book.lots, lot).id; });
    case Barrier::lot_grade:
        return "only on lots graded " +
               listed(option.only.grades, [](Grade grade) { return std::string(name_of(grade)); });
    case Barrier::lot_too_small: {
        for (const Measure& least : option.only.lot_at_least) {
            if (least.name != conflict.measure) continue;
            return "needs a lot with " + words_of(least) + " or more";
        }
        return "needs a larger lot";
    }
    case Barrier::past_cutoff:
        return "its cutoff has passed: " + at(book.stages, option.cutoff).name;
    case Barrier::needs:
        return "needs " + refs();
    case Barrier::excludes:
        return "not together with " + refs();
    case Barrier::one_of:
        return "only one of this kind; " + refs() + " is chosen";
    }
    return {};
}

} // namespace quoin
