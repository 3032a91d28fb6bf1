// Rendering a recheck.
#include <quoin/answers/recheck.hpp>

#include <map>

#include <fmt/format.h>

#include "figure_words.hpp"
#include "formula_text.hpp"
#include "shared_fields.hpp"
#include "words/recheck.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
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

/// A figure as it is shown: "$1,234.56", "6.125%", "360".
std::string value_text(FigureUnit unit, Decimal value) {
    switch (unit) {
    case FigureUnit::money: {
        const std::string amount = fixed(value, 2);
        return dollars(Money::parse(amount).value_or(Money{}));
    }
    case FigureUnit::percent:
        return value.text() + "%";
    default:
        return value.text();
    }
}

std::string formula_words(const RecheckedFigure& figure, const Figures& figures,
                          const Catalogue& say) {
    const auto name = [&](const std::string& id) {
        return label_words(figures.at(id)->label, say);
    };
    return words(figure.formula, figure.unit, name, say);
}

std::string inputs_words(const RecheckedFigure& figure, const Figures& figures,
                         const Catalogue& say) {
    std::string text;
    for (const std::string& id : inputs_of(figure.formula)) {
        const RecheckedFigure& input = *figures.at(id);
        if (!text.empty()) text += "; ";
        text += label_words(input.label, say) + " " + value_text(input.unit, input.value);
    }
    return text.empty() ? text : say.recheck.inputs(text);
}

Blocks figure_text(const RecheckedFigure& figure, const Figures& figures, const Catalogue& say) {
    const std::string differs =
        figure.agrees() ? std::string()
                        : "   " + say.recheck.differs(value_text(figure.unit, figure.reckoned));
    Blocks out = fmt::format("  {}: {}{}\n", label_words(figure.label, say),
                             value_text(figure.unit, figure.value), differs);
    const auto add = [&](const std::string& line, const char* first) {
        if (!line.empty()) out += paragraph(line, first, "        ");
    };
    add(formula_words(figure, figures, say), "      = ");
    add(inputs_words(figure, figures, say), "        ");
    add(ground_words(figure.ground, say), "      ");
    return out;
}

std::string summary(const RecheckAnswer& answer, const Catalogue& say) {
    const int count = static_cast<int>(answer.figure_count());
    const int differ = static_cast<int>(answer.differences());
    return differ == 0 ? say.recheck.all_agree(count) : say.recheck.some_differ(count, differ);
}

} // namespace

Blocks blocks_of(const RecheckAnswer& answer, const Catalogue& say) {
    Blocks out = heading_text(answer.heading, say.recheck.title(), say);
    const ScenarioTerms& terms = answer.scenario.terms;
    if (!answer.scenario.available()) {
        for (const Refusal& refusal : answer.scenario.refusals) {
            out += "\n" + refused_words(terms.name, refusal, say) + "\n";
        }
        return out;
    }
    out += paragraph(
        say.recheck.scenario(terms.name, answer.scenario.monthly.total(), terms_line(terms, say)));
    out += paragraph(summary(answer, say));
    const Figures figures = figures_of(answer);
    for (const RecheckSection& section : answer.sections) {
        out += titled(say.recheck.part(section.part));
        for (const RecheckedFigure& figure : section.figures) {
            out += figure_text(figure, figures, say);
        }
    }
    return out + footing_text(loan_cautions(answer.heading, {terms}, say));
}

namespace {

std::optional<std::string> text_or_nothing(const std::string& text) {
    return text.empty() ? std::nullopt : std::optional(text);
}

void figure_fields(auto& v, const RecheckedFigure& figure, const Figures& figures) {
    const Ground& ground = figure.ground;
    v("id", figure.id);
    v.words("name", [&](const Catalogue& say) { return label_words(figure.label, say); });
    v("unit", figure.unit);
    v.said("value", [&] {
        return figure.unit == FigureUnit::money ? fixed(figure.value, 2) : figure.value.text();
    });
    v.words("shown", [&] { return value_text(figure.unit, figure.value); });
    v.words("formula", [&](const Catalogue& say) {
        return text_or_nothing(formula_words(figure, figures, say));
    });
    v.said("inputs", [&] { return inputs_of(figure.formula); });
    v.said("rounding",
           [&] { return ground.rounding == 0 ? std::nullopt : std::optional(ground.rounding); });
    v.words("rule", [&](const Catalogue& say) { return text_or_nothing(rule_words(ground, say)); });
    v("effective", ground.effective);
    v("until", ground.until);
    v("beyond_end", ground.beyond_end);
    v("status", ground.status);
    v.words("source",
            [&](const Catalogue& say) { return text_or_nothing(source_words(ground, say)); });
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
        v.words("title", [&](const Catalogue& say) { return say.recheck.part(section.part); });
        v.each("figures", section.figures,
               [&](auto& figure, std::size_t) { figure_fields(v, figure, figures); });
    });
    v.said("figures", [&] { return answer.figure_count(); });
    v.said("differences", [&] { return answer.differences(); });
    v.words("cautions", [&](const Catalogue& say) {
        return loan_cautions(answer.heading, {answer.scenario.terms}, say);
    });
}

template std::string json_text_of(const RecheckAnswer&, const Catalogue&);

template const Shape& shape_of<RecheckAnswer>();

} // namespace quoin
