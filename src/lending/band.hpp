// Reading one band, such as "> 90, <= 95" or "first".
#pragma once

#include <optional>
#include <string_view>

#include <quoin/lending/band_table.hpp>

namespace quoin {

[[nodiscard]] std::optional<Dimension> dimension_named(std::string_view name);

/// A band of a dimension, or nothing where the text is none or no value could be in it.
[[nodiscard]] std::optional<Band> parse_band(Dimension dimension, std::string_view text);

} // namespace quoin
