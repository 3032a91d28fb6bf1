// "Now or later?" An option three ways: through the builder and financed, through the builder and
// paid in cash, or done after the closing at the price book's estimate.
//
// What a way costs through a month is what the home with it has taken by then over the home without
// it: cash, payments, insurance and the local parts at their settled figure, and what is still owed
// more. After the closing the price, and so the tax, stays as it is here, though an assessor may
// come.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/inquiry/asks.hpp>
#include <quoin/pricebook/option.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/why_not.hpp>

namespace quoin {

enum class LaterWay {
    financed,   ///< through the builder, in the loan as far as the scenario's down payment lets it
    cash,       ///< through the builder, the loan as without it
    after,      ///< after the closing, in cash
    after_lent, ///< after the closing, on a personal loan
};
template <>
inline constexpr auto codes<LaterWay> = coded<LaterWay>({{LaterWay::financed, "financed"},
                                                         {LaterWay::cash, "cash"},
                                                         {LaterWay::after, "after"},
                                                         {LaterWay::after_lent, "after_lent"}});

struct LaterPath {
    LaterWay way = LaterWay::financed;
    std::vector<Refusal> refusals; ///< where not empty, the figures are not for use
    Money at_closing;              ///< more cash needed
    Money a_month;                 ///< more a month, while it is paid
    int months = 0;                ///< for which it is
    std::vector<Money> cost;       ///< through month 0, 1, 2 ... of the loan

    [[nodiscard]] bool available() const { return refusals.empty(); }
};

/// Months, from the first on, through which one way has cost more than another.
struct LaterBreakEven {
    LaterWay dearer = LaterWay::financed;
    LaterWay than = LaterWay::after;
    int month = 0;         ///< the first of them
    std::optional<int> to; ///< nothing: it stays so
};

struct LaterScenario {
    ScenarioTerms terms; ///< without the option
    Money monthly;       ///< without the option
    std::vector<Refusal> refusals;
    std::vector<LaterPath> paths;
    std::vector<LaterBreakEven> break_even; ///< every such stretch
};

struct LaterItem {
    std::string id;
    std::string name;
    std::string level;
    Money price;                   ///< change of the contract price
    std::optional<Later> later;    ///< its estimate for as many as are asked about
    std::optional<WhyNot> why_not; ///< why it cannot be had from the builder here
    Work work;
    bool structural = false;
    std::vector<LaterScenario> scenarios;
};

struct LaterAnswer {
    Heading heading;
    LaterFacts facts;
    std::vector<LaterItem> items;
};

/// Precondition: the facts' month is from 1 on, the personal loan's term 1 to 480 months.
[[nodiscard]] LaterAnswer later(const Sitting& sitting, const std::vector<Pick>& asked,
                                const LaterFacts& facts);

} // namespace quoin
