// The map of the lots as a drawing: SVG without style or script, in the color of the text around
// it.
//
// Each lot is a <g class="lot free|held|sold" data-lot="7">, with "small" where the plan in hand
// does not fit and "chosen" where it is the lot in hand; it can be touched, and reached by keys.
#pragma once

#include <string>

#include <quoin/answers/site.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

/// Of an answer with a map; lots with a house where the answer has one.
[[nodiscard]] std::string site_svg(const SiteAnswer& answer, const Catalogue& say);

/// The lot in hand alone, with its house, its street and what lies beside it, to stand in a page;
/// empty where the answer has no map or the map has not the lot.
[[nodiscard]] std::string lot_svg(const SiteAnswer& answer, const Catalogue& say);

} // namespace quoin
