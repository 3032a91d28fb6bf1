// Working out mixes of a builder's money.
#include "credit_mixes.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

constexpr int first_after_buydowns = 37;

/// Spent by the buyer and still owed after some years, at most those of the loan's term.
Money cost_over(const LoanFigures& f, int years) {
    const int month = years * months_a_year;
    return f.paid_through(month) + f.paid_schedule().balance(month);
}

/// `amount` is the builder's.
void measure(const LoanFigures& f, const CreditAsk& ask, Money amount, CreditMix& mix) {
    mix.rate = f.rate;
    mix.points = f.points;
    mix.loan = f.loan;
    mix.pays = f.credits.last.by_use;
    mix.without_use = f.credits.last.without_use;
    mix.over_cap = f.credits.last.over_cap;
    mix.monthly_now = f.paid_in(1);
    mix.monthly_later = f.paid_in(first_after_buydowns);
    mix.cash_needed = f.cash.needed();
    mix.to_close = f.cash.to_close();
    mix.own_costs = mix.cash_needed - f.cash[CashPart::down_payment];
    ensure_equal(mix.used() + mix.unused(), amount,
                 "a builder's money is used, without use or over the cap");
    for (std::size_t i = 0; i < credit_years.size(); ++i) {
        mix.cost[i] = cost_over(f, credit_years[i]);
    }
    mix.cost_asked = cost_over(f, ask.years);
}

/// Amounts off the price in whole dollars, the last one the whole amount to the cent.
class PriceLine {
  public:
    PriceLine(CreditMixer& mixer, CreditSplit split, const CreditMix& today)
        : mixer_(mixer), split_(std::move(split)), today_(today) {}

    [[nodiscard]] int end() const {
        return static_cast<int>((mixer_.ask().amount.count() + 99) / 100);
    }
    const WorkedMix& at(int dollars) {
        const auto found = worked_.find(dollars);
        if (found != worked_.end()) return found->second;
        split_.off_price = std::min(Money::dollars(dollars), mixer_.ask().amount);
        return worked_.emplace(dollars, mixer_.work_out(split_)).first->second;
    }
    [[nodiscard]] bool fits(int dollars) {
        const WorkedMix& worked = at(dollars);
        return worked.available && worked.mix.own_costs <= today_.own_costs;
    }
    void keep(int dollars) { kept_.push_back(dollars); }
    /// Keeps both sides of every jump between two amounts.
    void keep_jumps(int low, int high) {
        if (at(low).continues(at(high))) return;
        if (high - low <= 1) {
            keep(low);
            keep(high);
            return;
        }
        const int middle = low + (high - low) / 2;
        keep_jumps(low, middle);
        keep_jumps(middle, high);
    }
    std::vector<CreditMix> kept() {
        std::sort(kept_.begin(), kept_.end());
        kept_.erase(std::unique(kept_.begin(), kept_.end()), kept_.end());
        std::vector<CreditMix> mixes;
        for (const int dollars : kept_) {
            if (fits(dollars)) mixes.push_back(at(dollars).mix);
        }
        return mixes;
    }

  private:
    CreditMixer& mixer_;
    CreditSplit split_;
    const CreditMix& today_;
    std::map<int, WorkedMix> worked_;
    std::vector<int> kept_;
};

/// The most that can come off the price before the buyer would have to pay towards the rest: the
/// less the money has left for costs, the more the buyer puts in.
int most_off(PriceLine& line) {
    int low = 0; // fits
    int high = line.end();
    if (line.fits(high)) return high;
    while (high - low > 1) {
        const int middle = low + (high - low) / 2;
        (line.fits(middle) ? low : high) = middle;
    }
    return low;
}

} // namespace

bool WorkedMix::continues(const WorkedMix& other) const {
    return available == other.available && rows == other.rows &&
           insurance_months == other.insurance_months &&
           mix.without_use.is_zero() == other.mix.without_use.is_zero() &&
           mix.over_cap.is_zero() == other.mix.over_cap.is_zero();
}

CreditMixer::CreditMixer(const ScenarioRules& rules, PricedHome home, PurchaseFacts facts,
                         CreditAsk ask)
    : given_(rules.scenario), rules_(rules), home_(std::move(home)), price_(home_.contract_price),
      facts_(std::move(facts)), ask_(ask) {
    facts_.credits.emplace_back();
}

LoanFigures CreditMixer::figures(const CreditSplit& split, Money amount) {
    Scenario scenario = given_;
    if (split.rate) scenario.rate = {RateChoice::By::note, {}, *split.rate};
    scenario.buydown = split.buydown;
    if (split.fee_in_cash) {
        scenario.finance_fee = scenario.finance_premium = false;
        scenario.single_premium = true;
    }
    rules_.choose(std::move(scenario));
    ensure(Money{} <= split.off_price && split.off_price <= std::max(amount, Money{}),
           "no more comes off the price than the builder gives");
    home_.contract_price = price_ - split.off_price;
    facts_.credits.back() = {"", CreditFrom::builder, amount - split.off_price, split.rest};
    return loan_figures(rules_, home_, facts_);
}

WorkedMix CreditMixer::work_out(const CreditSplit& split) {
    const LoanFigures f = figures(split, ask_.amount);
    WorkedMix worked;
    worked.mix.off_price = split.off_price;
    worked.mix.buydown = split.buydown;
    worked.mix.fee_in_cash = split.fee_in_cash;
    worked.available = f.available();
    worked.rows = f.rows;
    if (!f.available()) return worked;
    worked.insurance_months = f.paid_insurance().months();
    measure(f, ask_, ask_.amount, worked.mix);
    return worked;
}

std::optional<CreditMix> CreditMixer::told(const CreditSplit& split) {
    const LoanFigures f = figures(split, ask_.amount);
    if (!f.available()) return std::nullopt;
    CreditMix mix;
    mix.off_price = split.off_price;
    mix.buydown = split.buydown;
    mix.fee_in_cash = split.fee_in_cash;
    measure(f, ask_, ask_.amount, mix);
    mix.apr = cost_of_credit(rules_, f).apr;
    return mix;
}

CreditMix CreditMixer::today() {
    CreditMix mix;
    mix.buydown = given_.buydown;
    const LoanFigures f =
        figures({{}, {}, given_.buydown, false, {CreditUse::closing_costs}}, Money{});
    if (!f.available()) return mix;
    measure(f, ask_, Money{}, mix);
    mix.apr = cost_of_credit(rules_, f).apr;
    return mix;
}

std::vector<CreditMix> mixes_of(CreditMixer& mixer, CreditSplit split, const CreditMix& today) {
    constexpr int steps = 8;
    PriceLine line(mixer, std::move(split), today);
    if (!line.fits(0)) return {};
    const int most = most_off(line);
    int before = 0;
    line.keep(0);
    for (int step = 1; step <= steps; ++step) {
        const int next = static_cast<int>(std::int64_t{most} * step / steps);
        if (next == before) continue;
        line.keep(next);
        line.keep_jumps(before, next);
        before = next;
    }
    return line.kept();
}

} // namespace quoin
