// Which wishes fit within a month and the cash.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct FitWords {
    Phrase<> title;
    Phrase<Money, Money> within; ///< a month, cash
    Phrase<Text> on_lot;

    // A wish.
    Phrase<Text, Text> named;          ///< wish, its level
    Phrase<Text, Text, Text> how_many; ///< wish, quantity, unit with its blank
    Phrase<int> must;                  ///< rank
    Phrase<> needed;
    Phrase<> in_the_home;
    Phrase<> no_wish;
    Phrase<Text> as_chosen; ///< an option, by the choice there is of it now

    // Columns and titles of the tables.
    Phrase<> rank;
    Phrase<> worth;
    Phrase<> price;
    Phrase<> month;
    Phrase<> cash;
    Phrase<> lot;
    Phrase<> chosen;
    Phrase<> with; ///< what the nearest home has
    Phrase<> left_out;

    // Why a wish was left out.
    Phrase<Text> along; ///< what would come with it
    Phrase<Text> takes_place;
    Phrase<Text> loan_refused; ///< reasons
    Phrase<Money> over_month;
    Phrase<Money> over_cash;
    Phrase<Money, Money> over_both;
    Phrase<Text, Text> instead; ///< by what it is over, what it would be instead of

    // What would let one more in.
    Phrase<Money> more_month;
    Phrase<Money> more_cash;
    Phrase<Money, Money> more_of_both;
    Phrase<Text, Text> next_nowhere;   ///< wish, what is to be raised
    Phrase<Text, Text> next_not_found; ///< likewise
    /// Wish, what is to be raised, what is to be given up, what is won, worth in all, how sure.
    Phrase<Text, Text, Text, Text, Text, Text> next;
    Phrase<> nothing_chosen; ///< is to be given up
    Phrase<Text> gained;
    Phrase<> next_unproven;

    // What the choice is worth.
    Phrase<Text, Text, Text> proven; ///< worth, whether it is the cheapest, homes looked into
    Phrase<> cheapest;
    Phrase<> perhaps_cheaper;
    Phrase<Text, Text, Text, Text> best_so_far; ///< worth, homes looked into, most, how much more
    Phrase<Text> more_at_most;                  ///< percent
    Phrase<Text> worth_at_most;
    Phrase<Money, Money, Money, Text> figures; ///< price, month, cash, what is to bring
    Phrase<Text> incentives_lost;

    // Where nothing fits.
    Phrase<> selected;
    Phrase<> selected_and_musts;
    Phrase<Text> barred; ///< why
    Phrase<> barred_briefly;
    Phrase<> nothing_fits;
    Phrase<> none_found;
    Phrase<> stopped_before_nearest;
    Phrase<> stopped_before_any;
    Phrase<Text> loan_for_no_home; ///< what stays
    Phrase<Text> loan_not_found;   ///< likewise
    // The nearest home: what stays, by what it is over, how sure that is.
    Phrase<Text, Text, Text> nearest;
    Phrase<Text, Text, Text> nearest_of_found;
    Phrase<> nearest_unproven;
    Phrase<> none_by_less;
    Phrase<> neither_by_less;
    Phrase<> other_within_cash;
    Phrase<Money> other_over_cash;

    Phrase<> worth_of_wishes; ///< a caution
};

} // namespace quoin
