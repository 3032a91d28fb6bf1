// Writing the tour as JSON.
#include "tour_json.hpp"

#include "shown_json.hpp"
#include <quoin/exact/index.hpp>
#include <quoin/render/tour.hpp>
#include <quoin/render/words.hpp>

namespace quoin {
namespace {

std::string_view name_of(OptionKind kind) {
    switch (kind) {
    case OptionKind::upgrade:
        return "upgrade";
    case OptionKind::levels:
        return "levels";
    case OptionKind::choice:
        return "choice";
    case OptionKind::allowance:
        return "allowance";
    case OptionKind::package:
        return "package";
    }
    return {};
}

Json money(const std::optional<Money>& amount) {
    return amount ? Json(amount->text()) : Json(nullptr);
}

/// A pick as an inquiry writes it.
Json pick_json(const PriceBook& book, const Pick& pick) {
    const Option& option = at(book.options, pick.option);
    Json json = {{"option", option.id}};
    if (pick.level >= 0) json["level"] = at(option.levels, pick.level).id;
    if (pick.choice >= 0) json["choice"] = at(option.choices, pick.choice).id;
    if (pick.quantity) json["quantity"] = pick.quantity->text();
    if (pick.spend) json["spend"] = pick.spend->text();
    return json;
}

Json touch_json(const PriceBook& book, const TourTouch& touch) {
    Json json = {{"takes_out", touch.takes_out}, {"price", touch.price.text()}};
    add_difference(touch.added, json);
    json["jumps"] = Json::array();
    for (const Jump& jump : touch.added.jumps) json["jumps"].push_back(words(jump, touch.added));
    json["along"] = touch.along;
    json["instead_of"] = touch.instead;
    json["brings"] = Json::array();
    for (const Pick& pick : touch.brings) json["brings"].push_back(pick_json(book, pick));
    json["drops"] = Json::array();
    for (const int option : touch.drops) json["drops"].push_back(at(book.options, option).id);
    return json;
}

Json form_json(const PriceBook& book, const TourForm& form) {
    return {{"id", form.id},
            {"name", form.name},
            {"note", form.note},
            {"state", std::string(name_of(form.state))},
            {"why", form.why},
            {"price", money(form.price)},
            {"touch", form.touch ? touch_json(book, *form.touch) : Json(nullptr)}};
}

Json quantity_json(const Option& option, const TourOption& item) {
    const Quantity& quantity = option.quantity;
    if (quantity.from == Quantity::From::one) return nullptr;
    Json json = {{"now", item.quantity.text()},
                 {"unit", std::string(name_of(option.unit))},
                 {"asked", quantity.from == Quantity::From::buyer}};
    if (quantity.from != Quantity::From::buyer) return json;
    json["lowest"] = quantity.lowest.text();
    json["highest"] = quantity.highest.text();
    json["step"] = quantity.step.text();
    json["usual"] = quantity.usual.text();
    json["limits"] = quantity_limits(option);
    return json;
}

Json option_json(const PriceBook& book, const TourOption& item) {
    const Option& option = at(book.options, item.option);
    Json json = {
        {"id", option.id},      {"name", option.name}, {"kind", std::string(name_of(option.kind))},
        {"text", option.text},  {"note", option.note}, {"picked", item.picked},
        {"agreed", item.agreed}};
    json["wish"] = item.wish > 0 ? Json(item.wish) : Json(nullptr);
    json["structural"] = option.structural;
    json["work"] = json_of(option.work);
    json["cutoff"] = option.cutoff >= 0 ? at(book.stages, option.cutoff).name : std::string{};
    json["cutoff_passed"] = item.cutoff_passed;
    json["one_of"] = option.one_of;
    json["later"] = option.later ? Json{{"estimate", option.later->estimate.text()},
                                        {"each", option.later->each},
                                        {"note", option.later->note}}
                                 : Json(nullptr);
    json["quantity"] = quantity_json(option, item);
    json["budget"] = money(item.budget);
    json["spend"] = money(item.spend);
    json["parts"] = item.parts;
    json["forms"] = Json::array();
    for (const TourForm& form : item.forms) json["forms"].push_back(form_json(book, form));
    return json;
}

Json area_json(const PriceBook& book, const TourArea& area) {
    Json json = {{"id", area.id}, {"name", area.name}, {"included", area.included}};
    json["shown"] = Json::array();
    for (const ShownItem& item : area.shown) json["shown"].push_back(json_of(item));
    json["options"] = Json::array();
    for (const TourOption& item : area.options) json["options"].push_back(option_json(book, item));
    json["requests"] = Json::array();
    for (const Request& request : area.requests) {
        json["requests"].push_back({{"text", request.text}, {"estimate", money(request.estimate)}});
    }
    return json;
}

Json incentive_json(const PriceBook& book, const IncentiveOffer& offer) {
    const Incentive& incentive = at(book.incentives, offer.incentive);
    Json json = {{"id", incentive.id},
                 {"name", incentive.name},
                 {"amount", offer.whole.text()},
                 {"left", offer.left.text()},
                 {"conditions", incentive.conditions},
                 {"lender", incentive.lender},
                 {"expires", date_json(incentive.expires)},
                 {"close_by", date_json(incentive.close_by)},
                 {"why_not", offer.why_not}};
    json["uses"] = Json::array();
    for (const IncentiveUse use : incentive.uses) {
        json["uses"].push_back(std::string(name_of(use)));
    }
    json["used"] = Json::array();
    for (const IncentiveUsed& used : offer.used) {
        json["used"].push_back({{"use", std::string(name_of(used.use))},
                                {"amount", money(used.asked)},
                                {"given", used.given.text()}});
    }
    return json;
}

} // namespace

std::string json_text_of(const TourAnswer& answer) {
    Json json = {{"question", "tour"},
                 {"heading", json_of(answer.heading)},
                 {"contract_price", answer.contract_price.text()},
                 {"options", answer.options_price.text()},
                 {"stage", answer.stage},
                 {"model", answer.model},
                 {"scenario", json_of(answer.scenario)}};
    json["areas"] = Json::array();
    for (const TourArea& area : answer.areas)
        json["areas"].push_back(area_json(*answer.book, area));
    json["incentives"] = Json::array();
    for (const IncentiveOffer& offer : answer.incentives)
        json["incentives"].push_back(incentive_json(*answer.book, offer));
    json["cautions"] = cautions_json(cautions_of(answer));
    return written(json);
}

} // namespace quoin
