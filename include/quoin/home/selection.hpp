// Selection: the home one buyer has in mind, as indexes into a price book.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/decimal.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/pricebook/price_book.hpp>

namespace quoin {

/// One option as picked: the members that its kind asks for.
struct Pick {
    Index<Option> option;
    std::optional<Index<Level>> level = {};
    std::optional<Index<Choice>> choice = {};
    std::optional<Decimal> quantity = {}; ///< where the buyer says how many; else the usual one
    std::optional<Money> spend = {};      ///< of an allowance
    bool agreed = false;                  ///< in the contract already: its cutoff does not matter

    friend bool operator==(const Pick&, const Pick&) = default;
};

/// Something the price book does not have; the builder has to confirm it.
struct Request {
    Index<Area> area;
    std::string text;
    std::optional<Money> estimate; ///< not part of the price

    friend bool operator==(const Request&, const Request&) = default;
};

struct IncentivePick {
    Index<Incentive> incentive;
    IncentiveUse use = IncentiveUse::price;
    std::optional<Money> amount; ///< a part of it; else all

    friend bool operator==(const IncentivePick&, const IncentivePick&) = default;
};

struct Selection {
    Index<Plan> plan;
    Index<Elevation> elevation;
    Index<Lot> lot;
    std::optional<Index<Stage>> stage; ///< that the build has reached
    std::vector<Pick> picks;           ///< in the buyer's order
    std::vector<Request> requests;
    std::vector<IncentivePick> incentives;

    [[nodiscard]] const Pick* find(Index<Option> option) const {
        for (const Pick& pick : picks) {
            if (pick.option == option) return &pick;
        }
        return nullptr;
    }
};

/// How many units a pick buys on a plan.
[[nodiscard]] Decimal quantity_of(const Option& option, const Pick& pick, Index<Plan> plan);

} // namespace quoin
