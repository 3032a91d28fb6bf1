// The pictures that a price book names: files beside it, read once and held to what is shown.
#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include <quoin/inquiry/desk.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/source.hpp>
#include <quoin/text/value.hpp>

#include "picture_header.hpp"

namespace quoin::apps {

struct Picture {
    std::string file; ///< as the price book names it
    PictureKind kind = PictureKind::svg;
    std::shared_ptr<const Source> source; ///< its bytes
};

/// Those of a sound price book's document that can be shown; what is wrong with the others is told
/// where the book names them first.
[[nodiscard]] std::vector<Picture> read_pictures(const Document& document, Findings& findings);

/// Leaves out the names of all other pictures, so that no answer tells of one that is not there.
void keep_pictures(PriceBook& book, const std::vector<Picture>& pictures);

} // namespace quoin::apps
