// "Which loan is better for us?" The scenarios side by side on one home, without a verdict: what
// each costs over the years, when points pay back, and which of two has cost less, from which
// payment to which.
#pragma once

#include <optional>
#include <vector>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/cost_order.hpp>

namespace quoin {

/// Points against the rate that takes none: what they cost and when they have paid for themselves.
struct PointsPayback {
    std::size_t scenario = 0; ///< index into the scenarios
    Rate rate;                ///< with the points
    Rate rate_without;        ///< the lowest that takes none
    Money extra_cash;
    Money saved_monthly;
    std::vector<CostStretch> order; ///< the first: with the points; the second: without
    std::optional<int> break_even;  ///< from which on, for good, they are no dearer; nothing: never
};

/// Which of two loans has cost less when: cash, payments and insurance so far and the balance still
/// owed.
struct LoanOrder {
    std::size_t first = 0; ///< index into the scenarios
    std::size_t second = 0;
    std::vector<CostStretch> stretches;
};

/// A point of a scenario's curves, at the end of a year of payments; 0 is the closing.
struct YearPoint {
    int year = 0;
    Money paid; ///< everything, local costs among it
    Money balance;
    Money spent_and_owed; ///< of the loan alone
};

struct CompareAnswer {
    Heading heading;
    Money contract_price;
    std::vector<ScenarioAnswer> scenarios;      ///< in the inquiry's order
    std::vector<Added> against_first;           ///< of each, what it changes against the first
    std::vector<std::vector<YearPoint>> curves; ///< one for each scenario; empty where it is barred
    std::size_t against = 0;                    ///< the scenario that the years are held against
    std::vector<Added> against_shown;           ///< of each, what it changes against that one
    std::vector<std::vector<YearPoint>> apart;  ///< of each, how much more by then than against it,
                                                ///< to the end of the longest; empty where barred
    std::vector<PointsPayback> points;
    std::vector<LoanOrder> orders; ///< of every two that can be had
};

/// `against` is the scenario that the years are held against.
[[nodiscard]] CompareAnswer compare(const Sitting& sitting, std::size_t against = 0);

} // namespace quoin
