// Sizing a loan: down payment, base loan, upfront fee, rate, cash.
#include "loan_sizing.hpp"

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/lending/told_points.hpp>

#include "fees/table.hpp"

namespace quoin {
namespace {

constexpr Months least_initial_with_buydown{36};

/// A lender's mortgage insurance is for loans over 80% of value.
bool is_insured(Ltv ltv) { return ltv > Ltv(Decimal::whole(80)); }

/// part / whole in percent, cut to `decimals` places: an edge that is met stays met.
Decimal share_in_percent(Money part, Money whole, int decimals) {
    if (whole <= Money{}) return {};
    std::int64_t scale = 1;
    for (int i = 0; i < decimals; ++i) scale *= 10;
    const std::int64_t units =
        multiply_divide(part.count(), 100 * scale, whole.count(), Rounding::down);
    return Decimal::billionths(multiply_divide(units, Decimal::one, scale, Rounding::down));
}

Money cut(const LoanProgram& program, Money loan) {
    return program.whole_dollars ? to_dollars(loan, Rounding::down) : loan;
}

LoanTerms terms_at(const ScenarioRules& rules, Rate rate) {
    return {Money{}, rate, rules.scenario.term};
}

/// A rate that changes needs the margin and index of the sheet, and caps that fit them.
bool may_adjust(const ScenarioRules& rules, Rate rate) {
    if (!rules.program->adjustable) return true;
    return rules.adjustable &&
           adjustable_problems(terms_at(rules, rate), *rules.adjustable).empty();
}

bool may_buy_down(const ScenarioRules& rules, Rate rate) {
    const auto& plan = rules.program->adjustable;
    if (plan && plan->initial < least_initial_with_buydown) return false;
    return buydown_problems(terms_at(rules, rate), rules.scenario.buydown).empty();
}

/// Whether each adjustment that is only told of some loans is told of this one.
bool all_told(const std::vector<const BandTable*>& tables, const std::vector<int>& rows) {
    for (std::size_t i = 0; i < tables.size(); ++i) {
        if (rows[i] == no_row && tables[i]->unit == points_or_no_rate) return false;
    }
    return true;
}

/// Whether a loan has been given a rate; one without is refused.
bool has_rate(const ScenarioRules& rules, const RatedLoan& f) {
    return rules.scenario.rate.by == RateChoice::By::quoted || f.row(Lookup::note_rate) != no_row;
}

/// The loans that a scenario may be given on a home.
class Sizing {
  public:
    Sizing(const ScenarioRules& rules, const PricedHome& home, const PurchaseFacts& facts,
           const HomeFigures& of_home)
        : rules_(rules), home_(home), facts_(facts), of_home_(of_home) {
        incentives_ = incentive_credits(home);
        for (const Credit& credit : incentives_) credits_.push_back(&credit);
        for (const Credit& credit : facts.credits) credits_.push_back(&credit);
    }

    /// Everything that follows from the base loan.
    [[nodiscard]] SizedLoan with_base_loan(Money base) const { return paid(rated(lent(base))); }

    /// The smallest base loan that the cash still covers.
    [[nodiscard]] Sized solve_from_cash(Money cash) const;

    /// Why it cannot be had.
    [[nodiscard]] std::vector<Refusal> refusals(const SizedLoan& f) const;

  private:
    const BandTable* rule(Rule which) const { return rules_.rule(which); }

    /// The value of a rule for a case, with its row noted.
    static std::optional<Decimal> look_up(const BandTable* table, Lookup lookup, const Case& where,
                                          LookedUpRows& rows) {
        if (table == nullptr) return std::nullopt;
        const auto row = table->row(where);
        rows.note(lookup, row.value_or(no_row));
        return row ? std::optional(table->value(*row)) : std::nullopt;
    }
    [[nodiscard]] bool may_finance_premium() const {
        return rules_.scenario.finance_premium && rules_.scenario.single_premium &&
               rules_.lender_insures();
    }
    /// What the limits of a program are held against.
    [[nodiscard]] Money held(const LentLoan& f) const {
        return may_finance_premium() ? f.loan : f.base_loan;
    }

    [[nodiscard]] LentLoan lent(Money base) const;
    void add_upfront_fee(LentLoan& f, const Case& where) const;
    void add_annual_percent(LentLoan& f, const Case& where) const;
    [[nodiscard]] RatedLoan rated(LentLoan lent) const;
    [[nodiscard]] Points adjustment(RatedLoan& f) const;
    [[nodiscard]] SizedLoan paid(RatedLoan rated) const;
    void add_points(SizedLoan& f) const;
    void add_buydown(SizedLoan& f) const;
    void add_credits(SizedLoan& f) const;

    void check_known(const SizedLoan& f, std::vector<Refusal>& refusals) const;
    void check_limits(const SizedLoan& f, std::vector<Refusal>& refusals) const;
    [[nodiscard]] bool is_uninsurable(const LentLoan& f) const;

    /// Base loans in dollars, of which no table changes rows: all above `low`, to `high`.
    struct Stretch {
        std::int64_t low = -1;
        std::int64_t high = 0;
    };
    [[nodiscard]] std::vector<Stretch> stretches() const;
    [[nodiscard]] std::optional<SizedLoan> most_of(const Stretch& stretch) const;
    [[nodiscard]] std::optional<SizedLoan> lowered_to(Money most, std::int64_t low,
                                                      SizedLoan f) const;
    [[nodiscard]] Money down_credits() const;
    [[nodiscard]] SizedLoan smallest_covered(Stretch stretch, SizedLoan largest, Money cash) const;
    [[nodiscard]] SizedLoan least_needed(const std::vector<Stretch>& all) const;
    template <class Within>
    [[nodiscard]] std::int64_t last_with_premium(Percent premium, Within within) const;
    void add_gross_points(std::int64_t most, std::vector<std::int64_t>& points) const;

    const ScenarioRules& rules_;
    const PricedHome& home_;
    const PurchaseFacts& facts_;
    const HomeFigures& of_home_;
    std::vector<Credit> incentives_;
    std::vector<const Credit*> credits_; ///< in the order of their use
};

LentLoan Sizing::lent(Money base) const {
    LentLoan f(of_home_);
    f.base_loan = base;
    f.ltv = Ltv(share_in_percent(base, f.value, 2));
    f.down_percent = Percent(share_in_percent(f.price - base, f.price, 6));
    const Case where = loan_case(rules_, f);
    add_upfront_fee(f, where);
    f.loan = f.base_loan + f.financed_fee;
    f.gross_ltv = may_finance_premium() ? Ltv(share_in_percent(f.loan, f.value, 2)) : f.ltv;
    add_annual_percent(f, where);
    return f;
}

/// The program's fee, or a single premium, which is charged as a percent of the base loan and paid
/// in cash unless it is asked for in the loan.
void Sizing::add_upfront_fee(LentLoan& f, const Case& where) const {
    const Scenario& scenario = rules_.scenario;
    const bool single = pays_single_premium(rules_, f.ltv);
    const UpfrontMethod* method = single ? &percent_of_base_loan : rules_.program->upfront;
    if (method == nullptr) return;
    const auto percent =
        single ? look_up(rules_.single_premium.rule(), Lookup::single_premium, where, f.rows)
               : look_up(rule(Rule::upfront_fee), Lookup::upfront_fee, where, f.rows);
    f.upfront_percent = Percent(percent.value_or(Decimal{}));
    const UpfrontFee upfront = method->charge(
        {f.base_loan, f.upfront_percent, single ? scenario.finance_premium : scenario.finance_fee,
         rules_.program->whole_dollars});
    f.upfront_fee = upfront.fee;
    f.financed_fee = upfront.financed;
    ensure(f.financed_fee - f.upfront_fee <= Money::dollars(1),
           "no more of a fee is financed than there is, but for what is rounded");
}

/// The annual fee of the program, or the lender's factor where that insures the loan.
void Sizing::add_annual_percent(LentLoan& f, const Case& where) const {
    if (rules_.program->annual == nullptr || pays_single_premium(rules_, f.ltv)) return;
    const bool factor = rules_.lender_insures();
    if (factor && !is_insured(f.ltv)) return;
    const auto percent = look_up(rules_.yearly_percent().rule(),
                                 factor ? Lookup::mi_factor : Lookup::annual_fee, where, f.rows);
    f.annual_percent = Percent(percent.value_or(Decimal{}));
    look_up(rule(Rule::annual_fee_months), Lookup::annual_fee_months, where, f.rows);
}

Points Sizing::adjustment(RatedLoan& f) const {
    const Case where = gross_case(rules_, f);
    Points points;
    for (const BandTable* table : rules_.adjustments) {
        const auto row = table->row(where);
        f.rows.adjustments.push_back(row.value_or(no_row));
        if (row) points = points + Points(table->value(*row));
    }
    return points;
}

RatedLoan Sizing::rated(LentLoan lent) const {
    const RateChoice& choice = rules_.scenario.rate;
    RatedLoan f(std::move(lent));
    f.rate = choice.note;
    f.points = choice.points;
    if (choice.by == RateChoice::By::quoted || rules_.ladder == nullptr) return f;
    const Points added = adjustment(f);
    if (!all_told(rules_.adjustments, f.rows.adjustments)) return f;
    const auto& rungs = rules_.ladder->rungs;
    for (std::size_t i = 0; i < rungs.size(); ++i) {
        const Points points = rungs[i].points + added;
        const bool chosen = choice.by == RateChoice::By::note ? rungs[i].rate == choice.note
                                                              : points <= choice.points;
        if (!chosen) continue;
        f.rate = rungs[i].rate;
        f.points = points;
        f.rows.note(Lookup::note_rate, static_cast<int>(i));
        break;
    }
    return f;
}

/// What there is for credits to pay. A lender credit for the rate has paid closing costs first, and
/// then prepaids.
CreditAmounts room_for_credits(const CashToClose& cash) {
    const Money credit =
        std::max(-cash[CashPart::points], Money{}) - cash[CashPart::principal_reduction];
    const Money of_costs = std::min(credit, cash[CashPart::closing_costs]);
    CreditAmounts room;
    room[CreditUse::points] = std::max(cash[CashPart::points], Money{});
    room[CreditUse::buydown] = cash[CashPart::buydown];
    room[CreditUse::upfront_fee] = cash[CashPart::upfront_fee];
    room[CreditUse::closing_costs] = cash[CashPart::closing_costs] - of_costs;
    room[CreditUse::prepaids] = cash[CashPart::prepaid_interest] + cash[CashPart::prepaid_bills] +
                                cash[CashPart::escrow] - (credit - of_costs);
    room[CreditUse::down_payment] = cash[CashPart::down_payment];
    return room;
}

void Sizing::add_credits(SizedLoan& f) const {
    const auto cap = look_up(rule(Rule::contribution_cap), Lookup::contribution_cap,
                             gross_case(rules_, f), f.rows);
    std::optional<Money> most;
    if (cap) {
        f.contribution_cap = Percent(*cap);
        const Money base = rules_.program->policy.cap_by_price ? f.price : f.value;
        most = percent_of(base, Percent(*cap), Rounding::down);
    }
    const CreditAmounts room = room_for_credits(f.cash);
    ensure_equal(room.total(), f.cash.needed(), "credits may pay all the cash, and nothing else");
    f.credits = use_credits(credits_, room, most, rules_.program->policy.cap_on_concessions);
    f.cash[CashPart::credits] = f.credits.by_use.total();
}

/// A buydown that keeps to its rules, and ends before an adjustable rate first changes. Such a rate
/// must stand for three years (Fannie Mae B2-1.4-02, B2-1.4-04).
void Sizing::add_buydown(SizedLoan& f) const {
    const auto& steps = rules_.scenario.buydown;
    if (steps.empty() || !has_rate(rules_, f) || !may_buy_down(rules_, f.rate)) return;
    f.buydown = buy_down({f.loan, f.rate, rules_.scenario.term}, steps);
    f.cash[CashPart::buydown] = f.buydown->total_subsidy();
}

/// Points, and where a lender credit goes that has nothing left to pay.
void Sizing::add_points(SizedLoan& f) const {
    CashToClose& cash = f.cash;
    cash[CashPart::points] = percent_of(f.loan, Percent(f.points.value()), Rounding::half_away);
    const Money beyond = std::max(-cash[CashPart::points] - cash.open_to_lender_credit(), Money{});
    if (rules_.program->policy.credit_reduces_principal) {
        cash[CashPart::principal_reduction] = std::min(beyond, f.loan);
    }
    f.lender_credit_without_use = beyond - cash[CashPart::principal_reduction];
    cash[CashPart::points] += f.lender_credit_without_use;
    ensure(-cash[CashPart::points] <=
               cash.open_to_lender_credit() + cash[CashPart::principal_reduction],
           "a lender credit pays costs or principal");
}

SizedLoan Sizing::paid(RatedLoan rated) const {
    SizedLoan f(std::move(rated));
    CashToClose& cash = f.cash;
    cash[CashPart::down_payment] = f.price - f.base_loan;
    cash[CashPart::upfront_fee] = std::max(f.upfront_fee - f.financed_fee, Money{});
    cash[CashPart::closing_costs] = rules_.closing_costs.buyers(f.loan, f.price);
    f.prepaid_interest = prepaid_interest(f.loan, f.rate, rules_.closing, rules_.per_diem_year);
    cash[CashPart::prepaid_interest] = f.prepaid_interest.total();
    cash[CashPart::prepaid_bills] = f.prepaids.total();
    cash[CashPart::escrow] = f.escrow_deposit;
    add_points(f);
    add_buydown(f);
    add_credits(f);
    cash[CashPart::deposits] = facts_.deposits_paid.value_or(home_.deposits());
    return f;
}

/// The largest base loan, in whole dollars, for which what is lent with the premium is still
/// `within`: that grows with the base loan, so the last is found by halving.
template <class Within>
std::int64_t Sizing::last_with_premium(Percent premium, Within within) const {
    const auto holds = [&](std::int64_t dollars) {
        const Money base = Money::dollars(dollars);
        return within(base + cut(*rules_.program, percent_of(base, premium, Rounding::half_away)));
    };
    std::int64_t low = -1; // holds, or there is none
    std::int64_t high = divide_rounded<std::int64_t>(of_home_.value.count(), 100, Rounding::up) + 1;
    while (high - low > 1) {
        const std::int64_t middle = low + (high - low) / 2;
        (holds(middle) ? low : high) = middle;
    }
    return low;
}

/// Those at which a table that is read at the gross LTV changes, under any premium there is.
void Sizing::add_gross_points(std::int64_t most, std::vector<std::int64_t>& points) const {
    const BandTable* table = rules_.single_premium.rule();
    if (!may_finance_premium() || table == nullptr) return;
    std::vector<Decimal> premiums = table->values;
    std::sort(premiums.begin(), premiums.end());
    premiums.erase(std::unique(premiums.begin(), premiums.end()), premiums.end());
    for (const Edge& edge : rules_.edges) {
        if (edge.dimension != Dimension::ltv && edge.dimension != Dimension::loan) continue;
        for (const Decimal premium : premiums) {
            const std::int64_t dollars = last_with_premium(Percent(premium), [&](Money loan) {
                if (edge.dimension == Dimension::loan) {
                    return loan.count() <= edge.last / Decimal::hundredth;
                }
                return share_in_percent(loan, of_home_.value, 2).billionths() <= edge.last;
            });
            if (dollars >= 0 && dollars < most) points.push_back(dollars);
        }
    }
}

/// From the smallest loans to the largest, which is the value.
std::vector<Sizing::Stretch> Sizing::stretches() const {
    const std::int64_t most =
        divide_rounded<std::int64_t>(of_home_.value.count(), 100, Rounding::down);
    std::vector<std::int64_t> ends{most};
    for (const Edge& edge : rules_.edges) {
        const std::int64_t dollars = last_base_loan(edge, of_home_.value, of_home_.price);
        if (dollars >= 0 && dollars < most) ends.push_back(dollars);
    }
    add_gross_points(most, ends);
    std::sort(ends.begin(), ends.end());
    std::vector<Stretch> found;
    std::int64_t low = -1;
    for (const std::int64_t end : ends) {
        if (end > low) found.push_back({low, end});
        low = end;
    }
    return found;
}

/// The largest base loan of a stretch, none above the program's share of the value; nothing where
/// there is none. (A loan without such a share is refused for another reason.)
std::optional<SizedLoan> Sizing::most_of(const Stretch& stretch) const {
    SizedLoan f = with_base_loan(Money::dollars(stretch.high));
    const BandTable* table = rule(Rule::maximum_ltv);
    const auto maximum = table != nullptr ? table->find(gross_case(rules_, f)) : std::nullopt;
    if (!maximum) return f;
    const Money most = percent_of(f.value, Percent(*maximum), Rounding::down);
    return lowered_to(most, stretch.low, std::move(f));
}

/// The largest base loan of which no more than `most` is lent, where more is now; nothing where it
/// is not above `low`, in dollars.
std::optional<SizedLoan> Sizing::lowered_to(Money most, std::int64_t low, SizedLoan f) const {
    if (held(f) <= most) return f;
    std::int64_t dollars = divide_rounded<std::int64_t>(most.count(), 100, Rounding::down);
    if (may_finance_premium()) { // whose percent stands within a stretch
        dollars = last_with_premium(f.upfront_in_loan(), [&](Money loan) { return loan <= most; });
    }
    if (dollars <= low) return std::nullopt;
    f = with_base_loan(Money::dollars(dollars));
    ensure(held(f) <= most, "what is lent is lowered to what may be");
    return f;
}

/// Credits pay no more than the costs, and what they may of the down payment: so a loan takes at
/// least the rest of the price in cash, less this.
Money Sizing::down_credits() const {
    Money most;
    for (const Credit* credit : credits_) {
        if (credit->may_pay(CreditUse::down_payment)) most += credit->amount;
    }
    return most;
}

/// The smallest base loan of a stretch that the cash covers, which it does the largest of it. A
/// dollar less of loan takes a dollar more down and some cents less of costs: so steps of what is
/// left of the cash come near from above, and halving finds what they do not.
SizedLoan Sizing::smallest_covered(Stretch stretch, SizedLoan largest, Money cash) const {
    constexpr int most_steps = 6;
    int steps = 0;
    SizedLoan smallest = std::move(largest);
    Money needed = smallest.cash.needed(); // of the loan looked at last
    while (stretch.high - stretch.low > 1) {
        const std::int64_t left = (cash - needed).count() / 100;
        const std::int64_t half = (stretch.high - stretch.low) / 2;
        const std::int64_t step = steps++ < most_steps ? std::max<std::int64_t>(left, 1) : half;
        const std::int64_t tried = std::max(stretch.high - step, stretch.low + 1);
        SizedLoan f = with_base_loan(Money::dollars(tried));
        needed = f.cash.needed();
        const bool covered = needed <= cash;
        (covered ? stretch.high : stretch.low) = tried;
        if (covered) smallest = std::move(f);
        if (!covered) steps = most_steps;
    }
    return smallest;
}

/// The loan that takes the least cash of those that can be had; of all, where none can.
SizedLoan Sizing::least_needed(const std::vector<Stretch>& all) const {
    const Money credits = down_credits();
    std::optional<SizedLoan> least;
    bool any_had = false;
    for (auto stretch = all.rbegin(); stretch != all.rend(); ++stretch) {
        const Money no_less = of_home_.price - Money::dollars(stretch->high) - credits;
        if (any_had && no_less >= least->cash.needed()) break; // nor of those below
        std::optional<SizedLoan> f = most_of(*stretch);
        const BandTable* limit = rule(Rule::loan_limit);
        if (f && limit != nullptr) {
            const auto most = limit->find(gross_case(rules_, *f));
            if (most) {
                f = lowered_to(times(Money::dollars(1), *most, Rounding::down), stretch->low,
                               std::move(*f));
            }
        }
        if (!f) continue;
        const bool less = !least || f->cash.needed() < least->cash.needed();
        const bool had = (less || !any_had) && refusals(*f).empty();
        if (any_had ? less && had : less || had) {
            least = std::move(f);
            any_had = any_had || had;
        }
    }
    return least ? std::move(*least) : with_base_loan(Money{});
}

/// Between two turning points the cash needed only falls as the loan grows. So the smallest loan
/// the cash covers lies in the first stretch whose largest it covers. Where that is refused, as for
/// want of a rate or of insurance, the next stretch is looked at. If nothing that is covered can be
/// had, the smallest of it is what is refused.
Sized Sizing::solve_from_cash(Money cash) const {
    const std::vector<Stretch> all = stretches();
    const Money least = of_home_.price - cash - down_credits();
    std::optional<Sized> refused;
    for (Stretch stretch : all) {
        if (Money::dollars(stretch.high) < least) continue;
        std::optional<SizedLoan> largest = most_of(stretch);
        if (!largest || largest->cash.needed() > cash) continue;
        stretch.high = largest->base_loan.count() / 100;
        if (least > Money{}) stretch.low = std::max(stretch.low, least.count() / 100 - 1);
        Sized solved{smallest_covered(stretch, std::move(*largest), cash), {}};
        ensure(solved.loan.cash.needed() <= cash,
               "the cash covers the loan that is solved from it");
        solved.refusals = refusals(solved.loan);
        if (solved.refusals.empty()) return solved;
        if (!refused) refused = std::move(solved);
    }
    if (refused) return std::move(*refused);
    Sized short_of{least_needed(all), {}};
    short_of.refusals = refusals(short_of.loan);
    short_of.refusals.push_back({Barred::cash_short, cash, short_of.loan.cash.needed()});
    return short_of;
}

std::vector<Refusal> Sizing::refusals(const SizedLoan& f) const {
    const Scenario& scenario = rules_.scenario;
    std::vector<Refusal> refusals;
    check_known(f, refusals);
    for (const Barred why : barred_outright(rules_)) refusals.push_back({why, {}, {}});
    check_limits(f, refusals);
    if (!has_rate(rules_, f) || !may_adjust(rules_, f.rate)) {
        refusals.push_back({Barred::rate_not_offered, {}, {}});
    }
    if (!scenario.buydown.empty() && !may_buy_down(rules_, f.rate)) {
        refusals.push_back({Barred::buydown_not_allowed, {}, {}});
    }
    if (is_uninsurable(f)) refusals.push_back({Barred::mi_not_offered, {}, {}});
    return refusals;
}

/// No edition of a rule that is in force, or no row of one for this loan, is not no rule.
void Sizing::check_known(const SizedLoan& f, std::vector<Refusal>& refusals) const {
    const auto refuse = [&](const ListGap& gap) {
        refusals.push_back({Barred::rule_unknown, {}, {}, gap});
    };
    for (const ListGap& gap : rules_.gaps.unknown) {
        if (reads(rules_, gap.list, f.ltv)) refuse(gap);
    }
    const bool no_fee = rule(Rule::upfront_fee) != nullptr &&
                        reads(rules_, RuleList::upfront_fee, f.ltv) &&
                        f.row(Lookup::upfront_fee) == no_row;
    if (no_fee) refuse({RuleList::upfront_fee, ListGap::Kind::no_row, {}});
}

void Sizing::check_limits(const SizedLoan& f, std::vector<Refusal>& refusals) const {
    const Case where = gross_case(rules_, f);
    const auto hold = [&](Barred why, Money most) {
        if (held(f) <= most) return;
        refusals.push_back({why, held(f), most, {}, held(f) > f.base_loan});
    };
    if (const BandTable* table = rule(Rule::maximum_ltv)) {
        const auto maximum = table->find(where);
        if (!maximum) {
            const bool told = rules_.scenario.score.has_value();
            refusals.push_back({told ? Barred::score_below_minimum : Barred::score_needed, {}, {}});
        } else {
            hold(Barred::ltv_over_maximum, percent_of(f.value, Percent(*maximum), Rounding::down));
        }
    }
    if (const BandTable* table = rule(Rule::loan_limit)) {
        const auto limit = table->find(where);
        if (limit) {
            hold(Barred::loan_over_limit, times(Money::dollars(1), *limit, Rounding::down));
        }
    }
}

/// Whether a loan that is insured or charged year by year has no percent for that.
bool Sizing::is_uninsurable(const LentLoan& f) const {
    const bool factor = rules_.lender_insures();
    if (rules_.program->annual == nullptr || (factor && !is_insured(f.ltv))) return false;
    const bool single = pays_single_premium(rules_, f.ltv);
    const auto& edition = single ? rules_.single_premium : rules_.yearly_percent();
    const Lookup lookup = single   ? Lookup::single_premium
                          : factor ? Lookup::mi_factor
                                   : Lookup::annual_fee;
    return f.row(lookup) == no_row && edition.is_known() && !edition.is_no_more();
}

/// The base loan for a percent down or an amount; a percent is of the value, so that a low
/// appraisal is made up in cash.
Money base_loan_for(const DownPayment& down, const HomeFigures& f, const LoanProgram& program) {
    if (down.by == DownPayment::By::percent) {
        return cut(program, percent_of(f.value, hundred_percent - down.percent, Rounding::down));
    }
    return cut(program, std::max(f.price - down.amount, Money{}));
}

} // namespace

std::vector<Barred> barred_outright(const ScenarioRules& rules) {
    std::vector<Barred> barred;
    const auto& terms = rules.program->terms_months;
    if (std::find(terms.begin(), terms.end(), rules.scenario.term.count()) == terms.end()) {
        barred.push_back(Barred::term_not_offered);
    }
    if (rules.program->policy.rural_alone && !rules.place->rural_eligible) {
        barred.push_back(Barred::place_not_eligible);
    }
    return barred;
}

bool may_run_at(const ScenarioRules& rules, Rate rate) {
    return may_adjust(rules, rate) && (rules.scenario.buydown.empty() || may_buy_down(rules, rate));
}

std::int64_t last_base_loan(const Edge& edge, Money value, Money price) {
    switch (edge.dimension) {
    case Dimension::ltv: {
        if (edge.last / Decimal::hundredth >= 1'000'000) return -1;
        const std::int64_t next =
            edge.last / Decimal::hundredth + 1; // first LTV past the edge, in 0.01%
        const std::int64_t cents = multiply_divide(value.count(), next, 10'000, Rounding::up);
        return divide_rounded<std::int64_t>(cents - 1, 100, Rounding::down);
    }
    case Dimension::down: { // down payment at least the edge's percent and a millionth
        const std::int64_t next = edge.last / Decimal::millionth + 1;
        const std::int64_t down = multiply_divide(price.count(), next, 100'000'000, Rounding::up);
        return divide_rounded<std::int64_t>(price.count() - down, 100, Rounding::down);
    }
    default:
        return edge.last / Decimal::one;
    }
}

bool pays_single_premium(const ScenarioRules& rules, Ltv ltv) {
    return rules.lender_insures() && rules.scenario.single_premium && is_insured(ltv);
}

bool reads(const ScenarioRules& rules, RuleList list, Ltv ltv) {
    const bool insured = rules.lender_insures() && is_insured(ltv);
    const bool paid_up = pays_single_premium(rules, ltv);
    if (list == RuleList::mi_factors) return insured && !paid_up;
    if (list == RuleList::single_premium) return paid_up;
    if (list == RuleList::upfront_fee) {
        return rules.program->upfront != nullptr && !paid_up;
    }
    return rules.always_reads(list);
}

Sized size_loan(const ScenarioRules& rules, const PricedHome& home, const PurchaseFacts& facts,
                const HomeFigures& of_home) {
    const Sizing sizing(rules, home, facts, of_home);
    const DownPayment& down = rules.scenario.down;
    if (down.by == DownPayment::By::cash) return sizing.solve_from_cash(down.amount);
    SizedLoan loan = sizing.with_base_loan(base_loan_for(down, of_home, *rules.program));
    std::vector<Refusal> refusals = sizing.refusals(loan);
    return {std::move(loan), std::move(refusals)};
}

std::vector<IncentiveGiven> credited_incentives(const PricedHome& home) {
    std::vector<IncentiveGiven> credited;
    for (const IncentiveUse use :
         {IncentiveUse::points, IncentiveUse::buydown, IncentiveUse::closing_costs}) {
        for (const IncentiveGiven& given : home.given) {
            if (given.use == use && !given.amount.is_zero()) credited.push_back(given);
        }
    }
    return credited;
}

std::vector<Credit> incentive_credits(const PricedHome& home) {
    const auto uses_of = [](IncentiveUse use) -> std::vector<CreditUse> {
        if (use == IncentiveUse::points) return {CreditUse::points};
        if (use == IncentiveUse::buydown) return {CreditUse::buydown};
        return {CreditUse::closing_costs, CreditUse::prepaids, CreditUse::upfront_fee};
    };
    std::vector<Credit> credits;
    for (const IncentiveGiven& given : credited_incentives(home)) {
        credits.push_back({"", CreditFrom::builder, given.amount, uses_of(given.use)});
    }
    return credits;
}

Case loan_case(const ScenarioRules& rules, const LentLoan& f) {
    const Scenario& scenario = rules.scenario;
    Case where;
    where.set(Dimension::ltv, f.ltv.value());
    where.set(Dimension::down, f.down_percent.value());
    where.set(Dimension::base_loan, f.base_loan);
    where.set(Dimension::loan, f.base_loan);
    where.set(Dimension::price, f.price);
    where.set(Dimension::term, Decimal::whole(scenario.term.count()));
    where.set(Dimension::use, Decimal::whole(static_cast<int>(scenario.use)));
    where.set(Dimension::area, Decimal::whole(static_cast<int>(rules.place->loan_limit_area)));
    if (scenario.score) where.set(Dimension::score, Decimal::whole(*scenario.score));
    return where;
}

Case gross_case(const ScenarioRules& rules, const LentLoan& f) {
    Case where = loan_case(rules, f);
    if (f.gross_ltv == f.ltv) return where;
    where.set(Dimension::ltv, f.gross_ltv.value());
    where.set(Dimension::loan, f.loan);
    return where;
}

int fee_months(const ScenarioRules& rules, const LentLoan& f) {
    const int term = rules.scenario.term.count();
    const int row = f.row(Lookup::annual_fee_months);
    const BandTable* table = rules.rule(Rule::annual_fee_months);
    if (table == nullptr || row == no_row) return term;
    return static_cast<int>(
        std::min(table->value(row).rounded(Rounding::down), std::int64_t{term}));
}

} // namespace quoin
