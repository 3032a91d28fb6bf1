// Rendering what moves until the closing as text.
#include <quoin/render/shift.hpp>

#include <fmt/format.h>

#include "shift_words.hpp"
#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

constexpr std::size_t page_width = 98;

std::string rate_text(Rate rate) { return percent_text(rate.percent(), 3); }

std::vector<Column> grid_columns(const ShiftScenario& s, const char* first) {
    std::vector<Column> columns{{first, Align::left, 14, 10}, {"APR", Align::right, 9, 8}};
    for (const ShiftCase& moved : s.cases) columns.push_back({words(moved), Align::right, 11, 11});
    return columns;
}

/// A figure of every cell; the row of today's rate with the figure itself, all others against it.
std::string grid(const ShiftScenario& s, const char* what, Money ShiftCell::*figure, Money today) {
    Table table(grid_columns(s, what));
    for (const ShiftRow& row : s.rows) {
        std::vector<std::string> cells{rate_text(row.rate),
                                       row.apr ? rate_text(*row.apr) : std::string()};
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

std::string ratios_text(const ShiftScenario& s) {
    if (!s.ratios) return {};
    const ShiftRatios& r = *s.ratios;
    const auto text = [](Percent percent) { return percent_text(percent.value(), 2); };
    std::string out = fmt::format("Of the income, housing takes {}", text(r.front));
    if (r.front_limit) out += fmt::format(" (limit {})", text(*r.front_limit));
    out += fmt::format(", housing and debts {} (limit {}", text(r.back), text(r.back_limit));
    if (r.back_automated) {
        out += fmt::format(", {} by automated underwriting", text(*r.back_automated));
    }
    out += fmt::format("). The rate at which the payment stays within, {}",
                       room_text("under the limits", r.room));
    if (r.room_automated) {
        out += "; " + room_text("under that of automated underwriting", *r.room_automated);
    }
    out += fmt::format(". The least income a month that stays within at today's rate: {}",
                       dollars(r.least_income));
    if (r.least_income_automated) {
        out += fmt::format("; {} by automated underwriting", dollars(*r.least_income_automated));
    }
    return "\n" + paragraph(out + fmt::format(". Source: {}.", r.source), page_width, "  ", "  ");
}

std::string scenario_text(const ShiftScenario& s) {
    if (!s.available()) {
        std::string out = "\n";
        for (const Refusal& refusal : s.refusals) {
            out += s.terms.name + " cannot be had: " + words(refusal) + "\n";
        }
        return out;
    }
    std::string out = "\n" + paragraph(fmt::format("{}: {} a month, {} cash needed. {}",
                                                   s.terms.name, dollars(s.monthly),
                                                   dollars(s.cash_needed), terms_line(s.terms)),
                                       page_width, "", "  ");
    out += grid(s, "the month at", &ShiftCell::monthly, s.monthly);
    out += grid(s, "the cash at", &ShiftCell::cash_needed, s.cash_needed);
    return out + refusals_text(s) + locks_text(s) + ratios_text(s);
}

} // namespace

std::string text_of(const ShiftAnswer& answer) {
    std::string out = heading_text(answer.heading, "What can move before the closing");
    out += fmt::format("contract price as it stands {}\n", dollars(answer.contract_price));
    for (const ShiftScenario& s : answer.scenarios) out += scenario_text(s);
    return out + footing_text(shift_cautions(answer));
}

} // namespace quoin
