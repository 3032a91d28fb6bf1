// What the parts of the price-book reader share: the book so far, and names turned into indexes.
#pragma once

#include <string>
#include <vector>

#include <quoin/pricebook/price_book.hpp>
#include <quoin/text/problems.hpp>

namespace quoin {

/// The index behind an id, or -1 with a problem where there is none.
template <class Item>
int look_up(const std::vector<Item>& items, std::string_view what, const std::string& id,
            const Spot& spot, Findings& findings) {
    const int index = index_of(items, id);
    if (index >= 0 || id.empty()) return index;
    std::vector<std::string> known;
    for (const Item& item : items) known.push_back(item.id);
    findings.add(problems::name_unknown(spot, what, id, nearest(id, known)));
    return -1;
}

/// The member `key` of an object as an index; a missing member is a problem.
template <class Item>
int index_member(Reader& reader, std::string_view key, const std::vector<Item>& items,
                 std::string_view what) {
    const std::string id = reader.text(key);
    return look_up(items, what, id, reader.spot(key), reader.findings());
}

/// A list of ids as indexes.
template <class Item>
std::vector<int> index_list(Reader& reader, std::string_view key, const std::vector<Item>& items,
                            std::string_view what) {
    std::vector<int> indexes;
    reader.items(key, [&](const Spot& spot) {
        const auto id = as_text(spot, reader.findings());
        const int index = id ? look_up(items, what, *id, spot, reader.findings()) : -1;
        if (index >= 0) indexes.push_back(index);
    });
    return indexes;
}

/// Reports an id that an earlier item has.
template <class Item>
void distinct_id(Reader& reader, const std::vector<Item>& before, const std::string& id,
                 std::string_view what) {
    if (!id.empty() && index_of(before, id) >= 0) {
        reader.findings().add(problems::id_repeated(reader.spot("id"), what));
    }
}

/// A price for all plans, or one for each: "4200" or {"sorrel": "4200", "*": "4800"}.
PriceByPlan price_by_plan(Reader& reader, std::string_view key, const PriceBook& book);

std::vector<Measure> measures(Reader& reader, std::string_view key);

void read_lots(Reader& root, const Document* list, PriceBook& book);
void read_options(Reader& root, PriceBook& book);
void read_offers(Reader& root, PriceBook& book); ///< incentives and deposits
void read_model(Reader& root, PriceBook& book);

} // namespace quoin
