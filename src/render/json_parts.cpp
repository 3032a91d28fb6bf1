// Writing the shared parts of answers as JSON.
#include "json_parts.hpp"

#include <quoin/render/format.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

Json steps_json(const std::vector<PaymentStep>& steps) {
    Json json = Json::array();
    for (const PaymentStep& step : steps) {
        json.push_back({{"from_payment", step.from_payment},
                        {"rate", step.rate.text()},
                        {"payment", step.payment.text()}});
    }
    return json;
}

/// What a rate that changes may do; null where it is fixed.
Json adjustable_json(const std::optional<AdjustableAnswer>& adjustable) {
    if (!adjustable) return nullptr;
    const RateCaps& caps = adjustable->caps;
    return {{"initial_months", adjustable->initial.count()},
            {"reset_months", adjustable->reset.count()},
            {"index",
             {{"name", adjustable->index.name},
              {"value", adjustable->index.value.value().text()},
              {"date", adjustable->index.date.text()}}},
            {"margin", adjustable->margin.value().text()},
            {"caps",
             {{"first", caps.first.value().text()},
              {"periodic", caps.periodic.value().text()},
              {"life", caps.life.value().text()}}},
            {"fully_indexed_rate", adjustable->fully_indexed.text()},
            {"highest_rate", adjustable->ceiling.text()},
            {"if_the_index_stays", steps_json(adjustable->as_indexed)},
            {"worst_case", steps_json(adjustable->worst)}};
}

/// A temporary buydown; null where there is none.
Json buydown_json(const std::optional<Buydown>& buydown) {
    if (!buydown) return nullptr;
    Json json = {{"subsidy", buydown->total_subsidy().text()},
                 {"note_payment", buydown->note_payment.text()},
                 {"qualifying_rate", buydown->qualifying_rate().text()}};
    json["years"] = Json::array();
    for (const BuydownYear& year : buydown->years) {
        json["years"].push_back({{"rate", year.rate.text()},
                                 {"payment", year.payment.text()},
                                 {"subsidy", year.subsidy.text()}});
    }
    return json;
}

Json insurance_json(const InsuranceAnswer& insurance) {
    return {{"name", insurance.name},
            {"annual_percent", insurance.annual_percent.value().text()},
            {"first_monthly", insurance.first_monthly.text()},
            {"payments", insurance.payments},
            {"paid_up", insurance.paid_up},
            {"last_date", date_json(insurance.last_date)},
            {"whole_term", insurance.whole_term},
            {"on_request_payment", insurance.on_request_payment},
            {"on_request_date", date_json(insurance.on_request_date)}};
}

Json levels_json(const std::vector<PaymentLevel>& levels) {
    Json json = Json::array();
    for (const PaymentLevel& level : levels) {
        json.push_back({{"from", level.from}, {"to", level.to}, {"payment", level.payment.text()}});
    }
    return json;
}

Json cost_json(const CostOfCredit& cost) {
    return {{"prepaid_finance_charge", cost.prepaid_finance_charge.text()},
            {"amount_financed", cost.amount_financed.text()},
            {"finance_charge", cost.finance_charge.text()},
            {"total_of_payments", cost.total_of_payments.text()},
            {"total_interest_percentage", disclosed(cost.total_interest_percentage.value())},
            {"disclosed_in_five_years", cost.disclosed_in_five_years.text()},
            {"disclosed_principal_in_five_years", cost.disclosed_principal_in_five_years.text()},
            {"buyers_buydown", cost.buydown.put_up.text()},
            {"payment_levels", levels_json(cost.levels)},
            {"first_period",
             {{"months", cost.first_period.months}, {"odd_days", cost.first_period.odd_days}}},
            {"apr", apr_json(cost.apr)}};
}

Json cash_json(const CashToClose& cash) {
    return {{"down_payment", cash.down_payment.text()},
            {"upfront_fee_in_cash", cash.upfront_fee.text()},
            {"points", cash.points.text()},
            {"principal_reduction", cash.principal_reduction.text()},
            {"closing_costs", cash.closing_costs.text()},
            {"prepaid_interest", cash.prepaid_interest.text()},
            {"prepaid_bills", cash.prepaid_bills.text()},
            {"initial_escrow_deposit", cash.escrow.text()},
            {"temporary_buydown", cash.buydown.text()},
            {"credits", cash.credits.text()},
            {"needed", cash.needed().text()},
            {"deposits", cash.deposits.text()},
            {"to_close", cash.to_close().text()}};
}

} // namespace

void add_difference(const Added& added, Json& json) {
    if (!added.available()) {
        json["refusals"] = json_of(added.refusals);
        return;
    }
    json["per_month"] = added.per_month.text();
    json["cash_needed"] = added.cash.text();
    json["cash_to_close"] = added.to_close.text();
}

Json apr_json(const std::optional<Rate>& apr) {
    return apr ? Json(disclosed(apr->percent())) : Json(nullptr);
}

Json date_json(const std::optional<Date>& date) {
    return date ? Json(date->text()) : Json(nullptr);
}

Json json_of(const Heading& h) {
    return {{"community", h.community},
            {"builder", h.builder},
            {"buyer", h.buyer},
            {"prepared_by", h.prepared_by},
            {"originator", h.originator},
            {"plan", h.plan},
            {"elevation", h.elevation},
            {"lot", h.lot},
            {"price_book_version", h.price_book_version},
            {"price_book_expires", h.price_book_expires.text()},
            {"as_of", h.as_of.text()},
            {"contract", h.contract.text()},
            {"closing", h.closing.text()},
            {"place", h.place},
            {"sample_place", h.sample_place},
            {"rate_sheet", h.rate_sheet},
            {"rates_date", h.rates_date.text()},
            {"rates_good_through", h.rates_good_through.text()},
            {"lender", h.lender},
            {"license", h.license},
            {"sample_rates", h.sample_rates}};
}

Json json_of(const ScenarioTerms& terms) {
    return {{"name", terms.name},
            {"program", terms.program_id},
            {"program_name", terms.program},
            {"months", terms.term.count()},
            {"lock_days", terms.lock_days},
            {"score", terms.score ? Json(*terms.score) : Json(nullptr)},
            {"rate", terms.rate.text()},
            {"points", terms.points.value().text()},
            {"apr", apr_json(terms.apr)},
            {"down_payment", terms.down_payment.text()},
            {"down_percent", fixed(terms.down_percent.value(), 2)},
            {"ltv", fixed(terms.ltv.value(), 2)},
            {"down_from_cash", terms.down_from_cash},
            {"extra_principal", terms.extra_principal.text()},
            {"fine_print", terms.fine_print},
            {"adjustable", adjustable_json(terms.adjustable)}};
}

Json json_of(const Monthly& monthly) {
    Json json;
    for (const MonthlyPart& part : monthly_parts()) {
        json[std::string(part.key)] = (monthly.*part.member).text();
    }
    json["total"] = monthly.total().text();
    return json;
}

Json json_of(const std::vector<Refusal>& refusals) {
    Json json = Json::array();
    for (const Refusal& refusal : refusals) {
        json.push_back({{"why", std::string(name_of(refusal.why))},
                        {"found", refusal.found.text()},
                        {"limit", refusal.limit.text()},
                        {"words", words(refusal)}});
        if (refusal.gap) json.back()["list"] = std::string(name_of(refusal.gap->list));
    }
    return json;
}

Json json_of(const Work& work) {
    Json json = Json::array();
    for (const std::string& trade : trades(work)) json.push_back(trade);
    return json;
}

Json json_of(const ScenarioAnswer& a) {
    Json json = {{"terms", json_of(a.terms)},
                 {"available", a.available()},
                 {"refusals", json_of(a.refusals)}};
    if (!a.available()) return json;
    json["price"] = a.price.text();
    json["value"] = a.value.text();
    json["base_loan"] = a.base_loan.text();
    json["upfront_fee"] = {{"name", a.upfront_name},
                           {"percent", a.upfront_percent.value().text()},
                           {"amount", a.upfront_fee.text()},
                           {"financed", a.financed_fee.text()}};
    json["loan"] = a.loan.text();
    json["monthly"] = json_of(a.monthly);
    json["first_year"] = {{"months", a.first_year_months}, {"monthly", json_of(a.first_year)}};
    json["temporary_buydown"] = buydown_json(a.buydown);
    json["mortgage_insurance"] = insurance_json(a.insurance);
    json["cash"] = cash_json(a.cash);
    json["credits_without_use"] = a.credits.without_use.text();
    json["credits_over_cap"] = a.credits.over_cap.text();
    json["lender_credit_without_use"] = a.lender_credit_without_use.text();
    json["cost_of_credit"] = cost_json(a.cost_of_credit);
    json["first_payment"] = a.first_payment.text();
    json["payments"] = a.payments;
    json["last_payment"] = a.last_payment.text();
    json["total_interest"] = a.total_interest.text();
    json["paid_in_five_years"] = a.paid_in_five_years.text();
    json["paid_over_loan"] = a.paid_over_loan.text();
    json["balance_after_five_years"] = a.balance_after_five_years.text();
    json["balance_after_ten_years"] = a.balance_after_ten_years.text();
    return json;
}

Json cautions_json(const std::vector<std::string>& cautions) {
    Json json = Json::array();
    for (const std::string& caution : cautions) json.push_back(caution);
    return json;
}

std::string written(const Json& json) {
    // What is no UTF-8, such as the name of a file, is shown as far as it can be.
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace quoin
