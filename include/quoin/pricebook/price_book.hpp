// PriceBook: everything a community offers, at the prices of one version.
//
//   PriceBook book = read_price_book(document, lots, findings);
//   book.options[book.option("kitchen-counters")].levels[1].price.on(plan)
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/exact/date.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/pricebook/lot.hpp>
#include <quoin/pricebook/option.hpp>
#include <quoin/text/names.hpp>

namespace quoin {

struct Community {
    std::string name;
    std::string builder;
    std::string place; ///< id of the place whose taxes and costs apply
    std::string note;
};

/// An area of the home, or a stage of construction.
struct Named {
    std::string id;
    std::string name;
};

struct Elevation {
    std::string id;
    std::string name;
    std::string note;
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
};

/// What comes with the home at no extra charge.
struct Included {
    int area = 0;
    std::string text;
    int option = -1;        ///< the option that raises it, if any
    std::vector<int> plans; ///< empty: all
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
    std::vector<int> plans;       ///< empty: all
    std::vector<int> lots;        ///< empty: all
    std::string lender;           ///< the lender it is tied to; empty: none
    std::optional<Date> expires;  ///< last contract date
    std::optional<Date> close_by; ///< last closing date
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
    int option = -1;
    int level = -1;
    int choice = -1;
    std::optional<Decimal> quantity;
    std::optional<Money> spend; ///< of an allowance
    int area = 0;
    std::string text;
};

struct FurnishedModel {
    int plan = 0;
    int elevation = 0;
    int lot = -1;
    std::string note;
    std::vector<Shown> shows;
};

struct PriceBook {
    std::string file; ///< name it was read under
    Community community;
    std::string version;
    Date effective;
    Date expires; ///< last day it may be used
    std::vector<Named> areas;
    std::vector<Named> stages;
    std::vector<Plan> plans;
    std::vector<Lot> lots;
    std::vector<Included> included;
    std::vector<Option> options;
    std::vector<Incentive> incentives;
    Deposits deposits;
    std::optional<FurnishedModel> model;
};

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

/// Reads and validates a price book. `lots` is the parsed list that "lots" points to, or nullptr.
/// Where findings were added, the result must not be used.
[[nodiscard]] PriceBook read_price_book(const Document& document, const Document* lots,
                                        Findings& findings);

} // namespace quoin
