// Rendering a schedule.
#include <quoin/answers/month_by_month.hpp>

#include <fmt/format.h>

#include "shared_fields.hpp"
#include "words/parts.hpp"
#include "words/schedule.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

namespace {

std::string saves_text(const ExtraSaves& saves, const ScheduleWords& say) {
    return say.saves(saves.extra, saves.payments, saves.payments + saves.payments_saved,
                     saves.last_due, saves.interest_saved,
                     saves.insurance_saved.is_zero() ? std::string()
                                                     : say.saves_insurance(saves.insurance_saved));
}

Blocks way_text(RateWay way, const ScheduleWords& say) {
    switch (way) {
    case RateWay::fixed:
        return {};
    case RateWay::index_of_the_day:
        return paragraph(say.index_of_the_day());
    case RateWay::given_index:
        return paragraph(say.given_index());
    case RateWay::worst_case:
        return paragraph(say.worst_case());
    }
    return {};
}

bool is_bought_down(const MonthByMonthAnswer& answer) {
    return answer.scenario.buydown.has_value();
}

Blocks buydown_text(const MonthByMonthAnswer& answer, const ScheduleWords& say) {
    if (!is_bought_down(answer)) return {};
    return paragraph(say.buydown(answer.total_from_buydown));
}

std::vector<Column> columns_of(const MonthByMonthAnswer& answer, const Catalogue& catalogue) {
    const ScheduleColumns& say = catalogue.schedule.table;
    std::vector<Column> columns{{say.payment(), Align::right}, {say.due(), Align::right}};
    if (answer.way != RateWay::fixed) columns.push_back({say.rate(), Align::right});
    columns.push_back({say.paid(), Align::right});
    columns.push_back({say.interest(), Align::right});
    columns.push_back({say.principal(), Align::right});
    columns.push_back({catalogue.parts.month(MonthPart::mortgage_insurance), Align::right, 10});
    if (is_bought_down(answer)) columns.push_back({say.from_buydown(), Align::right, 10});
    columns.push_back({say.balance(), Align::right});
    return columns;
}

/// The table of months; the rate of each is shown where it changes at all, and what a buydown pays
/// of it where there is one.
Blocks rows_text(const MonthByMonthAnswer& answer, const Catalogue& say) {
    const bool changes = answer.way != RateWay::fixed;
    const bool bought = is_bought_down(answer);
    Table table(columns_of(answer, say));
    const auto add = [&](std::vector<std::string> cells, const std::string& rate,
                         Money from_buydown) {
        if (changes) cells.insert(cells.begin() + 2, rate);
        if (bought) cells.insert(cells.end() - 1, dollars(from_buydown));
        table.row(std::move(cells));
    };
    if (const auto& at_closing = answer.at_closing) {
        add({say.schedule.closing(), short_date(at_closing->date), "", "",
             dollars(at_closing->principal), "", dollars(at_closing->balance)},
            "", {});
    }
    for (const MonthRow& row : answer.rows) {
        add({std::to_string(row.month), short_date(row.due), dollars(row.payment),
             dollars(row.interest), dollars(row.principal), dollars(row.insurance),
             dollars(row.balance)},
            rate_text(row.rate), row.from_buydown);
    }
    table.rule();
    const Money loan = answer.scenario.loan;
    const Money paid = loan - answer.scenario.cash[CashPart::principal_reduction];
    add({"", say.schedule.together(), dollars(paid + answer.total_interest),
         dollars(answer.total_interest), dollars(loan), dollars(answer.total_insurance), ""},
        "", answer.total_from_buydown);
    return table;
}

/// What programs find the columns by: the same in every language.
constexpr std::string_view csv_headings =
    "payment,due,rate,paid,interest,principal,mortgage_insurance,balance";

} // namespace

Blocks blocks_of(const MonthByMonthAnswer& answer, const Catalogue& say) {
    const ScheduleWords& of = say.schedule;
    Blocks out = heading_text(answer.heading, of.title(), say);
    const ScenarioAnswer& s = answer.scenario;
    if (!s.available()) return out + "\n" + refused_lines(s.terms, s.refusals, say);
    out += paragraph(of.loan(s.terms.name, s.loan, terms_line(s.terms, say)));
    if (answer.saves) out += paragraph(saves_text(*answer.saves, of));
    out += way_text(answer.way, of) + buydown_text(answer, of);
    return out + "\n" + rows_text(answer, say) +
           footing_text(loan_cautions(answer.heading, {answer.scenario.terms}, say));
}

std::string csv_of(const MonthByMonthAnswer& answer, const Catalogue& /*say*/) {
    const bool bought = is_bought_down(answer);
    std::string out = fmt::format("{}{}\r\n", csv_headings, bought ? ",from_buydown" : "");
    if (const auto& at_closing = answer.at_closing) {
        out += fmt::format("0,{},,,,{},,{}{}\r\n", at_closing->date.text(),
                           at_closing->principal.text(), at_closing->balance.text(),
                           bought ? "," : "");
    }
    for (const MonthRow& row : answer.rows) {
        out += fmt::format("{},{},{},{},{},{},{},{}{}\r\n", row.month, row.due.text(),
                           row.rate.text(), row.payment.text(), row.interest.text(),
                           row.principal.text(), row.insurance.text(), row.balance.text(),
                           bought ? "," + row.from_buydown.text() : "");
    }
    return out;
}

void fields(auto& v, Of<ExtraSaves> auto& saves) {
    v("extra", saves.extra);
    v("payments", saves.payments);
    v("payments_saved", saves.payments_saved);
    v("interest_saved", saves.interest_saved);
    v("insurance_saved", saves.insurance_saved);
    v("last_due", saves.last_due);
}

void fields(auto& v, Of<ReducedAtClosing> auto& reduced) {
    v("date", reduced.date);
    v("principal", reduced.principal);
    v("balance", reduced.balance);
}

namespace {

/// What a month and a year of payments have in common.
void paid_fields(auto& v, auto& row) {
    v("payment", row.payment);
    v("interest", row.interest);
    v("principal", row.principal);
    v("mortgage_insurance", row.insurance);
    v("balance", row.balance);
    v("from_buydown", row.from_buydown);
}

} // namespace

void fields(auto& v, Of<MonthRow> auto& row) {
    v.named("MonthRow");
    v("month", row.month);
    v("due", row.due);
    v("rate", row.rate);
    paid_fields(v, row);
}

void fields(auto& v, Of<YearRow> auto& row) {
    v.named("YearRow");
    v("year", row.year);
    v("last_due", row.last_due);
    paid_fields(v, row);
}

void fields(auto& v, Of<MonthByMonthAnswer> auto& answer) {
    v.named("Schedule");
    v.constant("question", "schedule");
    v("heading", answer.heading);
    v("scenario", answer.scenario);
    v("rate_way", answer.way);
    v("at_closing", answer.at_closing);
    v("rows", answer.rows);
    v("years", answer.years);
    v("total_interest", answer.total_interest);
    v("total_insurance", answer.total_insurance);
    v("total_from_buydown", answer.total_from_buydown);
    v("extra", answer.saves);
    v.words("cautions", [&](const Catalogue& say) {
        return loan_cautions(answer.heading, {answer.scenario.terms}, say);
    });
}

template std::string json_text_of(const MonthByMonthAnswer&, const Catalogue&);

template const Shape& shape_of<MonthByMonthAnswer>();
template std::optional<MonthByMonthAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
