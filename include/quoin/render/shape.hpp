// Shape: what the JSON of an answer may hold, as data: the source of the page's types and of the
// schemas that the server describes its answers with.
//
//   Shape shape = shape_of<QuoteAnswer>();
//   shape.member("lines")->item->name  ->  "QuoteLine"
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/json_writer.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

struct ShapeMember;

struct Shape {
    enum class Kind {
        text,   ///< sentences, names, and exact figures: "497660.00", "6.125", "2026-11-24"
        number, ///< a whole number
        truth,
        code, ///< one of `codes`
        list, ///< of `item`
        object,
    };

    Kind kind = Kind::text;
    bool nullable = false;
    std::vector<std::string> codes = {};
    std::shared_ptr<const Shape> item = {};
    std::string name = {};            ///< of an object that has one; empty: it stands just here
    std::vector<Shape> bases = {};    ///< objects whose members are this object's, too
    std::vector<ShapeMember> members; ///< of an object, in their order

    /// The member of this name, or nullptr.
    [[nodiscard]] const Shape* member(std::string_view name) const;

    friend bool operator==(const Shape& a, const Shape& b);
};

struct ShapeMember {
    enum class There {
        always,
        unless_refused, ///< where the object's refusals are none
        sometimes,
    };

    std::string name;
    Shape shape;
    There there = There::always;
    bool words = false; ///< for people: no program reads them, and they are not read back

    friend bool operator==(const ShapeMember&, const ShapeMember&) = default;
};

/// The shape of an answer's JSON.
template <class Answer>
[[nodiscard]] const Shape& shape_of();

/// Finds what JSON has that is not of the shape: members missing or unknown, values of another
/// kind, codes that are none.
void hold_to(const Shape& shape, const Spot& spot, Findings& findings);

/// An answer out of its JSON, which is held to its shape first; nothing where that, a figure in it
/// or a name that stands for another part is a finding. What the JSON does not tell is as in an
/// answer just made: words for people are made anew where they are wanted.
template <class Answer>
[[nodiscard]] std::optional<Answer> read_answer(const Document& document, Findings& findings);

/// Writes it as a JSON Schema; an object with a name as a reference to `prefix` and the name, but
/// for the outermost.
void write_schema(const Shape& shape, std::string_view prefix, JsonWriter& json);

/// TypeScript: an interface for every object with a name in these shapes.
[[nodiscard]] std::string types_of(const std::vector<Shape>& shapes);

/// Every object with a name in these shapes, once, after those that it is made of.
/// Precondition: objects of one name are the same.
[[nodiscard]] std::vector<Shape> named_in(const std::vector<Shape>& shapes);

} // namespace quoin
