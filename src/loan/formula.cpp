// Building formulas.
#include <quoin/loan/formula.hpp>

#include <algorithm>

namespace quoin {
namespace {

using Kind = Formula::Kind;

Formula of(Kind kind, std::vector<Formula> parts) {
    Formula formula;
    formula.kind = kind;
    formula.parts = std::move(parts);
    return formula;
}

Formula of_column(Kind kind, ScheduleColumn column, int from, int to,
                  std::vector<Formula> parts = {}) {
    Formula formula = of(kind, std::move(parts));
    formula.column = column;
    formula.from = from;
    formula.to = to;
    return formula;
}

void collect(const Formula& formula, std::vector<std::string>& ids) {
    if (formula.kind == Kind::figure &&
        std::find(ids.begin(), ids.end(), formula.id) == ids.end()) {
        ids.push_back(formula.id);
    }
    for (const Formula& part : formula.parts) collect(part, ids);
}

} // namespace

Formula number(Decimal value) {
    Formula formula = of(Kind::number, {});
    formula.value = value;
    return formula;
}

Formula number(int value) { return number(Decimal::whole(value)); }

Formula figure(std::string id) {
    Formula formula = of(Kind::figure, {});
    formula.id = std::move(id);
    return formula;
}

Formula sum_of(std::vector<Formula> parts) {
    const auto adds_nothing = [](const Formula& part) {
        return part.kind == Kind::number && part.value == Decimal{};
    };
    if (parts.size() > 1) std::erase_if(parts, adds_nothing);
    if (parts.empty()) return number(0);
    return parts.size() == 1 ? std::move(parts.front()) : of(Kind::sum, std::move(parts));
}

Formula sum_of_figures(const std::vector<std::string>& ids) {
    if (ids.empty()) return number(0);
    std::vector<Formula> parts;
    for (const std::string& id : ids) parts.push_back(figure(id));
    return sum_of(std::move(parts));
}

Formula least_of(std::vector<Formula> parts) { return of(Kind::least, std::move(parts)); }
Formula greatest_of(std::vector<Formula> parts) { return of(Kind::greatest, std::move(parts)); }

Formula rounded(Formula part, int places, Rounding rounding) {
    Formula formula = of(Kind::rounded, {std::move(part)});
    formula.places = places;
    formula.rounding = rounding;
    return formula;
}

Formula to_cent(Formula part) { return rounded(std::move(part), 2, Rounding::half_away); }
Formula to_dollar(Formula part) { return rounded(std::move(part), 0, Rounding::half_away); }
Formula down_to_cent(Formula part) { return rounded(std::move(part), 2, Rounding::down); }
Formula down_to_dollar(Formula part) { return rounded(std::move(part), 0, Rounding::down); }

Formula percent_of(Formula amount, Formula percent) {
    return std::move(amount) * std::move(percent) / number(100);
}

Formula level_payment_of(Formula loan, Formula rate, Formula months) {
    return of(Kind::level_payment, {std::move(loan), std::move(rate), std::move(months)});
}

Formula column_sum(ScheduleColumn column, int from, int to) {
    return of_column(Kind::column_sum, column, from, to);
}

Formula column_at(ScheduleColumn column, int row) {
    return of_column(Kind::column_at, column, row, row);
}

Formula rows_over(ScheduleColumn column, int from, Formula threshold) {
    return of_column(Kind::rows_over, column, from, from, {std::move(threshold)});
}

Formula worth_at(ScheduleColumn off, Formula apr, Formula months, Formula odd_days) {
    return of_column(Kind::worth, off, 0, 0,
                     {std::move(apr), std::move(months), std::move(odd_days)});
}

Formula operator+(Formula a, Formula b) { return of(Kind::sum, {std::move(a), std::move(b)}); }
Formula operator-(Formula a, Formula b) {
    return of(Kind::difference, {std::move(a), std::move(b)});
}
Formula operator*(Formula a, Formula b) { return of(Kind::product, {std::move(a), std::move(b)}); }
Formula operator/(Formula a, Formula b) { return of(Kind::quotient, {std::move(a), std::move(b)}); }

std::vector<std::string> inputs_of(const Formula& formula) {
    std::vector<std::string> ids;
    collect(formula, ids);
    return ids;
}

bool reads_schedule(const Formula& formula) {
    return formula.kind == Kind::column_sum || formula.kind == Kind::column_at ||
           formula.kind == Kind::rows_over || formula.kind == Kind::worth ||
           std::any_of(formula.parts.begin(), formula.parts.end(), reads_schedule);
}

} // namespace quoin
