// Reading the map of a community's lots.
#include <quoin/pricebook/site_map.hpp>

#include "book_reader.hpp"

namespace quoin {

SiteMap read_site_map(const Document& document, const PriceBook& /*book*/, Findings& findings) {
    SiteMap map;
    map.file = document.source->name();
    Reader root(document.root, Path{}, findings);
    static_cast<void>(root.format_is("quoin/map/1"));
    return map;
}

} // namespace quoin
