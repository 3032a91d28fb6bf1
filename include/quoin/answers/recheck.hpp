// "Where does that number come from?" Every figure of a scenario with its formula, its inputs, its
// rounding and its ground, and each reckoned a second time from the formula, in exact fractions.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/figure_label.hpp>
#include <quoin/answers/ground.hpp>
#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/loan/formula.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

enum class FigureUnit { money, percent, per_thousand, mills, months, days, count };
template <>
inline constexpr auto codes<FigureUnit> = coded<FigureUnit>({{FigureUnit::money, "dollars"},
                                                             {FigureUnit::percent, "percent"},
                                                             {FigureUnit::per_thousand,
                                                              "per_thousand", "per thousand"},
                                                             {FigureUnit::mills, "mills"},
                                                             {FigureUnit::months, "months"},
                                                             {FigureUnit::days, "days"},
                                                             {FigureUnit::count, "payments"}});

struct RecheckedFigure {
    std::string id; ///< letters, digits and underscores: also its name in a workbook
    FigureLabel label;
    FigureUnit unit = FigureUnit::money;
    Decimal value; ///< the engine's; of a step in between, the formula's
    Formula formula;
    Ground ground;
    Decimal reckoned; ///< from the formula; equal to value, or the engine is at fault

    [[nodiscard]] bool agrees() const { return value == reckoned; }
};

struct RecheckSection {
    ProofPart part = ProofPart::home;
    std::vector<RecheckedFigure> figures;
};

/// A month of the schedule the APR is figured on: without extra principal.
struct RecheckedMonth {
    Rate rate;
    Money payment;
    Money interest;
    Money principal;
    Money insurance;
    Money balance;
    Money hud_balance;    ///< of HUD's own schedule, where the premium comes from it
    Money bought_down;    ///< of the payment, by the buyer's part of a buydown
    Formula insurance_by; ///< of the first month of a loan year; given: as the month before
    Formula hud_balance_by;
};

struct RecheckAnswer {
    Heading heading;
    ScenarioAnswer scenario;
    std::vector<RecheckSection> sections;
    std::vector<RecheckedMonth> months; ///< [0] before the first payment
    bool hud_balances = false;          ///< the months run HUD's own schedule beside the loan's
    bool bought_down = false;           ///< some months are, by the buyer

    [[nodiscard]] std::size_t figure_count() const;
    [[nodiscard]] std::size_t differences() const; ///< 0, or the engine is at fault
};

[[nodiscard]] Decimal in_dollars(Money amount);

/// Sections and months are empty where the scenario cannot be had.
[[nodiscard]] RecheckAnswer recheck(const Sitting& sitting, std::size_t scenario);

} // namespace quoin
