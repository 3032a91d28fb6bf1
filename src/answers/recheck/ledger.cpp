// Entering figures, and reckoning them exactly.
#include "ledger.hpp"

#include "reckon.hpp"
#include <quoin/exact/broken.hpp>
#include <quoin/exact/index.hpp>

namespace quoin {
namespace {

using boost::multiprecision::cpp_int;
using Kind = Formula::Kind;

Fraction fraction_of(Decimal value) { return Fraction(value.billionths(), Decimal::one); }
Fraction fraction_of(Money amount) { return Fraction(amount.count(), 100); }

cpp_int power_of_ten(int places) {
    cpp_int power = 1;
    for (int i = 0; i < places; ++i) power *= 10;
    return power;
}

/// The whole number next to a fraction.
cpp_int whole_of(const Fraction& value, Rounding rounding) {
    const cpp_int top = numerator(value);
    const cpp_int bottom = denominator(value);
    const cpp_int size = abs(top);
    cpp_int whole = size / bottom;
    const cpp_int rest = size % bottom;
    const bool up = rounding == Rounding::up          ? rest > 0
                    : rounding == Rounding::half_away ? 2 * rest >= bottom
                                                      : false;
    if (up) ++whole;
    return top < 0 ? -whole : whole;
}

Fraction rounded_to(const Fraction& value, int places, Rounding rounding) {
    const cpp_int power = power_of_ten(places);
    return Fraction(whole_of(value * power, rounding), power);
}

Fraction power_of(const Fraction& base, int exponent) {
    return Fraction(pow(numerator(base), static_cast<unsigned>(exponent)),
                    pow(denominator(base), static_cast<unsigned>(exponent)));
}

int small_whole(const Fraction& value) { return static_cast<int>(cpp_int(numerator(value))); }

/// P r (1 + r)^n / ((1 + r)^n - 1), or P / n without interest, to the cent.
Fraction level_payment_by(const Fraction& loan, const Fraction& percent, int months) {
    const Fraction rate = percent / 1200;
    if (rate == 0) return rounded_to(loan / months, 2, Rounding::half_away);
    const Fraction growth = power_of(1 + rate, months);
    return rounded_to(loan * rate * growth / (growth - 1), 2, Rounding::half_away);
}

Money cell(const RecheckedMonth& month, ScheduleColumn column) {
    switch (column) {
    case ScheduleColumn::payment:
        return month.payment;
    case ScheduleColumn::interest:
        return month.interest;
    case ScheduleColumn::principal:
        return month.principal;
    case ScheduleColumn::insurance:
        return month.insurance;
    case ScheduleColumn::balance:
        return month.balance;
    case ScheduleColumn::hud_balance:
        return month.hud_balance;
    case ScheduleColumn::bought_down:
        return month.bought_down;
    }
    return {};
}

Fraction column_value(const Formula& formula, const Known& known) {
    ensure(formula.from >= 0 && known.last_month < static_cast<int>(known.months->size()),
           "a column is of the schedule's rows");
    Money sum;
    for (int row = formula.from; row <= std::min(formula.to, known.last_month); ++row) {
        sum += cell((*known.months)[static_cast<std::size_t>(row)], formula.column);
    }
    return fraction_of(sum);
}

Fraction rows_over_value(const Formula& formula, const Fraction& threshold, const Known& known) {
    int rows = 0;
    for (int row = formula.from; row <= known.last_month; ++row) {
        const Money value = cell((*known.months)[static_cast<std::size_t>(row)], formula.column);
        if (fraction_of(value) > threshold) ++rows;
    }
    return rows;
}

/// What the buyer pays of payments and insurance, discounted by whole months compounded and odd
/// days simple, to the cent. By whole numbers alone: with i = a / b, the sum of p b^t / (a + b)^t
/// over one denominator.
Fraction worth_of(const std::vector<Fraction>& parts, const Known& known) {
    const Fraction rate = parts[0] / 1200;
    const cpp_int step = numerator(rate) + denominator(rate);
    cpp_int sum = 0; // of cents x b^k (a + b)^(n - k), from the last payment backwards
    cpp_int scale = 1;
    for (int row = known.last_month; row >= 1; --row) {
        const RecheckedMonth& month = (*known.months)[static_cast<std::size_t>(row)];
        sum = sum * denominator(rate) +
              scale * (month.payment + month.insurance - month.bought_down).count();
        scale *= step;
    }
    // Now sum / scale is the worth one month before the first payment, times (1 + i).
    const int months = small_whole(parts[1]);
    const Fraction worth = Fraction(sum, scale) * step / 100 / power_of(1 + rate, months);
    return rounded_to(worth / (1 + rate * parts[2] / 30), 2, Rounding::half_away);
}

std::vector<Fraction> values_of(const std::vector<Formula>& parts, const Known& known) {
    std::vector<Fraction> values;
    for (const Formula& part : parts) values.push_back(reckon(part, known));
    return values;
}

Decimal decimal_of(const Fraction& value) {
    return Decimal::billionths(
        static_cast<std::int64_t>(whole_of(value * Decimal::one, Rounding::half_away)));
}

Fraction folded(Kind kind, const std::vector<Fraction>& values) {
    Fraction result = values.at(0);
    for (std::size_t i = 1; i < values.size(); ++i) {
        const Fraction& next = values[i];
        if (kind == Kind::sum) result += next;
        if (kind == Kind::difference) result -= next;
        if (kind == Kind::product) result *= next;
        if (kind == Kind::quotient) {
            ensure(next != 0, "no formula divides by nothing");
            result /= next;
        }
        if (kind == Kind::least) result = std::min(result, next);
        if (kind == Kind::greatest) result = std::max(result, next);
    }
    return result;
}

} // namespace

Fraction reckon(const Formula& formula, const Known& known) {
    const std::vector<Fraction> values = values_of(formula.parts, known);
    switch (formula.kind) {
    case Kind::given:
        throw Broken("a given figure has no formula");
    case Kind::number:
        return fraction_of(formula.value);
    case Kind::figure: {
        const auto found = known.figures.find(formula.id);
        ensure(found != known.figures.end(), "a formula names figures that stand before it");
        return found->second;
    }
    case Kind::rounded:
        return rounded_to(values[0], formula.places, formula.rounding);
    case Kind::level_payment:
        return level_payment_by(values[0], values[1], small_whole(values[2]));
    case Kind::column_sum:
    case Kind::column_at:
        return column_value(formula, known);
    case Kind::rows_over:
        return rows_over_value(formula, values[0], known);
    case Kind::worth:
        return worth_of(values, known);
    default:
        return folded(formula.kind, values);
    }
}

Money reckon_money(const Formula& formula, const Known& known) {
    return Money::cents(
        static_cast<std::int64_t>(whole_of(reckon(formula, known) * 100, Rounding::half_away)));
}

Ledger::Ledger(RecheckAnswer& answer) : answer_(answer), known_(std::make_unique<Known>()) {
    known_->months = &answer.months;
    known_->last_month = static_cast<int>(answer.months.size()) - 1;
}

Ledger::~Ledger() = default;

bool Ledger::has(std::string_view id) const { return known_->figures.contains(id); }

void Ledger::section(ProofPart part) { answer_.sections.push_back({part, {}}); }

void Ledger::add(RecheckedFigure entry) {
    ensure(!answer_.sections.empty(), "a figure is entered in a section");
    ensure(!has(entry.id), "each figure is entered once");
    known_->figures[entry.id] = fraction_of(entry.reckoned);
    answer_.sections.back().figures.push_back(std::move(entry));
}

void Ledger::given(Entered what, FigureUnit unit, Decimal value, Ground ground) {
    add({std::move(what.id), std::move(what.label), unit, value, {}, std::move(ground), value});
}

void Ledger::figure(Entered what, FigureUnit unit, Formula formula, Ground ground, Decimal ours) {
    const Decimal reckoned = decimal_of(reckon(formula, *known_));
    add({std::move(what.id), std::move(what.label), unit, ours, std::move(formula),
         std::move(ground), reckoned});
}

void Ledger::step(Entered what, FigureUnit unit, Formula formula, Ground ground) {
    const Decimal reckoned = decimal_of(reckon(formula, *known_));
    add({std::move(what.id), std::move(what.label), unit, reckoned, std::move(formula),
         std::move(ground), reckoned});
}

void Ledger::given(Entered what, Money value, Ground ground) {
    given(std::move(what), FigureUnit::money, in_dollars(value), std::move(ground));
}

void Ledger::given(Entered what, Percent value, Ground ground) {
    given(std::move(what), FigureUnit::percent, value.value(), std::move(ground));
}

void Ledger::step(Entered what, Formula formula, Ground ground) {
    step(std::move(what), FigureUnit::money, std::move(formula), std::move(ground));
}

void Ledger::figure(Entered what, Formula formula, Ground ground, Money ours) {
    figure(std::move(what), FigureUnit::money, std::move(formula), std::move(ground),
           in_dollars(ours));
}

Decimal in_dollars(Money amount) {
    return Decimal::billionths(
        multiply_divide(amount.count(), Decimal::one, 100, Rounding::half_away));
}

Ground rounded_by(int number) { return from("", "", {}, number); }

Ground of_table(const RecheckCase& of, const BandTable& table, int row, GroundRule rule) {
    Ground ground;
    const Inquiry& inquiry = of.sitting.inquiry();
    const Date day = RuleDays{inquiry.as_of, inquiry.closing}.of(table);
    ground.rule = std::move(rule);
    ground.bands = at(table.written, row);
    ground.effective = table.effective;
    ground.until = table.until;
    ground.beyond_end = table.until && *table.until <= day;
    ground.status = table.status;
    ground.source = table.source;
    return ground;
}

Ground from(GroundRule rule, GroundSource source, std::optional<Status> status, int rounding) {
    Ground ground;
    ground.rounding = rounding;
    ground.rule = std::move(rule);
    ground.status = status;
    ground.source = std::move(source);
    return ground;
}

std::string member_of(const RecheckCase& of, Rule rule) {
    return of.rules.program->id + " " + std::string(name_of(rule));
}

Ground of_place(const RecheckCase& of, FileRule rule, int rounding) {
    const Place& place = *of.rules.place;
    return from(RuleOfFile{rule, place.id}, place.source, place.status, rounding);
}

RuleOfFile rule_of_sheet(const RecheckCase& of, FileRule rule) {
    return {rule, of.sitting.sheet().id};
}

} // namespace quoin
