// "What can move while the house is being built?" The month and the cash with the rate, the price
// and the appraisal moved; what longer locks cost; and, where the inquiry gives an income, up to
// which rate the payment stays within the program's ratios.
//
// A rate moves as the whole ladder does: each rung keeps its points. So the step of nothing is the
// quote itself.
#pragma once

#include <optional>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/inquiry/asks.hpp>
#include <quoin/lending/ratio_limits.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

enum class ShiftChange { none, price, options, appraisal };
template <>
inline constexpr auto
    codes<ShiftChange> = coded<ShiftChange>({{ShiftChange::none, "none"},
                                             {ShiftChange::price, "price"},
                                             {ShiftChange::options, "options"},
                                             {ShiftChange::appraisal, "appraisal"}});

/// What moves besides the rate: one column.
struct ShiftCase {
    ShiftChange change = ShiftChange::none;
    Percent percent; ///< of the price or, negative, of the appraisal under it
    Money amount;    ///< added to the price; of the appraisal: what it comes to
};

struct ShiftCell {
    std::vector<Refusal> refusals; ///< where not empty, the figures are not for use
    Money loan;
    Money monthly;
    Money cash_needed;
    Money to_close;

    [[nodiscard]] bool available() const { return refusals.empty(); }
};

/// One rate at closing.
struct ShiftRow {
    int steps = 0;
    Percent by; ///< against today's rate
    Rate rate;
    std::optional<Rate> apr;      ///< with nothing else moved
    std::vector<ShiftCell> cells; ///< one for each case
};

/// Today's rate under another lock of the sheet.
struct ShiftLock {
    int days = 0;
    Date ends; ///< of a lock taken on the inquiry's day
    bool covers_closing = false;
    bool is_chosen = false;
    std::optional<Points> points; ///< nothing: that ladder does not have the rate
    Money extra_cash;             ///< against the lock that is chosen
};

/// The highest rate at which the payment stays within a limit.
struct ShiftRoom {
    std::optional<Rate> to_a_thousandth; ///< nothing: at no rate
    std::optional<Rate> in_steps;        ///< today's rate and whole steps
};

/// The income as it stands, or moved, at today's rate. The taxes on it stay as they are.
struct ShiftIncome {
    Percent by;
    Money income;                 ///< a month, gross
    std::optional<Percent> front; ///< housing over income, two decimals; nothing: no income
    std::optional<Percent> back;  ///< housing and debts over income
    bool within = false;          ///< every limit, at today's rate
    ShiftRoom room;               ///< under every limit
};

struct ShiftRatios {
    RatioLimits limits;
    bool residual_tested = false; ///< what is left to live on is a limit too
    bool passes_by_ratio = false; ///< the back ratio, since enough is left to live on
    Money least_income;           ///< a month, gross: a cent less is over a limit at today's rate
    std::optional<Money> least_income_automated;
    std::vector<ShiftIncome> incomes;        ///< rising; one of them as it stands
    std::optional<ShiftRoom> room_automated; ///< with the ratio of automated underwriting
};

struct ShiftScenario {
    ScenarioTerms terms;
    std::vector<Refusal> refusals; ///< where not empty, the rest is not for use
    Money monthly;                 ///< of the quote
    Money cash_needed;
    std::vector<ShiftCase> cases; ///< the first moves nothing
    std::vector<ShiftRow> rows;   ///< from the lowest rate up
    std::vector<ShiftLock> locks; ///< empty where the rate is quoted elsewhere
    std::optional<ShiftRatios> ratios;
    std::vector<ListGap> ratios_unknown; ///< why there are none, where it is that

    [[nodiscard]] bool available() const { return refusals.empty(); }
};

struct ShiftAnswer {
    Heading heading;
    ShiftAsk ask;
    Money contract_price;
    std::vector<ShiftScenario> scenarios;
};

[[nodiscard]] ShiftAnswer shift(const Sitting& sitting, const ShiftAsk& ask);

} // namespace quoin
