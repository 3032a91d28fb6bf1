// Every answer as text and as JSON.
#pragma once

#include <string>

namespace quoin {

struct AddsAnswer;
struct AffordAnswer;
struct AprAnswer;
struct CashAnswer;
struct CompareAnswer;
struct CreditAnswer;
struct FitAnswer;
struct LaterAnswer;
struct MonthByMonthAnswer;
struct PaymentAnswer;
struct ProgramsAnswer;
struct QuoteAnswer;
struct RecheckAnswer;
struct SheetAnswer;
struct ShiftAnswer;
struct ShownAnswer;
struct SiteAnswer;
struct TourAnswer;

/// `by_part`: the month's difference by part under each item, instead of one line an item.
[[nodiscard]] std::string text_of(const AddsAnswer& answer, bool by_part);
[[nodiscard]] std::string text_of(const AffordAnswer& answer);
[[nodiscard]] std::string text_of(const AprAnswer& answer);
[[nodiscard]] std::string text_of(const CashAnswer& answer);
[[nodiscard]] std::string text_of(const CompareAnswer& answer);
[[nodiscard]] std::string text_of(const CreditAnswer& answer);
[[nodiscard]] std::string text_of(const FitAnswer& answer);
[[nodiscard]] std::string text_of(const LaterAnswer& answer);
[[nodiscard]] std::string text_of(const MonthByMonthAnswer& answer);
[[nodiscard]] std::string text_of(const PaymentAnswer& answer);
[[nodiscard]] std::string text_of(const ProgramsAnswer& answer);
[[nodiscard]] std::string text_of(const QuoteAnswer& answer);
[[nodiscard]] std::string text_of(const RecheckAnswer& answer);
[[nodiscard]] std::string text_of(const ShiftAnswer& answer);
[[nodiscard]] std::string text_of(const ShownAnswer& answer);
[[nodiscard]] std::string text_of(const SiteAnswer& answer);
[[nodiscard]] std::string text_of(const TourAnswer& answer);

/// Comma-separated values, for a spreadsheet.
[[nodiscard]] std::string csv_of(const MonthByMonthAnswer& answer);

/// One page to print and hand over: no script, no other file, no address in it.
[[nodiscard]] std::string html_of(const SheetAnswer& answer);

/// Of any of these but the sheet, as its shape says (shape.hpp).
template <class Answer>
[[nodiscard]] std::string json_text_of(const Answer& answer);

} // namespace quoin
