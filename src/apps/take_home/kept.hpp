// What is left of a file's values when only the members that may go are kept.
#pragma once

#include <quoin/text/value.hpp>

#include "what_goes.hpp"

namespace quoin::apps {

/// An object's members that are named, as they were written and in their order.
[[nodiscard]] Value kept(const Value& object, const Members& members);

/// The same of each row of a list of lots (CSV), whose columns are named as the members are:
/// note.es is a note, measure.width_ft one of the measures.
[[nodiscard]] Value kept_rows(const Value& rows, const Members& members);

} // namespace quoin::apps
