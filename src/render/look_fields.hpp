// The fields of how something that can be chosen is shown; empty where it has none.
#pragma once

#include "read_fields.hpp"
#include <quoin/pricebook/look.hpp>

namespace quoin {

/// Members of the thing itself.
void look_fields(auto& v, Of<Look> auto& look) {
    v("picture", look.picture);
    v("color", look.color);
}

} // namespace quoin
