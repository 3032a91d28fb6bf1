// The shape of an answer as a JSON Schema.
#include <quoin/render/shape.hpp>

namespace quoin {
namespace {

void write_within(const Shape& shape, std::string_view prefix, JsonWriter& json);

void write_type(std::string_view type, bool nullable, JsonWriter& json) {
    if (!nullable) return json.text("type", type);
    json.key("type");
    json.open_list();
    json.text(type);
    json.text("null");
    json.close_list();
}

void write_codes(const Shape& shape, JsonWriter& json) {
    json.key("enum");
    json.open_list();
    for (const std::string& code : shape.codes) json.text(code);
    if (shape.nullable) json.null();
    json.close_list();
}

void write_members(const Shape& shape, std::string_view prefix, JsonWriter& json) {
    write_type("object", shape.nullable, json);
    json.key("required");
    json.open_list();
    for (const ShapeMember& member : shape.members) {
        if (member.there == ShapeMember::There::always) json.text(member.name);
    }
    json.close_list();
    json.key("properties");
    json.open_object();
    for (const ShapeMember& member : shape.members) {
        json.key(member.name);
        write_within(member.shape, prefix, json);
    }
    json.close_object();
}

/// An object that is others, too.
void write_bases(const Shape& shape, std::string_view prefix, JsonWriter& json) {
    json.key("allOf");
    json.open_list();
    for (const Shape& base : shape.bases) write_within(base, prefix, json);
    json.open_object();
    write_members(shape, prefix, json);
    json.close_object();
    json.close_list();
}

void write_plain(const Shape& shape, std::string_view prefix, JsonWriter& json) {
    switch (shape.kind) {
    case Shape::Kind::text:
        return write_type("string", shape.nullable, json);
    case Shape::Kind::number:
        return write_type("integer", shape.nullable, json);
    case Shape::Kind::truth:
        return write_type("boolean", shape.nullable, json);
    case Shape::Kind::code:
        return write_codes(shape, json);
    case Shape::Kind::list:
        write_type("array", shape.nullable, json);
        json.key("items");
        return write_within(*shape.item, prefix, json);
    case Shape::Kind::object:
        return shape.bases.empty() ? write_members(shape, prefix, json)
                                   : write_bases(shape, prefix, json);
    }
}

void write_reference(const Shape& shape, std::string_view prefix, JsonWriter& json) {
    const std::string reference = std::string(prefix) + shape.name;
    if (!shape.nullable) return json.text("$ref", reference);
    json.key("anyOf");
    json.open_list();
    json.open_object();
    json.text("$ref", reference);
    json.close_object();
    json.open_object();
    json.text("type", "null");
    json.close_object();
    json.close_list();
}

void write_within(const Shape& shape, std::string_view prefix, JsonWriter& json) {
    json.open_object();
    if (shape.name.empty()) {
        write_plain(shape, prefix, json);
    } else {
        write_reference(shape, prefix, json);
    }
    json.close_object();
}

} // namespace

void write_schema(const Shape& shape, std::string_view prefix, JsonWriter& json) {
    json.open_object();
    write_plain(shape, prefix, json);
    json.close_object();
}

} // namespace quoin
