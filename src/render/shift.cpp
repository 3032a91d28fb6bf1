// Rendering what moves until the closing as text.
#include <quoin/answers/shift.hpp>
#include <quoin/render/answers.hpp>

#include <fmt/format.h>

#include "own_cautions.hpp"
#include "shift_words.hpp"
#include <quoin/render/cautions.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {
namespace {

std::vector<Column> grid_columns(const ShiftScenario& s, const char* first) {
    std::vector<Column> columns{{first, Align::left, 14, 10}, {"APR", Align::right, 9, 8}};
    for (const ShiftCase& moved : s.cases) columns.push_back({words(moved), Align::right, 11, 11});
    return columns;
}

/// A figure of every cell; the row of today's rate with the figure itself, all others against it.
std::string grid(const ShiftScenario& s, const char* what, Money ShiftCell::*figure, Money today) {
    Table table(grid_columns(s, what));
    for (const ShiftRow& row : s.rows) {
        std::vector<std::string> cells{rate_text(row.rate), apr_text(row.apr, "")};
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const ShiftCell& cell = row.cells[i];
            const bool is_today = i == 0 && row.steps == 0;
            cells.push_back(!cell.available() ? "not to be had"
                            : is_today        ? dollars(cell.*figure)
                                              : signed_dollars(cell.*figure - today));
        }
        table.row(std::move(cells));
    }
    return "\n" + table.text();
}

/// Why a column cannot be had at today's rate.
std::string refusals_text(const ShiftScenario& s) {
    std::string out;
    for (const ShiftRow& row : s.rows) {
        if (row.steps != 0) continue;
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            for (const Refusal& refusal : row.cells[i].refusals) {
                out += "  " + words(s.cases[i]) + ": " + words(refusal) + "\n";
            }
        }
    }
    return out;
}

std::string locks_text(const ShiftScenario& s) {
    if (s.locks.empty()) return {};
    Table table({{"lock", Align::left, 14, 10},
                 {"taken now ends", Align::right, 18, 16},
                 {"", Align::left, 20, 18},
                 {"points at today's rate", Align::right, 12, 10},
                 {"cash against the chosen one", Align::right, 14, 14}});
    for (const ShiftLock& lock : s.locks) {
        table.row({fmt::format("{} days{}", lock.days, lock.is_chosen ? " *" : ""),
                   long_date(lock.ends), lock.covers_closing ? "" : "before the closing",
                   lock.points ? fixed(lock.points->value(), 3) : "no such rate",
                   lock.points ? signed_dollars(lock.extra_cash) : ""});
    }
    return fmt::format("\n  What a lock of {} costs (* the one chosen)\n",
                       rate_text(s.terms.rate)) +
           table.text();
}

std::string room_text(const char* under, const ShiftRoom& room) {
    if (!room.to_a_thousandth) return fmt::format("{}: at no rate", under);
    std::string out = fmt::format("{}: up to {}", under, rate_text(*room.to_a_thousandth));
    if (room.in_steps) out += fmt::format(" ({} in whole steps)", rate_text(*room.in_steps));
    return out;
}

std::string signed_percent(Percent by) {
    return (by > Percent{} ? "+" : "") + percent_text(by.value(), 0);
}

std::string share_text(std::optional<Percent> share) {
    return share ? percent_text(share->value(), 2) : "";
}

/// What the limits are, and where they come from.
std::string limits_words(const ShiftRatios& r) {
    const RatioLimits& limits = r.limits;
    std::string out = "The limits: ";
    if (limits.front) out += fmt::format("housing {}, ", share_text(limits.front));
    out += fmt::format("housing and debts {}", share_text(limits.back));
    if (limits.back_automated) {
        out += fmt::format(" ({} by automated underwriting)", share_text(limits.back_automated));
    }
    if (r.residual_tested) out += ", and the residual income for living";
    if (r.passes_by_ratio) {
        out += fmt::format("; the ratio is over its limit, and a residual income of {} of the "
                           "guide stands in its place",
                           percent_text(limits.residual_instead->value(), 0));
    }
    return out + fmt::format(". Source: {}.", limits.source);
}

std::string least_income_words(const ShiftRatios& r) {
    std::string out =
        fmt::format("The least income a month that stays within them at today's rate: {}",
                    dollars(r.least_income));
    if (r.least_income_automated) {
        out += fmt::format("; {} by automated underwriting", dollars(*r.least_income_automated));
    }
    out += '.';
    if (r.room_automated) {
        out +=
            " The highest rate " + room_text("by automated underwriting", *r.room_automated) + ".";
    }
    return out;
}

std::string ratios_text(const ShiftScenario& s) {
    if (!s.ratios) return {};
    Table table({{"income", Align::left, 14, 10},
                 {"a month", Align::right, 12, 10},
                 {"housing", Align::right, 10, 8},
                 {"with debts", Align::right, 10, 8},
                 {"within", Align::right, 8, 6},
                 {"up to a rate of", Align::right, 12, 10},
                 {"in whole steps", Align::right, 12, 10}});
    for (const ShiftIncome& one : s.ratios->incomes) {
        const ShiftRoom& room = one.room;
        table.row({one.by == Percent{} ? "as it stands" : signed_percent(one.by),
                   dollars(one.income), share_text(one.front), share_text(one.back),
                   one.within ? "yes" : "no",
                   room.to_a_thousandth ? rate_text(*room.to_a_thousandth) : "no rate",
                   room.in_steps ? rate_text(*room.in_steps) : ""});
    }
    return fmt::format("\n  If the income changes: its part for housing, and the highest rate "
                       "within the limits\n") +
           table.text() + paragraph(limits_words(*s.ratios), "  ") +
           paragraph(least_income_words(*s.ratios), "  ");
}

std::string scenario_text(const ShiftScenario& s) {
    if (!s.available()) return "\n" + refused_lines(s.terms, s.refusals);
    std::string out = "\n" + paragraph(fmt::format("{}: {} a month, {} cash needed. {}",
                                                   s.terms.name, dollars(s.monthly),
                                                   dollars(s.cash_needed), terms_line(s.terms)),
                                       "", "  ");
    out += grid(s, "the month at", &ShiftCell::monthly, s.monthly);
    out += grid(s, "the cash at", &ShiftCell::cash_needed, s.cash_needed);
    out += refusals_text(s) + locks_text(s) + ratios_text(s);
    for (const ListGap& gap : s.ratios_unknown) {
        out += paragraph("No limits on the income: " + words(gap) + ".", "  ");
    }
    return out;
}

} // namespace

std::string text_of(const ShiftAnswer& answer, const Catalogue& say) {
    std::string out = heading_text(answer.heading, "What can move before the closing", say);
    out += fmt::format("contract price as it stands {}\n", dollars(answer.contract_price));
    for (const ShiftScenario& s : answer.scenarios) out += scenario_text(s);
    return out + footing_text(cautions_of(answer, say));
}

} // namespace quoin
