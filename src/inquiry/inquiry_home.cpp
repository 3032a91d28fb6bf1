// Reading the home an inquiry asks about, and holding it to the price book's rules.
#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/home/priced_home.hpp>
#include <quoin/home/rules.hpp>
#include <quoin/inquiry/incentive_rules.hpp>
#include <quoin/text/names.hpp>
#include <quoin/text/problems.hpp>

#include "inquiry_parts.hpp"

namespace quoin {
namespace {

/// The members that the option's kind asks for.
void read_pick_details(Reader& item, const Option& option, Pick& pick) {
    Findings& findings = item.findings();
    const auto needs = [&](std::string_view key, const auto& without) {
        if (item.has(key)) return true;
        findings.add(without(item.here(), option.id));
        return false;
    };
    if (option.kind == OptionKind::levels && needs("level", problems::pick_without_level)) {
        pick.level = index_member(item, "level", option.levels, Noun::level);
    }
    if (option.kind == OptionKind::choice && needs("choice", problems::pick_without_choice)) {
        pick.choice = index_member(item, "choice", option.choices, Noun::choice);
    }
    if (option.kind == OptionKind::allowance && needs("spend", problems::pick_without_spend)) {
        pick.spend = item.maybe_money("spend");
        if (pick.spend && *pick.spend < Money{}) {
            findings.add(problems::amount_below_zero(item.spot("spend")));
        }
    }
    if (!item.has("quantity")) return;
    pick.quantity = item.maybe_decimal("quantity");
    const bool allowed = option.quantity.from == Quantity::From::buyer && pick.quantity &&
                         option.quantity.allows(*pick.quantity);
    if (pick.quantity && !allowed) {
        findings.add(problems::quantity_not_allowed(item.spot("quantity"), option.id,
                                                    quantity_limits(option)));
    }
}

/// A selection in short form, "deck", or as an object. Nothing where its option is not there.
std::optional<Pick> read_pick(const Spot& spot, const PriceBook& book, Findings& findings,
                              const std::function<void(Reader&)>& more = {}) {
    if (spot.value->kind != Value::Kind::object) {
        const auto id = as_text(spot, findings);
        const auto index =
            id ? look_up(book.options, Noun::option, *id, spot, findings) : std::nullopt;
        if (!index) return std::nullopt;
        const Option& option = at(book.options, *index);
        if (option.kind == OptionKind::levels || option.kind == OptionKind::choice ||
            option.kind == OptionKind::allowance) {
            findings.add(problems::pick_without_details(spot, *id));
        }
        return Pick{*index};
    }
    Reader item(*spot.value, spot.path, findings);
    const auto index = index_member(item, "option", book.options, Noun::option);
    Pick pick;
    pick.agreed = item.flag_or("agreed", false);
    if (more) more(item);
    if (!index) return std::nullopt;
    pick.option = *index;
    read_pick_details(item, at(book.options, pick.option), pick);
    item.finish();
    return pick;
}

std::vector<Mark> read_selections(Reader& root, const PriceBook& book, Selection& selection) {
    std::vector<Mark> marks;
    root.items(
        "selections",
        [&](const Spot& spot) {
            const auto pick = read_pick(spot, book, root.findings());
            if (!pick) return;
            if (selection.find(pick->option) != nullptr) {
                root.report(problems::selected_twice(spot, at(book.options, pick->option).id));
                return;
            }
            selection.picks.push_back(*pick);
            marks.emplace_back(spot);
        },
        caps::selections);
    return marks;
}

/// What a wish is worth: above zero, and small enough that many of them can be summed.
std::optional<Decimal> read_weight(Reader& item) {
    constexpr int most = 1'000'000;
    const auto weight = item.maybe_decimal("weight");
    if (weight && (*weight <= Decimal{} || *weight > Decimal::whole(most))) {
        item.report(problems::weight_out_of_range(item.spot("weight")));
        return std::nullopt;
    }
    return weight;
}

std::vector<Mark> read_wishes(Reader& root, const PriceBook& book, Inquiry& inquiry) {
    std::vector<Mark> marks;
    root.items(
        "wishes",
        [&](const Spot& spot) {
            Wish wish;
            wish.rank = static_cast<int>(inquiry.wishes.size()) + 1;
            const auto pick = read_pick(spot, book, root.findings(), [&](Reader& item) {
                wish.rank = item.maybe_whole("rank", 1, 1000).value_or(wish.rank);
                wish.weight = read_weight(item);
                wish.must = item.flag_or("must", false);
            });
            if (!pick) return;
            wish.pick = *pick;
            inquiry.wishes.push_back(wish);
            marks.emplace_back(spot);
        },
        caps::wishes);
    return marks;
}

/// The rule by which two wishes cannot stand together, or nothing.
std::optional<WhyNot> rule_between(const PriceBook& book, const Wish& wish, const Wish& other) {
    if (other.pick.option == wish.pick.option) return WhyNot{WhyNot::Kind::two_forms};
    const auto conflict = conflict_between(book, wish.pick.option, other.pick.option);
    return conflict ? std::optional(why_not(book, *conflict)) : std::nullopt;
}

/// Two wishes that must be had must be able to stand together: not two forms of one option, and
/// neither excluding the other.
void check_musts(const PriceBook& book, const Inquiry& inquiry, const std::vector<Mark>& marks,
                 Findings& findings) {
    for (std::size_t i = 0; i < inquiry.wishes.size(); ++i) {
        const Wish& wish = inquiry.wishes[i];
        for (std::size_t k = 0; wish.must && k < i; ++k) {
            const Wish& other = inquiry.wishes[k];
            if (!other.must) continue;
            const auto rule = rule_between(book, wish, other);
            if (!rule) continue;
            findings.add(problems::wishes_exclude(
                marks[i].spot(), name_of(book, {wish.pick.option, wish.pick.level}),
                name_of(book, {other.pick.option, other.pick.level}), *rule));
        }
    }
}

/// One that is tied to a lender is given only with that lender's rates.
std::optional<WhyNot> why_not(const Incentive& incentive, const Inquiry& inquiry,
                              const RateSheet* sheet, IncentiveUse use) {
    const auto& uses = incentive.uses;
    if (std::find(uses.begin(), uses.end(), use) == uses.end()) {
        return WhyNot{WhyNot::Kind::not_for_use};
    }
    const auto why = why_not_given(incentive, inquiry);
    return why ? why : why_not_given(incentive, sheet);
}

std::vector<Mark> read_incentives(Reader& root, const Desk& desk, Inquiry& inquiry) {
    std::vector<Mark> marks;
    const PriceBook& book = desk.book;
    const RateSheet* sheet = inquiry.sheet(desk.lending);
    root.each(
        "incentives",
        [&](Reader& item) {
            IncentivePick pick;
            const auto index = index_member(item, "id", book.incentives, Noun::incentive);
            pick.use = item.word<IncentiveUse>("use");
            pick.amount = item.maybe_money("amount");
            if (!index) return;
            pick.incentive = *index;
            const Incentive& incentive = at(book.incentives, pick.incentive);
            const auto why = why_not(incentive, inquiry, sheet, pick.use);
            if (why) {
                item.report(problems::incentive_not_here(item.spot("id"),
                                                         {incentive.id, incentive.name}, *why));
            }
            if (pick.amount && *pick.amount < Money{}) {
                item.report(problems::amount_below_zero(item.spot("amount")));
            }
            inquiry.selection.incentives.push_back(pick);
            marks.emplace_back(item.spot("id"));
        },
        false, caps::incentives);
    return marks;
}

void read_requests(Reader& root, const PriceBook& book, Selection& selection) {
    root.each(
        "requests",
        [&](Reader& item) {
            Request request;
            request.area = index_or_first(item, "area", book.areas, Noun::area);
            request.text = item.text("text");
            request.estimate = item.maybe_money("estimate");
            selection.requests.push_back(std::move(request));
        },
        false, caps::requests);
}

Problem problem_of(const PriceBook& book, const Selection& selection, const Conflict& conflict,
                   const Spot& spot) {
    const bool of_two =
        conflict.barrier == Barrier::excludes || conflict.barrier == Barrier::one_of;
    ensure(!of_two || conflict.others.size() == 1, "a conflict of two options names the other one");
    const std::string name = name_of(book, conflict.of);
    const problems::Named option(at(book.options, conflict.of.option).id, name);
    const auto other = [&] { return name_of(book, conflict.others.front()); };
    switch (conflict.barrier) {
    case Barrier::needs: {
        std::vector<std::string> any;
        for (const OptionRef& ref : conflict.others) any.push_back(name_of(book, ref));
        return problems::option_needs(spot, option, any);
    }
    case Barrier::excludes:
    case Barrier::one_of:
        return problems::options_exclude(spot, option, other());
    case Barrier::past_cutoff: {
        const auto& stages = book.stages;
        const auto cutoff = at(book.options, conflict.of.option).cutoff.value();
        return problems::past_cutoff(spot, option, at(stages, cutoff).name,
                                     at(stages, selection.stage.value()).name);
    }
    default:
        return problems::option_not_here(spot, option, why_not(book, conflict));
    }
}

/// The lot must be free and fit the plan.
void check_lot(Reader& root, const PriceBook& book, const Selection& selection) {
    const Lot& lot = at(book.lots, selection.lot);
    if (lot.status != LotStatus::free) {
        root.report(problems::lot_not_free(root.spot("lot"), lot.id, lot.status));
    }
    if (allows(lot.plans, selection.plan)) return;
    std::vector<std::string> fitting;
    for (const Index<Plan> plan : lot.plans) fitting.push_back(at(book.plans, plan).id);
    root.report(problems::plan_not_on_lot(root.spot("plan"), at(book.plans, selection.plan).id,
                                          lot.id, fitting));
}

/// What comes off the price leaves some of it.
void check_price(Reader& root, const PriceBook& book, const Selection& selection,
                 const std::vector<Mark>& incentives) {
    if (price_home(book, selection).contract_price > Money{}) return;
    for (std::size_t i = 0; i < incentives.size(); ++i) {
        const IncentivePick& pick = selection.incentives[i];
        if (!is_off_price(pick.use)) continue;
        const Incentive& incentive = at(book.incentives, pick.incentive);
        root.report(problems::incentive_not_here(
            incentives[i].spot(), {incentive.id, incentive.name}, WhyNot{WhyNot::Kind::takes_all}));
        return;
    }
}

} // namespace

void read_home(Reader& root, const Desk& desk, Inquiry& inquiry) {
    const PriceBook& book = desk.book;
    Selection& selection = inquiry.selection;
    const auto plan = index_member(root, "plan", book.plans, Noun::plan);
    std::optional<Index<Elevation>> elevation;
    if (plan) {
        const auto& elevations = at(book.plans, *plan).elevations;
        elevation = index_member(root, "elevation", elevations, Noun::elevation);
    } else {
        root.leave("elevation");
    }
    const auto lot = index_member(root, "lot", book.lots, Noun::lot);
    selection.plan = plan.value_or(selection.plan);
    selection.elevation = elevation.value_or(selection.elevation);
    selection.lot = lot.value_or(selection.lot);
    if (root.has("stage")) selection.stage = index_member(root, "stage", book.stages, Noun::stage);
    const auto marks = read_selections(root, book, selection);
    const auto wish_marks = read_wishes(root, book, inquiry);
    ensure_equal(marks.size(), selection.picks.size(), "each pick knows its place in the file");
    ensure_equal(wish_marks.size(), inquiry.wishes.size(), "so does each wish");
    read_requests(root, book, selection);
    const auto incentive_marks = read_incentives(root, desk, inquiry);
    // The rules are of a home: without one there is nothing to hold to them.
    if (!plan || !elevation || !lot) return;
    check_musts(book, inquiry, wish_marks, root.findings());
    check_lot(root, book, selection);
    for (const Conflict& conflict : conflicts(book, selection)) {
        for (std::size_t i = 0; i < marks.size(); ++i) {
            if (selection.picks[i].option != conflict.of.option) continue;
            root.report(problem_of(book, selection, conflict, marks[i].spot()));
        }
    }
    if (root.findings().none()) check_price(root, book, selection, incentive_marks);
}

} // namespace quoin
