// Scenario: one way to pay for a home: program, term, down payment, rate, score.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/lending/band_table.hpp>

namespace quoin {

/// A percent of the value, an amount, or whatever the buyer's cash allows.
struct DownPayment {
    enum class By { percent, amount, cash };

    By by = By::percent;
    Percent percent;
    Money amount; ///< by amount; by cash: all the buyer has for deposits and closing

    friend bool operator==(const DownPayment&, const DownPayment&) = default;
};

/// The lowest note rate within a limit of points, a rung of the ladder, or a rate quoted elsewhere.
struct RateChoice {
    enum class By { points, note, quoted };

    By by = By::points;
    Points points; ///< by points: at most these; quoted: these
    Rate note;     ///< by note, or quoted

    friend bool operator==(const RateChoice&, const RateChoice&) = default;
};

struct Scenario {
    std::string name;
    std::string program; ///< id
    Months term{360};
    int lock_days = 60;
    DownPayment down;
    RateChoice rate;
    std::optional<int> score;
    bool finance_fee = true; ///< the program's upfront fee goes into the loan
    EntitlementUse use = EntitlementUse::first;
    bool end_mi_on_request = false; ///< at 80% of value instead of the automatic 78%
    bool single_premium = false;    ///< a lender's mortgage insurance is paid up at closing
    bool finance_premium = false;   ///< and that premium goes into the loan
    Money extra_principal;          ///< each month
    std::vector<Percent> buydown;   ///< points off the note rate in each first year; empty: none
    bool escrow = true;             ///< taxes and insurance are paid through the lender

    friend bool operator==(const Scenario&, const Scenario&) = default;
};

} // namespace quoin
