// What the program says around its answers, in English.
#pragma once

#include "take_home.hpp"
#include "words/apps.hpp"

namespace quoin::english {

inline constexpr AppsWords apps = {
    .plain =
        {
            .buyer = "the buyer",
            .place = "the figures given",
            .property_taxes = "Property taxes",
            .dues = "HOA dues",
            .closing_costs = "Closing costs",
            .loan = "{}, {}% down",
            .loan_nothing_down = "{}, nothing down",
            .assumed_property_taxes = "property taxes of {}% of the price a year",
            .assumed_tax_days = "property taxes due in two halves, on May 31 and November 30",
            .assumed_insurance = "homeowner's insurance of {}% of the price a year",
            .assumed_closing_costs = "closing costs of {}% of the loan, none of them in the APR",
            .assumed_factors = "mortgage insurance at the rates of {}, where the program has it",
            .assumed_sample_factors = "mortgage insurance at the rates of {} (sample figures), "
                                      "where the program has it",
            .assumed_cash = "as much cash as the home needs (--cash not given)",
            .assumed_score = "a credit score of {}",
        },
    .checking =
        {
            .kind = {{{FileKind::unknown, "file"},
                      {FileKind::price_book, "price book"},
                      {FileKind::inquiry, "inquiry"},
                      {FileKind::program, "loan program"},
                      {FileKind::rate_sheet, "rate sheet"},
                      {FileKind::place, "place"},
                      {FileKind::apr_problem, "APR problem"},
                      {FileKind::drawing, "plan drawing"},
                      {FileKind::site_map, "site map"}}},
            .sound = "{}: {}, no problems found",
            .ending = "{}: {}{}, in effect through {:en}. {}",
            .named = " \"{}\"",
            .after = {{{After::unknown, "After that day, no loan that needs it is available until "
                                        "the next one is added."},
                       {After::continues, "After that day, it stays in use and every answer says "
                                          "so, until the next one is added."},
                       {After::ends, "After that day, there is no such rule."}}},
        },
    .search =
        {
            .progress = "{} looked into, {}: lot {}, {}",
            .best = "best worth {}, at most {}",
            .none_yet = "none yet, at most {}",
            .cheapest = "the cheapest worth {}",
            .another_wish = "with another wish",
            .closest = "nothing fits, the closest home",
            .stopped = "the search was stopped. Where it was not done, you see the best so far\n"
                       "  and the most that any other choice could be worth",
        },
    .first =
        {
            .prices_ended = "These prices ended on {:en}: ask for the current ones. {}",
            .prices_coming = "These prices begin on {:en}. {}",
            .assumed = "A home with nothing chosen yet. We assumed a credit score of {} and a "
                       "closing in {} days.",
        },
    .serve =
        {
            .serves = "quoin serves {} price books and {} inquiries",
            .address_is_open =
                "Anyone who has this address can use it. The connection is not encrypted.",
            .no_page = "This build has no page, only the questions.",
            .no_browser = "No browser was found. Open the address yourself.",
            .how_to_end = "Press Ctrl-C to end it.",
            .left_out = "left out what has problems; the rest is served",
            .ended = "quoin serve has ended",
            .faults =
                "{} answers failed because of a fault of the program. Nothing of them was kept.",
        },
    .end =
        {
            .stopped = "stopped before there was an answer",
            .too_large = "the figures are too large to work with: {}",
            .fault = "this is a fault of the program, not of your input: {}",
            .no_memory = "there is not enough memory",
            .untold = "no more is known about it",
        },
    .take_home = take_home,
    .written = "{}: written. Only you can read this file.",
};

} // namespace quoin::english
