// Laying a recheck out on sheets.
#include <quoin/render/workbook.hpp>

#include <map>

#include <fmt/format.h>

#include "figure_words.hpp"
#include "formula_text.hpp"
#include "words/recheck.hpp"
#include <quoin/answers/recheck.hpp>
#include <quoin/exact/broken.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

constexpr int heading_row = 4;
constexpr int schedule_first = heading_row + 2; // of month 0, as a spreadsheet counts rows, from 1
const Date day_zero = Date::of(1899, 12, 30).value();

Decimal serial(Date date) { return Decimal::whole(days_between(day_zero, date)); }

CellLook look_of(FigureUnit unit) {
    if (unit == FigureUnit::money) return CellLook::money;
    return unit == FigureUnit::percent ? CellLook::percent : CellLook::number;
}

class SheetWriter {
  public:
    SheetWriter(std::string name, std::vector<int> widths) {
        sheet_.name = std::move(name);
        sheet_.widths = std::move(widths);
        sheet_.frozen_rows = heading_row + 1;
    }

    void text(int row, int column, std::string words, CellLook look = CellLook::text) {
        if (!words.empty()) sheet_.cells.push_back({row, column, look, std::move(words), {}, {}});
    }
    void value(int row, int column, CellLook look, Decimal value, std::string formula = {}) {
        sheet_.cells.push_back({row, column, look, {}, std::move(formula), value});
    }
    void headings(const std::vector<std::string>& words) {
        int column = 0;
        for (const std::string& word : words) text(heading_row, column++, word, CellLook::heading);
    }
    /// The lines over every sheet: what it is, whose, under which terms, and what it is not.
    void top(const RecheckAnswer& answer, RecheckSheet which, const Catalogue& say) {
        const WorkbookWords& of = say.recheck.workbook;
        const Heading& h = answer.heading;
        text(0, 0, of.title_of(of.title(which), answer.scenario.terms.name), CellLook::title);
        text(1, 0,
             of.home(h.community, h.builder, h.plan, h.elevation, h.lot, h.buyer, h.as_of,
                     h.closing));
        text(2, 0, terms_line(answer.scenario.terms, say));
        text(3, 0, loan_cautions(h, {answer.scenario.terms}, say).front().words, CellLook::note);
    }
    void cautions(int row, const RecheckAnswer& answer, const Catalogue& say) {
        for (const Caution& each : loan_cautions(answer.heading, {answer.scenario.terms}, say)) {
            text(++row, 0, each.words, CellLook::note);
        }
    }
    [[nodiscard]] WorkbookSheet take() { return std::move(sheet_); }

  private:
    WorkbookSheet sheet_;
};

RecheckSheet sheet_of(ProofPart part) {
    switch (part) {
    case ProofPart::home:
        return RecheckSheet::home;
    case ProofPart::loan:
    case ProofPart::month:
    case ProofPart::cost_of_credit:
        return RecheckSheet::loan;
    case ProofPart::closing_costs:
    case ProofPart::prepaids:
    case ProofPart::credits:
        return RecheckSheet::cash;
    }
    throw Broken("a part of an unknown sheet");
}

class Layout {
  public:
    Layout(const RecheckAnswer& answer, const Catalogue& say)
        : answer_(answer), say_(say), of_(say.recheck.workbook) {
        for (const RecheckSection& section : answer.sections) {
            for (const RecheckedFigure& figure : section.figures) {
                names_[figure.id] = label_words(figure.label, say);
            }
        }
        const int months = static_cast<int>(answer.months.size()) - 1;
        rows_ = {schedule_first, schedule_first + months, of_.sheet(RecheckSheet::schedule)};
        on_schedule_ = {schedule_first, schedule_first + months, {}};
    }

    Workbook run() {
        figures(RecheckSheet::home);
        figures(RecheckSheet::loan);
        figures(RecheckSheet::cash);
        schedule();
        return std::move(book_);
    }

  private:
    void figures(RecheckSheet which) {
        SheetWriter sheet(of_.sheet(which), {46, 16, 60, 10, 44, 12, 16, 70});
        sheet.top(answer_, which, say_);
        sheet.headings({of_.figure(), of_.value(), of_.formula(), of_.rounding(), of_.rule(),
                        of_.in_force_from(), of_.status(), of_.source()});
        int row = heading_row;
        for (const RecheckSection& section : answer_.sections) {
            if (sheet_of(section.part) != which) continue;
            sheet.text(++row, 0, say_.recheck.part(section.part), CellLook::heading);
            for (const RecheckedFigure& figure : section.figures) {
                line(sheet, ++row, figure, of_.sheet(which));
            }
        }
        sheet.cautions(row + 1, answer_, say_);
        book_.sheets.push_back(sheet.take());
    }

    void line(SheetWriter& sheet, int row, const RecheckedFigure& figure, const std::string& name) {
        const Ground& ground = figure.ground;
        sheet.text(row, 0, names_.at(figure.id));
        sheet.value(row, 1, look_of(figure.unit), figure.value,
                    spreadsheet_text(figure.formula, rows_));
        const auto named = [&](const std::string& id) { return names_.at(id); };
        sheet.text(row, 2, words(figure.formula, figure.unit, named, say_));
        if (ground.rounding > 0) {
            sheet.value(row, 3, CellLook::number, Decimal::whole(ground.rounding));
        }
        sheet.text(row, 4, rule_words(ground, say_));
        if (ground.effective) sheet.value(row, 5, CellLook::date, serial(*ground.effective));
        if (ground.status) sheet.text(row, 6, say_.recheck.grounds.status(*ground.status));
        sheet.text(row, 7, source_words(ground, say_));
        book_.names.emplace_back(figure.id, fmt::format("{}!$B${}", name, row + 1));
    }

    void schedule() {
        const bool hud = answer_.hud_balances;
        SheetWriter sheet(of_.sheet(RecheckSheet::schedule),
                          {10, 12, 10, 14, 14, 14, 14, 16, 16, 16});
        sheet.top(answer_, RecheckSheet::schedule, say_);
        std::vector<std::string> headings{of_.payment(), of_.due(), of_.rate()};
        const auto column = [&](ScheduleColumn which, bool there) {
            headings.push_back(there ? say_.recheck.formulas.column(which) : std::string());
        };
        column(ScheduleColumn::payment, true);
        column(ScheduleColumn::interest, true);
        column(ScheduleColumn::principal, true);
        column(ScheduleColumn::insurance, true);
        column(ScheduleColumn::balance, true);
        column(ScheduleColumn::hud_balance, hud);
        column(ScheduleColumn::bought_down, answer_.bought_down);
        sheet.headings(headings);
        const int top = schedule_first - 1;
        sheet.value(top, 0, CellLook::number, Decimal{});
        sheet.value(top, 7, CellLook::money, in_dollars(answer_.months[0].balance),
                    names_.contains("principal_reduction") ? "loan-principal_reduction" : "loan");
        if (hud) {
            sheet.value(top, 8, CellLook::money, in_dollars(answer_.months[0].hud_balance),
                        spreadsheet_text(answer_.months[0].hud_balance_by, on_schedule_));
        }
        for (std::size_t month = 1; month < answer_.months.size(); ++month) {
            month_row(sheet, static_cast<int>(month));
        }
        book_.sheets.push_back(sheet.take());
    }

    /// A later step of the rate brings names of its own.
    void take_step(int month) {
        const std::string suffix = "_from_" + std::to_string(month);
        if (!names_.contains("rate" + suffix)) return;
        rate_ = "rate" + suffix;
        payment_ = "payment" + suffix;
    }

    void month_row(SheetWriter& sheet, int month) {
        const RecheckedMonth& values = answer_.months[static_cast<std::size_t>(month)];
        const int here = rows_.of(month);
        const int row = here - 1;
        take_step(month);
        const int term = answer_.scenario.terms.term.count();
        const std::string due = fmt::format("H{}+E{}", here - 1, here);
        sheet.value(row, 0, CellLook::number, Decimal::whole(month));
        sheet.value(row, 1, CellLook::date,
                    serial(plus_months(answer_.scenario.first_payment, Months(month - 1))));
        sheet.value(row, 2, CellLook::percent, values.rate.percent(), rate_);
        sheet.value(row, 3, CellLook::money, in_dollars(values.payment),
                    month == term ? fmt::format("ROUND({},2)", due)
                                  : fmt::format("ROUND(MIN({},{}),2)", payment_, due));
        // In whole cents, so that the tie of half a cent is one.
        sheet.value(row, 4, CellLook::money, in_dollars(values.interest),
                    fmt::format("ROUND(ROUND(H{}*100,0)*C{}/1200,0)/100", here - 1, here));
        sheet.value(row, 5, CellLook::money, in_dollars(values.principal),
                    fmt::format("ROUND(D{}-E{},2)", here, here));
        insurance_cell(sheet, month, values);
        sheet.value(row, 7, CellLook::money, in_dollars(values.balance),
                    fmt::format("ROUND(H{}-F{},2)", here - 1, here));
        if (answer_.bought_down) bought_down_cell(sheet, month, values.bought_down);
        if (!answer_.hud_balances) return;
        sheet.value(row, 8, CellLook::money, in_dollars(values.hud_balance),
                    spreadsheet_text(values.hud_balance_by, on_schedule_));
    }

    void bought_down_cell(SheetWriter& sheet, int month, Money value) {
        const std::string name = "bought_down_month_" + std::to_string((month - 1) / 12 + 1);
        sheet.value(rows_.of(month) - 1, 9, CellLook::money, in_dollars(value),
                    names_.contains(name) ? name : "");
    }

    /// A year's premium stands in its first month; a lender's until its last payment.
    void insurance_cell(SheetWriter& sheet, int month, const RecheckedMonth& values) {
        const int here = rows_.of(month);
        std::string formula;
        if (names_.contains("insured_payments")) {
            formula = fmt::format("IF(A{}<=insured_payments,mortgage_insurance,0)", here);
        } else if (!values.insurance.is_zero()) {
            formula = month % 12 == 1 ? spreadsheet_text(values.insurance_by, on_schedule_)
                                      : fmt::format("G{}", here - 1);
        }
        sheet.value(here - 1, 6, CellLook::money, in_dollars(values.insurance), formula);
    }

    const RecheckAnswer& answer_;
    const Catalogue& say_;
    const WorkbookWords& of_;
    std::map<std::string, std::string> names_;
    ScheduleRows rows_;
    ScheduleRows on_schedule_;       ///< for its own cells
    std::string rate_ = "note_rate"; ///< in force at the month being written
    std::string payment_ = "principal_and_interest";
    Workbook book_;
};

} // namespace

Workbook workbook_of(const RecheckAnswer& answer, const Catalogue& say) {
    return Layout(answer, say).run();
}

} // namespace quoin
