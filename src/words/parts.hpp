// The names of what a month, the cash and the closing costs are made of.
#pragma once

#include <quoin/answers/cash.hpp>
#include <quoin/lending/closing_cost.hpp>
#include <quoin/lending/month_part.hpp>
#include <quoin/loan/cash_to_close.hpp>
#include <quoin/loan/credits.hpp>
#include <quoin/pricebook/lot.hpp>
#include <quoin/pricebook/option.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct PartWords {
    NamesOf<MonthPart, month_parts.size()> month;
    NamesOf<CashPart, cash_parts.size()> cash;
    NamesOf<CreditUse> use;
    Phrase<> single_premium;      ///< what an upfront fee of mortgage insurance is, as a use
    NamesOf<CostSection> section; ///< of closing costs
    NamesOf<PaidBy> paid_by;
    NamesOf<CashDue> due; ///< what cash is due for
    NamesOf<LotStatus> lot_status;
    NamesOf<Grade> grade; ///< of a lot
    NamesOf<Unit> unit;
    Phrase<Text> of_them;       ///< a count
    Phrase<Text, Text> so_much; ///< a measure, its unit
};

} // namespace quoin
