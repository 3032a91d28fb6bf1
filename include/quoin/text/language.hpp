// The languages that people are spoken to in, and texts of a file that are written in several.
//
//   {"name": "Cedar deck"}                                       one text for everybody
//   {"name": {"en": "Cedar deck", "es": "Terraza de cedro"}}     each in their own language
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include <quoin/text/codes.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/value.hpp>

namespace quoin {

enum class Language : std::uint8_t { english, spanish };
template <>
inline constexpr auto codes<Language> = coded<Language>({{Language::english, "en", "English"},
                                                         {Language::spanish, "es", "español"}});

/// "en", "es"
[[nodiscard]] std::vector<std::string> language_codes();

/// Puts one text in the place of every object of languages: the one in `language`, or the first
/// where there is none. Findings: a language that is none, and what is no text.
void choose_texts(Document& document, Language language, Findings& findings);

} // namespace quoin
