// Writing formulas out.
#include "formula_text.hpp"

#include <algorithm>

#include <fmt/format.h>

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

/// What a column of the schedule is called, and its letter in a workbook.
struct ColumnName {
    std::string_view words;
    char letter;
};

ColumnName name_of(ScheduleColumn column) {
    switch (column) {
    case ScheduleColumn::payment:
        return {"principal and interest", 'D'};
    case ScheduleColumn::interest:
        return {"interest", 'E'};
    case ScheduleColumn::principal:
        return {"principal", 'F'};
    case ScheduleColumn::insurance:
        return {"mortgage insurance", 'G'};
    case ScheduleColumn::balance:
        return {"balance", 'H'};
    case ScheduleColumn::hud_balance:
        return {"balance on HUD's schedule", 'I'};
    case ScheduleColumn::bought_down:
        return {"paid by the buyer's buydown", 'J'};
    }
    return {{}, '?'};
}

bool bought_down(const Formula& formula) { return formula.column == ScheduleColumn::bought_down; }

std::string rounding_words(const Formula& formula, FigureUnit unit) {
    const bool money = unit == FigureUnit::money && (formula.places == 0 || formula.places == 2);
    const std::string target = money ? (formula.places == 2 ? "the cent" : "the dollar")
                               : formula.places == 0 ? "a whole number"
                                                     : fmt::format("{} decimals", formula.places);
    switch (formula.rounding) {
    case Rounding::half_away:
        return "to " + target;
    case Rounding::down:
        return (money ? "down to " : "cut to ") + target;
    case Rounding::up:
        return "up to " + target;
    }
    return {};
}

class Wording {
  public:
    Wording(FigureUnit unit, const std::function<std::string(const std::string&)>& name)
        : unit_(unit), name_(name) {}

    [[nodiscard]] std::string top(const Formula& formula) const {
        if (formula.kind != Kind::rounded) return write(formula);
        return top(formula.parts[0]) + ", " + rounding_words(formula, unit_);
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
            return "the least of (" + listed(formula, "; ", each) + ")";
        case Kind::greatest:
            return "the greatest of (" + listed(formula, "; ", each) + ")";
        case Kind::rounded:
            return "(" + write(formula.parts[0]) + " " + rounding_words(formula, unit_) + ")";
        default:
            return of_schedule(formula, each);
        }
    }

    [[nodiscard]] std::string of_schedule(const Formula& formula, auto each) const {
        switch (formula.kind) {
        case Kind::level_payment:
            return "level payment of (" + listed(formula, "; ", each) + "), to the cent";
        case Kind::column_sum:
            return fmt::format("({} of months {} to {})", name_of(formula.column).words,
                               formula.from, formula.to);
        case Kind::column_at:
            return fmt::format("({} after payment {})", name_of(formula.column).words,
                               formula.from);
        case Kind::rows_over:
            return fmt::format("(the first payment that leaves a {} of at most {})",
                               name_of(formula.column).words, each(formula.parts[0]));
        case Kind::worth:
            return std::string("all payments and insurance, ") +
                   (bought_down(formula) ? "less what the buyer's buydown pays, " : "") +
                   "each ÷ (1 + " + each(formula.parts[0]) +
                   " ÷ 1200) to the power of its months, and ÷ (1 + " + each(formula.parts[2]) +
                   " ÷ 30 × " + each(formula.parts[0]) + " ÷ 1200), to the cent";
        default:
            throw Broken("a formula of an unknown kind");
        }
    }

    FigureUnit unit_;
    const std::function<std::string(const std::string&)>& name_;
};

std::string cells(const ScheduleRows& rows, char letter, int from, int to) {
    const int last = std::min(rows.of(to), rows.last);
    return rows.here ? fmt::format("{}{}:{}{}", letter, rows.of(from), letter, last)
                     : fmt::format("schedule!${}${}:${}${}", letter, rows.of(from), letter, last);
}

std::string worth_text(const Formula& formula, const ScheduleRows& rows,
                       const std::function<std::string(const Formula&)>& each) {
    const auto column = [&](char letter) { return cells(rows, letter, 1, rows.last); };
    const std::string off =
        bought_down(formula) ? "-" + column(name_of(ScheduleColumn::bought_down).letter) : "";
    return fmt::format("ROUND(SUMPRODUCT(({}+{}{})/(1+{}/1200)^({}+{}-1))/(1+{}/30*{}/1200),2)",
                       column(name_of(ScheduleColumn::payment).letter),
                       column(name_of(ScheduleColumn::insurance).letter), off,
                       each(formula.parts[0]), column(month_letter), each(formula.parts[1]),
                       each(formula.parts[2]), each(formula.parts[0]));
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
                  const std::function<std::string(const std::string&)>& name) {
    return Wording(unit, name).top(formula);
}

std::string spreadsheet_text(const Formula& formula, const ScheduleRows& rows) {
    const std::function<std::string(const Formula&)> each = [&](const Formula& part) {
        return spreadsheet_text(part, rows);
    };
    const char letter = name_of(formula.column).letter;
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
        return rows.here ? fmt::format("{}{}", letter, rows.of(formula.from))
                         : fmt::format("schedule!${}${}", letter, rows.of(formula.from));
    case Kind::rows_over:
        return fmt::format("COUNTIF({},\">\"&{})", cells(rows, letter, formula.from, rows.last),
                           each(formula.parts[0]));
    case Kind::worth:
        return worth_text(formula, rows, each);
    }
    return {};
}

} // namespace quoin
