// Rechecking the cash: closing costs, prepaids, escrow, credits, and what is left to bring.
#include "ledger.hpp"

#include <algorithm>

#include <quoin/exact/index.hpp>
#include <quoin/loan/housing_escrow.hpp>

namespace quoin {
namespace {

Ground of_cost(const RecheckCase& of, const ClosingCost& cost) {
    const auto& lenders = of.sitting.sheet().costs;
    const bool lender = std::any_of(lenders.begin(), lenders.end(),
                                    [&](const ClosingCost& each) { return &each == &cost; });
    constexpr int rounding = 10;
    return lender ? from(rule_of_sheet(of, FileRule::rate_sheet), of.sitting.sheet().lender,
                         Status::sample, rounding)
                  : of_place(of, FileRule::closing_costs, rounding);
}

Formula per_thousand(Formula amount, Decimal rate) {
    return to_cent(std::move(amount) * number(rate) / number(1000));
}

/// Each tier on its own stretch of the base, to the cent.
Formula tiered(const std::vector<Tier>& tiers, const Formula& base) {
    std::vector<Formula> parts;
    Formula covered = number(0);
    for (const Tier& tier : tiers) {
        const Formula end = tier.up_to ? least_of({base, number(in_dollars(*tier.up_to))}) : base;
        parts.push_back(per_thousand(greatest_of({end - covered, number(0)}), tier.per_thousand));
        covered = end;
    }
    return sum_of(std::move(parts));
}

Formula full_amount(const ClosingCost& cost, const Formula& base) {
    std::vector<Formula> parts;
    if (!cost.amount.is_zero()) parts.push_back(number(in_dollars(cost.amount)));
    if (cost.percent != Percent{}) {
        parts.push_back(to_cent(percent_of(base, number(cost.percent.value()))));
    }
    if (cost.per_thousand != Decimal{}) parts.push_back(per_thousand(base, cost.per_thousand));
    if (!cost.tiers.empty()) parts.push_back(tiered(cost.tiers, base));
    return parts.empty() ? number(0) : sum_of(std::move(parts));
}

Formula formula_of(const ClosingCost& cost, bool owner_policy) {
    const Formula price = figure("contract_price");
    const Formula base = cost.base == CostBase::loan ? figure("loan") : price;
    if (!cost.simultaneous || !owner_policy) return full_amount(cost, base);
    return number(in_dollars(*cost.simultaneous)) + full_amount(cost, base) -
           full_amount(cost, least_of({base, price}));
}

void add_costs(const RecheckCase& of, Ledger& ledger) {
    const CostCase on = of.rules.closing_costs.on(of.f.loan, of.f.price);
    std::vector<std::string> buyers;
    int count = 0;
    for (const ClosingCost* cost : of.rules.closing_costs.all()) {
        const std::string id = "cost_" + std::to_string(++count);
        const Entered what{
            id, CostLabel{cost->name, cost->section, cost->paid_by, cost->finance_charge}};
        const Formula formula = formula_of(*cost, on.owner_policy);
        if (formula.kind == Formula::Kind::number) {
            ledger.given(what, amount_of(*cost, on), of_cost(of, *cost));
        } else {
            ledger.figure(what, formula, of_cost(of, *cost), amount_of(*cost, on));
        }
        if (cost->paid_by == PaidBy::buyer) buyers.push_back(id);
    }
    ledger.figure(FigureCode::closing_costs, sum_of_figures(buyers), {},
                  of.f.cash[CashPart::closing_costs]);
}

/// What becomes of a lender credit that is left: as is usual for the program's kind, by the source
/// of that; else as the program's own file says.
Ground of_credit_left(const LoanProgram& program) {
    const bool reduces = program.policy.credit_reduces_principal;
    if (reduces != usual_policy(program.kind).credit_reduces_principal) {
        return from(RuleOfFile{FileRule::lender_credit_left, program.id}, {});
    }
    return reduces
               ? from(CommonRule::premium_pricing, "HUD Reference Guide 2-06", Status::published)
               : from(CommonRule::lender_credits, "Fannie Mae SEL-2018-03", Status::published);
}

/// Points; a lender credit is kept as far as there is something for it to pay, the rest too where
/// it reduces the principal.
void add_points(const RecheckCase& of, Ledger& ledger) {
    const LoanFigures& f = of.f;
    const Formula points = to_cent(percent_of(figure("loan"), figure("points_percent")));
    if (f.points >= Points{}) {
        ledger.figure(FigureCode::points, points, rounded_by(9), f.cash[CashPart::points]);
        return;
    }
    const Formula open =
        sum_of_figures({"closing_costs", "prepaid_interest", "prepaid_bills", "escrow_deposit"});
    const auto beyond = [&](Formula credit) {
        return greatest_of({number(0) - std::move(credit) - open, number(0)});
    };
    if (!of.rules.program->policy.credit_reduces_principal) {
        ledger.figure(FigureCode::lender_credit_lost, beyond(points),
                      of_credit_left(*of.rules.program), f.lender_credit_without_use);
        ledger.figure({"points", FigureCode::points_or_credit},
                      points + figure("lender_credit_lost"), rounded_by(9),
                      f.cash[CashPart::points]);
        return;
    }
    ledger.figure({"points", FigureCode::points_or_credit}, points, rounded_by(9),
                  f.cash[CashPart::points]);
    ledger.figure(FigureCode::principal_reduction,
                  least_of({beyond(figure("points")), figure("loan")}),
                  of_credit_left(*of.rules.program), f.cash[CashPart::principal_reduction]);
}

void add_prepaids(const RecheckCase& of, Ledger& ledger) {
    const LoanFigures& f = of.f;
    const EscrowTerms& terms = of.rules.place->escrow;
    ledger.given(
        FigureCode::per_diem_year, FigureUnit::days, Decimal::whole(of.rules.per_diem_year),
        from(rule_of_sheet(of, FileRule::rate_sheet), of.sitting.sheet().lender, Status::sample));
    ledger.given(FigureCode::prepaid_days, FigureUnit::days,
                 Decimal::whole(f.prepaid_interest.days), {});
    ledger.figure(
        FigureCode::per_diem,
        to_cent(percent_of(figure("loan"), figure("note_rate")) / figure("per_diem_year")),
        rounded_by(22), f.prepaid_interest.per_day);
    ledger.figure(FigureCode::prepaid_interest, figure("per_diem") * figure("prepaid_days"), {},
                  f.cash[CashPart::prepaid_interest]);
    ledger.given(FigureCode::prepaid_insurance_months, FigureUnit::months,
                 Decimal::whole(terms.prepaid_insurance_months), of_place(of, FileRule::escrow));
    std::vector<std::string> premiums;
    for (const MonthPartRow& row : parts_from<PartSource::insurance>) {
        premiums.push_back(yearly_id(row.part));
    }
    ledger.figure(
        FigureCode::prepaid_insurance,
        to_cent(sum_of_figures(premiums) * figure("prepaid_insurance_months") / number(12)),
        rounded_by(21), f.prepaids.insurance);
}

/// Adds the bills of a stretch of time, each a share of its year, and returns their ids by month
/// from the first payment's.
class Bills {
  public:
    Bills(Ledger& ledger, std::string prefix) : ledger_(ledger), prefix_(std::move(prefix)) {}

    void add(const std::vector<HousingBill>& bills) {
        for (const HousingBill& bill : bills) {
            ids.push_back(prefix_ + std::to_string(ids.size() + 1));
            ledger_.figure({ids.back(), BillLabel{bill.part, bill.on_land, bill.due}},
                           bill.is_tax() ? tax_share(bill) : figure(yearly_id(bill.part)),
                           bill.is_tax() ? rounded_by(23) : Ground{}, bill.amount);
            due.push_back(bill.due);
        }
    }

    std::vector<std::string> ids;
    std::vector<Date> due;

  private:
    /// A bill's share of the year's tax.
    static Formula tax_share(const HousingBill& bill) {
        const std::string of = bill.on_land ? "land_" : "";
        return to_cent(percent_of(figure(of + "levies") + figure(of + "districts"),
                                  number(bill.share.value())));
    }

    Ledger& ledger_;
    std::string prefix_;
};

void add_prepaid_tax(const RecheckCase& of, Ledger& ledger) {
    Bills bills(ledger, "prepaid_tax_");
    std::vector<HousingBill> tax;
    for (const HousingBill& bill : housing_bills(*of.rules.place, of.f.local, of.rules.closing,
                                                 of.rules.closing, of.rules.first_payment, false)) {
        if (bill.is_tax()) tax.push_back(bill);
    }
    bills.add(tax);
    ledger.figure(FigureCode::prepaid_bills,
                  sum_of({figure("prepaid_insurance"), sum_of_figures(bills.ids)}), {},
                  of.f.cash[CashPart::prepaid_bills]);
}

/// The deposit that lifts the lowest month-end balance to the cushion: aggregate analysis.
void add_escrow(const RecheckCase& of, Ledger& ledger) {
    const auto escrow = housing_escrow(of.rules, of.f.local);
    if (!escrow) {
        ledger.given(FigureCode::escrow_deposit, of.f.cash[CashPart::escrow], {});
        return;
    }
    const Date first = of.rules.first_payment;
    Bills bills(ledger, "escrow_bill_");
    bills.add(housing_bills(*of.rules.place, of.f.local, of.rules.closing, first,
                            plus_months(first, Months::years(1)), true));
    Ground reg_x =
        from(CommonRule::aggregate_analysis, "12 CFR 1024.17(c), (d)", Status::published);
    ledger.figure(FigureCode::escrow_yearly, sum_of_figures(bills.ids), {}, escrow->account.yearly);
    reg_x.rounding = 24;
    ledger.figure(FigureCode::escrow_monthly, to_cent(figure("escrow_yearly") / number(12)), reg_x,
                  escrow->account.deposit);
    ledger.given(FigureCode::cushion_months, FigureUnit::months,
                 Decimal::whole(escrow->account.cushion_months), of_place(of, FileRule::escrow));
    reg_x.rounding = 25;
    ledger.figure(FigureCode::cushion,
                  down_to_cent(figure("escrow_yearly") * figure("cushion_months") / number(12)),
                  reg_x, escrow->account.cushion);
    std::vector<Formula> balances{number(0)};
    for (int month = 1; month <= 12; ++month) {
        std::vector<std::string> paid;
        for (std::size_t i = 0; i < bills.ids.size(); ++i) {
            if (bills.due[i] < plus_months(first, Months(month))) paid.push_back(bills.ids[i]);
        }
        balances.push_back(figure("escrow_monthly") * number(month) - sum_of_figures(paid));
    }
    ledger.step(FigureCode::lowest_balance, least_of(std::move(balances)), reg_x);
    ledger.figure(FigureCode::escrow_deposit, figure("cushion") - figure("lowest_balance"), reg_x,
                  of.f.cash[CashPart::escrow]);
}

void add_buydown(const RecheckCase& of, Ledger& ledger) {
    if (!of.f.buydown) return;
    const Ground buydown =
        from(CommonRule::temporary_buydown, "Fannie Mae B2-1.4-04", Status::published);
    std::vector<std::string> subsidies;
    int year = 0;
    for (const BuydownYear& bought : of.f.buydown->years) {
        const Entered rate = NumberedLabel{NumberedFigure::bought_down, ++year};
        const Entered subsidy = NumberedLabel{NumberedFigure::subsidy, year};
        ledger.given(rate, FigureUnit::percent, bought.rate.percent(), buydown);
        ledger.figure(subsidy,
                      figure("principal_and_interest") -
                          level_payment_of(figure("loan"), figure(rate.id), figure("term")),
                      rounded_by(27), bought.subsidy);
        subsidies.push_back(subsidy.id);
    }
    ledger.figure(FigureCode::buydown_subsidy, sum_of_figures(subsidies) * number(12), {},
                  of.f.cash[CashPart::buydown]);
}

void add_upfront_in_cash(const RecheckCase& of, Ledger& ledger) {
    if (!ledger.has("upfront_fee")) return;
    const Formula fee = figure("upfront_fee");
    const bool single = pays_single_premium(of.rules, of.f.ltv);
    ledger.figure(
        {"upfront_in_cash", single ? FigureCode::premium_in_cash : FigureCode::upfront_in_cash},
        ledger.has("financed_fee") ? greatest_of({fee - figure("financed_fee"), number(0)}) : fee,
        rounded_by(7), of.f.cash[CashPart::upfront_fee]);
}

/// How credits are allotted: each in its turn, to each thing it may pay in a fixed order, as far as
/// it lasts, as there is to pay, and as the cap leaves room.
class Allotment {
  public:
    Allotment(const RecheckCase& of, Ledger& ledger) : of_(of), ledger_(ledger) {}

    void run() {
        add_cap();
        const std::vector<Credit> incentives = incentive_credits(of_.home);
        const std::vector<IncentiveGiven> given = credited_incentives(of_.home);
        for (std::size_t i = 0; i < incentives.size(); ++i) {
            add(incentives[i], at(of_.sitting.book().incentives, given[i].incentive).name);
        }
        for (const Credit& credit : of_.sitting.inquiry().facts.credits) add(credit, credit.name);
        ledger_.figure(FigureCode::credits, sum_of_figures(all_), {},
                       of_.f.cash[CashPart::credits]);
        ledger_.figure(FigureCode::sellers_points, sum_of_figures(sellers_points_), {},
                       of_.f.credits.sellers_points);
        if (!ledger_.has("buydown_subsidy")) return;
        const auto& paid = paid_[static_cast<std::size_t>(CreditUse::buydown)];
        ledger_.figure(FigureCode::buyers_buydown, figure("buydown_subsidy") - sum_of_figures(paid),
                       {}, buyers_buydown(of_.f).put_up);
    }

  private:
    void add_cap() {
        if (!of_.f.contribution_cap) return;
        const BandTable& table = *of_.rules.rule(Rule::contribution_cap);
        const int row = of_.f.row(Lookup::contribution_cap);
        const bool by_price = of_.rules.program->policy.cap_by_price;
        ledger_.given({"contribution_percent", by_price ? FigureCode::contribution_by_price
                                                        : FigureCode::contribution_percent},
                      *of_.f.contribution_cap,
                      of_table(of_, table, row, member_of(of_, Rule::contribution_cap)));
        ledger_.step(FigureCode::contribution_cap,
                     down_to_cent(percent_of(figure(by_price ? "contract_price" : "value"),
                                             figure("contribution_percent"))),
                     rounded_by(11));
    }

    [[nodiscard]] bool counts(const Credit& credit, CreditUse use) const {
        if (!is_interested_party(credit.from) || !of_.f.contribution_cap) return false;
        return !of_.rules.program->policy.cap_on_concessions || is_concession(use);
    }

    /// What a lender credit for the rate leaves of the closing costs, and then of the prepaids.
    [[nodiscard]] Formula room_of_costs() const {
        if (of_.f.cash[CashPart::points] >= Money{}) return figure("closing_costs");
        return greatest_of({figure("closing_costs") + figure("points"), number(0)});
    }
    [[nodiscard]] Formula room_of_prepaids() const {
        const Formula all =
            figure("prepaid_interest") + figure("prepaid_bills") + figure("escrow_deposit");
        if (of_.f.cash[CashPart::points] >= Money{}) return all;
        return greatest_of(
            {all + least_of({figure("closing_costs") + figure("points"), number(0)}), number(0)});
    }

    [[nodiscard]] Formula room(CreditUse use) const {
        switch (use) {
        case CreditUse::points:
            return greatest_of({figure("points"), number(0)});
        case CreditUse::buydown:
            return ledger_.has("buydown_subsidy") ? figure("buydown_subsidy") : number(0);
        case CreditUse::upfront_fee:
            return ledger_.has("upfront_in_cash") ? figure("upfront_in_cash") : number(0);
        case CreditUse::closing_costs:
            return room_of_costs();
        case CreditUse::prepaids:
            return room_of_prepaids();
        case CreditUse::down_payment:
            return figure("down_payment");
        }
        return number(0);
    }

    void add(const Credit& credit, const std::string& name) {
        const std::string id = "credit_" + std::to_string(++count_);
        ledger_.given(
            {id, NamedLabel{NamedFigure::credit, name}}, credit.amount,
            from(CommonRule::inquiry_and_price_book, CommonSource::offered, Status::sample));
        std::vector<std::string> own;
        for (const CreditUse use : credit_uses) {
            if (!credit.may_pay(use)) continue;
            std::vector<std::string>& paid = paid_[static_cast<std::size_t>(use)];
            std::vector<Formula> limits{figure(id) - sum_of_figures(own),
                                        room(use) - sum_of_figures(paid)};
            const bool counted = counts(credit, use);
            if (counted) {
                limits.push_back(figure("contribution_cap") - sum_of_figures(counted_));
            }
            const std::string part = id + "_use_" + std::to_string(own.size() + 1);
            const UseLabel label{use, pays_single_premium(of_.rules, of_.f.ltv)};
            ledger_.step({part, label}, least_of(std::move(limits)), {});
            own.push_back(part);
            paid.push_back(part);
            all_.push_back(part);
            if (counted) counted_.push_back(part);
            if (is_sellers_points(use) && is_interested_party(credit.from)) {
                sellers_points_.push_back(part);
            }
        }
    }

    const RecheckCase& of_;
    Ledger& ledger_;
    int count_ = 0;
    std::array<std::vector<std::string>, credit_uses.size()> paid_;
    std::vector<std::string> all_;
    std::vector<std::string> counted_;
    std::vector<std::string> sellers_points_;
};

void add_total(const RecheckCase& of, Ledger& ledger) {
    std::vector<std::string> parts{"down_payment",     "points",        "closing_costs",
                                   "prepaid_interest", "prepaid_bills", "escrow_deposit"};
    if (ledger.has("upfront_in_cash")) parts.emplace_back("upfront_in_cash");
    if (ledger.has("buydown_subsidy")) parts.emplace_back("buydown_subsidy");
    if (ledger.has("principal_reduction")) parts.emplace_back("principal_reduction");
    ledger.figure(FigureCode::cash_needed, sum_of_figures(parts) - figure("credits"), {},
                  of.f.cash.needed());
    ledger.figure(FigureCode::cash_to_close, figure("cash_needed") - figure("deposits"), {},
                  of.f.cash.to_close());
}

} // namespace

void recheck_cash(const RecheckCase& of, Ledger& ledger) {
    ledger.section(ProofPart::closing_costs);
    add_costs(of, ledger);
    ledger.section(ProofPart::prepaids);
    add_prepaids(of, ledger);
    add_prepaid_tax(of, ledger);
    add_escrow(of, ledger);
    ledger.section(ProofPart::credits);
    add_points(of, ledger);
    add_buydown(of, ledger);
    add_upfront_in_cash(of, ledger);
    Allotment(of, ledger).run();
    add_total(of, ledger);
}

} // namespace quoin
