// The first lines of every text, in English.
#pragma once

#include "words/heading.hpp"

namespace quoin::english {

inline constexpr HeadingWords heading = {
    .community = "{}, {}",
    .home = "{} ({}, {} sq ft), elevation {}, lot {}, for {}",
    .dates = "as of {:en}; price book {}, in force to {:en}; closing {:en}",
    .prepared_by = "prepared by {}",
};

} // namespace quoin::english
