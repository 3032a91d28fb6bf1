// Codes: how an enumeration is written and read, in one table beside it.
//
// The code is for programs: it stands in every answer's JSON, is never shown to people and never
// changes. The word is for people, and what a person's file has: often the same.
//
//   enum class Grade { level, garden, walk_out };
//   template <>
//   inline constexpr auto codes<Grade> = coded<Grade>({{Grade::level, "level"},
//                                                      {Grade::garden, "garden"},
//                                                      {Grade::walk_out, "walk_out", "walk-out"}});
//
//   code_of(Grade::walk_out)  ->  "walk_out"
//   name_of(Grade::walk_out)  ->  "walk-out"
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <type_traits>
#include <vector>

namespace quoin {

template <class Meaning>
struct Code {
    Meaning meaning;
    std::string_view code;
    std::string_view word = code;
};

/// The words of a file that belong to no enumeration: their codes are these words.
template <class Meaning>
using Words = std::vector<Code<Meaning>>;

/// The codes of an enumeration, or of the flags of a set; declared beside it.
template <class T>
inline constexpr std::nullptr_t codes = nullptr;

template <class T>
concept Coded = !std::is_null_pointer_v<std::remove_cvref_t<decltype(codes<T>)>>;
template <class T>
concept CodedEnum = Coded<T> && std::is_enum_v<T>;
/// A set of flags, written as the list of those that are up.
template <class T>
concept CodedSet = Coded<T> && std::is_class_v<T>;

/// Lower-case letters, digits and underscores.
constexpr bool is_code(std::string_view text) {
    for (const char c : text) {
        if (c != '_' && (c < 'a' || c > 'z') && (c < '0' || c > '9')) return false;
    }
    return !text.empty();
}

/// The table, held to its rules when it is compiled: codes, each once, and each meaning once.
template <class T, std::size_t n>
consteval std::array<Code<T>, n> coded(const Code<T> (&list)[n]) {
    for (std::size_t i = 0; i < n; ++i) {
        if (!is_code(list[i].code)) throw "no code: lower-case letters, digits and underscores";
        for (std::size_t j = 0; j < i; ++j) {
            if (list[j].code == list[i].code || list[j].meaning == list[i].meaning) throw "twice";
        }
    }
    return std::to_array(list);
}

/// What a word or a code of a table stands for; nothing where it is none of them.
template <class Table>
[[nodiscard]] constexpr auto meaning_in(const Table& table, std::string_view text)
    -> std::optional<decltype(table.front().meaning)> {
    for (const auto& one : table) {
        if (text == one.word || text == one.code) return one.meaning;
    }
    return std::nullopt;
}

template <CodedEnum Enum>
[[nodiscard]] constexpr Code<Enum> coding_of(Enum meaning) {
    for (const Code<Enum>& one : codes<Enum>) {
        if (one.meaning == meaning) return one;
    }
    return {meaning, {}};
}
/// In JSON; nothing for what is no enumerator.
template <CodedEnum Enum>
[[nodiscard]] constexpr std::string_view code_of(Enum meaning) {
    return coding_of(meaning).code;
}
/// For people.
template <CodedEnum Enum>
[[nodiscard]] constexpr std::string_view name_of(Enum meaning) {
    return coding_of(meaning).word;
}

} // namespace quoin
