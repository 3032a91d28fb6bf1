// Setting scenarios side by side.
#include "scenario_table.hpp"

#include <functional>
#include <utility>

#include <fmt/format.h>

#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

constexpr std::size_t label_width = 24;
constexpr std::size_t figure_width = 11;

using Figure = std::function<std::string(const ScenarioAnswer&)>;

/// Rows of figures, one of each scenario.
class SideBySide {
  public:
    explicit SideBySide(const std::vector<ScenarioAnswer>& scenarios) : scenarios_(scenarios) {}

    void row(std::string_view label, const Figure& figure) {
        SideRow row{SideRow::Kind::figures, std::string(label), {}};
        for (const ScenarioAnswer& scenario : scenarios_) {
            row.figures.push_back(scenario.available() ? figure(scenario) : "-");
        }
        rows_.push_back(std::move(row));
    }
    void money(std::string_view label, const std::function<Money(const ScenarioAnswer&)>& amount) {
        row(label, [&](const ScenarioAnswer& s) { return dollars(amount(s)); });
    }
    void rule() { rows_.push_back({SideRow::Kind::rule, {}, {}}); }
    void gap() { rows_.push_back({SideRow::Kind::gap, {}, {}}); }
    [[nodiscard]] const std::vector<SideRow>& rows() const { return rows_; }
    [[nodiscard]] std::string text() const { return text_of(scenarios_, rows_); }

  private:
    static std::vector<Column> columns(const std::vector<ScenarioAnswer>& scenarios) {
        std::vector<Column> list{{"", Align::left, label_width, label_width}};
        for (const ScenarioAnswer& s : scenarios) {
            list.push_back({s.terms.name, Align::right, figure_width, figure_width});
        }
        return list;
    }
    static std::string text_of(const std::vector<ScenarioAnswer>& scenarios,
                               const std::vector<SideRow>& rows) {
        Table table(columns(scenarios));
        for (const SideRow& row : rows) {
            if (row.kind == SideRow::Kind::rule) table.rule();
            if (row.kind == SideRow::Kind::gap) table.gap();
            if (row.kind != SideRow::Kind::figures) continue;
            std::vector<std::string> cells{row.label};
            cells.insert(cells.end(), row.figures.begin(), row.figures.end());
            table.row(std::move(cells));
        }
        return table.text();
    }

    const std::vector<ScenarioAnswer>& scenarios_;
    std::vector<SideRow> rows_;
};

bool any(const std::vector<ScenarioAnswer>& scenarios,
         const std::function<bool(const ScenarioAnswer&)>& holds) {
    for (const ScenarioAnswer& s : scenarios) {
        if (s.available() && holds(s)) return true;
    }
    return false;
}

void add_terms(SideBySide& table) {
    table.row("note rate", [](auto& s) { return rate_text(s.terms.rate); });
    table.row("APR", [](auto& s) { return apr_text(s.terms.apr); });
    table.row("points", [](auto& s) { return fixed(s.terms.points.value(), 3); });
    table.row("term", [](auto& s) { return term_text(s.terms.term); });
    table.row("rate lock", [](auto& s) { return fmt::format("{} days", s.terms.lock_days); });
    table.money("down payment", [](auto& s) { return s.terms.down_payment; });
    table.row("down, of the price",
              [](auto& s) { return percent_text(s.terms.down_percent.value(), 2); });
    table.row("LTV", [](auto& s) { return percent_text(s.terms.ltv.value(), 2); });
}

/// What is paid upfront beside the loans: a program's fee, a premium of mortgage insurance, or
/// both.
std::string upfront_word(const std::vector<ScenarioAnswer>& scenarios) {
    const auto pays = [](const ScenarioAnswer& s) { return !s.upfront_fee.is_zero(); };
    if (!any(scenarios, [&](auto& s) { return pays(s) && s.insurance.paid_up; })) return "fee";
    const bool fee = any(scenarios, [&](auto& s) { return pays(s) && !s.insurance.paid_up; });
    return fee ? "fee, premium" : "single premium";
}

bool is_adjustable(const ScenarioAnswer& s) { return s.terms.adjustable.has_value(); }

bool pays_extra(const ScenarioAnswer& s) { return !s.terms.extra_principal.is_zero(); }

/// What else the month may come to: bought down at first, or after an adjustable rate has moved.
void add_other_months(SideBySide& table, const std::vector<ScenarioAnswer>& scenarios) {
    for (std::size_t year = 0; year < most_buydown_years; ++year) {
        const auto has = [&](const ScenarioAnswer& s) {
            return s.buydown && year < s.buydown->years.size();
        };
        if (!any(scenarios, has)) break;
        table.row(fmt::format("year {}, bought down", year + 1), [&](auto& s) {
            return has(s) ? dollars(s.monthly.total() - s.buydown->years[year].subsidy)
                          : std::string("-");
        });
    }
    if (any(scenarios, pays_extra)) {
        table.money("extra principal, chosen", [](auto& s) { return s.terms.extra_principal; });
    }
    if (!any(scenarios, is_adjustable)) return;
    table.row("at the highest rate", [](auto& s) {
        if (!is_adjustable(s)) return std::string("-");
        return dollars(s.monthly.local() + s.monthly[MonthPart::mortgage_insurance] +
                       s.terms.adjustable->largest_payment());
    });
}

std::string no_premium(const ScenarioAnswer& s) { return s.insurance.paid_up ? "paid up" : "none"; }

std::string last_insured(const ScenarioAnswer& s) {
    if (s.insurance.payments == 0) return no_premium(s);
    if (s.insurance.whole_term) return "whole term";
    return fmt::format("{}/{}", s.insurance.last_date->month(), s.insurance.last_date->year());
}

} // namespace

namespace {

SideBySide month_side(const std::vector<ScenarioAnswer>& scenarios) {
    SideBySide table(scenarios);
    for (const MonthPartRow& row : month_parts) {
        const auto amount = [&](const ScenarioAnswer& s) { return s.monthly[row.part]; };
        if (any(scenarios, [&](auto& s) { return !amount(s).is_zero(); })) {
            table.money(row.name, amount);
        }
    }
    table.rule();
    table.money("a month, settled", [](auto& s) { return s.monthly.total(); });
    const bool land_only = any(scenarios, [](auto& s) { return s.first_year_months > 0; });
    if (land_only) {
        table.money("a month, tax on land only", [](auto& s) { return s.first_year.total(); });
    }
    add_other_months(table, scenarios);
    table.gap();
    add_terms(table);
    if (any(scenarios, is_adjustable)) {
        table.row("highest rate", [](auto& s) {
            return is_adjustable(s) ? rate_text(s.terms.adjustable->ceiling) : std::string("fixed");
        });
    }
    return table;
}

} // namespace

std::string month_table(const std::vector<ScenarioAnswer>& scenarios) {
    return month_side(scenarios).text();
}

std::vector<SideRow> month_rows(const std::vector<ScenarioAnswer>& scenarios) {
    return month_side(scenarios).rows();
}

std::string loan_table(const std::vector<ScenarioAnswer>& scenarios) {
    SideBySide table(scenarios);
    table.money("contract price", [](auto& s) { return s.price; });
    table.money("down payment", [](auto& s) { return s.terms.down_payment; });
    table.money("base loan", [](auto& s) { return s.base_loan; });
    if (any(scenarios, [](auto& s) { return !s.upfront_fee.is_zero(); })) {
        const std::string fee = upfront_word(scenarios);
        table.money(fee == "fee" ? "upfront fee" : fee, [](auto& s) { return s.upfront_fee; });
        table.money(fee + " in the loan", [](auto& s) { return s.financed_fee; });
    }
    table.money("loan", [](auto& s) { return s.loan; });
    table.row("mortgage insurance", [](auto& s) {
        return s.insurance.payments == 0 ? no_premium(s) : dollars(s.insurance.first_monthly);
    });
    table.row("insurance, a year", [](auto& s) {
        return s.insurance.payments == 0 ? no_premium(s)
                                         : percent_text(s.insurance.annual_percent.value(), 2);
    });
    table.row("last insured payment", last_insured);
    table.row("... if asked at 80 %", [](auto& s) {
        const auto& date = s.insurance.on_request_date;
        return date ? fmt::format("{}/{}", date->month(), date->year()) : std::string("-");
    });
    return table.text();
}

namespace {

/// Whether a part is told where it comes to nothing, too.
bool is_always_told(CashPart part) {
    return part == CashPart::down_payment || part == CashPart::points ||
           part == CashPart::closing_costs || part == CashPart::deposits;
}

SideBySide cash_side(const std::vector<ScenarioAnswer>& scenarios) {
    SideBySide table(scenarios);
    const std::string fee = upfront_word(scenarios);
    const auto part = [&](const CashPartRow& row) {
        const auto amount = [&](const ScenarioAnswer& s) { return s.cash[row.part] * row.sign; };
        if (!is_always_told(row.part) &&
            !any(scenarios, [&](auto& s) { return !amount(s).is_zero(); })) {
            return;
        }
        const bool named = row.part == CashPart::upfront_fee && fee != "fee";
        table.money(named ? fee + ", in cash" : std::string(row.name), amount);
    };
    for (const CashPartRow& row : needed_parts) part(row);
    table.rule();
    table.money("cash needed", [](auto& s) { return s.cash.needed(); });
    for (const CashPartRow& row : paid_before_parts) part(row);
    const bool back = any(scenarios, [](auto& s) { return s.cash.to_close() < Money{}; });
    table.money(back ? "left to bring (minus: back)" : "left to bring",
                [](auto& s) { return s.cash.to_close(); });
    if (any(scenarios, [](auto& s) { return !s.credits.without_use.is_zero(); })) {
        table.money("credits without use", [](auto& s) { return s.credits.without_use; });
    }
    if (any(scenarios, [](auto& s) { return !s.lender_credit_without_use.is_zero(); })) {
        table.money("lender credit lost", [](auto& s) { return s.lender_credit_without_use; });
    }
    if (any(scenarios, [](auto& s) { return !s.credits.over_cap.is_zero(); })) {
        table.money("credits over the cap", [](auto& s) { return s.credits.over_cap; });
    }
    return table;
}

} // namespace

std::string cash_table(const std::vector<ScenarioAnswer>& scenarios) {
    return cash_side(scenarios).text();
}

std::vector<SideRow> cash_rows(const std::vector<ScenarioAnswer>& scenarios) {
    return cash_side(scenarios).rows();
}

std::string years_table(const std::vector<ScenarioAnswer>& scenarios) {
    SideBySide table(scenarios);
    table.money("paid in five years", [](auto& s) { return s.paid_in_five_years; });
    table.money("balance after five", [](auto& s) { return s.balance_after_five_years; });
    table.money("balance after ten", [](auto& s) { return s.balance_after_ten_years; });
    table.money("interest, whole loan", [](auto& s) { return s.total_interest; });
    table.money("paid, whole loan", [](auto& s) { return s.paid_over_loan; });
    table.row("payments", [](auto& s) { return std::to_string(s.payments); });
    return table.text();
}

std::string refusal_lines(const std::vector<ScenarioAnswer>& scenarios) {
    std::string out;
    for (const ScenarioAnswer& s : scenarios) {
        for (const Refusal& refusal : s.refusals) {
            out += paragraph(refused_words(s.terms.name, refusal), "  ", "    ");
        }
    }
    return out;
}

} // namespace quoin
