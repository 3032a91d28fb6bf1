// Value: one value of a JSON text, with its place and its literal.
//
// Numbers keep the text they were written with, so that "6.125" is never a binary fraction. Objects
// keep the order of their members.
//
//   Document doc = parse_json(source, findings);
//   doc.root.find("price")->literal   ->  "412900.00"
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/caps.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/source.hpp>

namespace quoin {

class JsonWriter;
enum class Language : std::uint8_t;

struct Key {
    std::string name;
    Span place;
};

struct Value {
    enum class Kind { null, boolean, number, text, list, object };

    Kind kind = Kind::null;
    Span place;
    std::string literal;      ///< a text's content, a number's digits, "true" or "false"
    std::vector<Value> items; ///< of a list, or the values of an object's members
    std::vector<Key> keys;    ///< of an object, one for each item

    [[nodiscard]] const Value* find(std::string_view key) const;
};

/// A parsed text: the source and the tree over it. Movable; places stay valid.
struct Document {
    std::shared_ptr<const Source> source;
    Value root;
    bool languages_left = false; ///< one of its objects has a language's name among its members
};

/// Largest nesting that is read; deeper texts are refused.
inline constexpr int deepest_nesting = 32;

/// Parses JSON (RFC 8259). Syntax errors, repeated members, invalid UTF-8, numbers out of range,
/// too deep a nesting and more than caps::members of an object or `most_values` in all are
/// findings; the root is then null. With `texts_in`, the texts of other languages are let go as
/// they are read (text/language.hpp).
[[nodiscard]] Document parse_json(std::shared_ptr<const Source> source, Findings& findings,
                                  std::size_t most_values = caps::values,
                                  std::optional<Language> texts_in = {});

/// Parses CSV (RFC 4180: quotes, doubled quotes, CRLF) whose first row names the columns, into a
/// list of objects: each cell becomes a text value under its column's name; empty cells are left
/// out. Columns and rows have a cap.
[[nodiscard]] Document parse_csv(std::shared_ptr<const Source> source, Findings& findings);

/// Writes a value as it was read: same order, same literals, two-space indent.
[[nodiscard]] std::string write_json(const Value& value);
/// The same into what is being written.
void write_json(const Value& value, JsonWriter& json);

} // namespace quoin
