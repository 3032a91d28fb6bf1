// Reading lending data: a file into its values, and the parts that several files have. What is
// wrong is among the findings; the values must not be used then.
#pragma once

#include <iosfwd>
#include <optional>
#include <vector>

#include <quoin/lending/place.hpp>
#include <quoin/lending/program.hpp>
#include <quoin/lending/rate_sheet.hpp>

namespace quoin {

struct Document;
class Findings;
class Reader;

/// `methods` are those that its fees may be charged by.
[[nodiscard]] LoanProgram read_program(const Document& document, const FeeMethods& methods,
                                       Findings& findings);
[[nodiscard]] RateSheet read_rate_sheet(const Document& document, Findings& findings);
[[nodiscard]] Place read_place(const Document& document, Findings& findings);

/// The head of a rate sheet's JSON text, read no further than it takes; of a sound sheet that is
/// its id and date. Nothing where the text is no rate sheet, or where it is not told: then only the
/// whole can say what is wrong. What is wrong after the head is not seen.
[[nodiscard]] std::optional<SheetHead> head_of_rate_sheet(std::istream& json);

/// Reads and validates one table: no two rows for one case, no gap in what it covers.
[[nodiscard]] BandTable read_band_table(Reader& reader);
/// Reads "status", "source", "effective", "until" and "after"; all but the first two may be
/// missing.
void read_dated(Reader& item, Dated& rule);
/// Reads and validates one cost.
[[nodiscard]] ClosingCost read_closing_cost(Reader& reader);
[[nodiscard]] AdjustablePlan read_adjustable_plan(Reader& item);
/// The member "policy" of a program's file, over what is usual for its kind.
[[nodiscard]] ProgramPolicy read_policy(Reader& program, ProgramKind kind);
/// Reads the list `ratios` of a program; it may be missing.
[[nodiscard]] std::vector<RatioLimits> read_ratio_limits(Reader& program);
/// Reads the list `residual_income` of a program; it may be missing.
[[nodiscard]] std::vector<ResidualIncome> read_residual_income(Reader& program);

} // namespace quoin
