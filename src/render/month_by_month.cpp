// Rendering a schedule.
#include <quoin/render/month_by_month.hpp>

#include <fmt/format.h>

#include "json_parts.hpp"
#include <quoin/render/format.hpp>
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

std::string saves_text(const ExtraSaves& saves) {
    return fmt::format(
        "{} extra principal a month: {} payments instead of {}, the last on {}; "
        "{} less interest{}",
        dollars(saves.extra), saves.payments, saves.payments + saves.payments_saved,
        long_date(saves.last_due), dollars(saves.interest_saved),
        saves.insurance_saved.is_zero()
            ? ""
            : fmt::format(", {} less mortgage insurance", dollars(saves.insurance_saved)));
}

Json saves_json(const std::optional<ExtraSaves>& saves) {
    if (!saves) return nullptr;
    return {{"extra", saves->extra.text()},
            {"payments", saves->payments},
            {"payments_saved", saves->payments_saved},
            {"interest_saved", saves->interest_saved.text()},
            {"insurance_saved", saves->insurance_saved.text()},
            {"last_due", saves->last_due.text()}};
}

std::string refusals_text(const MonthByMonthAnswer& answer) {
    std::string out;
    for (const Refusal& refusal : answer.scenario.refusals) {
        out += answer.scenario.terms.name + " cannot be had: " + words(refusal) + "\n";
    }
    return out;
}

} // namespace

std::string text_of(const MonthByMonthAnswer& answer) {
    std::string out = heading_text(answer.heading, "The loan, month by month");
    if (!answer.scenario.available()) return out + "\n" + refusals_text(answer);
    const ScenarioAnswer& s = answer.scenario;
    out += paragraph(s.terms.name + ": loan of " + dollars(s.loan) + ". " + terms_line(s.terms), 98,
                     "", "");
    if (answer.saves) out += paragraph(saves_text(*answer.saves), 98, "", "");
    Table table({{"payment", Align::right},
                 {"due", Align::left},
                 {"paid", Align::right},
                 {"interest", Align::right},
                 {"principal", Align::right},
                 {"mortgage insurance", Align::right, 10},
                 {"balance", Align::right}});
    for (const MonthRow& row : answer.rows) {
        table.row({std::to_string(row.month), row.due.text(), dollars(row.payment),
                   dollars(row.interest), dollars(row.principal), dollars(row.insurance),
                   dollars(row.balance)});
    }
    table.rule();
    table.row({"", "together", dollars(s.loan + answer.total_interest),
               dollars(answer.total_interest), dollars(s.loan), dollars(answer.total_insurance),
               ""});
    return out + "\n" + table.text() +
           footing_text(loan_cautions(answer.heading, {answer.scenario.terms}));
}

std::string csv_of(const MonthByMonthAnswer& answer) {
    std::string out = "payment,due,paid,interest,principal,mortgage_insurance,balance\r\n";
    for (const MonthRow& row : answer.rows) {
        out += fmt::format("{},{},{},{},{},{},{}\r\n", row.month, row.due.text(),
                           row.payment.text(), row.interest.text(), row.principal.text(),
                           row.insurance.text(), row.balance.text());
    }
    return out;
}

std::string json_text_of(const MonthByMonthAnswer& answer) {
    Json json = {{"question", "schedule"},
                 {"heading", json_of(answer.heading)},
                 {"scenario", json_of(answer.scenario)}};
    json["rows"] = Json::array();
    for (const MonthRow& row : answer.rows) {
        json["rows"].push_back({{"month", row.month},
                                {"due", row.due.text()},
                                {"payment", row.payment.text()},
                                {"interest", row.interest.text()},
                                {"principal", row.principal.text()},
                                {"mortgage_insurance", row.insurance.text()},
                                {"balance", row.balance.text()}});
    }
    json["total_interest"] = answer.total_interest.text();
    json["total_insurance"] = answer.total_insurance.text();
    json["extra"] = saves_json(answer.saves);
    json["cautions"] = cautions_json(loan_cautions(answer.heading, {answer.scenario.terms}));
    return written(json);
}

} // namespace quoin
