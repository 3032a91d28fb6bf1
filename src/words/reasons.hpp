// What is said of why something of a price book cannot be had, and of what would do where a person
// typed something else.
#pragma once

#include <quoin/pricebook/lot.hpp>

#include "words/phrase.hpp"

namespace quoin {

/// The members of WhyNot::Kind; names are in a row, as joined() has them.
struct WhyNotWords {
    Phrase<> not_on_plan;
    Phrase<Text> only_on_elevations;
    Phrase<Text> only_on_lots;
    Phrase<Text> only_on_grades;
    Phrase<Text, Text, Text> lot_too_small; ///< measure, least, unit with a blank before it
    Phrase<Text> past_cutoff;
    Phrase<Text> needs;
    Phrase<Text> excludes;
    Phrase<Text> one_of_kind;
    Phrase<> two_forms;
    Phrase<Text> better_in_package;
    Phrase<> another_choice;
    Phrase<Text> selection_would_go;
    Phrase<> outweighed;
    Phrase<> not_for_use;
    Phrase<> not_for_plan;
    Phrase<> not_for_lot;
    Phrase<Date> contract_too_late; ///< last day
    Phrase<Date> closing_too_late;
    Phrase<Text> other_lender;
    Phrase<> takes_all;
};

/// The members of Wanted::Kind: least, most and an example, where it has them.
struct WantedWords {
    Phrase<Text> amount_above_zero;
    Phrase<Text> amount_not_below_zero;
    Phrase<Text, Text, Text> amount_in_range;
    Phrase<Text> amount_under_price;
    Phrase<> amount_to_spend;
    Phrase<Text, Text, Text> dollars_in_range;
    Phrase<Text> dollars_a_month;
    Phrase<Text> gross_dollars_a_month;
    Phrase<Text, Text> whole_number;
    Phrase<Text, Text> whole_months;
    Phrase<Text, Text> whole_years;
    Phrase<Text, Text> percent;
    Phrase<Text, Text, Text> percent_such;
    Phrase<Text, Text, Text> percentage_points;
    Phrase<Text, Text, Text> yearly_percent;
    Phrase<Text, Text, Text> yearly_rate_above;
    Phrase<Text> day;
    Phrase<Text> one_of; ///< names
    Phrase<> adjustable_scenario;
    Phrase<> loan_rate_and_months;
    Phrase<Text, Text, Text> quantity_in_steps; ///< least, most, step
    Phrase<> quantity_of_the_book;
    Phrase<Text> name_with_ending;
};

/// Why nothing can be chosen for a home.
struct ContradictionWords {
    Phrase<Text, Text> falls_out;       ///< option, why
    Phrase<Text, Text> must_have;       ///< option, why
    Phrase<Text> cannot_stand;          ///< a must-have
    Phrase<Text> cannot_stand_together; ///< must-haves
    Phrase<Text, Text> both;            ///< all but the last of a row of names, and the last
    Phrase<Text, Text> rule;            ///< option, why
    Phrase<Text, Text> exclude_each_other;
    Phrase<Text, Text> only_one_of;
};

struct ReasonWords {
    Phrase<Text, Text> either; ///< all but the last of a row of names, and the last
    WhyNotWords why_not;
    WantedWords wanted;
    ContradictionWords contradiction;
};

} // namespace quoin
