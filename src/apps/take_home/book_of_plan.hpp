// The part of a price book, and of a plan's drawing, that is about one plan.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/value.hpp>

namespace quoin::apps {

/// The plan whole, with what can be had on it, and that it is had on this plan is said of each
/// option; the other plans by name, size and price, with the elevation of the least price, since a
/// plan has one. What can only be of other plans is left out wherever it is named. Precondition:
/// the book is sound, and the plan one of its plans.
[[nodiscard]] Value book_of_plan(Value book, std::string_view plan);

/// A plan's drawing without the changes that only options make which are not in the book.
[[nodiscard]] Value drawing_for(Value drawing, const Value& book);

/// Takes the wishes out of an inquiry that name what is not in the book, since only other plans
/// have it; their options are told.
std::vector<std::string> take_out_wishes_elsewhere(Value& inquiry, const Value& book);

} // namespace quoin::apps
