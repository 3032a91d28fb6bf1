// The engine for browsers as it is embedded: whole, compressed, with its loader and its licenses.
#include <shown.hpp>

#include "apps/whole/browser_module.hpp"

using namespace quoin::apps;

namespace {

std::size_t last_four_bytes(std::string_view bytes) {
    std::size_t number = 0;
    for (int i = 1; i <= 4; ++i) {
        number = number * 256 + static_cast<unsigned char>(bytes[bytes.size() - std::size_t(i)]);
    }
    return number;
}

} // namespace

TEST_CASE("The engine for browsers is there whole, or not at all") {
    const BrowserModule* module = browser_module();
    const bool whole = module == nullptr || // this build has none
                       (module->wasm_gzip.substr(0, 2) == "\x1f\x8b" &&
                        module->loader.find("export async function load(") != std::string::npos &&
                        module->licenses.find("Permission is hereby granted") != std::string::npos);
    CHECK(whole);
    if (module == nullptr) return;
    CHECK(last_four_bytes(module->wasm_gzip) > 2 * module->wasm_gzip.size()); // as RFC 1952 ends
    CHECK(module->loader.back() == '\n');
    CHECK(module->licenses.back() == '\n');
}
