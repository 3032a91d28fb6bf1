// Writing the wishes that fit as JSON.
#include <quoin/render/fit.hpp>
#include <quoin/render/words.hpp>

#include "json_parts.hpp"

namespace quoin {
namespace {

std::string_view name_of(FitReason reason) {
    switch (reason) {
    case FitReason::rule:
        return "rule";
    case FitReason::limits:
        return "limits";
    case FitReason::loan:
        return "loan";
    }
    return {};
}

Json wish_json(const FitWish& wish) {
    return {{"id", wish.id},
            {"name", wish.name},
            {"level", wish.level},
            {"rank", wish.rank},
            {"must", wish.must},
            {"worth", wish.worth.text()},
            {"quantity", wish.quantity.text()},
            {"unit", std::string(quoin::name_of(wish.unit))}};
}

Json priced_json(const FitWish& wish) {
    Json json = wish_json(wish);
    json["price"] = wish.price.text();
    return json;
}

Json left_out_json(const FitLeftOut& left) {
    Json json = {{"wish", wish_json(left.wish)},
                 {"reason", std::string(name_of(left.reason))},
                 {"rule", left.rule},
                 {"along", left.along},
                 {"instead_of", left.instead}};
    if (!left.added) return json;
    json["price"] = left.price.text();
    if (!left.added->available()) {
        json["refusals"] = json_of(left.added->refusals);
        return json;
    }
    json["per_month"] = left.added->per_month.text();
    json["cash"] = left.added->cash.text();
    json["over_monthly"] = left.over_monthly.text();
    json["over_cash"] = left.over_cash.text();
    json["jumps"] = Json::array();
    for (const Jump& jump : left.added->jumps) json["jumps"].push_back(words(jump, *left.added));
    return json;
}

Json next_json(const FitNext& next) {
    return {{"wish", wish_json(next.wish)},
            {"raise_monthly", next.raise_monthly.text()},
            {"raise_cash", next.raise_cash.text()},
            {"can_be_chosen", next.can_be_chosen},
            {"give_up", next.give_up},
            {"gained", next.gained},
            {"worth", next.worth.text()},
            {"proven", next.proven}};
}

Json miss_json(const FitMiss& miss) {
    return {{"least_over_monthly", miss.least_monthly.text()},
            {"least_over_cash", miss.least_cash.text()},
            {"in_one_home", miss.in_one_home},
            {"proven", miss.proven}};
}

Json home_json(const FitHome& home) {
    Json json = {{"lot", home.lot},
                 {"barred", home.barred},
                 {"fits", home.fits},
                 {"proven", home.proven},
                 {"cheapest", home.cheapest},
                 {"worth", home.worth.text()},
                 {"most_worth", home.most.text()},
                 {"gap", (home.most - home.worth).text()},
                 {"nodes", home.nodes}};
    json["chosen"] = Json::array();
    for (const FitWish& wish : home.chosen) json["chosen"].push_back(priced_json(wish));
    json["needed"] = Json::array();
    for (const FitAlong& along : home.along) {
        json["needed"].push_back(
            {{"id", along.id}, {"name", along.name}, {"price", along.price.text()}});
    }
    json["held"] = Json::array();
    for (const FitWish& wish : home.held) json["held"].push_back(wish_json(wish));
    json["left_out"] = Json::array();
    for (const FitLeftOut& left : home.left_out) json["left_out"].push_back(left_out_json(left));
    json["next"] = home.next ? next_json(*home.next) : Json(nullptr);
    json["incentives_lost"] = home.incentives_lost;
    json["over_monthly"] = home.over_monthly.text();
    json["over_cash"] = home.over_cash.text();
    json["miss"] = home.miss ? miss_json(*home.miss) : Json(nullptr);
    json["price"] = home.scenario ? Json(home.price.text()) : Json(nullptr);
    json["scenario"] = home.scenario ? json_of(*home.scenario) : Json(nullptr);
    return json;
}

} // namespace

std::string json_text_of(const FitAnswer& answer) {
    Json json = {{"question", "fit"},
                 {"heading", json_of(answer.heading)},
                 {"limits",
                  {{"monthly", answer.limits.monthly.text()}, {"cash", answer.limits.cash.text()}}},
                 {"lots", answer.lots}};
    json["scenarios"] = Json::array();
    for (const FitScenario& scenario : answer.scenarios) {
        Json homes = Json::array();
        for (const FitHome& home : scenario.homes) homes.push_back(home_json(home));
        json["scenarios"].push_back({{"terms", json_of(scenario.terms)},
                                     {"best_lot", scenario.homes[scenario.best].lot},
                                     {"homes", std::move(homes)}});
    }
    json["cautions"] = cautions_json(loan_cautions(answer.heading, terms_of(answer.scenarios)));
    return written(json);
}

} // namespace quoin
