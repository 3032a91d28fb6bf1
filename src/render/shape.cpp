// What the JSON of an answer may hold, as data.
#include <quoin/render/shape.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>

namespace quoin {
namespace {

void add_named(const Shape& shape, std::vector<Shape>& named) {
    if (shape.item) add_named(*shape.item, named);
    for (const Shape& base : shape.bases) add_named(base, named);
    for (const ShapeMember& member : shape.members) add_named(member.shape, named);
    if (shape.name.empty()) return;
    Shape plain = shape;
    plain.nullable = false;
    const auto same = std::find_if(named.begin(), named.end(),
                                   [&](const Shape& other) { return other.name == shape.name; });
    if (same == named.end()) {
        named.push_back(std::move(plain));
    } else {
        ensure(*same == plain, "objects of one name are of one shape");
    }
}

} // namespace

const Shape* Shape::member(std::string_view wanted) const {
    const auto found = std::find_if(members.begin(), members.end(),
                                    [&](const ShapeMember& one) { return one.name == wanted; });
    return found == members.end() ? nullptr : &found->shape;
}

bool operator==(const Shape& a, const Shape& b) {
    const bool same_item = a.item && b.item ? *a.item == *b.item : a.item == b.item;
    return same_item && a.kind == b.kind && a.nullable == b.nullable && a.codes == b.codes &&
           a.name == b.name && a.bases == b.bases && a.members == b.members;
}

std::vector<Shape> named_in(const std::vector<Shape>& shapes) {
    std::vector<Shape> named;
    for (const Shape& shape : shapes) add_named(shape, named);
    return named;
}

} // namespace quoin
