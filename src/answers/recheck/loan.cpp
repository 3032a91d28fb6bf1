// Rechecking the loan: value, down payment, base loan, upfront fee, rate, payment.
#include "ledger.hpp"

#include <map>

#include <quoin/exact/index.hpp>
#include <quoin/loan/adjustable.hpp>
#include <quoin/loan/fee_methods.hpp>

namespace quoin {
namespace {

Ground of_inquiry() { return from("inquiry", "the buyer's choice"); }

std::string rule_name(const RecheckCase& of, Rule rule) {
    return of.rules.program->id + " " + std::string(name_of(rule));
}

void add_value(const RecheckCase& of, Ledger& ledger) {
    const auto& appraised = of.sitting.inquiry().facts.appraised_value;
    if (!appraised) {
        ledger.figure("value", "value (the price, until it is appraised)", figure("contract_price"),
                      {}, of.f.value);
        return;
    }
    ledger.given("appraised_value", "appraised value", *appraised, of_inquiry());
    ledger.figure("value", "value (the lesser of price and appraisal)",
                  least_of({figure("contract_price"), figure("appraised_value")}), {}, of.f.value);
}

/// Loan amounts are whole dollars where the program says so.
Formula cut(const RecheckCase& of, Formula amount) {
    return of.rules.program->whole_dollars ? down_to_dollar(std::move(amount)) : amount;
}

void add_base_loan(const RecheckCase& of, Ledger& ledger) {
    const DownPayment& down = of.rules.scenario.down;
    if (down.by == DownPayment::By::percent) {
        ledger.given("down_asked", "down payment asked for, of the value", down.percent,
                     of_inquiry());
        const Formula rest = number(100) - figure("down_asked");
        ledger.figure("base_loan", "base loan",
                      cut(of, down_to_cent(percent_of(figure("value"), rest))), rounded_by(3),
                      of.f.base_loan);
    } else if (down.by == DownPayment::By::amount) {
        ledger.given("down_asked", "down payment asked for", down.amount, of_inquiry());
        ledger.figure(
            "base_loan", "base loan",
            cut(of, greatest_of({figure("contract_price") - figure("down_asked"), number(0)})),
            rounded_by(4), of.f.base_loan);
    } else {
        ledger.given("cash_there_is", "cash there is for the purchase", down.amount, of_inquiry());
        Ground solved = of_inquiry();
        solved.rule = "the smallest whole-dollar loan that this cash covers";
        ledger.given("base_loan", "base loan", of.f.base_loan, solved);
    }
    ledger.figure("down_payment", "down payment", figure("contract_price") - figure("base_loan"),
                  {}, of.f.cash[CashPart::down_payment]);
    const bool has_value = of.f.value > Money{};
    ledger.figure(
        "ltv", "LTV, as the tables read it", FigureUnit::percent,
        has_value ? rounded(figure("base_loan") * number(100) / figure("value"), 2, Rounding::down)
                  : number(0),
        rounded_by(5), of.f.ltv.value());
}

void add_limits(const RecheckCase& of, Ledger& ledger) {
    const Case where = gross_case(of.rules, of.f);
    if (const BandTable* table = of.rules.rule(Rule::maximum_ltv)) {
        const int row = table->row(where).value();
        ledger.given("maximum_ltv", "the most the program lends, of the value", FigureUnit::percent,
                     table->value(row),
                     of_table(of, *table, row, rule_name(of, Rule::maximum_ltv)));
        ledger.step("most_lent", "the most the program lends",
                    down_to_cent(percent_of(figure("value"), figure("maximum_ltv"))),
                    rounded_by(6));
    }
    const BandTable* table = of.rules.rule(Rule::loan_limit);
    const auto row = table != nullptr ? table->row(where) : std::nullopt;
    if (!row) return;
    ledger.given("loan_limit", "loan limit of the area", FigureUnit::money, table->value(*row),
                 of_table(of, *table, *row, rule_name(of, Rule::loan_limit)));
}

/// Of a fee that may be no more: then it is nothing.
Ground of_fee(const RecheckCase& of, const BandTable* table, int row, const std::string& what) {
    return table != nullptr ? of_table(of, *table, row, what) : from(what + ": no more", "");
}

void add_single_premium(const RecheckCase& of, Ledger& ledger) {
    const LoanFigures& f = of.f;
    const BandTable* table = of.rules.single_premium.rule();
    ledger.given("upfront_percent", "mortgage insurance in a single premium, of the base loan",
                 f.upfront_percent,
                 of_fee(of, table, f.row(Lookup::single_premium),
                        "rate sheet " + of.sitting.sheet().id + " single premium"));
    ledger.figure("upfront_fee", "mortgage insurance, single premium",
                  to_cent(percent_of(figure("base_loan"), figure("upfront_percent"))),
                  rounded_by(7), f.upfront_fee);
    if (!of.rules.scenario.finance_premium) {
        ledger.figure("loan", "loan", figure("base_loan"), {}, f.loan);
        return;
    }
    ledger.figure("financed_fee", "premium in the loan", cut(of, figure("upfront_fee")),
                  rounded_by(7), f.financed_fee);
    ledger.figure("loan", "loan", figure("base_loan") + figure("financed_fee"), {}, f.loan);
    const Ground gross = from("LTV with the premium in the loan, for limits, adjustments and caps",
                              "Fannie Mae B7-1-04, B2-1.2-01", Status::published, 5);
    ledger.figure("gross_ltv", "LTV with the premium", FigureUnit::percent,
                  rounded(figure("loan") * number(100) / figure("value"), 2, Rounding::down), gross,
                  f.gross_ltv.value());
}

void add_upfront_fee(const RecheckCase& of, Ledger& ledger) {
    const LoanProgram& program = *of.rules.program;
    const LoanFigures& f = of.f;
    if (pays_single_premium(of.rules, f.ltv)) {
        add_single_premium(of, ledger);
        return;
    }
    if (program.upfront == nullptr) {
        ledger.figure("loan", "loan", figure("base_loan"), {}, f.loan);
        return;
    }
    ledger.given("upfront_percent", program.upfront_name + ", of the loan", f.upfront_percent,
                 of_fee(of, of.rules.rule(Rule::upfront_fee), f.row(Lookup::upfront_fee),
                        rule_name(of, Rule::upfront_fee)));
    const std::map<std::string_view, Money> ours = {
        {"upfront_fee", f.upfront_fee}, {"financed_fee", f.financed_fee}, {"loan", f.loan}};
    for (const FeeProof& step :
         program.upfront->proof(of.rules.scenario.finance_fee, program.whole_dollars)) {
        ledger.figure(std::string(step.id),
                      step.name.empty() ? program.upfront_name : std::string(step.name),
                      step.formula, rounded_by(step.rounding), ours.at(step.id));
    }
}

Ground of_sheet(const RecheckCase& of, std::string rule) {
    const RateSheet& sheet = of.sitting.sheet();
    Ground ground = from(std::move(rule), sheet.lender + " (" + sheet.license + ")",
                         sheet.sample ? Status::sample : Status::published);
    ground.effective = sheet.date;
    ground.until = plus_days(sheet.good_through, 1);
    return ground;
}

void add_rate(const RecheckCase& of, Ledger& ledger) {
    const RateChoice& choice = of.rules.scenario.rate;
    const bool quoted = choice.by == RateChoice::By::quoted;
    const std::string sheet = "rate sheet " + of.sitting.sheet().id;
    const Ground ground =
        quoted ? from("quoted rate", "stated in the inquiry", Status::sample) : of_sheet(of, sheet);
    ledger.given("note_rate", "note rate", FigureUnit::percent, of.f.rate.percent(), ground);
    if (quoted) {
        ledger.given("points_percent", "points", FigureUnit::percent, of.f.points.value(), ground);
        return;
    }
    const Rung& rung = at(of.rules.ladder->rungs, of.f.row(Lookup::note_rate));
    ledger.given("points_of_rung", "points of this rate", FigureUnit::percent, rung.points.value(),
                 of_sheet(of, sheet));
    std::vector<std::string> parts{"points_of_rung"};
    const Case where = gross_case(of.rules, of.f);
    for (const BandTable* table : of.rules.adjustments) {
        const auto row = table->row(where);
        if (!row) continue;
        parts.push_back("points_adjustment_" + std::to_string(parts.size()));
        ledger.given(parts.back(), "adjustment " + table->name, FigureUnit::percent,
                     table->value(*row), of_table(of, *table, *row, sheet + " adjustment"));
    }
    ledger.figure("points_percent", "points", FigureUnit::percent, sum_of_figures(parts), {},
                  of.f.points.value());
}

void add_payment(const RecheckCase& of, Ledger& ledger) {
    ledger.given("term", "term", FigureUnit::months, Decimal::whole(of.rules.scenario.term.count()),
                 of_inquiry());
    ledger.figure("principal_and_interest", "principal and interest, a month",
                  level_payment_of(figure("loan"), figure("note_rate"), figure("term")),
                  rounded_by(12), of.f.schedule.payment());
}

/// "nearest eighth, an exact tie down": half an eighth is taken off before rounding up.
Formula to_eighth(Formula percent) {
    const Formula eighths =
        std::move(percent) * number(8) - number(Decimal::billionths(Decimal::one / 2));
    return rounded(eighths, 0, Rounding::up) / number(8);
}

/// The rates of an adjustable loan as long as the index stays, each with its payment.
void add_adjustable(const RecheckCase& of, Ledger& ledger) {
    if (!of.rules.adjustable) return;
    const AdjustableTerms& terms = *of.rules.adjustable;
    const Ground plan = from(of.rules.program->id + " adjustable",
                             of.rules.program->adjustable->source, Status::published);
    const Ground sheet = of_sheet(of, "rate sheet " + of.sitting.sheet().id);
    ledger.given("index", of.sitting.sheet().index->name, terms.index, sheet);
    ledger.given("margin", "margin", terms.margin, sheet);
    ledger.given("cap_first", "cap at the first change", terms.caps.first, plan);
    ledger.given("cap_later", "cap at later changes", terms.caps.periodic, plan);
    ledger.given("cap_life", "cap over the life of the loan", terms.caps.life, plan);
    ledger.step("fully_indexed", "index and margin", FigureUnit::percent,
                greatest_of({to_eighth(figure("index") + figure("margin")), figure("margin")}),
                rounded_by(28));
    std::string before = "note_rate";
    const auto& steps = of.f.schedule.steps();
    for (std::size_t i = 1; i < steps.size(); ++i) {
        const std::string from_payment = std::to_string(steps[i].from_payment);
        const Formula cap = figure(i == 1 ? "cap_first" : "cap_later");
        const Formula least = figure(before) - cap;
        const Formula most =
            least_of({figure(before) + cap, figure("note_rate") + figure("cap_life")});
        const std::string rate = "rate_from_" + from_payment;
        ledger.figure(rate, "rate from payment " + from_payment, FigureUnit::percent,
                      least_of({greatest_of({figure("fully_indexed"), least}), most}), {},
                      steps[i].rate.percent());
        const int before_payment = steps[i].from_payment - 1;
        ledger.figure("payment_from_" + from_payment, "principal and interest from then",
                      level_payment_of(column_at(ScheduleColumn::balance, before_payment),
                                       figure(rate), figure("term") - number(before_payment)),
                      rounded_by(12), steps[i].payment);
        before = rate;
    }
}

} // namespace

void recheck_loan(const RecheckCase& of, Ledger& ledger) {
    ledger.section(RecheckSheet::loan, "The loan");
    add_value(of, ledger);
    add_base_loan(of, ledger);
    add_limits(of, ledger);
    add_upfront_fee(of, ledger);
    add_rate(of, ledger);
    add_payment(of, ledger);
    add_adjustable(of, ledger);
}

} // namespace quoin
