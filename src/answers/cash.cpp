// Answering what cash a scenario takes.
#include <quoin/answers/cash.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

std::vector<CostLine> cost_lines(const ScenarioRules& rules, const LoanFigures& f) {
    const CostCase on = rules.closing_costs.on(f.loan, f.price);
    std::vector<CostLine> lines;
    for (const ClosingCost* cost : rules.closing_costs.all()) {
        lines.push_back({cost->section, cost->name, amount_of(*cost, on), cost->paid_by,
                         cost->finance_charge, cost->before_closing});
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const CostLine& a, const CostLine& b) { return a.section < b.section; });
    return lines;
}

std::vector<PrepaidLine> prepaid_lines(const ScenarioRules& rules, const LoanFigures& f) {
    std::vector<PrepaidLine> lines;
    const auto add = [&](PrepaidLine line) {
        if (!line.amount.is_zero()) lines.push_back(line);
    };
    const PrepaidInterest& interest = f.prepaid_interest;
    add({Prepaid::interest, interest.days, interest.per_day, {}, interest.total()});
    add({Prepaid::insurance,
         rules.place->escrow.prepaid_insurance_months,
         {},
         {},
         f.prepaids.insurance});
    for (const HousingBill& bill : housing_bills(*rules.place, f.local, rules.closing,
                                                 rules.closing, rules.first_payment, false)) {
        if (!bill.is_tax()) continue;
        lines.push_back({Prepaid::property_tax, 0, {}, bill.due, bill.amount});
    }
    return lines;
}

std::vector<CreditLine> credit_lines(const LoanFigures& f) {
    std::vector<CreditLine> lines;
    for (const CreditUse use : credit_uses) {
        const Money amount = f.credits.by_use[use];
        if (!amount.is_zero()) lines.push_back({use, amount});
    }
    return lines;
}

ValueEffects effects_of(const LoanFigures& f) {
    ValueEffects effects;
    effects.appraisal_gap = f.price - f.value;
    effects.over_cap = f.credits.over_cap;
    effects.ltv_if_given = shown_ltv(f.base_loan, f.value - f.credits.over_cap);
    return effects;
}

template <class Line>
Money sum_of(const std::vector<Line>& lines) {
    Money sum;
    for (const Line& line : lines) sum += line.amount;
    return sum;
}

/// The promise of the lists: each sums to its part of the cash.
void check(const CashAnswer& answer, const LoanFigures& f) {
    Money costs;
    for (const CostLine& line : answer.costs) {
        if (line.paid_by == PaidBy::buyer) costs += line.amount;
    }
    ensure_equal(costs, f.cash[CashPart::closing_costs],
                 "the buyer's lines of costs sum to the closing costs");
    ensure_equal(sum_of(answer.prepaids),
                 f.cash[CashPart::prepaid_interest] + f.cash[CashPart::prepaid_bills],
                 "prepaids sum to the interest and the bills in the cash");
    ensure_equal(sum_of(answer.credits), f.cash[CashPart::credits],
                 "credits by use sum to those in the cash");
    ensure_equal(answer.escrow ? answer.escrow->account.initial_deposit : Money{},
                 f.cash[CashPart::escrow], "the escrow account opens with the deposit in the cash");
    ensure(answer.effects.appraisal_gap >= Money{}, "no home is valued over its price");
}

/// Earnest money at contract, option money with it, costs ordered before closing, the rest at
/// closing.
std::vector<CalendarDay> calendar_of(const Sitting& sitting, const CashAnswer& answer,
                                     const PricedHome& home) {
    const Inquiry& inquiry = sitting.inquiry();
    const CashToClose& cash = answer.scenario.cash;
    std::vector<CalendarDay> days;
    const auto add = [&](Date date, CashDue what, Money amount) {
        if (!amount.is_zero()) days.push_back({date, what, amount});
    };
    if (inquiry.facts.deposits_paid) {
        add(inquiry.contract, CashDue::deposits, cash[CashPart::deposits]);
    } else {
        add(inquiry.contract, CashDue::earnest_money, home.earnest_deposit);
        add(inquiry.contract, CashDue::option_share, home.option_deposit);
    }
    Money early;
    for (const CostLine& line : answer.costs) {
        if (line.before_closing && line.paid_by == PaidBy::buyer) early += line.amount;
    }
    add(inquiry.contract, CashDue::costs_when_ordered, early);
    add(inquiry.closing, CashDue::closing, cash.to_close() - early);
    Money sum;
    for (const CalendarDay& day : days) sum += day.amount;
    ensure_equal(sum, cash.needed(), "the cash calendar sums to the cash needed");
    return days;
}

} // namespace

CashAnswer cash(const Sitting& sitting, std::size_t scenario) {
    const ScenarioRules& rules = sitting.rules(scenario);
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    const LoanFigures f = loan_figures(rules, home, sitting.inquiry().facts);
    CashAnswer answer;
    answer.heading = heading_of(sitting);
    answer.scenario = scenario_answer(sitting, rules, f);
    if (!f.available()) return answer;
    answer.costs = cost_lines(rules, f);
    answer.prepaids = prepaid_lines(rules, f);
    answer.escrow = housing_escrow(rules, f.local);
    answer.credits = credit_lines(f);
    answer.contribution_cap = f.contribution_cap;
    answer.cap_by_price = rules.program->policy.cap_by_price;
    answer.effects = effects_of(f);
    check(answer, f);
    answer.calendar = calendar_of(sitting, answer, home);
    return answer;
}

} // namespace quoin
