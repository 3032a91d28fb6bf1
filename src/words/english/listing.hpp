// What a price book holds, in English.
#pragma once

#include "words/listing.hpp"

namespace quoin::english {

inline constexpr ListingWords listing = {
    .book = "{}, {}: price book {}, in effect from {:en} through {:en}",
    .plan = "plan",
    .name = "name",
    .style = "style",
    .square_feet = "sq ft",
    .bedrooms = "bedrooms",
    .bathrooms = "bathrooms",
    .base_price = "base price",
    .elevation = "elevation",
    .elevation_price = "elevation price",
    .lot = "lot",
    .status = "status",
    .premium = "premium",
    .grade = "grade",
    .plans = "plans",
    .flood_zone = "flood zone",
    .note = "note",
    .option = "option",
    .area = "area",
    .kind = "kind",
    .price = "price",
    .unit = "unit",
    .cutoff = "decide by",
    .every_plan = "all",
    .yes = "yes",
    .no = "no",
    .price_range = "{} to {}",
    .kind_of = {{{OptionKind::upgrade, "upgrade"},
                 {OptionKind::levels, "choice"},
                 {OptionKind::choice, "no-cost choice"},
                 {OptionKind::allowance, "allowance"},
                 {OptionKind::package, "package"}}},
};

} // namespace quoin::english
