// Searching prices, though what fits comes and goes.
//
// Between two prices at which every table is read in the same rows, all that a price takes rises
// with it, but for cents of rounding: whole-dollar loans and the cents of a financed fee move the
// cash by less than two dollars, a few dozen dollars of price. So a stretch without a jump is
// halved and its end looked at dollar by dollar; a stretch with one is cut in two, the upper half
// first.
#include "afford_search.hpp"

#include <algorithm>

#include <quoin/loan/level_payment.hpp>

namespace quoin {
namespace {

constexpr std::int64_t wiggle = 64; ///< dollars looked at one by one
constexpr std::int64_t highest_looked_at = 20'000'000;
constexpr std::int64_t lowest_looked_at = 1'000;

/// The most a ratio lets a month take, down to the cent.
Money share_of(Money income, Percent percent) {
    return percent_of(income, percent, Rounding::down);
}

/// What income would make a share of it come to an amount: up to the cent.
Money income_for(Money amount, Percent percent) {
    return Money::cents(multiply_divide(amount.count(), 100 * Decimal::one,
                                        percent.value().billionths(), Rounding::up));
}

bool has(const std::vector<AffordLimit>& limits, AffordLimit limit) {
    return std::find(limits.begin(), limits.end(), limit) != limits.end();
}

} // namespace

AffordSearch::AffordSearch(const Sitting& sitting, std::size_t scenario, const AffordFacts& facts)
    : scenario_(*sitting.rules()[scenario].scenario), rules_(sitting.rules()[scenario]),
      inquiry_(sitting.inquiry()), facts_(facts),
      home_(price_home(sitting.book(), sitting.inquiry().selection)),
      purchase_(sitting.inquiry().facts) {
    rules_.scenario = &scenario_;
    purchase_.appraised_value.reset(); // of one home, not of any price
    home_.lines.clear();
    ratios_ = rules_.program->ratios_in_force(inquiry_.as_of);
    if (ratios_ == nullptr) return;
    back_ = ratios_->back;
    if (facts.automated && ratios_->back_automated) back_ = ratios_->back_automated;
}

void AffordSearch::add_room(PriceTrial& trial, AffordLimit limit, Money needed, Money most) const {
    trial.rooms.push_back({limit, most - needed, needed, most});
    if (needed > most) trial.broken.push_back(limit);
}

/// Where the down payment is whatever the cash allows, it leaves the reserves, whose size follows
/// from the loan: so the cash is lowered until both fit.
LoanFigures AffordSearch::figures_of(const PricedHome& home) {
    constexpr int most_rounds = 8;
    LoanFigures figures = loan_figures(rules_, home, purchase_);
    if (scenario_.down.by != DownPayment::By::cash || !inquiry_.cash) return figures;
    const Money asked = scenario_.down.amount;
    for (int round = 0; round < most_rounds && figures.available(); ++round) {
        const Money takes = figures.cash.needed() + figures.monthly.total() * facts_.reserve_months;
        if (takes <= *inquiry_.cash) break;
        scenario_.down.amount = scenario_.down.amount - (takes - *inquiry_.cash);
        figures = loan_figures(rules_, home, purchase_);
    }
    scenario_.down.amount = asked;
    return figures;
}

PriceTrial AffordSearch::trial(Money price, bool flood_zone) {
    PricedHome home = home_;
    home.base_price = price;
    home.contract_price = price;
    home.flood_zone = flood_zone;
    PriceTrial trial;
    trial.figures = figures_of(home);
    if (!trial.figures.available()) {
        trial.broken.push_back(AffordLimit::program);
        return trial;
    }
    const Money month = trial.figures.monthly.total();
    const Money income = inquiry_.monthly_income.value_or(Money{});
    if (inquiry_.monthly_income && ratios_ != nullptr) {
        if (ratios_->front) {
            add_room(trial, AffordLimit::front_ratio, month, share_of(income, *ratios_->front));
        }
        add_room(trial, AffordLimit::back_ratio, month + inquiry_.monthly_debts.value_or(Money{}),
                 share_of(income, *back_));
    }
    if (inquiry_.cash) {
        add_room(trial, AffordLimit::cash,
                 trial.figures.cash.needed() + month * facts_.reserve_months, *inquiry_.cash);
    }
    return trial;
}

AffordSearch::Point AffordSearch::point(std::int64_t dollars) {
    const PriceTrial at = trial(Money::dollars(dollars));
    Point point;
    point.dollars = dollars;
    point.fits = std::all_of(at.broken.begin(), at.broken.end(),
                             [&](AffordLimit limit) { return has(ignored_, limit); });
    std::copy(at.figures.rows.begin(), at.figures.rows.end(), point.rows.begin());
    int refused = 0; // which refusals there are, as bits
    for (const Refusal& refusal : at.figures.refusals)
        refused |= 1 << static_cast<int>(refusal.why);
    point.rows[lookup_count] = refused;
    const BandTable* limit = rules_.rule(Rule::maximum_ltv);
    const auto row = limit != nullptr ? limit->row(loan_case(rules_, at.figures)) : std::nullopt;
    point.rows[lookup_count + 1] = row.value_or(no_row);
    return point;
}

/// A price over which the payment alone, at the lowest rate there is, breaks the largest ratio.
std::int64_t AffordSearch::upper_bound() const {
    if (!inquiry_.monthly_income || ratios_ == nullptr) return highest_looked_at;
    const Money most = share_of(*inquiry_.monthly_income, *back_);
    Rate lowest = rules_.scenario->rate.note;
    const bool quoted = rules_.scenario->rate.by == RateChoice::By::quoted;
    if (!quoted && rules_.ladder != nullptr) lowest = rules_.ladder->rungs.front().rate;
    std::int64_t low = 0;
    std::int64_t high = highest_looked_at;
    while (high - low > 1) {
        const std::int64_t loan = low + (high - low) / 2;
        const bool over = level_payment(Money::dollars(loan), lowest, rules_.scenario->term) > most;
        (over ? high : low) = loan;
    }
    const DownPayment& down = rules_.scenario->down;
    if (down.by == DownPayment::By::percent) {
        const Percent rest = Percent(Decimal::whole(100)) - down.percent;
        if (rest <= Percent{}) return highest_looked_at;
        const Money price = income_for(Money::dollars(high), rest);
        return std::min(divide_rounded<std::int64_t>(price.count(), 100, Rounding::up) + wiggle,
                        highest_looked_at);
    }
    return std::min(high + divide_rounded<std::int64_t>(down.amount.count(), 100, Rounding::up) +
                        wiggle,
                    highest_looked_at);
}

std::optional<std::int64_t> AffordSearch::scan(std::int64_t low, std::int64_t high) {
    for (std::int64_t dollars = high; dollars >= low; --dollars) {
        if (point(dollars).fits) return dollars;
    }
    return std::nullopt;
}

std::optional<std::int64_t> AffordSearch::best_on_stretch(const Point& low, const Point& high) {
    if (!low.fits) return scan(low.dollars, std::min(low.dollars + wiggle, high.dollars));
    std::int64_t good = low.dollars;
    std::int64_t bad = high.dollars;
    while (bad - good > 1) {
        const std::int64_t middle = good + (bad - good) / 2;
        (point(middle).fits ? good : bad) = middle;
    }
    return scan(good, std::min(good + wiggle, high.dollars));
}

std::optional<std::int64_t> AffordSearch::best(const Point& low, const Point& high) {
    if (high.fits) return high.dollars;
    if (low.rows == high.rows) return best_on_stretch(low, high);
    if (high.dollars - low.dollars <= wiggle) return scan(low.dollars, high.dollars);
    const Point middle = point(low.dollars + (high.dollars - low.dollars) / 2);
    if (const auto found = best(middle, high)) return found;
    return best(low, middle);
}

std::optional<Money> AffordSearch::highest(std::vector<AffordLimit> ignored) {
    ignored_ = std::move(ignored);
    const bool bounded = !has(ignored_, AffordLimit::back_ratio);
    const std::int64_t end = bounded ? upper_bound() : highest_looked_at;
    const auto found = best(point(lowest_looked_at), point(std::max(end, lowest_looked_at)));
    ignored_.clear();
    if (!found) return std::nullopt;
    return Money::dollars(*found);
}

AffordStep AffordSearch::step_to(Money price) {
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
        const bool front = room.limit == AffordLimit::front_ratio;
        const Percent percent = front ? *ratios_->front : *back_;
        if (over.is_zero()) continue;
        step.more_income = std::max(step.more_income, income_for(room.needed, percent) - income);
        (front ? for_front : step.less_debts) = over;
    }
    step.debts_suffice = for_front.is_zero() && step.less_debts <= debts;
    return step;
}

} // namespace quoin
