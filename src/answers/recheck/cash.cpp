// Rechecking the cash: closing costs, prepaids, escrow, credits, and what is left to bring.
#include "ledger.hpp"

#include <algorithm>

#include <quoin/exact/index.hpp>
#include <quoin/loan/housing_escrow.hpp>

namespace quoin {
namespace {

Ground of_cost(const RecheckCase& of, const ClosingCost& cost) {
    const Place& place = *of.rules.place;
    const auto& lenders = of.sitting.sheet().costs;
    const bool lender = std::any_of(lenders.begin(), lenders.end(),
                                    [&](const ClosingCost& each) { return &each == &cost; });
    constexpr int rounding = 10;
    return lender ? from("rate sheet " + of.sitting.sheet().id, of.sitting.sheet().lender,
                         Status::sample, rounding)
                  : from(place.id + " closing costs", place.source, place.status, rounding);
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

std::string name_of_cost(const ClosingCost& cost) {
    std::string name = cost.name + " (" + std::string(name_of(cost.section));
    if (cost.paid_by != PaidBy::buyer) name += ", paid by " + std::string(name_of(cost.paid_by));
    if (cost.finance_charge) name += ", a finance charge";
    return name + ")";
}

void add_costs(const RecheckCase& of, Ledger& ledger) {
    const CostCase on = of.rules.closing_costs.on(of.f.loan, of.f.price);
    std::vector<std::string> buyers;
    int count = 0;
    for (const ClosingCost* cost : of.rules.closing_costs.all()) {
        const std::string id = "cost_" + std::to_string(++count);
        const Formula formula = formula_of(*cost, on.owner_policy);
        if (formula.kind == Formula::Kind::number) {
            ledger.given(id, name_of_cost(*cost), amount_of(*cost, on), of_cost(of, *cost));
        } else {
            ledger.figure(id, name_of_cost(*cost), formula, of_cost(of, *cost),
                          amount_of(*cost, on));
        }
        if (cost->paid_by == PaidBy::buyer) buyers.push_back(id);
    }
    ledger.figure("closing_costs", "closing costs of the buyer", sum_of_figures(buyers), {},
                  of.f.cash[CashPart::closing_costs]);
}

/// What becomes of a lender credit that is left: as is usual for the program's kind, by the source
/// of that; else as the program's own file says.
Ground of_credit_left(const LoanProgram& program) {
    const bool reduces = program.policy.credit_reduces_principal;
    if (reduces != usual_policy(program.kind).credit_reduces_principal) {
        return from(program.id + " policy: lender_credit_left", "");
    }
    return reduces ? from("premium pricing", "HUD Reference Guide 2-06", Status::published)
                   : from("lender credits", "Fannie Mae SEL-2018-03", Status::published);
}

/// Points; a lender credit is kept as far as there is something for it to pay, the rest too where
/// it reduces the principal.
void add_points(const RecheckCase& of, Ledger& ledger) {
    const LoanFigures& f = of.f;
    const Formula points = to_cent(percent_of(figure("loan"), figure("points_percent")));
    if (f.points >= Points{}) {
        ledger.figure("points", "points", points, rounded_by(9), f.cash[CashPart::points]);
        return;
    }
    const Formula open =
        sum_of_figures({"closing_costs", "prepaid_interest", "prepaid_bills", "escrow_deposit"});
    const auto beyond = [&](Formula credit) {
        return greatest_of({number(0) - std::move(credit) - open, number(0)});
    };
    if (!of.rules.program->policy.credit_reduces_principal) {
        ledger.figure("lender_credit_lost", "lender credit beyond closing costs and prepaids, lost",
                      beyond(points), of_credit_left(*of.rules.program),
                      f.lender_credit_without_use);
        ledger.figure("points", "points (a credit if negative)",
                      points + figure("lender_credit_lost"), rounded_by(9),
                      f.cash[CashPart::points]);
        return;
    }
    ledger.figure("points", "points (a credit if negative)", points, rounded_by(9),
                  f.cash[CashPart::points]);
    ledger.figure("principal_reduction", "principal reduced at closing, by what is left of it",
                  least_of({beyond(figure("points")), figure("loan")}),
                  of_credit_left(*of.rules.program), f.cash[CashPart::principal_reduction]);
}

void add_prepaids(const RecheckCase& of, Ledger& ledger) {
    const LoanFigures& f = of.f;
    const EscrowTerms& terms = of.rules.place->escrow;
    ledger.given(
        "per_diem_year", "days of the year for prepaid interest", FigureUnit::days,
        Decimal::whole(of.rules.per_diem_year),
        from("rate sheet " + of.sitting.sheet().id, of.sitting.sheet().lender, Status::sample));
    ledger.given("prepaid_days", "days from closing to the month's end", FigureUnit::days,
                 Decimal::whole(f.prepaid_interest.days), {});
    ledger.figure(
        "per_diem", "prepaid interest, a day",
        to_cent(percent_of(figure("loan"), figure("note_rate")) / figure("per_diem_year")),
        rounded_by(22), f.prepaid_interest.per_day);
    ledger.figure("prepaid_interest", "prepaid interest",
                  figure("per_diem") * figure("prepaid_days"), {},
                  f.cash[CashPart::prepaid_interest]);
    ledger.given(
        "prepaid_insurance_months", "months of insurance prepaid", FigureUnit::months,
        Decimal::whole(terms.prepaid_insurance_months),
        from(of.rules.place->id + " escrow", of.rules.place->source, of.rules.place->status));
    std::vector<std::string> premiums;
    for (const MonthPartRow& row : parts_from<PartSource::insurance>) {
        premiums.push_back(yearly_id(row.part));
    }
    ledger.figure(
        "prepaid_insurance", "insurance prepaid",
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
            const std::string name = std::string(bill.name()) +
                                     (bill.on_land ? " on the land alone" : "") + ", due " +
                                     bill.due.text();
            ledger_.figure(ids.back(), name,
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
    ledger.figure("prepaid_bills", "bills prepaid",
                  sum_of({figure("prepaid_insurance"), sum_of_figures(bills.ids)}), {},
                  of.f.cash[CashPart::prepaid_bills]);
}

/// The deposit that lifts the lowest month-end balance to the cushion: aggregate analysis.
void add_escrow(const RecheckCase& of, Ledger& ledger) {
    const auto escrow = housing_escrow(of.rules, of.f.local);
    if (!escrow) {
        ledger.given("escrow_deposit", "escrow, first deposit", of.f.cash[CashPart::escrow], {});
        return;
    }
    const Date first = of.rules.first_payment;
    Bills bills(ledger, "escrow_bill_");
    bills.add(housing_bills(*of.rules.place, of.f.local, of.rules.closing, first,
                            plus_months(first, Months::years(1)), true));
    Ground reg_x = from("aggregate analysis", "12 CFR 1024.17(c), (d)", Status::published);
    ledger.figure("escrow_yearly", "bills of the first escrow year", sum_of_figures(bills.ids), {},
                  escrow->account.yearly);
    reg_x.rounding = 24;
    ledger.figure("escrow_monthly", "into escrow, a month",
                  to_cent(figure("escrow_yearly") / number(12)), reg_x, escrow->account.deposit);
    ledger.given(
        "cushion_months", "months of cushion", FigureUnit::months,
        Decimal::whole(escrow->account.cushion_months),
        from(of.rules.place->id + " escrow", of.rules.place->source, of.rules.place->status));
    reg_x.rounding = 25;
    ledger.figure("cushion", "cushion",
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
    ledger.step("lowest_balance", "lowest month-end balance, begun with nothing",
                least_of(std::move(balances)), reg_x);
    ledger.figure("escrow_deposit", "escrow, first deposit",
                  figure("cushion") - figure("lowest_balance"), reg_x, of.f.cash[CashPart::escrow]);
}

void add_buydown(const RecheckCase& of, Ledger& ledger) {
    if (!of.f.buydown) return;
    std::vector<std::string> subsidies;
    int year = 0;
    for (const BuydownYear& bought : of.f.buydown->years) {
        const std::string n = std::to_string(++year);
        ledger.given("bought_down_" + n, "rate paid in year " + n, FigureUnit::percent,
                     bought.rate.percent(),
                     from("temporary buydown", "Fannie Mae B2-1.4-04", Status::published));
        subsidies.push_back("subsidy_" + n);
        ledger.figure(
            subsidies.back(), "subsidy of year " + n + ", a month",
            figure("principal_and_interest") -
                level_payment_of(figure("loan"), figure("bought_down_" + n), figure("term")),
            rounded_by(27), bought.subsidy);
    }
    ledger.figure("buydown_subsidy", "subsidy put up at closing",
                  sum_of_figures(subsidies) * number(12), {}, of.f.cash[CashPart::buydown]);
}

std::string upfront_word(const RecheckCase& of) {
    return pays_single_premium(of.rules, of.f.ltv) ? "single premium" : "upfront fee";
}

void add_upfront_in_cash(const RecheckCase& of, Ledger& ledger) {
    if (!ledger.has("upfront_fee")) return;
    const Formula fee = figure("upfront_fee");
    ledger.figure(
        "upfront_in_cash", upfront_word(of) + " paid in cash",
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
        ledger_.figure("credits", "credits used", sum_of_figures(all_), {},
                       of_.f.cash[CashPart::credits]);
        ledger_.figure("sellers_points", "points and upfront fees that interested parties pay",
                       sum_of_figures(sellers_points_), {}, of_.f.credits.sellers_points);
        if (!ledger_.has("buydown_subsidy")) return;
        const auto& paid = paid_[static_cast<std::size_t>(CreditUse::buydown)];
        ledger_.figure("buyers_buydown", "of the buydown, put up by the buyer",
                       figure("buydown_subsidy") - sum_of_figures(paid), {},
                       buyers_buydown(of_.f).put_up);
    }

  private:
    struct Use {
        CreditUse use;
        const char* name;
    };
    static constexpr Use order[] = {{CreditUse::points, "points"},
                                    {CreditUse::buydown, "the buydown"},
                                    {CreditUse::closing_costs, "closing costs"},
                                    {CreditUse::prepaids, "prepaids and escrow"},
                                    {CreditUse::upfront_fee, "the upfront fee"},
                                    {CreditUse::down_payment, "the down payment"}};

    void add_cap() {
        if (!of_.f.contribution_cap) return;
        const BandTable& table = *of_.rules.rule(Rule::contribution_cap);
        const int row = of_.f.row(Lookup::contribution_cap);
        const bool by_price = of_.rules.program->policy.cap_by_price;
        ledger_.given(
            "contribution_percent",
            std::string("interested parties may give, of the ") + (by_price ? "price" : "value"),
            *of_.f.contribution_cap,
            of_table(of_, table, row,
                     of_.rules.program->id + " " + std::string(name_of(Rule::contribution_cap))));
        ledger_.step("contribution_cap", "the most that they may give",
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
        ledger_.given(id, "credit: " + name, credit.amount,
                      from("inquiry and price book", "what was offered", Status::sample));
        std::vector<std::string> own;
        for (const Use& each : order) {
            if (!credit.may_pay(each.use)) continue;
            std::vector<std::string>& paid = paid_[static_cast<std::size_t>(each.use)];
            std::vector<Formula> limits{figure(id) - sum_of_figures(own),
                                        room(each.use) - sum_of_figures(paid)};
            const bool counted = counts(credit, each.use);
            if (counted) {
                limits.push_back(figure("contribution_cap") - sum_of_figures(counted_));
            }
            const std::string part = id + "_use_" + std::to_string(own.size() + 1);
            const std::string name_of_use = each.use == CreditUse::upfront_fee
                                                ? "the " + upfront_word(of_)
                                                : std::string(each.name);
            ledger_.step(part, "of it for " + name_of_use, least_of(std::move(limits)), {});
            own.push_back(part);
            paid.push_back(part);
            all_.push_back(part);
            if (counted) counted_.push_back(part);
            if (is_sellers_points(each.use) && is_interested_party(credit.from)) {
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
    ledger.figure("cash_needed", "cash needed", sum_of_figures(parts) - figure("credits"), {},
                  of.f.cash.needed());
    ledger.figure("cash_to_close", "left to bring at closing",
                  figure("cash_needed") - figure("deposits"), {}, of.f.cash.to_close());
}

} // namespace

void recheck_cash(const RecheckCase& of, Ledger& ledger) {
    ledger.section(RecheckSheet::cash, "Closing costs");
    add_costs(of, ledger);
    ledger.section(RecheckSheet::cash, "Prepaids and escrow");
    add_prepaids(of, ledger);
    add_prepaid_tax(of, ledger);
    add_escrow(of, ledger);
    ledger.section(RecheckSheet::cash, "Credits and the cash to close");
    add_points(of, ledger);
    add_buydown(of, ledger);
    add_upfront_in_cash(of, ledger);
    Allotment(of, ledger).run();
    add_total(of, ledger);
}

} // namespace quoin
