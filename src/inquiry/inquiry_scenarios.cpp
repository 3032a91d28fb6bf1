// Reading the ways to pay of an inquiry.
#include <quoin/text/names.hpp>

#include "inquiry_parts.hpp"

namespace quoin {
namespace {

Months read_term(Reader& item) {
    if (item.has("months")) {
        return Months(item.whole("months", shortest_term.count(), longest_term.count()));
    }
    return Months::years(item.whole("years", 1, longest_term.count() / 12));
}

DownPayment read_down(Reader& scenario) {
    DownPayment down;
    scenario.object(
        "down",
        [&](Reader& item) {
            const int given = item.has("percent") + item.has("amount") + item.has("cash");
            if (given != 1) return item.report(problems::down_payment_unclear(item.here()));
            if (item.has("percent")) {
                down.percent = item.percent("percent");
                if (down.percent < Percent{} || down.percent > Percent(Decimal::whole(100))) {
                    item.report(problems::percent_out_of_range(item.spot("percent"), 0, 100));
                }
                return;
            }
            const bool cash = item.has("cash");
            down.by = cash ? DownPayment::By::cash : DownPayment::By::amount;
            down.amount = item.money(cash ? "cash" : "amount");
            not_negative(item, cash ? "cash" : "amount", down.amount);
        },
        true);
    return down;
}

RateChoice read_rate(Reader& scenario) {
    RateChoice choice;
    scenario.object("rate", [&](Reader& item) {
        if (item.has("quoted")) {
            choice.by = RateChoice::By::quoted;
            choice.note = item.rate("quoted");
            choice.points = Points(item.maybe_decimal("points").value_or(Decimal{}));
        } else if (item.has("note")) {
            choice.by = RateChoice::By::note;
            choice.note = item.rate("note");
        } else {
            choice.points = item.points("points");
        }
    });
    return choice;
}

/// "2-1": two points off in the first year, one in the second.
std::vector<Percent> read_buydown(Reader& item) {
    const auto steps = [](std::initializer_list<int> points) {
        std::vector<Percent> list;
        for (const int point : points) list.emplace_back(Decimal::whole(point));
        return list;
    };
    return item.word_or(
        "buydown",
        Words<std::vector<Percent>>{
            {{}, "none"}, {steps({1}), "1-0"}, {steps({2, 1}), "2-1"}, {steps({3, 2, 1}), "3-2-1"}},
        std::vector<Percent>{});
}

Scenario read_scenario(Reader& item, const Lending& lending, const Inquiry& inquiry) {
    Scenario scenario;
    scenario.name = item.name("name");
    scenario.program = item.name("program");
    look_up(lending.programs, Noun::program, scenario.program, item.spot("program"),
            item.findings());
    scenario.term = read_term(item);
    scenario.lock_days = item.maybe_whole("lock_days", 1, 720).value_or(scenario.lock_days);
    scenario.down = read_down(item);
    scenario.rate = read_rate(item);
    scenario.score = item.maybe_whole("score", 300, 850);
    if (!scenario.score) scenario.score = inquiry.score;
    scenario.finance_fee =
        item.word_or("fee", Words<bool>{{true, "financed"}, {false, "cash"}}, true);
    scenario.use = item.word_or("use",
                                Words<EntitlementUse>{{EntitlementUse::first, "first"},
                                                      {EntitlementUse::subsequent, "subsequent"},
                                                      {EntitlementUse::exempt, "exempt"}},
                                EntitlementUse::first);
    scenario.end_mi_on_request =
        item.word_or("mi_ends", Words<bool>{{false, "automatic"}, {true, "request"}}, false);
    scenario.single_premium =
        item.word_or("mi_premium", Words<bool>{{false, "monthly"}, {true, "single"}}, false);
    scenario.finance_premium = scenario.single_premium && item.has("fee") && scenario.finance_fee;
    scenario.buydown = read_buydown(item);
    scenario.escrow = item.flag_or("escrow", true);
    scenario.extra_principal = item.maybe_money("extra_principal").value_or(Money{});
    not_negative(item, "extra_principal", scenario.extra_principal);
    return scenario;
}

} // namespace

void read_scenarios(Reader& root, const Lending& lending, Inquiry& inquiry) {
    root.each(
        "scenarios",
        [&](Reader& item) {
            Scenario scenario = read_scenario(item, lending, inquiry);
            if (!scenario.name.empty() && inquiry.find_scenario(scenario.name) != nullptr) {
                item.report(problems::scenario_repeated(item.spot("name"), scenario.name));
            }
            inquiry.scenarios.push_back(std::move(scenario));
        },
        true, caps::scenarios);
}

} // namespace quoin
