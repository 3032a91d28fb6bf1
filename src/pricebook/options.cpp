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
        item.report(problems::option_price_unclear(item.here()));
    }
    return kind;
}

void read_from_plan(Reader& item, const PriceBook& book, Quantity& quantity) {
    const std::string name = item.text("from_plan");
    quantity.from = Quantity::From::plan;
    quantity.measure = name;
    std::vector<std::string> known;
    bool found = false;
    std::vector<Decimal> by_plan;
    for (const Plan& plan : book.plans) {
        const Decimal* measure = find_measure(plan.measures, name);
        found = found || measure != nullptr;
        by_plan.push_back(measure != nullptr ? *measure : Decimal{});
        for (const Measure& other : plan.measures) known.push_back(other.name);
    }
    quantity.by_plan = PerItem<Plan, Decimal>(std::move(by_plan));
    if (!found && !book.plans.empty()) { // no plans at all is reported where they are read
        item.report(problems::name_unknown(item.spot("from_plan"), Noun::plan_measure, name,
                                           nearest(name, known)));
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
        if (item.sound() && !fits) item.report(problems::quantity_out_of_steps(item.here()));
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
        level.office_note = item.text_or("office_note", "");
        level.look = read_look(item);
        level.price = price_by_plan(item, "price", book);
        distinct_id(item, levels, level.id, Noun::level);
        levels.push_back(std::move(level));
    });
    return levels;
}

std::vector<Choice> read_choices(Reader& option) {
    std::vector<Choice> choices;
    option.each("choices", [&](Reader& item) {
        Choice choice{item.id("id"), item.name("name"), item.text_or("note", ""),
                      item.text_or("office_note", ""), read_look(item)};
        distinct_id(item, choices, choice.id, Noun::choice);
        choices.push_back(std::move(choice));
    });
    return choices;
}

using IncludedLevel = std::optional<Index<Level>>;

/// "laminate", or {"burdock": "quartz", "*": "laminate"}.
PerItem<Plan, IncludedLevel> read_included_level(Reader& option, const PriceBook& book,
                                                 const std::vector<Level>& levels) {
    const Value* member = option.raw("included_level");
    if (member == nullptr) return {};
    std::vector<IncludedLevel> included(book.plans.size());
    if (member->kind != Value::Kind::object) {
        const auto level = index_member(option, "included_level", levels, Noun::level);
        included.assign(book.plans.size(), level);
        return PerItem<Plan, IncludedLevel>(std::move(included));
    }
    IncludedLevel others;
    option.members("included_level", [&](const Key& name, const Spot& spot) {
        const auto id = as_text(spot, option.findings());
        const auto level =
            id ? look_up(levels, Noun::level, *id, spot, option.findings()) : IncludedLevel{};
        if (name.name == "*") {
            others = level;
            return;
        }
        const auto plan = look_up(book.plans, Noun::plan, name.name, spot, option.findings());
        if (plan) included[plan->position()] = level;
    });
    std::replace(included.begin(), included.end(), IncludedLevel{}, others);
    return PerItem<Plan, IncludedLevel>(std::move(included));
}

void check_rising(Reader& item, const Option& option, const PriceBook& book) {
    for (const Index<Plan> plan : indexes_of(book.plans)) {
        std::optional<Money> before;
        for (const Level& level : option.levels) {
            const auto price = level.price.on(plan);
            if (price && before && *price < *before) {
                item.report(
                    problems::levels_not_rising(item.spot("levels"), at(book.plans, plan).id));
                return;
            }
            if (price) before = price;
        }
    }
}

Work read_work(Reader& option) {
    Work work;
    for (const auto trade : option.words<Work>("work")) work.*trade = true;
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
    option.office_note = item.text_or("office_note", "");
    option.look = read_look(item);
    option.area = index_or_first(item, "area", book.areas, Noun::area);
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
    if (item.has("cutoff")) option.cutoff = index_member(item, "cutoff", book.stages, Noun::stage);
    option.structural = item.flag_or("structural", false);
    option.work = read_work(item);
    option.later = read_later(item);
    check_rising(item, option, book);
    for (const std::string_view relation : {"requires", "excludes", "parts"}) item.leave(relation);
    return option;
}

std::optional<OptionRef> read_ref(const Spot& spot, const PriceBook& book, Findings& findings) {
    const auto name = as_text(spot, findings);
    if (!name) return std::nullopt;
    const std::size_t colon = name->find(':');
    const auto option = look_up(book.options, Noun::option, name->substr(0, colon), spot, findings);
    if (!option || colon == std::string::npos) {
        return option ? std::optional(OptionRef{*option}) : std::nullopt;
    }
    const auto& levels = at(book.options, *option).levels;
    const auto level = look_up(levels, Noun::level, name->substr(colon + 1), spot, findings);
    return level ? std::optional(OptionRef{*option, level}) : std::nullopt;
}

/// One requirement: a name, or a list of names of which any one will do.
std::vector<OptionRef> read_need(const Spot& spot, const PriceBook& book, Findings& findings) {
    std::vector<OptionRef> any;
    const auto add = [&](const Spot& one) {
        if (const auto ref = read_ref(one, book, findings)) any.push_back(*ref);
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
    option.excludes = index_list(item, "excludes", book.options, Noun::option);
    item.items("parts", [&](const Spot& spot) {
        const auto ref = read_ref(spot, book, findings);
        if (!ref) return;
        const Option& part = at(book.options, ref->option);
        if (part.kind == OptionKind::package) {
            findings.add(problems::package_in_package(spot, part.id));
        }
        option.parts.push_back(*ref);
    });
}

/// Follows what an option needs without an alternative, looking for a way back to itself; the way
/// is left in `chain`, last option first.
bool leads_back(const PriceBook& book, Index<Option> start, Index<Option> from,
                std::vector<bool>& seen, std::vector<Index<Option>>& chain) {
    for (const auto& need : at(book.options, from).needs) {
        if (need.size() != 1) continue;
        const Index<Option> next = need.front().option;
        const std::size_t index = next.position();
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
    for (const Index<Option> start : indexes_of(book.options)) {
        std::vector<bool> seen(book.options.size());
        std::vector<Index<Option>> chain;
        const std::size_t i = start.position();
        if (reported[i] || !leads_back(book, start, start, seen, chain)) continue;
        std::string words = book.options[i].id;
        for (auto option = chain.rbegin(); option != chain.rend(); ++option) {
            words += " -> " + at(book.options, *option).id;
            reported[option->position()] = true;
        }
        findings.add(problems::requires_cycle(marks[i].spot(), words));
    }
}

/// What a plan's homes cost at least, before options. Nothing where no lot fits it.
std::optional<Money> least_home(const PriceBook& book, Index<Plan> index) {
    const Plan& plan = at(book.plans, index);
    std::optional<Money> least;
    for (const Lot& lot : book.lots) {
        if (!allows(lot.plans, index)) continue;
        for (const Elevation& elevation : plan.elevations) {
            const Money home = plan.base_price + elevation.price + lot.premium;
            least = std::min(least.value_or(home), home);
        }
    }
    return least;
}

/// What an option may take off the price, by whole units: zero, or less than it.
Money credit_of(const Option& option, Index<Plan> plan) {
    Money least = std::min(option.price.on(plan).value_or(Money{}), Money{});
    for (const Level& level : option.levels) {
        least = std::min(level.price.on(plan).value_or(Money{}), least);
    }
    const Quantity& quantity = option.quantity;
    const bool by_buyer = quantity.from == Quantity::From::buyer;
    const Decimal most = by_buyer ? quantity.highest : quantity.usual_on(plan);
    return least * ((most.billionths() + Decimal::one - 1) / Decimal::one);
}

/// All that options take off together leaves every home a price.
void check_credits(const std::vector<Mark>& marks, const PriceBook& book, Findings& findings) {
    if (!findings.none()) return;
    for (const Index<Plan> plan : indexes_of(book.plans)) {
        Money room = least_home(book, plan).value_or(Money{});
        if (room <= Money{}) continue;
        for (const Index<Option> index : indexes_of(book.options)) {
            const Option& option = at(book.options, index);
            room += credit_of(option, plan);
            if (room > Money{}) continue;
            const Mark& mark = marks[index.position()];
            Reader item(*mark.value, mark.spot().path, findings);
            findings.add(
                problems::credits_take_all(item.spot(option.levels.empty() ? "price" : "levels")));
            return;
        }
    }
}

} // namespace

bool Quantity::allows(Decimal quantity) const {
    if (quantity < lowest || quantity > highest) return false;
    return (quantity - lowest).billionths() % step.billionths() == 0;
}

Wanted quantity_limits(const Option& option) {
    const Quantity& q = option.quantity;
    if (q.from != Quantity::From::buyer) return {.kind = Wanted::Kind::quantity_of_the_book};
    return {.kind = Wanted::Kind::quantity_in_steps,
            .least = q.lowest,
            .most = q.highest,
            .step = q.step};
}

void read_options(Reader& root, PriceBook& book) {
    std::vector<Mark> marks;
    root.each(
        "options",
        [&](Reader& item) {
            Option option = read_one(item, book);
            distinct_id(item, book.options, option.id, Noun::option);
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
    check_credits(marks, book, root.findings());
}

} // namespace quoin
