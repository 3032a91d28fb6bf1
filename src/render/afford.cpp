// Rendering what can be afforded.
#include <quoin/answers/afford.hpp>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "shared_fields.hpp"
#include "words/afford.hpp"
#include <quoin/render/answers.hpp>
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

namespace {

std::string limit_words(AffordLimit limit, const AffordScenario& s, const AffordWords& say) {
    switch (limit) {
    case AffordLimit::front_ratio:
        return say.front_ratio(percent_text(s.ratios->front->value(), 0));
    case AffordLimit::back_ratio:
        return s.passes_by_ratio
                   ? say.by_residual_income(percent_text(s.ratios->residual_instead->value(), 0))
                   : say.back_ratio(percent_text(s.back->value(), 0));
    case AffordLimit::residual_income:
        return say.residual_income();
    case AffordLimit::cash:
        return say.cash();
    case AffordLimit::program:
        return say.program();
    }
    return {};
}

std::string listed(const std::vector<AffordLimit>& limits, const AffordScenario& s,
                   const AffordWords& say) {
    std::vector<std::string> list;
    for (const AffordLimit limit : limits) list.push_back(limit_words(limit, s, say));
    return joined(list);
}

Table limits_table(const std::string& last, const AffordWords& say) {
    return Table({{"", Align::left, 40},
                  {say.takes(), Align::right},
                  {say.most(), Align::right},
                  {last, Align::right}},
                 "    ");
}

/// What is left under each limit at the highest price.
Blocks rooms_text(const AffordScenario& s, const AffordWords& say) {
    if (s.rooms.empty()) return {};
    Table table = limits_table(say.left(), say);
    for (const LimitRoom& room : s.rooms) {
        table.row({limit_words(room.limit, s, say), dollars(room.needed), dollars(room.most),
                   dollars(room.room)});
    }
    return table;
}

/// What is missing under each limit where no price fits.
Blocks misses_text(const AffordScenario& s, const AffordWords& say) {
    if (s.nearest.empty()) return {};
    Table table = limits_table(say.short_by(), say);
    for (const LimitRoom& room : s.nearest) {
        table.row({limit_words(room.limit, s, say), dollars(room.needed), dollars(room.most),
                   room.room < Money{} ? dollars(Money{} - room.room) : std::string()});
    }
    return table;
}

/// What a step takes: cash, and income or less in debts; empty where it takes none of these.
std::string takes_words(const AffordStep& step, const AffordWords& say) {
    std::string text;
    const auto take = [&](const std::string& part) {
        text = text.empty() ? part : say.and_also(text, part);
    };
    if (step.more_cash > Money{}) take(say.more_cash(step.more_cash));
    if (step.more_income > Money{}) {
        take(step.debts_suffice && step.more_after_tax.is_zero()
                 ? say.more_income_or_less_debts(step.more_income, step.less_debts)
                 : say.more_income(step.more_income));
    }
    if (step.more_after_tax > Money{}) {
        take(step.debts_suffice
                 ? say.more_after_tax_or_less_debts(step.more_after_tax, step.less_debts)
                 : say.more_after_tax(step.more_after_tax));
    }
    return text;
}

std::string step_words(const AffordStep& step, const Catalogue& catalogue) {
    const AffordWords& say = catalogue.afford;
    if (!step.refusals.empty()) {
        return say.step_refused(step.price, words(step.refusals, catalogue));
    }
    const std::string takes = takes_words(step, say);
    if (takes.empty()) return {};
    return say.step(step.price, takes,
                    step.lower_rate ? say.lower_rate(step.lower_rate->rate,
                                                     fixed(step.lower_rate->points.value(), 3))
                                    : std::string());
}

/// What residual income is tested with, or which facts it lacks.
std::string residual_words(const AffordScenario& s, const AffordWords& say) {
    const ResidualTest& test = *s.residual;
    if (test.tested()) {
        return say.residual_tested(s.residual_guide, test.upkeep, grouped(test.square_feet));
    }
    std::vector<std::string> lacking;
    if (!test.has_income) lacking.push_back(say.lacks_income());
    if (!test.has_taxes) lacking.push_back(say.lacks_taxes());
    if (!test.has_household) lacking.push_back(say.lacks_household());
    if (!test.has_region) lacking.push_back(say.lacks_region());
    if (test.square_feet <= Decimal{}) lacking.push_back(say.lacks_square_feet());
    return say.residual_lacks(joined(lacking));
}

/// What asking for automated underwriting did not change, or took away; empty where another ratio
/// is held for it.
std::string automated_words(const AffordScenario& s, const AffordWords& say) {
    if (!s.automated) return {};
    switch (*s.automated) {
    case AutomatedRatio::another:
        return {};
    case AutomatedRatio::the_same:
        return say.automated_the_same(percent_text(s.back->value(), 0));
    case AutomatedRatio::none_published:
        return say.automated_none_published();
    case AutomatedRatio::not_known:
        return say.automated_not_known();
    }
    return {};
}

/// Why a ratio over the limit is let pass.
std::string passed_words(const AffordScenario& s, const AffordWords& say) {
    return say.passed(percent_text(s.back->value(), 0),
                      percent_text(s.ratios->residual_instead->value(), 0));
}

Blocks plans_text(const AffordScenario& s, const AffordWords& say) {
    if (s.plans.empty()) return "    " + say.no_plan() + "\n";
    Blocks out;
    for (const AffordPlan& plan : s.plans) {
        out += "    " +
               say.plan(plan.plan, say.pairs(plan.homes), plan.price, plan.elevation, plan.lot) +
               "\n";
    }
    return out;
}

Blocks none_text(const AffordScenario& s, const Catalogue& catalogue) {
    const AffordWords& say = catalogue.afford;
    const Blocks why =
        s.refusals.empty()
            ? Blocks("  " + say.nearest(s.least_price) + "\n")
            : paragraph(say.refused(s.least_price, words(s.refusals, catalogue)), "  ");
    return why + misses_text(s, say);
}

/// What binds at the highest price, and how far it goes without that; empty where nothing does.
std::string binds_words(const AffordScenario& s, const Catalogue& catalogue) {
    const AffordWords& say = catalogue.afford;
    if (s.binds.empty()) return {};
    std::string without;
    if (s.next_price) {
        without = say.without(*s.next_price, s.next_binds.empty()
                                                 ? std::string()
                                                 : say.where_binds(listed(s.next_binds, s, say)));
    }
    return say.binds(listed(s.binds, s, say),
                     s.refusals.empty() ? std::string()
                                        : say.binds_since(words(s.refusals, catalogue)),
                     without);
}

/// What the ratios are held to, and how.
Blocks ratios_text(const AffordScenario& s, const AffordWords& say) {
    Blocks out;
    if (s.qualifying_rate) {
        out += paragraph(say.qualifying(*s.qualifying_rate, s.qualifying_source), "    ");
    }
    const std::string automated = automated_words(s, say);
    if (!automated.empty()) out += paragraph(automated, "    ");
    if (s.back && s.ratios->whole_percents) out += "    " + say.whole_percents() + "\n";
    if (s.residual) out += paragraph(residual_words(s, say), "    ");
    if (s.passes_by_ratio) out += paragraph(passed_words(s, say), "    ");
    return out;
}

Blocks scenario_text(const AffordScenario& s, const Catalogue& catalogue) {
    const AffordWords& say = catalogue.afford;
    Blocks out = titled(s.terms.name);
    if (!s.price) return out + none_text(s, catalogue);
    const bool untested = s.automated == AutomatedRatio::none_published;
    out += "  " +
           say.up_to(*s.price, untested ? say.held_to_no_ratio() : std::string(),
                     s.scenario.monthly.total(), s.scenario.cash.needed()) +
           "\n";
    out += paragraph(terms_line(s.terms, catalogue), "    ");
    out += rooms_text(s, say);
    const std::string binds = binds_words(s, catalogue);
    if (!binds.empty()) out += paragraph(binds, "    ");
    out += ratios_text(s, say);
    if (s.step) out += paragraph(step_words(*s.step, catalogue), "    ");
    return out;
}

/// On figures alone: what was assumed stands where the home would.
Blocks plain_heading(const AffordAnswer& answer, const AffordWords& say) {
    return say.title() + "\n" + say.dates(answer.heading.as_of, answer.heading.closing) + "\n" +
           paragraph(say.assumed(fmt::format("{}", fmt::join(answer.assumptions, "; "))), "", "  ");
}

Cautions cautions_of(const AffordAnswer& answer, const Catalogue& say) {
    const std::vector<ScenarioTerms> terms = terms_of(answer.scenarios);
    Cautions notes = answer.assumptions.empty() ? loan_cautions(answer.heading, terms, say)
                                                : Cautions{estimate_caution(answer.heading, say)};
    if (!answer.assumptions.empty()) add_continued_cautions(terms, notes, say);
    notes.insert(notes.begin(), {CautionCode::ratios_are_guides, say.afford.ratios_are_guides()});
    return notes;
}

} // namespace

Blocks blocks_of(const AffordAnswer& answer, const Catalogue& say) {
    const bool plain = !answer.assumptions.empty();
    Blocks out = brief_of(answer, say, Estimate::below_all) + "\n";
    out += plain ? plain_heading(answer, say.afford)
                 : heading_text(answer.heading, say.afford.title(), say);
    if (answer.facts.reserve_months > 0) {
        out += say.afford.reserve(answer.facts.reserve_months) + "\n";
    }
    for (const AffordScenario& s : answer.scenarios) {
        out += scenario_text(s, say);
        if (!plain && s.price) out += plans_text(s, say.afford);
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
    v.words("automated", [&](const Catalogue& say) {
        const std::string words = automated_words(s, say.afford);
        return words.empty() ? Words{} : Words(words);
    });
    v("whole_percents", ratios.whole_percents);
    v("passes_by_residual_income", s.passes_by_ratio);
    v.words("passed_by", [&](const Catalogue& say) {
        return s.passes_by_ratio ? Words(passed_words(s, say.afford)) : Words{};
    });
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
    v.words("words", [&](const Catalogue& say) { return residual_words(s, say.afford); });
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
