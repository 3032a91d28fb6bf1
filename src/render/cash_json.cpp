// Writing the cash of a scenario as JSON.
#include "cash_json.hpp"

#include "json_parts.hpp"
#include <quoin/render/cash.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

Json costs_json(const CashAnswer& answer) {
    Json json = Json::array();
    for (const CostLine& line : answer.costs) {
        json.push_back({{"section", std::string(name_of(line.section))},
                        {"name", line.name},
                        {"amount", line.amount.text()},
                        {"paid_by", std::string(name_of(line.paid_by))},
                        {"finance_charge", line.finance_charge},
                        {"before_closing", line.before_closing}});
    }
    return json;
}

Json prepaids_json(const CashAnswer& answer) {
    Json json = Json::array();
    for (const PrepaidLine& line : answer.prepaids) {
        json.push_back({{"name", line.name},
                        {"due", line.due ? Json(line.due->text()) : Json(nullptr)},
                        {"amount", line.amount.text()}});
    }
    return json;
}

Json outlook_json(const EscrowOutlook& outlook) {
    Json json = {{"deposit", outlook.first.deposit.text()},
                 {"initial_deposit", outlook.first.initial_deposit.text()}};
    json["year_ends"] = Json::array();
    for (std::size_t year = 0; year < outlook.ends.size(); ++year) {
        const EscrowYearEnd& end = outlook.ends[year];
        json["year_ends"].push_back({{"balance", end.balance.text()},
                                     {"shortage", end.shortage.text()},
                                     {"refund", end.refund.text()},
                                     {"next_deposit", end.payment().text()},
                                     {"change", outlook.change(year).text()}});
    }
    return json;
}

Json escrow_json(const CashAnswer& answer) {
    if (!answer.escrow) return nullptr;
    const EscrowAccount& account = answer.escrow->account;
    Json json = {{"deposit", account.deposit.text()},
                 {"initial_deposit", account.initial_deposit.text()},
                 {"cushion", account.cushion.text()}};
    json["bills"] = Json::array();
    for (const EscrowBill& bill : answer.escrow->bills) {
        json["bills"].push_back(
            {{"name", bill.item}, {"due", bill.due.text()}, {"amount", bill.amount.text()}});
    }
    json["months"] = Json::array();
    for (const EscrowMonth& month : account.months) {
        json["months"].push_back({{"month", month.month.text()},
                                  {"deposit", month.deposit.text()},
                                  {"paid", month.paid.text()},
                                  {"balance", month.balance.text()}});
    }
    if (answer.escrow->outlook) {
        json["outlook"] = {
            {"from_settled", outlook_json(answer.escrow->outlook->from_settled)},
            {"from_first_bills", outlook_json(answer.escrow->outlook->from_first_bills)}};
    }
    return json;
}

Json credits_json(const CashAnswer& answer) {
    Json json;
    json["used"] = Json::array();
    for (const CreditLine& line : answer.credits) {
        json["used"].push_back(
            {{"use", name_of(line.use, answer.scenario)}, {"amount", line.amount.text()}});
    }
    const CreditsUsed& credits = answer.scenario.credits;
    json["without_use"] = credits.without_use.text();
    json["over_cap"] = credits.over_cap.text();
    json["cap_percent"] =
        answer.contribution_cap ? Json(answer.contribution_cap->value().text()) : Json(nullptr);
    if (answer.contribution_cap) json["cap_of"] = answer.cap_by_price ? "price" : "value";
    json["counts_towards_cap"] = credits.interested_parties.text();
    json["ltv_if_given"] = answer.effects.ltv_if_given.value().text();
    return json;
}

Json calendar_json(const CashAnswer& answer) {
    Json json = Json::array();
    for (const CalendarDay& day : answer.calendar) {
        json.push_back(
            {{"date", day.date.text()}, {"what", day.what}, {"amount", day.amount.text()}});
    }
    return json;
}

} // namespace

std::string json_text_of(const CashAnswer& answer) {
    Json json = {{"question", "cash"},
                 {"heading", json_of(answer.heading)},
                 {"scenario", json_of(answer.scenario)}};
    json["costs"] = costs_json(answer);
    json["prepaids"] = prepaids_json(answer);
    json["escrow"] = escrow_json(answer);
    json["credits"] = credits_json(answer);
    json["appraisal_gap"] = answer.effects.appraisal_gap.text();
    json["calendar"] = calendar_json(answer);
    json["cautions"] = cautions_json(cautions_of(answer));
    return written(json);
}

} // namespace quoin
