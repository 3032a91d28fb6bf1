// What a buyer may choose: options, their levels and choices, their prices, and the rules on them.
//
// Options, plans, lots, areas and stages refer to each other by their Index in the price book.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/decimal.hpp>
#include <quoin/exact/index.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/pricebook/look.hpp>
#include <quoin/pricebook/only.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/wanted.hpp>

namespace quoin {

struct Area;
struct Stage;

/// A price for each plan; nothing where the plan is not offered the item.
class PriceByPlan {
  public:
    PriceByPlan() = default;
    explicit PriceByPlan(std::vector<std::optional<Money>> prices) : prices_(std::move(prices)) {}

    [[nodiscard]] std::optional<Money> on(Index<Plan> plan) const {
        return prices_.empty() ? std::nullopt : prices_[plan];
    }

  private:
    PerItem<Plan, std::optional<Money>> prices_;
};

enum class OptionKind {
    upgrade,   ///< one thing at a price per unit
    levels,    ///< an included level and better ones, charged as the difference
    choice,    ///< one of several at no cost
    allowance, ///< an included budget; only what is spent above it is charged
    package,   ///< a price that replaces its parts' prices
};
template <>
inline constexpr auto codes<OptionKind> = coded<OptionKind>({{OptionKind::upgrade, "upgrade"},
                                                             {OptionKind::levels, "levels"},
                                                             {OptionKind::choice, "choice"},
                                                             {OptionKind::allowance, "allowance"},
                                                             {OptionKind::package, "package"}});

enum class Unit { each, square_foot, linear_foot };
template <>
inline constexpr auto codes<Unit> = coded<Unit>({{Unit::each, "each"},
                                                 {Unit::square_foot, "sq_ft", "sq ft"},
                                                 {Unit::linear_foot, "linear_ft", "linear ft"}});

struct Level {
    std::string id;
    std::string name;
    std::string note;
    std::string office_note; ///< for the desk, as an option's
    Look look;
    PriceByPlan price; ///< list price; the charge is the difference to the included level
};

struct Choice {
    std::string id;
    std::string name;
    std::string note;
    std::string office_note; ///< for the desk, as an option's
    Look look;
};

/// How many units are bought: one, a measure of the plan, or what the buyer says within limits.
struct Quantity {
    enum class From { one, plan, buyer };

    From from = From::one;
    std::string measure;            ///< from == plan: its name
    PerItem<Plan, Decimal> by_plan; ///< from == plan: its measure; 0: has none
    Decimal lowest = Decimal::whole(1);
    Decimal highest = Decimal::whole(1);
    Decimal step = Decimal::whole(1);
    Decimal usual = Decimal::whole(1); ///< taken where the buyer gives none

    [[nodiscard]] Decimal usual_on(Index<Plan> plan) const {
        return from == From::plan ? by_plan[plan] : usual;
    }
    [[nodiscard]] bool allows(Decimal quantity) const;
};

struct Option;

/// An option at any level, or at a level or better.
struct OptionRef {
    Index<Option> option;
    std::optional<Index<Level>> level = {}; ///< nothing: any

    /// Whether having this one is to have what is wanted.
    [[nodiscard]] bool meets(const OptionRef& wanted) const {
        return option == wanted.option && level >= wanted.level;
    }

    friend bool operator==(const OptionRef&, const OptionRef&) = default;
};

/// Trades whose work needs a permit or a licence under local code.
struct Work {
    bool gas = false;
    bool wiring = false;
    bool plumbing = false;
    bool structure = false;

    [[nodiscard]] bool any() const { return gas || wiring || plumbing || structure; }
};

template <>
inline constexpr auto codes<Work> = coded<bool Work::*>({{&Work::gas, "gas"},
                                                         {&Work::wiring, "wiring"},
                                                         {&Work::plumbing, "plumbing"},
                                                         {&Work::structure, "structure"}});

/// Doing it after closing instead.
struct Later {
    Money estimate;
    std::string note;
    bool each = false; ///< the estimate is for one of the option's quantity
};

struct Option {
    std::string id;
    std::string name;
    std::string text;
    std::string note;        ///< the catch, said plainly
    std::string office_note; ///< for the desk: no buyer sees it
    Look look;
    Index<Area> area;
    OptionKind kind = OptionKind::upgrade;
    Unit unit = Unit::each;
    Quantity quantity;
    PriceByPlan price;         ///< upgrade, package: per unit; allowance: the budget
    std::vector<Level> levels; ///< rising
    PerItem<Plan, std::optional<Index<Level>>> included_level;
    std::vector<Choice> choices;               ///< the first is the default
    std::vector<OptionRef> parts;              ///< of a package
    std::vector<std::vector<OptionRef>> needs; ///< every entry holds by any one of its members
    std::vector<Index<Option>> excludes;
    std::string one_of; ///< name of a group of which at most one is chosen
    Only only;
    std::optional<Index<Stage>> cutoff; ///< stage before which it must be chosen
    bool structural = false;
    Work work;
    std::optional<Later> later;

    [[nodiscard]] std::optional<Index<Level>> included_level_on(Index<Plan> plan) const {
        return included_level.empty() ? std::nullopt : included_level[plan];
    }
    /// Whether it brings this or better, as a package.
    [[nodiscard]] bool brings(const OptionRef& wanted) const {
        return std::any_of(parts.begin(), parts.end(),
                           [&](const OptionRef& part) { return part.meets(wanted); });
    }
};

template <>
inline constexpr bool only_by_index<Option> = true;
template <>
inline constexpr bool only_by_index<Level> = true;
template <>
inline constexpr bool only_by_index<Choice> = true;

/// What a buyer may ask for: a quantity from 1 to 12 in steps of 1.
[[nodiscard]] Wanted quantity_limits(const Option& option);

} // namespace quoin
