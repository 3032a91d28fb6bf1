// What income, debts and cash allow, in English.
#pragma once

#include "words/afford.hpp"

namespace quoin::english {

inline constexpr AffordWords afford = {
    .title = "Highest price that fits",
    .dates = "As of {:en}; closing {:en}",
    .assumed = "Assumed: {}.",
    .reserve =
        [](int n) {
            return n == 1
                       ? std::string(
                             "1 monthly payment kept as reserves, on top of the cash needed")
                       : fmt::format(
                             "{} monthly payments kept as reserves, on top of the cash needed", n);
        },
    .front_ratio = "housing ratio of {}",
    .back_ratio = "debt-to-income ratio of {}",
    .by_residual_income = "DTI with {} residual income",
    .residual_income = "residual income",
    .cash = "your cash",
    .program = "the loan's own limits",
    .takes = "needed",
    .most = "limit",
    .left = "left",
    .short_by = "short by",
    .up_to = "up to {}{}: {} a month, {} cash needed",
    .held_to_no_ratio = " (no income ratio applied)",
    .binds = "What limits the price: {}{}.{}",
    .binds_since = " ({})",
    .without = " Without that, you could go up to {}{}.",
    .where_binds = " (next limit: {})",
    .qualifying = "This rate can rise, so the ratios use a payment at {}. Source: {}.",
    .whole_percents = "Each ratio is rounded to a whole percent before it is compared with the "
                      "limit.",
    .refused = "No price works for this loan. At {}: {}.",
    .nearest = "No price works for this loan. The lowest price tried is {}:",
    .automated_the_same = "Automated underwriting changes nothing here. This program uses {} as "
                          "its guide for debt-to-income, however a loan is underwritten.",
    .automated_none_published =
        "This program publishes no ratio for loans that its automated underwriting accepts, so "
        "none is applied here. No one knows what it accepts until a lender submits the loan. A "
        "loan that it "
        "refers to manual underwriting is held to the ratios for that.",
    .automated_not_known = "Automated underwriting changes nothing here: no ratio of its own is "
                           "known for this program.",
    .passed = "The debt-to-income ratio is over {}. It passes here because you would have at least "
              "{} of the residual income in the program's guide. The lender has to justify that in "
              "the file, and decides.",
    .residual_tested = "Residual income: {} must be left to live on after taxes, debts, the "
                       "monthly payment and {} for maintenance and utilities ({} sq ft).",
    .residual_lacks =
        "This program also looks at residual income. It is not tested here. Missing: {}.",
    .lacks_income = "income",
    .lacks_taxes = "income taxes (\"income_taxes\")",
    .lacks_household = "people in the household",
    .lacks_region = "the region of the place",
    .lacks_square_feet = "the plan's square feet",
    .step_refused = "For a home at {}, this loan is not available: {}.",
    .step = "For a home at {}, you would need {}.{}",
    .and_also = "{}, and {}",
    .more_cash = "{} more cash",
    .more_income = "{} more income a month",
    .more_income_or_less_debts = "{} more income a month or {} less in monthly debts",
    .more_after_tax = "{} more after-tax income a month",
    .more_after_tax_or_less_debts = "{} more after-tax income a month or {} less in monthly debts",
    .lower_rate = " Or you could take an interest rate of {} at {} points and need none of that.",
    .no_plan = "No home in the price book is within this price.",
    .plan = "plan {}: {}, from {} without options ({}, lot {})",
    .pairs =
        [](int n) {
            return n == 1 ? std::string("1 choice of elevation and lot")
                          : fmt::format("{} choices of elevation and lot", n);
        },
    .ratios_are_guides =
        "Ratios are guides from the published rules, not an approval. The housing ratio is the "
        "monthly payment divided by gross monthly income. The debt-to-income ratio (DTI) adds "
        "monthly debts to that payment. A lender looks at credit, income and assets, and may go "
        "above these ratios or stay below them. What you can borrow and what suits you are two "
        "questions. A temporary buydown lowers the first payments, but it does not raise the "
        "price that fits: loans are held to the note rate.",
};

} // namespace quoin::english
