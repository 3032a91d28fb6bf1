// The part of a rate sheet that is about the loans of an inquiry.
#pragma once

#include <quoin/inquiry/sitting.hpp>
#include <quoin/text/value.hpp>

namespace quoin::apps {

/// Whether the lender lets a buyer take all rates of the ladders in play home.
[[nodiscard]] bool may_be_shared(const Value& sheet);

/// Of a sheet that may be shared, the ladders in play with all their rates, and what adjusts and
/// insures such loans; of any other the rows alone that the loans rest on, so that their figures
/// stand and every other loan has no rate. `sheet` is the file that the sitting's was read from.
[[nodiscard]] Value sheet_in_play(Value sheet, const Sitting& sitting);

} // namespace quoin::apps
