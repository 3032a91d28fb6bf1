// In which forms questions are told here: in all of them, and their answers are described. (The
// module for browsers has another file of this name, in apps/browser/instead.)
#pragma once

namespace quoin {

inline constexpr bool all_forms_told = true;

} // namespace quoin
