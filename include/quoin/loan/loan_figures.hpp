// One home under one scenario: the loan, the month by part, the cash, the totals.
//
//   LoanFigures f = loan_figures(rules, home, {});
//   if (f.available()) f.monthly.total() ...
//
// A premium of mortgage insurance in the loan counts in the LTV of every rule but the insurance's
// own: the gross LTV says whether the loan may be had and what its rate is adjusted by, the base
// LTV what is insured (Fannie Mae B7-1-04, B2-1.2-01). A program's own financed fee never counts.
//
// The stages, each made from the one before and of all that it holds: HomeFigures -> LentLoan ->
// RatedLoan -> SizedLoan -> LoanFigures. docs/roundings.md numbers every rounding on the way.
#pragma once

#include <array>
#include <optional>
#include <utility>
#include <vector>

#include <quoin/home/priced_home.hpp>
#include <quoin/loan/buydown.hpp>
#include <quoin/loan/cash_to_close.hpp>
#include <quoin/loan/credits.hpp>
#include <quoin/loan/local_costs.hpp>
#include <quoin/loan/monthly.hpp>
#include <quoin/loan/mortgage_insurance.hpp>
#include <quoin/loan/prepaids.hpp>
#include <quoin/loan/scenario_rules.hpp>
#include <quoin/loan/schedule.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// Why a scenario cannot be had for a home, in order of precedence.
enum class Barred {
    rule_unknown, ///< gap: a list that the data do not say enough of
    term_not_offered,
    place_not_eligible,
    score_needed,
    score_below_minimum,
    ltv_over_maximum, ///< found: what is lent; limit: the most the program lends on this value
    loan_over_limit,  ///< found: what is lent; limit: the area's limit
    rate_not_offered,
    mi_not_offered,
    insurance_not_offered,
    buydown_not_allowed,
    cash_short, ///< found: the cash there is; limit: the least that is needed
};
template <>
inline constexpr auto
    codes<Barred> = coded<Barred>({{Barred::rule_unknown, "rule_unknown"},
                                   {Barred::term_not_offered, "term_not_offered"},
                                   {Barred::place_not_eligible, "place_not_eligible"},
                                   {Barred::score_needed, "score_needed"},
                                   {Barred::score_below_minimum, "score_below_minimum"},
                                   {Barred::ltv_over_maximum, "ltv_over_maximum"},
                                   {Barred::loan_over_limit, "loan_over_limit"},
                                   {Barred::rate_not_offered, "rate_not_offered"},
                                   {Barred::mi_not_offered, "mi_not_offered"},
                                   {Barred::insurance_not_offered, "insurance_not_offered"},
                                   {Barred::buydown_not_allowed, "buydown_not_allowed"},
                                   {Barred::cash_short, "cash_short"}});

struct Refusal {
    Barred why = Barred::term_not_offered;
    Money found;
    Money limit;
    std::optional<ListGap> gap = {}; ///< where a rule is unknown
    bool with_premium = false;       ///< what is lent: the base loan and the premium financed in it
};

/// Rows of tables that decided a figure; a change of row is why a figure jumps.
enum class Lookup {
    note_rate, ///< rung of the ladder
    points_adjustment,
    upfront_fee,
    annual_fee,
    annual_fee_months,
    mi_factor,
    single_premium,
    contribution_cap,
    homeowner,
};
template <>
inline constexpr auto
    codes<Lookup> = coded<Lookup>({{Lookup::note_rate, "note_rate"},
                                   {Lookup::points_adjustment, "points_adjustment"},
                                   {Lookup::upfront_fee, "upfront_fee"},
                                   {Lookup::annual_fee, "annual_fee"},
                                   {Lookup::annual_fee_months, "annual_fee_months"},
                                   {Lookup::mi_factor, "mi_factor"},
                                   {Lookup::single_premium, "single_premium"},
                                   {Lookup::contribution_cap, "contribution_cap"},
                                   {Lookup::homeowner, "homeowners_rate"}});
inline constexpr std::size_t lookup_count = 9;
inline constexpr int no_row = -1;

/// The row that each lookup read; no_row where it decided nothing. Points are adjusted by as many
/// tables as the sheet has, each with a row of its own.
struct LookedUpRows {
    LookedUpRows() { single.fill(no_row); }

    void note(Lookup lookup, int row) { single[static_cast<std::size_t>(lookup)] = row; }
    /// Of any lookup but the adjustments.
    [[nodiscard]] int of(Lookup lookup) const { return single[static_cast<std::size_t>(lookup)]; }
    [[nodiscard]] bool same_in(Lookup lookup, const LookedUpRows& other) const {
        return lookup == Lookup::points_adjustment ? adjustments == other.adjustments
                                                   : of(lookup) == other.of(lookup);
    }

    std::array<int, lookup_count> single{};
    std::vector<int> adjustments; ///< in the order of ScenarioRules::adjustments

    friend bool operator==(const LookedUpRows&, const LookedUpRows&) = default;
};

/// What the home brings, whatever is lent on it.
struct HomeFigures {
    Money price;
    Money value; ///< lesser of price and appraised value
    LocalCosts local;
    Prepaids prepaids;
    Money escrow_deposit; ///< initial, by aggregate analysis
    LookedUpRows rows;    ///< of this stage, and of each later one as it is made

    [[nodiscard]] int row(Lookup lookup) const { return rows.of(lookup); }
};

/// What is lent on it, and the percents of its fees.
struct LentLoan : HomeFigures {
    LentLoan() = default;
    explicit LentLoan(const HomeFigures& home) : HomeFigures(home) {}

    Money base_loan;
    Ltv ltv;
    Ltv gross_ltv;        ///< with a financed premium of mortgage insurance; else the same
    Percent down_percent; ///< of the price
    Percent upfront_percent;
    Money upfront_fee; ///< of the program, or the single premium of a lender's insurance
    Money financed_fee;
    Money loan;             ///< base loan and financed fee: the note
    Percent annual_percent; ///< of mortgage insurance

    /// The percent of a fee at closing that is in the loan.
    [[nodiscard]] Percent upfront_in_loan() const {
        return financed_fee.is_zero() ? Percent{} : upfront_percent;
    }
};

/// The same at its rate.
struct RatedLoan : LentLoan {
    RatedLoan() = default;
    explicit RatedLoan(LentLoan lent) : LentLoan(std::move(lent)) {}

    Rate rate;
    Points points; ///< with adjustments
};

/// The same with the cash it takes.
struct SizedLoan : RatedLoan {
    SizedLoan() = default;
    explicit SizedLoan(RatedLoan rated) : RatedLoan(std::move(rated)) {}

    CashToClose cash;
    CreditsUsed credits;
    Money lender_credit_without_use; ///< of negative points, where it may not reduce the principal
    PrepaidInterest prepaid_interest;
    std::optional<Buydown> buydown; ///< temporary
    std::optional<Percent> contribution_cap;
};

/// A loan as it runs: its payments, and the mortgage insurance that goes with them.
struct LoanRun {
    Schedule schedule; ///< an adjustable rate follows the index of the day; begun with the loan
                       ///< less what reduces the principal at closing
    MonthlyPremium insurance;
    InsuranceEnd insurance_end; ///< conventional only
};

/// The loan as it is disclosed runs by its initial schedule, which takes no payment ahead (12 CFR
/// 1026.37(l), 1026.38(o)): `schedule`, `insurance`, and all that stands on them. What the buyer
/// pays is `paid_in` and the totals beside it: with extra principal, and less what a temporary
/// buydown pays. A loan that is refused has no run and no month.
struct LoanFigures : SizedLoan, LoanRun {
    LoanFigures() = default;
    LoanFigures(SizedLoan sized, std::vector<Refusal> why)
        : SizedLoan(std::move(sized)), refusals(std::move(why)) {}

    std::vector<Refusal> refusals;
    std::optional<LoanRun> paid_ahead; ///< with extra principal; nothing where none is paid
    Monthly monthly;                   ///< settled
    Monthly first_year; ///< while the tax is on land alone; equal to monthly where it never is

    [[nodiscard]] bool available() const { return refusals.empty(); }
    /// The loan as the buyer pays it.
    [[nodiscard]] const LoanRun& paid() const { return paid_ahead ? *paid_ahead : *this; }
    [[nodiscard]] const Schedule& paid_schedule() const { return paid().schedule; }
    [[nodiscard]] const MonthlyPremium& paid_insurance() const { return paid().insurance; }
    [[nodiscard]] const InsuranceEnd& paid_insurance_end() const { return paid().insurance_end; }
    /// What the buyer has put into the loan through payment `month`: cash needed, principal and
    /// interest with extra principal, less what a temporary buydown has paid of them, and mortgage
    /// insurance.
    [[nodiscard]] Money spent_through(int month) const;
    /// What the buyer pays with payment `month`, from 1 on: the same, and the local parts at the
    /// settled figure, which go on when the loan is paid.
    [[nodiscard]] Money paid_in(int month) const;
    /// Cash needed and each `paid_in` from 1 to `month`, at most to the end of the term, whenever
    /// the loan is paid: so that paying it ahead is not credited with taxes.
    [[nodiscard]] Money paid_through(int month) const;
    /// What the loan has cost and still owes after payment `month`: `spent_through` and the
    /// balance. Local costs, the same under every loan, are left out.
    [[nodiscard]] Money spent_and_owed(int month) const;
    [[nodiscard]] Money paid_in_five_years() const { return paid_through(60); }
    [[nodiscard]] Money paid_over_loan() const {
        return paid_through(schedule.terms().term.count());
    }
    /// What a temporary buydown pays of payment `month`: never more than is due. What is left of
    /// its money when the loan is paid is not counted: it goes where its agreement says (Fannie Mae
    /// Servicing Guide C-1.2-03).
    [[nodiscard]] Money from_buydown(int month) const;
};

/// Facts of a purchase that neither the home nor the scenario holds.
struct PurchaseFacts {
    std::vector<Credit> credits; ///< besides the price book's incentives
    std::optional<Money> appraised_value;
    std::optional<Money> deposits_paid; ///< instead of those that fall due by the price book
};

/// The price book's incentives that were put to costs, points or a buydown, in the order of use:
/// points, buydown, costs, all before the credits of the purchase.
[[nodiscard]] std::vector<IncentiveGiven> credited_incentives(const PricedHome& home);
/// The same as credits, without a name.
[[nodiscard]] std::vector<Credit> incentive_credits(const PricedHome& home);

/// The coordinates at which the tables of a loan's fee and insurance are read, once its base loan
/// is known.
[[nodiscard]] Case loan_case(const ScenarioRules& rules, const LentLoan& loan);
/// Those at which its limits, adjustments and caps are read: with a financed premium in it.
[[nodiscard]] Case gross_case(const ScenarioRules& rules, const LentLoan& loan);

/// Whether a loan of this LTV is read against a list.
[[nodiscard]] bool reads(const ScenarioRules& rules, RuleList list, Ltv ltv);

/// Whether a loan's mortgage insurance is paid up at closing.
[[nodiscard]] bool pays_single_premium(const ScenarioRules& rules, Ltv ltv);

/// The loan run down by `paid`, where `initial` is the same without extra principal. Its mortgage
/// insurance follows: conventional by its `insurance_end`; a program's premium is figured on the
/// scheduled balance as ever (12 USC 1709(c)(2)(B) of FHA); none outlasts the loan.
[[nodiscard]] LoanRun run_of(const ScenarioRules& rules, const LoanFigures& figures,
                             const Schedule& initial, Schedule paid);

[[nodiscard]] LoanFigures loan_figures(const ScenarioRules& rules, const PricedHome& home,
                                       const PurchaseFacts& facts);

/// The promise of figures that are available: base loan, down payment and fee make price, loan and
/// cash, and schedule, insurance and buydown are of that loan. Throws Broken otherwise.
void check(const ScenarioRules& rules, const LoanFigures& figures);

} // namespace quoin
