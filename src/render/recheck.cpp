// Rendering a recheck.
#include <quoin/answers/recheck.hpp>

#include <map>

#include <fmt/format.h>

#include "formula_text.hpp"
#include "shared_fields.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

namespace {

using Figures = std::map<std::string, const RecheckedFigure*, std::less<>>;

Figures figures_of(const RecheckAnswer& answer) {
    Figures figures;
    for (const RecheckSection& section : answer.sections) {
        for (const RecheckedFigure& figure : section.figures) figures[figure.id] = &figure;
    }
    return figures;
}

/// A figure as it is shown: "$1,234.56", "6.125 %", "360".
std::string value_text(FigureUnit unit, Decimal value) {
    switch (unit) {
    case FigureUnit::money: {
        const std::string amount = fixed(value, 2);
        return dollars(Money::parse(amount).value_or(Money{}));
    }
    case FigureUnit::percent:
        return value.text() + " %";
    default:
        return value.text();
    }
}

/// What a figure rests on, in a line: "rounding 12; fha annual_fee: ltv > 95; from 2023-03-20;
/// published: HUD Mortgagee Letter 2023-05".
std::string words(const Ground& ground) {
    std::string text;
    const auto add = [&](const std::string& part) {
        if (part.empty()) return;
        if (!text.empty()) text += "; ";
        text += part;
    };
    if (ground.rounding > 0) add(fmt::format("rounding {}", ground.rounding));
    add(ground.rule);
    if (ground.effective) add("from " + ground.effective->text());
    if (ground.until) {
        add("before " + ground.until->text() +
            (ground.beyond_end ? ", and used on: a later one is not in the data" : ""));
    }
    if (!ground.source.empty()) {
        add(ground.status ? std::string(name_of(*ground.status)) + ": " + ground.source
                          : ground.source);
    }
    return text;
}

std::string formula_words(const RecheckedFigure& figure, const Figures& figures) {
    return words(figure.formula, figure.unit,
                 [&](const std::string& id) { return figures.at(id)->name; });
}

std::string inputs_words(const RecheckedFigure& figure, const Figures& figures) {
    std::string text;
    for (const std::string& id : inputs_of(figure.formula)) {
        const RecheckedFigure& input = *figures.at(id);
        if (!text.empty()) text += "; ";
        text += input.name + " " + value_text(input.unit, input.value);
    }
    return text;
}

std::string figure_text(const RecheckedFigure& figure, const Figures& figures) {
    std::string out =
        fmt::format("  {}: {}{}\n", figure.name, value_text(figure.unit, figure.value),
                    figure.agrees() ? ""
                                    : "   DIFFERS from its formula: " +
                                          value_text(figure.unit, figure.reckoned));
    const auto add = [&](const std::string& line, const char* first) {
        if (!line.empty()) out += paragraph(line, first, "        ");
    };
    add(formula_words(figure, figures), "      = ");
    const std::string inputs = inputs_words(figure, figures);
    add(inputs.empty() ? "" : "with " + inputs, "        ");
    add(words(figure.ground), "      ");
    return out;
}

std::string summary(const RecheckAnswer& answer) {
    const std::size_t differ = answer.differences();
    return fmt::format("{} figures, each reckoned a second time from its formula in exact "
                       "fractions: {}.",
                       answer.figure_count(),
                       differ == 0
                           ? "all agree to the last digit"
                           : fmt::format("{} DIFFER, which is a fault of the program", differ));
}

} // namespace

std::string text_of(const RecheckAnswer& answer, const Catalogue& say) {
    std::string out = heading_text(answer.heading, "Where each figure comes from", say);
    const ScenarioTerms& terms = answer.scenario.terms;
    if (!answer.scenario.available()) {
        for (const Refusal& refusal : answer.scenario.refusals) {
            out += "\n" + refused_words(terms.name, refusal) + "\n";
        }
        return out;
    }
    out += paragraph(terms.name + ": " + dollars(answer.scenario.monthly.total()) + " a month. " +
                     terms_line(terms));
    out += paragraph(summary(answer) + " Roundings are numbered as in docs/roundings.md.");
    const Figures figures = figures_of(answer);
    for (const RecheckSection& section : answer.sections) {
        out += "\n" + section.title + "\n";
        for (const RecheckedFigure& figure : section.figures) out += figure_text(figure, figures);
    }
    return out + footing_text(loan_cautions(answer.heading, {terms}));
}

namespace {

std::optional<std::string> text_or_nothing(const std::string& text) {
    return text.empty() ? std::nullopt : std::optional(text);
}

void figure_fields(auto& v, const RecheckedFigure& figure, const Figures& figures) {
    const Ground& ground = figure.ground;
    v("id", figure.id);
    v("name", figure.name);
    v("unit", figure.unit);
    v.said("value", [&] {
        return figure.unit == FigureUnit::money ? fixed(figure.value, 2) : figure.value.text();
    });
    v.words("shown", [&] { return value_text(figure.unit, figure.value); });
    v.words("formula", [&] { return text_or_nothing(formula_words(figure, figures)); });
    v.said("inputs", [&] { return inputs_of(figure.formula); });
    v.said("rounding",
           [&] { return ground.rounding == 0 ? std::nullopt : std::optional(ground.rounding); });
    v.said("rule", [&] { return text_or_nothing(ground.rule); });
    v("effective", ground.effective);
    v("until", ground.until);
    v("beyond_end", ground.beyond_end);
    v("status", ground.status);
    v.said("source", [&] { return text_or_nothing(ground.source); });
    v.said("agrees", [&] { return figure.agrees(); });
}

} // namespace

void fields(auto& v, Of<RecheckAnswer> auto& answer) {
    v.named("Recheck");
    const Figures figures = figures_of(answer);
    v.constant("question", "recheck");
    v("heading", answer.heading);
    v("scenario", answer.scenario);
    v.each("sections", answer.sections, [&](auto& section, std::size_t) {
        v("title", section.title);
        v.each("figures", section.figures,
               [&](auto& figure, std::size_t) { figure_fields(v, figure, figures); });
    });
    v.said("figures", [&] { return answer.figure_count(); });
    v.said("differences", [&] { return answer.differences(); });
    v.words("cautions", [&] { return loan_cautions(answer.heading, {answer.scenario.terms}); });
}

template std::string json_text_of(const RecheckAnswer&, const Catalogue&);

template const Shape& shape_of<RecheckAnswer>();

} // namespace quoin
