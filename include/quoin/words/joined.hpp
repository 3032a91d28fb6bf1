// Naming several things in a row.
//
//   joined({"deck", "can lights", "paint"})                      ->  "deck, can lights, paint"
//   joined({"deck", "can lights", "paint"}, Joint::either, say)  ->  "deck, can lights or paint"
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <quoin/words/catalogue.hpp>

namespace quoin {

/// How the last is joined to those before it.
enum class Joint {
    both,   ///< "and"
    either, ///< "or"
};

[[nodiscard]] std::string joined(const std::vector<std::string>& names,
                                 std::string_view between = ", ");
[[nodiscard]] std::string joined(const std::vector<std::string>& names, Joint joint,
                                 const Catalogue& say);

} // namespace quoin
