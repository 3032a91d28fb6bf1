// Rendering what moves until the closing as text.
#include <quoin/answers/shift.hpp>
#include <quoin/render/answers.hpp>

#include "own_cautions.hpp"
#include "scenario_table.hpp"
#include "shift_words.hpp"
#include "words/shift.hpp"
#include "words/side_by_side.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

std::vector<Column> grid_columns(const ShiftScenario& s, const Phrase<>& first,
                                 const Catalogue& say) {
    std::vector<Column> columns{{first(), Align::left, 14, 10},
                                {say.side.apr(), Align::right, 9, 8}};
    for (const ShiftCase& moved : s.cases) {
        columns.push_back({words(moved, say), Align::right, 11, 11});
    }
    return columns;
}

/// A figure of every cell; the row of today's rate with the figure itself, all others against it.
Blocks grid(const ShiftScenario& s, const Phrase<>& what, Money ShiftCell::*figure, Money today,
            const Catalogue& say) {
    Table table(grid_columns(s, what, say));
    table.beside();
    for (const ShiftRow& row : s.rows) {
        std::vector<std::string> cells{rate_text(row.rate), apr_text(row.apr, "")};
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const ShiftCell& cell = row.cells[i];
            const bool is_today = i == 0 && row.steps == 0;
            cells.push_back(!cell.available() ? say.shift.not_available()
                            : is_today        ? dollars(cell.*figure)
                                              : signed_dollars(cell.*figure - today));
        }
        table.row(std::move(cells));
    }
    return Blocks("\n") + table;
}

/// Why the loan is not available for a column at today's rate.
Blocks refusals_text(const ShiftScenario& s, const Catalogue& say) {
    Blocks out;
    for (const ShiftRow& row : s.rows) {
        if (row.steps != 0) continue;
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            for (const Refusal& refusal : row.cells[i].refusals) {
                out += "  " + say.shift.refused(words(s.cases[i], say), words(refusal, say)) + "\n";
            }
        }
    }
    return out;
}

Blocks locks_text(const ShiftScenario& s, const Catalogue& catalogue) {
    if (s.locks.empty()) return {};
    const ShiftWords& say = catalogue.shift;
    Table table({{say.lock(), Align::left, 14, 10},
                 {say.lock_ends(), Align::right, 18, 16},
                 {"", Align::left, 20, 18},
                 {say.lock_points(), Align::right, 12, 10},
                 {say.lock_cash(), Align::right, 14, 14}});
    for (const ShiftLock& lock : s.locks) {
        table.row({say.lock_days(lock.days) + (lock.is_chosen ? " *" : ""),
                   say.lock_ends_on(lock.ends),
                   lock.covers_closing ? std::string() : say.ends_before_closing(),
                   lock.points ? points_cell(*lock.points, catalogue.side) : say.no_such_rate(),
                   lock.points ? signed_dollars(lock.extra_cash) : ""});
    }
    return Blocks("\n  " + say.lock_costs(s.terms.rate) + "\n") + table;
}

std::string signed_percent(Percent by) {
    return (by > Percent{} ? "+" : "") + percent_text(by.value(), 0);
}

std::string share_text(std::optional<Percent> share) {
    return share ? percent_text(share->value(), 2) : "";
}

/// What the limits are, and where they come from.
std::string limits_words(const ShiftRatios& r, const ShiftWords& say) {
    const RatioLimits& limits = r.limits;
    const auto where = [](const std::optional<Percent>& share, const Phrase<Text>& phrase) {
        return share ? phrase(share_text(share)) : std::string();
    };
    return say.limits(where(limits.front, say.limit_of_housing), share_text(limits.back),
                      where(limits.back_automated, say.limit_automated),
                      r.residual_tested ? say.limit_of_residual() : std::string(),
                      r.passes_by_ratio ? say.passes_by_residual(
                                              percent_text(limits.residual_instead->value(), 0))
                                        : std::string(),
                      limits.source);
}

std::string automated_rate_words(const ShiftRoom& room, const ShiftWords& say) {
    if (!room.to_a_thousandth) return say.no_rate_automated();
    return say.highest_rate_automated(*room.to_a_thousandth,
                                      room.in_steps ? say.highest_in_steps(*room.in_steps) : "");
}

std::string least_income_words(const ShiftRatios& r, const ShiftWords& say) {
    return say.least_income(
        r.least_income,
        r.least_income_automated ? say.least_income_automated(*r.least_income_automated) : "",
        r.room_automated ? automated_rate_words(*r.room_automated, say) : "");
}

Table incomes_table(const ShiftRatios& ratios, const ShiftWords& say) {
    Table table({{say.income(), Align::left, 14, 10},
                 {say.month(), Align::right, 12, 10},
                 {say.housing(), Align::right, 10, 8},
                 {say.with_debts(), Align::right, 10, 8},
                 {say.within(), Align::right, 8, 6},
                 {say.up_to_rate(), Align::right, 12, 10},
                 {say.in_steps(), Align::right, 12, 10}});
    for (const ShiftIncome& one : ratios.incomes) {
        const ShiftRoom& room = one.room;
        table.row({one.by == Percent{} ? say.income_now() : signed_percent(one.by),
                   dollars(one.income), share_text(one.front), share_text(one.back),
                   one.within ? say.yes() : say.no(),
                   room.to_a_thousandth ? rate_text(*room.to_a_thousandth) : say.no_rate(),
                   room.in_steps ? rate_text(*room.in_steps) : ""});
    }
    return table;
}

Blocks ratios_text(const ShiftScenario& s, const ShiftWords& say) {
    if (!s.ratios) return {};
    return Blocks("\n  " + say.if_income_changes() + "\n") + incomes_table(*s.ratios, say) +
           paragraph(limits_words(*s.ratios, say), "  ") +
           paragraph(least_income_words(*s.ratios, say), "  ");
}

Blocks scenario_text(const ShiftScenario& s, const Catalogue& say) {
    if (!s.available()) return "\n" + refused_lines(s.terms, s.refusals, say);
    Blocks out = "\n" + paragraph(say.shift.scenario(s.terms.name, s.monthly, s.cash_needed,
                                                     terms_line(s.terms, say)),
                                  "", "  ");
    out += grid(s, say.shift.month_at, &ShiftCell::monthly, s.monthly, say);
    out += grid(s, say.shift.cash_at, &ShiftCell::cash_needed, s.cash_needed, say);
    out += refusals_text(s, say) + locks_text(s, say) + ratios_text(s, say.shift);
    for (const ListGap& gap : s.ratios_unknown) {
        out += paragraph(say.shift.no_limits(words(gap, say)), "  ");
    }
    return out;
}

} // namespace

Blocks blocks_of(const ShiftAnswer& answer, const Catalogue& say) {
    Blocks out = brief_of(answer, say, Estimate::below_all) + "\n" +
                 heading_text(answer.heading, say.shift.title(), say);
    out += say.shift.contract_price(answer.contract_price) + "\n";
    for (const ShiftScenario& s : answer.scenarios) out += scenario_text(s, say);
    return out + footing_text(cautions_of(answer, say));
}

} // namespace quoin
