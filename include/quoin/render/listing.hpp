// What a price book holds, as text, CSV and JSON: plans, lots, options.
#pragma once

#include <string>

#include <quoin/pricebook/price_book.hpp>
#include <quoin/render/blocks.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

enum class Listing { plans, lots, options };

[[nodiscard]] Blocks listing_text(const PriceBook& book, Listing what,
                                  const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string listing_csv(const PriceBook& book, Listing what,
                                      const Catalogue& say = catalogue_in(Language::english));
[[nodiscard]] std::string listing_json(const PriceBook& book, Listing what);

} // namespace quoin
