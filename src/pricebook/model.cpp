// Reading what the furnished model shows.
#include "book_reader.hpp"

namespace quoin {
namespace {

/// An id among an option's levels or choices, or nothing where the member is absent.
template <class Item>
std::optional<Index<Item>> pick_member(Reader& item, std::string_view key,
                                       const std::vector<Item>& items, Noun what) {
    return item.has(key) ? index_member(item, key, items, what) : std::nullopt;
}

Shown read_shown(Reader& item, const PriceBook& book) {
    Shown shown;
    shown.text = item.text_or("text", "");
    if (!item.has("option")) {
        shown.area = index_or_first(item, "area", book.areas, Noun::area);
        return shown;
    }
    shown.option = index_member(item, "option", book.options, Noun::option);
    if (!shown.option) {
        for (const std::string_view key : {"level", "choice", "quantity", "spend"}) item.leave(key);
        return shown;
    }
    const Option& option = at(book.options, *shown.option);
    shown.area = option.area;
    shown.level = pick_member(item, "level", option.levels, Noun::level);
    shown.choice = pick_member(item, "choice", option.choices, Noun::choice);
    shown.quantity = item.maybe_decimal("quantity");
    shown.spend = item.maybe_money("spend");
    if (option.kind == OptionKind::levels && !item.has("level")) {
        item.report(problems::member_missing(item.here(), "level"));
    }
    return shown;
}

} // namespace

void read_model(Reader& root, PriceBook& book) {
    root.object("model", [&](Reader& item) {
        FurnishedModel model;
        const auto plan = index_member(item, "plan", book.plans, Noun::plan);
        item.leave("elevation"); // nothing can be said of it where the plan is not there
        if (plan) {
            model.plan = *plan;
            const auto& elevations = at(book.plans, *plan).elevations;
            model.elevation = index_or_first(item, "elevation", elevations, Noun::elevation);
        }
        if (item.has("lot")) model.lot = index_member(item, "lot", book.lots, Noun::lot);
        model.note = item.text_or("note", "");
        model.shows = item.list("shows", [&](Reader& shown) { return read_shown(shown, book); });
        book.model = std::move(model);
    });
}

} // namespace quoin
