// Items of a list by their ids.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/exact/index.hpp>

namespace quoin {

/// Index of the item with this id, or nothing.
template <class Item>
[[nodiscard]] std::optional<Index<Item>> index_of(const std::vector<Item>& items,
                                                  std::string_view id) {
    for (const Index<Item> index : indexes_of(items)) {
        if (at(items, index).id == id) return index;
    }
    return std::nullopt;
}

template <class Item>
[[nodiscard]] std::vector<std::string> ids_of(const std::vector<Item>& items) {
    std::vector<std::string> ids;
    for (const Item& item : items) ids.push_back(item.id);
    return ids;
}

} // namespace quoin
