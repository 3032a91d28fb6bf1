// Answering whether to do it now or later.
#include <quoin/answers/later.hpp>

#include <algorithm>

#include "add_item.hpp"
#include <quoin/answers/cost_order.hpp>
#include <quoin/exact/broken.hpp>
#include <quoin/home/rules.hpp>

namespace quoin {
namespace {

/// What the home with a way has taken and owes more, through each month.
std::vector<Money> cost_of(const LoanFigures& with, const LoanFigures& without) {
    std::vector<Money> cost;
    const int months = std::max(with.paid_schedule().months(), without.paid_schedule().months());
    for (int month = 0; month <= months; ++month) {
        cost.push_back(with.paid_through(month) + with.paid_schedule().balance(month) -
                       without.paid_through(month) - without.paid_schedule().balance(month));
    }
    return cost;
}

LaterPath builder_path(LaterWay way, const LoanFigures& with, const LoanFigures& without) {
    LaterPath path;
    path.way = way;
    path.refusals = with.refusals;
    if (!path.available()) return path;
    path.at_closing = with.cash.needed() - without.cash.needed();
    path.a_month = with.monthly.total() - without.monthly.total();
    path.months = with.paid_schedule().months();
    path.cost = cost_of(with, without);
    return path;
}

/// The same loan as without the option: the down payment makes up the price.
LoanFigures in_cash(const ScenarioRules& rules, const PricedHome& home, const LoanFigures& without,
                    const PurchaseFacts& facts) {
    Scenario scenario = rules.scenario;
    scenario.down.by = DownPayment::By::amount;
    scenario.down.amount = home.contract_price - without.base_loan;
    LoanFigures figures = loan_figures(rules.with(scenario), home, facts);
    ensure(!figures.available() || figures.base_loan == without.base_loan,
           "what is paid in cash leaves the loan as it was");
    return figures;
}

LaterPath after_path(Money estimate, int month, int months) {
    LaterPath path;
    path.way = LaterWay::after;
    for (int through = 0; through <= months; ++through) {
        path.cost.push_back(through < month ? Money{} : estimate);
    }
    return path;
}

/// Interest of a personal loan is its cost over the estimate; what is owed counts as spent.
LaterPath lent_path(Money estimate, int month, int months, const PersonalLoan& loan) {
    const Schedule schedule = amortize({estimate, loan.rate, loan.term});
    LaterPath path;
    path.way = LaterWay::after_lent;
    path.a_month = schedule.payment();
    path.months = schedule.months();
    for (int through = 0; through <= months; ++through) {
        const int paid = std::max(through - month, 0);
        const Money so_far = schedule.paid_through(paid) + schedule.balance(paid);
        ensure(so_far >= estimate, "a personal loan costs no less than what it pays for");
        path.cost.push_back(through < month ? Money{} : so_far);
    }
    return path;
}

/// Where `dearer` has cost more than another way; what is paid at the closing is told by itself.
void add_break_even(const LaterPath& dearer, const LaterPath& than, LaterScenario& out) {
    for (const CostStretch& stretch : cost_order(dearer.cost, than.cost, 1)) {
        if (stretch.cheaper != Cheaper::second) continue;
        out.break_even.push_back({dearer.way, than.way, stretch.from, stretch.to});
    }
}

LaterScenario later_scenario(const Sitting& sitting, std::size_t i, const PricedHome& without,
                             const PricedHome& with, const LaterItem& item,
                             const LaterFacts& facts) {
    const ScenarioRules& rules = sitting.rules()[i];
    const PurchaseFacts& purchase = sitting.inquiry().facts;
    const LoanFigures base = loan_figures(rules, without, purchase);
    LaterScenario out;
    const ScenarioAnswer answer = scenario_answer(sitting, rules, base);
    out.terms = answer.terms;
    out.refusals = base.refusals;
    if (!base.available()) return out;
    out.monthly = base.monthly.total();
    if (!item.why_not) {
        out.paths.push_back(
            builder_path(LaterWay::financed, loan_figures(rules, with, purchase), base));
        out.paths.push_back(
            builder_path(LaterWay::cash, in_cash(rules, with, base, purchase), base));
    }
    int months = base.paid_schedule().months();
    for (const LaterPath& path : out.paths) months = std::max(months, path.months);
    if (item.later) {
        out.paths.push_back(after_path(item.later->estimate, facts.month, months));
        if (facts.loan) {
            out.paths.push_back(lent_path(item.later->estimate, facts.month, months, *facts.loan));
        }
    }
    for (const LaterPath& a : out.paths) {
        for (const LaterPath& b : out.paths) {
            if (a.way != b.way && a.available() && b.available()) add_break_even(a, b, out);
        }
    }
    return out;
}

/// The estimate for as many as are asked about.
std::optional<Later> later_of(const Option& option, const Pick& pick, Index<Plan> plan) {
    std::optional<Later> later = option.later;
    if (later && later->each) {
        later->estimate =
            times(later->estimate, quantity_of(option, pick, plan), Rounding::half_away);
    }
    return later;
}

LaterItem later_item(const Sitting& sitting, const Pick& pick, const LaterFacts& facts) {
    const PriceBook& book = sitting.book();
    const Selection& chosen = sitting.inquiry().selection;
    const Option& option = at(book.options, pick.option);
    LaterItem item;
    item.id = name_of(book, {pick.option, pick.level});
    item.name = option.name;
    item.level = level_name(option, pick.level);
    item.later = later_of(option, pick, chosen.plan);
    item.work = option.work;
    item.structural = option.structural;
    const bool present = chosen.find(pick.option) != nullptr;
    const Selection without =
        present ? without_option(book, chosen, pick.option).selection : chosen;
    const Change change = with_pick(book, without, pick);
    if (!change.blocked.empty())
        item.why_not = why_not(book, change.blocked.front(), Naming::names);
    const PricedHome bare = price_home(book, without);
    const PricedHome with = price_home(book, change.blocked.empty() ? change.selection : without);
    item.price = with.contract_price - bare.contract_price;
    for (std::size_t i = 0; i < sitting.rules().size(); ++i) {
        item.scenarios.push_back(later_scenario(sitting, i, bare, with, item, facts));
    }
    return item;
}

} // namespace

LaterAnswer later(const Sitting& sitting, const std::vector<Pick>& asked, const LaterFacts& facts) {
    ensure(facts.month >= 1, "work is paid with the first payment or a later one");
    LaterAnswer answer;
    answer.heading = heading_of(sitting);
    answer.facts = facts;
    for (const Pick& pick : asked) answer.items.push_back(later_item(sitting, pick, facts));
    return answer;
}

} // namespace quoin
