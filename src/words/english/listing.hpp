// What a price book holds, in English.
#pragma once

#include "words/listing.hpp"

namespace quoin::english {

inline constexpr ListingWords listing = {
    .book = "{}, {}: price book {}, in force {} to {}",
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
    .cutoff = "cutoff",
    .every_plan = "all",
    .yes = "yes",
    .no = "no",
    .price_range = "{} to {}",
    .kind_of = {{{OptionKind::upgrade, "upgrade"},
                 {OptionKind::levels, "level"},
                 {OptionKind::choice, "choice at no cost"},
                 {OptionKind::allowance, "allowance"},
                 {OptionKind::package, "package"}}},
};

} // namespace quoin::english
