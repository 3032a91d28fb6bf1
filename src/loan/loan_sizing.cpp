// Sizing a loan: down payment, base loan, upfront fee, rate, cash.
#include "loan_sizing.hpp"

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

constexpr Percent hundred_percent{Decimal::whole(100)};
constexpr Months least_initial_with_buydown{36};

/// A lender's mortgage insurance is for loans over 80 % of value.
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
    return {Money{}, rate, rules.scenario->term};
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
    return buydown_problems(terms_at(rules, rate), rules.scenario->buydown).empty();
}

/// One attempt at a loan: the scenario with a base loan already chosen.
class Sizing {
  public:
    Sizing(const ScenarioRules& rules, const PricedHome& home, const PurchaseFacts& facts,
           LoanFigures& figures)
        : rules_(rules), home_(home), facts_(facts), f_(figures) {
        incentives_ = incentive_credits(home);
        for (const Credit& credit : incentives_) credits_.push_back(&credit);
        for (const Credit& credit : facts.credits) credits_.push_back(&credit);
    }

    /// Everything that follows from the base loan.
    void set_base_loan(Money base) {
        f_.base_loan = base;
        describe_case();
        f_.cash = {};
        f_.cash.down_payment = f_.price - base;
        add_upfront_fee();
        f_.loan = f_.base_loan + f_.financed_fee;
        describe_gross_case();
        choose_rate();
        set_cash();
    }

    /// The smallest base loan that the cash still covers.
    void solve_from_cash(Money cash);

    void check_known();
    void check_rules();
    void find_annual_fee();

  private:
    const BandTable* rule(Rule which) const { return rules_.rule(which); }

    /// The value of a rule for a case, with its row noted.
    std::optional<Decimal> look_up(const BandTable* table, Lookup lookup, const Case& where) {
        if (table == nullptr) return std::nullopt;
        const auto row = table->row(where);
        note_row(lookup, row.value_or(no_row));
        return row ? std::optional(table->value(*row)) : std::nullopt;
    }
    std::optional<Decimal> look_up(const BandTable* table, Lookup lookup) {
        return look_up(table, lookup, case_);
    }
    void note_row(Lookup lookup, int row) { f_.rows.note(lookup, row); }
    void refuse(Barred why, Money found = {}, Money limit = {}) {
        f_.refusals.push_back({why, found, limit});
    }
    void refuse(const ListGap& gap) { f_.refusals.push_back({Barred::rule_unknown, {}, {}, gap}); }
    void refuse_over(Barred why, Money limit) {
        f_.refusals.push_back({why, lent(), limit, {}, lent() > f_.base_loan});
    }
    [[nodiscard]] bool may_finance_premium() const {
        return rules_.scenario->finance_premium && rules_.scenario->single_premium &&
               rules_.program->annual == AnnualMethod::lender_factor;
    }
    /// What the limits of a program are held against.
    [[nodiscard]] Money lent() const { return may_finance_premium() ? f_.loan : f_.base_loan; }

    void describe_case();
    void describe_gross_case();
    void add_upfront_fee();
    Points adjusted(Points points);
    void choose_rate();
    void add_points();
    void set_cash();
    [[nodiscard]] CreditAmounts room_for_credits() const;
    void add_credits();
    [[nodiscard]] LoanTerms note() const { return {f_.loan, f_.rate, rules_.scenario->term}; }
    void add_buydown();
    /// Base loans in dollars, of which no table changes rows: all above `low`, to `high`.
    struct Stretch {
        std::int64_t low = -1;
        std::int64_t high = 0;
    };
    [[nodiscard]] std::vector<Stretch> stretches() const;
    bool set_most_of(const Stretch& stretch);
    bool lower_to(Money most, std::int64_t low);
    bool can_be_had();
    [[nodiscard]] Money down_credits() const;
    std::int64_t smallest_covered(Stretch stretch, Money cash);
    void set_least_needed(const std::vector<Stretch>& all);
    template <class Within>
    [[nodiscard]] std::int64_t last_with_premium(Percent premium, Within within) const;
    void add_gross_points(std::int64_t most, std::vector<std::int64_t>& points) const;

    const ScenarioRules& rules_;
    const PricedHome& home_;
    const PurchaseFacts& facts_;
    LoanFigures& f_;
    Case case_;
    Case gross_case_; ///< with a financed premium in it; else the same
    bool rate_found_ = false;
    std::vector<Credit> incentives_;
    std::vector<const Credit*> credits_; ///< in the order of their use
};

void Sizing::describe_case() {
    f_.ltv = Ltv(share_in_percent(f_.base_loan, f_.value, 2));
    f_.down_percent = Percent(share_in_percent(f_.price - f_.base_loan, f_.price, 6));
    case_ = loan_case(rules_, f_);
}

void Sizing::describe_gross_case() {
    f_.gross_ltv = f_.ltv;
    gross_case_ = case_;
    if (!may_finance_premium()) return;
    f_.gross_ltv = Ltv(share_in_percent(f_.loan, f_.value, 2));
    gross_case_ = gross_case(rules_, f_);
}

/// The fee, and how much of it goes into the loan: loans are whole dollars, so the cents of a
/// financed fee are paid in cash. A single premium is too, as a whole unless it is asked for in the
/// loan.
void Sizing::add_upfront_fee() {
    const LoanProgram& program = *rules_.program;
    f_.financed_fee = {};
    f_.upfront_fee = {};
    f_.upfront_percent = {};
    note_row(Lookup::single_premium, no_row);
    if (pays_single_premium(rules_, f_.ltv)) {
        const auto percent = look_up(rules_.single_premium.rule(), Lookup::single_premium);
        f_.upfront_percent = Percent(percent.value_or(Decimal{}));
        f_.upfront_fee = percent_of(f_.base_loan, f_.upfront_percent, Rounding::half_away);
        if (rules_.scenario->finance_premium) f_.financed_fee = cut(program, f_.upfront_fee);
        f_.cash.upfront_fee = f_.upfront_fee - f_.financed_fee;
        return;
    }
    if (program.upfront == UpfrontMethod::none) return;
    f_.upfront_percent =
        Percent(look_up(rule(Rule::upfront_fee), Lookup::upfront_fee).value_or(Decimal{}));
    const bool share = program.upfront == UpfrontMethod::share_of_total_loan;
    if (share && rules_.scenario->finance_fee) {
        const Decimal rest = (hundred_percent - f_.upfront_percent).value();
        const Money total =
            cut(program, Money::cents(multiply_divide(f_.base_loan.count(), 100 * Decimal::one,
                                                      rest.billionths(), Rounding::down)));
        f_.upfront_fee = percent_of(total, f_.upfront_percent, Rounding::half_away);
        f_.financed_fee = total - f_.base_loan;
    } else {
        f_.upfront_fee = percent_of(f_.base_loan, f_.upfront_percent, Rounding::half_away);
        if (rules_.scenario->finance_fee) f_.financed_fee = cut(program, f_.upfront_fee);
    }
    f_.cash.upfront_fee = std::max(f_.upfront_fee - f_.financed_fee, Money{});
    ensure(f_.financed_fee - f_.upfront_fee <= Money::dollars(1),
           "no more of a fee is financed than there is, but for what is rounded");
}

Points Sizing::adjusted(Points points) {
    f_.rows.adjustments.clear();
    for (const BandTable* table : rules_.adjustments) {
        const auto row = table->row(gross_case_);
        f_.rows.adjustments.push_back(row.value_or(no_row));
        if (row) points = points + Points(table->value(*row));
    }
    return points;
}

void Sizing::choose_rate() {
    const RateChoice& choice = rules_.scenario->rate;
    rate_found_ = choice.by == RateChoice::By::quoted;
    f_.rate = choice.note;
    f_.points = choice.points;
    note_row(Lookup::note_rate, no_row);
    if (rate_found_ || rules_.ladder == nullptr) return;
    const Points adjustment = adjusted(Points{});
    const auto& rungs = rules_.ladder->rungs;
    for (std::size_t i = 0; i < rungs.size() && !rate_found_; ++i) {
        const Points points = rungs[i].points + adjustment;
        rate_found_ = choice.by == RateChoice::By::note ? rungs[i].rate == choice.note
                                                        : points <= choice.points;
        if (!rate_found_) continue;
        f_.rate = rungs[i].rate;
        f_.points = points;
        note_row(Lookup::note_rate, static_cast<int>(i));
    }
}

/// What there is for credits to pay. A lender credit for the rate has paid closing costs first, and
/// then prepaids.
CreditAmounts Sizing::room_for_credits() const {
    const CashToClose& cash = f_.cash;
    const Money credit = std::max(-cash.points, Money{}) - cash.principal_reduction;
    const Money of_costs = std::min(credit, cash.closing_costs);
    CreditAmounts room;
    room[CreditUse::points] = std::max(cash.points, Money{});
    room[CreditUse::buydown] = cash.buydown;
    room[CreditUse::upfront_fee] = cash.upfront_fee;
    room[CreditUse::closing_costs] = cash.closing_costs - of_costs;
    room[CreditUse::prepaids] =
        cash.prepaid_interest + cash.prepaid_bills + cash.escrow - (credit - of_costs);
    room[CreditUse::down_payment] = cash.down_payment;
    return room;
}

void Sizing::add_credits() {
    const auto cap = look_up(rule(Rule::contribution_cap), Lookup::contribution_cap, gross_case_);
    std::optional<Money> most;
    if (cap) {
        f_.contribution_cap = Percent(*cap);
        const Money base = caps_contributions_by_price(rules_.program->kind) ? f_.price : f_.value;
        most = percent_of(base, Percent(*cap), Rounding::down);
    }
    const CreditAmounts room = room_for_credits();
    ensure_equal(room.total(), f_.cash.needed(), "credits may pay all the cash, and nothing else");
    f_.credits = use_credits(credits_, room, most, rules_.program->kind == ProgramKind::va);
    f_.cash.credits = f_.credits.by_use.total();
}

/// A buydown that keeps to its rules, and ends before an adjustable rate first changes. Such a rate
/// must stand for three years (Fannie Mae B2-1.4-02, B2-1.4-04).
void Sizing::add_buydown() {
    f_.buydown.reset();
    const auto& steps = rules_.scenario->buydown;
    if (steps.empty() || !rate_found_ || !may_buy_down(rules_, f_.rate)) return;
    f_.buydown = buy_down(note(), steps);
    f_.cash.buydown = f_.buydown->total_subsidy();
}

/// Points, and where a lender credit goes that has nothing left to pay.
void Sizing::add_points() {
    CashToClose& cash = f_.cash;
    cash.points = percent_of(f_.loan, Percent(f_.points.value()), Rounding::half_away);
    const Money beyond = std::max(-cash.points - cash.open_to_lender_credit(), Money{});
    if (credits_reduce_principal(rules_.program->kind)) {
        cash.principal_reduction = std::min(beyond, f_.loan);
    }
    f_.lender_credit_without_use = beyond - cash.principal_reduction;
    cash.points += f_.lender_credit_without_use;
    ensure(-cash.points <= cash.open_to_lender_credit() + cash.principal_reduction,
           "a lender credit pays costs or principal");
}

void Sizing::set_cash() {
    CashToClose& cash = f_.cash;
    cash.closing_costs = rules_.closing_costs.buyers(f_.loan, f_.price);
    f_.prepaid_interest = prepaid_interest(f_.loan, f_.rate, rules_.closing, rules_.per_diem_year);
    cash.prepaid_interest = f_.prepaid_interest.total();
    cash.prepaid_bills = f_.prepaids.total();
    cash.escrow = f_.escrow_deposit;
    add_points();
    add_buydown();
    add_credits();
    cash.deposits = facts_.deposits_paid.value_or(home_.deposits());
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
    std::int64_t high = divide_rounded<std::int64_t>(f_.value.count(), 100, Rounding::up) + 1;
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
                    return loan.count() <= edge.last / (Decimal::one / 100);
                }
                return share_in_percent(loan, f_.value, 2).billionths() <= edge.last;
            });
            if (dollars >= 0 && dollars < most) points.push_back(dollars);
        }
    }
}

/// From the smallest loans to the largest, which is the value.
std::vector<Sizing::Stretch> Sizing::stretches() const {
    const std::int64_t most = divide_rounded<std::int64_t>(f_.value.count(), 100, Rounding::down);
    std::vector<std::int64_t> ends{most};
    for (const Edge& edge : rules_.edges) {
        const std::int64_t dollars = last_base_loan(edge, f_.value, f_.price);
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

/// Sets the largest base loan of a stretch, none above the program's share of the value; false
/// where there is none. (A loan without such a share is refused for another reason.)
bool Sizing::set_most_of(const Stretch& stretch) {
    set_base_loan(Money::dollars(stretch.high));
    const BandTable* table = rule(Rule::maximum_ltv);
    const auto maximum = table != nullptr ? table->find(gross_case_) : std::nullopt;
    return !maximum ||
           lower_to(percent_of(f_.value, Percent(*maximum), Rounding::down), stretch.low);
}

/// Sets the largest base loan of which no more than `most` is lent, where that is more now; false
/// where it is not above `low`, in dollars.
bool Sizing::lower_to(Money most, std::int64_t low) {
    if (lent() <= most) return true;
    std::int64_t dollars = divide_rounded<std::int64_t>(most.count(), 100, Rounding::down);
    if (may_finance_premium()) { // whose percent stands within a stretch
        const Percent premium = f_.financed_fee.is_zero() ? Percent{} : f_.upfront_percent;
        dollars = last_with_premium(premium, [&](Money loan) { return loan <= most; });
    }
    if (dollars <= low) return false;
    set_base_loan(Money::dollars(dollars));
    ensure(lent() <= most, "what is lent is lowered to what may be");
    return true;
}

/// Whether the base loan that is set is refused for nothing.
bool Sizing::can_be_had() {
    const std::size_t before = f_.refusals.size();
    check_rules();
    find_annual_fee();
    const bool can = f_.refusals.size() == before;
    f_.refusals.resize(before);
    return can;
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

/// The smallest base loan of a stretch that the cash covers, which it does the largest of it, that
/// is set. A dollar less of loan takes a dollar more down and some cents less of costs: so steps of
/// what is left of the cash come near from above, and halving finds what they do not.
std::int64_t Sizing::smallest_covered(Stretch stretch, Money cash) {
    constexpr int most_steps = 6;
    int steps = 0;
    while (stretch.high - stretch.low > 1) {
        const std::int64_t left = (cash - f_.cash.needed()).count() / 100;
        const std::int64_t half = (stretch.high - stretch.low) / 2;
        const std::int64_t step = steps++ < most_steps ? std::max<std::int64_t>(left, 1) : half;
        const std::int64_t tried = std::max(stretch.high - step, stretch.low + 1);
        set_base_loan(Money::dollars(tried));
        const bool covered = f_.cash.needed() <= cash;
        (covered ? stretch.high : stretch.low) = tried;
        if (!covered) steps = most_steps;
    }
    return stretch.high;
}

/// Sets the loan that takes the least cash of those that can be had; of all, where none can.
void Sizing::set_least_needed(const std::vector<Stretch>& all) {
    const Money credits = down_credits();
    std::optional<Money> least;
    Money base;
    bool any_had = false;
    for (auto stretch = all.rbegin(); stretch != all.rend(); ++stretch) {
        const Money no_less = f_.price - Money::dollars(stretch->high) - credits;
        if (any_had && no_less >= *least) break; // nor of those below
        if (!set_most_of(*stretch)) continue;
        if (const BandTable* limit = rule(Rule::loan_limit)) {
            const auto most = limit->find(gross_case_);
            if (most && !lower_to(times(Money::dollars(1), *most, Rounding::down), stretch->low)) {
                continue;
            }
        }
        const bool less = !least || f_.cash.needed() < *least;
        const bool had = (less || !any_had) && can_be_had();
        if (any_had ? less && had : less || had) {
            least = f_.cash.needed();
            base = f_.base_loan;
            any_had = any_had || had;
        }
    }
    set_base_loan(base);
}

/// Between two turning points the cash needed only falls as the loan grows. So the smallest loan
/// the cash covers lies in the first stretch whose largest it covers. Where that is refused, as for
/// want of a rate or of insurance, the next stretch is looked at. If nothing that is covered can be
/// had, the smallest of it is what is refused.
void Sizing::solve_from_cash(Money cash) {
    const std::vector<Stretch> all = stretches();
    const Money least = f_.price - cash - down_credits();
    std::optional<Money> refused;
    for (Stretch stretch : all) {
        if (Money::dollars(stretch.high) < least || !set_most_of(stretch)) continue;
        if (f_.cash.needed() > cash) continue;
        stretch.high = f_.base_loan.count() / 100;
        if (least > Money{}) stretch.low = std::max(stretch.low, least.count() / 100 - 1);
        const Money base = Money::dollars(smallest_covered(stretch, cash));
        set_base_loan(base);
        ensure(f_.cash.needed() <= cash, "the cash covers the loan that is solved from it");
        if (can_be_had()) return;
        if (!refused) refused = base;
    }
    if (refused) {
        set_base_loan(*refused);
        return;
    }
    set_least_needed(all);
    refuse(Barred::cash_short, cash, f_.cash.needed());
}

/// No edition of a rule that is in force, or no row of one for this loan, is not no rule.
void Sizing::check_known() {
    for (const ListGap& gap : rules_.gaps.unknown) {
        if (reads(rules_, gap.list, f_.ltv)) refuse(gap);
    }
    const bool no_fee = rule(Rule::upfront_fee) != nullptr &&
                        reads(rules_, RuleList::upfront_fee, f_.ltv) &&
                        f_.row(Lookup::upfront_fee) == no_row;
    if (no_fee) refuse({RuleList::upfront_fee, ListGap::Kind::no_row, {}});
}

void Sizing::check_rules() {
    const Scenario& scenario = *rules_.scenario;
    check_known();
    for (const Barred why : barred_outright(rules_)) refuse(why);
    if (const BandTable* table = rule(Rule::maximum_ltv)) {
        const auto maximum = table->find(gross_case_);
        if (!maximum) {
            refuse(scenario.score ? Barred::score_below_minimum : Barred::score_needed);
        } else {
            const Money most = percent_of(f_.value, Percent(*maximum), Rounding::down);
            if (lent() > most) refuse_over(Barred::ltv_over_maximum, most);
        }
    }
    if (const BandTable* table = rule(Rule::loan_limit)) {
        const auto limit = table->find(gross_case_);
        const Money most = limit ? times(Money::dollars(1), *limit, Rounding::down) : Money{};
        if (limit && lent() > most) refuse_over(Barred::loan_over_limit, most);
    }
    if (!rate_found_ || !may_adjust(rules_, f_.rate)) refuse(Barred::rate_not_offered);
    if (!scenario.buydown.empty() && !may_buy_down(rules_, f_.rate)) {
        refuse(Barred::buydown_not_allowed);
    }
}

/// The annual fee of the program, or the lender's factor where that insures the loan.
void Sizing::find_annual_fee() {
    f_.annual_percent = {};
    for (const Lookup lookup : {Lookup::mi_factor, Lookup::annual_fee, Lookup::annual_fee_months}) {
        note_row(lookup, no_row);
    }
    if (rules_.program->annual == AnnualMethod::none) return;
    const bool factor = rules_.program->annual == AnnualMethod::lender_factor;
    if (factor && !is_insured(f_.ltv)) return;
    if (pays_single_premium(rules_, f_.ltv)) {
        const bool none = f_.row(Lookup::single_premium) == no_row;
        const auto& edition = rules_.single_premium;
        if (none && edition.is_known() && !edition.is_no_more()) refuse(Barred::mi_not_offered);
        return;
    }
    const Edition<BandTable>& edition =
        factor ? rules_.mi_factors : rules_.edition(Rule::annual_fee);
    const auto percent = look_up(edition.rule(), factor ? Lookup::mi_factor : Lookup::annual_fee);
    if (!percent && edition.is_known() && !edition.is_no_more()) refuse(Barred::mi_not_offered);
    f_.annual_percent = Percent(percent.value_or(Decimal{}));
    look_up(rule(Rule::annual_fee_months), Lookup::annual_fee_months);
}

/// The base loan for a percent down or an amount; a percent is of the value, so that a low
/// appraisal is made up in cash.
Money base_loan_for(const DownPayment& down, const LoanFigures& f, const LoanProgram& program) {
    if (down.by == DownPayment::By::percent) {
        return cut(program, percent_of(f.value, hundred_percent - down.percent, Rounding::down));
    }
    return cut(program, std::max(f.price - down.amount, Money{}));
}

} // namespace

std::vector<Barred> barred_outright(const ScenarioRules& rules) {
    std::vector<Barred> barred;
    const auto& terms = rules.program->terms_months;
    if (std::find(terms.begin(), terms.end(), rules.scenario->term.count()) == terms.end()) {
        barred.push_back(Barred::term_not_offered);
    }
    if (rules.program->kind == ProgramKind::usda && !rules.place->rural_eligible) {
        barred.push_back(Barred::place_not_eligible);
    }
    return barred;
}

bool may_run_at(const ScenarioRules& rules, Rate rate) {
    return may_adjust(rules, rate) &&
           (rules.scenario->buydown.empty() || may_buy_down(rules, rate));
}

std::int64_t last_base_loan(const Edge& edge, Money value, Money price) {
    constexpr std::int64_t hundredth = Decimal::one / 100;
    constexpr std::int64_t millionth = Decimal::one / 1'000'000;
    switch (edge.dimension) {
    case Dimension::ltv: {
        if (edge.last / hundredth >= 1'000'000) return -1;
        const std::int64_t next = edge.last / hundredth + 1; // first LTV past the edge, in 0.01 %
        const std::int64_t cents = multiply_divide(value.count(), next, 10'000, Rounding::up);
        return divide_rounded<std::int64_t>(cents - 1, 100, Rounding::down);
    }
    case Dimension::down: { // down payment at least the edge's percent and a millionth
        const std::int64_t next = edge.last / millionth + 1;
        const std::int64_t down = multiply_divide(price.count(), next, 100'000'000, Rounding::up);
        return divide_rounded<std::int64_t>(price.count() - down, 100, Rounding::down);
    }
    default:
        return edge.last / Decimal::one;
    }
}

bool pays_single_premium(const ScenarioRules& rules, Ltv ltv) {
    return rules.program->annual == AnnualMethod::lender_factor && rules.scenario->single_premium &&
           is_insured(ltv);
}

bool reads(const ScenarioRules& rules, RuleList list, Ltv ltv) {
    const bool insured = rules.program->annual == AnnualMethod::lender_factor && is_insured(ltv);
    const bool paid_up = pays_single_premium(rules, ltv);
    if (list == RuleList::mi_factors) return insured && !paid_up;
    if (list == RuleList::single_premium) return paid_up;
    if (list == RuleList::upfront_fee) {
        return rules.program->upfront != UpfrontMethod::none && !paid_up;
    }
    return rules.always_reads(list);
}

void size_loan(const ScenarioRules& rules, const PricedHome& home, const PurchaseFacts& facts,
               LoanFigures& f) {
    Sizing sizing(rules, home, facts, f);
    const DownPayment& down = rules.scenario->down;
    if (down.by == DownPayment::By::cash) {
        sizing.solve_from_cash(down.amount);
    } else {
        sizing.set_base_loan(base_loan_for(down, f, *rules.program));
    }
    sizing.check_rules();
    sizing.find_annual_fee();
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

Case loan_case(const ScenarioRules& rules, const LoanFigures& f) {
    const Scenario& scenario = *rules.scenario;
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

Case gross_case(const ScenarioRules& rules, const LoanFigures& f) {
    Case where = loan_case(rules, f);
    if (f.gross_ltv == f.ltv) return where;
    where.set(Dimension::ltv, f.gross_ltv.value());
    where.set(Dimension::loan, f.loan);
    return where;
}

int fee_months(const ScenarioRules& rules, const LoanFigures& f) {
    const int term = rules.scenario->term.count();
    const int row = f.row(Lookup::annual_fee_months);
    const BandTable* table = rules.rule(Rule::annual_fee_months);
    if (table == nullptr || row == no_row) return term;
    return static_cast<int>(
        std::min(table->value(row).rounded(Rounding::down), std::int64_t{term}));
}

} // namespace quoin
