// A list of lots written as it was read: a row of names, and a row for each lot (CSV, RFC 4180).
#pragma once

#include <string>

#include <quoin/text/value.hpp>

namespace quoin::apps {

/// The columns are those that any row has, in the order they come up in.
[[nodiscard]] std::string lots_list(const Value& rows);

} // namespace quoin::apps
