// Rendering now or later.
#include <quoin/answers/later.hpp>

#include <algorithm>

#include "order_words.hpp"
#include "shared_fields.hpp"
#include "words/later.hpp"
#include <quoin/render/answers.hpp>
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>
#include <quoin/words/reasons.hpp>

namespace quoin {
namespace {

constexpr int shown_years[] = {1, 3, 5, 7, 10, 15, 30};

std::string cost_at(const LaterPath& path, int years) {
    const auto month = std::size_t{12} * static_cast<std::size_t>(years);
    return path.available() && month < path.cost.size() ? dollars(path.cost[month])
                                                        : std::string("-");
}

Blocks paths_text(const LaterScenario& s, const LaterWords& say) {
    std::vector<Column> columns{{"", Align::left, 24, 24}};
    for (const LaterPath& path : s.paths) columns.push_back({say.way(path.way), Align::right, 16});
    Table table(columns, "    ");
    table.beside();
    const auto row = [&](const std::string& label, const auto& figure) {
        std::vector<std::string> cells{label};
        for (const LaterPath& path : s.paths) cells.push_back(figure(path));
        table.row(std::move(cells));
    };
    row(say.at_closing(),
        [](auto& path) { return path.available() ? dollars(path.at_closing) : "-"; });
    row(say.a_month(), [](auto& path) { return path.available() ? dollars(path.a_month) : "-"; });
    for (const int years : shown_years) {
        row(say.after_years(years), [&](auto& path) { return cost_at(path, years); });
    }
    return table;
}

std::string even_words(const LaterBreakEven& even, const Catalogue& say) {
    return when_words({Cheaper::second, even.month, even.to}, say.order.months);
}

Blocks scenario_text(const LaterScenario& s, const Catalogue& say) {
    const LaterWords& of = say.later;
    Blocks out = "\n  " + s.terms.name + "\n";
    if (!s.refusals.empty()) {
        return out + paragraph(of.cannot_be_had(words(s.refusals.front(), say)), "    ");
    }
    out += paragraph(of.without(s.monthly, terms_line(s.terms, say)), "    ");
    out += paths_text(s, of);
    for (const LaterPath& path : s.paths) {
        for (const Refusal& refusal : path.refusals) {
            out +=
                paragraph(of.way_barred(of.way(path.way), words(refusal, say)), "    ", "      ");
        }
    }
    if (!s.break_even.empty()) out += "    " + of.when_more() + "\n";
    for (const LaterBreakEven& even : s.break_even) {
        out +=
            paragraph(of.costs_more(of.way(even.dearer), of.way(even.than), even_words(even, say)),
                      "      ", "        ");
    }
    return out;
}

Blocks item_text(const LaterItem& item, const Catalogue& say) {
    const LaterWords& of = say.later;
    const std::string name = item.level.empty() ? item.name : of.named(item.name, item.level);
    Blocks out = titled(of.item(name, item.id, signed_dollars(item.price)));
    if (item.why_not) {
        out += paragraph(of.not_from_builder(words_of(item.why_not, say)), "  ");
    }
    if (item.later) {
        out += paragraph(of.after(item.later->estimate, item.later->note), "  ");
    } else {
        out += "  " + of.no_estimate() + "\n";
    }
    for (const LaterScenario& s : item.scenarios) out += scenario_text(s, say);
    return out;
}

bool needs_trades(const LaterItem& item) { return item.structural || item.work.any(); }

Cautions cautions_of(const LaterAnswer& answer, const Catalogue& say) {
    std::vector<ScenarioTerms> terms;
    if (!answer.items.empty()) terms = terms_of(answer.items.front().scenarios);
    Cautions notes{
        {CautionCode::costs_over_the_home_without, say.later.costs_over_the_home_without()}};
    if (std::any_of(answer.items.begin(), answer.items.end(), needs_trades)) {
        notes.push_back({CautionCode::trades_whenever, say.later.trades_whenever()});
    }
    return with_loan_cautions(std::move(notes), answer.heading, terms, say);
}

} // namespace

Blocks blocks_of(const LaterAnswer& answer, const Catalogue& say) {
    Blocks out = brief_of(answer, say, Estimate::below_all) + "\n" +
                 heading_text(answer.heading, say.later.title(), say);
    for (const LaterItem& item : answer.items) out += item_text(item, say);
    return out + footing_text(cautions_of(answer, say));
}

void fields(auto& v, Of<LaterPath> auto& path) {
    v.named("LaterPath");
    v("way", path.way);
    v("refusals", path.refusals);
    v("at_closing", path.at_closing);
    v("a_month", path.a_month);
    v("months", path.months);
    v("cost", path.cost);
}

void fields(auto& v, Of<LaterBreakEven> auto& even) {
    v("dearer", even.dearer);
    v("than", even.than);
    v("month", even.month);
    v("to", even.to);
    v.words("when", [&](const Catalogue& say) { return even_words(even, say); });
}

void fields(auto& v, Of<LaterScenario> auto& s) {
    v.named("LaterScenario");
    v("terms", s.terms);
    v("monthly_without", s.monthly);
    v("refusals", s.refusals);
    v("ways", s.paths);
    v("break_even", s.break_even);
}

namespace {

std::optional<Later> later_of(std::optional<Money> estimate) {
    if (!estimate) return std::nullopt;
    Later later;
    later.estimate = *estimate;
    return later;
}

} // namespace

void fields(auto& v, Of<LaterItem> auto& item) {
    v("id", item.id);
    v("name", item.name);
    v("level", item.level);
    v("price", item.price);
    v.held(
        "estimate", [&] { return item.later ? std::optional(item.later->estimate) : std::nullopt; },
        [&](auto estimate) { item.later = later_of(estimate); });
    v.held(
        "note", [&] { return item.later ? item.later->note : std::string{}; },
        [&](const auto& note) {
            if (item.later) item.later->note = note;
        });
    v.words("why_not", [&](const Catalogue& say) { return words_of(item.why_not, say); });
    v("work", item.work);
    v("scenarios", item.scenarios);
}

void fields(auto& v, Of<LaterAnswer> auto& answer) {
    v.named("Later");
    v.constant("question", "later");
    v("heading", answer.heading);
    v("month", answer.facts.month);
    v("items", answer.items);
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const LaterAnswer&, const Catalogue&);

template const Shape& shape_of<LaterAnswer>();
template std::optional<LaterAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
