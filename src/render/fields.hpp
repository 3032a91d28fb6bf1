// The fields of an answer, described once, and what visits them.
//
// A description is a template over the visitor; the JSON and the shape of an answer come of it:
//
//   void fields(auto& v, Of<QuoteLine> auto& line) {
//       v("area", line.area);                                   // as its type is written
//       v.said("total", [&] { return line.total(); });          // made of the fields
//       v.words("words", [&] { return words(line); });          // for people
//       v.when(line.structural, [&] { v("note", line.note); }); // not in every object
//   }
//
// Money is text with two decimals ("1580.17"), percents and rates are text as exact decimals, dates
// are "2026-11-24". What is one of a fixed list is a code, for programs: it never changes, and is
// never shown. Sentences for people stand beside, in members that no program reads.
#pragma once

#include <concepts>
#include <optional>
#include <ranges>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/json_writer.hpp>
#include <quoin/words/catalogue.hpp>
#include <quoin/words/figures.hpp>

namespace quoin {

/// A, const or not.
template <class A, class T>
concept Of = std::same_as<std::remove_const_t<A>, T>;

template <class T>
concept Exact = requires(const T& value) {
    { value.text() } -> std::same_as<std::string>;
};
template <class T>
concept MeasuredDecimal = requires(const T& value) {
    { value.value() } -> std::same_as<Decimal>;
};
template <class T>
concept Listed = std::ranges::range<T> && !std::convertible_to<T, std::string_view>;
template <class T>
inline constexpr bool is_optional = false;
template <class T>
inline constexpr bool is_optional<std::optional<T>> = true;

/// Writes the fields that it visits.
class FieldsToJson {
  public:
    FieldsToJson(JsonWriter& json, const Catalogue& say) : json_(json), say_(say) {}

    /// The part's name among the page's types and the server's schemas. One without a name stands
    /// where it is used.
    void named(std::string_view /*name*/) {}

    void operator()(std::string_view key, const auto& value) {
        json_.key(key);
        write(value);
    }
    /// A code that is always the same, such as the question that this answers.
    void constant(std::string_view key, std::string_view code) { json_.text(key, code); }
    /// One of two codes.
    void either(std::string_view key, bool holds, std::string_view code, std::string_view other) {
        json_.text(key, holds ? code : other);
    }
    /// A member that is made of others: `value` is asked for it.
    void said(std::string_view key, const auto& value) {
        json_.key(key);
        write(value());
    }
    /// Words for people, codes beside them that tell them apart: the one kind of member that is not
    /// read back.
    template <class F>
    void words(std::string_view key, const F& value) {
        json_.key(key);
        if constexpr (std::invocable<F>) {
            write(value());
        } else {
            write(value(say_));
        }
    }
    /// Words for people made of data that is told nowhere else, so they are read back, as they
    /// stand: `value` makes them, `hold` takes them.
    void told(std::string_view key, const auto& value, const auto& /*hold*/) { words(key, value); }
    /// A member that is held in another form: `value` makes it, `hold` takes it back.
    void held(std::string_view key, const auto& value, const auto& /*hold*/) { said(key, value); }
    /// A place in a list, by the name of what stands there.
    void place(std::string_view key, std::size_t place, const auto& list, const auto& name) {
        json_.text(key, name(list[place]));
    }
    /// A count; null where there is none.
    void counted(std::string_view key, int count) {
        count > 0 ? json_.number(key, count) : json_.null(key);
    }
    /// Null where the condition does not hold.
    void only(std::string_view key, bool holds, const auto& value) {
        json_.key(key);
        holds ? write(value) : json_.null();
    }
    /// As it is shown, half away from zero to so many decimals.
    void rounded(std::string_view key, const MeasuredDecimal auto& value, int decimals) {
        json_.text(key, fixed(value.value(), decimals));
    }
    /// An APR as it is shown, see disclosed(); null where none was found.
    void apr(std::string_view key, const std::optional<Rate>& value) {
        value ? json_.text(key, quoin::disclosed(value->percent())) : json_.null(key);
    }
    void disclosed(std::string_view key, const Percent& value) {
        json_.text(key, quoin::disclosed(value.value()));
    }
    /// An object; `name` as named().
    template <class F>
    void object(std::string_view key, const F& members, std::string_view /*name*/ = {}) {
        json_.object(key, members);
    }
    /// An object, or null where there is no value.
    template <class T, class F>
    void maybe(std::string_view key, const std::optional<T>& value, const F& members,
               std::string_view /*name*/ = {}) {
        if (value) return json_.object(key, [&] { members(*value); });
        json_.null(key);
    }
    /// An object, or null where the flag is up.
    template <class F>
    void unless(std::string_view key, bool flag, const F& members, std::string_view /*name*/ = {}) {
        flag ? json_.null(key) : json_.object(key, members);
    }
    /// Members that are there where the value is; `sign` is one of them.
    template <class T, class F>
    void given(std::string_view /*sign*/, const std::optional<T>& value, const F& members) {
        if (value) members(*value);
    }
    /// A list of objects; `members` is called with each item and its place.
    template <Listed T, class F>
    void each(std::string_view key, const T& list, const F& members,
              std::string_view /*name*/ = {}) {
        json_.list(key, [&] {
            std::size_t place = 0;
            for (const auto& item : list) json_.object([&] { members(item, place++); });
        });
    }
    /// Members that are there where the condition holds.
    void when(bool holds, const auto& members) {
        if (holds) members();
    }
    /// Members that are there where the loan can be had, and the object's refusals are none.
    void unless_refused(bool available, const auto& members) { when(available, members); }
    /// Every member of `value` is one of this object, too.
    void all_of(const auto& value) { fields(*this, value); }

    template <class T>
    void write(const T& value) {
        if constexpr (is_optional<T>) {
            value ? write(*value) : json_.null();
        } else if constexpr (std::convertible_to<T, std::string_view>) {
            json_.text(value);
        } else if constexpr (std::same_as<T, bool>) {
            json_.truth(value);
        } else if constexpr (std::integral<T>) {
            json_.number(static_cast<std::int64_t>(value));
        } else if constexpr (std::is_enum_v<T>) {
            json_.text(code_of(value));
        } else if constexpr (CodedSet<T>) {
            json_.list([&] {
                for (const auto& flag : codes<T>) {
                    if (value.*flag.meaning) json_.text(flag.code);
                }
            });
        } else if constexpr (std::same_as<T, Months>) {
            json_.number(value.count());
        } else if constexpr (Exact<T>) {
            json_.text(value.text());
        } else if constexpr (MeasuredDecimal<T>) {
            json_.text(value.value().text());
        } else if constexpr (Listed<T>) {
            json_.list([&] {
                for (const auto& item : value) write(item);
            });
        } else {
            json_.object([&] { fields(*this, value); });
        }
    }

  private:
    JsonWriter& json_;
    const Catalogue& say_;
};

/// What stands at a place of a list that another list's items are told beside.
template <class T>
const T& beside(const std::vector<T>& list, std::size_t place) {
    static const T none{};
    return place < list.size() ? list[place] : none;
}
template <class T>
T& beside(std::vector<T>& list, std::size_t place) {
    if (list.size() <= place) list.resize(place + 1);
    return list[place];
}

/// The JSON of an answer: how every answer is written.
template <class Answer>
std::string json_text_of(const Answer& answer, const Catalogue& say) {
    JsonWriter json;
    FieldsToJson(json, say).write(answer);
    std::string text = json.take();
    text += '\n'; // in place: an answer can be half a megabyte
    return text;
}

} // namespace quoin
