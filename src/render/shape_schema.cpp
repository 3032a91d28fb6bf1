// The shape of an answer as a JSON Schema.
#include <quoin/render/shape.hpp>

namespace quoin {
namespace {

void write_within(const Shape& shape, std::string_view prefix, JsonWriter& json);

void write_type(std::string_view type, bool nullable, JsonWriter& json) {
    if (!nullable) return json.text("type", type);
    json.list("type", [&] {
        json.text(type);
        json.text("null");
    });
}

void write_codes(const Shape& shape, JsonWriter& json) {
    json.list("enum", [&] {
        for (const std::string& code : shape.codes) json.text(code);
        if (shape.nullable) json.null();
    });
}

void write_members(const Shape& shape, std::string_view prefix, JsonWriter& json) {
    write_type("object", shape.nullable, json);
    json.list("required", [&] {
        for (const ShapeMember& member : shape.members) {
            if (member.there == ShapeMember::There::always) json.text(member.name);
        }
    });
    json.object("properties", [&] {
        for (const ShapeMember& member : shape.members) {
            json.key(member.name);
            write_within(member.shape, prefix, json);
        }
    });
}

/// An object that is others, too.
void write_bases(const Shape& shape, std::string_view prefix, JsonWriter& json) {
    json.list("allOf", [&] {
        for (const Shape& base : shape.bases) write_within(base, prefix, json);
        json.object([&] { write_members(shape, prefix, json); });
    });
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
    json.list("anyOf", [&] {
        json.object([&] { json.text("$ref", reference); });
        json.object([&] { json.text("type", "null"); });
    });
}

void write_within(const Shape& shape, std::string_view prefix, JsonWriter& json) {
    json.object([&] {
        shape.name.empty() ? write_plain(shape, prefix, json)
                           : write_reference(shape, prefix, json);
    });
}

} // namespace

void write_schema(const Shape& shape, std::string_view prefix, JsonWriter& json) {
    json.object([&] { write_plain(shape, prefix, json); });
}

} // namespace quoin
