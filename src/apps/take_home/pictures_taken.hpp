// The pictures of a home that go along with it, as many as there is room for.
#pragma once

#include <string>
#include <vector>

#include <quoin/text/value.hpp>

#include "../pictures.hpp"

namespace quoin::apps {

/// What there is room for, in bytes.
inline constexpr std::size_t most_picture_bytes = 500'000;

struct PicturesTaken {
    std::vector<Picture> pictures;
    std::size_t bytes = 0;
    std::vector<std::string> left_out; ///< files, for want of room or since they cannot be shown
};

/// Of a price book's part and the inquiry that goes with it: those of what is chosen, then the
/// others in the order of the book. The names of what does not go are taken out of the book.
/// `source` is the file that the whole book was read from.
[[nodiscard]] PicturesTaken take_pictures(Value& book, const Value& inquiry,
                                          const std::shared_ptr<const Source>& source,
                                          std::size_t most_bytes);

} // namespace quoin::apps
