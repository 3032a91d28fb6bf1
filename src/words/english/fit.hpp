// Which wishes fit within a month and the cash, in English.
#pragma once

#include "words/fit.hpp"

namespace quoin::english {

inline constexpr FitWords fit = {
    .title = "Which wishes fit",
    .within = "within {} a month and {} of cash in all",
    .on_lot = "On lot {}:",
    .named = "{}: {}",
    .how_many = "{}, {}{}",
    .must = "{}, must",
    .needed = "needed",
    .in_the_home = "in the home",
    .no_wish = "no wish",
    .as_chosen = "{} as chosen",
    .rank = "rank",
    .worth = "worth",
    .price = "price",
    .month = "a month",
    .cash = "cash",
    .lot = "lot",
    .chosen = "chosen",
    .with = "with",
    .left_out = "left out: what each would add to the above, and why it did not fit",
    .along = "with {}, which it needs",
    .takes_place = "would take the place of {}, which is worth more",
    .loan_refused = "the loan could not be had: {}",
    .over_month = "over the month by {}",
    .over_cash = "over the cash by {}",
    .over_both = "over the month by {} and the cash by {}",
    .instead = "{}; instead of {}",
    .more_month = "a month of {} more",
    .more_cash = "{} more cash",
    .more_of_both = "a month of {} more and {} more cash",
    .next_nowhere = "To have {} as well: {}; no choice within the limits holds it.",
    .next_not_found = "To have {} as well: {}; the search found no choice within the limits with "
                      "it.",
    .next = "To have {} as well: {}; or, within the limits, give up {}{}: worth {} in all{}.",
    .nothing_chosen = "nothing of the above",
    .gained = " (and {} fits then)",
    .next_unproven = ", the best found when the search stopped",
    .proven = "worth {}: proven, no choice within the limits is worth more{} ({} looked into)",
    .cheapest = ", none worth as much costs less a month",
    .perhaps_cheaper = "; another worth as much may cost less",
    .best_so_far = "worth {}: the best of {} looked into before the search stopped; none is worth "
                   "more than {}{}",
    .more_at_most = " ({} more at most)",
    .worth_at_most = "up to {}",
    .figures = "price {}, {} a month, {} in cash: {}",
    .incentives_lost = "not given on this lot: {}",
    .selected = "what is selected",
    .selected_and_musts = "what is selected and the must-haves",
    .barred = "Nothing can be chosen: {}.",
    .barred_briefly = "nothing can be chosen",
    .nothing_fits = "nothing fits",
    .none_found = "none found that fits",
    .stopped_before_nearest = "Nothing fits. The search stopped before it found the nearest home.",
    .stopped_before_any = "The search stopped before it found a home: whether one fits is not "
                          "known.",
    .loan_for_no_home = "Nothing fits: this loan cannot be had for any home with {}.",
    .loan_not_found = "Nothing fits: no home was found with {} for which this loan can be had.",
    .nearest = "Nothing fits: the nearest home with {} is {}. {}",
    .nearest_of_found = "The search stopped before one that fits: the nearest home with {} is {}. "
                        "{}",
    .nearest_unproven = "Not proven: the search stopped, and another may be over by less.",
    .none_by_less = "Proven: none is over by less.",
    .neither_by_less = "Proven: none is over the month, or over the cash, by less.",
    .other_within_cash = "Proven: none is over the month by less. Another is within the cash, but "
                         "over the month by more.",
    .other_over_cash = "Proven: none is over the month by less. Another is over the cash by only "
                       "{}, but over the month by more.",
    .worth_of_wishes =
        "A wish is worth its weight, or n + 1 less its place among the n wishes by rank. What was "
        "left out is figured as the difference of two whole quotes. Limits are on the settled "
        "month and on all the cash, deposits among it.",
};

} // namespace quoin::english
