// Rendering a quote.
#include <quoin/answers/quote.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include <fmt/format.h>

#include "quote_words.hpp"
#include "scenario_table.hpp"
#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

Table home_table(const QuoteAnswer& answer) {
    Table table({{"", Align::left, 60, 58}, {"", Align::right}, {"", Align::right, 14, 14}});
    std::string area;
    for (const QuoteLine& line : answer.lines) {
        if (line.area != area) {
            table.gap();
            if (!line.area.empty()) table.title(line.area);
            area = line.area;
        }
        const std::string indent = line.area.empty() ? "" : "  ";
        table.row({indent + line_name(line), times_text(line), amount_text(line)});
        if (!line.area.empty()) table.remark(line.note, 76);
    }
    table.rule();
    table.row({"Contract price", "", dollars(answer.contract_price)});
    return table;
}

std::string requests_text(const QuoteAnswer& answer) {
    if (answer.requests.empty()) return {};
    std::string out = "\nAsked for outside the price book, to be confirmed; not in the price\n";
    for (const QuoteRequest& request : answer.requests) {
        out += paragraph(request_text(request), "  ", "    ");
    }
    return out;
}

std::string choices_text(const QuoteAnswer& answer) {
    if (answer.open_choices.empty()) return {};
    std::string out = "\nStill to choose, at no cost\n";
    for (const OpenChoice& choice : answer.open_choices) {
        out += "  " + choice_text(choice) + "\n";
    }
    return out;
}

std::string incentives_text(const QuoteAnswer& answer) {
    std::string out;
    for (const std::string& text : incentive_texts(answer)) {
        out += paragraph(text, "  ", "    ");
    }
    return out.empty() ? out : "\nIncentives\n" + out;
}

std::string deposits_text(const QuoteAnswer& answer) {
    std::string out = "\nDeposits, part of the cash needed\n";
    out += fmt::format("  earnest money, at contract            {:>14}\n",
                       dollars(answer.earnest_deposit));
    out += fmt::format("  share of options, at their selection  {:>14}\n",
                       dollars(answer.option_deposit));
    if (answer.deposits_paid) {
        out += fmt::format("  paid so far                           {:>14}\n",
                           dollars(*answer.deposits_paid));
    }
    if (!answer.deposit_note.empty()) out += paragraph(answer.deposit_note, "  ");
    return out;
}

bool needs_trades(const QuoteAnswer& answer) {
    return std::any_of(answer.lines.begin(), answer.lines.end(),
                       [](const QuoteLine& line) { return line.work.any(); });
}

} // namespace

std::vector<std::string> cautions_of(const QuoteAnswer& answer) {
    std::vector<std::string> notes = loan_cautions(answer.heading, terms_of(answer.scenarios));
    if (needs_trades(answer)) notes.push_back("* " + work_caution());
    notes.push_back(agent_caution());
    return notes;
}

std::string text_of(const QuoteAnswer& answer) {
    std::string out = heading_text(answer.heading, "The price of a home, and its month");
    out += "\n" + home_table(answer).text();
    out += requests_text(answer) + choices_text(answer) + incentives_text(answer);
    out += deposits_text(answer);
    out += "\nThe month\n" + month_table(answer.scenarios);
    out += refusal_lines(answer.scenarios);
    out += "\nCash\n" + cash_table(answer.scenarios);
    return out + footing_text(cautions_of(answer));
}

} // namespace quoin
