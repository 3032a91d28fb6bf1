// Answering what moves the month and the cash until the closing.
#include <quoin/answers/shift.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/qualifying.hpp>

#include "income_limits.hpp"

namespace quoin {
namespace {

constexpr Decimal thousandth = Decimal::billionths(Decimal::one / 1000);
constexpr Decimal highest_tried = Decimal::whole(30); ///< percent; no rate of the trade comes near

/// A scenario with its rates moved, on a home whose price and appraisal may be.
class Mover {
  public:
    Mover(const ScenarioRules& rules, const PricedHome& home, const PurchaseFacts& facts)
        : given_(rules.scenario), rules_(rules), home_(home), facts_(facts) {
        if (rules.ladder != nullptr) ladder_ = *rules.ladder;
    }
    Mover(const Mover&) = delete;
    Mover& operator=(const Mover&) = delete;

    /// Whether today's rate stays one.
    [[nodiscard]] static bool can_move(Decimal by, Rate today) {
        const auto moved = Rate::percent(today.percent() + by);
        return moved && *moved > Rate{};
    }
    /// Precondition: can_move.
    LoanFigures at(Decimal by, const ShiftCase& moved = {}) {
        const auto plus = [&](Rate rate) { return Rate::percent(rate.percent() + by); };
        Scenario scenario = given_;
        if (scenario.rate.by != RateChoice::By::points) {
            scenario.rate.note = plus(scenario.rate.note).value_or(Rate{});
        }
        rules_.choose(std::move(scenario));
        moved_ = ladder_;
        moved_.rungs.clear();
        for (const Rung& rung : ladder_.rungs) {
            if (const auto rate = plus(rung.rate)) moved_.rungs.push_back({*rate, rung.points});
        }
        rules_.ladder = ladder_.rungs.empty() ? nullptr : &moved_;
        PricedHome home = home_;
        PurchaseFacts facts = facts_;
        if (moved.change == ShiftChange::appraisal) {
            facts.appraised_value = moved.amount;
        } else {
            home.contract_price += moved.amount;
        }
        return loan_figures(rules_, home, facts);
    }
    [[nodiscard]] const ScenarioRules& rules() const { return rules_; }

  private:
    Scenario given_;
    Ladder ladder_; ///< as the sheet has it; without rungs where it has none
    Ladder moved_;
    ScenarioRules rules_; ///< as last moved
    const PricedHome& home_;
    const PurchaseFacts& facts_;
};

/// Nothing, the price down and up, options added, the appraisal under the price.
std::vector<ShiftCase> cases_for(Money price) {
    const auto part = [&](int percent) {
        return percent_of(price, Percent(Decimal::whole(percent)), Rounding::half_away);
    };
    const auto percent = [](int whole) { return Percent(Decimal::whole(whole)); };
    return {{},
            {ShiftChange::price, percent(-1), -part(1)},
            {ShiftChange::price, percent(1), part(1)},
            {ShiftChange::options, {}, Money::dollars(5000)},
            {ShiftChange::appraisal, percent(-2), price - part(2)},
            {ShiftChange::appraisal, percent(-5), price - part(5)}};
}

ShiftCell cell_of(const LoanFigures& f) {
    if (!f.available()) return {f.refusals, {}, {}, {}, {}};
    return {{}, f.loan, f.monthly.total(), f.cash.needed(), f.cash.to_close()};
}

std::vector<ShiftRow> rows_of(Mover& mover, const ShiftAsk& ask, Rate today,
                              const std::vector<ShiftCase>& cases) {
    std::vector<ShiftRow> rows;
    for (int steps = -ask.steps; steps <= ask.steps; ++steps) {
        const Decimal by = Decimal::billionths(ask.step.value().billionths() * steps);
        if (!Mover::can_move(by, today)) continue;
        ShiftRow row;
        row.steps = steps;
        row.by = Percent(by);
        row.rate = Rate::percent(today.percent() + by).value();
        for (const ShiftCase& moved : cases) {
            const LoanFigures f = mover.at(by, moved);
            row.cells.push_back(cell_of(f));
            if (moved.change == ShiftChange::none && f.available()) {
                row.apr = cost_of_credit(mover.rules(), f).apr;
            }
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

/// Today's rate on every ladder of the program and term, from the shortest lock up.
std::vector<ShiftLock> locks_of(const Sitting& sitting, const ScenarioRules& rules,
                                const PricedHome& home, const LoanFigures& today) {
    std::vector<ShiftLock> locks;
    const Inquiry& inquiry = sitting.inquiry();
    if (rules.scenario.rate.by == RateChoice::By::quoted || rules.ladder == nullptr) return locks;
    for (const Ladder& ladder : sitting.sheet().ladders) {
        if (ladder.program != rules.program->id || ladder.months != rules.ladder->months) continue;
        Scenario scenario = rules.scenario;
        scenario.lock_days = ladder.lock_days;
        scenario.rate = {RateChoice::By::note, {}, today.rate};
        ScenarioRules other = rules_for(scenario, *rules.program, sitting.sheet(), sitting.place(),
                                        inquiry.as_of, inquiry.closing);
        other.watch = rules.watch;
        const LoanFigures f = loan_figures(other, home, inquiry.facts);
        ShiftLock lock;
        lock.days = ladder.lock_days;
        lock.ends = plus_days(inquiry.as_of, ladder.lock_days);
        lock.covers_closing = lock.ends >= inquiry.closing;
        lock.is_chosen = ladder.lock_days == rules.ladder->lock_days;
        if (f.available()) {
            lock.points = f.points;
            lock.extra_cash = f.cash.needed() - today.cash.needed();
            ensure(!lock.is_chosen || lock.extra_cash.is_zero(),
                   "the lock that is had costs no more");
        }
        locks.push_back(lock);
    }
    std::sort(locks.begin(), locks.end(),
              [](const ShiftLock& a, const ShiftLock& b) { return a.days < b.days; });
    return locks;
}

/// a / b in percent, two decimals.
Percent share_of(Money a, Money b) {
    const std::int64_t hundredths =
        multiply_divide(a.count(), 10'000, b.count(), Rounding::half_away);
    return Percent(Decimal::billionths(hundredths * Decimal::hundredth));
}

/// The highest rate at which the month is within limits. It only rises with the rate, so by
/// halving; a rate under today's that the program refuses counts as low enough on the way.
ShiftRoom room_under(const ScenarioRules& rules, Mover& mover, const IncomeLimits& limits,
                     Rate today, Decimal step) {
    const auto moved = [](std::int64_t count) {
        return Decimal::billionths(count * thousandth.billionths());
    };
    const auto within = [&](const LoanFigures& f) {
        return f.available() && limits.allows(qualifying_month(rules, f), f.loan);
    };
    const auto stays = [&](std::int64_t count) {
        const LoanFigures f = mover.at(moved(count));
        return within(f) || (!f.available() && count < 0);
    };
    const std::int64_t today_in = today.percent().billionths() / thousandth.billionths();
    std::int64_t low = 1 - today_in; // the lowest rate there is
    std::int64_t high = highest_tried.billionths() / thousandth.billionths() - today_in;
    if (high <= low) return {};
    while (high - low > 1) {
        const std::int64_t middle = low + (high - low) / 2;
        (stays(middle) ? low : high) = middle;
    }
    if (!within(mover.at(moved(low)))) return {};
    const std::int64_t units = moved(low).billionths();
    std::int64_t steps = units / step.billionths(); // whole ones that end no higher
    if (steps * step.billionths() > units) --steps;
    const auto in_steps =
        Rate::percent(today.percent() + Decimal::billionths(steps * step.billionths()));
    return {Rate::percent(today.percent() + moved(low)),
            in_steps && *in_steps > Rate{} ? in_steps : std::nullopt};
}

/// Where the inquiry gives an income and the program has limits.
std::optional<ShiftRatios> ratios_of(const Sitting& sitting, const ScenarioRules& rules,
                                     const IncomeLimits& limits, Mover& mover,
                                     const LoanFigures& today, Decimal step) {
    const auto income = sitting.inquiry().monthly_income;
    if (!income || limits.ratios() == nullptr) return std::nullopt;
    const Money housing = qualifying_month(rules, today);
    const Money debts = sitting.inquiry().monthly_debts.value_or(Money{});
    ShiftRatios ratios;
    ratios.limits = *limits.ratios();
    ratios.residual_tested = limits.residual() && limits.residual()->tested();
    ratios.passes_by_ratio = limits.passes_by(housing, today.loan);
    ratios.least_income = limits.least_income(housing, today.loan);
    for (const int by : {-20, -10, -5, 0, 5, 10}) {
        ShiftIncome moved;
        moved.by = Percent(Decimal::whole(by));
        moved.income = *income + percent_of(*income, moved.by, Rounding::half_away);
        if (moved.income > Money{}) {
            moved.front = share_of(housing, moved.income);
            moved.back = share_of(housing + debts, moved.income);
        }
        const IncomeLimits then = limits.with_income(moved.income);
        moved.within = then.allows(housing, today.loan);
        ensure_equal(moved.within, moved.income >= ratios.least_income,
                     "an income is within the limits from the least one on");
        moved.room = room_under(rules, mover, then, today.rate, step);
        const Decimal rate = today.rate.percent();
        const bool tried = thousandth <= rate && rate < highest_tried && moved.within;
        ensure(!tried || moved.room.to_a_thousandth >= today.rate,
               "an income that is within the limits has room at today's rate");
        ratios.incomes.push_back(moved);
        if (*income <= Money{}) break; // nothing to move
    }
    if (ratios.limits.back_automated) {
        const IncomeLimits automated(sitting, rules, true);
        ratios.least_income_automated = automated.least_income(housing, today.loan);
        ratios.room_automated = room_under(rules, mover, automated, today.rate, step);
    }
    return ratios;
}

ShiftScenario scenario_of(const Sitting& sitting, const ScenarioRules& rules,
                          const PricedHome& home, const ShiftAsk& ask) {
    const Inquiry& inquiry = sitting.inquiry();
    const LoanFigures f = loan_figures(rules, home, inquiry.facts);
    const ScenarioAnswer answer = scenario_answer(sitting, rules, f);
    ShiftScenario out;
    out.terms = answer.terms;
    out.refusals = answer.refusals;
    if (!f.available()) return out;
    out.monthly = f.monthly.total();
    out.cash_needed = f.cash.needed();
    out.cases = cases_for(home.contract_price);
    Mover mover(rules, home, inquiry.facts);
    out.rows = rows_of(mover, ask, f.rate, out.cases);
    for (const ShiftRow& row : out.rows) {
        if (row.steps != 0) continue;
        const ShiftCell& still = row.cells.front();
        ensure_equal(row.rate, f.rate, "a step of nothing leaves the rate");
        ensure_equal(still.monthly, out.monthly, "where nothing moves, the month is the quote's");
        ensure_equal(still.cash_needed, out.cash_needed, "where nothing moves, so is the cash");
    }
    out.locks = locks_of(sitting, rules, home, f);
    const IncomeLimits limits(sitting, rules, false);
    out.ratios_unknown = limits.unknown();
    if (!out.ratios_unknown.empty()) return out;
    const auto& continued = limits.continued();
    out.terms.continued.insert(out.terms.continued.end(), continued.begin(), continued.end());
    out.ratios = ratios_of(sitting, rules, limits, mover, f, ask.step.value());
    return out;
}

} // namespace

ShiftAnswer shift(const Sitting& sitting, const ShiftAsk& ask) {
    ensure(ask.steps >= 0 && ask.step > Percent{}, "rates move by some steps of some size");
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    ShiftAnswer answer;
    answer.heading = heading_of(sitting);
    answer.ask = ask;
    answer.contract_price = home.contract_price;
    for (const ScenarioRules& rules : sitting.rules()) {
        answer.scenarios.push_back(scenario_of(sitting, rules, home, ask));
    }
    return answer;
}

} // namespace quoin
