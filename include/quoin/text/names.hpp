// Names in a file turned into indexes: an id that is not there is a problem that names the nearest.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// Index of the item with this id, or -1.
template <class Item>
[[nodiscard]] int index_of(const std::vector<Item>& items, std::string_view id) {
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (items[i].id == id) return static_cast<int>(i);
    }
    return -1;
}

template <class Item>
[[nodiscard]] std::vector<std::string> ids_of(const std::vector<Item>& items) {
    std::vector<std::string> ids;
    for (const Item& item : items) ids.push_back(item.id);
    return ids;
}

/// The index behind an id, or -1 with a problem where there is none. Silent for an empty id, and
/// for a list left empty by a mistake: that has been reported.
template <class Item>
int look_up(const std::vector<Item>& items, std::string_view what, const std::string& id,
            const Spot& spot, Findings& findings) {
    const int index = index_of(items, id);
    const bool reported = id.empty() || (items.empty() && !findings.none()) || findings.full();
    if (index < 0 && !reported) {
        findings.add(problems::name_unknown(spot, what, id, nearest(id, ids_of(items))));
    }
    return index;
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

} // namespace quoin
