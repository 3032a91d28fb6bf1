// The names of what a month, the cash, the closing costs and a lot are made of.
#pragma once

#include <quoin/answers/cash.hpp>
#include <quoin/lending/closing_cost.hpp>
#include <quoin/lending/month_part.hpp>
#include <quoin/loan/cash_to_close.hpp>
#include <quoin/loan/credits.hpp>
#include <quoin/pricebook/lot.hpp>
#include <quoin/pricebook/option.hpp>
#include <quoin/words/measures.hpp>

#include "words/phrase.hpp"

namespace quoin {

struct PartWords {
    NamesOf<MonthPart> month;
    NamesOf<CashPart, cash_parts.size()> cash;
    NamesOf<CreditUse> use;       ///< what money goes to, behind "for"
    Phrase<> single_premium;      ///< likewise: what an upfront fee of mortgage insurance is
    NamesOf<CostSection> section; ///< of closing costs
    NamesOf<PaidBy> paid_by;
    NamesOf<CashDue> due; ///< what cash is due for
    NamesOf<LotStatus> lot_status;
    NamesOf<Grade> grade; ///< of a lot: alone in a table, or beside the word for a lot
    NamesOf<Unit> unit;
    Phrase<Text> of_them;       ///< a count
    Phrase<Text, Text> so_much; ///< a number, its unit
    NamesOf<CommonMeasure> measure;
    Phrase<> feet;
    Phrase<Text> office_note; ///< for the desk, of a lot or an option
};

} // namespace quoin
