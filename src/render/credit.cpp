// Rendering what a builder's money can do as text.
#include <quoin/answers/credit.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include "credit_words.hpp"
#include "own_cautions.hpp"
#include "words/credit.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

Blocks cap_text(const CreditScenario& s, const CreditWords& say) {
    if (!s.cap) return {};
    const auto& phrase = s.cap_by_price ? say.cap_of_price : say.cap_of_value;
    return paragraph(phrase(percent_text(s.cap->value(), 0), s.cap_amount,
                            s.cap_on_concessions ? say.cap_on_concessions() : std::string(),
                            s.cap_taken.is_zero() ? std::string() : say.cap_taken(s.cap_taken)),
                     "  ");
}

std::string apr_words(const CreditMix& mix, const CreditWords& say) {
    return mix.apr ? disclosed_text(mix.apr->percent()) : say.no_apr();
}

std::string pure_name(const CreditPure& pure, const CreditScenario& s, const Catalogue& say) {
    const std::string name = use_name(pure, s, say);
    if (pure.way != CreditWay::points || !pure.mix) return name;
    return say.credit.with_points(name, fixed(pure.mix->points.value(), 3));
}

Blocks month_table(const CreditScenario& s, const CreditAsk& ask, const Catalogue& say) {
    const CreditWords& of = say.credit;
    Table table({{of.each_use(), Align::left, 30, 25},
                 {of.note_rate(), Align::right, 9, 8},
                 {of.apr(), Align::right, 9, 8},
                 {of.month_now(), Align::right, 10, 9},
                 {of.after_three_years(), Align::right, 11, 9},
                 {of.cash_needed(), Align::right, 11, 10},
                 {of.no_use_for(), Align::right, 11, 8}});
    const auto row = [&](const std::string& name, const CreditMix& mix) {
        table.row({name, rate_text(mix.rate), apr_words(mix, of), dollars(mix.monthly_now),
                   dollars(mix.monthly_later), dollars(mix.cash_needed), dollars(mix.unused())});
    };
    row(of.without_it(), s.today);
    for (const CreditPure& pure : s.pure) {
        if (pure.mix) row(pure_name(pure, s, say), *pure.mix);
    }
    Blocks out = table;
    for (const CreditPure& pure : s.pure) {
        if (pure.mix) continue;
        out += paragraph(of.not_to_be_had(use_name(pure, s, say), why_not(pure, ask, say)), "  ",
                         "    ");
    }
    return out;
}

Blocks years_table(const CreditScenario& s, const Catalogue& say) {
    std::vector<Column> columns{{say.credit.costs_after(), Align::left, 44, 26}};
    std::size_t told = 0; // a shorter loan ends before the last of the years
    while (told < credit_years.size()) {
        const int years = credit_years[told++];
        columns.push_back({years_words(years, s, say), Align::right, 14, 12});
        if (Months(years * months_a_year) >= s.terms.term) break;
    }
    Table table(std::move(columns));
    const auto row = [&](std::string name, const CreditMix& mix) {
        std::vector<std::string> cells{std::move(name)};
        for (std::size_t i = 0; i < told; ++i) cells.push_back(dollars(mix.cost[i]));
        table.row(std::move(cells));
    };
    row(say.credit.without_it(), s.today);
    for (const CreditPure& pure : s.pure) {
        if (pure.mix) row(pure_name(pure, s, say), *pure.mix);
    }
    return Blocks("\n") + table;
}

/// Why some of it is lost, where it is.
std::string lost_words(const CreditMix& mix, const CreditWords& say) {
    std::string out;
    if (!mix.without_use.is_zero()) out += say.lost_without_use(mix.without_use);
    if (!mix.over_cap.is_zero()) out += say.lost_over_cap(mix.over_cap);
    return out;
}

Blocks best_text(const std::string& what, const CreditMix& mix, const CreditScenario& s,
                 const CreditAnswer& answer, const Catalogue& say) {
    const CreditWords& of = say.credit;
    return paragraph(of.best(what, uses_words(mix, s, say), lost_words(mix, of), mix.rate,
                             apr_words(mix, of), mix.monthly_now, mix.monthly_later,
                             mix.cash_needed, mix.cost_asked,
                             years_words(answer.ask.years, s, say)),
                     "  ", "    ");
}

Blocks bests_text(const CreditScenario& s, const CreditAnswer& answer, const Catalogue& say) {
    const CreditWords& of = say.credit;
    Blocks out = "\n  " + of.bests() + "\n";
    out += best_text(of.lowest_payment(), s.lowest_payment, s, answer, say);
    if (s.cash_is_given) {
        out += paragraph(of.least_cash_is_given(), "  ", "    ");
    } else {
        out += best_text(of.least_cash(), s.least_cash, s, answer, say);
    }
    return out + best_text(of.least_cost(years_words(answer.ask.years, s, say)), s.least_cost, s,
                           answer, say);
}

std::vector<Column> frontier_columns(bool fees, const std::string& years, const CreditWords& say) {
    std::vector<Column> columns{{say.off_price(), Align::right, 11, 10},
                                {say.note_rate(), Align::right, 9, 8},
                                {say.apr(), Align::right, 9, 8},
                                {say.buydown(), Align::right, 8, 7}};
    if (fees) columns.push_back({say.fee(), Align::right, 8, 7});
    columns.insert(columns.end(), {{say.pays(), Align::right, 12, 10},
                                   {say.month_now(), Align::right, 10, 9},
                                   {say.cash_needed(), Align::right, 11, 10},
                                   {say.cost_over(years), Align::right, 11, 10}});
    return columns;
}

/// The mixes between which there is something to choose, thinned where they are many.
Blocks frontier_table(const CreditScenario& s, const CreditAsk& ask, const Catalogue& say) {
    constexpr std::size_t most = 16;
    const CreditWords& of = say.credit;
    const bool fees = std::any_of(s.frontier.begin(), s.frontier.end(),
                                  [](const CreditMix& mix) { return mix.fee_in_cash; });
    Table table(frontier_columns(fees, years_words(ask.years, s, say), of));
    const std::size_t count = s.frontier.size();
    const std::size_t told = std::min(count, most);
    for (std::size_t i = 0; i < told; ++i) {
        const CreditMix& m = s.frontier[told == 1 ? 0 : i * (count - 1) / (told - 1)];
        std::vector<std::string> cells{dollars(m.off_price), rate_text(m.rate), apr_words(m, of),
                                       m.buydown.empty() ? of.no_buydown()
                                                         : buydown_name(m.buydown)};
        if (fees) cells.push_back(m.fee_in_cash ? of.fee_in_cash() : std::string());
        for (const Money figure : {m.pays.total(), m.monthly_now, m.cash_needed, m.cost_asked}) {
            cells.push_back(dollars(figure));
        }
        table.row(std::move(cells));
    }
    const std::string thinned =
        told < count ? of.thinned(static_cast<int>(told), static_cast<int>(count)) : std::string();
    return Blocks("\n  " + of.frontier(thinned) + "\n") + table;
}

Blocks scenario_text(const CreditScenario& s, const CreditAnswer& answer, const Catalogue& say) {
    if (!s.available()) return "\n" + refused_lines(s.terms, s.refusals, say);
    Blocks out = "\n" + paragraph(say.credit.without_it_month(s.terms.name, s.today.monthly_now,
                                                              terms_line(s.terms, say)),
                                  "", "  ");
    out += bests_text(s, answer, say) + "\n" + month_table(s, answer.ask, say);
    out += years_table(s, say) + frontier_table(s, answer.ask, say);
    const Blocks cap = cap_text(s, say.credit);
    return cap.empty() ? out : out + "\n" + cap;
}

} // namespace

Blocks blocks_of(const CreditAnswer& answer, const Catalogue& say) {
    Blocks out = brief_of(answer, say, Estimate::below_all) + "\n" +
                 heading_text(answer.heading, say.credit.title(answer.ask.amount), say);
    out += say.credit.contract_price(answer.contract_price) + "\n";
    for (const CreditScenario& s : answer.scenarios) out += scenario_text(s, answer, say);
    return out + footing_text(cautions_of(answer, say));
}

} // namespace quoin
