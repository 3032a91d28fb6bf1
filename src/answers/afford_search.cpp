// Searching prices, though what fits comes and goes.
//
// A range of prices in which even the least that a month and the cash can come to breaks a limit
// (loan/least_figures.hpp) falls away as a whole; what is left is halved, the upper half first, and
// a short range is looked at dollar by dollar.
#include "afford_search.hpp"

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/least_figures.hpp>
#include <quoin/loan/level_payment.hpp>
#include <quoin/loan/qualifying.hpp>

namespace quoin {
namespace {

constexpr std::int64_t looked_at_singly = 8; ///< dollars
constexpr std::int64_t highest_looked_at = AffordSearch::top.count() / 100;
constexpr std::int64_t lowest_looked_at = 1'000;

bool has(const std::vector<AffordLimit>& limits, AffordLimit limit) {
    return std::find(limits.begin(), limits.end(), limit) != limits.end();
}

} // namespace

AffordSearch::AffordSearch(const Sitting& sitting, std::size_t scenario, const AffordFacts& facts)
    : rules_(sitting.rules(scenario)), inquiry_(sitting.inquiry()), facts_(facts),
      home_(price_home(sitting.book(), sitting.inquiry().selection)),
      purchase_(sitting.inquiry().facts), income_(sitting, rules_, facts.automated) {
    purchase_.appraised_value.reset(); // of one home, not of any price
    home_.lines.clear();
}

/// Where the down payment is whatever the cash allows, it leaves the reserves, whose size follows
/// from the loan: so the cash is lowered until both fit.
LoanFigures AffordSearch::figures_of(const ScenarioRules& rules, const PricedHome& home) const {
    const DownPayment& asked = rules.scenario.down;
    if (asked.by != DownPayment::By::cash || !inquiry_.cash) {
        return loan_figures(rules, home, purchase_);
    }
    const auto with_cash = [&](Money cash) {
        Scenario scenario = rules.scenario;
        scenario.down.amount = cash;
        return loan_figures(rules.with(std::move(scenario)), home, purchase_);
    };
    constexpr int most_rounds = 8;
    LoanFigures figures = with_cash(std::min(asked.amount, *inquiry_.cash));
    for (int round = 0; round < most_rounds && figures.available(); ++round) {
        const Money kept = figures.monthly.total() * facts_.reserve_months;
        if (figures.cash.needed() + kept <= *inquiry_.cash) break;
        figures = with_cash(*inquiry_.cash - kept);
    }
    return figures;
}

PriceTrial AffordSearch::trial(const ScenarioRules& rules, Money price, bool flood_zone) const {
    PricedHome home = home_;
    home.base_price = price;
    home.contract_price = price;
    home.flood_zone = flood_zone;
    PriceTrial trial;
    trial.figures = figures_of(rules, home);
    for (const ListGap& gap : income_.unknown()) {
        trial.figures.refusals.push_back({Barred::rule_unknown, {}, {}, gap});
    }
    if (!trial.figures.available()) {
        trial.broken.push_back(AffordLimit::program);
        return trial;
    }
    const Money housing = qualifying_month(rules, trial.figures);
    const Money month = trial.figures.monthly.total();
    const auto add_room = [&](AffordLimit limit, Money needed, Money most) {
        trial.rooms.push_back({limit, most - needed, needed, most});
        if (needed > most) trial.broken.push_back(limit);
    };
    income_.each(housing, trial.figures.loan, add_room);
    trial.passes_by_ratio = income_.passes_by(housing, trial.figures.loan);
    if (inquiry_.cash) {
        add_room(AffordLimit::cash, trial.figures.cash.needed() + month * facts_.reserve_months,
                 *inquiry_.cash);
    }
    return trial;
}

/// The least month of a range that a buyer qualifies at: no loan of it is smaller or at a lower
/// rate.
Money AffordSearch::least_qualifying(const LeastFigures& least) const {
    const Rate rate = qualifying_rate(rules_, least.rate);
    if (rate == least.rate || least.loan <= Money{}) return least.monthly;
    const Months term = rules_.scenario.term;
    return least.monthly - level_payment(least.loan, least.rate, term) +
           level_payment(least.loan, rate, term);
}

/// False where every price of the range breaks a limit, or is refused.
bool AffordSearch::may_fit(std::int64_t low, std::int64_t high) const {
    if (!income_.unknown().empty()) return has(ignored_, AffordLimit::program);
    PriceRange range{
        Money::dollars(low), Money::dollars(high), incentive_credits(home_), home_.flood_zone, {}};
    const DownPayment& down = rules_.scenario.down;
    const bool from_cash = down.by == DownPayment::By::cash;
    if (from_cash && !inquiry_.cash) range.kept = KeptBack{0, down.amount};
    if (from_cash && inquiry_.cash && !has(ignored_, AffordLimit::cash)) {
        range.kept = KeptBack{facts_.reserve_months, *inquiry_.cash};
    }
    bool possible = false;
    const bool may = any_least_figures(rules_, purchase_, range, [&](const LeastFigures& least) {
        possible = true;
        return within_limits(least);
    });
    return may || (!possible && has(ignored_, AffordLimit::program));
}

/// False where a limit that counts is broken at the least already.
bool AffordSearch::within_limits(const LeastFigures& least) const {
    bool within = true;
    const auto hold = [&](AffordLimit limit, Money needed, Money most) {
        if (needed > most && !has(ignored_, limit)) within = false;
    };
    income_.each(least_qualifying(least), {least.loan, true}, hold);
    if (inquiry_.cash) {
        hold(AffordLimit::cash, least.cash + least.monthly * facts_.reserve_months, *inquiry_.cash);
    }
    return within;
}

bool AffordSearch::fits(std::int64_t dollars) const {
    const PriceTrial at = trial(Money::dollars(dollars));
    return std::all_of(at.broken.begin(), at.broken.end(),
                       [&](AffordLimit limit) { return has(ignored_, limit); });
}

/// A price over which the payment alone, at the lowest rate there is, is more than the income lets
/// it be.
std::int64_t AffordSearch::upper_bound() const {
    const auto most = income_.most_with_debts({Money{}, true});
    if (!most) return highest_looked_at;
    Rate lowest = rules_.scenario.rate.note;
    const bool quoted = rules_.scenario.rate.by == RateChoice::By::quoted;
    if (!quoted && rules_.ladder != nullptr) lowest = rules_.ladder->rungs.front().rate;
    std::int64_t low = 0;
    std::int64_t high = highest_looked_at;
    while (high - low > 1) {
        const std::int64_t loan = low + (high - low) / 2;
        const bool over = level_payment(Money::dollars(loan), lowest, rules_.scenario.term) > *most;
        (over ? high : low) = loan;
    }
    const DownPayment& down = rules_.scenario.down;
    Money most_down = down.amount;
    if (down.by == DownPayment::By::cash) {
        for (const Credit& credit : purchase_.credits) {
            if (credit.may_pay(CreditUse::down_payment)) most_down += credit.amount;
        }
    }
    if (down.by == DownPayment::By::percent) {
        const Percent rest = Percent(Decimal::whole(100)) - down.percent;
        if (rest <= Percent{}) return highest_looked_at;
        const Money price =
            Money::cents(multiply_divide(Money::dollars(high).count(), 100 * Decimal::one,
                                         rest.value().billionths(), Rounding::up));
        return std::min(divide_rounded<std::int64_t>(price.count(), 100, Rounding::up) +
                            looked_at_singly,
                        highest_looked_at);
    }
    return std::min(high + divide_rounded<std::int64_t>(most_down.count(), 100, Rounding::up) +
                        looked_at_singly,
                    highest_looked_at);
}

/// Upper half first; `high` itself is known not to fit.
std::optional<std::int64_t> AffordSearch::best_below(std::int64_t low, std::int64_t high) const {
    if (low >= high || !may_fit(low, high - 1)) return std::nullopt;
    if (high - low <= looked_at_singly) {
        for (std::int64_t dollars = high - 1; dollars >= low; --dollars) {
            if (fits(dollars)) return dollars;
        }
        return std::nullopt;
    }
    const std::int64_t middle = low + (high - low) / 2;
    if (const auto found = best_below(middle + 1, high)) return found;
    if (fits(middle)) return middle;
    return best_below(low, middle);
}

std::optional<Money> AffordSearch::highest(std::vector<AffordLimit> ignored,
                                           std::optional<Money> most) {
    ignored_ = std::move(ignored);
    const bool bounded = !has(ignored_, AffordLimit::back_ratio);
    std::int64_t end = bounded ? upper_bound() : highest_looked_at;
    if (most) end = std::min(end, most->count() / 100);
    const auto found = best_below(lowest_looked_at, std::max(end, lowest_looked_at) + 1);
    ignored_.clear();
    if (!found) return std::nullopt;
    const Money price = Money::dollars(*found);
    ensure(price <= std::min(most.value_or(top), top), "no price is found that is not looked at");
    return price;
}

std::optional<LowerRate> AffordSearch::lower_rate_for(Money price, Rate under) const {
    Scenario scenario = rules_.scenario;
    const bool quoted = scenario.rate.by == RateChoice::By::quoted;
    if (quoted || rules_.ladder == nullptr) return std::nullopt;
    std::optional<LowerRate> best;
    for (const Rung& rung : rules_.ladder->rungs) {
        if (rung.rate >= under || (best && rung.rate <= best->rate)) continue;
        scenario.rate = {RateChoice::By::note, {}, rung.rate};
        const PriceTrial at = trial(rules_.with(scenario), price, home_.flood_zone);
        if (at.fits()) best = LowerRate{rung.rate, at.figures.points};
    }
    return best;
}

AffordStep AffordSearch::step_to(Money price) const {
    const PriceTrial at = trial(price);
    AffordStep step;
    step.price = price;
    step.refusals = at.figures.refusals;
    const Money debts = inquiry_.monthly_debts.value_or(Money{});
    const Money income = inquiry_.monthly_income.value_or(Money{});
    Money for_front;
    for (const LimitRoom& room : at.rooms) {
        const Money over = room.needed > room.most ? room.needed - room.most : Money{};
        if (room.limit == AffordLimit::cash) {
            step.more_cash = over;
            continue;
        }
        if (room.limit == AffordLimit::residual_income) {
            step.more_after_tax = over;
            continue;
        }
        const bool front = room.limit == AffordLimit::front_ratio;
        const Percent percent = front ? *income_.ratios()->front : *income_.back();
        if (over.is_zero()) continue;
        step.more_income = std::max(step.more_income,
                                    income_.ratios()->least_income(room.needed, percent) - income);
        (front ? for_front : step.less_debts) = over;
    }
    step.less_debts = std::max(step.less_debts, step.more_after_tax);
    if (!at.fits() && step.refusals.empty()) {
        step.lower_rate = lower_rate_for(price, at.figures.rate);
    }
    ensure(step.more_cash >= Money{} && step.more_income >= Money{} && step.less_debts >= Money{},
           "a step up never asks for less than nothing");
    ensure(!at.fits() || (step.more_cash.is_zero() && step.less_debts.is_zero()),
           "a step that fits asks for nothing");
    step.debts_suffice = for_front.is_zero() && step.less_debts <= debts;
    return step;
}

} // namespace quoin
