// What a builder's money can do.
#pragma once

#include <quoin/answers/credit.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct CreditWords {
    Phrase<Money> title;
    Phrase<Money> contract_price;
    Phrase<Text, Money, Text> without_it_month; ///< scenario, the month without it, terms
    // The cap: percent, amount; then, as sentences of their own, what alone is counted and what is
    // taken.
    Phrase<Text, Money, Text, Text> cap_of_price;
    Phrase<Text, Money, Text, Text> cap_of_value;
    Phrase<> cap_on_concessions;
    Phrase<Money> cap_taken;

    // Each use by itself.
    NamesOf<CreditWay> way;
    Phrase<Text> in_cash;             ///< upfront fee or single premium, as it is called
    Phrase<Text, Text> with_points;   ///< the use, how many points
    Phrase<Text, Text> not_to_be_had; ///< the use, why
    Phrase<Money> takes;              ///< more than there is
    Phrase<Money> takes_more_than_cap;
    Phrase<> no_lower_rate;
    Phrase<> not_with_this_loan;
    Phrase<> without_it;

    // Over the columns.
    Phrase<> each_use;
    Phrase<> note_rate;
    Phrase<> apr;
    Phrase<> month_now;
    Phrase<> after_three_years;
    Phrase<> cash_needed;
    Phrase<> no_use_for;
    Phrase<> costs_after; ///< years
    Phrase<> off_price;
    Phrase<> buydown;
    Phrase<> fee;
    Phrase<> pays;          ///< of points and costs
    Phrase<Text> cost_over; ///< years
    Phrase<> no_apr;
    Phrase<> no_buydown;
    Phrase<> fee_in_cash;
    Phrase<> whole_loan; ///< in place of years

    // The best of every mix.
    Phrase<> bests;
    Phrase<> lowest_payment;
    Phrase<> least_cash;
    Phrase<> least_cash_is_given;
    Phrase<Text> least_cost; ///< years
    /// What it is best in, what it pays, what is lost, note rate, APR, month now and after three
    /// years, cash, cost, years.
    Phrase<Text, Text, Text, Rate, Text, Money, Money, Money, Money, Text> best;
    Phrase<> pays_nothing;
    Phrase<Money> goes_off_price;
    Phrase<Money, Rate, Text> goes_to_points; ///< note rate, points
    Phrase<Money, Text> goes_to_buydown;      ///< its name
    Phrase<Money, Text> goes_to_upfront;      ///< what it is called
    Phrase<Money> goes_to_costs;
    Phrase<Money> goes_to_prepaids;
    Phrase<Money> lost_without_use;
    Phrase<Money> lost_over_cap;

    Phrase<Text> frontier;    ///< how it is thinned
    Phrase<int, int> thinned; ///< told, of how many

    Phrase<> money_on_top;
    Phrase<> cost_spent_and_owed;
    Phrase<> money_with_conditions;
    Phrase<> paid_in_cash;
};

} // namespace quoin
