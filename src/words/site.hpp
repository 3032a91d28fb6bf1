// The lots and the plans of a community.
#pragma once

#include <quoin/pricebook/lot.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct SiteWords {
    Phrase<> title;
    Phrase<Text, Text> figured_under; ///< scenario, its terms

    // The lots.
    Phrase<> lot;
    Phrase<> ground;
    Phrase<> plans;
    Phrase<> for_you;
    Phrase<> premium;
    Phrase<> every_plan;
    Phrase<> yours;     ///< of a lot and of a plan
    Phrase<> plan_fits; ///< a lot that is available
    Phrase<> plan_does_not_fit;
    Phrase<Text, Text, Text> measured; ///< a measure's name, its value, unit with a blank before it
    Phrase<> flood_zone;               ///< what a lot is in, beside its measures

    // The plans.
    Phrase<> plan;
    Phrase<> base_price;
    Phrase<Text, Text, Text> size; ///< square feet, bedrooms, bathrooms
    Phrase<> fits_your_lot;
    Phrase<> does_not_fit_your_lot;

    // A move.
    Phrase<Text, Text, Text> move; ///< change of the price, of a month, of the cash
    Phrase<Text, Text> no_loan;    ///< change of the price, reason
    Phrase<Text, Text> elevation;  ///< its name, what the move to it comes to
    Phrase<Text, Text> falls_out;  ///< what would be removed, reason

    // The map.
    Phrase<> map;
    Phrase<Text, Text> map_lot; ///< a lot's id, its status
    Phrase<> your_lot;          ///< in place of the status
    Phrase<> too_small;         ///< likewise, where the plan does not fit
    Phrase<> north;             ///< one letter
    Phrase<int> scale;          ///< feet

    Phrase<> survey_decides; ///< a caution
};

} // namespace quoin
