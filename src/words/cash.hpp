// The cash that a loan takes.
#pragma once

#include <array>

#include <quoin/answers/cash.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct CashWords {
    Phrase<> title;
    Phrase<Text, Money, Text> month; ///< scenario, its month, terms

    // What is needed, and what of it is left.
    Phrase<> cash;
    Phrase<> points;
    Phrase<> lender_credit; ///< points below zero
    Phrase<> principal_reduced;
    Phrase<Text> single_premium;  ///< of an insurance, by its name
    Phrase<Text> premium_in_cash; ///< what it is called
    Phrase<> appraisal_gap;
    Phrase<> cash_needed;
    Phrase<> left_to_bring;
    Phrase<Money> lender_credit_reduces; ///< principal
    Phrase<Money> lender_credit_lost;

    Phrase<> when;

    Phrase<> closing_costs;
    Phrase<> buyers_sums;
    Phrase<> when_ordered;
    Phrase<Text> in_finance_charge; ///< a cost

    Phrase<> prepaids;
    Phrase<int, Money> prepaid_interest; ///< days, interest of a day
    Phrase<int> prepaid_insurance;       ///< months
    Phrase<> tax_bill;                   ///< property tax, district charges with it
    Phrase<Date> bill_due;

    Phrase<> no_escrow;
    Phrase<Money, Money, Money> escrow; ///< at closing, a month, cushion
    Phrase<> escrow_month;
    Phrase<> escrow_in;
    Phrase<> escrow_bills;
    Phrase<> escrow_balance;
    Phrase<int, int> calendar_month;       ///< month, year
    Phrase<Text, Date, Money> escrow_bill; ///< what for, day, amount
    Phrase<> set_from_settled;             ///< tax
    Phrase<Money> set_from_land;           ///< a month, in the first year
    std::array<Phrase<Text>, 4> analysis;  ///< after the first year, the second ...: what it finds
    // What is missing or over, and what the month changes by.
    Phrase<Money, Text> finds_short;
    Phrase<Money, Text> finds_over;
    Phrase<Text> finds_nothing;
    Phrase<Money> more_a_month;
    Phrase<Money> less_a_month;

    Phrase<> credits;
    Phrase<Text> used_for;
    Phrase<> without_use;
    // The cap in percent, and what counts towards it.
    Phrase<Text, Money> cap_of_price;
    Phrase<Text, Money> cap_of_value;
    Phrase<Money, Text> over_cap; ///< LTV if it were given

    Phrase<Money, Money> buydown;                ///< put up, of it by the buyer
    Phrase<int, Rate, Money, Money> bought_down; ///< year, rate, principal and interest, subsidy
    Phrase<Money, Rate> after_buydown;           ///< payment, note rate

    Phrase<> cost_of_credit;
    Phrase<> prepaid_finance_charge;
    Phrase<> own_part_of_buydown;
    Phrase<> amount_financed;
    Phrase<> finance_charge;
    Phrase<> total_of_payments;
    Phrase<> cost_in_five_years;
    Phrase<> principal_in_five_years;
    Phrase<int, int> payments; ///< the first and the last of a level
    Phrase<> apr;
    Phrase<> no_apr;
    Phrase<> total_interest_percentage;
};

} // namespace quoin
