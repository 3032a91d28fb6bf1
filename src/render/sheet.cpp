// A sheet as HTML: the home, the month, the cash, what it rests on, and who gave it.
#include <quoin/answers/sheet.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include <fmt/format.h>

#include "html.hpp"
#include "quote_words.hpp"
#include "scenario_table.hpp"
#include "sheet_style.hpp"
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

std::string head_of(const Heading& h) {
    std::string facts = fact("for", h.buyer) + fact("plan", h.plan + ", " + h.style) +
                        fact("floor area", grouped(h.square_feet) + " sq ft") +
                        fact("elevation", h.elevation) + fact("lot", h.lot) +
                        fact("as of", long_date(h.as_of)) + fact("closing", long_date(h.closing)) +
                        fact("price book", h.price_book_version) +
                        fact("in force to", long_date(h.price_book_expires));
    return element("header", text_element("p", h.community + ", " + h.builder) +
                                 text_element("h1", "The home, its month and its cash") +
                                 element("dl", facts, "facts"));
}

std::string home_row(const QuoteLine& line) {
    std::string out = figure_row(line_name(line), {times_text(line), amount_text(line)},
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

std::string home_section(const QuoteAnswer& quote) {
    std::string rows;
    std::string area;
    for (const QuoteLine& line : quote.lines) {
        if (line.area != area && !line.area.empty()) {
            rows += group_row(line.area);
        }
        area = line.area;
        rows += home_row(line);
    }
    rows += figure_row("Contract price", {"", dollars(quote.contract_price)}, "sum");
    return section("The home, line by line", element("table", element("tbody", rows)));
}

std::string requests_section(const QuoteAnswer& quote) {
    std::vector<std::string> texts;
    for (const QuoteRequest& request : quote.requests) texts.push_back(request_text(request));
    return section("Asked for, to be confirmed; not in the price", text_list(texts), "keep");
}

std::string choices_section(const QuoteAnswer& quote) {
    std::vector<std::string> texts;
    for (const OpenChoice& choice : quote.open_choices) texts.push_back(choice_text(choice));
    return section("Still to choose, at no cost", text_list(texts), "keep");
}

std::string incentives_section(const QuoteAnswer& quote) {
    return section("Incentives", text_list(incentive_texts(quote)), "keep");
}

std::string deposits_section(const QuoteAnswer& quote) {
    std::string rows =
        figure_row("earnest money, at contract", {dollars(quote.earnest_deposit)}) +
        figure_row("share of options, at their selection", {dollars(quote.option_deposit)});
    if (quote.deposits_paid) rows += figure_row("paid so far", {dollars(*quote.deposits_paid)});
    std::string inner = element("table", element("tbody", rows));
    if (!quote.deposit_note.empty()) inner += text_element("p", quote.deposit_note, "small");
    return section("Deposits, part of the cash needed", inner, "keep");
}

/// A percent sign stays with its number.
std::string unbroken(std::string html) {
    for (std::size_t at = 0; (at = html.find(" %", at)) != std::string::npos;) {
        html.replace(at, 1, "&nbsp;");
    }
    return html;
}

/// Rows of scenarios `from` to `to`, headed by their names.
std::string side_table(const std::vector<ScenarioAnswer>& scenarios,
                       const std::vector<SideRow>& rows, std::size_t from, std::size_t to) {
    std::string head = "<td></td>";
    for (std::size_t i = from; i < to; ++i) {
        head += "<th scope=\"col\">" + unbroken(in_element(scenarios[i].terms.name)) + "</th>";
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

std::string refusals_list(const std::vector<ScenarioAnswer>& scenarios) {
    std::vector<std::string> texts;
    for (const ScenarioAnswer& s : scenarios) {
        for (const Refusal& refusal : s.refusals) {
            texts.push_back(refused_words(s.terms.name, refusal));
        }
    }
    return text_list(texts);
}

std::string estimate_line(const Heading& h) {
    return text_element("p",
                        fmt::format("Estimates as of {}: not a Loan Estimate, not an approval, not "
                                    "an offer to lend. What they rest on is at the end.",
                                    long_date(h.as_of)),
                        "small");
}

std::string month_section(const QuoteAnswer& quote) {
    if (quote.scenarios.empty()) return {};
    return section(quote.scenarios.size() == 1 ? "The month" : "The month under each loan",
                   side_tables(quote.scenarios, month_rows(quote.scenarios)) +
                       refusals_list(quote.scenarios) + estimate_line(quote.heading));
}

std::string cash_section(const QuoteAnswer& quote) {
    if (quote.scenarios.empty()) return {};
    return section("Cash to close", side_tables(quote.scenarios, cash_rows(quote.scenarios)) +
                                        estimate_line(quote.heading));
}

std::string calendar_section(const CashAnswer& cash) {
    std::string rows;
    for (const CalendarDay& day : cash.calendar) {
        rows +=
            figure_row(std::string(name_of(day.what)), {long_date(day.date), dollars(day.amount)});
    }
    if (rows.empty()) return {};
    return section("When the cash is due", element("table", element("tbody", rows)), "keep");
}

std::string costs_section(const CashAnswer& cash) {
    std::string rows;
    std::optional<CostSection> last;
    for (const CostLine& line : cash.costs) {
        if (last != line.section) {
            rows += group_row(name_of(line.section));
            last = line.section;
        }
        const std::string payer = line.paid_by == PaidBy::buyer
                                      ? ""
                                      : "paid by the " + std::string(name_of(line.paid_by));
        rows += figure_row(line.name, {payer, dollars(line.amount)}, "under");
    }
    for (const PrepaidLine& line : cash.prepaids) {
        rows += figure_row("prepaid: " + line.name,
                           {line.due ? "due " + long_date(*line.due) : "", dollars(line.amount)});
    }
    if (rows.empty()) return {};
    return section("Closing costs and prepaids", element("table", element("tbody", rows)));
}

/// What each program asks in return, once a program.
std::string catches_section(const std::vector<ScenarioAnswer>& scenarios) {
    std::vector<std::string> texts;
    for (const ScenarioAnswer& s : scenarios) {
        if (s.terms.fine_print.empty()) continue;
        const std::string text = s.terms.program + ": " + s.terms.fine_print;
        if (std::find(texts.begin(), texts.end(), text) == texts.end()) texts.push_back(text);
    }
    return section("The catch in each program", text_list(texts), "keep");
}

std::string rests_section(const QuoteAnswer& quote) {
    Cautions notes = loan_cautions(quote.heading, terms_of(quote.scenarios));
    const bool marked = std::any_of(quote.lines.begin(), quote.lines.end(),
                                    [](const QuoteLine& line) { return line.work.any(); });
    if (marked) notes.push_back(work_caution());
    return section("What this rests on", text_list(words_of(notes)), "rests");
}

std::string who_section(const Heading& h) {
    const auto place = [](std::string_view name, const std::string& value) {
        return text_element("dt", name) + text_element("dd", value);
    };
    return section("Who gave this",
                   element("dl", place("Prepared by", h.prepared_by) +
                                     place("Licensed loan originator", h.originator) +
                                     place("License number", "") + place("Telephone", "") +
                                     place("Gone through together on", "")),
                   "who");
}

std::string body_of(const SheetAnswer& answer) {
    const QuoteAnswer& quote = answer.quote;
    const std::string small = requests_section(quote) + choices_section(quote) +
                              incentives_section(quote) + deposits_section(quote);
    std::string out = head_of(quote.heading) + home_section(quote) +
                      element("div", small, "beside") + month_section(quote) + cash_section(quote);
    if (answer.cash && answer.cash->scenario.available()) {
        out += calendar_section(*answer.cash) + costs_section(*answer.cash);
    }
    return out + catches_section(quote.scenarios) + rests_section(quote) +
           who_section(quote.heading);
}

} // namespace

std::string html_of(const SheetAnswer& answer, const Catalogue& /*say*/) {
    const Heading& h = answer.quote.heading;
    const std::string title = fmt::format("{}: {} on lot {}", h.community, h.plan, h.lot);
    // Nothing may be fetched or run, wherever the file ends up.
    return "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
           "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
           "style-src 'unsafe-inline'\">\n" +
           std::string(sheet_mark) + "\n" + element("title", escaped(title)) + "<style>" +
           sheet_style + "</style>\n</head>\n" + element("body", "\n" + body_of(answer)) +
           "</html>\n";
}

} // namespace quoin
