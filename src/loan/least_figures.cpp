// Bounding the figures of a range of prices from below, step by step as they are made.
#include <quoin/loan/least_figures.hpp>

#include <algorithm>

#include <quoin/loan/housing_escrow.hpp>
#include <quoin/loan/level_payment.hpp>

namespace quoin {
namespace {

constexpr Decimal hundred = Decimal::whole(100);
constexpr int months_a_year = 12;
/// What cutting a percent to the cent and a loan to the dollar can take off.
constexpr Money cut_off = Money::cents(101);
/// Closing costs, bills and interest are each rounded to the cent, taxable values to the dollar.
constexpr Money roundings_of_cash = Money::dollars(5);

template <class Value>
struct Range {
    Value least{};
    Value most{};
};

/// The cases that a range of prices may be read at: a band of each dimension.
using Box = std::array<Band, dimension_count>;

/// What a table may say anywhere in a box.
struct Readings {
    bool any = false;       ///< some row may be read
    bool maybe_none = true; ///< and maybe none
    Decimal least;
    Decimal most;

    /// Where no row counts as nothing.
    [[nodiscard]] Range<Decimal> or_nothing() const {
        if (!any) return {};
        if (!maybe_none) return {least, most};
        return {std::min(least, Decimal{}), std::max(most, Decimal{})};
    }
};

Readings read(const BandTable* table, const Box& box) {
    Readings found;
    if (table == nullptr) return found;
    const std::size_t width = table->dimensions.size();
    for (std::size_t row = 0; row < table->values.size(); ++row) {
        bool touches = true;
        bool holds = true;
        for (std::size_t i = 0; i < width && touches; ++i) {
            const Band& band = table->bands[row * width + i];
            const Band& at = box[static_cast<std::size_t>(table->dimensions[i])];
            touches = band.lowest <= at.highest && at.lowest <= band.highest;
            holds = holds && band.lowest <= at.lowest && at.highest <= band.highest;
        }
        if (!touches) continue;
        const Decimal value = table->values[row];
        found.least = found.any ? std::min(found.least, value) : value;
        found.most = found.any ? std::max(found.most, value) : value;
        found.any = true;
        if (holds) found.maybe_none = false;
    }
    return found;
}

void set(Box& box, Dimension dimension, Decimal least, Decimal most) {
    box[static_cast<std::size_t>(dimension)] = {least.billionths(), most.billionths()};
}
void set(Box& box, Dimension dimension, Range<Money> amount) {
    constexpr std::int64_t per_cent = Decimal::one / 100;
    box[static_cast<std::size_t>(dimension)] = {amount.least.count() * per_cent,
                                                amount.most.count() * per_cent};
}

/// part / whole in percent, cut to billionths of it; from 0 to 10,000 %.
Decimal share(Money part, Money whole) {
    if (whole <= Money{} || part <= Money{}) return {};
    const Int128 billionths = Int128{part.count()} * 100 * Decimal::one / whole.count();
    return Decimal::billionths(
        static_cast<std::int64_t>(std::min<Int128>(billionths, Int128{10'000} * Decimal::one)));
}

Decimal cut_to(Decimal number, std::int64_t step) {
    return Decimal::billionths(number.billionths() / step * step);
}

Money not_negative(Money amount) { return std::max(amount, Money{}); }

/// The steps of loan_figures on a range of prices.
class Bounding {
  public:
    Bounding(const ScenarioRules& rules, const PurchaseFacts& facts, const PriceRange& range)
        : rules_(rules), facts_(facts), range_(range), price_{range.least, range.most} {
        const Money value = facts.appraised_value.value_or(range.most);
        value_ = {std::min(price_.least, value), std::min(price_.most, value)};
        for (Band& band : box_) band = {Case::unset, Case::unset};
        cost_credits_ = range.credits;
        for (const Credit& credit : facts.credits) {
            const bool down = credit.may_pay(CreditUse::down_payment);
            (down ? down_credits_ : cost_credits_) += not_negative(credit.amount);
        }
    }

    LeastFigures figures();

  private:
    [[nodiscard]] bool is_unknown() const;
    bool bound_local_costs();
    void bound_escrow();
    void bound_loan(Money least_costs);
    void describe_box();
    bool may_be_lent() const;
    void bound_fee();
    void describe_gross_box();
    bool bound_rate();
    bool bound_insurance();
    void bound_costs();
    bool work_out(Money least_costs);
    [[nodiscard]] Money least_cash() const;
    [[nodiscard]] Money least_month() const;
    [[nodiscard]] Decimal lowest_ltv() const {
        return Decimal::billionths(box_[static_cast<std::size_t>(Dimension::ltv)].lowest);
    }
    [[nodiscard]] bool may_finance_premium() const {
        return rules_.scenario->single_premium && rules_.scenario->finance_premium &&
               rules_.program->annual == AnnualMethod::lender_factor;
    }
    [[nodiscard]] bool by(DownPayment::By how) const { return rules_.scenario->down.by == how; }

    const ScenarioRules& rules_;
    const PurchaseFacts& facts_;
    const PriceRange& range_;
    Range<Money> price_;
    Range<Money> value_;
    Range<Money> base_;
    Range<Money> loan_;
    Range<Decimal> fee_percent_;
    Range<Rate> rate_;
    Decimal points_;     // least
    Money cost_credits_; // most that pays costs alone: never more than they come to
    Money down_credits_; // most that may pay of the down payment too
    LocalCosts local_;   // least
    Money escrow_;       // least
    Money costs_;        // least: closing costs, points, interest and bills prepaid, escrow
    Money insurance_;    // least, a month
    Money down_;         // least
    Box box_{};
    Box gross_box_{}; // with a financed premium in it; else the same
};

/// Whether every loan is refused, since a list that it is read against says nothing on the day.
bool Bounding::is_unknown() const {
    const auto& gaps = rules_.gaps.unknown;
    return std::any_of(gaps.begin(), gaps.end(),
                       [&](const ListGap& gap) { return rules_.always_reads(gap.list); });
}

bool Bounding::bound_local_costs() {
    const Place& place = *rules_.place;
    local_ = local_costs(place, price_.least, range_.flood_zone);
    const Money most = local_costs(place, price_.most, range_.flood_zone).dwelling_value;
    Box where;
    for (Band& band : where) band = {Case::unset, Case::unset};
    set(where, Dimension::dwelling_value, Range<Money>{local_.dwelling_value, most});
    set(where, Dimension::price, price_);
    const Readings premium = read(&place.homeowner, where);
    if (!premium.any) return false;
    local_.homeowner = per_thousand_of(local_.dwelling_value, premium.least, Rounding::half_away);
    return true;
}

/// An escrow deposit is the greatest of sums of bills, each weighted by less than two: it falls by
/// no more than twice what the bills may rise.
void Bounding::bound_escrow() {
    const Place& place = *rules_.place;
    const LocalCosts top = local_costs(place, price_.most, range_.flood_zone);
    Box where;
    for (Band& band : where) band = {Case::unset, Case::unset};
    set(where, Dimension::dwelling_value, Range<Money>{local_.dwelling_value, top.dwelling_value});
    set(where, Dimension::price, price_);
    const Money premium =
        per_thousand_of(top.dwelling_value, read(&place.homeowner, where).most, Rounding::up);
    const Money rise = top.settled.levies + top.settled.districts - local_.settled.levies -
                       local_.settled.districts + premium - local_.homeowner;
    escrow_ = not_negative(initial_escrow_deposit(rules_, local_) - rise * 2);
}

/// The base loan, and the down payment that is left.
void Bounding::bound_loan(Money least_costs) {
    const DownPayment& down = rules_.scenario->down;
    if (by(DownPayment::By::percent)) {
        const Percent lent = Percent(hundred) - down.percent;
        base_ = {not_negative(percent_of(value_.least, lent, Rounding::down) - cut_off),
                 percent_of(value_.most, lent, Rounding::down)};
        down_ = price_.least - percent_of(value_.least, lent, Rounding::up);
    } else if (by(DownPayment::By::amount)) {
        base_ = {not_negative(price_.least - down.amount - cut_off),
                 not_negative(price_.most - down.amount)};
        down_ = std::min(price_.least, down.amount);
    } else {
        // The cash covers down payment and costs, less credits; and no loan is above the value.
        base_ = {not_negative(price_.least - down.amount +
                              not_negative(least_costs - cost_credits_) - down_credits_ -
                              roundings_of_cash),
                 value_.most};
        base_.least = std::min(base_.least, base_.most);
        down_ = not_negative(price_.least - value_.least);
    }
}

void Bounding::describe_box() {
    const Scenario& scenario = *rules_.scenario;
    constexpr std::int64_t hundredth = Decimal::one / 100;
    constexpr std::int64_t millionth = Decimal::one / 1'000'000;
    // Under a percent or an amount, LTV does not fall as the price rises; else any pair may be.
    const bool rises = !by(DownPayment::By::cash);
    Decimal least = share(base_.least, rises ? value_.least : value_.most);
    Decimal most = share(base_.most, rises ? value_.most : value_.least);
    if (by(DownPayment::By::percent)) most = hundred - scenario.down.percent.value();
    set(box_, Dimension::ltv, cut_to(least, hundredth), cut_to(most, hundredth));
    Range<Money> down{not_negative(price_.least - base_.most),
                      not_negative(price_.most - base_.least)};
    if (rises) down = {not_negative(down_), not_negative(price_.most - base_.least)};
    if (by(DownPayment::By::amount)) down.most = scenario.down.amount + cut_off;
    least = share(down.least, price_.most);
    most = std::min(share(down.most, price_.least), hundred);
    if (by(DownPayment::By::percent)) { // of the price at least as much as of the value
        least = std::max(least, scenario.down.percent.value());
        most = std::min(hundred,
                        share(price_.most -
                                  percent_of(value_.most, Percent(hundred) - scenario.down.percent,
                                             Rounding::down) +
                                  cut_off,
                              price_.most) +
                            share(cut_off, price_.least));
    }
    set(box_, Dimension::down, cut_to(least, millionth), cut_to(most, millionth));
    set(box_, Dimension::base_loan, base_);
    set(box_, Dimension::loan, base_);
    set(box_, Dimension::price, price_);
    const auto exactly = [&](Dimension dimension, int number) {
        set(box_, dimension, Decimal::whole(number), Decimal::whole(number));
    };
    exactly(Dimension::term, scenario.term.count());
    exactly(Dimension::use, static_cast<int>(scenario.use));
    exactly(Dimension::area, static_cast<int>(rules_.place->loan_limit_area));
    if (scenario.score) exactly(Dimension::score, *scenario.score);
}

/// False only where every loan in the range is over what is lent.
bool Bounding::may_be_lent() const {
    if (by(DownPayment::By::cash)) return true; // its loan is only known within wide bounds
    if (const BandTable* table = rules_.rule(Rule::maximum_ltv)) {
        const Readings most = read(table, box_);
        if (!most.any) return false;
        if (base_.least > percent_of(value_.most, Percent(most.most), Rounding::down)) return false;
    }
    const Readings limit = read(rules_.rule(Rule::loan_limit), box_);
    return limit.maybe_none || base_.least <= times(Money::dollars(1), limit.most, Rounding::down);
}

void Bounding::bound_fee() {
    const LoanProgram& program = *rules_.program;
    fee_percent_ = {};
    loan_ = base_;
    gross_box_ = box_;
    if (pays_single_premium(rules_, Ltv(lowest_ltv()))) {
        fee_percent_ = read(rules_.single_premium.rule(), box_).or_nothing();
    }
    if (may_finance_premium()) describe_gross_box();
    if (program.upfront == UpfrontMethod::none) return;
    fee_percent_ = read(rules_.rule(Rule::upfront_fee), box_).or_nothing();
    if (!rules_.scenario->finance_fee) return;
    const auto total = [&](Money base, Decimal percent, Rounding rounding) {
        if (program.upfront == UpfrontMethod::share_of_total_loan) {
            return Money::cents(multiply_divide(base.count(), 100 * Decimal::one,
                                                (hundred - percent).billionths(), rounding));
        }
        return base + percent_of(base, Percent(percent), rounding);
    };
    loan_ = {
        std::max(base_.least, total(base_.least, fee_percent_.least, Rounding::down) - cut_off),
        total(base_.most, fee_percent_.most, Rounding::up)};
}

/// The loan with its premium, whatever that may come to, and its LTV.
void Bounding::describe_gross_box() {
    const Decimal most = std::max(read(rules_.single_premium.rule(), box_).most, Decimal{});
    const Money least_fee = percent_of(base_.least, Percent(fee_percent_.least), Rounding::down);
    loan_ = {std::max(base_.least, base_.least + least_fee - cut_off),
             base_.most + percent_of(base_.most, Percent(most), Rounding::up)};
    constexpr std::int64_t hundredth = Decimal::one / 100;
    const Decimal least_ltv = cut_to(share(loan_.least, value_.most), hundredth);
    const Band& base_ltv = box_[static_cast<std::size_t>(Dimension::ltv)];
    const Decimal most_ltv = Decimal::billionths(base_ltv.highest + hundredth);
    set(gross_box_, Dimension::ltv, std::max(least_ltv, Decimal::billionths(base_ltv.lowest)),
        most_ltv + Decimal::billionths(multiply_divide(most_ltv.billionths(), most.billionths(),
                                                       hundred.billionths(), Rounding::up)));
    set(gross_box_, Dimension::loan, {base_.least, loan_.most});
}

/// The rungs that may be chosen: as adjustments rise, the choice only moves up the ladder.
bool Bounding::bound_rate() {
    const RateChoice& choice = rules_.scenario->rate;
    rate_ = {choice.note, choice.note};
    points_ = choice.points.value();
    if (choice.by == RateChoice::By::quoted) return true;
    if (rules_.ladder == nullptr || rules_.ladder->rungs.empty()) return false;
    Range<Decimal> adjustment;
    for (const BandTable* table : rules_.adjustments) {
        const Range<Decimal> one = read(table, gross_box_).or_nothing();
        adjustment = {adjustment.least + one.least, adjustment.most + one.most};
    }
    const auto& rungs = rules_.ladder->rungs;
    const auto first = [&](Decimal added) {
        return std::find_if(rungs.begin(), rungs.end(), [&](const Rung& rung) {
            return choice.by == RateChoice::By::note ? rung.rate == choice.note
                                                     : rung.points + Points(added) <= choice.points;
        });
    };
    const auto begin = first(adjustment.least);
    if (begin == rungs.end()) return false;
    auto end = first(adjustment.most);
    if (end != rungs.end()) ++end;
    rate_ = {begin->rate, begin->rate};
    points_ = begin->points.value();
    for (auto rung = begin; rung != end; ++rung) {
        rate_ = {std::min(rate_.least, rung->rate), std::max(rate_.most, rung->rate)};
        points_ = std::min(points_, rung->points.value());
    }
    points_ = points_ + adjustment.least;
    return true;
}

/// Balances rise with the loan and with the rate, and so does an average of them. False where every
/// loan in the range must be insured and none can be.
bool Bounding::bound_insurance() {
    insurance_ = {};
    const AnnualMethod method = rules_.program->annual;
    const bool factor = method == AnnualMethod::lender_factor;
    if (method == AnnualMethod::none) return true;
    if (factor && lowest_ltv() <= Decimal::whole(80)) return true;
    const bool paid_up = factor && rules_.scenario->single_premium;
    const auto& edition = paid_up  ? rules_.single_premium
                          : factor ? rules_.mi_factors
                                   : rules_.edition(Rule::annual_fee);
    const Readings yearly = read(edition.rule(), box_);
    if (!yearly.any) return edition.is_no_more();
    if (paid_up) return true;
    const Readings duration = read(rules_.rule(Rule::annual_fee_months), box_);
    if (duration.any && duration.least < Decimal::whole(1)) return true;
    if (yearly.least <= Decimal{}) return true;
    const Percent percent(yearly.least);
    const LoanTerms note{loan_.least, rate_.least, rules_.scenario->term};
    const Months year(std::min(months_a_year, note.term.count()));
    if (factor) {
        insurance_ = level_premium(base_.least, percent, months_a_year).in_month(1);
    } else if (method == AnnualMethod::hud_average_balance) {
        const bool financed = rules_.scenario->finance_fee;
        insurance_ = hud_annual_premium(note, percent,
                                        financed ? Percent(fee_percent_.most) : Percent{}, year)
                         .in_month(1);
    } else if (!rules_.adjustable) {
        insurance_ = usda_annual_fee(amortize(note), percent, year).in_month(1);
    }
    return true;
}

/// Costs never fall as the loan or the price grows, but for what an owner's policy of a higher
/// price already covers of the lender's. Points never take back more than all costs together.
void Bounding::bound_costs() {
    Money closing;
    for (const ClosingCost* cost : rules_.closing_costs.all()) {
        if (cost->paid_by != PaidBy::buyer) continue;
        const Money price = cost->base == CostBase::loan ? price_.most : price_.least;
        closing += amount_of(*cost, rules_.closing_costs.on(loan_.least, price));
    }
    const Percent points(points_);
    const Money of_loan = points_ < Decimal{} ? percent_of(loan_.most, points, Rounding::up)
                                              : percent_of(loan_.least, points, Rounding::down);
    const Money prepaid =
        prepaid_interest(loan_.least, rate_.least, rules_.closing, rules_.per_diem_year).total() +
        prepaids(*rules_.place, local_, rules_.closing).total();
    costs_ = not_negative(closing + prepaid + escrow_ + of_loan);
}

/// Everything that follows from the base loan.
bool Bounding::work_out(Money least_costs) {
    bound_loan(least_costs);
    describe_box();
    if (!may_be_lent()) return false;
    bound_fee();
    if (!bound_rate()) return false;
    bound_costs();
    return true;
}

Money Bounding::least_cash() const {
    Money fee;
    const bool financed = rules_.program->upfront == UpfrontMethod::none
                              ? rules_.scenario->finance_premium
                              : rules_.scenario->finance_fee;
    if (!financed) {
        fee = percent_of(base_.least, Percent(fee_percent_.least), Rounding::down);
    }
    Money buydown;
    const auto& steps = rules_.scenario->buydown;
    const LoanTerms note{loan_.least, rate_.least, rules_.scenario->term};
    if (!steps.empty() && rate_.least == rate_.most && buydown_problems(note, steps).empty()) {
        buydown = buy_down(note, steps).total_subsidy();
    }
    const Money costs = fee + costs_ + buydown;
    return not_negative(down_) + not_negative(costs - cost_credits_) - down_credits_ -
           roundings_of_cash;
}

Money Bounding::least_month() const {
    const Place& place = *rules_.place;
    const auto month = [](Money yearly) {
        return part_of(yearly, months_a_year, Rounding::half_away);
    };
    const auto parts = place.levies.size() + place.districts.size() + place.exemptions.size();
    const Money roundings = Money::cents(10 + static_cast<std::int64_t>(parts));
    return level_payment(loan_.least, rate_.least, rules_.scenario->term) + insurance_ +
           month(local_.settled.levies) + month(local_.settled.districts) +
           month(local_.homeowner) + month(local_.flood) + month(local_.wind) + local_.dues -
           roundings;
}

LeastFigures Bounding::figures() {
    LeastFigures least;
    if (price_.least <= Money{})
        return {true, {}, -roundings_of_cash - cost_credits_ - down_credits_, {}, {}};
    if (is_unknown() || !bound_local_costs()) return least;
    bound_escrow();
    if (!work_out(Money{})) return least;
    if (by(DownPayment::By::cash) && !work_out(costs_)) return least;
    if (!bound_insurance()) return least;
    least.possible = true;
    least.monthly = least_month();
    least.loan = loan_.least;
    least.rate = rate_.least;
    least.cash = least_cash();
    return least;
}

} // namespace

LeastFigures least_figures(const ScenarioRules& rules, const PurchaseFacts& facts,
                           const PriceRange& range) {
    return Bounding(rules, facts, range).figures();
}

} // namespace quoin
