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
#include <utility>
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

namespace quoin {

/// The typed reading of one value, with its problem recorded; used by Reader and for lists.
std::optional<Money> as_money(const Spot& spot, Findings& findings);
std::optional<Decimal> as_decimal(const Spot& spot, Findings& findings);
std::optional<Date> as_date(const Spot& spot, Findings& findings);
std::optional<std::string> as_text(const Spot& spot, Findings& findings);
/// Records that a value is none of these names.
void report_not_one_of(const Spot& spot, const std::vector<std::string>& names, Findings& findings);

/// The meaning of a word or a code of a table.
template <class Table>
auto as_one_of(const Table& table, const Spot& spot, Findings& findings)
    -> decltype(meaning_in(table, {})) {
    const auto given = as_text(spot, findings);
    if (!given) return std::nullopt;
    const auto meaning = meaning_in(table, *given);
    if (meaning) return meaning;
    std::vector<std::string> names;
    for (const auto& one : table) names.emplace_back(one.word);
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
    void report(Problem problem) { findings_->add(std::move(problem)); }
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

    template <class Meaning>
    Meaning word(std::string_view key, const Words<Meaning>& words) {
        if (required(key) == nullptr) return words.front().meaning;
        return as_one_of(words, spot(key), *findings_).value_or(words.front().meaning);
    }
    template <class Meaning>
    Meaning word_or(std::string_view key, const Words<Meaning>& words, Meaning fallback) {
        return has(key) ? word(key, words) : fallback;
    }
    template <CodedEnum Enum>
    Enum word(std::string_view key) {
        if (required(key) == nullptr) return Enum{};
        return as_one_of(codes<Enum>, spot(key), *findings_).value_or(Enum{});
    }
    template <CodedEnum Enum>
    Enum word_or(std::string_view key, Enum fallback) {
        return has(key) ? word<Enum>(key) : fallback;
    }
    /// A list of words of an enumeration, or of the flags of a set; empty if absent.
    template <Coded T>
    auto words(std::string_view key, std::size_t most = caps::list) {
        std::vector<decltype(codes<T>.front().meaning)> list;
        const auto read = [&](const Spot& item) {
            if (const auto one = as_one_of(codes<T>, item, *findings_)) list.push_back(*one);
        };
        items(key, read, most);
        return list;
    }

    /// What `read` makes of each object of a list member; a missing member is a problem if
    /// `required`.
    template <class Read>
    auto list(std::string_view key, const Read& read, bool required = false) {
        std::vector<decltype(read(*this))> list;
        each(
            key, [&](Reader& item) { list.push_back(read(item)); }, required);
        return list;
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
