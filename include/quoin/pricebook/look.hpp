// Look: how something that can be chosen is shown: a picture, or a color.
#pragma once

#include <string>

namespace quoin {

struct Look {
    std::string picture; ///< file, from the price book's folder; empty: none
    std::string color;   ///< "#8a9a7b"; empty: none

    [[nodiscard]] bool any() const { return !picture.empty() || !color.empty(); }
};

} // namespace quoin
