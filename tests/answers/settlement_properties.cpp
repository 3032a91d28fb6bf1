// A whole settlement of homes, credits and ways to pay drawn from a fixed seed: what comes in goes
// out, no credit pays more than it may, the escrow account holds, and the APR is what it says.
#include <shown.hpp>

#include <algorithm>
#include <map>
#include <vector>

#include <boost/multiprecision/cpp_int.hpp>

#include <quoin/answers/cash.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/loan/actuarial.hpp>

#include "homes.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

using Whole = boost::multiprecision::cpp_int;

/// Inquiries on the shipped example whose credits, dates and scenarios are drawn as well.
class Settlements {
  public:
    explicit Settlements(std::uint64_t seed) : homes_(seed) {}

    Inquiry next() {
        Inquiry inquiry = homes_.next();
        inquiry.closing = plus_days(inquiry.closing, homes_.below(120));
        for (int count = homes_.below(4); count > 0; --count) {
            inquiry.facts.credits.push_back(any_credit());
        }
        if (homes_.below(2) == 0) {
            inquiry.facts.deposits_paid = Money::cents(homes_.below(2'000'000));
        }
        for (Scenario& scenario : inquiry.scenarios) change(scenario);
        return inquiry;
    }
    int below(std::size_t end) { return homes_.below(end); }

  private:
    Credit any_credit() {
        constexpr CreditFrom givers[] = {CreditFrom::builder, CreditFrom::seller,
                                         CreditFrom::lender, CreditFrom::program};
        constexpr CreditUse uses[] = {CreditUse::points, CreditUse::buydown, CreditUse::upfront_fee,
                                      CreditUse::closing_costs, CreditUse::prepaids};
        Credit credit{"drawn", givers[below(4)], Money::cents(below(8'000'000)), {}};
        for (const CreditUse use : uses) {
            if (below(2) == 0) credit.uses.push_back(use);
        }
        const bool down = credit.from == CreditFrom::program && below(2) == 0;
        if (down || credit.uses.empty()) {
            credit.from = CreditFrom::program;
            credit.uses.push_back(CreditUse::down_payment);
        }
        return credit;
    }
    void change(Scenario& scenario) {
        scenario.finance_fee = below(2) == 0;
        scenario.single_premium = below(2) == 0;
        scenario.finance_premium = below(2) == 0;
        scenario.escrow = below(5) != 0;
        if (below(3) == 0) scenario.down.percent = Percent(Decimal::whole(5 + below(25)));
        if (below(2) == 0) scenario.rate.points = Points(Decimal::whole(below(3)));
        if (below(4) == 0) {
            scenario.rate = {RateChoice::By::quoted, Points(Decimal::whole(-1 - below(4))),
                             Rate::percent(Decimal::whole(7)).value()};
        }
        if (below(2) == 0) {
            scenario.buydown = {Percent(Decimal::whole(2)), Percent(Decimal::whole(1))};
        }
    }

    Homes homes_;
};

/// Every available scenario of `count` settlements, with its figures and its answer.
template <class Check>
int for_each_settlement(std::uint64_t seed, int count, Check check) {
    Settlements settlements(seed);
    int checked = 0;
    for (int i = 0; i < count; ++i) {
        const Inquiry inquiry = settlements.next();
        const Sitting sitting(six_programs().desk, inquiry);
        const PricedHome home = price_home(Homes::book(), inquiry.selection);
        for (std::size_t s = 0; s < inquiry.scenarios.size(); ++s) {
            const LoanFigures f = loan_figures(sitting.rules()[s], home, inquiry.facts);
            if (!f.available()) continue;
            CAPTURE(i, inquiry.scenarios[s].name);
            ++checked;
            check(sitting, s, home, f);
        }
    }
    return checked;
}

Money lines_of(const CashAnswer& answer, PaidBy payer) {
    Money sum;
    for (const CostLine& line : answer.costs) {
        if (line.paid_by == payer) sum += line.amount;
    }
    return sum;
}

Money prepaid_of(const CashAnswer& answer) {
    Money sum;
    for (const PrepaidLine& line : answer.prepaids) sum += line.amount;
    return sum;
}

/// What the parties to a drawn settlement offered.
Money given(const PricedHome& home, const PurchaseFacts& facts) {
    Money sum = home.credited();
    for (const Credit& credit : facts.credits) sum += credit.amount;
    return sum;
}

/// Payments less the amount financed at a yearly rate of `rate` / `a_percent` percent, times
/// something above zero: Appendix J(b) in whole numbers, from the last payment back to the advance.
Whole surplus(Money financed, const std::vector<Money>& payments, FirstPeriod first,
              const Whole& rate, std::int64_t a_percent) {
    const Whole base = Whole(a_percent) * 1200;
    const Whole grown = base + rate;
    Whole worth = 0;
    Whole scale = 1;
    for (std::size_t i = payments.size(); i-- > 0;) {
        worth += scale * payments[i].count();
        const int months = i == 0 ? first.months : 1;
        for (int month = 0; month < months; ++month) {
            worth *= base;
            scale *= grown;
        }
    }
    const Whole odd = 30 * base + first.odd_days * rate;
    return worth * 30 * base - scale * odd * financed.count();
}

constexpr std::int64_t millionths = 1'000'000;

/// |worth of the payments at the rate - amount financed| < 1/2 cent.
bool reprices(Money financed, const std::vector<Money>& payments, FirstPeriod first, Decimal apr) {
    std::vector<Money> doubled; // in half cents
    doubled.reserve(payments.size());
    for (const Money payment : payments) doubled.push_back(payment * 2);
    const auto over = [&](Money twice) {
        return surplus(twice, doubled, first, apr.billionths(), Decimal::one);
    };
    return over(financed * 2 - Money::cents(1)) > 0 && over(financed * 2 + Money::cents(1)) < 0;
}

/// The same loan as flows of any kind.
ActuarialProblem as_flows(Money financed, const std::vector<Money>& payments, FirstPeriod first) {
    ActuarialProblem problem;
    problem.advances = {{financed, 0, {}, 1}};
    int period = first.months;
    for (const Money payment : payments) {
        problem.payments.push_back({payment, period++, {first.odd_days, 30}, 1});
    }
    return problem;
}

} // namespace

TEST_CASE("Credits used: no more than given, than there is to pay, than the cap") {
    int capped = 0;
    int left_over = 0;
    const int checked = for_each_settlement(
        101, 400,
        [&](const Sitting& sitting, std::size_t s, const PricedHome& home, const LoanFigures& f) {
            const CreditsUsed& used = f.credits;
            const PurchaseFacts& facts = sitting.inquiry().facts;
            REQUIRE(used.by_use.total() == f.cash[CashPart::credits]);
            REQUIRE(used.by_use.total() + used.over_cap + used.without_use == given(home, facts));
            REQUIRE(used.over_cap >= Money{});
            REQUIRE(used.without_use >= Money{});
            // Use by use, what there is to pay; a lender credit for the rate has paid costs before.
            const CashToClose& cash = f.cash;
            REQUIRE(used.by_use[CreditUse::points] <= std::max(cash[CashPart::points], Money{}));
            REQUIRE(used.by_use[CreditUse::buydown] <= cash[CashPart::buydown]);
            REQUIRE(used.by_use[CreditUse::upfront_fee] <= cash[CashPart::upfront_fee]);
            // Closing costs first, then prepaids; what is left of it reduces the principal.
            const Money prepaids = cash[CashPart::prepaid_interest] +
                                   cash[CashPart::prepaid_bills] + cash[CashPart::escrow];
            const Money lent =
                -std::min(cash[CashPart::points], Money{}) - cash[CashPart::principal_reduction];
            const Money of_costs = std::min(lent, cash[CashPart::closing_costs]);
            REQUIRE(used.by_use[CreditUse::closing_costs] <=
                    cash[CashPart::closing_costs] - of_costs);
            REQUIRE(used.by_use[CreditUse::prepaids] <= prepaids - (lent - of_costs));
            REQUIRE(used.by_use[CreditUse::down_payment] <= cash[CashPart::down_payment]);
            REQUIRE(f.contribution_cap.has_value());
            const bool by_price = sitting.rules()[s].program->policy.cap_by_price;
            const Money cap =
                percent_of(by_price ? f.price : f.value, *f.contribution_cap, Rounding::down);
            REQUIRE(used.interested_parties <= cap);
            // What the cap holds back, it holds back because it is reached.
            if (used.over_cap > Money{}) REQUIRE(used.interested_parties == cap);
            capped += used.over_cap > Money{};
            left_over += used.without_use > Money{};
        });
    CHECK(checked > 1'000);
    CHECK(capped > 20);
    CHECK(left_over > 20);
}

TEST_CASE("Cash in is cash out: the buyer, the loan and the credits pay for everything") {
    int financed_fees = 0;
    int lender_credits = 0;
    const int checked = for_each_settlement(
        102, 120,
        [&](const Sitting& sitting, std::size_t s, const PricedHome&, const LoanFigures& f) {
            const CashAnswer answer = cash(sitting, s);
            Money from_buyer;
            for (const CalendarDay& day : answer.calendar) from_buyer += day.amount;
            Money from_others;
            for (const CreditLine& line : answer.credits) from_others += line.amount;
            const Money points =
                answer.scenario.cash[CashPart::points]; // negative: the lender pays
            const Money in =
                from_buyer + answer.scenario.loan + from_others - std::min(points, Money{});
            Money out = answer.scenario.price + lines_of(answer, PaidBy::buyer) +
                        prepaid_of(answer) + std::max(points, Money{}) +
                        answer.scenario.upfront_fee +
                        answer.scenario.cash[CashPart::principal_reduction];
            if (answer.escrow) out += answer.escrow->account.initial_deposit;
            if (answer.scenario.buydown) out += answer.scenario.buydown->total_subsidy();
            REQUIRE(in == out);
            REQUIRE(answer.scenario.loan == f.base_loan + f.financed_fee);
            // And so do the days: what the calendar asks for is the cash needed.
            REQUIRE(from_buyer == answer.scenario.cash.needed());
            financed_fees += f.financed_fee > Money{};
            lender_credits += points < Money{};
        });
    CHECK(checked > 400);
    CHECK(financed_fees > 50);
    CHECK(lender_credits > 50);
}

TEST_CASE("The calendar runs from the contract to the closing, and no day of it is empty") {
    const int checked = for_each_settlement(
        103, 60, [&](const Sitting& sitting, std::size_t s, const PricedHome&, const LoanFigures&) {
            const CashAnswer answer = cash(sitting, s);
            REQUIRE(std::is_sorted(
                answer.calendar.begin(), answer.calendar.end(),
                [](const CalendarDay& a, const CalendarDay& b) { return a.date < b.date; }));
            for (const CalendarDay& day : answer.calendar) {
                REQUIRE(sitting.inquiry().contract <= day.date);
                REQUIRE(day.date <= sitting.inquiry().closing);
                REQUIRE_FALSE(day.amount.is_zero());
            }
        });
    CHECK(checked > 200);
}

TEST_CASE("An escrow account of a settlement touches its cushion and never goes under") {
    int accounts = 0;
    const int checked = for_each_settlement(
        104, 60,
        [&](const Sitting& sitting, std::size_t s, const PricedHome&, const LoanFigures& f) {
            const CashAnswer answer = cash(sitting, s);
            REQUIRE(answer.escrow.has_value() == sitting.inquiry().scenarios[s].escrow);
            if (!answer.escrow) return;
            ++accounts;
            const EscrowAccount& account = answer.escrow->account;
            REQUIRE(account.initial_deposit == f.escrow_deposit);
            // Run again by the calendar alone: month by month, deposit in, the month's bills out.
            std::map<Date, Money> bills;
            for (const EscrowBill& bill : answer.escrow->bills) {
                bills[first_of_month(bill.due)] += bill.amount;
            }
            Money balance = account.initial_deposit;
            Money lowest = balance;
            for (int month = 0; month < 12; ++month) {
                const Date first = plus_months(account.first_payment, Months(month));
                balance += account.deposit - bills[first_of_month(first)];
                lowest = std::min(lowest, balance);
            }
            REQUIRE(lowest == account.cushion);
            // 12 CFR 1024.17(c)(1): at most a sixth of the year's bills.
            REQUIRE(account.cushion * 6 <= account.yearly);
        });
    CHECK(checked > 200);
    CHECK(accounts > 150);
}

TEST_CASE("APR of a settlement re-prices its loan, by exact fractions") {
    const int checked = for_each_settlement(
        105, 24,
        [&](const Sitting& sitting, std::size_t s, const PricedHome&, const LoanFigures& f) {
            const CostOfCredit cost = cost_of_credit(sitting.rules()[s], f);
            const std::vector<Money> payments = disclosed_payments(f);
            REQUIRE(cost.apr.has_value());
            const auto over = [&](std::int64_t rate) {
                return surplus(cost.amount_financed, payments, cost.first_period, rate, millionths);
            };
            // A millionth of a percent moves a loan by some cents: the APR is the last one at which
            // the payments are still worth the amount financed.
            const std::int64_t apr = cost.apr->millionths();
            CAPTURE(cost.amount_financed, apr);
            REQUIRE(over(apr) >= 0);
            REQUIRE(over(apr + 1) < 0);
            // With eight decimals it is worth it to less than half a cent.
            const ActuarialSolution finer =
                solve(as_flows(cost.amount_financed, payments, cost.first_period));
            REQUIRE(finer.trouble == ActuarialTrouble::none);
            REQUIRE(finer.apr.billionths() / 1000 == apr);
            REQUIRE(reprices(cost.amount_financed, payments, cost.first_period, finer.apr));
            REQUIRE(cost.amount_financed + cost.prepaid_finance_charge ==
                    f.loan - f.cash[CashPart::principal_reduction]);
            Money paid;
            for (const Money payment : payments) paid += payment;
            REQUIRE(cost.finance_charge == paid - cost.amount_financed);
        });
    CHECK(checked > 80);
}

TEST_CASE("Without charges the APR is the note rate") {
    int checked = 0;
    Settlements settlements(107);
    for (int i = 0; i < 40; ++i) {
        Inquiry inquiry = settlements.next();
        inquiry.facts.credits.clear();
        for (Scenario& scenario : inquiry.scenarios) scenario.rate.by = RateChoice::By::points;
        const Sitting sitting(six_programs().desk, inquiry);
        const PricedHome home = price_home(Homes::book(), inquiry.selection);
        for (std::size_t s = 0; s < inquiry.scenarios.size(); ++s) {
            const LoanFigures f = loan_figures(sitting.rules()[s], home, inquiry.facts);
            if (!f.available()) continue;
            ++checked;
            std::vector<Money> payments; // principal and interest alone, from a month on
            for (int month = 1; month <= f.schedule.months(); ++month) {
                payments.push_back(f.schedule.row(month).payment);
            }
            const auto apr = annual_percentage_rate(f.loan, payments);
            REQUIRE(apr.has_value());
            CAPTURE(f.loan, f.rate, *apr);
            // Interest is rounded to the cent each month, which the last digits show.
            const std::int64_t apart = apr->millionths() - f.rate.millionths();
            REQUIRE(std::abs(apart) <= 20);
            REQUIRE(divide_rounded<std::int64_t>(apr->millionths(), 1000, Rounding::half_away) *
                        1000 ==
                    f.rate.millionths());
        }
    }
    CHECK(checked > 100);
}

TEST_CASE("More points, a lower note rate and payment, more cash") {
    // Along a ladder, on one home with the same down payment.
    int steps = 0;
    const int checked = for_each_settlement(
        108, 20,
        [&](const Sitting& sitting, std::size_t s, const PricedHome& home, const LoanFigures& f) {
            const ScenarioRules& rules = sitting.rules()[s];
            Scenario scenario = rules.scenario;
            scenario.buydown.clear();
            PurchaseFacts value; // the value without the credits
            value.appraised_value = sitting.inquiry().facts.appraised_value;
            std::optional<LoanFigures> was;
            for (const Rung& rung : rules.ladder->rungs) { // rates rise, points fall
                scenario.rate = {RateChoice::By::note, {}, rung.rate};
                LoanFigures now = loan_figures(rules.with(scenario), home, value);
                REQUIRE(now.available());
                REQUIRE(now.loan == f.loan);
                if (was) {
                    ++steps;
                    REQUIRE(now.monthly[MonthPart::principal_and_interest] >
                            was->monthly[MonthPart::principal_and_interest]);
                    REQUIRE(now.cash[CashPart::points] <= was->cash[CashPart::points]);
                    // Prepaid interest aside, which rises with the rate.
                    REQUIRE(now.cash.needed() - now.cash[CashPart::prepaid_interest] <=
                            was->cash.needed() - was->cash[CashPart::prepaid_interest]);
                }
                was = std::move(now);
            }
        });
    CHECK(checked > 60);
    CHECK(steps > 400);
}

TEST_CASE("A quoted point costs a hundredth of the loan and raises the APR, not the payment") {
    int compared = 0;
    for_each_settlement(
        109, 20,
        [&](const Sitting& sitting, std::size_t s, const PricedHome& home, const LoanFigures&) {
            Scenario scenario = sitting.rules()[s].scenario;
            scenario.rate = {RateChoice::By::quoted, Points{}, rate("6.375")};
            const ScenarioRules plain = sitting.rules()[s].with(scenario);
            const LoanFigures without = loan_figures(plain, home, {});
            scenario.rate.points = Points(Decimal::whole(1));
            const ScenarioRules pointed = plain.with(scenario);
            const LoanFigures with = loan_figures(pointed, home, {});
            if (!with.available()) return; // without the low appraisal, a loan over its limit
            REQUIRE(with.cash[CashPart::points] ==
                    percent_of(with.loan, Percent(Decimal::whole(1)), Rounding::half_away));
            ++compared;
            REQUIRE(with.monthly == without.monthly);
            if (home.given_to(IncentiveUse::points).is_zero() &&
                home.given_to(IncentiveUse::closing_costs).is_zero()) {
                REQUIRE(with.cash.needed() - without.cash.needed() == with.cash[CashPart::points]);
            }
            const CostOfCredit less = cost_of_credit(plain, without);
            const CostOfCredit more = cost_of_credit(pointed, with);
            const Money sellers = // 12 CFR 1026.4(c)(5)
                with.credits.sellers_points - without.credits.sellers_points;
            REQUIRE(more.finance_charge - less.finance_charge ==
                    with.cash[CashPart::points] - sellers);
            REQUIRE((more.apr.value() > less.apr.value()) ==
                    (sellers < with.cash[CashPart::points]));
        });
    CHECK(compared > 60);
}

TEST_CASE("A dearer home never costs less a month or in cash, while the same rows of tables hold") {
    int compared = 0;
    for_each_settlement(
        110, 60,
        [&](const Sitting& sitting, std::size_t s, const PricedHome& home, const LoanFigures&) {
            // A share of the price down, points of no less than nothing, and no credit: these three
            // can turn it round, as where a contribution cap of 6% grows faster than 3.5% down.
            Scenario scenario = sitting.rules()[s].scenario;
            scenario.rate = {RateChoice::By::quoted, Points(Decimal::whole(1)), rate("6.125")};
            const ScenarioRules rules = sitting.rules()[s].with(scenario);
            PricedHome dearer = home;
            dearer.given.clear();
            const LoanFigures was = loan_figures(rules, dearer, {});
            dearer.contract_price += Money::dollars(1'000);
            const LoanFigures now = loan_figures(rules, dearer, {});
            if (!was.available() || !now.available() || was.rows != now.rows) return;
            ++compared;
            REQUIRE(now.loan >= was.loan);
            REQUIRE(now.monthly.total() >= was.monthly.total());
            REQUIRE(now.cash.needed() >= was.cash.needed());
            REQUIRE(now.paid_over_loan() > was.paid_over_loan());
        });
    CHECK(compared > 200);
}
