// The first texts of a JSON object, without the rest of it.
//
//   leading_texts(stream of {"id": "day", "rungs": [...], "note": "sample"}, use)
//       ->  use("id", "day"), which may say that this is enough
#pragma once

#include <functional>
#include <iosfwd>
#include <string_view>

namespace quoin {

/// Hands over, in their order, the members of a JSON text's outermost object that are texts, name
/// and content, until `use` answers false; nothing is parsed after that. Ends silently where the
/// text does, or where it is no JSON. Whatever else is wrong, parse_json finds.
void leading_texts(std::istream& json,
                   const std::function<bool(std::string_view name, std::string_view text)>& use);

} // namespace quoin
