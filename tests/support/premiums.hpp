// Premiums by the methods that charge them, of a loan that is known without a scenario.
#pragma once

#include "../../src/loan/fees/table.hpp"

namespace quoin::test {

inline MonthlyPremium hud_premium(const LoanTerms& note, Percent annual, Percent upfront,
                                  int months) {
    return hud_average_balance.charge({note, note.loan, annual, upfront, Schedule{}, months});
}

inline MonthlyPremium usda_fee(const Schedule& schedule, Percent annual, int months) {
    const LoanTerms& note = schedule.terms();
    return usda_average_balance.charge({note, note.loan, annual, {}, schedule, months});
}

inline MonthlyPremium level_premium(Money base_loan, Percent annual, int months) {
    return lender_factor.charge({{}, base_loan, annual, {}, Schedule{}, months});
}

} // namespace quoin::test
