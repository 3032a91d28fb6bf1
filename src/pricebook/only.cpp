// Where an option can be had: each limit read, held to a home and put in words.
#include <quoin/pricebook/only.hpp>

#include <algorithm>
#include <iterator>
#include <optional>

#include "book_reader.hpp"

namespace quoin {
namespace {

/// What a limit is asked about.
struct LimitAsked {
    const PriceBook& book;
    const Only& only;
    const Where& where;

    [[nodiscard]] const Lot& lot() const { return at(book.lots, where.lot); }
    [[nodiscard]] const Elevation& elevation() const {
        return at(at(book.plans, where.plan).elevations, where.elevation);
    }
};

/// Where a limit is not kept: what more is to be said of it, else empty.
using Detail = std::optional<std::string>;

Detail unless(bool kept) { return kept ? Detail() : Detail(""); }

struct LimitRule {
    Limit limit;
    void (*read)(Reader& only, const PriceBook& book, Only& into);
    Detail (*unmet)(const LimitAsked& asked);
    std::string (*words)(const PriceBook& book, const Only& only, const Unkept& unkept);
};

void read_elevations(Reader& only, const PriceBook& book, Only& into) {
    std::vector<Elevation> all;
    for (const Plan& plan : book.plans) {
        all.insert(all.end(), plan.elevations.begin(), plan.elevations.end());
    }
    only.items("elevations", [&](const Spot& spot) {
        const auto id = as_text(spot, only.findings());
        if (id && look_up(all, "elevation", *id, spot, only.findings())) {
            into.elevations.push_back(*id);
        }
    });
}

template <class Item, class Name>
std::vector<std::string> names_of(const std::vector<Item>& items, const Name& name) {
    std::vector<std::string> names;
    std::transform(items.begin(), items.end(), std::back_inserter(names), name);
    return names;
}

/// The first measure by which the lot is too small.
Detail too_small(const LimitAsked& asked) {
    for (const Measure& least : asked.only.lot_at_least) {
        const Decimal* size = find_measure(asked.lot().measures, least.name);
        if (size == nullptr || *size < least.value) return least.name;
    }
    return std::nullopt;
}

/// "needs a lot with rear setback of 32 ft or more": a measure's name ends in its unit.
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
    return "needs a lot with " + text + " or more";
}

const LimitRule rules[] = {
    {Limit::elevations, read_elevations,
     [](const LimitAsked& asked) {
         return unless(allows(asked.only.elevations, asked.elevation().id));
     },
     [](const PriceBook&, const Only& only, const Unkept&) {
         return "only on elevation " + any_of(only.elevations);
     }},
    {Limit::lots,
     [](Reader& only, const PriceBook& book, Only& into) {
         into.lots = index_list(only, "lots", book.lots, "lot");
     },
     [](const LimitAsked& asked) { return unless(allows(asked.only.lots, asked.where.lot)); },
     [](const PriceBook& book, const Only& only, const Unkept&) {
         return "only on lot " +
                any_of(names_of(only.lots, [&](Index<Lot> lot) { return at(book.lots, lot).id; }));
     }},
    {Limit::grades,
     [](Reader& only, const PriceBook&, Only& into) { into.grades = only.words<Grade>("grades"); },
     [](const LimitAsked& asked) { return unless(allows(asked.only.grades, asked.lot().grade)); },
     [](const PriceBook&, const Only& only, const Unkept&) {
         const auto name = [](Grade grade) { return std::string(name_of(grade)); };
         return "only on lots graded " + any_of(names_of(only.grades, name));
     }},
    {Limit::lot_at_least,
     [](Reader& only, const PriceBook&, Only& into) {
         into.lot_at_least = measures(only, "lot_at_least");
     },
     too_small,
     [](const PriceBook&, const Only& only, const Unkept& unkept) {
         return words_of({unkept.detail, *find_measure(only.lot_at_least, unkept.detail)});
     }},
};

} // namespace

std::string any_of(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0) text += i + 1 == names.size() ? " or " : ", ";
        text += names[i];
    }
    return text;
}

Only read_only(Reader& option, const PriceBook& book) {
    Only only;
    option.object("only", [&](Reader& item) {
        only.plans = index_list(item, "plans", book.plans, "plan");
        for (const LimitRule& rule : rules) rule.read(item, book, only);
    });
    return only;
}

std::vector<Unkept> unkept(const PriceBook& book, const Only& only, const Where& where) {
    const LimitAsked asked{book, only, where};
    std::vector<Unkept> found;
    for (const LimitRule& rule : rules) {
        if (Detail unmet = rule.unmet(asked)) {
            found.push_back({rule.limit, std::move(*unmet)});
        }
    }
    return found;
}

std::string described(const PriceBook& book, const Only& only, const Unkept& unkept) {
    const auto rule = std::find_if(std::begin(rules), std::end(rules),
                                   [&](const LimitRule& one) { return one.limit == unkept.limit; });
    ensure(rule != std::end(rules), "every limit has its words");
    return rule->words(book, only, unkept);
}

} // namespace quoin
