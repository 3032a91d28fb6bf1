// The options behind an address: "/api/cash?scenario=FHA%2C+3.5%25+down".
#pragma once

#include <string>
#include <string_view>

#include <quoin/questions/questions.hpp>

namespace quoin::apps {

/// What stands for a byte as "%2C" is that byte; what stands for none is left as it is. A plus sign
/// is a space in an option alone. Source: URL Standard, application/x-www-form-urlencoded.
enum class Plus { plus, space };
[[nodiscard]] std::string decoded(std::string_view text, Plus plus);

/// Each option of an address, in its order: "option=can-lights=6" is the option "option".
[[nodiscard]] Given given_in(std::string_view address);

/// What stands before them.
[[nodiscard]] std::string path_in(std::string_view address);

} // namespace quoin::apps
