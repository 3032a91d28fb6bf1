// Whether an SVG picture only draws: shapes, texts and colors, nothing that runs, moves or fetches.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace quoin::apps {

/// Why an SVG picture is not shown.
struct SvgFault {
    std::string part; ///< of its markup, as "<script>"; empty: it is no SVG at all
};

/// Nothing where the picture is one that only draws. What is allowed is a list; all else is a
/// fault.
[[nodiscard]] std::optional<SvgFault> svg_fault(std::string_view text);

} // namespace quoin::apps
