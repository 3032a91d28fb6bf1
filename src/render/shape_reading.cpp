// Holding JSON to the shape of an answer, before the answer is read from it.
#include <quoin/render/shape.hpp>

#include <algorithm>
#include <optional>
#include <utility>

#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {
namespace {

using Members = std::vector<const ShapeMember*>;

void gather(const Shape& shape, Members& members) {
    for (const Shape& base : shape.bases) gather(base, members);
    for (const ShapeMember& member : shape.members) members.push_back(&member);
}

bool is_due(const ShapeMember& member, bool refused) {
    return member.there == ShapeMember::There::always ||
           (member.there == ShapeMember::There::unless_refused && !refused);
}

void unknown(const Key& key, const Path& at, const Members& members, Findings& findings) {
    std::vector<std::string> names;
    for (const ShapeMember* member : members) names.push_back(member->name);
    Value named; // the message points at the name, not at the value
    named.place = key.place;
    findings.add(problems::member_unknown({&named, Path{&at, key.name}}, key.name,
                                          nearest(key.name, names)));
}

void hold_object(const Shape& shape, const Spot& spot, Findings& findings) {
    Members members;
    gather(shape, members);
    const Value* refusals = spot.value->find("refusals");
    const bool refused = refusals != nullptr && !refusals->items.empty();
    for (const ShapeMember* member : members) {
        if (is_due(*member, refused) && spot.value->find(member->name) == nullptr) {
            findings.add(problems::member_missing(spot, member->name));
        }
    }
    for (std::size_t i = 0; i < spot.value->items.size(); ++i) {
        const Key& key = spot.value->keys[i];
        const auto known = std::find_if(members.begin(), members.end(),
                                        [&](const ShapeMember* m) { return m->name == key.name; });
        if (known == members.end()) {
            unknown(key, spot.path, members, findings);
        } else {
            hold_to((*known)->shape, {&spot.value->items[i], Path{&spot.path, key.name}}, findings);
        }
    }
}

/// What is wrong with a value that is not of its shape's kind, or nothing.
std::optional<Problem> wrong_kind(Shape::Kind wanted, const Spot& spot) {
    const Value::Kind kind = spot.value->kind;
    switch (wanted) {
    case Shape::Kind::text:
    case Shape::Kind::code:
        if (kind != Value::Kind::text) return problems::not_a_text(spot);
        break;
    case Shape::Kind::number:
        if (kind != Value::Kind::number) return problems::not_a_number(spot);
        break;
    case Shape::Kind::truth:
        if (kind != Value::Kind::boolean) return problems::not_true_or_false(spot);
        break;
    case Shape::Kind::list:
        if (kind != Value::Kind::list) return problems::not_a_list(spot);
        break;
    case Shape::Kind::object:
        if (kind != Value::Kind::object) return problems::not_an_object(spot);
        break;
    }
    return {};
}

} // namespace

void hold_to(const Shape& shape, const Spot& spot, Findings& findings) {
    if (findings.full()) return;
    const Value& value = *spot.value;
    if (shape.nullable && value.kind == Value::Kind::null) return;
    if (auto problem = wrong_kind(shape.kind, spot)) return findings.add(std::move(*problem));
    const auto& codes = shape.codes;
    if (shape.kind == Shape::Kind::code &&
        std::find(codes.begin(), codes.end(), value.literal) == codes.end()) {
        report_not_one_of(spot, codes, findings);
    }
    if (shape.kind == Shape::Kind::object) return hold_object(shape, spot, findings);
    if (shape.kind != Shape::Kind::list) return;
    int place = 0;
    for (const Value& item : value.items) {
        hold_to(*shape.item, {&item, Path{&spot.path, {}, place++}}, findings);
    }
}

} // namespace quoin
