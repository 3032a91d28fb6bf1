// Answering what a builder's money does in each of its uses, and in the best mix of them.
#include <quoin/answers/credit.hpp>

#include <algorithm>
#include <tuple>

#include "credit_mixes.hpp"
#include <quoin/answers/incentive_offers.hpp>
#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

const std::vector<CreditUse> every_cost = {CreditUse::points, CreditUse::buydown,
                                           CreditUse::upfront_fee, CreditUse::closing_costs,
                                           CreditUse::prepaids};
const std::vector<CreditUse> only_costs = {CreditUse::closing_costs, CreditUse::prepaids};

std::vector<Percent> steps_down(int years) {
    std::vector<Percent> steps;
    for (int left = years; left > 0; --left) steps.emplace_back(Decimal::whole(left));
    return steps;
}

/// Rates of the ladder under a rate, from the next lower down.
std::vector<Rate> rates_under(const ScenarioRules& rules, Rate rate) {
    std::vector<Rate> rates;
    if (rules.scenario.rate.by == RateChoice::By::quoted || rules.ladder == nullptr) return rates;
    for (const Rung& rung : rules.ladder->rungs) {
        if (rung.rate < rate) rates.push_back(rung.rate);
    }
    std::sort(rates.begin(), rates.end(), std::greater<>());
    return rates;
}

/// One scenario's answer in the making.
class Question {
  public:
    Question(const Sitting& sitting, const ScenarioRules& rules, const PricedHome& home,
             const CreditAsk& ask)
        : rules_(rules), ask_(ask), mixer_(rules, home, sitting.inquiry().facts, ask) {
        const LoanFigures f = loan_figures(rules, home, sitting.inquiry().facts);
        const ScenarioAnswer answer = scenario_answer(sitting, rules, f);
        out_.terms = answer.terms;
        out_.refusals = answer.refusals;
        if (!f.available()) return;
        describe(f);
        out_.today = mixer_.today();
        for (int way = 0; way <= static_cast<int>(CreditWay::upfront_fee); ++way) {
            out_.pure.push_back(pure(static_cast<CreditWay>(way), f));
        }
        weigh(every_mix());
    }
    [[nodiscard]] CreditScenario take() { return std::move(out_); }

  private:
    void describe(const LoanFigures& f);
    [[nodiscard]] std::optional<Rate> as_today() const {
        if (out_.rate_is_given) return std::nullopt;
        return out_.today.rate;
    }
    CreditPure pure(CreditWay way, const LoanFigures& today);
    CreditPure into_points(const LoanFigures& today);
    CreditPure into_fee(const LoanFigures& today);
    CreditPure into_buydown(CreditWay way, int years, const LoanFigures& today);
    CreditPure all_or_none(CreditWay way, const CreditSplit& split, CashPart part,
                           const LoanFigures& today);
    std::vector<CreditMix> every_mix();
    void weigh(std::vector<CreditMix> mixes);
    void find_frontier(std::vector<CreditMix> mixes);
    void check_frontier() const;
    [[nodiscard]] CreditMix told(const CreditMix& mix);

    const ScenarioRules& rules_;
    CreditAsk ask_;
    CreditMixer mixer_;
    CreditScenario out_;
    bool has_use_ = true; ///< the money, at all
};

void Question::describe(const LoanFigures& f) {
    const LoanProgram& program = *rules_.program;
    out_.cap = f.contribution_cap;
    out_.cap_by_price = program.policy.cap_by_price;
    if (out_.cap) {
        out_.cap_amount =
            percent_of(out_.cap_by_price ? f.price : f.value, *out_.cap, Rounding::down);
    }
    out_.cap_taken = f.credits.interested_parties;
    ensure(!out_.cap || out_.cap_taken <= out_.cap_amount, "what is given keeps to the cap");
    out_.cap_on_concessions = program.policy.cap_on_concessions;
    out_.cash_is_given = rules_.scenario.down.by == DownPayment::By::cash;
    out_.rate_is_given = rules_.scenario.rate.by == RateChoice::By::quoted;
    const bool insured = rules_.lender_insures() && f.insurance.months() > 0;
    if (insured && rules_.single_premium.rule() != nullptr) {
        out_.upfront_name = program.annual_name;
        out_.is_single_premium = true;
    } else if (!f.financed_fee.is_zero()) {
        out_.is_single_premium = pays_single_premium(rules_, f.ltv);
        out_.upfront_name = out_.is_single_premium ? program.annual_name : program.upfront_name;
    }
}

CreditPure Question::pure(CreditWay way, const LoanFigures& today) {
    const auto& buydown = rules_.scenario.buydown;
    switch (way) {
    case CreditWay::off_price:
        return {way, mixer_.told({ask_.amount, as_today(), buydown, false, every_cost}), {}};
    case CreditWay::costs:
        return {way, mixer_.told({{}, as_today(), buydown, false, only_costs}), {}};
    case CreditWay::points:
        return into_points(today);
    case CreditWay::buydown_1_0:
        return into_buydown(way, 1, today);
    case CreditWay::buydown_2_1:
        return into_buydown(way, 2, today);
    case CreditWay::buydown_3_2_1:
        return into_buydown(way, 3, today);
    case CreditWay::upfront_fee:
        return into_fee(today);
    }
    return {};
}

/// The lowest rate whose points the money pays, and no more of them falls to the buyer than today.
CreditPure Question::into_points(const LoanFigures& today) {
    CreditPure best{CreditWay::points, {}, {}};
    const auto own_points = [](const LoanFigures& f) {
        return std::max(f.cash[CashPart::points], Money{}) - f.credits.by_use[CreditUse::points];
    };
    for (const Rate rate : rates_under(rules_, today.rate)) {
        const CreditSplit split{{}, rate, rules_.scenario.buydown, false, {CreditUse::points}};
        const LoanFigures f = mixer_.figures(split, ask_.amount);
        if (!f.available()) continue;
        if (own_points(f) > own_points(today)) {
            if (!best.mix)
                best.needed =
                    f.cash[CashPart::points] - std::max(today.cash[CashPart::points], Money{});
            break;
        }
        best.mix = mixer_.told(split);
    }
    return best;
}

CreditPure Question::into_buydown(CreditWay way, int years, const LoanFigures& today) {
    const CreditSplit split{{}, as_today(), steps_down(years), false, {CreditUse::buydown}};
    return all_or_none(way, split, CashPart::buydown, today);
}

CreditPure Question::into_fee(const LoanFigures& today) {
    constexpr CreditWay way = CreditWay::upfront_fee;
    if (out_.upfront_name.empty()) return {way, {}, {}};
    const CreditSplit split{
        {}, as_today(), rules_.scenario.buydown, true, {CreditUse::upfront_fee}};
    return all_or_none(way, split, CashPart::upfront_fee, today);
}

/// The whole of a cost, or none of it where more of it falls to the buyer than today.
CreditPure Question::all_or_none(CreditWay way, const CreditSplit& split, CashPart part,
                                 const LoanFigures& today) {
    const LoanFigures f = mixer_.figures(split, ask_.amount);
    if (!f.available()) return {way, {}, {}};
    const CreditUse use = split.rest.front();
    const auto own_part = [&](const LoanFigures& of) {
        return of.cash[part] - of.credits.by_use[use];
    };
    if (own_part(f) > own_part(today)) return {way, {}, f.cash[part]};
    return {way, mixer_.told(split), {}};
}

/// Every rate from today's down with every buydown, the fee financed or not, as far as the money
/// goes.
std::vector<CreditMix> Question::every_mix() {
    std::vector<std::optional<Rate>> rates{as_today()};
    for (const Rate rate : rates_under(rules_, out_.today.rate)) rates.emplace_back(rate);
    std::vector<std::vector<Percent>> buydowns{rules_.scenario.buydown};
    for (const int years : {1, 2, 3}) {
        if (steps_down(years) != buydowns.front()) buydowns.push_back(steps_down(years));
    }
    std::vector<CreditMix> mixes;
    for (const auto& rate : rates) {
        for (const auto& buydown : buydowns) {
            for (const bool fee_in_cash : {false, true}) {
                if (fee_in_cash && out_.upfront_name.empty()) continue;
                const CreditSplit split{{}, rate, buydown, fee_in_cash, every_cost};
                for (CreditMix& mix : mixes_of(mixer_, split, out_.today)) {
                    mixes.push_back(std::move(mix));
                }
            }
        }
    }
    return mixes;
}

/// A mix with its APR.
CreditMix Question::told(const CreditMix& mix) {
    const auto rate = out_.rate_is_given ? std::nullopt : std::optional(mix.rate);
    CreditMix again =
        mixer_.told({mix.off_price, rate, mix.buydown, mix.fee_in_cash, every_cost}).value_or(mix);
    if (!has_use_) return again;
    ensure_equal(again.monthly_now, mix.monthly_now, "a mix with its APR has the same month");
    ensure_equal(again.cash_needed, mix.cash_needed, "a mix with its APR takes the same cash");
    ensure_equal(again.cost_asked, mix.cost_asked, "a mix with its APR costs the same");
    return again;
}

/// The best of each kind, ties decided by the others.
void Question::weigh(std::vector<CreditMix> mixes) {
    has_use_ = !mixes.empty();
    if (!has_use_) mixes.push_back(out_.today);
    const auto least = [&](const auto& measures) {
        return told(*std::min_element(
            mixes.begin(), mixes.end(),
            [&](const CreditMix& a, const CreditMix& b) { return measures(a) < measures(b); }));
    };
    out_.lowest_payment = least(
        [](const CreditMix& m) { return std::tuple(m.monthly_now, m.cost_asked, m.cash_needed); });
    out_.least_cash = least(
        [](const CreditMix& m) { return std::tuple(m.cash_needed, m.cost_asked, m.monthly_now); });
    out_.least_cost = least(
        [](const CreditMix& m) { return std::tuple(m.cost_asked, m.monthly_now, m.cash_needed); });
    find_frontier(std::move(mixes));
}

/// The mixes that none beats in month, cash and cost at once, from the lowest month up.
void Question::find_frontier(std::vector<CreditMix> mixes) {
    std::sort(mixes.begin(), mixes.end(), [](const CreditMix& a, const CreditMix& b) {
        return std::tuple(a.monthly_now, a.cash_needed, a.cost_asked) <
               std::tuple(b.monthly_now, b.cash_needed, b.cost_asked);
    });
    auto& kept = out_.frontier; // all with no higher a month
    for (const CreditMix& mix : mixes) {
        const bool beaten = std::any_of(kept.begin(), kept.end(), [&](const CreditMix& other) {
            return other.cash_needed <= mix.cash_needed && other.cost_asked <= mix.cost_asked;
        });
        if (!beaten) kept.push_back(mix);
    }
    for (CreditMix& mix : kept) mix = told(mix);
    if (has_use_) check_frontier();
}

/// The promise of the frontier: the best of each kind stands on it, and no mix takes more of the
/// buyer's own than today's.
void Question::check_frontier() const {
    const auto& kept = out_.frontier;
    ensure(!kept.empty(), "some mix is beaten by none");
    const auto least = [&](Money CreditMix::*figure) {
        Money found = kept.front().*figure;
        for (const CreditMix& mix : kept) found = std::min(found, mix.*figure);
        return found;
    };
    ensure_equal(least(&CreditMix::monthly_now), out_.lowest_payment.monthly_now,
                 "the lowest payment stands on the frontier");
    ensure_equal(least(&CreditMix::cash_needed), out_.least_cash.cash_needed,
                 "the least cash stands on the frontier");
    ensure_equal(least(&CreditMix::cost_asked), out_.least_cost.cost_asked,
                 "the least cost stands on the frontier");
    for (std::size_t i = 0; i < kept.size(); ++i) {
        ensure(kept[i].own_costs <= out_.today.own_costs, "no mix takes more of the buyer's own");
        ensure(i == 0 || !dominates(kept[i - 1], kept[i]), "no mix of the frontier beats the next");
    }
}

/// What every incentive that the price book gives on this home may be used for.
void find_allowed_uses(const Sitting& sitting, const PricedHome& home, CreditAnswer& answer) {
    for (const IncentiveOffer& offer : incentive_offers(sitting, home)) {
        if (offer.why_not) continue;
        const std::vector<IncentiveUse>& uses = offer.incentive.uses;
        if (!answer.any_incentive) answer.allowed_uses = uses;
        answer.any_incentive = true;
        std::erase_if(answer.allowed_uses, [&](IncentiveUse use) {
            return std::find(uses.begin(), uses.end(), use) == uses.end();
        });
    }
}

/// Whether money may go where a mix puts it, if it may go to these uses alone. An upfront fee and
/// prepaids are paid as closing costs are.
bool keeps_to(const std::vector<IncentiveUse>& uses, const CreditMix& mix) {
    const auto may = [&](IncentiveUse use) {
        return std::find(uses.begin(), uses.end(), use) != uses.end();
    };
    const Money costs = mix.pays[CreditUse::closing_costs] + mix.pays[CreditUse::upfront_fee] +
                        mix.pays[CreditUse::prepaids];
    return (mix.off_price.is_zero() || may(IncentiveUse::price) || may(IncentiveUse::options)) &&
           (mix.pays[CreditUse::points].is_zero() || may(IncentiveUse::points)) &&
           (mix.pays[CreditUse::buydown].is_zero() || may(IncentiveUse::buydown)) &&
           (costs.is_zero() || may(IncentiveUse::closing_costs));
}

void mark_allowed(const CreditAnswer& answer, CreditScenario& scenario) {
    if (!answer.any_incentive) return;
    const auto mark = [&](CreditMix& mix) {
        mix.every_incentive_allows = keeps_to(answer.allowed_uses, mix);
    };
    for (CreditPure& pure : scenario.pure) {
        if (pure.mix) mark(*pure.mix);
    }
    for (CreditMix& mix : scenario.frontier) mark(mix);
    mark(scenario.lowest_payment);
    mark(scenario.least_cash);
    mark(scenario.least_cost);
}

} // namespace

bool dominates(const CreditMix& a, const CreditMix& b) {
    const bool no_worse = a.monthly_now <= b.monthly_now && a.cash_needed <= b.cash_needed &&
                          a.cost_asked <= b.cost_asked;
    return no_worse && (a.monthly_now < b.monthly_now || a.cash_needed < b.cash_needed ||
                        a.cost_asked < b.cost_asked);
}

CreditAnswer credit(const Sitting& sitting, const CreditAsk& ask) {
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    ensure(ask.amount > Money{} && ask.amount < home.contract_price && ask.years > 0,
           "an amount above zero and under the price, and some years");
    CreditAnswer answer;
    answer.heading = heading_of(sitting);
    answer.ask = ask;
    answer.contract_price = home.contract_price;
    find_allowed_uses(sitting, home, answer);
    for (const ScenarioRules& rules : sitting.rules()) {
        answer.scenarios.push_back(Question(sitting, rules, home, ask).take());
        mark_allowed(answer, answer.scenarios.back());
    }
    return answer;
}

} // namespace quoin
