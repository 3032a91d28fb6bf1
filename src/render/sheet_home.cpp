// The first side of a sheet: whose home, what it comes to, what is in it, how it lies.
#include "sheet_parts.hpp"

#include <algorithm>

#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

#include "html.hpp"
#include "plan_svg.hpp"
#include "quote_words.hpp"
#include "site_svg.hpp"
#include "words/quote.hpp"
#include "words/rooms.hpp"
#include "words/sheet.hpp"
#include "words/side_by_side.hpp"

namespace quoin {
namespace {

std::string head_of(const Heading& h, const Catalogue& say) {
    const SheetWords& of = say.sheet;
    const std::string feet = grouped(h.square_feet);
    std::string inner =
        element("p", text_element("strong", h.builder) + text_element("span", h.community), "from");
    inner += text_element("h1", of.home(h.plan, h.lot));
    inner += text_element("p", h.style.empty() ? of.home_without_style(feet, h.elevation)
                                               : of.home_is(h.style, feet, h.elevation));
    if (!h.buyer.empty()) inner += text_element("p", of.buyer(h.buyer), "buyer");
    return element("header", inner);
}

/// Large, with the cents smaller, or without where there are none.
std::string large(Money amount) {
    const std::string text = dollars(amount);
    const std::size_t point = text.size() - 3;
    if (text.ends_with(".00")) return text.substr(0, point);
    return text.substr(0, point) + "<small>" + text.substr(point) + "</small>";
}

/// The terms that stand beside a month.
std::string terms_of(const ScenarioTerms& terms, const Catalogue& say) {
    const std::string share = percent_text(terms.down_percent.value(), 2);
    return element(
        "dl",
        described(say.side.note_rate(), rate_text(terms.rate)) +
            described(say.side.apr(), terms.apr ? disclosed_text(terms.apr->percent())
                                                : std::string(say.side.none())) +
            described(say.side.term(), term_text(terms.term, say)) +
            described(say.sheet.down_payment(), say.sheet.down(terms.down_payment, share)),
        "terms");
}

/// What the month is at first, where that differs.
std::string at_first(const ScenarioAnswer& loan, const Catalogue& say) {
    std::string out;
    if (loan.first_year_months > 0) {
        out += text_element("p", say.sheet.month_on_land(loan.first_year.total()));
    }
    if (loan.buydown && !loan.buydown->years.empty()) {
        out += text_element("p", say.sheet.month_bought_down(loan.monthly.total() -
                                                             loan.buydown->years.front().subsidy));
    }
    return out;
}

std::string month_of(const ScenarioAnswer& loan, const Catalogue& say) {
    std::string inner = text_element("h2", loan.terms.name);
    if (!loan.available()) {
        std::vector<std::string> reasons;
        for (const Refusal& refusal : loan.refusals) reasons.push_back(words(refusal, say));
        return element(
            "section",
            inner + text_element("p", say.sheet.not_available(joined(reasons, Joint::both, say))) +
                terms_of(loan.terms, say),
            "month");
    }
    inner += element("p",
                     element("strong", large(loan.monthly.total())) +
                         text_element("span", say.sheet.month()),
                     "large");
    return element("section", inner + at_first(loan, say) + terms_of(loan.terms, say), "month");
}

std::string figure(std::string_view name, const std::string& value, std::string_view kind) {
    return element("div", text_element("dt", name) + element("dd", value), kind);
}

std::string sums_of(const QuoteAnswer& quote, const ScenarioAnswer* loan, const Catalogue& say) {
    std::string sums = figure(say.quote.contract_price(), large(quote.contract_price), "sum");
    if (loan != nullptr && loan->available()) {
        const Money close = loan->cash.to_close();
        const bool back = close < Money{};
        sums += figure(say.side.cash_needed(), large(loan->cash.needed()), "sum") +
                figure(back ? say.sheet.to_come_back() : say.sheet.to_close(),
                       in_element(dollars(back ? -close : close)), "part");
    }
    return element("dl", sums, "sums");
}

std::string front_of(const SheetAnswer& answer, const Catalogue& say) {
    const QuoteAnswer& quote = answer.quote;
    const ScenarioAnswer* loan = answer.front ? &quote.scenarios.at(*answer.front) : nullptr;
    std::string inner = loan != nullptr ? month_of(*loan, say) : std::string();
    inner += sums_of(quote, loan, say);
    const Heading& h = quote.heading;
    const std::string estimate =
        say.sheet.estimate(h.as_of, h.rates_date, h.lender,
                           h.sample_rates ? std::string(say.sheet.sample()) : std::string());
    return element("div", inner, "front") + text_element("p", estimate, "estimate");
}

bool is_whole(const QuoteLine& line) { return dollars(line.amount).ends_with(".00"); }

/// Without cents where no line has any, so that a column stays even.
std::string line_amount(const QuoteLine& line, bool whole, const Catalogue& say) {
    std::string text = amount_text(line, say);
    if (whole && text.ends_with(".00")) text.resize(text.size() - 3);
    return text;
}

std::string line_row(const QuoteLine& line, bool whole, const Catalogue& say) {
    const std::string times = times_text(line, say);
    std::string whole_name = line_name(line, say);
    if (whole_name.ends_with(" *")) whole_name.replace(whole_name.size() - 2, 1, "\u00a0");
    const std::string name =
        in_element(whole_name) + (times.empty() ? "" : " " + text_element("small", times));
    return element("tr", "<th scope=\"row\">" + name + "</th>" +
                             text_element("td", line_amount(line, whole, say)));
}

/// A table an area, in the order of the tour.
std::string lines_section(const QuoteAnswer& quote, const Catalogue& say) {
    const bool whole = std::all_of(quote.lines.begin(), quote.lines.end(), is_whole);
    std::string areas;
    for (std::size_t i = 0; i < quote.lines.size();) {
        const std::string& area = quote.lines[i].area;
        std::string rows;
        for (; i < quote.lines.size() && quote.lines[i].area == area; ++i) {
            rows += line_row(quote.lines[i], whole, say);
        }
        const std::string name = area.empty() ? std::string(say.sheet.plan_and_lot()) : area;
        areas += element("table", text_element("caption", name) + element("tbody", rows));
    }
    return section(say.sheet.in_the_home(), element("div", areas, "areas"), "lines");
}

/// A heading that its text runs on from.
std::string run_in(std::string_view heading, const std::vector<std::string>& texts) {
    if (texts.empty()) return {};
    std::string said;
    for (const std::string& text : texts) {
        said += (said.empty() ? "" : said.ends_with('.') ? " " : "; ") + text;
    }
    if (!said.ends_with('.')) said += '.';
    return element("p",
                   text_element("strong", std::string(heading) + ":") + " " + in_element(said));
}

std::string beside_section(const QuoteAnswer& quote, const Catalogue& say) {
    std::vector<std::string> requests;
    for (const QuoteRequest& request : quote.requests) {
        requests.push_back(request_text(request, say));
    }
    std::vector<std::string> choices;
    for (const OpenChoice& choice : quote.open_choices) {
        choices.push_back(say.sheet.choice(choice.name, choice.default_choice));
    }
    const std::string inner = run_in(say.sheet.requests(), requests) +
                              run_in(say.quote.open_choices(), choices) +
                              run_in(say.sheet.incentives(), incentive_texts(quote, say));
    return inner.empty() ? inner : element("div", inner, "beside");
}

bool brings_any(const auto& parts) {
    return std::any_of(parts.begin(), parts.end(),
                       [](const auto& part) { return !part.by.empty(); });
}

/// The floors that somebody lives on, or that an option brings a room to; then the lot.
std::string drawings_section(const SheetAnswer& answer, const Catalogue& say) {
    std::string drawn;
    for (std::size_t i = 0; i < answer.rooms.floors.size(); ++i) {
        const FloorOfPlan& floor = answer.rooms.floors[i];
        if (floor.square_feet == Decimal{} && !brings_any(floor.rooms)) continue;
        drawn += element("figure",
                         plan_svg(answer.rooms, i, say, SvgStands::on_paper) +
                             text_element("figcaption", floor.name),
                         "plan");
    }
    const bool has_plan = !drawn.empty();
    if (const std::string lot = lot_svg(answer.site, say); !lot.empty()) {
        drawn += element("figure", lot + text_element("figcaption", say.sheet.lot(answer.site.lot)),
                         "lot");
    }
    if (drawn.empty()) return {};
    const std::string note = (has_plan ? std::string(say.rooms.in_color()) + " " : std::string()) +
                             std::string(say.sheet.drawn());
    return section(say.sheet.drawings(),
                   element("div", drawn, "drawings") + text_element("p", note, "small"), "keep");
}

} // namespace

std::string sheet_of_home(const SheetAnswer& answer, const Catalogue& say) {
    return head_of(answer.quote.heading, say) + front_of(answer, say) +
           lines_section(answer.quote, say) + beside_section(answer.quote, say) +
           drawings_section(answer, say);
}

} // namespace quoin
