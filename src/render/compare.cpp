// Rendering a comparison.
#include <quoin/answers/compare.hpp>

#include <algorithm>

#include "order_words.hpp"
#include "scenario_table.hpp"
#include "shared_fields.hpp"
#include "words/compare.hpp"
#include <quoin/render/answers.hpp>
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

/// What each program asks in return, once a program.
Blocks fine_print(const CompareAnswer& answer, const Catalogue& say) {
    Blocks out;
    std::vector<std::string> told;
    for (const ScenarioAnswer& s : answer.scenarios) {
        const std::string& id = s.terms.program_id;
        if (s.terms.fine_print.empty() || std::find(told.begin(), told.end(), id) != told.end()) {
            continue;
        }
        told.push_back(id);
        out += paragraph(say.compare.catch_of(s.terms.program, s.terms.fine_print), "  ", "    ");
    }
    return out.empty() ? out : titled(say.compare.catches()) + out;
}

Blocks points_text(const CompareAnswer& answer, const Catalogue& say) {
    Blocks out;
    for (const PointsPayback& p : answer.points) {
        out += paragraph(say.compare.points_take(answer.scenarios[p.scenario].terms.name,
                                                 p.rate_without, p.rate, p.extra_cash,
                                                 p.saved_monthly, payback_words(p, say)),
                         "  ", "    ");
    }
    return out.empty() ? out : titled(say.compare.points()) + out;
}

Blocks orders_text(const CompareAnswer& answer, const Catalogue& say) {
    Blocks out;
    for (const LoanOrder& o : answer.orders) {
        const std::string& first = answer.scenarios[o.first].terms.name;
        const std::string& second = answer.scenarios[o.second].terms.name;
        out += paragraph(
            say.compare.against(first, second, order_words(o.stretches, first, second, say)), "  ",
            "    ");
    }
    if (out.empty()) return out;
    return titled(say.compare.orders()) + paragraph(say.compare.orders_count(), "  ") + out;
}

Cautions cautions_of(const CompareAnswer& answer, const Catalogue& say) {
    Cautions notes = loan_cautions(answer.heading, terms_of(answer.scenarios), say);
    notes.push_back(agent_caution(say));
    return notes;
}

} // namespace

Blocks blocks_of(const CompareAnswer& answer, const Catalogue& say) {
    const CompareWords& of = say.compare;
    Blocks out = brief_of(answer, say, Estimate::below_all) + "\n" +
                 heading_text(answer.heading, of.title(), say);
    out += of.contract_price(answer.contract_price) + "\n";
    out += titled(of.month()) + month_table(answer.scenarios, say);
    out += titled(of.loan()) + loan_table(answer.scenarios, say);
    out += titled(of.cash()) + cash_table(answer.scenarios, say);
    out += titled(of.years()) + years_table(answer.scenarios, say);
    out += points_text(answer, say) + orders_text(answer, say);
    const Blocks refusals = refusal_lines(answer.scenarios, say);
    if (!refusals.empty()) out += "\n" + refusals;
    return out + fine_print(answer, say) + footing_text(cautions_of(answer, say));
}

void fields(auto& v, Of<YearPoint> auto& point) {
    v("year", point.year);
    v("paid", point.paid);
    v("balance", point.balance);
    v("spent_and_owed", point.spent_and_owed);
}

void fields(auto& v, Of<CostStretch> auto& stretch) {
    v.named("Stretch");
    v("cheaper", stretch.cheaper);
    v("from", stretch.from);
    v("to", stretch.to);
    v.words("when", [&](const Catalogue& say) { return when_words(stretch, say.order.payments); });
}

namespace {

void payback_fields(auto& v, auto& p, const CompareAnswer& answer, const auto& name) {
    v.place("scenario", p.scenario, answer.scenarios, name);
    v("rate", p.rate);
    v("rate_without", p.rate_without);
    v("extra_cash", p.extra_cash);
    v("saved_monthly", p.saved_monthly);
    v("break_even", p.break_even);
    v("stretches", p.order);
    v.words("words", [&](const Catalogue& say) { return payback_words(p, say); });
}

/// The loan that the years are held against, where the inquiry has one at all.
std::optional<std::string> name_held_against(const CompareAnswer& answer) {
    if (answer.scenarios.empty()) return std::nullopt;
    return answer.scenarios[answer.against].terms.name;
}

std::size_t place_of(const std::optional<std::string>& name,
                     const std::vector<ScenarioAnswer>& scenarios) {
    std::size_t place = 0;
    while (place < scenarios.size() && scenarios[place].terms.name != name) ++place;
    return place < scenarios.size() ? place : 0;
}

} // namespace

void fields(auto& v, Of<CompareAnswer> auto& answer) {
    v.named("Compare");
    const auto name = [](const ScenarioAnswer& one) -> const std::string& {
        return one.terms.name;
    };
    v.constant("question", "compare");
    v("heading", answer.heading);
    v("contract_price", answer.contract_price);
    v.each("scenarios", answer.scenarios, [&](auto& scenario, std::size_t i) {
        v.all_of(scenario);
        v.object(
            "against_first", [&] { difference(v, beside(answer.against_first, i)); },
            difference_name);
        v.object(
            "against_shown", [&] { difference(v, beside(answer.against_shown, i)); },
            difference_name);
        v("curve", beside(answer.curves, i));
        v("apart", beside(answer.apart, i));
    });
    v.held(
        "apart_from", [&] { return name_held_against(answer); },
        [&](const auto& held) { answer.against = place_of(held, answer.scenarios); });
    v.each("points", answer.points,
           [&](auto& point, std::size_t) { payback_fields(v, point, answer, name); });
    v.each("orders", answer.orders, [&](auto& order, std::size_t) {
        v.place("first", order.first, answer.scenarios, name);
        v.place("second", order.second, answer.scenarios, name);
        v("stretches", order.stretches);
    });
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const CompareAnswer&, const Catalogue&);

template const Shape& shape_of<CompareAnswer>();
template std::optional<CompareAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
