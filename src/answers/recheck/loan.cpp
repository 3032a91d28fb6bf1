// Rechecking the loan: value, down payment, base loan, upfront fee, rate, payment.
#include "ledger.hpp"

#include <map>

#include <quoin/exact/index.hpp>
#include <quoin/loan/adjustable.hpp>
#include <quoin/loan/fee_methods.hpp>

namespace quoin {
namespace {

Ground of_inquiry() { return from(CommonRule::inquiry, CommonSource::buyers_choice); }

void add_value(const RecheckCase& of, Ledger& ledger) {
    const auto& appraised = of.sitting.inquiry().facts.appraised_value;
    if (!appraised) {
        ledger.figure({"value", FigureCode::value_by_price}, figure("contract_price"), {},
                      of.f.value);
        return;
    }
    ledger.given(FigureCode::appraised_value, *appraised, of_inquiry());
    ledger.figure(FigureCode::value,
                  least_of({figure("contract_price"), figure("appraised_value")}), {}, of.f.value);
}

/// Loan amounts are whole dollars where the program says so.
Formula cut(const RecheckCase& of, Formula amount) {
    return of.rules.program->whole_dollars ? down_to_dollar(std::move(amount)) : amount;
}

void add_base_loan(const RecheckCase& of, Ledger& ledger) {
    const DownPayment& down = of.rules.scenario.down;
    if (down.by == DownPayment::By::percent) {
        ledger.given({"down_asked", FigureCode::down_percent_asked}, down.percent, of_inquiry());
        const Formula rest = number(100) - figure("down_asked");
        ledger.figure(FigureCode::base_loan,
                      cut(of, down_to_cent(percent_of(figure("value"), rest))), rounded_by(3),
                      of.f.base_loan);
    } else if (down.by == DownPayment::By::amount) {
        ledger.given(FigureCode::down_asked, down.amount, of_inquiry());
        ledger.figure(
            FigureCode::base_loan,
            cut(of, greatest_of({figure("contract_price") - figure("down_asked"), number(0)})),
            rounded_by(4), of.f.base_loan);
    } else {
        ledger.given(FigureCode::cash_there_is, down.amount, of_inquiry());
        Ground solved = of_inquiry();
        solved.rule = CommonRule::smallest_loan;
        ledger.given(FigureCode::base_loan, of.f.base_loan, solved);
    }
    ledger.figure(FigureCode::down_payment, figure("contract_price") - figure("base_loan"), {},
                  of.f.cash[CashPart::down_payment]);
    const bool has_value = of.f.value > Money{};
    ledger.figure(
        FigureCode::ltv, FigureUnit::percent,
        has_value ? rounded(figure("base_loan") * number(100) / figure("value"), 2, Rounding::down)
                  : number(0),
        rounded_by(5), of.f.ltv.value());
}

void add_limits(const RecheckCase& of, Ledger& ledger) {
    const Case where = gross_case(of.rules, of.f);
    if (const BandTable* table = of.rules.rule(Rule::maximum_ltv)) {
        const int row = table->row(where).value();
        ledger.given(FigureCode::maximum_ltv, FigureUnit::percent, table->value(row),
                     of_table(of, *table, row, member_of(of, Rule::maximum_ltv)));
        ledger.step(FigureCode::most_lent,
                    down_to_cent(percent_of(figure("value"), figure("maximum_ltv"))),
                    rounded_by(6));
    }
    const BandTable* table = of.rules.rule(Rule::loan_limit);
    const auto row = table != nullptr ? table->row(where) : std::nullopt;
    if (!row) return;
    ledger.given(FigureCode::loan_limit, FigureUnit::money, table->value(*row),
                 of_table(of, *table, *row, member_of(of, Rule::loan_limit)));
}

/// Of a fee that may be no more: then it is nothing.
Ground of_fee(const RecheckCase& of, const BandTable* table, int row, GroundRule rule) {
    if (table != nullptr) return of_table(of, *table, row, std::move(rule));
    Ground ground = from(std::move(rule), {});
    ground.no_more = true;
    return ground;
}

void add_single_premium(const RecheckCase& of, Ledger& ledger) {
    const LoanFigures& f = of.f;
    const BandTable* table = of.rules.single_premium.rule();
    ledger.given({"upfront_percent", FigureCode::single_premium_percent}, f.upfront_percent,
                 of_fee(of, table, f.row(Lookup::single_premium),
                        rule_of_sheet(of, FileRule::sheet_single_premium)));
    ledger.figure({"upfront_fee", FigureCode::single_premium},
                  to_cent(percent_of(figure("base_loan"), figure("upfront_percent"))),
                  rounded_by(7), f.upfront_fee);
    if (!of.rules.scenario.finance_premium) {
        ledger.figure(FigureCode::loan, figure("base_loan"), {}, f.loan);
        return;
    }
    ledger.figure({"financed_fee", FigureCode::financed_premium}, cut(of, figure("upfront_fee")),
                  rounded_by(7), f.financed_fee);
    ledger.figure(FigureCode::loan, figure("base_loan") + figure("financed_fee"), {}, f.loan);
    const Ground gross =
        from(CommonRule::gross_ltv, "Fannie Mae B7-1-04, B2-1.2-01", Status::published, 5);
    ledger.figure(FigureCode::gross_ltv, FigureUnit::percent,
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
        ledger.figure(FigureCode::loan, figure("base_loan"), {}, f.loan);
        return;
    }
    ledger.given({"upfront_percent", NamedLabel{NamedFigure::of_loan, program.upfront_name}},
                 f.upfront_percent,
                 of_fee(of, of.rules.rule(Rule::upfront_fee), f.row(Lookup::upfront_fee),
                        member_of(of, Rule::upfront_fee)));
    const std::map<std::string_view, Money> ours = {
        {"upfront_fee", f.upfront_fee}, {"financed_fee", f.financed_fee}, {"loan", f.loan}};
    for (const FeeProof& step :
         program.upfront->proof(of.rules.scenario.finance_fee, program.whole_dollars)) {
        const FigureLabel itself = NamedLabel{NamedFigure::itself, program.upfront_name};
        ledger.figure({std::string(step.id), step.figure ? *step.figure : itself}, step.formula,
                      rounded_by(step.rounding), ours.at(step.id));
    }
}

/// As the day's rate sheet has it.
Ground of_sheet(const RecheckCase& of) {
    const RateSheet& sheet = of.sitting.sheet();
    Ground ground =
        from(rule_of_sheet(of, FileRule::rate_sheet), sheet.lender + " (" + sheet.license + ")",
             sheet.sample ? Status::sample : Status::published);
    ground.effective = sheet.date;
    ground.until = plus_days(sheet.good_through, 1);
    return ground;
}

void add_rate(const RecheckCase& of, Ledger& ledger) {
    const RateChoice& choice = of.rules.scenario.rate;
    const bool quoted = choice.by == RateChoice::By::quoted;
    const Ground ground =
        quoted ? from(CommonRule::quoted_rate, CommonSource::stated_in_inquiry, Status::sample)
               : of_sheet(of);
    ledger.given(FigureCode::note_rate, FigureUnit::percent, of.f.rate.percent(), ground);
    if (quoted) {
        ledger.given(FigureCode::points_percent, FigureUnit::percent, of.f.points.value(), ground);
        return;
    }
    const Rung& rung = at(of.rules.ladder->rungs, of.f.row(Lookup::note_rate));
    ledger.given(FigureCode::points_of_rung, FigureUnit::percent, rung.points.value(),
                 of_sheet(of));
    std::vector<std::string> parts{"points_of_rung"};
    const Case where = gross_case(of.rules, of.f);
    for (const BandTable* table : of.rules.adjustments) {
        const auto row = table->row(where);
        if (!row) continue;
        parts.push_back("points_adjustment_" + std::to_string(parts.size()));
        ledger.given({parts.back(), NamedLabel{NamedFigure::adjustment, table->name}},
                     FigureUnit::percent, table->value(*row),
                     of_table(of, *table, *row, rule_of_sheet(of, FileRule::sheet_adjustment)));
    }
    ledger.figure(FigureCode::points_percent, FigureUnit::percent, sum_of_figures(parts), {},
                  of.f.points.value());
}

void add_payment(const RecheckCase& of, Ledger& ledger) {
    ledger.given(FigureCode::term, FigureUnit::months,
                 Decimal::whole(of.rules.scenario.term.count()), of_inquiry());
    ledger.figure(FigureCode::principal_and_interest,
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
    const Ground sheet = of_sheet(of);
    ledger.given({"index", NamedLabel{NamedFigure::itself, of.sitting.sheet().index->name}},
                 terms.index, sheet);
    ledger.given(FigureCode::margin, terms.margin, sheet);
    ledger.given(FigureCode::cap_first, terms.caps.first, plan);
    ledger.given(FigureCode::cap_later, terms.caps.periodic, plan);
    ledger.given(FigureCode::cap_life, terms.caps.life, plan);
    ledger.step(FigureCode::fully_indexed, FigureUnit::percent,
                greatest_of({to_eighth(figure("index") + figure("margin")), figure("margin")}),
                rounded_by(28));
    std::string before = "note_rate";
    const auto& steps = of.f.schedule.steps();
    for (std::size_t i = 1; i < steps.size(); ++i) {
        const Formula cap = figure(i == 1 ? "cap_first" : "cap_later");
        const Formula least = figure(before) - cap;
        const Formula most =
            least_of({figure(before) + cap, figure("note_rate") + figure("cap_life")});
        const Entered rate = NumberedLabel{NumberedFigure::rate_from, steps[i].from_payment};
        ledger.figure(rate, FigureUnit::percent,
                      least_of({greatest_of({figure("fully_indexed"), least}), most}), {},
                      steps[i].rate.percent());
        const int before_payment = steps[i].from_payment - 1;
        ledger.figure(NumberedLabel{NumberedFigure::payment_from, steps[i].from_payment},
                      level_payment_of(column_at(ScheduleColumn::balance, before_payment),
                                       figure(rate.id), figure("term") - number(before_payment)),
                      rounded_by(12), steps[i].payment);
        before = rate.id;
    }
}

} // namespace

void recheck_loan(const RecheckCase& of, Ledger& ledger) {
    ledger.section(ProofPart::loan);
    add_value(of, ledger);
    add_base_loan(of, ledger);
    add_limits(of, ledger);
    add_upfront_fee(of, ledger);
    add_rate(of, ledger);
    add_payment(of, ledger);
    add_adjustable(of, ledger);
}

} // namespace quoin
