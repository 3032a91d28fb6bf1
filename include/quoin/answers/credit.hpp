// "The builder gives us $10,000: where does it do the most?" Every use that the program allows, and
// mixes of them: off the price, into costs, into points, into a temporary buydown, into an upfront
// fee that would else be financed, into mortgage insurance paid up in place of the month's.
//
// The money comes on top of the incentives and credits that the inquiry uses already, and is held
// with them to the program's cap. It never pays more than there is to pay. No mix asks the buyer to
// put more of their own into costs and points than without it.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/inquiry/asks.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// The years that costs are told for; a shorter loan ends first.
inline constexpr std::array<int, 5> credit_years{3, 5, 7, 10, 30};

/// One way to split the money, and what comes of it.
struct CreditMix {
    Money off_price;
    Rate rate; ///< the rung of the ladder
    Points points;
    std::optional<Rate> apr;
    std::vector<Percent> buydown;
    bool fee_in_cash = false; ///< the upfront fee is not financed, or the insurance is paid up
    CreditAmounts pays;       ///< the rest, by what it pays
    Money without_use;        ///< there was nothing left for it to pay
    Money over_cap;           ///< the program's cap kept it from paying
    Money loan;
    Money monthly_now;   ///< what the buyer pays in the first month, with the settled tax
    Money monthly_later; ///< the month after three years
    Money cash_needed;
    Money to_close;
    Money own_costs; ///< of the cash, all but the down payment
    /// Spent and owed: cash, what the buyer pays a month, and the balance still owed.
    std::array<Money, credit_years.size()> cost;
    Money cost_asked;                   ///< the same, over the years asked for
    bool every_incentive_allows = true; ///< each that the price book gives on this home

    [[nodiscard]] Money unused() const { return without_use + over_cap; }
    /// With unused() and nothing else it makes the amount.
    [[nodiscard]] Money used() const { return off_price + pays.total(); }
};

/// The uses that a builder's money has, each by itself.
enum class CreditWay {
    off_price,
    costs,
    points,
    buydown_1_0,
    buydown_2_1,
    buydown_3_2_1,
    upfront_fee, ///< of the program in cash, or a single premium of mortgage insurance
};
template <>
inline constexpr auto
    codes<CreditWay> = coded<CreditWay>({{CreditWay::off_price, "off_price"},
                                         {CreditWay::costs, "costs"},
                                         {CreditWay::points, "points"},
                                         {CreditWay::buydown_1_0, "buydown_1_0"},
                                         {CreditWay::buydown_2_1, "buydown_2_1"},
                                         {CreditWay::buydown_3_2_1, "buydown_3_2_1"},
                                         {CreditWay::upfront_fee, "upfront_fee"}});

struct CreditPure {
    CreditWay way = CreditWay::off_price;
    std::optional<CreditMix> mix; ///< nothing: it cannot be had with this amount
    Money needed;                 ///< then: what it takes; zero: the loan does not have it
};

struct CreditScenario {
    ScenarioTerms terms;
    std::vector<Refusal> refusals; ///< where not empty, the rest is not for use
    std::optional<Percent> cap;    ///< nothing: the program has none
    bool cap_by_price = false;
    Money cap_amount;
    Money cap_taken;                 ///< by what the inquiry uses already
    bool cap_on_concessions = false; ///< closing costs and points do not count
    bool cash_is_given = false;      ///< the down payment takes all the cash: it is never less
    bool rate_is_given = false;      ///< quoted elsewhere: there is no ladder to go down
    std::string upfront_name;        ///< of the fee, or the insurance, that the last way pays;
                                     ///< empty: there is none
    bool is_single_premium = false;  ///< it is the insurance, paid up in a single premium
    CreditMix today;                 ///< without the money
    std::vector<CreditPure> pure;
    std::vector<CreditMix> frontier; ///< none is better in month, cash and cost at once
    CreditMix lowest_payment;        ///< now
    CreditMix least_cash;
    CreditMix least_cost;

    [[nodiscard]] bool available() const { return refusals.empty(); }
};

struct CreditAnswer {
    Heading heading;
    CreditAsk ask;
    Money contract_price;
    bool any_incentive = false;             ///< the price book gives one on this home
    std::vector<IncentiveUse> allowed_uses; ///< that each of them may be used for
    std::vector<CreditScenario> scenarios;
};

/// Whether a mix is no worse than another in month, cash and cost, and better in one.
[[nodiscard]] bool dominates(const CreditMix& a, const CreditMix& b);

[[nodiscard]] CreditAnswer credit(const Sitting& sitting, const CreditAsk& ask);

} // namespace quoin
