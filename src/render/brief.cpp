// The answer to a question in one line for each loan: the figures asked for, and beside them what
// may not be left out where a payment is shown.
#include <quoin/answers/adds.hpp>
#include <quoin/answers/afford.hpp>
#include <quoin/answers/cash.hpp>
#include <quoin/answers/compare.hpp>
#include <quoin/answers/credit.hpp>
#include <quoin/answers/fit.hpp>
#include <quoin/answers/later.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/answers/shift.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include "credit_words.hpp"
#include "words/adds.hpp"
#include "words/brief.hpp"
#include "words/credit.hpp"
#include "words/fit.hpp"
#include "words/later.hpp"
#include "words/terms.hpp"
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>
#include <quoin/words/reasons.hpp>

namespace quoin {
namespace {

using Figures = std::vector<std::string>;

/// BriefLines of one answer.
class BriefLines {
  public:
    BriefLines(const Heading& heading, const Catalogue& say, Estimate estimate)
        : of(say.terms.brief), heading_(heading), say_(say), estimate_(estimate),
          has_sample_rates_(heading.sample_rates) {}
    /// The rate was typed, whatever sheet stands behind it.
    void take_own_rate() { has_sample_rates_ = false; }

    /// Figures under a loan, then its terms, the day, and that it is an estimate.
    void add(Figures figures, const ScenarioTerms& terms) {
        figures.push_back(loan(terms));
        if (estimate_ == Estimate::on_each_line) {
            figures.push_back(
                (has_sample_rates_ ? of.sample_estimate : of.estimate)(heading_.as_of));
        }
        any_ = true;
        blocks_ += OneLine{std::move(figures)};
    }
    void refused(const ScenarioTerms& terms, const std::vector<Refusal>& refusals) {
        if (!refusals.empty()) say_line(refused_words(terms.name, refusals.front(), say_));
    }
    void say_line(const std::string& words) { blocks_ += OneLine{{words}}; }
    [[nodiscard]] Blocks taken() {
        if (any_ && estimate_ == Estimate::below_all) {
            const auto& words = has_sample_rates_ ? of.sample_estimates : of.estimates;
            blocks_ += words(heading_.as_of) + "\n";
        }
        return std::move(blocks_);
    }

    const BriefWords& of;

  private:
    [[nodiscard]] std::string loan(const ScenarioTerms& t) const {
        return of.loan(t.name, t.rate,
                       t.apr ? disclosed_text(t.apr->percent()) : say_.terms.no_apr(),
                       term_text(t.term, say_), t.down_payment,
                       t.adjustable ? of.adjustable(term_text(t.adjustable->initial, say_)) : "");
    }

    const Heading& heading_;
    const Catalogue& say_;
    Estimate estimate_;
    bool has_sample_rates_;
    Blocks blocks_;
    bool any_ = false; ///< payment was told
};

/// Month and cash, after what stands before them.
Figures figures_of(const ScenarioAnswer& s, const BriefWords& say, Figures before = {}) {
    before.push_back(say.a_month(s.monthly.total()));
    before.push_back(say.cash_needed(s.cash.needed()));
    return before;
}

Figures difference_of(const Added& added, const BriefWords& say, Figures before = {}) {
    before.push_back(say.more_a_month(signed_dollars(added.per_month)));
    before.push_back(say.more_cash(signed_dollars(added.cash)));
    return before;
}

/// What a change of the price adds under each loan. `after`: the month then is that of the home as
/// it stands and the difference; else the home as it stands has it already.
struct PriceChange {
    std::string what;
    const std::vector<Added>& by_scenario;
    bool after;
};

void add_price_change(const AddsAnswer& answer, const PriceChange& change, BriefLines& lines) {
    for (std::size_t i = 0; i < change.by_scenario.size(); ++i) {
        const AddsScenario& s = answer.scenarios[i];
        const Added& added = change.by_scenario[i];
        if (!added.available()) {
            lines.refused(s.terms, added.refusals);
            continue;
        }
        const Money now = s.monthly.total();
        Figures figures = difference_of(added, lines.of, {change.what});
        figures.push_back(lines.of.a_month_in_all(change.after ? now + added.per_month : now));
        lines.add(std::move(figures), s.terms);
    }
}

void add_brief_item(const AddsAnswer& answer, const AddsItem& item, BriefLines& lines,
                    const Catalogue& say) {
    const std::string name = item.level.empty() ? item.name : say.adds.named(item.name, item.level);
    if (item.standing == Standing::held) {
        lines.say_line(say.adds.in_package(name, item.package));
    } else if (item.standing == Standing::barred) {
        lines.say_line(say.adds.why_barred(name, words_of(item.why_not, say)));
    } else if (const auto& has = item.in_home) {
        const std::string what =
            lines.of.priced(lines.of.in_home(name), signed_dollars(has->price));
        add_price_change(answer, {what, has->by_scenario, false}, lines);
    } else {
        const std::string what = lines.of.priced(name, signed_dollars(item.price));
        add_price_change(answer, {what, item.by_scenario, true}, lines);
    }
}

} // namespace

Blocks brief_of(const QuoteAnswer& answer, const Catalogue& say, Estimate estimate) {
    BriefLines lines(answer.heading, say, estimate);
    for (const ScenarioAnswer& s : answer.scenarios) {
        lines.refused(s.terms, s.refusals);
        if (s.available()) {
            lines.add(figures_of(s, lines.of, {dollars(answer.contract_price)}), s.terms);
        }
    }
    return lines.taken();
}

Blocks brief_of(const AddsAnswer& answer, const Catalogue& say, Estimate estimate) {
    BriefLines lines(answer.heading, say, estimate);
    if (answer.asked) {
        for (const AddsItem& item : answer.items) add_brief_item(answer, item, lines, say);
    } else {
        const std::string what =
            lines.of.priced(lines.of.together(), signed_dollars(answer.whole.price));
        add_price_change(answer, {what, answer.whole.by_scenario, false}, lines);
    }
    return lines.taken();
}

Blocks brief_of(const CompareAnswer& answer, const Catalogue& say, Estimate estimate) {
    BriefLines lines(answer.heading, say, estimate);
    for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
        const ScenarioAnswer& s = answer.scenarios[i];
        lines.refused(s.terms, s.refusals);
        if (!s.available()) continue;
        Figures figures = figures_of(s, lines.of);
        const Added& moved = answer.against_first[i];
        if (i > 0 && moved.available()) {
            figures = difference_of(moved, lines.of, std::move(figures));
            figures.back() += " " + lines.of.against(answer.scenarios.front().terms.name);
        }
        lines.add(std::move(figures), s.terms);
    }
    return lines.taken();
}

Blocks brief_of(const CashAnswer& answer, const Catalogue& say, Estimate estimate) {
    BriefLines lines(answer.heading, say, estimate);
    const ScenarioAnswer& s = answer.scenario;
    lines.refused(s.terms, s.refusals);
    if (s.available()) {
        lines.add({lines.of.cash_needed(s.cash.needed()), closing_words(s.cash, say),
                   lines.of.a_month(s.monthly.total())},
                  s.terms);
    }
    return lines.taken();
}

Blocks brief_of(const AffordAnswer& answer, const Catalogue& say, Estimate estimate) {
    BriefLines lines(answer.heading, say, estimate);
    if (!answer.assumptions.empty()) lines.take_own_rate();
    for (const AffordScenario& s : answer.scenarios) {
        if (s.price) {
            lines.add(figures_of(s.scenario, lines.of, {lines.of.up_to(*s.price)}), s.terms);
        } else {
            lines.say_line(lines.of.no_price(s.terms.name));
        }
    }
    return lines.taken();
}

Blocks brief_of(const FitAnswer& answer, const Catalogue& say, Estimate estimate) {
    BriefLines lines(answer.heading, say, estimate);
    for (const FitScenario& scenario : answer.scenarios) {
        const FitHome& best = scenario.homes[scenario.best];
        Figures figures;
        if (answer.lots) figures.push_back(lines.of.on_lot(best.lot));
        if (best.fits) {
            figures.push_back(lines.of.worth(best.worth.text()));
        } else {
            figures.push_back(best.proven ? say.fit.nothing_fits() : say.fit.none_found());
            if (!best.over_monthly.is_zero()) {
                figures.push_back(say.fit.over_month(best.over_monthly));
            }
            if (!best.over_cash.is_zero()) figures.push_back(say.fit.over_cash(best.over_cash));
        }
        if (best.scenario && best.scenario->available()) {
            figures.push_back(best.fits ? dollars(best.price) : lines.of.closest(best.price));
            lines.add(figures_of(*best.scenario, lines.of, std::move(figures)),
                      best.scenario->terms);
        } else {
            lines.say_line(lines.of.priced(scenario.terms.name, figures.back()));
        }
    }
    return lines.taken();
}

Blocks brief_of(const CreditAnswer& answer, const Catalogue& say, Estimate estimate) {
    BriefLines lines(answer.heading, say, estimate);
    for (const CreditScenario& s : answer.scenarios) {
        lines.refused(s.terms, s.refusals);
        if (!s.available()) continue;
        const CreditMix& mix = s.least_cost;
        ScenarioTerms terms = s.terms;
        terms.rate = mix.rate;
        terms.apr = mix.apr;
        terms.down_payment = mix.cash_needed - mix.own_costs;
        lines.add({lines.of.priced(say.credit.least_cost(years_words(answer.ask.years, s, say)),
                                   uses_words(mix, s, say)),
                   lines.of.a_month(mix.monthly_now), lines.of.cash_needed(mix.cash_needed)},
                  terms);
    }
    return lines.taken();
}

Blocks brief_of(const ShiftAnswer& answer, const Catalogue& say, Estimate estimate) {
    BriefLines lines(answer.heading, say, estimate);
    for (const ShiftScenario& s : answer.scenarios) {
        lines.refused(s.terms, s.refusals);
        if (!s.available()) continue;
        Figures figures{lines.of.a_month(s.monthly), lines.of.cash_needed(s.cash_needed)};
        for (const ShiftRow* row : {&s.rows.front(), &s.rows.back()}) {
            const ShiftCell& cell = row->cells.front();
            if (row->steps == 0 || !cell.available()) continue;
            figures.push_back(
                lines.of.at_rate(row->rate, signed_dollars(cell.monthly - s.monthly)));
        }
        lines.add(std::move(figures), s.terms);
    }
    return lines.taken();
}

Blocks brief_of(const LaterAnswer& answer, const Catalogue& say, Estimate estimate) {
    BriefLines lines(answer.heading, say, estimate);
    for (const LaterItem& item : answer.items) {
        const std::string name =
            item.level.empty() ? item.name : say.later.named(item.name, item.level);
        for (const LaterScenario& s : item.scenarios) {
            lines.refused(s.terms, s.refusals);
            if (!s.refusals.empty()) continue;
            Figures figures{lines.of.priced(name, signed_dollars(item.price))};
            for (const LaterPath& path : s.paths) {
                if (!path.available()) continue;
                if (path.way == LaterWay::after && item.later) {
                    figures.push_back(
                        lines.of.way_estimated(say.later.way(path.way), item.later->estimate));
                    continue;
                }
                figures.push_back(
                    lines.of.way(say.later.way(path.way), path.at_closing, path.a_month));
            }
            lines.add(std::move(figures), s.terms);
        }
    }
    return lines.taken();
}

} // namespace quoin
