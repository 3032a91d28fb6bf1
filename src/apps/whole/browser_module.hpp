// The engine for browsers (src/apps/browser), as embedded into the program by
// cmake/embed_module.cmake.
#pragma once

#include <string_view>

namespace quoin::apps {

struct BrowserModule {
    std::string_view wasm_gzip; ///< quoin.wasm, compressed
    std::string_view loader;    ///< quoin.mjs
    std::string_view licenses;  ///< of what is in it, to go along wherever it goes
};

/// nullptr where this build has none.
[[nodiscard]] const BrowserModule* browser_module();

} // namespace quoin::apps
