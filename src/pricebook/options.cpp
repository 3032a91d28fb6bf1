// Reading options: first each by itself, then what they say of each other.
#include "book_reader.hpp"

#include <algorithm>

namespace quoin {
namespace {

OptionKind kind_of(Reader& item) {
    const std::pair<std::string_view, OptionKind> marks[] = {{"levels", OptionKind::levels},
                                                             {"choices", OptionKind::choice},
                                                             {"allowance", OptionKind::allowance},
                                                             {"parts", OptionKind::package}};
    int found = 0;
    OptionKind kind = OptionKind::upgrade;
    for (const auto& [member, meaning] : marks) {
        if (!item.has(member)) continue;
        ++found;
        kind = meaning;
    }
    const bool priced = item.has("price");
    const bool needs_price = kind == OptionKind::upgrade || kind == OptionKind::package;
    if (found > 1 || priced != needs_price) {
        item.findings().add(problems::option_price_unclear(item.here()));
    }
    return kind;
}

void read_from_plan(Reader& item, const PriceBook& book, Quantity& quantity) {
    const std::string name = item.text("from_plan");
    quantity.from = Quantity::From::plan;
    std::vector<std::string> known;
    bool found = false;
    for (const Plan& plan : book.plans) {
        const Decimal* measure = find_measure(plan.measures, name);
        found = found || measure != nullptr;
        quantity.by_plan.push_back(measure != nullptr ? *measure : Decimal{});
        for (const Measure& other : plan.measures) known.push_back(other.name);
    }
    if (!found && !book.plans.empty()) { // no plans at all is reported where they are read
        item.findings().add(problems::name_unknown(item.spot("from_plan"), "measure of a plan",
                                                   name, nearest(name, known)));
    }
}

Quantity read_quantity(Reader& option, const PriceBook& book) {
    Quantity quantity;
    option.object("quantity", [&](Reader& item) {
        if (item.has("from_plan")) return read_from_plan(item, book, quantity);
        quantity.from = Quantity::From::buyer;
        quantity.lowest = item.maybe_decimal("min").value_or(Decimal::whole(1));
        quantity.highest = item.decimal("max");
        quantity.step = item.maybe_decimal("step").value_or(Decimal::whole(1));
        quantity.usual = item.maybe_decimal("usual").value_or(quantity.lowest);
        const bool fits = quantity.lowest > Decimal{} && quantity.step > Decimal{} &&
                          quantity.lowest <= quantity.highest && quantity.allows(quantity.usual);
        if (item.sound() && !fits) {
            item.findings().add(problems::quantity_out_of_steps(item.here()));
        }
    });
    return quantity;
}

std::vector<Level> read_levels(Reader& option, const PriceBook& book) {
    std::vector<Level> levels;
    option.each("levels", [&](Reader& item) {
        Level level;
        level.id = item.id("id");
        level.name = item.name("name");
        level.note = item.text_or("note", "");
        level.price = price_by_plan(item, "price", book);
        distinct_id(item, levels, level.id, "level");
        levels.push_back(std::move(level));
    });
    return levels;
}

std::vector<Choice> read_choices(Reader& option) {
    std::vector<Choice> choices;
    option.each("choices", [&](Reader& item) {
        Choice choice{item.id("id"), item.name("name"), item.text_or("note", "")};
        distinct_id(item, choices, choice.id, "choice");
        choices.push_back(std::move(choice));
    });
    return choices;
}

/// "laminate", or {"burdock": "quartz", "*": "laminate"}.
std::vector<int> read_included_level(Reader& option, const PriceBook& book,
                                     const std::vector<Level>& levels) {
    const Value* member = option.raw("included_level");
    if (member == nullptr) return {};
    if (member->kind != Value::Kind::object) {
        return std::vector<int>(book.plans.size(),
                                index_member(option, "included_level", levels, "level"));
    }
    std::vector<int> included(book.plans.size(), -1);
    int others = -1;
    option.members("included_level", [&](const Key& name, const Spot& spot) {
        const auto id = as_text(spot, option.findings());
        const int level = id ? look_up(levels, "level", *id, spot, option.findings()) : -1;
        if (name.name == "*") {
            others = level;
            return;
        }
        const int plan = look_up(book.plans, "plan", name.name, spot, option.findings());
        if (plan >= 0) at(included, plan) = level;
    });
    std::replace(included.begin(), included.end(), -1, others);
    return included;
}

void check_rising(Reader& item, const Option& option, const PriceBook& book) {
    for (std::size_t plan = 0; plan < book.plans.size(); ++plan) {
        std::optional<Money> before;
        for (const Level& level : option.levels) {
            const auto price = level.price.on(static_cast<int>(plan));
            if (price && before && *price < *before) {
                item.findings().add(
                    problems::levels_not_rising(item.spot("levels"), book.plans[plan].id));
                return;
            }
            if (price) before = price;
        }
    }
}

Work read_work(Reader& option) {
    Work work;
    option.items("work", [&](const Spot& spot) {
        if (const auto trade = as_coded<Work>(spot, option.findings())) work.** trade = true;
    });
    return work;
}

std::optional<Later> read_later(Reader& option) {
    std::optional<Later> later;
    option.object("later", [&](Reader& item) {
        later =
            Later{item.money("estimate"), item.text_or("note", ""), item.flag_or("each", false)};
    });
    return later;
}

Option read_one(Reader& item, const PriceBook& book) {
    Option option;
    option.id = item.id("id");
    option.name = item.name("name");
    option.text = item.text_or("text", "");
    option.note = item.text_or("note", "");
    option.area = index_member(item, "area", book.areas, "area");
    option.kind = kind_of(item);
    option.unit = item.word_or("unit", Unit::each);
    option.quantity = read_quantity(item, book);
    if (item.has("price")) option.price = price_by_plan(item, "price", book);
    if (item.has("allowance")) option.price = price_by_plan(item, "allowance", book);
    option.levels = read_levels(item, book);
    option.included_level = read_included_level(item, book, option.levels);
    option.choices = read_choices(item);
    option.one_of = item.name_or("one_of", "");
    option.only = read_only(item, book);
    if (item.has("cutoff")) option.cutoff = index_member(item, "cutoff", book.stages, "stage");
    option.structural = item.flag_or("structural", false);
    option.work = read_work(item);
    option.later = read_later(item);
    check_rising(item, option, book);
    for (const std::string_view relation : {"requires", "excludes", "parts"}) item.leave(relation);
    return option;
}

OptionRef read_ref(const Spot& spot, const PriceBook& book, Findings& findings) {
    const auto name = as_text(spot, findings);
    if (!name) return {};
    const std::size_t colon = name->find(':');
    OptionRef ref;
    ref.option = look_up(book.options, "option", name->substr(0, colon), spot, findings);
    if (ref.option >= 0 && colon != std::string::npos) {
        const Option& option = at(book.options, ref.option);
        ref.level = look_up(option.levels, "level", name->substr(colon + 1), spot, findings);
        if (ref.level < 0) ref.option = -1;
    }
    return ref;
}

/// One requirement: a name, or a list of names of which any one will do.
std::vector<OptionRef> read_need(const Spot& spot, const PriceBook& book, Findings& findings) {
    std::vector<OptionRef> any;
    const auto add = [&](const Spot& one) {
        const OptionRef ref = read_ref(one, book, findings);
        if (ref.option >= 0) any.push_back(ref);
    };
    if (spot.value->kind != Value::Kind::list) {
        add(spot);
        return any;
    }
    int index = 0;
    for (const Value& item : spot.value->items) add({&item, Path{&spot.path, {}, index++}});
    return any;
}

void read_relations(Reader& item, PriceBook& book, Option& option) {
    Findings& findings = item.findings();
    item.items("requires", [&](const Spot& spot) {
        auto need = read_need(spot, book, findings);
        if (!need.empty()) option.needs.push_back(std::move(need));
    });
    option.excludes = index_list(item, "excludes", book.options, "option");
    item.items("parts", [&](const Spot& spot) {
        const OptionRef ref = read_ref(spot, book, findings);
        if (ref.option < 0) return;
        const Option& part = at(book.options, ref.option);
        if (part.kind == OptionKind::package) {
            findings.add(problems::package_in_package(spot, part.id));
        }
        option.parts.push_back(ref);
    });
}

/// Follows what an option needs without an alternative, looking for a way back to itself; the way
/// is left in `chain`, last option first.
bool leads_back(const PriceBook& book, int start, int from, std::vector<bool>& seen,
                std::vector<int>& chain) {
    for (const auto& need : at(book.options, from).needs) {
        if (need.size() != 1) continue;
        const int next = need.front().option;
        const auto index = static_cast<std::size_t>(next);
        if (next == start ||
            (!seen[index] && (seen[index] = true) && leads_back(book, start, next, seen, chain))) {
            chain.push_back(next);
            return true;
        }
    }
    return false;
}

/// Reports each cycle once, at its first option.
void check_cycles(const std::vector<Mark>& marks, const PriceBook& book, Findings& findings) {
    std::vector<bool> reported(book.options.size());
    for (std::size_t i = 0; i < book.options.size(); ++i) {
        std::vector<bool> seen(book.options.size());
        std::vector<int> chain;
        const int start = static_cast<int>(i);
        if (reported[i] || !leads_back(book, start, start, seen, chain)) continue;
        std::string words = book.options[i].id;
        for (auto option = chain.rbegin(); option != chain.rend(); ++option) {
            words += " -> " + at(book.options, *option).id;
            reported[static_cast<std::size_t>(*option)] = true;
        }
        findings.add(problems::requires_cycle(marks[i].spot(), words));
    }
}

} // namespace

bool Quantity::allows(Decimal quantity) const {
    if (quantity < lowest || quantity > highest) return false;
    return (quantity - lowest).billionths() % step.billionths() == 0;
}

std::string quantity_limits(const Option& option) {
    const Quantity& q = option.quantity;
    if (q.from != Quantity::From::buyer) return "no quantity: the price book sets it";
    return "a quantity from " + q.lowest.text() + " to " + q.highest.text() + " in steps of " +
           q.step.text();
}

void read_options(Reader& root, PriceBook& book) {
    std::vector<Mark> marks;
    root.each(
        "options",
        [&](Reader& item) {
            Option option = read_one(item, book);
            distinct_id(item, book.options, option.id, "option");
            book.options.push_back(std::move(option));
            marks.emplace_back(item.here());
        },
        false, caps::options);
    // Names of later options may be used before them, so relations come in a second pass.
    for (std::size_t i = 0; i < marks.size(); ++i) {
        Reader item(*marks[i].value, marks[i].spot().path, root.findings());
        read_relations(item, book, book.options[i]);
    }
    check_cycles(marks, book, root.findings());
}

} // namespace quoin
