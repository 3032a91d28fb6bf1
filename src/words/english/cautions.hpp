// What has to be known beside the figures of an answer, in English.
#pragma once

#include "words/cautions.hpp"

namespace quoin::english {

inline constexpr CautionWords cautions = {
    .estimate =
        "This is an estimate as of {:en}. It is not a Loan Estimate, an approval or an "
        "offer to lend. Those come from a licensed loan originator{}. The published program rules "
        "and local law decide what applies. You may choose any lender.",
    .no_originator = " (none is named here yet)",
    .originator = " ({})",
    .rates_until_locked = "Rates are from {0} (license: {2}), dated {1:en} and good through "
                          "{3:en}{4}. A rate holds only once it is locked.{5}",
    .rates_out_of_date = " (that day has passed; ask for new rates)",
    .sample_rates = " These are sample rates, not an offer from anyone.",
    .costs_as_known =
        "Taxes, insurance, HOA dues and closing costs use the figures on file for {}{}. Interest "
        "starts at closing. The APR counts prepaid interest and the odd days of the first period. "
        "Totals over the years keep taxes, insurance and dues at today's amounts.",
    .sample_place = " (sample figures)",
    .rule_continued = "{}: {}. The last one in effect is used here.",
    .lock_ends_first = "A {}-day rate lock taken now ends on {:en}, before closing. The rate can "
                       "change after that.",
    .rate_adjustable =
        "For an adjustable rate, the APR and the totals assume that the index stays where it is "
        "(comment 17(c)(1)-10 to 12 CFR 1026). It will move, and the payment will move with it.",
    .extra_principal =
        "Extra principal of {} is optional. It is counted in the totals and costs over the years, "
        "in the number of payments and in when mortgage insurance ends. It is not counted in the "
        "monthly payment, the APR or the disclosed cost of credit, which go by the scheduled "
        "payments (12 CFR 1026.37(l), 1026.38(o)). Taxes, insurance and dues are counted to the "
        "end of the loan term.",
    .extra_of = "{} a month ({})",
    .licensed_trades =
        "* Marked items involve gas, electric, plumbing or structural work. That work must follow "
        "local code, needs a permit and must be done by a licensed trade, now or later.",
    .agent_license =
        "For the sales agent: you may explain prices, and how programs work in general. Presenting "
        "particular loan terms for gain can require a license of your own (12 CFR 1008.103). An "
        "advertised payment calls for further disclosures (12 CFR 1026.24).",
};

} // namespace quoin::english
