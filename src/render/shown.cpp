// Rendering what the furnished model shows.
#include <quoin/answers/shown.hpp>

#include <fmt/format.h>

#include "shown_fields.hpp"
#include <quoin/render/table.hpp>
#include <quoin/render/words.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

namespace {

std::string standing_text(const ShownItem& item) {
    if (item.standing == ShownStanding::yours_partly && !item.your_level.empty()) {
        return fmt::format("yours: {}", item.your_level);
    }
    return std::string(name_of(item.standing));
}

std::string price_text(const ShownItem& item) {
    const bool priced = item.price && item.standing != ShownStanding::included &&
                        item.standing != ShownStanding::free_choice;
    return priced ? dollars(*item.price) : std::string{};
}

void add_shown(const ShownItem& item, Table& table) {
    std::string name = item.as_shown.empty() ? item.name : item.name + ": " + item.as_shown;
    if (item.quantity) {
        name += fmt::format(", {}{}", grouped(*item.quantity),
                            item.unit == Unit::each ? " of them"
                                                    : " " + std::string(name_of(item.unit)));
    }
    const auto lines = wrapped(name, 56);
    table.row({"  " + lines.front(), standing_text(item), price_text(item)});
    for (std::size_t i = 1; i < lines.size(); ++i) table.row({"    " + lines[i]});
    if (!item.why_not.empty()) table.title("      " + item.why_not);
}

/// What comes with the home in an area, then what the model shows there.
void add_area(const ShownAnswer& answer, const std::string& area, Table& table) {
    for (const IncludedItem& included : answer.included) {
        if (included.area != area) continue;
        const auto lines = wrapped(included.text, 88);
        table.title("  + " + lines.front());
        for (std::size_t i = 1; i < lines.size(); ++i) table.title("    " + lines[i]);
    }
    for (const ShownItem& item : answer.items) {
        if (item.area == area) add_shown(item, table);
    }
}

} // namespace

std::string text_of(const ShownAnswer& answer, const Catalogue& say) {
    std::string out = heading_text(answer.heading, "What the furnished model shows", say);
    out += fmt::format("the model is a {}, elevation {}{}\n", answer.model_plan,
                       answer.model_elevation,
                       answer.model_lot.empty() ? "" : ", on lot " + answer.model_lot);
    if (!answer.model_note.empty()) out += paragraph(answer.model_note);
    out += "lines with + come with your plan\n";
    Table table({{"", Align::left, 58, 56},
                 {"for you", Align::left, 30, 16},
                 {"as shown", Align::right, 12, 11}});
    for (const std::string& area : answer.areas) {
        table.gap();
        table.title(area);
        add_area(answer, area, table);
    }
    table.rule();
    table.row(
        {"everything shown that your plan and lot can have", "", dollars(answer.shown_total)});
    table.row({"of that, not in your home", "", dollars(answer.missing)});
    out += "\n" + table.text();
    return out + "\n" +
           paragraph("Prices are those of the price book on your plan. 'quoin adds' says what each "
                     "one is a month.",
                     "", "", 100);
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
