// What is said of a loan's terms and of lengths of time, in English.
#pragma once

#include "brief.hpp"
#include "words/terms.hpp"

namespace quoin::english {

inline constexpr TermsWords terms = {
    .years = [](int n) { return n == 1 ? std::string("1 year") : fmt::format("{} years", n); },
    .months = [](int n) { return n == 1 ? std::string("1 month") : fmt::format("{} months", n); },
    .no_apr = "not available",
    .points = "{} points",
    .points_credit = "lender credit of {} points",
    .line = "{}: interest rate {}, {}, APR {}, loan term {}, down payment {} ({}), LTV {}, {}-day "
            "rate lock{}{}",
    .extra_principal = ", {} a month in optional extra principal",
    .adjustable = ". The rate is fixed for {}. Then it changes every {} months to the {} ({} on "
                  "{:en}) plus {}%. It can change by {} percentage points at the first change, {} "
                  "at each later change and {} over the life of the loan. It never goes above {}. "
                  "Principal and interest can reach {} a month",
    .to_bring = "{} cash to close",
    .back = "{} cash back at closing",
    .brief = brief,
};

} // namespace quoin::english
