// Each figure with its formula and what it rests on: in English, in a Spanish answer too.
#pragma once

#include "words/english/recheck.hpp"

namespace quoin::spanish {

/// A recheck is for the lender partner. It cites rules that are written in English, and its figures
/// must carry the names they have there.
inline constexpr const RecheckWords& recheck = english::recheck;

} // namespace quoin::spanish
