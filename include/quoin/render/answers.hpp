// Every answer as text and as JSON.
#pragma once

#include <string>

#include <quoin/words/catalogue.hpp>

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
struct RoomsAnswer;
struct SheetAnswer;
struct ShiftAnswer;
struct ShownAnswer;
struct SiteAnswer;
struct TourAnswer;

/// `by_part`: the month's difference by part under each item, instead of one line an item.
[[nodiscard]] std::string text_of(const AddsAnswer& answer, bool by_part,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const AffordAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const AprAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const CashAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const CompareAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const CreditAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const FitAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const LaterAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const MonthByMonthAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const PaymentAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const ProgramsAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const QuoteAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const RecheckAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const RoomsAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const ShiftAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const ShownAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const SiteAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string text_of(const TourAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));

/// Comma-separated values, for a spreadsheet.
[[nodiscard]] std::string csv_of(const MonthByMonthAnswer& answer,
                                 const Catalogue& say = catalogue_in(Language::english));

/// One page to print and hand over: no script, no other file, no address in it.
[[nodiscard]] std::string html_of(const SheetAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));

/// Of any of these but the sheet, as its shape says (shape.hpp).
template <class Answer>
[[nodiscard]] std::string json_text_of(const Answer& answer,
                                       const Catalogue& say = catalogue_in(Language::english));

} // namespace quoin
