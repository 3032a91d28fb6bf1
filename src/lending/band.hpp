// Reading one band, such as "> 90, <= 95" or "first".
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include <quoin/lending/band_table.hpp>

namespace quoin {

/// All values of a dimension, and the distance from one to the next: a billionth, or one name.
[[nodiscard]] Band whole_of(Dimension dimension);
[[nodiscard]] std::int64_t step_of(Dimension dimension);

/// A value of a dimension as people write it: "80.01", or its name.
[[nodiscard]] std::string value_words(Dimension dimension, std::int64_t value);

/// A band of a dimension, or nothing where the text is none or no value could be in it.
[[nodiscard]] std::optional<Band> parse_band(Dimension dimension, std::string_view text);

} // namespace quoin
