// A phrase: one thing that is said to people, in one language, made of typed values.
//
//   struct QuoteWords {
//       Phrase<> title;
//       Phrase<Text, Money> towards_costs; ///< incentive, amount
//   };
//   constexpr QuoteWords quote = {.title = "The price of a home",
//                                 .towards_costs = "{0}: {1} towards your closing costs"};
//   quote.towards_costs("Spring credit", amount)
//       ->  "Spring credit: $5,000.00 towards your closing costs"
//
// What a catalogue leaves out does not compile: neither a phrase, nor a value in one, nor the words
// of an enumerator. Values may come in any order, more than once; where one pattern will not do, as
// for "1 year" and "2 years", a phrase is a function.
#pragma once

#include <array>
#include <concepts>
#include <cstddef>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

#include <fmt/format.h>

#include <quoin/exact/date.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

/// What is said as it is: a name, a figure that was written before, another phrase.
using Text = std::string_view;

// A value as a pattern takes it. A day says how it is written: {:en}, {:es} or, in a table, {:us}.
inline std::string_view in_pattern(Text text) { return text; }
inline int in_pattern(int number) { return number; }
inline std::string in_pattern(Money amount) { return dollars(amount); }
inline std::string in_pattern(Rate rate) { return rate_text(rate); }
inline Date in_pattern(Date day) { return day; }

} // namespace quoin

/// {:en} "November 24, 2026", {:es} "24 de noviembre de 2026", {:us} "11/24/2026"
template <>
struct fmt::formatter<quoin::Date> {
    char style = 'e';
    constexpr auto parse(fmt::format_parse_context& context) {
        const std::string_view rest(context.begin(),
                                    static_cast<std::size_t>(context.end() - context.begin()));
        if (rest.starts_with("en}"))
            style = 'e';
        else if (rest.starts_with("es}"))
            style = 's';
        else if (rest.starts_with("us}"))
            style = 'u';
        else
            throw fmt::format_error("a day says how it is written: {:en}, {:es} or {:us}");
        return context.begin() + 2;
    }
    auto format(quoin::Date day, fmt::format_context& context) const {
        return fmt::format_to(context.out(), "{}",
                              style == 'e'   ? quoin::english_date(day)
                              : style == 's' ? quoin::spanish_date(day)
                                             : quoin::short_date(day));
    }
};

namespace quoin {

template <class Value>
using InPattern = decltype(in_pattern(std::declval<Value>()));

/// Whether every one of `count` values has a place in a pattern. Precondition: fmt takes it.
consteval bool uses_each(std::string_view pattern, std::size_t count) {
    std::size_t next = 0;
    unsigned used = 0;
    for (std::size_t i = 0; i + 1 < pattern.size(); ++i) {
        if (pattern[i] != '{') continue;
        const char c = pattern[++i];
        if (c == '{') continue;
        const bool numbered = c >= '0' && c <= '9';
        used |= 1U << (numbered ? static_cast<std::size_t>(c - '0') : next++);
    }
    return used == (1U << count) - 1;
}

template <class... Values>
class Phrase {
  public:
    consteval Phrase(const char* pattern) : pattern_(pattern) { // NOLINT: written as plain text
        static_cast<void>(fmt::format_string<InPattern<Values>...>(pattern));
        if (!uses_each(pattern, sizeof...(Values))) throw "a value is left out";
    }
    template <class Made>
    requires std::convertible_to<Made, std::string (*)(Values...)>
    constexpr Phrase(Made made) : made_(made) {} // NOLINT: written as plain text's equal

    [[nodiscard]] std::string operator()(Values... values) const {
        if (made_) return made_(values...);
        return say(in_pattern(values)...);
    }

  private:
    [[nodiscard]] std::string say(const auto&... values) const {
        return fmt::vformat(pattern_, fmt::make_format_args(values...));
    }

    std::string_view pattern_;
    std::string (*made_)(Values...) = nullptr;
};

/// The words of each enumerator. Precondition: they count from 0.
template <class Enum, std::size_t count = codes<Enum>.size()>
class NamesOf {
  public:
    struct Name {
        Enum what;
        const char* words;
    };

    consteval NamesOf(const Name (&names)[count]) { // NOLINT: written as a list
        for (const Name& name : names) {
            std::string_view& words = names_[static_cast<std::size_t>(name.what)];
            if (!words.empty()) throw "named twice";
            words = name.words;
        }
    }

    [[nodiscard]] std::string operator()(Enum what) const {
        return std::string(names_[static_cast<std::size_t>(what)]);
    }

  private:
    std::array<std::string_view, count> names_;
};

/// A phrase of the same values for each enumerator, in their order. Precondition: they count from
/// 0.
template <class Enum, std::size_t count, class... Values>
class PhrasesOf {
  public:
    struct One {
        Enum what;
        Phrase<Values...> phrase;
    };

    consteval PhrasesOf(const One (&phrases)[count]) // NOLINT: written as a list
        : phrases_(std::to_array(phrases)) {
        for (std::size_t i = 0; i < count; ++i) {
            if (static_cast<std::size_t>(phrases_[i].what) != i) throw "left out, or not in order";
        }
    }

    [[nodiscard]] std::string operator()(Enum what, Values... values) const {
        return phrases_[static_cast<std::size_t>(what)].phrase(values...);
    }

  private:
    std::array<One, count> phrases_;
};

} // namespace quoin
