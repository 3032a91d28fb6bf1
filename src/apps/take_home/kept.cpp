// Keeping the members that are named.
#include "kept.hpp"

#include <algorithm>
#include <optional>

#include <quoin/text/language.hpp>

namespace quoin::apps {
namespace {

const Member* named(const Members& members, std::string_view name) {
    const auto found = std::find_if(members.begin(), members.end(), [&](const Member& member) {
        return member.name == name || (member.name == "*" && name != "comment");
    });
    return found == members.end() ? nullptr : &*found;
}

std::optional<Value> kept_value(const Value& value, const Members& members);

/// Of a list, what is left of each item; of an object, what may go of it.
std::optional<Value> kept_items(const Value& value, const Members& members) {
    Value left = value;
    left.items.clear();
    left.keys.clear();
    const bool object = value.kind == Value::Kind::object;
    for (std::size_t i = 0; i < value.items.size(); ++i) {
        const Member* may = object ? named(members, value.keys[i].name) : nullptr;
        const bool text = object && members.empty() && is_language(value.keys[i].name);
        if (object && may == nullptr && !text) continue;
        auto item = kept_value(value.items[i], may != nullptr ? may->members : members);
        if (!item) continue;
        if (object) left.keys.push_back(value.keys[i]);
        left.items.push_back(std::move(*item));
    }
    if (object && left.items.empty() && !value.items.empty()) return std::nullopt;
    return left;
}

bool is_texts(const Value& value) {
    return std::any_of(value.keys.begin(), value.keys.end(),
                       [](const Key& key) { return is_language(key.name); });
}

std::optional<Value> kept_value(const Value& value, const Members& members) {
    if (value.kind != Value::Kind::list && value.kind != Value::Kind::object) return value;
    static const Members no_members;
    return kept_items(value, is_texts(value) ? no_members : members);
}

/// The member that a column of a list of lots stands for.
std::string_view member_of(std::string_view column) {
    constexpr std::string_view measure = "measure.";
    if (column.substr(0, measure.size()) == measure) return "measures";
    const std::size_t dot = column.rfind('.');
    const bool in_language = dot != std::string_view::npos && is_language(column.substr(dot + 1));
    return in_language ? column.substr(0, dot) : column;
}

} // namespace

Value kept(const Value& object, const Members& members) {
    return kept_items(object, members).value_or(Value{});
}

Value kept_rows(const Value& rows, const Members& members) {
    Value left = rows;
    for (Value& row : left.items) {
        Value cells = row;
        cells.items.clear();
        cells.keys.clear();
        for (std::size_t i = 0; i < row.items.size(); ++i) {
            if (named(members, member_of(row.keys[i].name)) == nullptr) continue;
            cells.keys.push_back(row.keys[i]);
            cells.items.push_back(row.items[i]);
        }
        row = std::move(cells);
    }
    return left;
}

} // namespace quoin::apps
