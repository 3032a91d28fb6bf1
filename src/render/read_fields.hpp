// An answer out of its JSON, by visiting its fields: what the visitor of fields.hpp writes, this
// one reads. The JSON has been held to the answer's shape before, so every member is of its kind.
//
// What is made of other members is made again of them; words for people are left out.
#pragma once

#include <charconv>
#include <cstdint>
#include <functional>
#include <limits>
#include <memory>
#include <utility>

#include "shape_fields.hpp"
#include <quoin/render/shape.hpp>
#include <quoin/text/problems.hpp>
#include <quoin/text/reader.hpp>

namespace quoin {

class FieldsFromJson {
  public:
    /// Precondition: the spot outlives the visitor.
    FieldsFromJson(const Spot& object, Findings& findings) : here_(&object), findings_(findings) {}

    void operator()(std::string_view key, auto& value) {
        with(key, [&](const Spot& spot) { read(spot, value); });
    }
    void named(std::string_view /*name*/) {}
    void constant(std::string_view /*key*/, std::string_view /*code*/) {}
    void either(std::string_view key, bool& holds, std::string_view code, std::string_view) {
        with(key, [&](const Spot& spot) { holds = spot.value->literal == code; });
    }
    void said(std::string_view /*key*/, const auto& /*value*/) {}
    void words(std::string_view /*key*/, const auto& /*value*/) {}
    template <class F, class G>
    void told(std::string_view key, const F& /*value*/, const G& hold) {
        take_back<std::invoke_result_t<F, const Catalogue&>>(key, hold);
    }
    template <class F, class G>
    void held(std::string_view key, const F& /*value*/, const G& hold) {
        take_back<std::invoke_result_t<F>>(key, hold);
    }
    /// Names are looked up when all is read: the list may come later.
    void place(std::string_view key, std::size_t& place, const auto& list, const auto& name) {
        with(key, [&](const Spot& spot) {
            later_.emplace_back([this, mark = Mark(spot), &place, &list, name] {
                for (place = 0; place < list.size(); ++place) {
                    if (name(list[place]) == mark.value->literal) return;
                }
                std::vector<std::string> names;
                for (const auto& item : list) names.push_back(name(item));
                report_not_one_of(mark.spot(), names, findings_);
                place = 0;
            });
        });
    }
    void counted(std::string_view key, int& count) {
        std::optional<int> found;
        (*this)(key, found);
        count = found.value_or(0);
    }
    void only(std::string_view key, bool /*holds*/, auto& value) {
        with(key, [&](const Spot& spot) {
            if (spot.value->kind != Value::Kind::null) read(spot, value);
        });
    }
    void rounded(std::string_view key, MeasuredDecimal auto& value, int /*decimals*/) {
        (*this)(key, value);
    }
    void disclosed(std::string_view key, Percent& value) { (*this)(key, value); }
    void apr(std::string_view key, std::optional<Rate>& value) { (*this)(key, value); }
    template <class F>
    void object(std::string_view key, const F& members, std::string_view /*name*/ = {}) {
        with(key, [&](const Spot& spot) { inside(spot, members); });
    }
    template <class T, class F>
    void maybe(std::string_view key, std::optional<T>& value, const F& members,
               std::string_view /*name*/ = {}) {
        with(key, [&](const Spot& spot) {
            value.reset();
            if (spot.value->kind == Value::Kind::null) return;
            value.emplace();
            inside(spot, [&] { members(*value); });
        });
    }
    template <class F>
    void unless(std::string_view key, bool& flag, const F& members, std::string_view = {}) {
        with(key, [&](const Spot& spot) {
            flag = spot.value->kind == Value::Kind::null;
            if (!flag) inside(spot, members);
        });
    }
    template <class T, class F>
    void given(std::string_view sign, std::optional<T>& value, const F& members) {
        with(sign, [&](const Spot&) { members(value.emplace()); });
    }
    template <Listed T, class F>
    void each(std::string_view key, T& list, const F& members, std::string_view = {}) {
        with(key, [&](const Spot& spot) {
            list.clear();
            list.resize(spot.value->items.size());
            for (std::size_t i = 0; i < list.size(); ++i) {
                inside(item_of(spot, i), [&] { members(list[i], i); });
            }
        });
    }
    /// Whatever is there: the condition may hang on what comes later.
    void when(bool /*holds*/, const auto& members) { members(); }
    void unless_refused(bool /*available*/, const auto& members) { members(); }
    void all_of(auto& value) { fields(*this, value); }

    /// The whole answer. False with a problem where a figure is none, or a name stands for nothing.
    bool whole(auto& answer) {
        read(*here_, answer);
        for (const auto& look_up : later_) look_up();
        return findings_.none();
    }

  private:
    static Spot item_of(const Spot& list, std::size_t place) {
        return {&list.value->items[place], Path{&list.path, {}, static_cast<int>(place)}};
    }
    void with(std::string_view key, const auto& use) {
        if (const Value* member = here_->value->find(key)) {
            use(Spot{member, Path{&here_->path, key}});
        }
    }
    template <class T, class G>
    void take_back(std::string_view key, const G& hold) {
        // Not on the stack: gcc 12 takes an optional text there for one that was never made.
        const auto value = std::make_unique<std::remove_cvref_t<T>>();
        with(key, [&](const Spot& spot) {
            read(spot, *value);
            hold(*value);
        });
    }
    void inside(const Spot& object, const auto& members) {
        const Spot* const outer = std::exchange(here_, &object);
        members();
        here_ = outer;
    }
    template <class T>
    void take(const std::optional<T>& found, T& value) {
        if (found) value = *found;
    }
    template <class T>
    void whole_number(const Spot& spot, T& value) {
        const std::string& digits = spot.value->literal;
        const auto [end, error] =
            std::from_chars(digits.data(), digits.data() + digits.size(), value);
        if (error == std::errc{} && end == digits.data() + digits.size()) return;
        using Limits = std::numeric_limits<T>;
        findings_.add(problems::not_a_whole_number(
            spot, static_cast<std::int64_t>(Limits::lowest()),
            std::in_range<std::int64_t>(Limits::max()) ? static_cast<std::int64_t>(Limits::max())
                                                       : std::numeric_limits<std::int64_t>::max()));
    }
    template <class T>
    void read(const Spot& spot, T& value) {
        if constexpr (is_optional<T>) {
            value.reset();
            if (spot.value->kind != Value::Kind::null) read(spot, value.emplace());
        } else if constexpr (std::same_as<T, std::string>) {
            value = spot.value->literal;
        } else if constexpr (std::same_as<T, bool>) {
            value = spot.value->literal == "true";
        } else if constexpr (std::integral<T>) {
            whole_number(spot, value);
        } else if constexpr (CodedEnum<T>) {
            take(meaning_in(codes<T>, spot.value->literal), value);
        } else if constexpr (CodedSet<T>) {
            value = {};
            for (const Value& item : spot.value->items) {
                if (const auto flag = meaning_in(codes<T>, item.literal)) value.** flag = true;
            }
        } else if constexpr (std::same_as<T, Months>) {
            int count = 0;
            whole_number(spot, count);
            value = Months(count);
        } else if constexpr (std::same_as<T, Money>) {
            take(as_money(spot, findings_), value);
        } else if constexpr (std::same_as<T, Date>) {
            take(as_date(spot, findings_), value);
        } else if constexpr (std::same_as<T, Decimal>) {
            take(as_decimal(spot, findings_), value);
        } else if constexpr (std::same_as<T, Rate>) {
            const auto percent = as_decimal(spot, findings_);
            const auto rate = percent ? Rate::percent(*percent) : std::nullopt;
            if (percent && !rate) findings_.add(problems::not_a_rate(spot));
            take(rate, value);
        } else if constexpr (MeasuredDecimal<T>) {
            if (const auto decimal = as_decimal(spot, findings_)) value = T(*decimal);
        } else if constexpr (Listed<T>) {
            value.clear();
            value.resize(spot.value->items.size());
            for (std::size_t i = 0; i < value.size(); ++i) read(item_of(spot, i), value[i]);
        } else {
            inside(spot, [&] { fields(*this, value); });
        }
    }

    const Spot* here_; ///< the object in hand
    Findings& findings_;
    std::vector<std::function<void()>> later_;
};

template <class Answer>
std::optional<Answer> read_answer(const Document& document, Findings& findings) {
    const Spot root{&document.root, Path{}};
    hold_to(shape_of<Answer>(), root, findings);
    Answer answer;
    if (!findings.none() || !FieldsFromJson(root, findings).whole(answer)) return std::nullopt;
    return answer;
}

} // namespace quoin
