// What is said of a problem: one row of sentences for each, in every language.
//
//   row<p::too_many>("a list of {0}", "at most {1} in it", "take out what is not needed")
//
// A problem's arguments are {0}, {1}, ..., the value that is shown before all others. The compiler
// holds each sentence to its problem's arguments, and a language's rows to the list of problems:
// each has its row, once.
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include <quoin/pricebook/lot.hpp>
#include <quoin/text/problems.hpp>

#include "words/phrase.hpp"

namespace quoin {

/// A noun in the forms that sentences take it in, articles and genders in them.
struct NounForms {
    std::string_view plain;  ///< {0}: "option"
    std::string_view one;    ///< {0:one}: "an option"
    std::string_view none;   ///< {0:none}: "no option"
    std::string_view second; ///< {0:second}: "a second option"
};

/// Names in a row: {0} each in quotes, not many of them; {0:plain} as they are; {0:or} any of them.
struct NamesInWords {
    const std::vector<std::string>* names;
    const Phrase<Text, Text>* either; ///< of two
};

} // namespace quoin

template <>
struct fmt::formatter<quoin::NounForms> {
    std::string_view quoin::NounForms::*form = &quoin::NounForms::plain;
    constexpr auto parse(fmt::format_parse_context& context) {
        constexpr std::pair<std::string_view, std::string_view quoin::NounForms::*> forms[] = {
            {"one}", &quoin::NounForms::one},
            {"none}", &quoin::NounForms::none},
            {"second}", &quoin::NounForms::second}};
        const std::string_view rest(context.begin(),
                                    static_cast<std::size_t>(context.end() - context.begin()));
        for (const auto& [name, member] : forms) {
            if (!rest.starts_with(name)) continue;
            form = member;
            return context.begin() + (name.size() - 1);
        }
        return context.begin();
    }
    auto format(const quoin::NounForms& noun, fmt::format_context& context) const {
        return fmt::format_to(context.out(), "{}", noun.*form);
    }
};

template <>
struct fmt::formatter<quoin::NamesInWords> {
    bool plain = false;
    bool any = false;
    constexpr auto parse(fmt::format_parse_context& context) {
        const std::string_view rest(context.begin(),
                                    static_cast<std::size_t>(context.end() - context.begin()));
        plain = rest.starts_with("plain}");
        any = rest.starts_with("or}");
        return context.begin() + (plain ? 5 : any ? 2 : 0);
    }
    auto format(const quoin::NamesInWords& words, fmt::format_context& context) const {
        if (any) {
            std::string row;
            for (const std::string& name : *words.names) {
                row = row.empty() ? name : (*words.either)(row, name);
            }
            return fmt::format_to(context.out(), "{}", row);
        }
        constexpr std::size_t most_in_quotes = 12;
        const std::vector<std::string>& names = *words.names;
        const std::size_t most = plain ? names.size() : most_in_quotes;
        auto out = context.out();
        for (std::size_t i = 0; i < names.size() && i < most; ++i) {
            const char* between = i == 0 ? "" : ", ";
            out = plain ? fmt::format_to(out, "{}{}", between, names[i])
                        : fmt::format_to(out, "{}\"{}\"", between, names[i]);
        }
        return names.size() > most ? fmt::format_to(out, ", ...") : out;
    }
};

namespace quoin {

/// How many enumerators there are, up to the last one.
template <class Enum>
consteval std::size_t count_to(Enum last) {
    return static_cast<std::size_t>(last) + 1;
}

/// The forms of every noun.
class Nouns {
  public:
    static constexpr std::size_t count = count_to(last_noun);
    struct Named {
        Noun noun;
        NounForms forms;
    };

    consteval Nouns(const Named (&list)[count]) { // NOLINT: written as a list
        for (const Named& named : list) {
            NounForms& forms = forms_[static_cast<std::size_t>(named.noun)];
            if (!forms.plain.empty()) throw "a noun has its forms twice";
            forms = named.forms;
            if (forms.second.empty()) throw "a noun without one of its forms";
        }
    }
    [[nodiscard]] const NounForms& operator()(Noun noun) const {
        return forms_[static_cast<std::size_t>(noun)];
    }

  private:
    std::array<NounForms, count> forms_;
};

/// What stood where something else was expected, by its kind.
struct FoundWords {
    Phrase<> nothing;
    Phrase<> null;
    Phrase<> list;
    Phrase<> object;
    Phrase<Text> text; ///< what it says
};

namespace problem_rows {

namespace p = problems;

/// What a pattern takes for each argument of a problem: words_of() makes it.
template <class Argument>
struct Taken;
template <>
struct Taken<std::string> {
    using Type = std::string_view;
};
template <>
struct Taken<std::int64_t> {
    using Type = std::int64_t;
};
template <>
struct Taken<Decimal> {
    using Type = std::string;
};
template <>
struct Taken<Date> {
    using Type = Date;
};
template <>
struct Taken<FoundValue> {
    using Type = std::string;
};
template <>
struct Taken<Noun> {
    using Type = NounForms;
};
template <>
struct Taken<NearName> {
    using Type = std::string_view;
};
template <>
struct Taken<FileMeant> {
    using Type = std::string;
};
template <>
struct Taken<LotStatus> {
    using Type = std::string;
};
template <>
struct Taken<WhyNot> {
    using Type = std::string;
};
template <>
struct Taken<Wanted> {
    using Type = std::string;
};
template <>
struct Taken<About> {
    using Type = std::string_view;
};
template <>
struct Taken<std::vector<std::string>> {
    using Type = NamesInWords;
};

template <class Part>
using TakenOf = typename Taken<decltype(Part::kept(std::declval<typename Part::Given>()))>::Type;

/// A sentence with places for arguments, which the compiler holds to the arguments' types.
template <class... Arguments>
struct Checked {
    std::string_view text;
    consteval Checked(const char* pattern) : text(pattern) { // NOLINT: written as plain text
        static_cast<void>(fmt::format_string<Arguments...>(pattern));
    }
};

template <class Kind>
struct PatternOf;
template <ProblemId id, class Where, class... Parts>
struct PatternOf<p::Kind<id, Where(Parts...)>> {
    using Type = Checked<TakenOf<Parts>...>;
};
template <ProblemId id, class... Parts>
struct PatternOf<p::Kind<id, p::Shown(Parts...)>> {
    using Type = Checked<std::string, TakenOf<Parts>...>;
};
template <auto kind>
using Pattern = typename PatternOf<std::remove_const_t<decltype(kind)>>::Type;

struct Row {
    ProblemId id{};
    std::string_view name; ///< of the thing that it is about: what was found begins with it
    std::string_view found;
    std::string_view expected;
    std::string_view advice;
};

template <auto kind>
consteval Row row(Pattern<kind> found, Pattern<kind> expected, Pattern<kind> advice = "") {
    return {kind.id, "", found.text, expected.text, advice.text};
}
/// Of a problem that is about a thing.
template <auto kind>
consteval Row row_about(Pattern<kind> name, Pattern<kind> found, Pattern<kind> expected,
                        Pattern<kind> advice = "") {
    return {kind.id, name.text, found.text, expected.text, advice.text};
}

} // namespace problem_rows

/// The sentences of every problem.
class ProblemRows {
  public:
    using Row = problem_rows::Row;

    template <std::size_t count>
    consteval ProblemRows(const Row (&rows)[count]) { // NOLINT: written as a list
        static_assert(count == problem_count, "one row a problem");
        for (const Row& row : rows) {
            Row& place = rows_[static_cast<std::size_t>(row.id)];
            if (!place.found.empty()) throw "a problem has its row twice";
            if (row.found.empty() || row.expected.empty()) throw "a problem without a sentence";
            place = row;
        }
    }
    [[nodiscard]] const Row& operator[](ProblemId id) const {
        return rows_[static_cast<std::size_t>(id)];
    }

  private:
    std::array<Row, problem_count> rows_;
};

struct ProblemsWords {
    // Around the sentences, each in a line of its own.
    Phrase<Text, Text> found; ///< place, or empty; what was found
    Phrase<Text> at;          ///< path
    Phrase<Text> expected;
    Phrase<Text> did_you_mean; ///< name; in place of other advice

    FoundWords value;
    Nouns noun;
    NamesOf<FileMeant, count_to(last_file_meant)> file;
    ProblemRows rows;
};

} // namespace quoin
