// Reader: takes an object's members one by one, typed, and records what is wrong as it goes.
//
// A getter that finds nothing usable records a problem and returns a neutral value, so that one
// pass over a file finds all its mistakes. finish() reports the members nobody asked for.
//
//   Reader plan(value, Path{}, findings);
//   std::string id = plan.id("id");
//   Money base = plan.money("base_price");
//   plan.each("elevations", [&](Reader& elevation) { ... });
//   plan.finish();
#pragma once

#include <bitset>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/exact/date.hpp>
#include <quoin/exact/decimal.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rate.hpp>
#include <quoin/text/caps.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/findings.hpp>
#include <quoin/text/spot.hpp>
#include <quoin/text/value.hpp>
#include <quoin/text/words.hpp>

namespace quoin {

/// The typed reading of one value, with its problem recorded; used by Reader and for lists.
std::optional<Money> as_money(const Spot& spot, Findings& findings);
std::optional<Decimal> as_decimal(const Spot& spot, Findings& findings);
std::optional<Date> as_date(const Spot& spot, Findings& findings);
std::optional<std::string> as_text(const Spot& spot, Findings& findings);
/// Records that a value is none of these names.
void report_not_one_of(const Spot& spot, const std::vector<std::string>& names, Findings& findings);

template <class Enum>
std::optional<Enum> as_word(const Spot& spot, const Words<Enum>& words, Findings& findings) {
    const bool is_text = spot.value->kind == Value::Kind::text;
    for (const auto& [name, meaning] : words) {
        if (is_text && spot.value->literal == name) return meaning;
    }
    if (!as_text(spot, findings)) return std::nullopt;
    std::vector<std::string> names;
    for (const auto& [name, meaning] : words) names.emplace_back(name);
    report_not_one_of(spot, names, findings);
    return std::nullopt;
}

/// The meaning of a word or a code of this enumeration or set.
template <Coded T>
auto as_coded(const Spot& spot, Findings& findings)
    -> std::optional<decltype(codes<T>.front().meaning)> {
    const auto given = as_text(spot, findings);
    if (!given) return std::nullopt;
    std::vector<std::string> names;
    for (const auto& [meaning, code, word] : codes<T>) {
        if (*given == word || *given == code) return meaning;
        names.emplace_back(word);
    }
    report_not_one_of(spot, names, findings);
    return std::nullopt;
}

class Reader {
  public:
    /// Records a problem where the value is no object; every getter then stays silent.
    Reader(const Value& value, Path path, Findings& findings);

    [[nodiscard]] bool has(std::string_view key);
    const Value* raw(std::string_view key);                 ///< nullptr where it is missing
    void must_have(std::string_view key) { required(key); } ///< reports it if it is missing
    void leave(std::string_view key) { raw(key); }          ///< read elsewhere; no mistake
    [[nodiscard]] Spot spot(std::string_view key); ///< of a member, or of the object itself
    [[nodiscard]] Spot here() const { return {value_, path_}; }
    [[nodiscard]] Findings& findings() { return *findings_; }
    /// Whether nothing was wrong so far: only then do checks between members make sense.
    [[nodiscard]] bool sound() const {
        return !findings_->full() && findings_->problems().size() == found_before_;
    }

    /// Whether "format" is this one. One problem where it is another, or missing.
    [[nodiscard]] bool format_is(std::string_view name);
    std::string text(std::string_view key);
    std::string text_or(std::string_view key, std::string fallback);
    /// A text that heads columns and stands in sentences: of at most caps::name letters.
    std::string name(std::string_view key);
    std::string name_or(std::string_view key, std::string fallback);
    /// Lower-case letters, digits and inner hyphens.
    std::string id(std::string_view key);
    Money money(std::string_view key);
    std::optional<Money> maybe_money(std::string_view key);
    Decimal decimal(std::string_view key);
    std::optional<Decimal> maybe_decimal(std::string_view key);
    Percent percent(std::string_view key) { return Percent(decimal(key)); }
    Points points(std::string_view key) { return Points(decimal(key)); }
    Rate rate(std::string_view key);
    Date date(std::string_view key);
    std::optional<Date> maybe_date(std::string_view key);
    int whole(std::string_view key, int lowest, int highest);
    std::optional<int> maybe_whole(std::string_view key, int lowest, int highest);
    bool flag_or(std::string_view key, bool fallback);
    std::vector<std::string> texts(std::string_view key); ///< a list of texts; empty if absent

    template <class Enum>
    Enum word(std::string_view key, const Words<Enum>& words) {
        const Value* member = required(key);
        if (member == nullptr) return words.front().second;
        return as_word(at(*member, key), words, *findings_).value_or(words.front().second);
    }
    template <class Enum>
    Enum word_or(std::string_view key, const Words<Enum>& words, Enum fallback) {
        return has(key) ? word(key, words) : fallback;
    }

    template <CodedEnum Enum>
    Enum word(std::string_view key) {
        if (required(key) == nullptr) return Enum{};
        return as_coded<Enum>(spot(key), *findings_).value_or(Enum{});
    }
    template <CodedEnum Enum>
    Enum word_or(std::string_view key, Enum fallback) {
        return has(key) ? word<Enum>(key) : fallback;
    }

    /// Calls `use` for each object of a list member; a missing member is a problem if `required`.
    /// Of a list with more than `most` entries, none is read.
    void each(std::string_view key, const std::function<void(Reader&)>& use, bool required = false,
              std::size_t most = caps::list);
    /// Calls `use` for an object member, if it is there.
    void object(std::string_view key, const std::function<void(Reader&)>& use,
                bool required = false);
    /// Calls `use` for each member of an object member but "comment": name, spot of the value.
    void members(std::string_view key, const std::function<void(const Key&, const Spot&)>& use);
    /// Calls `use` for each value of a list member; with more than `most`, for none.
    void items(std::string_view key, const std::function<void(const Spot&)>& use,
               std::size_t most = caps::list);

    /// Reports members that no getter asked for ("comment" is always allowed).
    void finish();

  private:
    [[nodiscard]] Spot at(const Value& member, std::string_view key) const {
        return {&member, Path{&path_, key}};
    }
    void missing(std::string_view key);
    void hold_to_name(std::string_view key, const std::string& name);
    const Value* required(std::string_view key);

    const Value* value_;
    Path path_;
    Findings* findings_;
    std::size_t found_before_;
    std::vector<std::string_view> names_; ///< that were asked for, whether they are there or not
    std::bitset<caps::members> asked_;    ///< the members that were
};

} // namespace quoin
