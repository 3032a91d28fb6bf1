// Each figure with its formula and what it rests on, and the workbook of them.
#pragma once

#include <cstddef>
#include <cstdint>

#include <quoin/lending/closing_cost.hpp>
#include <quoin/lending/dated.hpp>
#include <quoin/loan/credits.hpp>
#include <quoin/loan/formula.hpp>
#include <quoin/loan/proof_codes.hpp>

#include "words/phrase.hpp"

namespace quoin {

/// The sheets of the workbook. Their names stand in its formulas: each a word of plain letters.
enum class RecheckSheet : std::uint8_t { home, loan, cash, schedule };
inline constexpr std::size_t recheck_sheet_count = 4;

/// What figures are called.
struct FigureWords {
    NamesOf<FigureCode> code;
    PhrasesOf<NamedFigure, named_figure_count, Text> named;
    PhrasesOf<NumberedFigure, codes<NumberedFigure>.size(), int> numbered; ///< year, or payment
    Phrase<Text, Text> choice;           ///< option, level or choice
    Phrase<Text, Text, Text, Text> cost; ///< its name, section, who pays it, finance charge
    NamesOf<PaidBy> paid_by;
    Phrase<> finance_charge;
    Phrase<Text, Text> bill; ///< of what, its day
    Phrase<> tax;
    Phrase<> tax_on_land;
    NamesOf<CreditUse> of_credit;       ///< what of it goes to a use
    Phrase<> of_credit_for_the_premium; ///< where the upfront fee is a single premium
};

/// What figures rest on.
struct GroundWords {
    Phrase<int> rounding;
    NamesOf<CommonRule, common_rule_count> rule;
    PhrasesOf<FileRule, file_rule_count, Text> rule_of; ///< id of the file
    Phrase<Text, Text> premium;                         ///< id of the place, part of the month
    Phrase<Text, Text> at_bands;                        ///< rule, bands as written
    Phrase<Text> no_more;                               ///< rule
    Phrase<Text> from;                                  ///< day, as in files; likewise
    Phrase<Text> through;
    Phrase<Text> through_and_on; ///< a later edition is not in the data
    NamesOf<CommonSource, common_source_count> source;
    Phrase<Text, Text> source_known; ///< status, source
    NamesOf<Status> status;
};

/// How a figure is rounded one way.
struct RoundingWords {
    Phrase<> cent;
    Phrase<> dollar;
    Phrase<> whole;
    Phrase<int> decimals;
};

/// Formulas; operators are signs, in any language.
struct FormulaWords {
    NamesOf<ScheduleColumn, schedule_column_count> column;
    Phrase<Text> least; ///< of parts
    Phrase<Text> greatest;
    Phrase<Text, Text> rounded;      ///< formula, how
    Phrase<Text, Text> part_rounded; ///< within another
    RoundingWords nearest;
    RoundingWords down;
    RoundingWords up;
    Phrase<Text> level_payment;        ///< of parts
    Phrase<Text, int, int> column_sum; ///< column, first and last month
    Phrase<Text, int> column_at;       ///< column, payment
    Phrase<Text, Text> rows_over;      ///< column, the most it may be
    Phrase<Text, Text> worth;          ///< APR, odd days
    Phrase<Text, Text> worth_bought_down;
};

struct WorkbookWords {
    NamesOf<RecheckSheet, recheck_sheet_count> sheet;
    NamesOf<RecheckSheet, recheck_sheet_count> title;
    Phrase<Text, Text> title_of; ///< title, scenario
    /// Community, builder, plan, elevation, lot, buyer; as of, closing.
    Phrase<Text, Text, Text, Text, Text, Text, Date, Date> home;
    // Headings of columns.
    Phrase<> figure;
    Phrase<> value;
    Phrase<> formula;
    Phrase<> rounding;
    Phrase<> rule;
    Phrase<> in_force_from;
    Phrase<> status;
    Phrase<> source;
    Phrase<> payment;
    Phrase<> due;
    Phrase<> rate;
};

struct RecheckWords {
    Phrase<> title;
    Phrase<Text, Money, Text> scenario; ///< its name, the month, its terms
    Phrase<int> all_agree;              ///< figures
    Phrase<int, int> some_differ;       ///< figures, and those that do
    Phrase<Text> differs;               ///< what the formula comes to
    Phrase<Text> inputs;
    NamesOf<ProofPart, proof_part_count> part;
    FigureWords figures;
    GroundWords grounds;
    FormulaWords formulas;
    WorkbookWords workbook;
};

} // namespace quoin
