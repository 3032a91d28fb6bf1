// Names in a file turned into indexes: an id that is not there is a problem that names the nearest.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/ids.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

/// The index behind an id, or nothing with a problem where there is none. Silent for an empty id,
/// and for a list left empty by a mistake: that has been reported.
template <class Item>
std::optional<Index<Item>> look_up(const std::vector<Item>& items, Noun what, const std::string& id,
                                   const Spot& spot, Findings& findings) {
    const auto index = index_of(items, id);
    const bool reported = id.empty() || (items.empty() && !findings.none()) || findings.full();
    if (!index && !reported) {
        findings.add(problems::name_unknown(spot, what, id, nearest(id, ids_of(items))));
    }
    return index;
}

/// The member `key` of an object as an index; a missing member is a problem.
template <class Item>
std::optional<Index<Item>> index_member(Reader& reader, std::string_view key,
                                        const std::vector<Item>& items, Noun what) {
    const std::string id = reader.text(key);
    return look_up(items, what, id, reader.spot(key), reader.findings());
}

/// The same; the first, not to be used, where there is a problem.
template <class Item>
Index<Item> index_or_first(Reader& reader, std::string_view key, const std::vector<Item>& items,
                           Noun what) {
    return index_member(reader, key, items, what).value_or(Index<Item>{});
}

/// A list of ids as indexes.
template <class Item>
std::vector<Index<Item>> index_list(Reader& reader, std::string_view key,
                                    const std::vector<Item>& items, Noun what) {
    std::vector<Index<Item>> indexes;
    reader.items(key, [&](const Spot& spot) {
        const auto id = as_text(spot, reader.findings());
        if (!id) return;
        const auto index = look_up(items, what, *id, spot, reader.findings());
        if (index) indexes.push_back(*index);
    });
    return indexes;
}

/// Reports an id that an earlier item has.
template <class Item>
void distinct_id(Reader& reader, const std::vector<Item>& before, const std::string& id,
                 Noun what) {
    if (!id.empty() && index_of(before, id)) {
        reader.report(problems::id_repeated(reader.spot("id"), what));
    }
}

} // namespace quoin
