// The page and its files, as embedded into the program by cmake/embed.cmake.
#pragma once

#include <string_view>
#include <vector>

namespace quoin::apps {

struct Asset {
    std::string_view path; ///< "/" or "/assets/app-0123456789abcdef.js"
    std::string_view type; ///< media type
    std::string_view tag;  ///< of its content; the ETag
    bool forever = false;  ///< its path names its content, so that it never changes
    std::string_view bytes;
    std::string_view gzip; ///< the same compressed; empty where that saves nothing
};

/// Empty where this build has no page.
[[nodiscard]] const std::vector<Asset>& page_assets();

} // namespace quoin::apps
