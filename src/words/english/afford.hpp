// What income, debts and cash allow, in English.
#pragma once

#include "words/afford.hpp"

namespace quoin::english {

inline constexpr AffordWords afford = {
    .title = "How much home",
    .dates = "as of {:en}; closing {:en}",
    .assumed = "Assumed: {}.",
    .reserve = "{} months of the payment kept in reserve",
    .front_ratio = "housing over {} of income",
    .back_ratio = "housing and debts over {} of income",
    .by_residual_income = "housing and debts by {} residual income",
    .residual_income = "residual income for living",
    .cash = "the cash there is",
    .program = "the program's own limit",
    .takes = "takes",
    .most = "most",
    .left = "left",
    .up_to = "up to {}{}: {} a month, {} of cash needed",
    .held_to_no_ratio = ", the income held to no ratio",
    .binds = "What binds: {}{}.{}",
    .binds_since = " ({})",
    .without = " Without it, up to {}{}.",
    .where_binds = ", where {} binds",
    .qualifying = "Ratios are at a payment of {}, since this rate can rise: {}.",
    .whole_percents = "A ratio is rounded to a whole percent before it is held to the limit.",
    .refused = "No price fits: at {} {}.",
    .nearest = "No price fits. The nearest, at {}, misses by what is below zero:",
    .automated_the_same = "Automated underwriting changes nothing here: the {} of this program are "
                          "a guide, however a file is underwritten.",
    .automated_none_published =
        "No ratio is published for a file that this program's automated underwriting accepts, so "
        "none is held here: what it accepts is not known before it is asked. A file that it refers "
        "is held to the ratios of manual underwriting.",
    .automated_not_known = "Automated underwriting changes nothing here: no ratio of its own is "
                           "known for this program.",
    .passed = "Housing and debts are over {} of the income. That is let pass here because at least "
              "{} of the residual income is left; the lender has to justify it in the file, and "
              "decides.",
    .residual_tested = "Residual income: {} must be left for living after taxes, debts, the month "
                       "and {} for maintenance and utilities ({} sq ft).",
    .residual_lacks_one = "Residual income, which this program asks for, is not tested: {} is not "
                          "given.",
    .residual_lacks_several = "Residual income, which this program asks for, is not tested: {} are "
                              "not given.",
    .lacks_income = "the income",
    .lacks_taxes = "the taxes on it (\"income_taxes\")",
    .lacks_household = "the persons in the household",
    .lacks_region = "the place's region",
    .lacks_square_feet = "the plan's square feet",
    .step_refused = "A home of {} is not to be had so: {}.",
    .step = "A home of {} would take {}.{}",
    .and_also = "{}, and {}",
    .more_cash = "{} more cash",
    .more_income = "{} more income a month",
    .more_income_or_less_debts = "{} more income a month, or {} less in debts",
    .more_after_tax = "{} more a month after taxes",
    .more_after_tax_or_less_debts = "{} more a month after taxes, or {} less in debts",
    .lower_rate = " Instead of all that a note rate of {} at {} points would do.",
    .no_plan = "No home of the price book is within it.",
    .plan = "{}: {}, from {} ({}, lot {})",
    .pairs =
        [](int n) {
            return fmt::format("{} {} of elevation and free lot", n, n == 1 ? "pair" : "pairs");
        },
    .ratios_are_guides =
        "Ratios are guides of the published rules, not an approval: a lender looks at credit, "
        "income and assets, and may go above them or stay below. What a buyer can borrow and what "
        "suits them are two questions. A temporary buydown lowers the first payments and lets "
        "nothing more: loans are held to the note rate.",
};

} // namespace quoin::english
