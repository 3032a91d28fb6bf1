// Where an option can be had: each limit read, held to a home, and why it bars.
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
    WhyNot (*why)(const PriceBook& book, const Only& only, const Unkept& unkept);
};

void read_elevations(Reader& only, const PriceBook& book, Only& into) {
    std::vector<Elevation> all;
    for (const Plan& plan : book.plans) {
        all.insert(all.end(), plan.elevations.begin(), plan.elevations.end());
    }
    only.items("elevations", [&](const Spot& spot) {
        const auto id = as_text(spot, only.findings());
        if (id && look_up(all, Noun::elevation, *id, spot, only.findings())) {
            into.elevations.push_back(*id);
        }
    });
}

/// What an elevation is called: plans that share one by its id share its name.
std::string named(const PriceBook& book, const std::string& elevation) {
    for (const Plan& plan : book.plans) {
        for (const Elevation& one : plan.elevations) {
            if (one.id == elevation) return one.name;
        }
    }
    return elevation;
}

/// The first measure by which the lot is too small.
Detail too_small(const LimitAsked& asked) {
    for (const Measure& least : asked.only.lot_at_least) {
        const Decimal* size = find_measure(asked.lot().measures, least.name);
        if (size == nullptr || *size < least.value) return least.name;
    }
    return std::nullopt;
}

const LimitRule rules[] = {
    {Limit::elevations, read_elevations,
     [](const LimitAsked& asked) {
         return unless(allows(asked.only.elevations, asked.elevation().id));
     },
     [](const PriceBook& book, const Only& only, const Unkept&) {
         WhyNot why{.kind = WhyNot::Kind::only_on_elevations};
         for (const std::string& id : only.elevations) why.names.push_back(named(book, id));
         return why;
     }},
    {Limit::lots,
     [](Reader& only, const PriceBook& book, Only& into) {
         into.lots = index_list(only, "lots", book.lots, Noun::lot);
     },
     [](const LimitAsked& asked) { return unless(allows(asked.only.lots, asked.where.lot)); },
     [](const PriceBook& book, const Only& only, const Unkept&) {
         WhyNot why{.kind = WhyNot::Kind::only_on_lots};
         for (const Index<Lot> lot : only.lots) why.names.push_back(at(book.lots, lot).id);
         return why;
     }},
    {Limit::grades,
     [](Reader& only, const PriceBook&, Only& into) { into.grades = only.words<Grade>("grades"); },
     [](const LimitAsked& asked) { return unless(allows(asked.only.grades, asked.lot().grade)); },
     [](const PriceBook&, const Only& only, const Unkept&) {
         return WhyNot{.kind = WhyNot::Kind::only_on_grades, .grades = only.grades};
     }},
    {Limit::lot_at_least,
     [](Reader& only, const PriceBook&, Only& into) {
         into.lot_at_least = measures(only, "lot_at_least");
     },
     too_small,
     [](const PriceBook&, const Only& only, const Unkept& unkept) {
         return WhyNot{.kind = WhyNot::Kind::lot_too_small,
                       .names = {unkept.detail},
                       .least = *find_measure(only.lot_at_least, unkept.detail)};
     }},
};

} // namespace

Only read_only(Reader& option, const PriceBook& book) {
    Only only;
    option.object("only", [&](Reader& item) {
        only.plans = index_list(item, "plans", book.plans, Noun::plan);
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

WhyNot why_not(const PriceBook& book, const Only& only, const Unkept& unkept) {
    const auto rule = std::find_if(std::begin(rules), std::end(rules),
                                   [&](const LimitRule& one) { return one.limit == unkept.limit; });
    ensure(rule != std::end(rules), "every limit has its reason");
    return rule->why(book, only, unkept);
}

} // namespace quoin
