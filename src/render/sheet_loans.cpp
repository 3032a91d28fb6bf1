// The second side of a sheet: the loans beside each other, the dates, what has to be known, and who
// gave it.
#include "sheet_parts.hpp"

#include <algorithm>
#include <utility>

#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

#include "cash_words.hpp"
#include "html.hpp"
#include "scenario_table.hpp"
#include "words/cautions.hpp"
#include "words/sheet.hpp"

namespace quoin {
namespace {

constexpr std::size_t most_beside = 6; ///< scenarios that paper is wide enough for

struct Loans {
    const SheetAnswer& answer;
    std::size_t from;
    std::size_t to;

    [[nodiscard]] std::string_view kind(std::size_t loan) const {
        return answer.front == loan ? " class=\"in-front\"" : "";
    }
};

std::string loan_names(const Loans& loans) {
    std::string cells = "<td></td>";
    for (std::size_t i = loans.from; i < loans.to; ++i) {
        cells += "<th scope=\"col\"" + std::string(loans.kind(i)) + ">" +
                 in_element(loans.answer.quote.scenarios[i].terms.name) + "</th>";
    }
    return element("thead", element("tr", cells));
}

std::string loan_rows(const Loans& loans, const std::vector<SideRow>& rows) {
    std::string body;
    std::string kind;
    for (const SideRow& row : rows) {
        if (row.kind == SideRow::Kind::rule) kind = "sum";
        if (row.kind == SideRow::Kind::gap) kind = "gap";
        if (row.kind != SideRow::Kind::figures) continue;
        std::string cells = "<th scope=\"row\">" + in_element(row.label) + "</th>";
        for (std::size_t i = loans.from; i < loans.to; ++i) {
            cells +=
                "<td" + std::string(loans.kind(i)) + ">" + in_element(row.figures[i]) + "</td>";
        }
        body += element("tr", cells, std::exchange(kind, {}));
    }
    return element("tbody", body);
}

/// As many tables as the paper's width asks for.
std::string loans_section(const SheetAnswer& answer, const Catalogue& say) {
    const std::vector<ScenarioAnswer>& scenarios = answer.quote.scenarios;
    if (scenarios.empty()) return {};
    const std::vector<SideRow> rows = sheet_rows(scenarios, say);
    const std::size_t tables = (scenarios.size() + most_beside - 1) / most_beside;
    std::string out;
    for (std::size_t i = 0; i < tables; ++i) {
        const Loans loans{answer, scenarios.size() * i / tables,
                          scenarios.size() * (i + 1) / tables};
        out += element("table", loan_names(loans) + loan_rows(loans, rows), "side");
    }
    std::vector<std::string> refused;
    for (const ScenarioAnswer& s : scenarios) {
        for (const Refusal& refusal : s.refusals) {
            refused.push_back(refused_words(s.terms.name, refusal, say));
        }
    }
    const std::string title = escaped(say.sheet.loans());
    return section(say.sheet.loans(), "<div class=\"scroll\" role=\"region\" tabindex=\"0\" "
                                      "aria-label=\"" +
                                          title + "\">" + out + "</div>\n" + text_list(refused));
}

std::string calendar_section(const SheetAnswer& answer, const Catalogue& say) {
    if (!answer.cash) return {};
    std::string rows;
    for (const CalendarDay& day : answer.cash->calendar) {
        const SaidDay said = said_day(day, say);
        rows += figure_row(said.what, {say.sheet.table_day(day.date), said.amount});
    }
    if (rows.empty()) return {};
    return section(say.sheet.calendar(), element("table", element("tbody", rows)));
}

std::string dates_section(const SheetAnswer& answer, const Catalogue& say) {
    const SheetWords& of = say.sheet;
    const Heading& h = answer.quote.heading;
    std::vector<std::pair<Date, std::string>> days = {
        {h.rates_good_through, std::string(of.rates_good_through())},
        {h.price_book_expires, std::string(of.price_book_good_through())},
        {h.closing, std::string(of.closing())}};
    if (answer.cash) {
        days.emplace_back(answer.cash->scenario.terms.lock_ends, of.lock_ends());
        days.emplace_back(answer.cash->scenario.first_payment, of.first_payment());
    }
    std::stable_sort(days.begin(), days.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::string rows;
    for (const auto& [day, what] : days) rows += figure_row(what, {of.table_day(day)});
    return section(of.dates(), element("table", element("tbody", rows)));
}

std::string deposits_section(const SheetAnswer& answer, const Catalogue& say) {
    const std::string& note = answer.quote.deposit_note;
    if (note.empty()) return {};
    return section(say.sheet.deposits(), text_element("p", note));
}

std::string extra_words(const std::vector<ScenarioTerms>& terms, const Catalogue& say) {
    std::vector<std::string> told;
    for (const ScenarioTerms& t : terms) {
        if (t.extra_principal.is_zero()) continue;
        told.push_back(say.cautions.extra_of(t.extra_principal, t.name));
    }
    return say.sheet.extra(joined(told, Joint::both, say));
}

/// A caution as short as paper has room for: what stands on the sheet already is not said again.
std::string caution_words(const Caution& caution, const SheetAnswer& answer, const Catalogue& say) {
    const SheetWords& of = say.sheet;
    const Heading& h = answer.quote.heading;
    switch (caution.code) {
    case CautionCode::estimate:
        return std::string(of.decides());
    case CautionCode::rates_until_locked: {
        std::string words(of.rates_hold());
        if (h.as_of > h.rates_good_through) words += " " + std::string(of.rates_out_of_date());
        return words + " " + of.license(h.license);
    }
    case CautionCode::costs_as_known:
        return of.costs(h.place, h.sample_place ? std::string(of.sample()) : std::string());
    case CautionCode::rate_adjustable:
        return std::string(of.adjustable());
    case CautionCode::licensed_trades:
        return std::string(of.work());
    case CautionCode::extra_principal:
        return extra_words(terms_of(answer.quote.scenarios), say);
    default:
        return caution.words;
    }
}

/// What programs ask in return, once for all that ask the same.
std::vector<std::string> catches_of(const std::vector<ScenarioAnswer>& scenarios,
                                    const Catalogue& say) {
    std::vector<std::pair<std::string, std::vector<std::string>>> catches;
    for (const ScenarioAnswer& s : scenarios) {
        const std::string& asked = s.terms.fine_print;
        if (asked.empty()) continue;
        auto found = std::find_if(catches.begin(), catches.end(),
                                  [&](const auto& one) { return one.first == asked; });
        if (found == catches.end()) found = catches.insert(found, {asked, {}});
        std::vector<std::string>& programs = found->second;
        if (std::find(programs.begin(), programs.end(), s.terms.program) == programs.end()) {
            programs.push_back(s.terms.program);
        }
    }
    std::vector<std::string> items;
    for (const auto& [asked, programs] : catches) {
        const std::string names = joined(programs, Joint::both, say);
        items.push_back(text_element("li", say.sheet.catch_of(names, asked)));
    }
    return items;
}

/// What programs ask in return; then the cautions, each with its code.
std::string notes_section(const SheetAnswer& answer, const Catalogue& say) {
    const QuoteAnswer& quote = answer.quote;
    std::vector<std::string> items = catches_of(quote.scenarios, say);
    Cautions notes = loan_cautions(quote.heading, terms_of(quote.scenarios), say);
    const bool marked = std::any_of(quote.lines.begin(), quote.lines.end(),
                                    [](const QuoteLine& line) { return line.work.any(); });
    if (marked) notes.push_back(work_caution(say));
    for (const Caution& note : notes) {
        items.push_back("<li data-caution=\"" + std::string(code_of(note.code)) + "\">" +
                        in_element(caution_words(note, answer, say)) + "</li>\n");
    }
    std::string list;
    for (const std::string& item : items) list += item;
    return section(say.sheet.notes(), element("ul", list), "notes");
}

std::string who_section(const Heading& h, const Catalogue& say) {
    const SheetWords& of = say.sheet;
    return element("dl",
                   described(of.prepared_by(), h.prepared_by) +
                       described(of.originator(), h.originator) +
                       described(of.license_number(), "") + described(of.telephone(), "") +
                       described(of.gone_through(), ""),
                   "who keep");
}

} // namespace

std::string sheet_of_loans(const SheetAnswer& answer, const Catalogue& say) {
    const std::string days =
        calendar_section(answer, say) + dates_section(answer, say) + deposits_section(answer, say);
    return loans_section(answer, say) + element("div", days, "days keep") +
           notes_section(answer, say) + who_section(answer.quote.heading, say);
}

} // namespace quoin
