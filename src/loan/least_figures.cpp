// Bounding the figures of a range of prices from below, step by step as they are made.
#include <quoin/loan/least_figures.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/lending/told_points.hpp>
#include <quoin/loan/fee_methods.hpp>
#include <quoin/loan/housing_escrow.hpp>
#include <quoin/loan/level_payment.hpp>

#include "loan_parts.hpp"
#include "loan_sizing.hpp"

namespace quoin {
namespace {

constexpr Decimal hundred = Decimal::whole(100);
/// What cutting a percent to the cent and a loan to the dollar can take off.
constexpr Money cut_off = Money::cents(101);
/// A bill is a share of a year's tax to the cent. All else that is rounded never falls as what it
/// is made of grows, and is here worked out at its least by the same functions.
constexpr Money roundings_of_cash = Money::dollars(1);

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

/// part / whole in percent, cut to billionths of it; from 0 to 10,000%.
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
        : rules_(rules), range_(range), price_{range.least, range.most} {
        ensure(range.least <= range.most, "a range of prices rises");
        const Money value = facts.appraised_value.value_or(range.most);
        value_ = {std::min(price_.least, value), std::min(price_.most, value)};
        for (Band& band : box_) band = {Case::unset, Case::unset};
        for (const Credit& credit : range.incentives) credits_.push_back(&credit);
        for (const Credit& credit : facts.credits) credits_.push_back(&credit);
    }

    /// Tells `passes` the least of each part of the loans there may be, until it holds for one.
    bool any(const std::function<bool(const LeastFigures&)>& passes);

  private:
    [[nodiscard]] bool is_unknown() const;
    bool bound_local_costs();
    void bound_escrow();
    [[nodiscard]] std::vector<LoanPart> parts() const;
    bool work_out_from_cash();
    void bound_loan();
    bool bound_part(Money least_costs);
    void bound_cap();
    void describe_box();
    bool may_be_lent();
    void bound_fee();
    void describe_gross_box();
    bool bound_rate();
    bool bound_insurance();
    void bound_costs();
    bool work_out(Money least_costs);
    bool is_surely_had();
    [[nodiscard]] bool is_surely_offered() const;
    bool set_largest_at_all();
    [[nodiscard]] Money most_cash() const;
    [[nodiscard]] Money most_month() const;
    [[nodiscard]] std::optional<Money> most_buydown() const;
    [[nodiscard]] LeastFigures figures() const;
    [[nodiscard]] CreditAmounts least_costs() const;
    [[nodiscard]] Money least_unpaid(CreditAmounts room) const;
    [[nodiscard]] Money least_cash() const;
    [[nodiscard]] Money least_month() const;
    [[nodiscard]] Decimal lowest_ltv() const {
        return Decimal::billionths(box_[static_cast<std::size_t>(Dimension::ltv)].lowest);
    }
    [[nodiscard]] bool may_finance_premium() const {
        return rules_.scenario.single_premium && rules_.scenario.finance_premium &&
               rules_.lender_insures();
    }
    /// The fee at closing of the least or the most base loan, rounded as given.
    [[nodiscard]] Money fee(Money base, Decimal percent, bool financed, Rounding rounding) const {
        const UpfrontMethod* method = rules_.program->upfront;
        return method != nullptr ? method->bound({base, Percent(percent), financed}, rounding)
                                 : percent_of(base, Percent(percent), rounding);
    }
    [[nodiscard]] bool by(DownPayment::By how) const { return rules_.scenario.down.by == how; }

    const ScenarioRules& rules_;
    const PriceRange& range_;
    Range<Money> price_;
    Range<Money> value_;
    Range<Money> base_;
    Range<Money> loan_;
    Range<Decimal> fee_percent_;
    Range<Rate> rate_;
    bool rate_is_sure_ = false; // whatever the range comes to, a rate is found and may run
    Decimal points_;            // least
    Decimal most_points_;
    std::vector<const Credit*> credits_;
    LocalCosts local_; // least
    LocalCosts most_local_;
    Money points_paid_;        // least, not negative
    Money closing_;            // least, less what the lender's credit pays of it
    std::optional<Money> cap_; // most that interested parties may pay; nothing: no such limit
    Money bills_;              // least, prepaid
    Money prepaid_;            // least: interest, bills, escrow; less the rest of that credit
    Money escrow_;             // least
    Money most_escrow_;
    Money insurance_;  // least, a month
    Money down_;       // least
    Money cash_;       // most, of which the down payment is solved
    Money most_month_; // of any loan of the parts so far
    LoanPart part_;
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
    local_.premiums[MonthPart::homeowners_insurance] =
        per_thousand_of(local_.dwelling_value, premium.least, Rounding::half_away);
    return true;
}

/// An escrow deposit is the greatest of sums of bills, each weighted by less than two: it falls by
/// no more than twice what the bills may rise.
void Bounding::bound_escrow() {
    const Place& place = *rules_.place;
    LocalCosts top = local_costs(place, price_.most, range_.flood_zone);
    Box where;
    for (Band& band : where) band = {Case::unset, Case::unset};
    set(where, Dimension::dwelling_value, Range<Money>{local_.dwelling_value, top.dwelling_value});
    set(where, Dimension::price, price_);
    top.premiums[MonthPart::homeowners_insurance] =
        per_thousand_of(top.dwelling_value, read(&place.homeowner, where).most, Rounding::up);
    const Money rise = top.settled.levies + top.settled.districts - local_.settled.levies -
                       local_.settled.districts + top.premiums.total() - local_.premiums.total();
    const Money deposit = initial_escrow_deposit(rules_, local_);
    escrow_ = not_negative(deposit - rise * 2);
    most_escrow_ = deposit + rise * 2 + Money::dollars(1);
    most_local_ = top;
}

/// The base loan, and the down payment that is left.
void Bounding::bound_loan() {
    const DownPayment& down = rules_.scenario.down;
    if (by(DownPayment::By::percent)) {
        const Percent lent = Percent(hundred) - down.percent;
        base_ = {not_negative(percent_of(value_.least, lent, Rounding::down) - cut_off),
                 percent_of(value_.most, lent, Rounding::down)};
        down_ = price_.least - percent_of(value_.least, lent, Rounding::up);
    } else if (by(DownPayment::By::amount)) {
        base_ = {not_negative(price_.least - down.amount - cut_off),
                 not_negative(price_.most - down.amount)};
        down_ = std::min(price_.least, down.amount);
    }
}

/// The same of a part of the loans, where the cash covers down payment and costs, less credits, of
/// which those that pay towards the down payment are counted too. False where it does not, whatever
/// the price.
bool Bounding::bound_part(Money least_costs) {
    base_ = {std::max(part_.least, price_.least - cash_ + least_costs - roundings_of_cash),
             std::min(part_.most, value_.most)};
    down_ = std::max(price_.least - std::min(base_.most, value_.least), part_.left_out);
    return base_.least <= base_.most;
}

void Bounding::describe_box() {
    const Scenario& scenario = rules_.scenario;
    constexpr std::int64_t hundredth = Decimal::one / 100;
    constexpr std::int64_t millionth = Decimal::one / 1'000'000;
    // Under a percent or an amount, LTV does not fall as the price rises; else any pair may be.
    const bool rises = !by(DownPayment::By::cash);
    Decimal least = share(base_.least, rises ? value_.least : value_.most);
    Decimal most = share(base_.most, rises ? value_.most : value_.least);
    if (by(DownPayment::By::percent)) most = hundred - scenario.down.percent.value();
    least = cut_to(least, hundredth);
    most = cut_to(most, hundredth);
    if (!rises) {
        least = std::max(least, part_.least_ltv);
        most = std::min(most, part_.most_ltv);
    }
    set(box_, Dimension::ltv, least, most);
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
    least = cut_to(least, millionth);
    most = cut_to(most, millionth);
    if (!rises) {
        least = std::max(least, part_.least_down);
        most = std::min(most, part_.most_down);
    }
    set(box_, Dimension::down, least, most);
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

/// False only where every loan in the range is over what is lent. One that is solved from cash is
/// never larger than that, with a premium in it or without.
bool Bounding::may_be_lent() {
    const bool solved = by(DownPayment::By::cash);
    if (const BandTable* table = rules_.rule(Rule::maximum_ltv)) {
        const Readings most = read(table, gross_box_);
        if (!most.any) return false;
        const Percent share(most.most);
        if (base_.least > percent_of(value_.most, share, Rounding::down)) return false;
        if (solved) {
            base_.most = std::min(base_.most, percent_of(value_.most, share, Rounding::down));
            down_ = std::max(down_, price_.least - percent_of(price_.least, share, Rounding::up));
        }
    }
    const Readings limit = read(rules_.rule(Rule::loan_limit), gross_box_);
    if (limit.maybe_none) return true;
    const Money most = times(Money::dollars(1), limit.most, Rounding::down);
    if (solved) {
        base_.most = std::min(base_.most, most);
        down_ = std::max(down_, price_.least - most);
    }
    return base_.least <= most;
}

void Bounding::bound_fee() {
    fee_percent_ = {};
    loan_ = base_;
    gross_box_ = box_;
    if (pays_single_premium(rules_, Ltv(lowest_ltv()))) {
        fee_percent_ = read(rules_.single_premium.rule(), box_).or_nothing();
    }
    if (may_finance_premium()) describe_gross_box();
    if (rules_.program->upfront == nullptr) return;
    fee_percent_ = read(rules_.rule(Rule::upfront_fee), box_).or_nothing();
    if (!rules_.scenario.finance_fee) return;
    const Money least = fee(base_.least, fee_percent_.least, true, Rounding::down);
    loan_ = {std::max(base_.least, base_.least + least - cut_off),
             base_.most + fee(base_.most, fee_percent_.most, true, Rounding::up)};
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
    const RateChoice& choice = rules_.scenario.rate;
    rate_ = {choice.note, choice.note};
    points_ = most_points_ = choice.points.value();
    if (choice.by == RateChoice::By::quoted) {
        rate_is_sure_ = may_run_at(rules_, choice.note);
        return rate_is_sure_;
    }
    if (rules_.ladder == nullptr || rules_.ladder->rungs.empty()) return false;
    Range<Decimal> adjustment;
    bool all_told = true;
    for (const BandTable* table : rules_.adjustments) {
        all_told = all_told && table->unit != points_or_no_rate;
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
    auto begin = first(adjustment.least);
    if (begin == rungs.end()) return false;
    const auto last = first(adjustment.most);
    const auto end = last == rungs.end() ? last : std::next(last);
    rate_is_sure_ =
        all_told && last != rungs.end() &&
        std::all_of(begin, end, [&](const Rung& rung) { return may_run_at(rules_, rung.rate); });
    while (begin != end && !may_run_at(rules_, begin->rate)) ++begin;
    if (begin == end) return false;
    rate_ = {begin->rate, begin->rate};
    points_ = most_points_ = begin->points.value();
    for (auto rung = begin; rung != end; ++rung) {
        if (!may_run_at(rules_, rung->rate)) continue;
        rate_ = {std::min(rate_.least, rung->rate), std::max(rate_.most, rung->rate)};
        points_ = std::min(points_, rung->points.value());
        most_points_ = std::max(most_points_, rung->points.value());
    }
    points_ = points_ + adjustment.least;
    most_points_ = most_points_ + adjustment.most;
    if (choice.by == RateChoice::By::points) {
        most_points_ = std::min(most_points_, choice.points.value());
    }
    return true;
}

/// Balances rise with the loan and with the rate, and so does an average of them. False where every
/// loan in the range must be insured and none can be.
bool Bounding::bound_insurance() {
    insurance_ = {};
    const AnnualMethod* method = rules_.program->annual;
    const bool factor = rules_.lender_insures();
    if (method == nullptr) return true;
    if (factor && lowest_ltv() <= Decimal::whole(80)) return true;
    const bool paid_up = factor && rules_.scenario.single_premium;
    const auto& edition = paid_up ? rules_.single_premium : rules_.yearly_percent();
    const Readings yearly = read(edition.rule(), box_);
    if (!yearly.any) return edition.is_no_more();
    if (paid_up) return true;
    const Readings duration = read(rules_.rule(Rule::annual_fee_months), box_);
    if (duration.any && duration.least < Decimal::whole(1)) return true;
    if (yearly.least <= Decimal{}) return true;
    const Decimal upfront = rules_.scenario.finance_fee ? fee_percent_.most : Decimal{};
    insurance_ = method->least({{loan_.least, rate_.least, rules_.scenario.term},
                                base_.least,
                                Percent(yearly.least),
                                Percent(upfront),
                                !rules_.adjustable});
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
    const Money credit = not_negative(-of_loan);
    const Money prepaid =
        prepaid_interest(loan_.least, rate_.least, rules_.closing, rules_.per_diem_year).total() +
        bills_ + escrow_;
    points_paid_ = not_negative(of_loan);
    closing_ = not_negative(closing - credit);
    prepaid_ = not_negative(prepaid - not_negative(credit - closing));
}

/// The most that the cap on contributions lets interested parties pay.
void Bounding::bound_cap() {
    cap_.reset();
    if (rules_.program->policy.cap_on_concessions) return;
    const Readings cap = read(rules_.rule(Rule::contribution_cap), gross_box_);
    if (cap.maybe_none) return;
    const Money base = rules_.program->policy.cap_by_price ? price_.most : value_.most;
    cap_ = percent_of(base, Percent(cap.most), Rounding::up);
}

/// Everything that follows from the base loan.
bool Bounding::work_out(Money least_costs) {
    if (by(DownPayment::By::cash)) {
        if (!bound_part(least_costs)) return false;
    } else {
        bound_loan();
    }
    describe_box();
    bound_fee();
    if (!may_be_lent()) return false;
    bound_fee(); // of what may be lent
    if (!bound_rate()) return false;
    bound_costs();
    bound_cap();
    return bound_insurance();
}

/// The less cash is left by costs and reserves the larger the loan, and with it these: again and
/// again, until that brings no more.
bool Bounding::work_out_from_cash() {
    constexpr int most_rounds = 8;
    constexpr Money enough = Money::dollars(1);
    cash_ = rules_.scenario.down.amount;
    Money costs; // at first no more than credits may pay of the down payment
    for (const Credit* credit : credits_) costs -= not_negative(credit->amount);
    for (int round = 0; round < most_rounds; ++round) {
        if (!work_out(costs)) return false;
        if (round == 0) most_month_ = std::max(most_month_, most_month());
        const Money before = base_.least;
        CreditAmounts room = least_costs();
        room[CreditUse::down_payment] = price_.most; // all that credits may pay of it
        costs = least_unpaid(room) - price_.most;
        if (range_.kept) {
            const Money kept = not_negative(least_month()) * range_.kept->months;
            cash_ = std::min(cash_, range_.kept->of - kept);
        }
        if (!bound_part(costs)) return false;
        if (base_.least <= before + enough) break;
    }
    // A price and the loan on it rise together, which the ends of the part do not tell.
    return work_out(costs) && least_cash() <= cash_;
}

/// What there is for credits to pay, but for the down payment.
CreditAmounts Bounding::least_costs() const {
    CreditAmounts room;
    room[CreditUse::points] = points_paid_;
    room[CreditUse::closing_costs] = closing_;
    room[CreditUse::prepaids] = prepaid_;
    const bool financed = rules_.program->upfront == nullptr ? rules_.scenario.finance_premium
                                                             : rules_.scenario.finance_fee;
    if (!financed) {
        room[CreditUse::upfront_fee] = fee(base_.least, fee_percent_.least, false, Rounding::down);
    }
    const auto& steps = rules_.scenario.buydown;
    const LoanTerms note{loan_.least, rate_.least, rules_.scenario.term};
    if (!steps.empty() && rate_.least == rate_.most && buydown_problems(note, steps).empty()) {
        room[CreditUse::buydown] = buy_down(note, steps).total_subsidy();
    }
    return room;
}

/// A dollar more to pay leaves no less unpaid, and a higher cap no more. But one on concessions
/// holds for some of what is paid alone: it is left out, which leaves less.
Money Bounding::least_unpaid(CreditAmounts room) const {
    return room.total() - use_credits(credits_, room, cap_, false).by_use.total();
}

Money Bounding::least_cash() const {
    CreditAmounts room = least_costs();
    room[CreditUse::down_payment] = not_negative(down_);
    return least_unpaid(room) - roundings_of_cash;
}

Money Bounding::least_month() const {
    const Place& place = *rules_.place;
    const auto parts = place.levies.size() + place.districts.size() + place.exemptions.size();
    const Money roundings = Money::cents(10 + static_cast<std::int64_t>(parts));
    return level_payment(loan_.least, rate_.least, rules_.scenario.term) + insurance_ +
           home_month(local_, local_.settled).total() - roundings;
}

LeastFigures Bounding::figures() const {
    return {true, least_month(), least_cash(), loan_.least, rate_.least};
}

/// Whether at every price of the range some loan of this part can be had and is covered by the
/// cash: then none is looked for in the later ones. Told only of what is solved with `kept`.
bool Bounding::is_surely_had() {
    const LoanProgram& program = *rules_.program;
    if (!range_.kept || part_.most_at_all < part_.least_at_all) return false;
    if (may_finance_premium() || program.adjustable || !rules_.gaps.unknown.empty()) return false;
    base_ = {part_.least, std::min(part_.most, value_.most)};
    describe_box();
    if (!set_largest_at_all() || !is_surely_offered()) return false;
    bound_fee();
    if (!bound_rate() || !rate_is_sure_ || !most_buydown()) return false;
    const Money kept = range_.kept->months > 0 ? most_month_ * range_.kept->months : Money{};
    const Money cash = std::min(rules_.scenario.down.amount, range_.kept->of - kept);
    return most_cash() <= cash;
}

/// Sets the largest base loan that is of this part at every price, and not more than is lent.
bool Bounding::set_largest_at_all() {
    Money base = part_.most_at_all;
    if (const BandTable* table = rules_.rule(Rule::maximum_ltv)) {
        const Readings most = read(table, box_);
        if (!most.any || most.maybe_none) return false;
        base = std::min(base, percent_of(value_.least, Percent(most.least), Rounding::down));
    }
    const Readings limit = read(rules_.rule(Rule::loan_limit), box_);
    if (limit.any) base = std::min(base, times(Money::dollars(1), limit.least, Rounding::down));
    base = to_dollars(base, Rounding::down);
    base_ = {base, base};
    return part_.least_at_all <= base;
}

/// Whether every loan of the part has the fee and the insurance it needs.
bool Bounding::is_surely_offered() const {
    const LoanProgram& program = *rules_.program;
    const auto stands = [&](const BandTable* table) {
        const Readings found = read(table, box_);
        return found.any && !found.maybe_none;
    };
    const BandTable* fee = rules_.rule(Rule::upfront_fee);
    if (program.upfront != nullptr && fee != nullptr && !stands(fee)) return false;
    const bool factor = rules_.lender_insures();
    if (factor && program.upfront != nullptr) return false; // one or the other is due
    const Decimal most_ltv =
        Decimal::billionths(box_[static_cast<std::size_t>(Dimension::ltv)].highest);
    if (factor && most_ltv > Decimal::whole(80)) {
        if (lowest_ltv() <= Decimal::whole(80)) return false; // insured or not
        const bool paid_up = rules_.scenario.single_premium;
        if (!stands((paid_up ? rules_.single_premium : rules_.mi_factors).rule())) return false;
    } else if (!factor && program.annual != nullptr) {
        if (!stands(rules_.rule(Rule::annual_fee))) return false;
    }
    return true;
}

/// The most that a temporary buydown takes; nothing: it may be none that is allowed.
std::optional<Money> Bounding::most_buydown() const {
    const auto& steps = rules_.scenario.buydown;
    if (steps.empty()) return Money{};
    const LoanTerms note{loan_.most, rate_.least, rules_.scenario.term};
    if (rate_.least != rate_.most || !buydown_problems(note, steps).empty()) return std::nullopt;
    return buy_down(note, steps).total_subsidy() + Money::dollars(1);
}

/// The most cash that the base loan that is set takes at any price.
Money Bounding::most_cash() const {
    Money closing;
    for (const ClosingCost* cost : rules_.closing_costs.all()) {
        if (cost->paid_by != PaidBy::buyer) continue;
        const Money price = cost->base == CostBase::loan ? price_.least : price_.most;
        closing += amount_of(*cost, rules_.closing_costs.on(loan_.most, price));
    }
    const Percent points(most_points_);
    const Money of_loan = most_points_ < Decimal{} ? percent_of(loan_.least, points, Rounding::down)
                                                   : percent_of(loan_.most, points, Rounding::up);
    const Money credit = not_negative(-of_loan - Money::dollars(1));
    const Money prepaid =
        prepaid_interest(loan_.most, rate_.most, rules_.closing, rules_.per_diem_year).total() +
        prepaids(*rules_.place, most_local_, rules_.closing).total() + most_escrow_;
    CreditAmounts room;
    room[CreditUse::points] = not_negative(of_loan);
    room[CreditUse::closing_costs] = not_negative(closing - credit);
    room[CreditUse::prepaids] = not_negative(prepaid - not_negative(credit - closing));
    room[CreditUse::upfront_fee] = Money::dollars(2); // what is cut off a financed one
    if (rules_.program->upfront == nullptr || !rules_.scenario.finance_fee) {
        room[CreditUse::upfront_fee] += fee(base_.most, fee_percent_.most, false, Rounding::up);
    }
    room[CreditUse::buydown] = most_buydown().value_or(Money{});
    room[CreditUse::down_payment] = price_.most - base_.least;
    Money paid; // a cap on concessions holds for some of what is paid alone: no credit is counted
    if (!rules_.program->policy.cap_on_concessions) {
        const Readings cap = read(rules_.rule(Rule::contribution_cap), gross_box_);
        std::optional<Money> least;
        if (cap.any) least = percent_of(value_.least, Percent(cap.least), Rounding::down);
        paid = use_credits(credits_, room, least, false).by_use.total();
    }
    return room.total() - paid + roundings_of_cash;
}

Money Bounding::most_month() const {
    const BandTable* table = rules_.yearly_percent().rule();
    const Percent yearly(std::max(read(table, box_).most, Decimal{}));
    const auto parts = rules_.place->levies.size() + rules_.place->districts.size() +
                       rules_.place->exemptions.size();
    return level_payment(loan_.most, rate_.most, rules_.scenario.term) +
           part_of(percent_of(loan_.most, yearly, Rounding::up), months_a_year, Rounding::up) +
           home_month(most_local_, most_local_.settled).total() +
           Money::cents(10 + static_cast<std::int64_t>(parts));
}

/// An appraisal under the price leaves LTV and percent down apart; such loans are one part.
std::vector<LoanPart> Bounding::parts() const {
    if (value_.most == price_.most) return loan_parts(rules_, price_.least, price_.most);
    LoanPart whole;
    whole.most = value_.most;
    whole.most_ltv = whole.most_down = hundred;
    return {whole};
}

bool Bounding::any(const std::function<bool(const LeastFigures&)>& passes) {
    if (price_.least <= Money{}) {
        return passes({true, {}, price_.least - roundings_of_cash, {}, {}});
    }
    if (is_unknown() || !barred_outright(rules_).empty() || !bound_local_costs()) return false;
    bound_escrow();
    bills_ = prepaids(*rules_.place, local_, rules_.closing).total();
    if (!by(DownPayment::By::cash)) return work_out(Money{}) && passes(figures());
    for (const LoanPart& part : parts()) {
        part_ = part;
        if (work_out_from_cash() && passes(figures())) return true;
        if (is_surely_had()) return false; // none of a later part is looked at
    }
    return false;
}

} // namespace

bool any_least_figures(const ScenarioRules& rules, const PurchaseFacts& facts,
                       const PriceRange& range,
                       const std::function<bool(const LeastFigures&)>& passes) {
    keep_on(rules.watch);
    return Bounding(rules, facts, range).any(passes);
}

LeastFigures least_figures(const ScenarioRules& rules, const PurchaseFacts& facts,
                           const PriceRange& range) {
    LeastFigures least;
    any_least_figures(rules, facts, range, [&](const LeastFigures& part) {
        const bool first = !least.possible;
        least.possible = true;
        least.monthly = first ? part.monthly : std::min(least.monthly, part.monthly);
        least.cash = first ? part.cash : std::min(least.cash, part.cash);
        least.loan = first ? part.loan : std::min(least.loan, part.loan);
        least.rate = first ? part.rate : std::min(least.rate, part.rate);
        return false;
    });
    return least;
}

} // namespace quoin
