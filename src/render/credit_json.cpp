// Writing what a builder's money can do as JSON.
#include <quoin/render/credit.hpp>

#include "credit_words.hpp"
#include "json_parts.hpp"
#include <quoin/render/format.hpp>

namespace quoin {
namespace {

/// What of the loan's is paid in cash at closing that would else be financed or paid monthly.
const char* paid_in_cash(const CreditMix& mix, const CreditScenario& s) {
    if (!mix.fee_in_cash) return "none";
    return s.is_single_premium ? "single premium" : "upfront fee";
}

Json mix_json(const CreditMix& mix, const CreditScenario& s) {
    Json json = {{"off_price", mix.off_price.text()},
                 {"rate", mix.rate.text()},
                 {"points", mix.points.value().text()},
                 {"apr", apr_json(mix.apr)},
                 {"buydown", buydown_name(mix.buydown)},
                 {"paid_in_cash", paid_in_cash(mix, s)},
                 {"pays",
                  {{"points", mix.pays[CreditUse::points].text()},
                   {"buydown", mix.pays[CreditUse::buydown].text()},
                   {"upfront_fee", mix.pays[CreditUse::upfront_fee].text()},
                   {"closing_costs", mix.pays[CreditUse::closing_costs].text()},
                   {"prepaids", mix.pays[CreditUse::prepaids].text()}}},
                 {"without_use", mix.without_use.text()},
                 {"over_cap", mix.over_cap.text()},
                 {"loan", mix.loan.text()},
                 {"monthly_now", mix.monthly_now.text()},
                 {"monthly_after_three_years", mix.monthly_later.text()},
                 {"cash_needed", mix.cash_needed.text()},
                 {"cash_to_close", mix.to_close.text()}};
    Json cost = Json::object();
    for (std::size_t i = 0; i < credit_years.size(); ++i) {
        cost[std::to_string(credit_years[i])] = mix.cost[i].text();
    }
    json["cost_over_years"] = std::move(cost);
    json["cost_over_asked_years"] = mix.cost_asked.text();
    return json;
}

Json pure_json(const CreditPure& pure, const CreditScenario& s, const CreditAsk& ask) {
    Json json = {{"use", std::string(key_of(pure.way))}, {"name", use_name(pure, s)}};
    json["mix"] = pure.mix ? mix_json(*pure.mix, s) : Json(nullptr);
    json["why_not"] = pure.mix ? Json(nullptr) : Json(why_not(pure, ask));
    return json;
}

Json scenario_json(const CreditScenario& s, const CreditAsk& ask) {
    Json json = {{"terms", json_of(s.terms)}, {"refusals", json_of(s.refusals)}};
    if (!s.available()) return json;
    json["contribution_cap"] = s.cap ? Json({{"percent", s.cap->value().text()},
                                             {"of", s.cap_by_price ? "price" : "value"},
                                             {"amount", s.cap_amount.text()},
                                             {"taken", s.cap_taken.text()},
                                             {"concessions_alone", s.cap_on_concessions}})
                                     : Json(nullptr);
    json["without"] = mix_json(s.today, s);
    json["each_use"] = Json::array();
    for (const CreditPure& pure : s.pure) json["each_use"].push_back(pure_json(pure, s, ask));
    json["lowest_payment"] = mix_json(s.lowest_payment, s);
    json["least_cash"] = s.cash_is_given ? Json(nullptr) : mix_json(s.least_cash, s);
    json["least_cost"] = mix_json(s.least_cost, s);
    json["frontier"] = Json::array();
    for (const CreditMix& mix : s.frontier) json["frontier"].push_back(mix_json(mix, s));
    return json;
}

} // namespace

std::string json_text_of(const CreditAnswer& answer) {
    Json json = {{"question", "credit"},
                 {"heading", json_of(answer.heading)},
                 {"amount", answer.ask.amount.text()},
                 {"years", answer.ask.years},
                 {"contract_price", answer.contract_price.text()}};
    json["scenarios"] = Json::array();
    for (const CreditScenario& s : answer.scenarios) {
        json["scenarios"].push_back(scenario_json(s, answer.ask));
    }
    json["cautions"] = cautions_json(credit_cautions(answer));
    return written(json);
}

} // namespace quoin
