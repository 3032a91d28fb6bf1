// The languages that people are spoken to in, and texts of a file that are written in several.
//
//   {"name": "Cedar deck"}                                       one text for everybody
//   {"name": {"en": "Cedar deck", "es": "Terraza de cedro"}}     each in their own language
//
// In a list out of a spreadsheet each language is a column: note.en, note.es.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/codes.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/value.hpp>

namespace quoin {

enum class Language : std::uint8_t { english, spanish };
template <>
inline constexpr auto codes<Language> = coded<Language>({{Language::english, "en", "English"},
                                                         {Language::spanish, "es", "español"}});

/// One of something for each language.
template <class T>
class EachLanguage {
  public:
    [[nodiscard]] T& operator[](Language language) { return each_[index(language)]; }
    [[nodiscard]] const T& operator[](Language language) const { return each_[index(language)]; }

  private:
    static std::size_t index(Language language) { return static_cast<std::size_t>(language); }

    std::array<T, codes<Language>.size()> each_{};
};
/// Whether a member's name makes its object a text in several languages: no other object of a file
/// has one of these names.
[[nodiscard]] constexpr bool is_language(std::string_view name) {
    for (const auto& language : codes<Language>) {
        if (language.code == name) return true;
    }
    return false;
}
/// "en", "es"
[[nodiscard]] std::vector<std::string> language_codes();

/// Where the text in `language`, or the first where there is none, stands among the members of an
/// object that has one; nothing where one of its members is no language or no text.
[[nodiscard]] std::optional<std::size_t> sound_text_in(Language language, std::span<const Key> keys,
                                                       std::span<const Value> items);

/// Puts one text in the place of every object of languages: the one in `language`, or the first
/// where there is none. Findings: a language that is none, and what is no text.
void choose_texts(Document& document, Language language, Findings& findings);

/// The same for a column of a list: each row keeps as `name` its cell of `name.es` where Spanish is
/// asked for, else of `name`, else of the first other language.
void choose_column(Document& list, std::string_view name, Language language);

} // namespace quoin
