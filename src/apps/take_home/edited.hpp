// Changing values that were read: members found, set and taken out.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <quoin/text/value.hpp>

namespace quoin::apps {

inline Value text_of_value(std::string text) {
    Value value;
    value.kind = Value::Kind::text;
    value.literal = std::move(text);
    return value;
}

inline Value list_of(std::vector<Value> items) {
    Value value;
    value.kind = Value::Kind::list;
    value.items = std::move(items);
    return value;
}

inline Value object_of(std::string_view name, Value inner) {
    Value value;
    value.kind = Value::Kind::object;
    value.keys.push_back({std::string(name), {}});
    value.items.push_back(std::move(inner));
    return value;
}

/// A member that may be changed, or nullptr.
inline Value* member(Value& object, std::string_view name) {
    for (std::size_t i = 0; i < object.keys.size(); ++i) {
        if (object.keys[i].name == name) return &object.items[i];
    }
    return nullptr;
}

inline void set(Value& object, std::string_view name, Value value) {
    if (Value* there = member(object, name)) {
        *there = std::move(value);
        return;
    }
    object.keys.push_back({std::string(name), {}});
    object.items.push_back(std::move(value));
}

inline void take_out(Value& object, std::string_view name) {
    for (std::size_t i = object.keys.size(); i-- > 0;) {
        if (object.keys[i].name != name) continue;
        object.keys.erase(object.keys.begin() + static_cast<std::ptrdiff_t>(i));
        object.items.erase(object.items.begin() + static_cast<std::ptrdiff_t>(i));
    }
}

/// Of a text member; empty where there is none.
inline std::string text_in(const Value& object, std::string_view name) {
    const Value* value = object.find(name);
    return value == nullptr ? std::string() : value->literal;
}

/// The items of a list member that pass; as many as were taken out are told.
std::size_t keep_items(Value& object, std::string_view list, const auto& passes) {
    Value* value = member(object, list);
    if (value == nullptr) return 0;
    return std::erase_if(value->items, [&](Value& item) { return !passes(item); });
}

/// Whether a list of names has one; true where there is no list: it sets no limit.
inline bool allows_name(const Value* names, std::string_view name) {
    if (names == nullptr || names->items.empty()) return true;
    return std::any_of(names->items.begin(), names->items.end(),
                       [&](const Value& item) { return item.literal == name; });
}

} // namespace quoin::apps
