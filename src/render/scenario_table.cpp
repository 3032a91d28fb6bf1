// Setting scenarios side by side.
#include "scenario_table.hpp"

#include <algorithm>
#include <functional>
#include <utility>

#include <fmt/format.h>

#include "words/parts.hpp"
#include "words/side_by_side.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

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
    [[nodiscard]] Table table() const { return table_of(scenarios_, rows_); }

  private:
    static std::vector<Column> columns(const std::vector<ScenarioAnswer>& scenarios) {
        std::vector<Column> list{{"", Align::left, label_width, label_width}};
        for (const ScenarioAnswer& s : scenarios) {
            list.push_back({s.terms.name, Align::right, figure_width, figure_width});
        }
        return list;
    }
    static Table table_of(const std::vector<ScenarioAnswer>& scenarios,
                          const std::vector<SideRow>& rows) {
        Table table(columns(scenarios));
        table.beside();
        for (const SideRow& row : rows) {
            if (row.kind == SideRow::Kind::rule) table.rule();
            if (row.kind == SideRow::Kind::gap) table.gap();
            if (row.kind != SideRow::Kind::figures) continue;
            std::vector<std::string> cells{row.label};
            cells.insert(cells.end(), row.figures.begin(), row.figures.end());
            table.row(std::move(cells));
        }
        return table;
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

/// What the terms of a loan are told with: `shares` are the parts of the price that are lent and
/// paid down, in percent.
enum class TermRows { all, without_shares };

void add_terms(SideBySide& table, const Catalogue& catalogue, TermRows rows) {
    const SideWords& say = catalogue.side;
    table.row(say.note_rate(), [](auto& s) { return rate_text(s.terms.rate); });
    table.row(say.apr(), [&](auto& s) {
        return s.terms.apr ? disclosed_text(s.terms.apr->percent()) : say.none();
    });
    table.row(say.points(), [&](auto& s) { return points_cell(s.terms.points, say); });
    table.row(say.term(), [&](auto& s) { return term_text(s.terms.term, catalogue); });
    table.row(say.lock(), [&](auto& s) { return say.days(s.terms.lock_days); });
    table.money(say.down_payment(), [](auto& s) { return s.terms.down_payment; });
    if (rows == TermRows::without_shares) return;
    table.row(say.down_percent(),
              [](auto& s) { return percent_text(s.terms.down_percent.value(), 2); });
    table.row(say.ltv(), [](auto& s) { return percent_text(s.terms.ltv.value(), 2); });
}

/// What is paid upfront beside the loans.
struct UpfrontWords {
    const Phrase<>& paid;
    const Phrase<>& in_loan;
    const Phrase<>& in_cash;
};

/// A program's fee, a premium of mortgage insurance, or some this and some that.
UpfrontWords upfront_words(const std::vector<ScenarioAnswer>& scenarios, const SideWords& say) {
    const auto pays = [](const ScenarioAnswer& s) { return !s.upfront_fee.is_zero(); };
    if (!any(scenarios, [&](auto& s) { return pays(s) && s.insurance.paid_up; })) {
        return {say.upfront_fee, say.upfront_in_loan, say.upfront_in_cash};
    }
    if (any(scenarios, [&](auto& s) { return pays(s) && !s.insurance.paid_up; })) {
        return {say.fee_and_premium, say.fee_and_premium_in_loan, say.fee_and_premium_in_cash};
    }
    return {say.single_premium, say.single_premium_in_loan, say.single_premium_in_cash};
}

bool is_adjustable(const ScenarioAnswer& s) { return s.terms.adjustable.has_value(); }

bool pays_extra(const ScenarioAnswer& s) { return !s.terms.extra_principal.is_zero(); }

/// What else the month may come to: bought down at first, or after an adjustable rate has moved.
void add_other_months(SideBySide& table, const std::vector<ScenarioAnswer>& scenarios,
                      const SideWords& say) {
    for (std::size_t year = 0; year < most_buydown_years; ++year) {
        const auto has = [&](const ScenarioAnswer& s) {
            return s.buydown && year < s.buydown->years.size();
        };
        if (!any(scenarios, has)) break;
        table.row(say.bought_down(static_cast<int>(year) + 1), [&](auto& s) {
            return has(s) ? dollars(s.monthly.total() - s.buydown->years[year].subsidy)
                          : std::string("-");
        });
    }
    if (any(scenarios, pays_extra)) {
        table.money(say.extra_principal(), [](auto& s) { return s.terms.extra_principal; });
    }
    if (!any(scenarios, is_adjustable)) return;
    table.row(say.month_at_highest(), [](auto& s) {
        if (!is_adjustable(s)) return std::string("-");
        return dollars(s.monthly.local() + s.monthly[MonthPart::mortgage_insurance] +
                       s.terms.adjustable->largest_payment());
    });
}

std::string no_premium(const ScenarioAnswer& s, const SideWords& say) {
    return s.insurance.paid_up ? say.paid_up() : say.none();
}

std::string last_insured(const ScenarioAnswer& s, const SideWords& say) {
    if (s.insurance.payments == 0) return no_premium(s, say);
    if (s.insurance.whole_term) return say.whole_term();
    return fmt::format("{}/{}", s.insurance.last_date->month(), s.insurance.last_date->year());
}

} // namespace

namespace {

SideBySide month_side(const std::vector<ScenarioAnswer>& scenarios, const Catalogue& catalogue,
                      TermRows terms = TermRows::all) {
    const SideWords& say = catalogue.side;
    SideBySide table(scenarios);
    for (const MonthPartRow& row : month_parts) {
        const auto amount = [&](const ScenarioAnswer& s) { return s.monthly[row.part]; };
        if (any(scenarios, [&](auto& s) { return !amount(s).is_zero(); })) {
            table.money(catalogue.parts.month(row.part), amount);
        }
    }
    table.rule();
    const bool land_only = any(scenarios, [](auto& s) { return s.first_year_months > 0; });
    table.money((land_only ? say.month_settled : say.month)(),
                [](auto& s) { return s.monthly.total(); });
    if (land_only) {
        table.money(say.month_on_land(), [](auto& s) { return s.first_year.total(); });
    }
    add_other_months(table, scenarios, say);
    table.gap();
    add_terms(table, catalogue, terms);
    if (any(scenarios, is_adjustable)) {
        table.row(say.highest_rate(), [&](auto& s) {
            return is_adjustable(s) ? rate_text(s.terms.adjustable->ceiling) : say.fixed();
        });
    }
    return table;
}

} // namespace

Blocks month_table(const std::vector<ScenarioAnswer>& scenarios, const Catalogue& say) {
    return month_side(scenarios, say).table();
}

Blocks loan_table(const std::vector<ScenarioAnswer>& scenarios, const Catalogue& catalogue) {
    const SideWords& say = catalogue.side;
    SideBySide table(scenarios);
    table.money(say.contract_price(), [](auto& s) { return s.price; });
    table.money(say.down_payment(), [](auto& s) { return s.terms.down_payment; });
    table.money(say.base_loan(), [](auto& s) { return s.base_loan; });
    if (any(scenarios, [](auto& s) { return !s.upfront_fee.is_zero(); })) {
        const UpfrontWords upfront = upfront_words(scenarios, say);
        table.money(upfront.paid(), [](auto& s) { return s.upfront_fee; });
        table.money(upfront.in_loan(), [](auto& s) { return s.financed_fee; });
    }
    table.money(say.loan(), [](auto& s) { return s.loan; });
    table.row(say.insurance(), [&](auto& s) {
        return s.insurance.payments == 0 ? no_premium(s, say) : dollars(s.insurance.first_monthly);
    });
    table.row(say.insurance_a_year(), [&](auto& s) {
        return s.insurance.payments == 0 ? no_premium(s, say)
                                         : percent_text(s.insurance.annual_percent.value(), 2);
    });
    table.row(say.last_insured(), [&](auto& s) { return last_insured(s, say); });
    table.row(say.if_asked(), [](auto& s) {
        const auto& date = s.insurance.on_request_date;
        return date ? fmt::format("{}/{}", date->month(), date->year()) : std::string("-");
    });
    return table.table();
}

namespace {

/// Whether a part is told where it comes to nothing, too.
bool is_always_told(CashPart part) {
    return part == CashPart::down_payment || part == CashPart::closing_costs ||
           part == CashPart::deposits;
}

/// What an amount is called where it is owed and where it is below zero, and how that is written.
struct TwoRows {
    const Phrase<>& owed;
    const Phrase<>& below;
    int sign_below;
};

/// A row of each, where some scenario has it.
void add_two_rows(SideBySide& table, const std::vector<ScenarioAnswer>& scenarios,
                  const TwoRows& rows, const std::function<Money(const ScenarioAnswer&)>& amount) {
    const auto is_below = [&](const ScenarioAnswer& s) { return amount(s) < Money{}; };
    const bool some = any(scenarios, is_below);
    if (!some || any(scenarios, [&](const ScenarioAnswer& s) { return !is_below(s); })) {
        table.row(rows.owed(), [&](const ScenarioAnswer& s) {
            return is_below(s) ? std::string("-") : dollars(amount(s));
        });
    }
    if (!some) return;
    table.row(rows.below(), [&](const ScenarioAnswer& s) {
        return is_below(s) ? dollars(amount(s) * rows.sign_below) : std::string("-");
    });
}

SideBySide cash_side(const std::vector<ScenarioAnswer>& scenarios, const Catalogue& catalogue) {
    const SideWords& say = catalogue.side;
    SideBySide table(scenarios);
    const UpfrontWords upfront = upfront_words(scenarios, say);
    const auto part = [&](const CashPartRow& row) {
        if (row.part == CashPart::points) {
            add_two_rows(table, scenarios, {say.points, say.lender_credit, 1},
                         [](auto& s) { return s.cash[CashPart::points]; });
            return;
        }
        const auto amount = [&](const ScenarioAnswer& s) { return s.cash[row.part] * row.sign; };
        if (!is_always_told(row.part) &&
            !any(scenarios, [&](auto& s) { return !amount(s).is_zero(); })) {
            return;
        }
        table.money(row.part == CashPart::upfront_fee ? upfront.in_cash()
                                                      : catalogue.parts.cash(row.part),
                    amount);
    };
    for (const CashPartRow& row : needed_parts) part(row);
    table.rule();
    table.money(say.cash_needed(), [](auto& s) { return s.cash.needed(); });
    for (const CashPartRow& row : paid_before_parts) part(row);
    add_two_rows(table, scenarios, {say.to_bring, say.back, -1},
                 [](auto& s) { return s.cash.to_close(); });
    if (any(scenarios, [](auto& s) { return !s.credits.without_use.is_zero(); })) {
        table.money(say.credits_without_use(), [](auto& s) { return s.credits.without_use; });
    }
    if (any(scenarios, [](auto& s) { return !s.lender_credit_without_use.is_zero(); })) {
        table.money(say.lender_credit_lost(), [](auto& s) { return s.lender_credit_without_use; });
    }
    if (any(scenarios, [](auto& s) { return !s.credits.over_cap.is_zero(); })) {
        table.money(say.credits_over_cap(), [](auto& s) { return s.credits.over_cap; });
    }
    return table;
}

} // namespace

std::string points_cell(Points points, const SideWords& say) {
    const Decimal number = points.value();
    return number < Decimal{} ? say.points_credit(fixed(-number, 3)) : fixed(number, 3);
}

Blocks cash_table(const std::vector<ScenarioAnswer>& scenarios, const Catalogue& say) {
    return cash_side(scenarios, say).table();
}

namespace {

/// A part of the cash that no loan takes.
bool is_nothing(const SideRow& row) {
    return row.kind == SideRow::Kind::figures &&
           std::all_of(row.figures.begin(), row.figures.end(),
                       [](const auto& figure) { return figure == "-" || figure == "$0.00"; });
}

} // namespace

std::vector<SideRow> sheet_rows(const std::vector<ScenarioAnswer>& scenarios,
                                const Catalogue& say) {
    std::vector<SideRow> rows = month_side(scenarios, say, TermRows::without_shares).rows();
    rows.push_back({SideRow::Kind::gap, {}, {}});
    const SideBySide cash = cash_side(scenarios, say);
    for (const SideRow& row : cash.rows()) {
        const bool again = row.label == say.parts.cash(CashPart::down_payment);
        if (!again && !is_nothing(row)) rows.push_back(row);
    }
    return rows;
}

Blocks years_table(const std::vector<ScenarioAnswer>& scenarios, const Catalogue& catalogue) {
    const SideWords& say = catalogue.side;
    SideBySide table(scenarios);
    table.money(say.paid_in_five(), [](auto& s) { return s.paid_in_five_years; });
    table.money(say.balance_after_five(), [](auto& s) { return s.balance_after_five_years; });
    table.money(say.balance_after_ten(), [](auto& s) { return s.balance_after_ten_years; });
    table.money(say.interest_over_loan(), [](auto& s) { return s.total_interest; });
    table.money(say.paid_over_loan(), [](auto& s) { return s.paid_over_loan; });
    table.row(say.payments(), [](auto& s) { return std::to_string(s.payments); });
    return table.table();
}

Blocks refusal_lines(const std::vector<ScenarioAnswer>& scenarios, const Catalogue& say) {
    Blocks out;
    for (const ScenarioAnswer& s : scenarios) {
        for (const Refusal& refusal : s.refusals) {
            out += paragraph(refused_words(s.terms.name, refusal, say), "  ", "    ");
        }
    }
    return out;
}

} // namespace quoin
