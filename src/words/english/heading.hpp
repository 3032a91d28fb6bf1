// The first lines of every text, in English.
#pragma once

#include "words/heading.hpp"

namespace quoin::english {

inline constexpr HeadingWords heading = {
    .community = "{} by {}",
    .home = "{} plan ({}, {} sq ft), elevation {}, lot {}, for {}",
    .dates = "As of {:en}; price book {}, good through {:en}; closing {:en}",
    .prepared_by = "Prepared by {}",
};

} // namespace quoin::english
