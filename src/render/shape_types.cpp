// The shapes of answers as types of the page.
#include <quoin/render/shape.hpp>

#include <algorithm>

namespace quoin {
namespace {

std::string type_of(const Shape& shape, std::size_t indent);

std::string codes_of(const Shape& shape) {
    std::string type;
    for (const std::string& code : shape.codes) {
        type += (type.empty() ? "'" : " | '") + code + "'";
    }
    return type;
}

bool is_name(std::string_view key) {
    return !key.empty() && std::all_of(key.begin(), key.end(), [](char c) {
        return c == '_' || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    });
}

std::string members_of(const Shape& shape, std::size_t indent) {
    std::string text = "{\n";
    for (const ShapeMember& member : shape.members) {
        text += std::string(indent + 4, ' ');
        text += is_name(member.name) ? member.name : "'" + member.name + "'";
        text += member.there == ShapeMember::There::sometimes ? "?: " : ": ";
        text += type_of(member.shape, indent + 4) + ";\n";
    }
    return text + std::string(indent, ' ') + "}";
}

std::string object_of(const Shape& shape, std::size_t indent) {
    std::string text;
    for (const Shape& base : shape.bases) text += base.name + " & ";
    return text + members_of(shape, indent);
}

std::string plain_type(const Shape& shape, std::size_t indent) {
    switch (shape.kind) {
    case Shape::Kind::text:
        return "string";
    case Shape::Kind::number:
        return "number";
    case Shape::Kind::truth:
        return "boolean";
    case Shape::Kind::code:
        return codes_of(shape);
    case Shape::Kind::list: {
        const std::string item = type_of(*shape.item, indent);
        const bool joined = item.find_first_of("|&") != std::string::npos;
        return (joined ? "(" + item + ")" : item) + "[]";
    }
    case Shape::Kind::object:
        return shape.name.empty() ? object_of(shape, indent) : shape.name;
    }
    return {};
}

std::string type_of(const Shape& shape, std::size_t indent) {
    return plain_type(shape, indent) + (shape.nullable ? " | null" : "");
}

} // namespace

std::string types_of(const std::vector<Shape>& shapes) {
    std::string text;
    for (const Shape& shape : named_in(shapes)) {
        text += "\nexport type " + shape.name + " = " + object_of(shape, 0) + ";\n";
    }
    return text;
}

} // namespace quoin
