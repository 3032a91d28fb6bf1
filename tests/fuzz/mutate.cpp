// Mutations of a tree of values.
#include "mutate.hpp"

#include <algorithm>
#include <array>

#include "shipped.hpp"

namespace quoin::fuzz {
namespace {

/// Where figures and days turn over: zero, the least there is, bounds, the largest that are read.
constexpr std::array edges = {
    "0",
    "1",
    "-1",
    "2",
    "3",
    "0.01",
    "-0.01",
    "0.001",
    "0.000000001",
    "99.999999999",
    "100",
    "100.001",
    "80",
    "80.01",
    "79.999",
    "50",
    "12",
    "360",
    "480",
    "481",
    "1000",
    "5000",
    "99999",
    "100000",
    "360000",
    "412000",
    "766550",
    "832750",
    "1249125",
    "999999999.99",
    "1000000000",
    "9000000000",
    "1e9",
    "92233720368547758.07",
    "-92233720368547758.08",
    "2026-11-24",
    "2026-12-31",
    "2027-01-01",
    "2028-02-29",
    "2031-11-14",
    "2031-12-20",
    "2000-01-01",
    "1900-01-01",
    "9999-12-31",
    "0001-01-01",
    "",
    "exempt",
    "subsequent",
    "financed",
    "cash",
};

} // namespace

Mutator::Mutator(const std::vector<Seed>& seeds) {
    for (const Seed& seed : seeds) {
        Findings findings;
        const Document document = document_of(seed.bytes, findings);
        if (findings.none()) gather(document.root, "");
    }
    for (const auto& [key, values] : values_) keys_.push_back(key);
}

void Mutator::gather(const Value& value, const std::string& key) {
    std::vector<Value>& known = values_[key];
    if (known.size() < 64) known.push_back(value);
    for (std::size_t i = 0; i < value.items.size(); ++i) {
        gather(value.items[i], value.kind == Value::Kind::object ? value.keys[i].name : key);
    }
}

void Mutator::list_places(Value& value, const std::string& key, std::vector<Place>& places) {
    for (std::size_t i = 0; i < value.items.size(); ++i) {
        const std::string& name = value.kind == Value::Kind::object ? value.keys[i].name : key;
        places.push_back({&value.items[i], name, &value, i});
        list_places(value.items[i], name, places);
    }
}

/// A number near the one that stands there, or one out of another time or size.
void Mutator::change_literal(Value& value, const std::string& key) {
    std::string& text = value.literal;
    const auto& known = values_[key];
    const std::size_t digit = text.find_first_of("0123456789");
    switch (below(8)) {
    case 0:
    case 1:
        text = edges[below(edges.size())];
        break;
    case 2:
    case 3:
        if (!known.empty()) value = known[below(known.size())];
        break;
    case 4:
        if (digit != std::string::npos) {
            const std::size_t at = digit + below(text.size() - digit);
            text[at] = static_cast<char>('0' + below(10));
        }
        break;
    case 5:
        text += static_cast<char>('0' + below(10));
        break;
    case 6:
        if (!text.empty()) text.erase(below(text.size()), 1);
        break;
    default:
        if (value.kind == Value::Kind::text && below(4) == 0) {
            text = std::string(below(4) == 0 ? 3000 : 3, 'x');
        } else {
            text = text.substr(0, 1) == "-" ? text.substr(1) : "-" + text;
        }
    }
    if (value.kind == Value::Kind::boolean) text = below(2) == 0 ? "true" : "false";
    const bool digits = !text.empty() && text.size() < 18 &&
                        text.find_first_not_of("0123456789") == std::string::npos &&
                        (text.size() == 1 || text.front() != '0');
    if (value.kind == Value::Kind::number && !digits) value.kind = Value::Kind::text;
}

void Mutator::add_member(Value& object) {
    const std::string& key = keys_[below(keys_.size())];
    const auto& known = values_[key];
    const auto same = std::find_if(object.keys.begin(), object.keys.end(),
                                   [&](const Key& other) { return other.name == key; });
    if (key.empty() || same != object.keys.end()) return;
    object.keys.push_back({key, {}});
    object.items.push_back(known[below(known.size())]);
}

void Mutator::change(Value& root) {
    std::vector<Place> places;
    list_places(root, "", places);
    if (places.empty()) return add_member(root);
    const Place place = places[below(places.size())];
    Value& value = *place.value;
    const bool leaf = value.items.empty() && value.kind != Value::Kind::list;
    const bool in_list = place.parent->kind == Value::Kind::list;
    const auto at = place.parent->items.begin() + static_cast<std::ptrdiff_t>(place.index);
    switch (below(10)) {
    case 0: // left out
        place.parent->items.erase(at);
        if (!in_list) {
            place.parent->keys.erase(place.parent->keys.begin() +
                                     static_cast<std::ptrdiff_t>(place.index));
        }
        break;
    case 1: // once more, or in another's place
        if (in_list && place.parent->items.size() < 40) {
            Value copy = value;
            place.parent->items.push_back(std::move(copy));
        } else {
            const Value other = *places[below(places.size())].value;
            value = other;
        }
        break;
    case 2: // as it stands elsewhere under this name
    case 3:
        if (const auto& known = values_[place.key]; !known.empty()) {
            value = known[below(known.size())];
        }
        break;
    case 4:
        if (value.kind == Value::Kind::object) {
            add_member(value);
        } else if (place.parent->kind == Value::Kind::object) {
            add_member(*place.parent);
        }
        break;
    case 5:
        if (in_list) std::swap(value, place.parent->items.front());
        break;
    default:
        if (leaf) {
            change_literal(value, place.key);
        } else {
            change(value);
        }
    }
}

std::string Mutator::changed(const std::string& bytes, std::uint64_t seed) {
    random_.seed(seed);
    Findings findings;
    Document document = document_of(bytes, findings);
    if (!findings.none()) return bytes;
    for (std::size_t times = 1 + below(4); times > 0; --times) change(document.root);
    return write_json(document.root);
}

std::string Mutator::crossed(const std::string& one, const std::string& other, std::uint64_t seed) {
    random_.seed(seed);
    Findings findings;
    Document into = document_of(one, findings);
    const Document from = document_of(other, findings);
    if (!findings.none()) return one;
    for (std::size_t i = 0; i < from.root.keys.size(); ++i) {
        if (below(3) != 0) continue;
        for (std::size_t j = 0; j < into.root.keys.size(); ++j) {
            if (into.root.keys[j].name == from.root.keys[i].name) {
                into.root.items[j] = from.root.items[i];
            }
        }
    }
    return write_json(into.root);
}

} // namespace quoin::fuzz
