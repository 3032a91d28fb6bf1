// Rendering what the furnished model shows.
#include <quoin/answers/shown.hpp>

#include "shown_fields.hpp"
#include "words/shown.hpp"
#include <quoin/render/blocks.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>
#include <quoin/words/reasons.hpp>

namespace quoin {

namespace {

std::string standing_text(const ShownItem& item, const Catalogue& say) {
    if (item.standing == ShownStanding::yours_partly && !item.your_level.empty()) {
        return say.shown.yours(item.your_level);
    }
    return say.shown.standing(item.standing);
}

std::string price_text(const ShownItem& item) {
    const bool priced = item.price && item.standing != ShownStanding::included &&
                        item.standing != ShownStanding::free_choice;
    return priced ? dollars(*item.price) : std::string{};
}

/// "Kitchen counters: quartz", "Can lights, 6 of them".
std::string name_text(const ShownItem& item, const Catalogue& say) {
    const std::string name =
        item.as_shown.empty() ? item.name : say.shown.named(item.name, item.as_shown);
    if (!item.quantity) return name;
    return say.shown.counted(name, quantity_text(*item.quantity, item.unit, say));
}

void add_shown(const ShownItem& item, Table& table, const Catalogue& say) {
    table.row({"  " + name_text(item, say), standing_text(item, say), price_text(item)});
    table.remark(words_of(item.why_not, say), 84);
}

std::string model_text(const ShownAnswer& answer, const ShownWords& say) {
    if (answer.model_lot.empty()) return say.model(answer.model_plan, answer.model_elevation);
    return say.model_on_lot(answer.model_plan, answer.model_elevation, answer.model_lot);
}

/// What comes with the home in an area, then what the model shows there.
void add_area(const ShownAnswer& answer, const std::string& area, Table& table,
              const Catalogue& say) {
    for (const IncludedItem& included : answer.included) {
        if (included.area != area) continue;
        table.words(included.text, "  + ", "    ", 88);
    }
    for (const ShownItem& item : answer.items) {
        if (item.area == area) add_shown(item, table, say);
    }
}

} // namespace

Blocks blocks_of(const ShownAnswer& answer, const Catalogue& say) {
    Blocks out = heading_text(answer.heading, say.shown.title(), say);
    out += paragraph(model_text(answer, say.shown));
    if (!answer.model_note.empty()) out += paragraph(answer.model_note);
    out += paragraph(say.shown.how_to_read());
    Table table({{"", Align::left, 58, 56, 58},
                 {say.shown.for_you(), Align::left, 30, 16},
                 {say.shown.as_shown(), Align::right, 12, 11}});
    for (const std::string& area : answer.areas) {
        table.gap();
        table.title(area);
        add_area(answer, area, table, say);
    }
    table.rule();
    table.row({say.shown.available(), "", dollars(answer.shown_total)});
    table.row({say.shown.missing(), "", dollars(answer.missing)});
    out += Blocks("\n") + table;
    return out + "\n" + Indented{say.shown.whose_prices(), "", ""};
}

void fields(auto& v, Of<IncludedItem> auto& item) {
    v("area", item.area);
    v("text", item.text);
}

void fields(auto& v, Of<ShownAnswer> auto& answer) {
    v.named("FurnishedModel");
    v.constant("question", "shown");
    v("heading", answer.heading);
    v.object("model", [&] {
        v("plan", answer.model_plan);
        v("elevation", answer.model_elevation);
        v("lot", answer.model_lot);
        v("note", answer.model_note);
    });
    v("included", answer.included);
    v("items", answer.items);
    v("shown_total", answer.shown_total);
    v("missing", answer.missing);
}

template std::string json_text_of(const ShownAnswer&, const Catalogue&);

template const Shape& shape_of<ShownAnswer>();
template std::optional<ShownAnswer> read_answer(const Document&, Findings&);

} // namespace quoin
