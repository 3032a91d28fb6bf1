// "How much home?" The highest contract price that income, debts, cash and the program's own limits
// allow, exact to the dollar, what binds there, and what a further step would take.
//
// A price stands for a home of it: taxes, insurance and costs follow from it, the incentives of the
// inquiry stay as they are. Limits that jump (bands of insurance, premiums, rates) make what fits
// come and go as the price rises; the highest price that fits is found all the same.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/inquiry/asks.hpp>
#include <quoin/lending/ratio_limits.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

enum class AffordLimit {
    front_ratio,     ///< housing over income
    back_ratio,      ///< housing and debts over income
    residual_income, ///< what is left of the income for living
    cash,            ///< cash needed and reserves over the cash there is
    program,         ///< the program refuses: loan limit, LTV, score, cash too short for its least
};
template <>
inline constexpr auto
    codes<AffordLimit> = coded<AffordLimit>({{AffordLimit::front_ratio, "front_ratio"},
                                             {AffordLimit::back_ratio, "back_ratio"},
                                             {AffordLimit::residual_income, "residual_income"},
                                             {AffordLimit::cash, "cash"},
                                             {AffordLimit::program, "program"}});

/// How far a price is from a limit.
struct LimitRoom {
    AffordLimit limit = AffordLimit::program;
    Money room;   ///< a month, or in cash; negative: over it
    Money needed; ///< what the price takes: a month, or in cash
    Money most;   ///< what the limit lets it take
};

/// What residual income is reckoned from, where the program has a guide to it.
struct ResidualTest {
    ResidualIncome guide;
    bool has_income = false;    ///< each of these must be known
    bool has_household = false; ///< persons
    bool has_taxes = false;     ///< on the income
    bool has_region = false;    ///< of the place
    Decimal square_feet;        ///< of the plan; zero: not known
    Money upkeep;               ///< maintenance and utilities a month

    [[nodiscard]] bool tested() const {
        return has_income && has_household && has_taxes && has_region && square_feet > Decimal{};
    }
};

/// A lower rung of the ladder, its points paid in cash.
struct LowerRate {
    Rate rate;
    Points points; ///< with adjustments
};

/// What a higher price would take.
struct AffordStep {
    Money price;
    Money more_cash;
    Money more_income;    ///< a month, before tax
    Money more_after_tax; ///< a month, for the residual income; instead of less debts too
    Money less_debts; ///< a month, instead of more income; nothing to win where they are too small
    bool debts_suffice = false;
    /// The highest lower rate at which it fits with income, debts and cash as they are.
    std::optional<LowerRate> lower_rate;
    std::vector<Refusal> refusals; ///< of the program: money alone does not help
};

/// A plan that has homes within the price.
struct AffordPlan {
    std::string plan;
    std::string elevation; ///< of the home with the lowest price
    std::string lot;
    Money price;
    int homes = 0; ///< pairs of elevation and free lot that fit
};

struct AffordScenario {
    ScenarioTerms terms;               ///< at the highest price; without figures where none fits
    std::optional<RatioLimits> ratios; ///< in force; nothing: none are known
    std::optional<Percent> back;       ///< that was used; nothing: no ratio is held
    std::optional<AutomatedRatio> automated; ///< what that changed, where it was asked for
    std::optional<ResidualTest> residual;    ///< where the program has a guide
    std::optional<Money> price;              ///< nothing: no price fits
    ScenarioAnswer scenario;                 ///< at that price
    std::vector<LimitRoom> rooms;            ///< at that price
    std::optional<Rate> qualifying_rate; ///< that the ratios are at, where it is not the note rate
    std::string qualifying_source;
    Money residual_guide;           ///< what must be left at that price, where it is tested
    bool passes_by_ratio = false;   ///< the back ratio, there, since enough more than that is left
    std::vector<AffordLimit> binds; ///< a dollar more breaks these
    std::vector<Refusal> refusals;  ///< of the program there
    /// The highest price if what binds did not; nothing: no other limit under four times the price.
    std::optional<Money> next_price;
    std::vector<AffordLimit> next_binds;
    std::optional<AffordStep> step;
    std::vector<AffordPlan> plans;
    std::vector<LimitRoom> nearest; ///< where no price fits: the limits at the least price tried
    Money least_price;              ///< that was tried
};

struct AffordAnswer {
    Heading heading;
    AffordFacts facts;
    /// What was assumed of a home that no price book has, in words; empty: the inquiry says all.
    std::vector<std::string> assumptions;
    std::vector<AffordScenario> scenarios;
};

/// Income, debts and cash are the inquiry's; a limit without its figure is not tested.
[[nodiscard]] AffordAnswer afford(const Sitting& sitting, const AffordFacts& facts);

/// The highest price of a scenario in [from, to], or nothing where none fits: for tests and bounds.
[[nodiscard]] std::optional<Money> highest_price(const Sitting& sitting, std::size_t scenario,
                                                 const AffordFacts& facts);
/// Whether a price fits every limit.
[[nodiscard]] bool fits_at(const Sitting& sitting, std::size_t scenario, const AffordFacts& facts,
                           Money price);

} // namespace quoin
