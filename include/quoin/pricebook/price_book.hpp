// PriceBook: everything a community offers, at the prices of one version.
//
//   PriceBook book = read_price_book(document, lots, findings);
//   at(book.options, *index_of(book.options, "kitchen-counters")).levels[1].price.on(plan)
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/date.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/pricebook/lot.hpp>
#include <quoin/pricebook/option.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/language.hpp>

namespace quoin {

struct Document;
class Findings;
struct Value;

struct Community {
    std::string name;
    std::string builder;
    std::string place; ///< id of the place whose taxes and costs apply
    std::string note;
    std::string color; ///< of the builder, "#2e5d4f", dark enough for letters on paper; empty: none
};

struct Named {
    std::string id;
    std::string name;
};

/// An area of the home.
struct Area : Named {};
/// A stage of construction.
struct Stage : Named {};

struct Elevation {
    std::string id;
    std::string name;
    std::string note;
    Look look;
    Money price;
};

struct Plan {
    std::string id;
    std::string name;
    std::string style;
    std::string note;
    Money base_price;
    Decimal bedrooms;
    Decimal bathrooms;
    Decimal square_feet;
    std::vector<Measure> measures;
    std::vector<Elevation> elevations;
    std::string drawing; ///< file, from the price book's folder; empty: none
};

/// What comes with the home at no extra charge.
struct Included {
    Index<Area> area;
    std::string text;
    std::optional<Index<Option>> option; ///< that raises it
    std::vector<Index<Plan>> plans;      ///< empty: all
};

/// What an incentive may be used for.
enum class IncentiveUse { price, options, closing_costs, points, buydown };
template <>
inline constexpr auto codes<IncentiveUse> =
    coded<IncentiveUse>({{IncentiveUse::price, "price"},
                         {IncentiveUse::options, "options"},
                         {IncentiveUse::closing_costs, "closing_costs", "closing costs"},
                         {IncentiveUse::points, "points"},
                         {IncentiveUse::buydown, "temporary_buydown", "temporary buydown"}});
/// What a percent incentive is a percent of.
enum class IncentiveBase { base_price, options, contract_price };

struct Incentive {
    std::string id;
    std::string name;
    std::optional<Money> amount;
    Percent percent; ///< where no amount is given
    IncentiveBase of = IncentiveBase::base_price;
    std::vector<IncentiveUse> uses;
    std::vector<Index<Plan>> plans; ///< empty: all
    std::vector<Index<Lot>> lots;   ///< empty: all
    std::string lender;             ///< the lender it is tied to; empty: none
    std::optional<Date> expires;    ///< last contract date
    std::optional<Date> close_by;   ///< last closing date
    std::string conditions;
};

/// Earnest money, and the share of options due when they are selected.
struct Deposits {
    std::optional<Money> earnest;
    Percent earnest_percent; ///< of the contract price, where no amount is given
    Percent structural_percent;
    Percent finish_percent;
    std::string note;
};

/// One thing in the furnished model: an option as shown, or decor that is not for sale.
struct Shown {
    std::optional<Index<Option>> option;
    std::optional<Index<Level>> level;
    std::optional<Index<Choice>> choice;
    std::optional<Decimal> quantity;
    std::optional<Money> spend; ///< of an allowance
    Index<Area> area;
    std::string text;
};

struct FurnishedModel {
    Index<Plan> plan;
    Index<Elevation> elevation;
    std::optional<Index<Lot>> lot;
    std::string note;
    std::vector<Shown> shows;
};

struct PriceBook {
    std::string file; ///< name it was read under
    Community community;
    std::string map; ///< file of the site map, from the price book's folder; empty: none
    std::string version;
    Date effective;
    Date expires; ///< last day it may be used
    std::vector<Area> areas;
    std::vector<Stage> stages;
    std::vector<Plan> plans;
    std::vector<Lot> lots;
    std::vector<Included> included;
    std::vector<Option> options;
    std::vector<Incentive> incentives;
    Deposits deposits;
    std::optional<FurnishedModel> model;
};

template <>
inline constexpr bool only_by_index<Area> = true;
template <>
inline constexpr bool only_by_index<Stage> = true;
template <>
inline constexpr bool only_by_index<Plan> = true;
template <>
inline constexpr bool only_by_index<Elevation> = true;
template <>
inline constexpr bool only_by_index<Incentive> = true;

/// Where a limit holds: an empty list sets none.
template <class T>
[[nodiscard]] bool allows(const std::vector<T>& limit, const T& item) {
    if (limit.empty()) return true;
    for (const T& allowed : limit) {
        if (allowed == item) return true;
    }
    return false;
}

/// The file that "lots" points to, if its lots stand in a list of their own.
[[nodiscard]] std::optional<std::string> lots_file(const Value& book);

/// Keeps of the texts of such a list, which have a column a language, the one that is asked for.
void choose_lot_texts(Document& list, Language language);

/// Reads and validates a price book. `lots` is the parsed list that "lots" points to, or nullptr.
/// Where findings were added, the result must not be used.
[[nodiscard]] PriceBook read_price_book(const Document& document, const Document* lots,
                                        Findings& findings);

} // namespace quoin
