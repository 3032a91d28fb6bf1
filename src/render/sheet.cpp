// A sheet as HTML: the home, the month, the cash, what it rests on, and who gave it.
#include <quoin/answers/sheet.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include "cash_words.hpp"
#include "html.hpp"
#include "plan_svg.hpp"
#include "quote_words.hpp"
#include "scenario_table.hpp"
#include "sheet_style.hpp"
#include "words/heading.hpp"
#include "words/parts.hpp"
#include "words/quote.hpp"
#include "words/rooms.hpp"
#include "words/sheet.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/render/written_mark.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

constexpr std::size_t most_beside = 6; ///< scenarios that paper is wide enough for

std::string fact(std::string_view name, const std::string& value) {
    if (value.empty()) return {};
    return element("div", text_element("dt", name) + text_element("dd", value));
}

std::string head_of(const Heading& h, const Catalogue& say) {
    const SheetWords& of = say.sheet;
    std::string facts = fact(of.buyer(), h.buyer) +
                        fact(of.plan(), of.plan_and_style(h.plan, h.style)) +
                        fact(of.floor_area(), of.square_feet(grouped(h.square_feet))) +
                        fact(of.elevation(), h.elevation) + fact(of.lot(), h.lot) +
                        fact(of.as_of(), of.day(h.as_of)) + fact(of.closing(), of.day(h.closing)) +
                        fact(of.price_book(), h.price_book_version) +
                        fact(of.in_force_to(), of.day(h.price_book_expires));
    return element("header", text_element("p", say.heading.community(h.community, h.builder)) +
                                 text_element("h1", of.title()) + element("dl", facts, "facts"));
}

std::string home_row(const QuoteLine& line, const Catalogue& say) {
    std::string out =
        figure_row(line_name(line, say), {times_text(line, say), amount_text(line, say)},
                   line.area.empty() ? "" : "under");
    if (!line.note.empty() && !line.area.empty()) {
        out += element("tr", "<td colspan=\"3\">" + in_element(line.note) + "</td>", "note");
    }
    return out;
}

/// Heads the rows below it.
std::string group_row(std::string_view name) {
    return element("tr", "<th colspan=\"3\" scope=\"rowgroup\">" + in_element(name) + "</th>",
                   "area");
}

std::string home_section(const QuoteAnswer& quote, const Catalogue& say) {
    std::string rows;
    std::string area;
    for (const QuoteLine& line : quote.lines) {
        if (line.area != area && !line.area.empty()) {
            rows += group_row(line.area);
        }
        area = line.area;
        rows += home_row(line, say);
    }
    rows += figure_row(say.quote.contract_price(), {"", dollars(quote.contract_price)}, "sum");
    return section(say.sheet.home(), element("table", element("tbody", rows)));
}

bool brings_any(const auto& parts) {
    return std::any_of(parts.begin(), parts.end(),
                       [](const auto& part) { return !part.by.empty(); });
}

bool has_chosen(const FloorOfPlan& floor) {
    return brings_any(floor.rooms) || brings_any(floor.openings) || brings_any(floor.stairs) ||
           brings_any(floor.symbols);
}

/// The floors that somebody lives on, or that an option brings a room to.
std::string plan_section(const RoomsAnswer& rooms, const Catalogue& say) {
    std::string drawn;
    bool colored = false;
    for (std::size_t i = 0; i < rooms.floors.size(); ++i) {
        const FloorOfPlan& floor = rooms.floors[i];
        if (floor.square_feet == Decimal{} && !brings_any(floor.rooms)) continue;
        colored = colored || has_chosen(floor);
        drawn += element("figure", plan_svg(rooms, i, say, SvgStands::in_page) +
                                       text_element("figcaption", floor.name));
    }
    if (drawn.empty()) return {};
    const std::string note =
        (colored ? say.rooms.in_color() + " " : "") + say.rooms.sizes_as_drawn();
    return section(say.rooms.title(),
                   element("div", drawn, "plans") + text_element("p", note, "small"), "keep");
}

std::string requests_section(const QuoteAnswer& quote, const Catalogue& say) {
    std::vector<std::string> texts;
    for (const QuoteRequest& request : quote.requests) {
        texts.push_back(request_text(request, say));
    }
    return section(say.sheet.requests(), text_list(texts), "keep");
}

std::string choices_section(const QuoteAnswer& quote, const Catalogue& say) {
    std::vector<std::string> texts;
    for (const OpenChoice& choice : quote.open_choices) texts.push_back(choice_text(choice, say));
    return section(say.quote.open_choices(), text_list(texts), "keep");
}

std::string incentives_section(const QuoteAnswer& quote, const Catalogue& say) {
    return section(say.quote.incentives(), text_list(incentive_texts(quote, say)), "keep");
}

std::string deposits_section(const QuoteAnswer& quote, const Catalogue& say) {
    std::string rows = figure_row(say.quote.earnest_money(), {dollars(quote.earnest_deposit)}) +
                       figure_row(say.quote.option_share(), {dollars(quote.option_deposit)});
    if (quote.deposits_paid) {
        rows += figure_row(say.quote.paid_so_far(), {dollars(*quote.deposits_paid)});
    }
    std::string inner = element("table", element("tbody", rows));
    if (!quote.deposit_note.empty()) inner += text_element("p", quote.deposit_note, "small");
    return section(say.quote.deposits(), inner, "keep");
}

/// Rows of scenarios `from` to `to`, headed by their names.
std::string side_table(const std::vector<ScenarioAnswer>& scenarios,
                       const std::vector<SideRow>& rows, std::size_t from, std::size_t to) {
    std::string head = "<td></td>";
    for (std::size_t i = from; i < to; ++i) {
        head += "<th scope=\"col\">" + in_element(scenarios[i].terms.name) + "</th>";
    }
    std::string body;
    std::string kind;
    for (const SideRow& row : rows) {
        if (row.kind == SideRow::Kind::rule) kind = "sum";
        if (row.kind == SideRow::Kind::gap) kind = "gap";
        if (row.kind != SideRow::Kind::figures) continue;
        const auto begin = row.figures.begin();
        body += figure_row(
            row.label,
            {begin + static_cast<std::ptrdiff_t>(from), begin + static_cast<std::ptrdiff_t>(to)},
            kind);
        kind.clear();
    }
    return element("table",
                   "<colgroup><col class=\"label\"></colgroup>\n" +
                       element("thead", element("tr", head)) + element("tbody", body),
                   to - from == 1  ? "side one"
                   : to - from > 4 ? "side wide"
                                   : "side");
}

/// As many tables as the paper's width asks for.
std::string side_tables(const std::vector<ScenarioAnswer>& scenarios,
                        const std::vector<SideRow>& rows) {
    const std::size_t tables = (scenarios.size() + most_beside - 1) / most_beside;
    std::string out;
    for (std::size_t i = 0; i < tables; ++i) {
        out += side_table(scenarios, rows, scenarios.size() * i / tables,
                          scenarios.size() * (i + 1) / tables);
    }
    return out;
}

std::string refusals_list(const std::vector<ScenarioAnswer>& scenarios, const Catalogue& say) {
    std::vector<std::string> texts;
    for (const ScenarioAnswer& s : scenarios) {
        for (const Refusal& refusal : s.refusals) {
            texts.push_back(refused_words(s.terms.name, refusal, say));
        }
    }
    return text_list(texts);
}

std::string estimate_line(const Heading& h, const Catalogue& say) {
    return text_element("p", say.sheet.estimates(h.as_of), "small");
}

std::string month_section(const QuoteAnswer& quote, const Catalogue& say) {
    if (quote.scenarios.empty()) return {};
    const bool one = quote.scenarios.size() == 1;
    return section(one ? say.quote.month() : say.sheet.month_of_each(),
                   side_tables(quote.scenarios, month_rows(quote.scenarios, say)) +
                       refusals_list(quote.scenarios, say) + estimate_line(quote.heading, say));
}

std::string cash_section(const QuoteAnswer& quote, const Catalogue& say) {
    if (quote.scenarios.empty()) return {};
    return section(say.sheet.cash(), side_tables(quote.scenarios, cash_rows(quote.scenarios, say)) +
                                         estimate_line(quote.heading, say));
}

std::string calendar_section(const CashAnswer& cash, const Catalogue& say) {
    std::string rows;
    for (const CalendarDay& day : cash.calendar) {
        const SaidDay said = said_day(day, say);
        rows += figure_row(said.what, {say.sheet.table_day(day.date), said.amount});
    }
    if (rows.empty()) return {};
    return section(say.sheet.calendar(), element("table", element("tbody", rows)), "keep");
}

std::string costs_section(const CashAnswer& cash, const Catalogue& say) {
    std::string rows;
    std::optional<CostSection> last;
    for (const CostLine& line : cash.costs) {
        if (last != line.section) {
            rows += group_row(say.parts.section(line.section));
            last = line.section;
        }
        const std::string payer =
            line.paid_by == PaidBy::buyer ? "" : say.parts.paid_by(line.paid_by);
        rows += figure_row(line.name, {payer, dollars(line.amount)}, "under");
    }
    for (const PrepaidLine& line : cash.prepaids) {
        rows += figure_row(say.sheet.prepaid(prepaid_words(line, say)),
                           {line.due ? say.sheet.due(*line.due) : "", dollars(line.amount)});
    }
    if (rows.empty()) return {};
    return section(say.sheet.costs(), element("table", element("tbody", rows)));
}

/// What each program asks in return, once a program.
std::string catches_section(const std::vector<ScenarioAnswer>& scenarios, const Catalogue& say) {
    std::vector<std::string> texts;
    for (const ScenarioAnswer& s : scenarios) {
        if (s.terms.fine_print.empty()) continue;
        const std::string text = say.sheet.catch_of(s.terms.program, s.terms.fine_print);
        if (std::find(texts.begin(), texts.end(), text) == texts.end()) texts.push_back(text);
    }
    return section(say.sheet.catches(), text_list(texts), "keep");
}

std::string rests_section(const QuoteAnswer& quote, const Catalogue& say) {
    Cautions notes = loan_cautions(quote.heading, terms_of(quote.scenarios), say);
    const bool marked = std::any_of(quote.lines.begin(), quote.lines.end(),
                                    [](const QuoteLine& line) { return line.work.any(); });
    if (marked) notes.push_back(work_caution(say));
    return section(say.sheet.rests(), text_list(words_of(notes)), "rests");
}

std::string who_section(const Heading& h, const Catalogue& say) {
    const SheetWords& of = say.sheet;
    const auto place = [](std::string_view name, const std::string& value) {
        return text_element("dt", name) + text_element("dd", value);
    };
    return section(of.who(),
                   element("dl", place(of.prepared_by(), h.prepared_by) +
                                     place(of.originator(), h.originator) +
                                     place(of.license(), "") + place(of.telephone(), "") +
                                     place(of.gone_through(), "")),
                   "who");
}

std::string body_of(const SheetAnswer& answer, const Catalogue& say) {
    const QuoteAnswer& quote = answer.quote;
    const std::string small = requests_section(quote, say) + choices_section(quote, say) +
                              incentives_section(quote, say) + deposits_section(quote, say);
    std::string out = head_of(quote.heading, say) + home_section(quote, say) +
                      element("div", small, "beside") + plan_section(answer.rooms, say) +
                      month_section(quote, say) + cash_section(quote, say);
    if (answer.cash && answer.cash->scenario.available()) {
        out += calendar_section(*answer.cash, say) + costs_section(*answer.cash, say);
    }
    return out + catches_section(quote.scenarios, say) + rests_section(quote, say) +
           who_section(quote.heading, say);
}

} // namespace

std::string html_of(const SheetAnswer& answer, const Catalogue& say) {
    const Heading& h = answer.quote.heading;
    const std::string title = say.sheet.page(h.community, h.plan, h.lot);
    // Nothing may be fetched or run, wherever the file ends up.
    return "<!doctype html>\n<html lang=\"" + std::string(code_of(say.language)) +
           "\">\n<head>\n<meta charset=\"utf-8\">\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
           "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
           "style-src 'unsafe-inline'\">\n" +
           std::string(sheet_mark) + "\n" + element("title", escaped(title)) + "<style>" +
           sheet_style + "</style>\n</head>\n" + element("body", "\n" + body_of(answer, say)) +
           "</html>\n";
}

} // namespace quoin
