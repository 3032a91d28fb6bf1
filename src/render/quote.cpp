// Rendering a quote.
#include <quoin/answers/quote.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include <fmt/format.h>

#include "own_cautions.hpp"
#include "quote_words.hpp"
#include "scenario_table.hpp"
#include "words/quote.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

Table home_table(const QuoteAnswer& answer, const Catalogue& say) {
    Table table({{"", Align::left, 60, 58}, {"", Align::right}, {"", Align::right, 14, 14}});
    std::string area;
    for (const QuoteLine& line : answer.lines) {
        if (line.area != area) {
            table.gap();
            if (!line.area.empty()) table.title(line.area);
            area = line.area;
        }
        const std::string indent = line.area.empty() ? "" : "  ";
        table.row({indent + line_name(line, say), times_text(line, say), amount_text(line, say)});
        if (!line.area.empty()) table.remark(line.note, 76);
    }
    table.rule();
    table.row({say.quote.contract_price(), "", dollars(answer.contract_price)});
    return table;
}

Blocks requests_text(const QuoteAnswer& answer, const Catalogue& say) {
    if (answer.requests.empty()) return {};
    Blocks out = titled(say.quote.requests());
    for (const QuoteRequest& request : answer.requests) {
        out += paragraph(request_text(request, say), "  ", "    ");
    }
    return out;
}

Blocks choices_text(const QuoteAnswer& answer, const Catalogue& say) {
    if (answer.open_choices.empty()) return {};
    Blocks out = titled(say.quote.open_choices());
    for (const OpenChoice& choice : answer.open_choices) {
        out += "  " + choice_text(choice, say) + "\n";
    }
    return out;
}

Blocks incentives_text(const QuoteAnswer& answer, const Catalogue& say) {
    Blocks out;
    for (const std::string& text : incentive_texts(answer, say)) {
        out += paragraph(text, "  ", "    ");
    }
    return out.empty() ? out : titled(say.quote.incentives()) + out;
}

Blocks deposits_text(const QuoteAnswer& answer, const Catalogue& say) {
    Table table({{"", Align::left, 36, 36}, {"", Align::right, 14, 14}});
    table.row({say.quote.earnest_money(), dollars(answer.earnest_deposit)});
    table.row({say.quote.option_share(), dollars(answer.option_deposit)});
    if (answer.deposits_paid) {
        table.row({say.quote.paid_so_far(), dollars(*answer.deposits_paid)});
    }
    const Blocks note =
        answer.deposit_note.empty() ? Blocks() : paragraph(answer.deposit_note, "  ");
    return titled(say.quote.deposits()) + table + note;
}

bool needs_trades(const QuoteAnswer& answer) {
    return std::any_of(answer.lines.begin(), answer.lines.end(),
                       [](const QuoteLine& line) { return line.work.any(); });
}

} // namespace

Cautions cautions_of(const QuoteAnswer& answer, const Catalogue& say) {
    Cautions notes = loan_cautions(answer.heading, terms_of(answer.scenarios), say);
    if (needs_trades(answer)) notes.push_back(work_caution(say));
    notes.push_back(agent_caution(say));
    return notes;
}

Blocks blocks_of(const QuoteAnswer& answer, const Catalogue& say) {
    Blocks out = brief_of(answer, say, Estimate::below_all) + "\n" +
                 heading_text(answer.heading, say.quote.title(), say);
    out += Blocks("\n") + home_table(answer, say);
    out += requests_text(answer, say) + choices_text(answer, say) + incentives_text(answer, say);
    out += deposits_text(answer, say);
    out += titled(say.quote.month()) + month_table(answer.scenarios, say);
    out += refusal_lines(answer.scenarios, say);
    out += titled(say.quote.cash()) + cash_table(answer.scenarios, say);
    return out + footing_text(cautions_of(answer, say));
}

} // namespace quoin
