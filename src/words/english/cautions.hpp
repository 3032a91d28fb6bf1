// What has to be known beside the figures of an answer, in English.
#pragma once

#include "words/cautions.hpp"

namespace quoin::english {

inline constexpr CautionWords cautions = {
    .estimate = "An estimate as of {:en}: not a Loan Estimate, not an approval, not an offer to "
                "lend. A licensed loan originator gives those{}; the published programs and local "
                "law decide. You may choose any lender.",
    .no_originator = " (none is named here yet)",
    .originator = " ({})",
    .rates_until_locked =
        "Rates of {1:en} from {0} ({2}), good through {3:en}{4}; they hold only when locked.{5}",
    .rates_out_of_date = " (that day has passed: ask for new ones)",
    .sample_rates = " They are samples, not anybody's offer.",
    .costs_as_known = "Taxes, insurance, dues and closing costs as known for {}{}. Interest runs "
                      "from the closing; the APR counts prepaid interest and the odd first period. "
                      "Totals over years keep taxes, insurance and dues as they are today.",
    .sample_place = " (sample figures)",
    .rule_continued = "{}: {}; the one in force until then is used.",
    .lock_ends_first = "A {}-day lock taken now ends on {:en}, before the closing: the rate can "
                       "move by then.",
    .rate_adjustable =
        "Where a rate is adjustable, its APR and totals take the index to stay where it is "
        "(comment 17(c)(1)-10 to 12 CFR 1026); it will move, and the payment with it.",
    .extra_principal =
        "Extra principal of {} is by choice. Totals and costs over years, the number of payments "
        "and the end of mortgage insurance count it; the settled month, the APR and the disclosed "
        "cost of credit do not (12 CFR 1026.37(l), 1026.38(o): payments as scheduled). Taxes, "
        "insurance and dues count to the end of the term.",
    .extra_of = "{} a month ({})",
    .licensed_trades = "* Marked work on gas, wiring, plumbing or structure follows local code, "
                       "needs a permit, and is done by a licensed trade, now or later.",
    .agent_license =
        "For the agent: prices, and how programs work in general, are yours to explain; presenting "
        "particular loan terms for gain can need a license of its own (12 CFR 1008.103), and an "
        "advertised payment brings duties (12 CFR 1026.24).",
};

} // namespace quoin::english
