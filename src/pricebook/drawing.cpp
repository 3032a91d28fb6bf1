// Reading a plan's drawing.
#include <quoin/pricebook/drawing.hpp>

#include "book_reader.hpp"

namespace quoin {

PlanDrawing read_drawing(const Document& document, const PriceBook& /*book*/, Index<Plan> /*plan*/,
                         Findings& findings) {
    PlanDrawing drawing;
    drawing.file = document.source->name();
    Reader root(document.root, Path{}, findings);
    static_cast<void>(root.format_is("quoin/drawing/1"));
    return drawing;
}

} // namespace quoin
