// The one file that a buyer takes home: the sheet, readable before and without any script, the page
// and the engine in it, and what of the desk is this buyer's.
#pragma once

#include <string>

#include <quoin/text/language.hpp>

#include "take_home.hpp"

namespace quoin::apps {

/// HTML. Throws Refused, of the file that it was to be, where this build has not what such a file
/// is made of.
[[nodiscard]] std::string home_file(const TakenHome& taken, Language language,
                                    const std::string& file);

} // namespace quoin::apps
