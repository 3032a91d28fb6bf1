// A builder's money on drawn homes: it adds up, keeps to the cap and to what there is to pay, each
// mix comes out the same by another way, and no plain search finds a better one.
#include <shown.hpp>

#include <algorithm>
#include <functional>

#include <quoin/answers/credit.hpp>
#include <quoin/render/answers.hpp>

#include "homes.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const std::vector<CreditUse> every_cost = {CreditUse::points, CreditUse::buydown,
                                           CreditUse::upfront_fee, CreditUse::closing_costs,
                                           CreditUse::prepaids};

/// A split worked out without the answer's own code: month by month.
struct Tried {
    bool available = false;
    Money monthly_now;
    Money monthly_later;
    Money cash;
    Money own;
    Money cost;
    CreditsUsed used;
    CashToClose bill;
    std::optional<Money> cap;
};

struct Attempt {
    Money amount;
    Money off;
    std::optional<Rate> rate;
    std::vector<Percent> buydown;
    bool fee_in_cash = false;
    std::vector<CreditUse> uses;
    int years = 7;
};

Money in_month(const LoanFigures& f, const std::vector<Money>& payments, int month) {
    const Money local = f.monthly.total() - f.monthly[MonthPart::principal_and_interest] -
                        f.monthly[MonthPart::mortgage_insurance];
    Money paid = local;
    if (month > f.schedule.months()) return paid;
    paid += payments[static_cast<std::size_t>(month - 1)];
    if (month <= f.insurance.months()) paid += f.insurance.in_month(month);
    if (f.buydown && month <= f.buydown->months()) {
        paid -= f.buydown->subsidy_in_month(month);
    }
    return paid;
}

Tried attempt(const Sitting& sitting, std::size_t index, const Attempt& a) {
    PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    home.contract_price -= a.off;
    Scenario scenario = sitting.rules()[index].scenario;
    if (a.rate) scenario.rate = {RateChoice::By::note, {}, *a.rate};
    scenario.buydown = a.buydown;
    if (a.fee_in_cash) scenario.finance_fee = false;
    if (a.fee_in_cash) scenario.single_premium = true;
    const ScenarioRules rules = sitting.rules()[index].with(scenario);
    PurchaseFacts facts = sitting.inquiry().facts;
    if (!a.uses.empty()) {
        facts.credits.push_back({"", CreditFrom::builder, a.amount - a.off, a.uses});
    }
    const LoanFigures f = loan_figures(rules, home, facts);
    Tried tried;
    tried.available = f.available();
    if (!tried.available) return tried;
    const std::vector<Money> payments = f.schedule.payments();
    tried.monthly_now = in_month(f, payments, 1);
    tried.monthly_later = in_month(f, payments, 37);
    tried.cash = f.cash.needed();
    tried.own = f.cash.needed() - f.cash[CashPart::down_payment];
    const int months = std::min(a.years * 12, f.schedule.months());
    tried.cost = tried.cash + f.schedule.balance(months);
    for (int month = 1; month <= months; ++month) tried.cost += in_month(f, payments, month);
    tried.used = f.credits;
    tried.bill = f.cash;
    if (f.contribution_cap) {
        const bool by_price = rules.program->policy.cap_by_price;
        tried.cap = percent_of(by_price ? f.price : f.value, *f.contribution_cap, Rounding::down);
    }
    return tried;
}

/// Inquiries on the example with points, buydowns and credits of others drawn as well.
class Asks {
  public:
    explicit Asks(std::uint64_t seed) : homes_(seed) {}
    Inquiry next() {
        Inquiry inquiry = homes_.next();
        for (Scenario& scenario : inquiry.scenarios) change(scenario);
        if (homes_.below(3) == 0) {
            inquiry.facts.credits.push_back({"drawn",
                                             CreditFrom::seller,
                                             Money::cents(homes_.below(1'500'000)),
                                             {CreditUse::closing_costs, CreditUse::points}});
        }
        ask.amount = Money::cents(1 + homes_.below(2'500'000));
        ask.years = 1 + homes_.below(30);
        return inquiry;
    }
    CreditAsk ask;

  private:
    void change(Scenario& scenario) {
        if (homes_.below(3) == 0) scenario.rate.points = Points(Decimal::whole(homes_.below(3)));
        if (homes_.below(5) == 0) scenario.buydown = {Percent(Decimal::whole(1))};
        if (homes_.below(4) == 0) {
            scenario.down = {DownPayment::By::amount, {}, Money::dollars(homes_.below(90'000))};
        }
        if (homes_.below(4) == 0) {
            scenario.down = {
                DownPayment::By::cash, {}, Money::dollars(30'000 + homes_.below(150'000))};
        }
        if (homes_.below(8) == 0) scenario.rate = {RateChoice::By::quoted, {}, rate("6.4")};
    }
    Homes homes_;
};

using Check =
    std::function<void(const Sitting&, std::size_t, const CreditScenario&, const CreditAsk&)>;

int for_each_answer(std::uint64_t seed, int count, const Check& check) {
    Asks asks(seed);
    int checked = 0;
    for (int i = 0; i < count; ++i) {
        const Inquiry inquiry = asks.next();
        const Sitting sitting(six_programs().desk, inquiry);
        const CreditAnswer answer = credit(sitting, asks.ask);
        REQUIRE(answer.scenarios.size() == inquiry.scenarios.size());
        for (std::size_t s = 0; s < answer.scenarios.size(); ++s) {
            if (!answer.scenarios[s].available()) continue;
            check(sitting, s, answer.scenarios[s], asks.ask);
            ++checked;
        }
    }
    return checked;
}

std::vector<CreditMix> mixes_in(const CreditScenario& s) {
    std::vector<CreditMix> mixes = s.frontier;
    mixes.insert(mixes.end(), {s.lowest_payment, s.least_cash, s.least_cost});
    return mixes;
}

Attempt attempt_of(const CreditMix& mix, const CreditScenario& s, const CreditAsk& ask) {
    return {ask.amount,  mix.off_price,   s.rate_is_given ? std::nullopt : std::optional(mix.rate),
            mix.buydown, mix.fee_in_cash, every_cost,
            ask.years};
}

/// Rates from today's down, every buydown that is offered, and fees in cash or not.
template <class Try>
void for_each_way(const Sitting& sitting, std::size_t index, const CreditScenario& s,
                  Try attempt_one) {
    const ScenarioRules& rules = sitting.rules()[index];
    std::vector<std::optional<Rate>> rates{std::nullopt};
    if (!s.rate_is_given) {
        rates = {s.today.rate};
        for (const Rung& rung : rules.ladder->rungs) {
            if (rung.rate < s.today.rate) rates.emplace_back(rung.rate);
        }
    }
    std::vector<std::vector<Percent>> buydowns{rules.scenario.buydown};
    for (int years = 1; years <= 3; ++years) {
        std::vector<Percent> steps;
        for (int left = years; left > 0; --left) steps.emplace_back(Decimal::whole(left));
        buydowns.push_back(steps);
    }
    for (const auto& rate : rates) {
        for (const auto& buydown : buydowns) {
            attempt_one(rate, buydown, false);
            attempt_one(rate, buydown, true);
        }
    }
}

} // namespace

TEST_CASE("A builder's money: what is used and what is not make the amount") {
    const int checked = for_each_answer(
        11, 20, [](const Sitting&, std::size_t, const CreditScenario& s, const CreditAsk& ask) {
            for (const CreditMix& mix : mixes_in(s)) {
                CHECK(mix.used() + mix.unused() == ask.amount);
            }
            for (const CreditPure& pure : s.pure) {
                if (!pure.mix) continue;
                CHECK(pure.mix->used() + pure.mix->unused() == ask.amount);
            }
            CHECK(s.today.used() + s.today.unused() == Money{});
        });
    CHECK(checked > 50);
}

TEST_CASE("A builder's money: every mix comes out the same by another way, within cap and bill") {
    const int checked = for_each_answer(
        12, 20,
        [](const Sitting& sitting, std::size_t i, const CreditScenario& s, const CreditAsk& ask) {
            const Tried today =
                attempt(sitting, i, {ask.amount, {}, {}, s.today.buydown, false, {}, ask.years});
            CHECK(today.monthly_now == s.today.monthly_now);
            CHECK(today.cost == s.today.cost_asked);
            for (const CreditMix& mix : mixes_in(s)) {
                const Tried again = attempt(sitting, i, attempt_of(mix, s, ask));
                REQUIRE(again.available);
                CHECK(again.monthly_now == mix.monthly_now);
                CHECK(again.monthly_later == mix.monthly_later);
                CHECK(again.cash == mix.cash_needed);
                CHECK(again.cost == mix.cost_asked);
                if (again.cap) CHECK(again.used.interested_parties <= *again.cap);
                CHECK(again.used.by_use[CreditUse::points] <=
                      std::max(again.bill[CashPart::points], Money{}));
                CHECK(again.used.by_use[CreditUse::buydown] <= again.bill[CashPart::buydown]);
                CHECK(again.used.by_use[CreditUse::upfront_fee] <=
                      again.bill[CashPart::upfront_fee]);
                CHECK(again.used.by_use[CreditUse::closing_costs] <=
                      again.bill[CashPart::closing_costs]);
                CHECK(mix.pays[CreditUse::down_payment] == Money{});
            }
        });
    CHECK(checked > 50);
}

TEST_CASE("A builder's money: no mix of the frontier beats another, and the best are on it") {
    const int checked = for_each_answer(
        13, 20, [](const Sitting&, std::size_t, const CreditScenario& s, const CreditAsk&) {
            REQUIRE_FALSE(s.frontier.empty());
            for (const CreditMix& a : s.frontier) {
                for (const CreditMix& b : s.frontier) CHECK_FALSE(dominates(a, b));
                CHECK(s.lowest_payment.monthly_now <= a.monthly_now);
                CHECK(s.least_cash.cash_needed <= a.cash_needed);
                CHECK(s.least_cost.cost_asked <= a.cost_asked);
            }
            const auto on_it = [&](const CreditMix& best) {
                return std::none_of(s.frontier.begin(), s.frontier.end(),
                                    [&](const CreditMix& mix) { return dominates(mix, best); });
            };
            CHECK(on_it(s.lowest_payment));
            CHECK(on_it(s.least_cash));
            CHECK(on_it(s.least_cost));
        });
    CHECK(checked > 50);
}

TEST_CASE("A builder's money: the best are no worse than any on a grid of one percent") {
    const int checked = for_each_answer(
        14, 2,
        [](const Sitting& sitting, std::size_t i, const CreditScenario& s, const CreditAsk& ask) {
            const Tried today =
                attempt(sitting, i, {ask.amount, {}, {}, s.today.buydown, false, {}, ask.years});
            const Money dollar = Money::dollars(1);
            for_each_way(
                sitting, i, s,
                [&](std::optional<Rate> rate, const std::vector<Percent>& buydown, bool fee) {
                    for (int percent = 0; percent <= 100; ++percent) {
                        const Money off =
                            to_dollars(percent_of(ask.amount, Percent(Decimal::whole(percent)),
                                                  Rounding::down),
                                       Rounding::down);
                        const Tried tried =
                            attempt(sitting, i,
                                    {ask.amount, off, rate, buydown, fee, every_cost, ask.years});
                        if (!tried.available || tried.own > today.own) continue;
                        CHECK(s.lowest_payment.monthly_now <= tried.monthly_now);
                        CHECK(s.least_cash.cash_needed <= tried.cash + dollar);
                        CHECK(s.least_cost.cost_asked <= tried.cost + dollar);
                    }
                });
        });
    CHECK(checked > 5);
}

TEST_CASE("A builder's money: each use by itself pays that and nothing else") {
    const int checked = for_each_answer(
        15, 20, [](const Sitting&, std::size_t, const CreditScenario& s, const CreditAsk& ask) {
            REQUIRE(s.pure.size() == 7);
            for (const CreditPure& pure : s.pure) {
                if (!pure.mix) continue;
                const CreditAmounts& pays = pure.mix->pays;
                const bool price = pure.way == CreditWay::off_price;
                CHECK(pure.mix->off_price == (price ? ask.amount : Money{}));
                const Money points = pays[CreditUse::points];
                const Money buydown = pays[CreditUse::buydown];
                const Money costs = pays[CreditUse::closing_costs] + pays[CreditUse::prepaids];
                if (pure.way != CreditWay::points) CHECK(points == Money{});
                if (pure.way < CreditWay::buydown_1_0) CHECK(buydown == Money{});
                if (pure.way != CreditWay::costs) CHECK(costs == Money{});
                const Money fee = pays[CreditUse::upfront_fee];
                if (pure.way == CreditWay::upfront_fee) CHECK(pure.mix->used() == fee);
                if (pure.way != CreditWay::upfront_fee && pure.way != CreditWay::off_price) {
                    CHECK(fee == Money{});
                }
            }
        });
    CHECK(checked > 50);
}

TEST_CASE("A builder's money of one cent, and of nearly the whole price") {
    Inquiry inquiry = six_programs().inquiry;
    const Sitting sitting(six_programs().desk, inquiry);
    const CreditAnswer cent = credit(sitting, {Money::cents(1), 7});
    for (const CreditScenario& s : cent.scenarios) {
        REQUIRE(s.available());
        CHECK(s.least_cost.used() + s.least_cost.unused() == Money::cents(1));
    }
    const CreditAnswer most = credit(sitting, {cent.contract_price - Money::cents(1), 7});
    for (const CreditScenario& s : most.scenarios) {
        CHECK(s.least_cost.used() + s.least_cost.unused() == most.ask.amount);
    }
}

TEST_CASE("A builder's money: what a quoted rate and given cash leave out is said") {
    Inquiry inquiry = six_programs().inquiry;
    inquiry.scenarios.resize(1);
    inquiry.scenarios[0].rate = {RateChoice::By::quoted, Points{}, rate("6.375")};
    inquiry.scenarios[0].down = {DownPayment::By::cash, {}, Money::dollars(90'000)};
    const Sitting sitting(six_programs().desk, inquiry);
    const CreditAnswer answer = credit(sitting, {Money::dollars(8000), 7});
    const CreditScenario& s = answer.scenarios.at(0);
    REQUIRE(s.available());
    CHECK(s.rate_is_given);
    CHECK(s.cash_is_given);
    CHECK(s.lowest_payment.rate == rate("6.375"));
    const std::string text = text_of(answer);
    CHECK(text.find("takes all the cash you have") != std::string::npos);
    CHECK(text.find("You may choose any lender") != std::string::npos);
    CHECK(text.find("no lower rate is available") != std::string::npos);
}

TEST_CASE("A builder's money: a mix tells whether every incentive of the home may be used so") {
    const Sitting sitting(six_programs().desk, six_programs().inquiry);
    const CreditAnswer answer = credit(sitting, {Money::dollars(7500), 7});
    // One gives options and closing costs, the other closing costs and points.
    CHECK(answer.any_incentive);
    CHECK(answer.allowed_uses == std::vector<IncentiveUse>{IncentiveUse::closing_costs});
    int allowed = 0;
    int forbidden = 0;
    for (const CreditScenario& s : answer.scenarios) {
        for (const CreditPure& pure : s.pure) {
            if (!pure.mix) continue;
            const bool costs = pure.way == CreditWay::costs || pure.way == CreditWay::upfront_fee;
            CHECK(pure.mix->every_incentive_allows == costs);
            ++(costs ? allowed : forbidden);
        }
        for (const CreditMix& mix : s.frontier) {
            const Money elsewhere =
                mix.off_price + mix.pays[CreditUse::points] + mix.pays[CreditUse::buydown];
            CHECK(mix.every_incentive_allows == elsewhere.is_zero());
        }
        CHECK_FALSE(s.lowest_payment.every_incentive_allows);
    }
    CHECK(allowed >= 6);
    CHECK(forbidden >= 6);
}

TEST_CASE("A builder's money: where no incentive is given on the home none forbids a use") {
    Inquiry inquiry = six_programs().inquiry;
    inquiry.selection.incentives.clear();
    Desk desk = six_programs().desk;
    desk.book.incentives.clear();
    const Sitting sitting(desk, inquiry);
    const CreditAnswer answer = credit(sitting, {Money::dollars(7500), 7});
    CHECK_FALSE(answer.any_incentive);
    CHECK(answer.scenarios.at(0).lowest_payment.every_incentive_allows);
}
