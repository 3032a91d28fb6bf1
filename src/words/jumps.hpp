// Why a figure jumps: the row of a table that is read now, and the one that was read before.
#pragma once

#include "words/phrase.hpp"

namespace quoin {

struct JumpWords {
    Phrase<Text, Text, Text> ltv_moved; ///< LTV before and after, what changed with it
    Phrase<> none;                      ///< no value
    Phrase<Text> percent;               ///< "0.55%"
    Phrase<Text> percent_a_year;
    // What the value was, what it is, and of which row.
    Phrase<Text, Text, Text> note_rate;
    Phrase<Text, Text, Text> points;
    Phrase<Text, Text, Text> upfront_fee;
    Phrase<Text, Text, Text> annual_premium;
    Phrase<Text, Text, Text> annual_premium_months;
    Phrase<Text, Text, Text> single_premium;
    Phrase<Text, Text, Text> contribution_cap;
    Phrase<Text, Text, Text> homeowner;
    Phrase<Text, Text, Text> insurance_changes;
    Phrase<Text, Text> insurance_starts; ///< what it is, and of which row
    Phrase<Text> insurance_ends;         ///< what it was
    Phrase<Text> row;                    ///< the bands of the row, behind all these

    // The bands of a row: "LTV over 90% and up to 95%".
    Phrase<> ltv;
    Phrase<> down_payment;
    Phrase<> term;
    Phrase<> base_loan;
    Phrase<> loan;
    Phrase<> score;
    Phrase<> price;
    Phrase<> dwelling_value;
    Phrase<Text> over;
    Phrase<Text> from;
    Phrase<Text> under;
    Phrase<Text> up_to;
    Phrase<Text, Text> both_edges; ///< "over 90%", "up to 95%"
    Phrase<Text, Text> band;       ///< of what, its edges
    Phrase<Text> band_months;      ///< a term in a band
};

} // namespace quoin
