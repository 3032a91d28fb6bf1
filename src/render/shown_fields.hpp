// The fields of a thing in the furnished model, shared by the questions that list it.
#pragma once

#include "shared_fields.hpp"
#include <quoin/answers/shown.hpp>
#include <quoin/words/reasons.hpp>

namespace quoin {

void fields(auto& v, Of<ShownItem> auto& item) {
    v.named("Shown");
    v("area", item.area);
    v("name", item.name);
    v("as_shown", item.as_shown);
    v("quantity", item.quantity);
    v("unit", item.unit);
    v("standing", item.standing);
    v("price", item.price);
    v("yours", item.yours);
    v("your_level", item.your_level);
    v.words("why_not", [&](const Catalogue& say) { return words_of(item.why_not, say); });
}

} // namespace quoin
