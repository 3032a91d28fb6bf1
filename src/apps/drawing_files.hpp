// The drawings that a price book names: its plans', and the map of its lots.
#pragma once

#include <filesystem>

#include <quoin/inquiry/desk.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/language.hpp>

namespace quoin::apps {

/// Of a sound book in this folder, with their texts in a language.
[[nodiscard]] Drawings read_drawings(const PriceBook& book, const std::filesystem::path& folder,
                                     Language language, Findings& findings);

} // namespace quoin::apps
