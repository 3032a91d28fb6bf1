// Every answer as text and as JSON. Text is told in blocks, which whoever shows it lays out.
#pragma once

#include <string>

#include <quoin/render/blocks.hpp>
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
[[nodiscard]] Blocks blocks_of(const AddsAnswer& answer, bool by_part,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const AffordAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const AprAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const CashAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const CompareAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const CreditAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const FitAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const LaterAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const MonthByMonthAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const PaymentAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const ProgramsAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const QuoteAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const RecheckAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const RoomsAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const ShiftAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const ShownAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const SiteAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] Blocks blocks_of(const TourAnswer& answer,
                               const Catalogue& say = catalogue_in(Language::english));

/// Where it is said of lines with payments that these are estimates, and of which day.
enum class Estimate { on_each_line, below_all };

/// The same in one line for each loan; of what is added, for each option asked about.
[[nodiscard]] Blocks brief_of(const AddsAnswer& answer, const Catalogue& say,
                              Estimate estimate = Estimate::on_each_line);
[[nodiscard]] Blocks brief_of(const AffordAnswer& answer, const Catalogue& say,
                              Estimate estimate = Estimate::on_each_line);
[[nodiscard]] Blocks brief_of(const CashAnswer& answer, const Catalogue& say,
                              Estimate estimate = Estimate::on_each_line);
[[nodiscard]] Blocks brief_of(const CompareAnswer& answer, const Catalogue& say,
                              Estimate estimate = Estimate::on_each_line);
[[nodiscard]] Blocks brief_of(const CreditAnswer& answer, const Catalogue& say,
                              Estimate estimate = Estimate::on_each_line);
[[nodiscard]] Blocks brief_of(const FitAnswer& answer, const Catalogue& say,
                              Estimate estimate = Estimate::on_each_line);
[[nodiscard]] Blocks brief_of(const LaterAnswer& answer, const Catalogue& say,
                              Estimate estimate = Estimate::on_each_line);
[[nodiscard]] Blocks brief_of(const QuoteAnswer& answer, const Catalogue& say,
                              Estimate estimate = Estimate::on_each_line);
[[nodiscard]] Blocks brief_of(const ShiftAnswer& answer, const Catalogue& say,
                              Estimate estimate = Estimate::on_each_line);

/// An answer laid out on lines of the usual width.
template <class Answer>
requires requires(const Answer& answer, const Catalogue& say) { blocks_of(answer, say); }
[[nodiscard]] std::string text_of(const Answer& answer,
                                  const Catalogue& say = catalogue_in(Language::english)) {
    return blocks_of(answer, say).text();
}
[[nodiscard]] inline std::string text_of(const AddsAnswer& answer, bool by_part,
                                         const Catalogue& say = catalogue_in(Language::english)) {
    return blocks_of(answer, by_part, say).text();
}

/// Comma-separated values, for a spreadsheet.
[[nodiscard]] std::string csv_of(const MonthByMonthAnswer& answer,
                                 const Catalogue& say = catalogue_in(Language::english));

/// The parts of a sheet: its style, and its sides as they stand in an element of class "sheet".
struct SheetHtml {
    std::string title; ///< a text
    std::string style; ///< CSS
    std::string sides; ///< HTML
};
[[nodiscard]] SheetHtml sheet_html(const SheetAnswer& answer,
                                   const Catalogue& say = catalogue_in(Language::english));

/// One page to print and hand over: no script, no other file, no address in it.
[[nodiscard]] std::string html_of(const SheetAnswer& answer,
                                  const Catalogue& say = catalogue_in(Language::english));

/// Of any of these but the sheet, as its shape says (shape.hpp).
template <class Answer>
[[nodiscard]] std::string json_text_of(const Answer& answer,
                                       const Catalogue& say = catalogue_in(Language::english));

} // namespace quoin
