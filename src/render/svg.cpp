// Writing SVG.
#include "svg.hpp"

#include <cstdlib>

#include "html.hpp"
#include <quoin/exact/decimal.hpp>

namespace quoin {
namespace {

std::string attribute_of_svg(std::string_view name, std::string_view value) {
    return " " + std::string(name) + "=\"" + std::string(value) + "\"";
}

/// Of a length and what it is out of: to a thousandth.
std::string share(std::int64_t part, std::int64_t whole) {
    return Decimal::billionths(multiply_divide(part, 1000, whole, Rounding::half_away) *
                               Decimal::millionth * 1000)
        .text();
}

} // namespace

std::string svg_feet(std::int64_t hundredths) {
    return Decimal::billionths(divide_rounded<std::int64_t>(hundredths, 10, Rounding::half_away) *
                               10 * Decimal::hundredth)
        .text();
}

std::string svg_place(const Point& place) { return svg_feet(place.x) + " " + svg_feet(place.y); }

std::string svg_line(const Outline& places, bool closed) {
    std::string out;
    for (const Point& place : places) {
        out += out.empty() ? 'M' : 'L';
        out += svg_place(place);
    }
    return closed ? out + "Z" : out;
}

std::string svg_path(std::string_view kind, std::string_view data, std::string_view more) {
    std::string out = "<path" + attribute_of_svg("class", kind) + attribute_of_svg("d", data);
    if (!more.empty()) out += " " + std::string(more);
    return out + "/>";
}

std::string svg_text(std::string_view kind, const Point& middle, std::int64_t size,
                     std::string_view text, const Point& along) {
    const Int128 square = Int128{along.x} * along.x + Int128{along.y} * along.y;
    std::int64_t length = 1;
    while (Int128{length} * length < square) length += 1 + length / 4096;
    const std::string x = share(along.x, length);
    const std::string y = share(along.y, length);
    const std::string turned = along.y == 0
                                   ? "translate(" + svg_place(middle) + ")"
                                   : "matrix(" + x + " " + y + " " + share(-along.y, length) + " " +
                                         x + " " + svg_place(middle) + ")";
    return "<text" + attribute_of_svg("class", kind) + attribute_of_svg("transform", turned) +
           attribute_of_svg("font-size", svg_feet(size)) +
           attribute_of_svg("text-anchor", "middle") + attribute_of_svg("dy", ".35em") +
           attribute_of_svg("fill", "currentColor") + attribute_of_svg("stroke", "none") + ">" +
           in_element(text) + "</text>";
}

std::string svg_group(std::string_view kind, std::string_view inner, std::string_view more) {
    std::string out = "<g" + attribute_of_svg("class", kind);
    if (!more.empty()) out += " " + std::string(more);
    return out + ">" + std::string(inner) + "</g>";
}

} // namespace quoin
