// Pricing a home: base, elevation, lot, options in the buyer's order, incentives.
#include <quoin/home/priced_home.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

/// The best form in which chosen packages bring an option, if any does.
std::optional<OptionRef> granted(const PriceBook& book, const Selection& selection,
                                 Index<Option> option) {
    std::optional<OptionRef> best;
    for (const Pick& pick : selection.picks) {
        for (const OptionRef& part : at(book.options, pick.option).parts) {
            if (part.option == option && (!best || part.meets(*best))) best = part;
        }
    }
    return best;
}

bool has_package(const PriceBook& book, const Selection& selection) {
    return std::any_of(selection.picks.begin(), selection.picks.end(), [&](const Pick& pick) {
        return at(book.options, pick.option).kind == OptionKind::package;
    });
}

Money overage(const Option& option, const Pick& pick, Index<Plan> plan) {
    const Money budget = option.price.on(plan).value_or(Money{});
    const Money spend = pick.spend.value_or(budget);
    return spend > budget ? spend - budget : Money{};
}

/// A line for a pick that no package touches.
Line plain_line(const Option& option, const Pick& pick, Index<Plan> plan) {
    Line line;
    line.kind = option.kind == OptionKind::choice ? LineKind::choice : LineKind::option;
    line.option = pick.option;
    line.level = pick.level;
    if (option.kind == OptionKind::choice) return line;
    line.quantity = quantity_of(option, pick, plan);
    line.unit_price = option.kind == OptionKind::allowance
                          ? overage(option, pick, plan)
                          : unit_price(option, pick.level, plan).value_or(Money{});
    line.amount = times(line.unit_price, line.quantity, Rounding::half_away);
    return line;
}

/// The same pick where a package already brings the option in this form, in the usual quantity:
/// only what is better or more is charged.
void set_against_package(Line& line, const Option& option, const OptionRef& brings,
                         Index<Plan> plan) {
    if (option.kind == OptionKind::choice) return;
    if (option.kind == OptionKind::levels && line.level > brings.level) {
        const Money brought = unit_price(option, brings.level, plan).value_or(Money{});
        line.unit_price = line.unit_price > brought ? line.unit_price - brought : Money{};
        line.amount = times(line.unit_price, line.quantity, Rounding::half_away);
        return;
    }
    if (option.kind == OptionKind::allowance && line.amount > Money{}) return; // over the budget
    const Decimal usual = option.quantity.usual_on(plan);
    if (line.quantity > usual) {
        line.quantity = line.quantity - usual;
        line.amount = times(line.unit_price, line.quantity, Rounding::half_away);
        return;
    }
    line.kind = LineKind::in_package;
    line.unit_price = Money{};
    line.amount = Money{};
}

void add_options(const PriceBook& book, const Selection& selection, PricedHome& home) {
    const bool packages = has_package(book, selection);
    Money structural;
    for (const Index<Pick> index : indexes_of(selection.picks)) {
        const Pick& pick = at(selection.picks, index);
        const Option& option = at(book.options, pick.option);
        Line line = plain_line(option, pick, selection.plan);
        line.pick = index;
        const auto brings = packages ? granted(book, selection, pick.option) : std::nullopt;
        if (brings) set_against_package(line, option, *brings, selection.plan);
        home.options += line.amount;
        if (option.structural) structural += line.amount;
        home.lines.push_back(line);
    }
    const Deposits& terms = book.deposits;
    home.option_deposit =
        percent_of(std::max(structural, Money{}), terms.structural_percent, Rounding::half_away) +
        percent_of(std::max(home.options - structural, Money{}), terms.finish_percent,
                   Rounding::half_away);
}

Money before_incentives(const PricedHome& home) {
    return home.base_price + home.elevation + home.lot_premium + home.options;
}

/// What each pick is given, in their order: a later pick of the same incentive has what the earlier
/// ones left, towards options none covers more than they cost, and off the price none takes more
/// than there is.
std::vector<IncentiveGiven> incentives_given(const PriceBook& book,
                                             const std::vector<IncentivePick>& picks,
                                             const PricedHome& home) {
    Money uncovered = std::max(home.options, Money{});
    Money price = std::max(before_incentives(home), Money{});
    std::vector<Money> used(book.incentives.size());
    std::vector<IncentiveGiven> given;
    given.reserve(picks.size());
    for (const IncentivePick& pick : picks) {
        const std::size_t index = pick.incentive.position();
        const Money whole = incentive_amount(at(book.incentives, pick.incentive), home);
        const Money rest = std::max(whole - used[index], Money{});
        Money amount = std::min(pick.amount.value_or(rest), rest);
        if (pick.use == IncentiveUse::options) {
            amount = std::min(amount, uncovered);
            uncovered -= amount;
        }
        if (is_off_price(pick.use)) {
            amount = std::min(amount, price);
            price -= amount;
        }
        used[index] += amount;
        given.push_back({pick.incentive, pick.use, amount});
    }
    return given;
}

/// Takes off the price what is given there.
void add_incentives(const PriceBook& book, const Selection& selection, PricedHome& home) {
    home.given = incentives_given(book, selection.incentives, home);
    for (const IncentiveGiven& given : home.given) {
        if (!is_off_price(given.use)) continue;
        home.incentives += given.amount;
        Line line{LineKind::incentive, -given.amount, -given.amount};
        line.incentive = given.incentive;
        home.lines.push_back(line);
    }
}

} // namespace

Money incentive_amount(const Incentive& incentive, const PricedHome& home) {
    if (incentive.amount) return *incentive.amount;
    const Money base = incentive.of == IncentiveBase::base_price ? home.base_price
                       : incentive.of == IncentiveBase::options  ? home.options
                                                                 : before_incentives(home);
    return percent_of(std::max(base, Money{}), incentive.percent, Rounding::half_away);
}

Money PricedHome::given_to(IncentiveUse use) const {
    Money sum;
    for (const IncentiveGiven& one : given) {
        if (one.use == use) sum += one.amount;
    }
    return sum;
}

Money PricedHome::credited() const {
    Money sum;
    for (const IncentiveGiven& one : given) {
        if (!is_off_price(one.use)) sum += one.amount;
    }
    return sum;
}

Decimal quantity_of(const Option& option, const Pick& pick, Index<Plan> plan) {
    if (option.quantity.from == Quantity::From::buyer && pick.quantity) return *pick.quantity;
    return option.quantity.usual_on(plan);
}

std::optional<Money> unit_price(const Option& option, std::optional<Index<Level>> level,
                                Index<Plan> plan) {
    if (option.kind == OptionKind::choice) return Money{};
    if (option.kind != OptionKind::levels) return option.price.on(plan);
    if (!level) return std::nullopt;
    const auto price = at(option.levels, *level).price.on(plan);
    const auto included = option.included_level_on(plan);
    if (!price || !included) return price;
    const Money base = at(option.levels, *included).price.on(plan).value_or(Money{});
    return std::max(*price - base, Money{});
}

namespace {

/// Base, elevation and lot.
PricedHome bare_home(const PriceBook& book, const Selection& selection) {
    const Plan& plan = at(book.plans, selection.plan);
    const Lot& lot = at(book.lots, selection.lot);
    PricedHome home;
    home.lines.reserve(selection.picks.size() + selection.incentives.size() + 3);
    home.base_price = plan.base_price;
    home.elevation = at(plan.elevations, selection.elevation).price;
    home.lot_premium = lot.premium;
    home.flood_zone = lot.flood_zone;
    const auto add = [&home](LineKind kind, Money amount) {
        home.lines.push_back({kind, amount, amount});
    };
    add(LineKind::base, home.base_price);
    add(LineKind::elevation, home.elevation);
    add(LineKind::lot, home.lot_premium);
    return home;
}

/// Incentives, the price and the earnest money, once the options are known.
void finish(const PriceBook& book, const Selection& selection, PricedHome& home) {
    add_incentives(book, selection, home);
    home.contract_price = before_incentives(home) - home.incentives;
    home.earnest_deposit = book.deposits.earnest.value_or(
        percent_of(home.contract_price, book.deposits.earnest_percent, Rounding::half_away));
    check(home);
}

} // namespace

PricedHome price_home(const PriceBook& book, const Selection& selection) {
    PricedHome home = bare_home(book, selection);
    add_options(book, selection, home);
    finish(book, selection, home);
    return home;
}

PricedHome home_at(const PriceBook& book, const Selection& selection, Money options) {
    PricedHome home = bare_home(book, selection);
    home.options = options;
    home.lines.push_back({LineKind::option, options, options});
    finish(book, selection, home);
    return home;
}

void check(const PricedHome& home) {
    Money sum;
    Money of_options;
    Money taken_off;
    for (const Line& line : home.lines) {
        sum += line.amount;
        if (line.kind == LineKind::incentive) taken_off -= line.amount;
        if (line.kind == LineKind::option) of_options += line.amount;
        const bool free = line.kind == LineKind::choice || line.kind == LineKind::in_package;
        ensure(!free || line.amount.is_zero(), "a choice, and what a package brings, cost nothing");
    }
    ensure_equal(sum, home.contract_price, "the lines of a priced home sum to its contract price");
    ensure_equal(of_options, home.options, "the lines of its options sum to their total");
    ensure_equal(taken_off, home.incentives, "the lines of its incentives sum to what they take");
    Money off_price;
    for (const IncentiveGiven& given : home.given) {
        ensure(given.amount >= Money{}, "an incentive never adds to what is paid");
        if (is_off_price(given.use)) off_price += given.amount;
    }
    ensure_equal(off_price, home.incentives, "what is given off the price is taken off it");
    ensure(home.given_to(IncentiveUse::options) <= std::max(home.options, Money{}),
           "incentives towards options cover no more than they cost");
}

std::optional<Money> charge(const Option& option, const Pick& pick, Index<Plan> plan) {
    const auto unit = unit_price(option, pick.level, plan);
    if (!unit) return std::nullopt;
    if (option.kind == OptionKind::allowance) {
        return std::max(pick.spend.value_or(*unit) - *unit, Money{});
    }
    return times(*unit, quantity_of(option, pick, plan), Rounding::half_away);
}

} // namespace quoin
