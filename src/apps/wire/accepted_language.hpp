// Which language a request is best answered in.
#pragma once

#include <string_view>

#include <quoin/text/language.hpp>

namespace quoin::apps {

/// The language that an Accept-Language header puts highest, of those there are; the first named of
/// several it puts as high. English where it takes none of them, or says nothing that can be read.
/// Source: RFC 9110, 12.5.4, with ranges matched by their first subtag (RFC 4647, 3.4: "es-MX" is
/// Spanish), since there is one catalogue a language.
[[nodiscard]] Language accepted_language(std::string_view header);

} // namespace quoin::apps
