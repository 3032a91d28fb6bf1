// The rows of the tables that set loans side by side.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct SideWords {
    // The month.
    Phrase<> month;          ///< where it is the same from the first
    Phrase<> month_settled;  ///< beside a month that is taxed on the land only
    Phrase<> month_on_land;  ///< that month
    Phrase<int> bought_down; ///< year
    Phrase<> extra_principal;
    Phrase<> month_at_highest; ///< rate
    // Terms.
    Phrase<> note_rate;
    Phrase<> apr;
    Phrase<> points;
    Phrase<Text> points_credit; ///< so many points that the lender gives
    Phrase<> term;
    Phrase<> lock;
    Phrase<int> days;
    Phrase<> down_payment;
    Phrase<> down_percent;
    Phrase<> ltv;
    Phrase<> highest_rate;
    Phrase<> fixed;
    // The loan.
    Phrase<> contract_price;
    Phrase<> base_loan;
    Phrase<> upfront_fee;
    Phrase<> upfront_in_loan;
    Phrase<> upfront_in_cash;
    Phrase<> fee_and_premium; ///< beside each other: some pay a fee, some a premium
    Phrase<> fee_and_premium_in_loan;
    Phrase<> fee_and_premium_in_cash;
    Phrase<> single_premium;
    Phrase<> single_premium_in_loan;
    Phrase<> single_premium_in_cash;
    Phrase<> loan;
    Phrase<> insurance;
    Phrase<> insurance_a_year;
    Phrase<> last_insured;
    Phrase<> if_asked;
    Phrase<> paid_up;
    Phrase<> none;
    Phrase<> whole_term;
    // Cash.
    Phrase<> cash_needed;
    Phrase<> lender_credit; ///< for points below zero
    Phrase<> to_bring;
    Phrase<> back; ///< what is returned where more was paid than is needed
    Phrase<> credits_without_use;
    Phrase<> lender_credit_lost;
    Phrase<> credits_over_cap;
    // The years.
    Phrase<> paid_in_five;
    Phrase<> balance_after_five;
    Phrase<> balance_after_ten;
    Phrase<> interest_over_loan;
    Phrase<> paid_over_loan;
    Phrase<> payments;
};

} // namespace quoin
