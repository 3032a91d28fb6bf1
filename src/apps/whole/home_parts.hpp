// What a file that is taken home is made of besides the buyer's own: the page in it with the engine
// for browsers, packed (src/page/pack.mjs), and the document around them in each language
// (src/page/home/document.ts), as embedded into the program by cmake/embed_home.cmake.
#pragma once

#include <string_view>

namespace quoin::apps {

struct HomeParts {
    std::string_view packed;    ///< the same in every file, in letters
    std::string_view documents; ///< JSON: by language, texts with {{places}} for values
};

/// nullptr where this build has no page, or no engine for browsers.
[[nodiscard]] const HomeParts* home_parts();

} // namespace quoin::apps
