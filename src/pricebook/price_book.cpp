// Reading a price book: community, areas, stages, plans, included features.
#include "book_reader.hpp"

namespace quoin {
namespace {

template <class Item>
std::vector<Item> read_named(Reader& root, std::string_view key, Noun what, bool required) {
    std::vector<Item> list;
    root.each(
        key,
        [&](Reader& item) {
            Item named{{item.id("id"), item.name("name")}};
            distinct_id(item, list, named.id, what);
            list.push_back(std::move(named));
        },
        required);
    return list;
}

/// Of a plan at this price; 0 where it has none, which has been said.
std::vector<Elevation> read_elevations(Reader& plan, Money base) {
    std::vector<Elevation> list;
    plan.each(
        "elevations",
        [&](Reader& item) {
            Elevation elevation;
            elevation.id = item.id("id");
            elevation.name = item.name("name");
            elevation.price = item.money("price");
            elevation.note = item.text_or("note", "");
            elevation.look = read_look(item);
            if (base > Money{} && base + elevation.price <= Money{}) {
                item.report(problems::elevation_takes_all(item.spot("price")));
            }
            distinct_id(item, list, elevation.id, Noun::elevation);
            list.push_back(std::move(elevation));
        },
        true);
    return list;
}

Money positive_money(Reader& reader, std::string_view key) {
    reader.must_have(key);
    const auto amount = reader.maybe_money(key);
    if (amount && *amount <= Money{}) {
        reader.report(problems::amount_not_above_zero(reader.spot(key)));
    }
    return amount.value_or(Money{});
}

void read_plans(Reader& root, PriceBook& book) {
    root.each(
        "plans",
        [&](Reader& item) {
            Plan plan;
            plan.id = item.id("id");
            plan.name = item.name("name");
            plan.style = item.name_or("style", "");
            plan.note = item.text_or("note", "");
            plan.base_price = positive_money(item, "base_price");
            plan.bedrooms = item.decimal("bedrooms");
            plan.bathrooms = item.decimal("bathrooms");
            plan.square_feet = item.decimal("square_feet");
            plan.measures = measures(item, "measures");
            plan.elevations = read_elevations(item, plan.base_price);
            plan.drawing = file_below(item, "drawing");
            distinct_id(item, book.plans, plan.id, Noun::plan);
            book.plans.push_back(std::move(plan));
        },
        true, caps::plans);
}

void read_community(Reader& root, PriceBook& book) {
    root.object(
        "community",
        [&](Reader& item) {
            book.community.name = item.name("name");
            book.community.builder = item.name("builder");
            book.community.place = item.id("place");
            book.community.note = item.text_or("note", "");
            book.community.color = color_for_letters(item, "color");
        },
        true);
    book.map = file_below(root, "map");
    book.version = root.name("version");
    const auto effective = root.maybe_date("effective");
    const auto expires = root.maybe_date("expires");
    for (const std::string_view key : {"effective", "expires"}) root.must_have(key);
    if (effective && expires && *expires < *effective) {
        root.report(problems::dates_reversed(root.spot("expires"), "effective", "expires"));
    }
    book.effective = effective.value_or(Date{});
    book.expires = expires.value_or(Date{});
}

void read_included(Reader& root, PriceBook& book) {
    root.each("included", [&](Reader& item) {
        Included included;
        included.area = index_or_first(item, "area", book.areas, Noun::area);
        included.text = item.text("text");
        if (item.has("option")) {
            included.option = index_member(item, "option", book.options, Noun::option);
        }
        included.plans = index_list(item, "plans", book.plans, Noun::plan);
        book.included.push_back(std::move(included));
    });
}

} // namespace

std::vector<Measure> measures(Reader& reader, std::string_view key) {
    std::vector<Measure> list;
    reader.members(key, [&](const Key& name, const Spot& spot) {
        if (const auto value = as_decimal(spot, reader.findings())) {
            list.push_back({name.name, *value});
        }
    });
    return list;
}

PriceByPlan price_by_plan(Reader& reader, std::string_view key, const PriceBook& book) {
    const Value* member = reader.raw(key);
    std::vector<std::optional<Money>> prices(book.plans.size());
    if (member == nullptr || member->kind != Value::Kind::object) {
        std::fill(prices.begin(), prices.end(), reader.money(key));
        return PriceByPlan(std::move(prices));
    }
    std::optional<Money> others;
    reader.members(key, [&](const Key& name, const Spot& spot) {
        const auto price = as_money(spot, reader.findings());
        if (name.name == "*") {
            others = price;
            return;
        }
        const auto plan = look_up(book.plans, Noun::plan, name.name, spot, reader.findings());
        if (plan) prices[plan->position()] = price;
    });
    for (auto& price : prices) {
        if (!price) price = others;
    }
    return PriceByPlan(std::move(prices));
}

PriceBook read_price_book(const Document& document, const Document* lots, Findings& findings) {
    PriceBook book;
    book.file = document.source->name();
    Reader root(document.root, Path{}, findings);
    if (document.root.kind != Value::Kind::object) return book;
    if (!root.format_is("quoin/pricebook/1")) return book;
    read_community(root, book);
    book.areas = read_named<Area>(root, "areas", Noun::area, true);
    book.stages = read_named<Stage>(root, "stages", Noun::stage, false);
    read_plans(root, book);
    read_lots(root, lots, book);
    read_options(root, book);
    read_included(root, book);
    read_offers(root, book);
    read_model(root, book);
    root.finish();
    return book;
}

} // namespace quoin
