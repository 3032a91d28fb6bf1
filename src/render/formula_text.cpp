// Writing formulas out.
#include "formula_text.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "words/recheck.hpp"
#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

using Kind = Formula::Kind;

/// How tightly a formula holds together: sums loosest, single values tightest.
int strength(const Formula& formula) {
    switch (formula.kind) {
    case Kind::sum:
    case Kind::difference:
        return formula.parts.size() > 1 ? 1 : 3;
    case Kind::product:
    case Kind::quotient:
        return 2;
    default:
        return 3;
    }
}

/// Parts joined by an operator, those that hold less tightly in parentheses.
std::string joined(const Formula& formula, std::string_view sign, auto write) {
    std::string text;
    for (std::size_t i = 0; i < formula.parts.size(); ++i) {
        const Formula& part = formula.parts[i];
        const bool strict =
            i > 0 && (formula.kind == Kind::difference || formula.kind == Kind::quotient);
        const int needed = strength(formula) + (strict ? 1 : 0);
        if (i > 0) text += sign;
        text += strength(part) < needed ? "(" + write(part) + ")" : write(part);
    }
    return text;
}

std::string listed(const Formula& formula, std::string_view between, auto write) {
    std::string text;
    for (const Formula& part : formula.parts) {
        if (!text.empty()) text += between;
        text += write(part);
    }
    return text;
}

/// In a workbook.
char letter_of(ScheduleColumn column) {
    switch (column) {
    case ScheduleColumn::payment:
        return 'D';
    case ScheduleColumn::interest:
        return 'E';
    case ScheduleColumn::principal:
        return 'F';
    case ScheduleColumn::insurance:
        return 'G';
    case ScheduleColumn::balance:
        return 'H';
    case ScheduleColumn::hud_balance:
        return 'I';
    case ScheduleColumn::bought_down:
        return 'J';
    }
    return '?';
}

bool bought_down(const Formula& formula) { return formula.column == ScheduleColumn::bought_down; }

std::string rounding_words(const Formula& formula, FigureUnit unit, const FormulaWords& say) {
    const RoundingWords& way = formula.rounding == Rounding::up     ? say.up
                               : formula.rounding == Rounding::down ? say.down
                                                                    : say.nearest;
    if (unit == FigureUnit::money && formula.places == 2) return way.cent();
    if (formula.places != 0) return way.decimals(formula.places);
    return unit == FigureUnit::money ? way.dollar() : way.whole();
}

class Wording {
  public:
    Wording(FigureUnit unit, const std::function<std::string(const std::string&)>& name,
            const FormulaWords& say)
        : unit_(unit), name_(name), say_(say) {}

    [[nodiscard]] std::string top(const Formula& formula) const {
        if (formula.kind != Kind::rounded) return write(formula);
        return say_.rounded(top(formula.parts[0]), rounding_words(formula, unit_, say_));
    }

  private:
    [[nodiscard]] std::string write(const Formula& formula) const {
        const auto each = [this](const Formula& part) { return write(part); };
        switch (formula.kind) {
        case Kind::given:
            return {};
        case Kind::number:
            return formula.value.text();
        case Kind::figure:
            return name_(formula.id);
        case Kind::sum:
            return joined(formula, " + ", each);
        case Kind::difference:
            return joined(formula, " − ", each);
        case Kind::product:
            return joined(formula, " × ", each);
        case Kind::quotient:
            return joined(formula, " ÷ ", each);
        case Kind::least:
            return say_.least(listed(formula, "; ", each));
        case Kind::greatest:
            return say_.greatest(listed(formula, "; ", each));
        case Kind::rounded:
            return say_.part_rounded(write(formula.parts[0]), rounding_words(formula, unit_, say_));
        default:
            return of_schedule(formula, each);
        }
    }

    [[nodiscard]] std::string of_schedule(const Formula& formula, auto each) const {
        const std::string column = say_.column(formula.column);
        switch (formula.kind) {
        case Kind::level_payment:
            return say_.level_payment(listed(formula, "; ", each));
        case Kind::column_sum:
            return say_.column_sum(column, formula.from, formula.to);
        case Kind::column_at:
            return say_.column_at(column, formula.from);
        case Kind::rows_over:
            return say_.rows_over(column, each(formula.parts[0]));
        case Kind::worth:
            return (bought_down(formula) ? say_.worth_bought_down : say_.worth)(
                each(formula.parts[0]), each(formula.parts[2]));
        default:
            throw Broken("a formula of an unknown kind");
        }
    }

    FigureUnit unit_;
    const std::function<std::string(const std::string&)>& name_;
    const FormulaWords& say_;
};

std::string cells(const ScheduleRows& rows, char letter, int from, int to) {
    const int last = std::min(rows.of(to), rows.last);
    return rows.sheet.empty()
               ? fmt::format("{}{}:{}{}", letter, rows.of(from), letter, last)
               : fmt::format("{}!${}${}:${}${}", rows.sheet, letter, rows.of(from), letter, last);
}

std::string worth_text(const Formula& formula, const ScheduleRows& rows,
                       const std::function<std::string(const Formula&)>& each) {
    const auto column = [&](char letter) { return cells(rows, letter, 1, rows.last); };
    const std::string off =
        bought_down(formula) ? "-" + column(letter_of(ScheduleColumn::bought_down)) : "";
    return fmt::format("ROUND(SUMPRODUCT(({}+{}{})/(1+{}/1200)^({}+{}-1))/(1+{}/30*{}/1200),2)",
                       column(letter_of(ScheduleColumn::payment)),
                       column(letter_of(ScheduleColumn::insurance)), off, each(formula.parts[0]),
                       column(month_letter), each(formula.parts[1]), each(formula.parts[2]),
                       each(formula.parts[0]));
}

std::string_view rounding_function(Rounding rounding) {
    switch (rounding) {
    case Rounding::half_away:
        return "ROUND";
    case Rounding::down:
        return "ROUNDDOWN";
    case Rounding::up:
        return "ROUNDUP";
    }
    return {};
}

} // namespace

std::string words(const Formula& formula, FigureUnit unit,
                  const std::function<std::string(const std::string&)>& name,
                  const Catalogue& say) {
    return Wording(unit, name, say.recheck.formulas).top(formula);
}

std::string spreadsheet_text(const Formula& formula, const ScheduleRows& rows) {
    const std::function<std::string(const Formula&)> each = [&](const Formula& part) {
        return spreadsheet_text(part, rows);
    };
    const char letter = letter_of(formula.column);
    switch (formula.kind) {
    case Kind::given:
        return {};
    case Kind::number:
        return formula.value.text();
    case Kind::figure:
        return formula.id;
    case Kind::sum:
        return joined(formula, "+", each);
    case Kind::difference:
        return joined(formula, "-", each);
    case Kind::product:
        return joined(formula, "*", each);
    case Kind::quotient:
        return joined(formula, "/", each);
    case Kind::least:
        return "MIN(" + listed(formula, ",", each) + ")";
    case Kind::greatest:
        return "MAX(" + listed(formula, ",", each) + ")";
    case Kind::rounded:
        return fmt::format("{}({},{})", rounding_function(formula.rounding), each(formula.parts[0]),
                           formula.places);
    case Kind::level_payment:
        return fmt::format("ROUND(PMT({}/1200,{},-({})),2)", each(formula.parts[1]),
                           each(formula.parts[2]), each(formula.parts[0]));
    case Kind::column_sum:
        return "SUM(" + cells(rows, letter, formula.from, formula.to) + ")";
    case Kind::column_at:
        return rows.sheet.empty()
                   ? fmt::format("{}{}", letter, rows.of(formula.from))
                   : fmt::format("{}!${}${}", rows.sheet, letter, rows.of(formula.from));
    case Kind::rows_over:
        return fmt::format("COUNTIF({},\">\"&{})", cells(rows, letter, formula.from, rows.last),
                           each(formula.parts[0]));
    case Kind::worth:
        return worth_text(formula, rows, each);
    }
    return {};
}

} // namespace quoin
