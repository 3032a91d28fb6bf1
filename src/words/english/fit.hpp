// Which wishes fit within a month and the cash, in English.
#pragma once

#include "words/fit.hpp"

namespace quoin::english {

inline constexpr FitWords fit = {
    .title = "Which wishes fit your limits",
    .within = "Your limits: {} a month and {} cash needed, deposits included",
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
    .with = "what this home has",
    .left_out = "left out: what each would add, and why it did not fit",
    .along = "comes with what it needs: {}",
    .takes_place = "would replace wishes worth more: {}",
    .loan_refused = "the loan would not be available: {}",
    .over_month = "over your monthly limit by {}",
    .over_cash = "over your cash limit by {}",
    .over_both = "over your monthly limit by {} and your cash limit by {}",
    .instead = "{}; it would replace {}",
    .more_month = "raise your monthly limit by {}",
    .more_cash = "raise your cash limit by {}",
    .more_of_both = "raise your monthly limit by {} and your cash limit by {}",
    .next_nowhere = "To add {}: {}. No choice within your limits includes it.",
    .next_not_found = "To add {}: {}. The search found no choice within your limits that includes "
                      "it.",
    .next = "To add {}: {}. Or stay within your limits and give up {}{}. That choice is worth "
            "{}{}.",
    .nothing_chosen = "none of the above",
    .gained = ", which makes room for {}",
    .next_unproven = ", the best found when the search stopped",
    .proven =
        "Worth {}. Proven: no choice within your limits is worth more{}. Choices looked into: {}.",
    .cheapest = ", and none worth as much costs less a month",
    .perhaps_cheaper = "; another one worth as much may cost less",
    .best_so_far =
        "Worth {}: the best of {} choices looked into before the search stopped. None is worth "
        "more than {}{}.",
    .more_at_most = " (at most {} more)",
    .worth_at_most = "worth {} at most",
    .figures = "Price {}, {} a month, {} cash needed; {}",
    .incentives_lost = "Incentives not available on this lot: {}",
    .selected = "your selections",
    .selected_and_musts = "your selections and must-haves",
    .barred = "Your choices do not work for this home: {}.",
    .barred_briefly = "your choices do not work here",
    .nothing_fits = "nothing fits",
    .none_found = "none found that fits",
    .stopped_before_nearest = "Nothing fits. The search stopped before it found the closest home.",
    .stopped_before_any = "The search stopped before it found a home. Nobody knows yet whether "
                          "one fits.",
    .loan_for_no_home = "Nothing fits. This loan is not available for any home with {}.",
    .loan_not_found = "Nothing fits. The search found no home with {} for which this loan is "
                      "available.",
    .nearest = "Nothing fits. The closest home with {} is {}. {}",
    .nearest_of_found = "The search stopped before it found a home that fits. The closest home "
                        "with {} is {}. {}",
    .nearest_unproven = "Not proven: the search stopped, and another home may come closer.",
    .none_by_less = "Proven: no home comes closer.",
    .neither_by_less = "Proven: no home comes closer to either limit.",
    .other_within_cash = "Proven: no home comes closer to the monthly limit. Another home is "
                         "within the cash limit, but further over the monthly limit.",
    .other_over_cash = "Proven: no home comes closer to the monthly limit. Another home is over "
                       "the cash limit by only {}, but further over the monthly limit.",
    .worth_of_wishes =
        "A wish is worth its weight. If it has no weight, its place by rank decides: the last of "
        "your wishes is worth 1, the one before it 2, and so on up to the first. What a wish left "
        "out would add is the difference between two whole quotes. Your limits are for the monthly "
        "payment with "
        "full taxes and for all the cash needed, deposits included.",
};

} // namespace quoin::english
