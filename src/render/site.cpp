// Rendering the lots and plans of a community.
#include <quoin/answers/site.hpp>

#include "look_fields.hpp"
#include "shared_fields.hpp"
#include "site_svg.hpp"
#include "words/parts.hpp"
#include "words/site.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/cautions.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>
#include <quoin/words/measures.hpp>
#include <quoin/words/reasons.hpp>

namespace quoin {
namespace {

/// "rear setback 31 ft"
std::string measure_text(const Measure& measure, const Catalogue& say) {
    const SaidMeasure said = said_measure(measure.name, say);
    return say.site.measured(said.name, grouped(measure.value), said.unit);
}

/// How large a lot is, and whether it can be under water.
std::string ground_text(const Lot& lot, const Catalogue& say) {
    std::vector<std::string> texts;
    for (const Measure& measure : lot.measures) texts.push_back(measure_text(measure, say));
    if (lot.flood_zone) texts.push_back(say.site.flood_zone());
    return joined(texts);
}

std::string for_you(const SiteLot& lot, const SiteWords& say) {
    if (lot.chosen) return say.yours();
    if (lot.lot.status != LotStatus::free) return {};
    return lot.fits ? say.plan_fits() : say.plan_does_not_fit();
}

std::string for_you(const SitePlan& plan, const SiteWords& say) {
    if (plan.chosen) return say.yours();
    return plan.fits ? say.fits_your_lot() : say.does_not_fit_your_lot();
}

/// What the home comes to there.
std::string move_text(const SiteMove& move, const Catalogue& say) {
    const std::string price = signed_dollars(move.price);
    if (!move.added.available()) {
        return say.site.no_loan(price, words(move.added.refusals.front(), say));
    }
    return say.site.move(price, signed_dollars(move.added.per_month),
                         signed_dollars(move.added.cash));
}

void add_falls_out(const std::vector<FallsOut>& falls_out, Table& table, const Catalogue& say) {
    for (const FallsOut& one : falls_out) {
        table.remark(say.site.falls_out(one.name, words_of(one.why, say)), 88);
    }
}

void add_lot(const SiteLot& lot, Table& table, const Catalogue& catalogue) {
    const SiteWords& say = catalogue.site;
    table.row({lot.lot.id, catalogue.parts.lot_status(lot.lot.status),
               catalogue.parts.grade(lot.lot.grade),
               lot.every_plan ? say.every_plan() : joined(lot.plans), for_you(lot, say),
               dollars(lot.lot.premium)});
    table.remark(ground_text(lot.lot, catalogue), 88);
    table.remark(lot.lot.note, 88);
    if (!lot.lot.office_note.empty())
        table.remark(catalogue.parts.office_note(lot.lot.office_note), 88);
    if (!lot.move) return;
    table.remark(move_text(*lot.move, catalogue), 88);
    add_falls_out(lot.falls_out, table, catalogue);
}

void add_plan(const SitePlan& plan, Table& table, const Catalogue& catalogue) {
    const SiteWords& say = catalogue.site;
    table.row({plan.plan.name, plan.plan.style,
               say.size(grouped(plan.plan.square_feet), plan.plan.bedrooms.text(),
                        plan.plan.bathrooms.text()),
               for_you(plan, say), dollars(plan.plan.base_price)});
    table.remark(plan.plan.note, 88);
    for (const SiteElevation& one : plan.elevations) {
        if (!one.move) continue;
        table.remark(say.elevation(one.elevation.name, move_text(*one.move, catalogue)), 88);
        add_falls_out(one.falls_out, table, catalogue);
    }
}

Cautions cautions_of(const SiteAnswer& answer, const Catalogue& say) {
    Cautions notes = with_loan_cautions({{CautionCode::survey_decides, say.site.survey_decides()}},
                                        answer.heading, {answer.terms}, say);
    notes.push_back(agent_caution(say));
    return notes;
}

} // namespace

Blocks blocks_of(const SiteAnswer& answer, const Catalogue& catalogue) {
    const SiteWords& say = catalogue.site;
    Blocks out = heading_text(answer.heading, say.title(), catalogue);
    if (!answer.note.empty()) out += paragraph(answer.note);
    out += paragraph(say.figured_under(answer.terms.name, terms_line(answer.terms, catalogue)), "",
                     "  ");
    Table lots({{say.lot(), Align::left, 8, 5},
                {"", Align::left, 6, 6},
                {say.ground(), Align::left, 10, 9},
                {say.plans(), Align::left, 34, 24},
                {say.for_you(), Align::left, 24, 18},
                {say.premium(), Align::right, 12, 11}});
    for (const SiteLot& lot : answer.lots) add_lot(lot, lots, catalogue);
    Table plans({{say.plan(), Align::left, 14, 12},
                 {"", Align::left, 10, 10},
                 {"", Align::left, 40, 36},
                 {say.for_you(), Align::left, 24, 22},
                 {say.base_price(), Align::right, 12, 11}});
    for (const SitePlan& plan : answer.plans) add_plan(plan, plans, catalogue);
    return out + "\n" + lots + "\n" + plans + footing_text(cautions_of(answer, catalogue));
}

void fields(auto& v, Of<Measure> auto& measure) {
    v.named("Measure");
    v("name", measure.name);
    v("value", measure.value);
    v.words("words", [&](const Catalogue& say) { return measure_text(measure, say); });
}

void fields(auto& v, Of<FallsOut> auto& one) {
    v.named("FallsOut");
    v("option", one.option);
    v("name", one.name);
    v.words("why", [&](const Catalogue& say) { return words_of(one.why, say); });
}

void fields(auto& v, Of<SiteMove> auto& move) {
    v.named("Move");
    v("price", move.price);
    difference(v, move.added);
}

void fields(auto& v, Of<SiteLot> auto& lot) {
    v.named("Lot");
    v("id", lot.lot.id);
    v("status", lot.lot.status);
    v("premium", lot.lot.premium);
    v("grade", lot.lot.grade);
    v("flood_zone", lot.lot.flood_zone);
    v("plans", lot.plans);
    v("every_plan", lot.every_plan);
    v("note", lot.lot.note);
    v.when(!lot.lot.office_note.empty(), [&] { v("office_note", lot.lot.office_note); });
    v("measures", lot.lot.measures);
    v("chosen", lot.chosen);
    v("fits", lot.fits);
    v.said("can_be_had", [&] { return lot.can_be_had(); });
    v("falls_out", lot.falls_out);
    v("move", lot.move);
}

void fields(auto& v, Of<SiteElevation> auto& one) {
    v.named("Elevation");
    v("id", one.elevation.id);
    v("name", one.elevation.name);
    v("note", one.elevation.note);
    look_fields(v, one.elevation.look);
    v("price", one.elevation.price);
    v("falls_out", one.falls_out);
    v("move", one.move);
}

void fields(auto& v, Of<SitePlan> auto& plan) {
    v.named("Plan");
    v("id", plan.plan.id);
    v("name", plan.plan.name);
    v("style", plan.plan.style);
    v("note", plan.plan.note);
    v("base_price", plan.plan.base_price);
    v("bedrooms", plan.plan.bedrooms);
    v("bathrooms", plan.plan.bathrooms);
    v("square_feet", plan.plan.square_feet);
    v("measures", plan.plan.measures);
    v("elevations", plan.elevations);
    v("chosen", plan.chosen);
    v("fits", plan.fits);
}

void fields(auto& v, Of<SiteAnswer> auto& answer) {
    v.named("Site");
    v.constant("question", "site");
    v("heading", answer.heading);
    v("lot", answer.lot);
    v("plan", answer.plan);
    v("elevation", answer.elevation);
    v("note", answer.note);
    v("terms", answer.terms);
    v("lots", answer.lots);
    v("plans", answer.plans);
    const auto drawn = [&](auto& map) {
        v("north", map.map.north);
        v.words("svg", [&](const Catalogue& say) { return site_svg(answer, say); });
    };
    v.maybe("map", answer.map, drawn, "SiteMap");
    v.words("cautions", [&](const Catalogue& say) { return cautions_of(answer, say); });
}

template std::string json_text_of(const SiteAnswer&, const Catalogue&);

template const Shape& shape_of<SiteAnswer>();
template std::optional<SiteAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
