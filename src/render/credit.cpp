// Rendering what a builder's money can do as text.
#include <quoin/answers/credit.hpp>
#include <quoin/render/answers.hpp>

#include <algorithm>

#include <fmt/format.h>

#include "credit_words.hpp"
#include "own_cautions.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

std::string cap_text(const CreditScenario& s) {
    if (!s.cap) return {};
    std::string out =
        fmt::format("Interested parties may give {} of the {}, {}", percent_text(s.cap->value(), 0),
                    s.cap_by_price ? "price" : "value", dollars(s.cap_amount));
    if (s.cap_on_concessions) out += ", prepaids, buydowns and the funding fee alone counted";
    if (!s.cap_taken.is_zero()) {
        out += fmt::format("; {} of it is taken already", dollars(s.cap_taken));
    }
    return paragraph(out + ".", "  ");
}

std::string pure_name(const CreditPure& pure, const CreditScenario& s) {
    std::string name = use_name(pure, s);
    if (pure.way == CreditWay::points && pure.mix) {
        name += fmt::format(": {} points", fixed(pure.mix->points.value(), 3));
    }
    return name;
}

std::string month_table(const CreditScenario& s, const CreditAsk& ask) {
    Table table({{"each use by itself", Align::left, 30, 25},
                 {"note rate", Align::right, 9, 8},
                 {"APR", Align::right, 9, 8},
                 {"a month now", Align::right, 10, 9},
                 {"after three years", Align::right, 11, 9},
                 {"cash needed", Align::right, 11, 10},
                 {"no use for", Align::right, 11, 8}});
    const auto row = [&](const std::string& name, const CreditMix& mix) {
        table.row({name, rate_text(mix.rate), apr_text(mix.apr), dollars(mix.monthly_now),
                   dollars(mix.monthly_later), dollars(mix.cash_needed), dollars(mix.unused())});
    };
    row("without it", s.today);
    for (const CreditPure& pure : s.pure) {
        if (pure.mix) row(pure_name(pure, s), *pure.mix);
    }
    std::string out = table.text();
    for (const CreditPure& pure : s.pure) {
        if (!pure.mix) out += fmt::format("  {}: {}\n", use_name(pure, s), why_not(pure, ask));
    }
    return out;
}

/// "7 years", or "the loan" where it ends no later.
std::string over(int years, const CreditScenario& s) {
    const Months asked(years * 12);
    return asked >= s.terms.term ? std::string("the whole loan") : term_text(asked);
}

std::string years_table(const CreditScenario& s) {
    std::vector<Column> columns{{"what it costs, with what is owed, after", Align::left, 44, 26}};
    std::size_t told = 0; // a shorter loan ends before the last of the years
    while (told < credit_years.size()) {
        const int years = credit_years[told++];
        columns.push_back({over(years, s), Align::right, 14, 12});
        if (Months(years * 12) >= s.terms.term) break;
    }
    Table table(std::move(columns));
    const auto row = [&](std::string name, const CreditMix& mix) {
        std::vector<std::string> cells{std::move(name)};
        for (std::size_t i = 0; i < told; ++i) cells.push_back(dollars(mix.cost[i]));
        table.row(std::move(cells));
    };
    row("without it", s.today);
    for (const CreditPure& pure : s.pure) {
        if (pure.mix) row(pure_name(pure, s), *pure.mix);
    }
    return "\n" + table.text();
}

/// Why some of it is lost, where it is.
std::string unused_words(const CreditMix& mix) {
    std::string out;
    if (!mix.without_use.is_zero()) {
        out += fmt::format("; {} finds nothing left to pay", dollars(mix.without_use));
    }
    if (!mix.over_cap.is_zero()) {
        out += fmt::format("; {} is over the cap", dollars(mix.over_cap));
    }
    return out;
}

std::string best_text(const char* what, const CreditMix& mix, const CreditScenario& s,
                      const CreditAnswer& answer) {
    std::string uses;
    const auto add = [&](Money amount, const std::string& to) {
        if (!amount.is_zero()) {
            uses += fmt::format("{}{} {}", uses.empty() ? "" : ", ", dollars(amount), to);
        }
    };
    add(mix.off_price, "off the price");
    add(mix.pays[CreditUse::points], fmt::format("to points ({} at {} points)", rate_text(mix.rate),
                                                 fixed(mix.points.value(), 3)));
    add(mix.pays[CreditUse::buydown], fmt::format("to a {} buydown", buydown_name(mix.buydown)));
    add(mix.pays[CreditUse::upfront_fee], "to " + s.upfront_name);
    add(mix.pays[CreditUse::closing_costs], "to closing costs");
    add(mix.pays[CreditUse::prepaids], "to prepaids");
    return paragraph(
        fmt::format(
            "{}: {}{}. Note rate {}, APR {}: {} a month now, {} after three years, {} cash, "
            "{} over {}.",
            what, uses.empty() ? "no use at all" : uses, unused_words(mix), rate_text(mix.rate),
            apr_text(mix.apr), dollars(mix.monthly_now), dollars(mix.monthly_later),
            dollars(mix.cash_needed), dollars(mix.cost_asked), over(answer.ask.years, s)),
        "  ", "    ");
}

std::string bests_text(const CreditScenario& s, const CreditAnswer& answer) {
    std::string out = "\n  The best of every mix\n";
    out += best_text("lowest payment now", s.lowest_payment, s, answer);
    if (s.cash_is_given) {
        out += "  least cash: the down payment takes all the cash there is, whatever the mix\n";
    } else {
        out += best_text("least cash", s.least_cash, s, answer);
    }
    const std::string years = fmt::format("least cost over {}", over(answer.ask.years, s));
    return out + best_text(years.c_str(), s.least_cost, s, answer);
}

/// The mixes between which there is something to choose, thinned where they are many.
std::string frontier_table(const CreditScenario& s, const CreditAsk& ask) {
    constexpr std::size_t most = 16;
    const bool fees = std::any_of(s.frontier.begin(), s.frontier.end(),
                                  [](const CreditMix& mix) { return mix.fee_in_cash; });
    std::vector<Column> columns{{"off the price", Align::right, 11, 10},
                                {"note rate", Align::right, 9, 8},
                                {"APR", Align::right, 9, 8},
                                {"buydown", Align::right, 8, 7}};
    if (fees) columns.push_back({"fee", Align::right, 8, 7});
    columns.insert(columns.end(),
                   {{"pays of points and costs", Align::right, 12, 10},
                    {"a month now", Align::right, 10, 9},
                    {"cash needed", Align::right, 11, 10},
                    {fmt::format("cost over {}", over(ask.years, s)), Align::right, 11, 10}});
    Table table(std::move(columns));
    const std::size_t count = s.frontier.size();
    const std::size_t told = std::min(count, most);
    for (std::size_t i = 0; i < told; ++i) {
        const CreditMix& m = s.frontier[told == 1 ? 0 : i * (count - 1) / (told - 1)];
        std::vector<std::string> cells{dollars(m.off_price), rate_text(m.rate), apr_text(m.apr),
                                       buydown_name(m.buydown)};
        if (fees) cells.emplace_back(m.fee_in_cash ? "in cash" : "");
        for (const Money figure : {m.pays.total(), m.monthly_now, m.cash_needed, m.cost_asked}) {
            cells.push_back(dollars(figure));
        }
        table.row(std::move(cells));
    }
    std::string title = "\n  Mixes that no other beats in month, cash and cost at once";
    if (told < count) title += fmt::format(" ({} of {}, evenly)", told, count);
    return title + "\n" + table.text();
}

std::string scenario_text(const CreditScenario& s, const CreditAnswer& answer) {
    if (!s.available()) return "\n" + refused_lines(s.terms, s.refusals);
    std::string out =
        "\n" + paragraph(fmt::format("{}: {} a month without it. {}", s.terms.name,
                                     dollars(s.today.monthly_now), terms_line(s.terms)),
                         "", "  ");
    out += cap_text(s) + "\n" + month_table(s, answer.ask) + years_table(s);
    return out + bests_text(s, answer) + frontier_table(s, answer.ask);
}

} // namespace

std::string text_of(const CreditAnswer& answer, const Catalogue& say) {
    std::string out = heading_text(
        answer.heading, fmt::format("What {} from the builder can do", dollars(answer.ask.amount)));
    out += fmt::format("contract price without it {}\n", dollars(answer.contract_price));
    for (const CreditScenario& s : answer.scenarios) out += scenario_text(s, answer);
    return out + footing_text(cautions_of(answer, say));
}

} // namespace quoin
