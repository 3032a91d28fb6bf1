// Rendering what can be afforded.
#include <quoin/answers/afford.hpp>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "shared_fields.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

namespace {

std::string words(AffordLimit limit, const AffordScenario& s) {
    switch (limit) {
    case AffordLimit::front_ratio:
        return fmt::format("housing over {} of income", percent_text(s.ratios->front->value(), 0));
    case AffordLimit::back_ratio:
        return s.passes_by_ratio ? fmt::format("housing and debts by {} residual income",
                                               percent_text(s.ratios->residual_instead->value(), 0))
                                 : fmt::format("housing and debts over {} of income",
                                               percent_text(s.back->value(), 0));
    case AffordLimit::residual_income:
        return "residual income for living";
    case AffordLimit::cash:
        return "the cash there is";
    case AffordLimit::program:
        return "the program's own limit";
    }
    return {};
}

std::string listed(const std::vector<AffordLimit>& limits, const AffordScenario& s) {
    std::string text;
    for (const AffordLimit limit : limits) {
        if (!text.empty()) text += ", ";
        text += words(limit, s);
    }
    return text;
}

std::string rooms_text(const std::vector<LimitRoom>& rooms, const AffordScenario& s) {
    if (rooms.empty()) return {};
    Table table({{"", Align::left, 40},
                 {"takes", Align::right},
                 {"most", Align::right},
                 {"left", Align::right}},
                "    ");
    for (const LimitRoom& room : rooms) {
        table.row(
            {words(room.limit, s), dollars(room.needed), dollars(room.most), dollars(room.room)});
    }
    return table.text();
}

std::string refusals_words(const std::vector<Refusal>& refusals) {
    std::string text;
    for (const Refusal& refusal : refusals) text += (text.empty() ? "" : "; ") + words(refusal);
    return text;
}

std::string step_words(const AffordStep& step) {
    std::string text = fmt::format("A home of {} would take", dollars(step.price));
    std::vector<std::string> parts;
    if (step.more_cash > Money{}) parts.push_back(dollars(step.more_cash) + " more cash");
    if (step.more_income > Money{}) {
        std::string income = dollars(step.more_income) + " more income a month";
        if (step.debts_suffice && step.more_after_tax.is_zero())
            income += ", or " + dollars(step.less_debts) + " less in debts";
        parts.push_back(std::move(income));
    }
    if (step.more_after_tax > Money{}) {
        std::string more = dollars(step.more_after_tax) + " more a month after taxes";
        if (step.debts_suffice) more += ", or " + dollars(step.less_debts) + " less in debts";
        parts.push_back(std::move(more));
    }
    for (std::size_t i = 0; i < parts.size(); ++i) text += (i > 0 ? ", and " : " ") + parts[i];
    if (!step.refusals.empty()) {
        return fmt::format("A home of {} is not to be had so: {}.", dollars(step.price),
                           refusals_words(step.refusals));
    }
    if (parts.empty()) return {};
    text += '.';
    if (step.lower_rate) {
        text += fmt::format(" Instead of all that a note rate of {} at {} points would do.",
                            rate_text(step.lower_rate->rate),
                            fixed(step.lower_rate->points.value(), 3));
    }
    return text;
}

/// What residual income is tested with, or which facts it lacks.
std::string residual_words(const AffordScenario& s) {
    const ResidualTest& test = *s.residual;
    if (test.tested()) {
        return fmt::format("Residual income: {} must be left for living after taxes, debts, the "
                           "month and {} for maintenance and utilities ({} sq ft).",
                           dollars(s.residual_guide), dollars(test.upkeep),
                           grouped(test.square_feet));
    }
    std::vector<std::string> lacking;
    if (!test.has_income) lacking.emplace_back("the income");
    if (!test.has_taxes) lacking.emplace_back("the taxes on it (\"income_taxes\")");
    if (!test.has_household) lacking.emplace_back("the persons in the household");
    if (!test.has_region) lacking.emplace_back("the place's region");
    if (test.square_feet <= Decimal{}) lacking.emplace_back("the plan's square feet");
    return fmt::format("Residual income, which this program asks for, is not tested: {} {} not "
                       "given.",
                       fmt::join(lacking, ", "), lacking.size() == 1 ? "is" : "are");
}

/// What asking for automated underwriting did not change, or took away; empty where another ratio
/// is held for it.
std::string automated_words(const AffordScenario& s) {
    if (!s.automated) return {};
    switch (*s.automated) {
    case AutomatedRatio::another:
        return {};
    case AutomatedRatio::the_same:
        return fmt::format("Automated underwriting changes nothing here: the {} of this program "
                           "are a guide, however a file is underwritten.",
                           percent_text(s.back->value(), 0));
    case AutomatedRatio::none_published:
        return "No ratio is published for a file that this program's automated underwriting "
               "accepts, so none is held here: what it accepts is not known before it is asked. A "
               "file that it refers is held to the ratios of manual underwriting.";
    case AutomatedRatio::not_known:
        return "Automated underwriting changes nothing here: no ratio of its own is known for "
               "this program.";
    }
    return {};
}

/// Why a ratio over the limit is let pass.
std::string passed_words(const AffordScenario& s) {
    return fmt::format("Housing and debts are over {} of the income. That is let pass here because "
                       "at least {} of the residual income is left; the lender has to justify it "
                       "in the file, and decides.",
                       percent_text(s.back->value(), 0),
                       percent_text(s.ratios->residual_instead->value(), 0));
}

std::string plans_text(const AffordScenario& s) {
    if (s.plans.empty()) return "    No home of the price book is within it.\n";
    std::string out;
    for (const AffordPlan& plan : s.plans) {
        out += fmt::format("    {}: {} {} of elevation and free lot, from {} ({}, lot {})\n",
                           plan.plan, plan.homes, plan.homes == 1 ? "pair" : "pairs",
                           dollars(plan.price), plan.elevation, plan.lot);
    }
    return out;
}

std::string none_text(const AffordScenario& s) {
    if (!s.refusals.empty()) {
        return paragraph(fmt::format("No price fits: at {} {}.", dollars(s.least_price),
                                     refusals_words(s.refusals)),
                         "  ") +
               rooms_text(s.nearest, s);
    }
    return fmt::format("  No price fits. The nearest, at {}, misses by what is below zero:\n",
                       dollars(s.least_price)) +
           rooms_text(s.nearest, s);
}

std::string scenario_text(const AffordScenario& s) {
    std::string out = fmt::format("\n{}\n", s.terms.name);
    if (!s.price) return out + none_text(s);
    const bool untested = s.automated == AutomatedRatio::none_published;
    out += fmt::format("  up to {}{}: {} a month, {} of cash needed\n", dollars(*s.price),
                       untested ? ", the income held to no ratio" : "",
                       dollars(s.scenario.monthly.total()), dollars(s.scenario.cash.needed()));
    out += paragraph(terms_line(s.terms), "    ");
    out += rooms_text(s.rooms, s);
    if (!s.binds.empty()) {
        std::string line = "What binds: " + listed(s.binds, s);
        if (!s.refusals.empty()) line += " (" + refusals_words(s.refusals) + ")";
        if (s.next_price) {
            line += fmt::format(". Without it, up to {}", dollars(*s.next_price));
            if (!s.next_binds.empty()) line += ", where " + listed(s.next_binds, s) + " binds";
        }
        out += paragraph(line + ".", "    ");
    }
    if (s.qualifying_rate) {
        out += paragraph(fmt::format("Ratios are at a payment of {}, since this rate can rise: {}.",
                                     rate_text(*s.qualifying_rate), s.qualifying_source),
                         "    ");
    }
    const std::string automated = automated_words(s);
    if (!automated.empty()) out += paragraph(automated, "    ");
    if (s.back && s.ratios->whole_percents) {
        out += "    A ratio is rounded to a whole percent before it is held to the limit.\n";
    }
    if (s.residual) out += paragraph(residual_words(s), "    ");
    if (s.passes_by_ratio) out += paragraph(passed_words(s), "    ");
    if (s.step) out += paragraph(step_words(*s.step), "    ");
    return out;
}

/// On figures alone: what was assumed stands where the home would.
std::string plain_heading(const AffordAnswer& answer) {
    return fmt::format("How much home\nas of {}; closing {}\n", long_date(answer.heading.as_of),
                       long_date(answer.heading.closing)) +
           paragraph(fmt::format("Assumed: {}.", fmt::join(answer.assumptions, "; ")), "", "  ");
}

Cautions cautions_of(const AffordAnswer& answer, const Catalogue& /*say*/) {
    const std::vector<ScenarioTerms> terms = terms_of(answer.scenarios);
    Cautions notes = answer.assumptions.empty() ? loan_cautions(answer.heading, terms)
                                                : Cautions{estimate_caution(answer.heading)};
    if (!answer.assumptions.empty()) add_continued_cautions(terms, notes);
    notes.insert(
        notes.begin(),
        {CautionCode::ratios_are_guides,
         "Ratios are guides of the published rules, not an approval: a lender looks at "
         "credit, income and assets, and may go above them or stay below. What a buyer "
         "can borrow and what suits them are two questions. A temporary buydown lowers the first "
         "payments and lets nothing more: loans are held to the note rate."});
    return notes;
}

} // namespace

std::string text_of(const AffordAnswer& answer, const Catalogue& say) {
    const bool plain = !answer.assumptions.empty();
    std::string out =
        plain ? plain_heading(answer) : heading_text(answer.heading, "How much home", say);
    if (answer.facts.reserve_months > 0) {
        out +=
            fmt::format("{} months of the payment kept in reserve\n", answer.facts.reserve_months);
    }
    for (const AffordScenario& s : answer.scenarios) {
        out += scenario_text(s);
        if (!plain && s.price) out += plans_text(s);
    }
    return out + footing_text(cautions_of(answer, say));
}

void fields(auto& v, Of<LimitRoom> auto& room) {
    v.named("Room");
    v("limit", room.limit);
    v("needed", room.needed);
    v("most", room.most);
    v("room", room.room);
}

void fields(auto& v, Of<LowerRate> auto& lower) {
    v("rate", lower.rate);
    v("points", lower.points);
}

void fields(auto& v, Of<AffordStep> auto& step) {
    v("price", step.price);
    v("more_cash", step.more_cash);
    v("more_income", step.more_income);
    v("more_after_tax", step.more_after_tax);
    v("less_debts", step.less_debts);
    v("debts_suffice", step.debts_suffice);
    v("lower_rate", step.lower_rate);
    v("refusals", step.refusals);
}

void fields(auto& v, Of<AffordPlan> auto& plan) {
    v("plan", plan.plan);
    v("elevation", plan.elevation);
    v("lot", plan.lot);
    v("price", plan.price);
    v("homes", plan.homes);
}

namespace {

using Words = std::optional<std::string>;

void ratio_fields(auto& v, auto& s, auto& ratios) {
    v.only("front", s.back.has_value(), ratios.front);
    v("back", s.back);
    v.words("automated", [&] {
        const std::string words = automated_words(s);
        return words.empty() ? Words{} : Words(words);
    });
    v("whole_percents", ratios.whole_percents);
    v("passes_by_residual_income", s.passes_by_ratio);
    v.words("passed_by", [&] { return s.passes_by_ratio ? Words(passed_words(s)) : Words{}; });
    v("status", ratios.status);
    v("source", ratios.source);
}

void residual_fields(auto& v, auto& s, auto& residual) {
    v.held(
        "tested", [&] { return residual.tested(); },
        [&](auto tested) {
            residual.has_income = residual.has_household = residual.has_taxes = tested;
            residual.has_region = tested;
            residual.square_feet = Decimal::whole(tested ? 1 : 0);
        });
    v.words("words", [&] { return residual_words(s); });
    v.only("guide", residual.tested() && s.price, s.residual_guide);
    v("upkeep", residual.upkeep);
    v("status", residual.guide.status);
    v("source", residual.guide.source);
}

} // namespace

void fields(auto& v, Of<AffordScenario> auto& s) {
    v.named("AffordScenario");
    v("terms", s.terms);
    v.maybe("ratios", s.ratios, [&](auto& ratios) { ratio_fields(v, s, ratios); });
    v.maybe("residual_income", s.residual,
            [&](auto& residual) { residual_fields(v, s, residual); });
    v("qualifying_rate", s.qualifying_rate);
    v("qualifying_source", s.qualifying_source);
    v("price", s.price);
    v("rooms", s.price ? s.rooms : s.nearest);
    v("binds", s.binds);
    v("refusals", s.refusals);
    v("next_price", s.next_price);
    v("next_binds", s.next_binds);
    v("step", s.step);
    v.when(!s.price, [&] { v("least_price", s.least_price); });
    v("plans", s.plans);
    v.when(s.price.has_value(), [&] { v("scenario", s.scenario); });
}

void fields(auto& v, Of<AffordAnswer> auto& answer) {
    v.named("Afford");
    v.constant("question", "afford");
    v("heading", answer.heading);
    v("reserve_months", answer.facts.reserve_months);
    v("automated", answer.facts.automated);
    v("assumptions", answer.assumptions);
    v("scenarios", answer.scenarios);
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const AffordAnswer&, const Catalogue&);

template const Shape& shape_of<AffordAnswer>();
template std::optional<AffordAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
