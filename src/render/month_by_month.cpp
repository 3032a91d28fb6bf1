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

std::string_view name_of(RateWay way) {
    switch (way) {
    case RateWay::fixed:
        return "fixed";
    case RateWay::index_of_the_day:
        return "index of the day";
    case RateWay::given_index:
        return "given index";
    case RateWay::worst_case:
        return "worst case";
    }
    return {};
}

std::string way_text(RateWay way) {
    switch (way) {
    case RateWay::fixed:
        return {};
    case RateWay::index_of_the_day:
        return "Run as if the index stayed where it is; it will not. --worst-case and --index show "
               "other ways.\n";
    case RateWay::given_index:
        return "Run along the index that was given, which nobody can know.\n";
    case RateWay::worst_case:
        return "Run at the worst: every change as high as the caps let it be.\n";
    }
    return {};
}

bool is_bought_down(const MonthByMonthAnswer& answer) {
    return answer.scenario.buydown.has_value();
}

std::string buydown_text(const MonthByMonthAnswer& answer) {
    if (!is_bought_down(answer)) return {};
    return paragraph(fmt::format("The temporary buydown pays {} of the first years' payments: the "
                                 "buyer pays what is left of them, and the insurance.",
                                 dollars(answer.total_from_buydown)),
                     98, "", "");
}

/// The table of months; the rate of each is shown where it changes at all, and what a buydown pays
/// of it where there is one.
std::string rows_text(const MonthByMonthAnswer& answer) {
    const bool changes = answer.way != RateWay::fixed;
    std::vector<Column> columns{{"payment", Align::right}, {"due", Align::left}};
    if (changes) columns.push_back({"rate", Align::right});
    columns.push_back({"paid", Align::right});
    columns.push_back({"interest", Align::right});
    columns.push_back({"principal", Align::right});
    columns.push_back({"mortgage insurance", Align::right, 10});
    const bool bought = is_bought_down(answer);
    if (bought) columns.push_back({"paid by buydown", Align::right, 10});
    columns.push_back({"balance", Align::right});
    Table table(columns);
    const auto add = [&](std::vector<std::string> cells, const std::string& rate,
                         Money from_buydown) {
        if (changes) cells.insert(cells.begin() + 2, rate);
        if (bought) cells.insert(cells.end() - 1, dollars(from_buydown));
        table.row(std::move(cells));
    };
    if (const auto& at_closing = answer.at_closing) {
        add({"closing", at_closing->date.text(), "", "", dollars(at_closing->principal), "",
             dollars(at_closing->balance)},
            "", {});
    }
    for (const MonthRow& row : answer.rows) {
        add({std::to_string(row.month), row.due.text(), dollars(row.payment), dollars(row.interest),
             dollars(row.principal), dollars(row.insurance), dollars(row.balance)},
            percent_text(row.rate.percent(), 3), row.from_buydown);
    }
    table.rule();
    const Money loan = answer.scenario.loan;
    const Money paid = loan - answer.scenario.cash.principal_reduction;
    add({"", "together", dollars(paid + answer.total_interest), dollars(answer.total_interest),
         dollars(loan), dollars(answer.total_insurance), ""},
        "", answer.total_from_buydown);
    return table.text();
}

} // namespace

std::string text_of(const MonthByMonthAnswer& answer) {
    std::string out = heading_text(answer.heading, "The loan, month by month");
    if (!answer.scenario.available()) return out + "\n" + refusals_text(answer);
    const ScenarioAnswer& s = answer.scenario;
    out += paragraph(s.terms.name + ": loan of " + dollars(s.loan) + ". " + terms_line(s.terms), 98,
                     "", "");
    if (answer.saves) out += paragraph(saves_text(*answer.saves), 98, "", "");
    out += way_text(answer.way) + buydown_text(answer);
    return out + "\n" + rows_text(answer) +
           footing_text(loan_cautions(answer.heading, {answer.scenario.terms}));
}

std::string csv_of(const MonthByMonthAnswer& answer) {
    const bool bought = is_bought_down(answer);
    std::string out =
        fmt::format("payment,due,rate,paid,interest,principal,mortgage_insurance,balance{}\r\n",
                    bought ? ",from_buydown" : "");
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

std::string json_text_of(const MonthByMonthAnswer& answer) {
    Json json = {{"question", "schedule"},
                 {"heading", json_of(answer.heading)},
                 {"scenario", json_of(answer.scenario)}};
    json["rate_way"] = std::string(name_of(answer.way));
    json["at_closing"] = nullptr;
    if (const auto& at_closing = answer.at_closing) {
        json["at_closing"] = {{"date", at_closing->date.text()},
                              {"principal", at_closing->principal.text()},
                              {"balance", at_closing->balance.text()}};
    }
    json["rows"] = Json::array();
    for (const MonthRow& row : answer.rows) {
        json["rows"].push_back({{"month", row.month},
                                {"due", row.due.text()},
                                {"rate", row.rate.text()},
                                {"payment", row.payment.text()},
                                {"interest", row.interest.text()},
                                {"principal", row.principal.text()},
                                {"mortgage_insurance", row.insurance.text()},
                                {"balance", row.balance.text()},
                                {"from_buydown", row.from_buydown.text()}});
    }
    json["years"] = Json::array();
    for (const YearRow& row : answer.years) {
        json["years"].push_back({{"year", row.year},
                                 {"last_due", row.last_due.text()},
                                 {"payment", row.payment.text()},
                                 {"interest", row.interest.text()},
                                 {"principal", row.principal.text()},
                                 {"mortgage_insurance", row.insurance.text()},
                                 {"balance", row.balance.text()},
                                 {"from_buydown", row.from_buydown.text()}});
    }
    json["total_interest"] = answer.total_interest.text();
    json["total_insurance"] = answer.total_insurance.text();
    json["total_from_buydown"] = answer.total_from_buydown.text();
    json["extra"] = saves_json(answer.saves);
    json["cautions"] = cautions_json(loan_cautions(answer.heading, {answer.scenario.terms}));
    return written(json);
}

} // namespace quoin
