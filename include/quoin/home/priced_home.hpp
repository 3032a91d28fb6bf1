// A selection against a price book: the home priced line by line.
//
//   PricedHome home = price_home(book, selection);
//   home.contract_price  ==  the sum of home.lines' amounts, always
//
// Pricing never refuses: whether the selection obeys the rules is rules.hpp's question.
#pragma once

#include <vector>

#include <quoin/exact/decimal.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/home/selection.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

enum class LineKind {
    base,
    elevation,
    lot,
    option,     ///< an upgrade, a level, an allowance's overage or a package
    choice,     ///< picked at no cost
    in_package, ///< a pick that a chosen package already brings, at no charge
    incentive,  ///< negative: taken off the price
};
template <>
inline constexpr auto codes<LineKind> = coded<LineKind>({{LineKind::base, "base"},
                                                         {LineKind::elevation, "elevation"},
                                                         {LineKind::lot, "lot"},
                                                         {LineKind::option, "option"},
                                                         {LineKind::choice, "choice"},
                                                         {LineKind::in_package, "in_package"},
                                                         {LineKind::incentive, "incentive"}});

struct Line {
    LineKind kind = LineKind::base;
    Money unit_price; ///< of a level: the difference to what is included
    Money amount;
    Decimal quantity = Decimal::whole(1);
    std::optional<Index<Pick>> pick = {}; ///< of the selection
    std::optional<Index<Option>> option = {};
    std::optional<Index<Level>> level = {};
    std::optional<Index<Incentive>> incentive = {};
};

/// What a pick of an incentive comes to, and where it goes.
struct IncentiveGiven {
    Index<Incentive> incentive;
    IncentiveUse use = IncentiveUse::price;
    Money amount;

    friend bool operator==(const IncentiveGiven&, const IncentiveGiven&) = default;
};

struct PricedHome {
    std::vector<Line> lines;
    std::vector<IncentiveGiven> given; ///< one for each pick of an incentive, in their order
    Money base_price;
    Money elevation;
    Money lot_premium;
    Money options;
    Money incentives; ///< taken off the price, not negative
    Money contract_price;
    Money earnest_deposit; ///< due at contract
    Money option_deposit;  ///< due when options are selected
    bool flood_zone = false;

    [[nodiscard]] Money deposits() const { return earnest_deposit + option_deposit; }
    /// Incentives put to one use.
    [[nodiscard]] Money given_to(IncentiveUse use) const;
    /// Incentives towards costs, points or a buydown: all that is not taken off the price.
    [[nodiscard]] Money credited() const;
};

/// Rounding: quantity x unit price half away from zero to the cent; percent incentives and deposits
/// likewise. A charge for a level is never negative: a level under the included one costs nothing.
/// A package brings its parts in their usual quantity: what is better or more is charged on top.
[[nodiscard]] PricedHome price_home(const PriceBook& book, const Selection& selection);

/// The home without its picks, at this total of options: what incentives and price come to then. A
/// loan reads nothing else of the picks; the option deposit is left out.
[[nodiscard]] PricedHome home_at(const PriceBook& book, const Selection& selection, Money options);

/// What an incentive comes to on a home, all of it.
[[nodiscard]] Money incentive_amount(const Incentive& incentive, const PricedHome& home);

/// Whether what an incentive gives to this use comes off the price.
[[nodiscard]] constexpr bool is_off_price(IncentiveUse use) {
    return use == IncentiveUse::price || use == IncentiveUse::options;
}

/// The promise of a priced home: its lines sum to its contract price, those of options and of
/// incentives to theirs, and incentives give neither less than nothing nor more towards options
/// than these cost. Throws Broken otherwise.
void check(const PricedHome& home);

/// Charge for one unit of an option at a level (nothing for kinds without levels), against what the
/// plan includes. Nothing where the plan is not offered it.
[[nodiscard]] std::optional<Money> unit_price(const Option& option,
                                              std::optional<Index<Level>> level, Index<Plan> plan);

/// What a pick costs by itself on a plan, a package that brings it not counted. Nothing where the
/// plan is not offered it.
[[nodiscard]] std::optional<Money> charge(const Option& option, const Pick& pick, Index<Plan> plan);

} // namespace quoin
