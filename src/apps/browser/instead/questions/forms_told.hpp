// In which forms questions are told in a browser: in the first of each alone, as over the network.
#pragma once

namespace quoin {

inline constexpr bool all_forms_told = false;

} // namespace quoin
