// The shape of an answer, by visiting its fields: every branch of the description is taken, on
// values that were made for it, so that nothing depends on an answer in hand.
#pragma once

#include <utility>

#include "fields.hpp"
#include <quoin/render/shape.hpp>

namespace quoin {

class FieldsToShape {
  public:
    explicit FieldsToShape(Shape& object) : object_(&object) {}

    void named(std::string_view name) { object_->name = name; }

    template <class T>
    void operator()(std::string_view key, const T& /*value*/) {
        add(key, shape<T>());
    }
    void constant(std::string_view key, std::string_view code) {
        add(key, one_of({std::string(code)}));
    }
    void either(std::string_view key, bool /*holds*/, std::string_view code,
                std::string_view other) {
        add(key, one_of({std::string(code), std::string(other)}));
    }
    template <class F>
    void said(std::string_view key, const F& /*value*/) {
        add(key, shape<std::remove_cvref_t<std::invoke_result_t<F>>>());
    }
    template <class F>
    void words(std::string_view key, const F& /*value*/) {
        if constexpr (std::invocable<F>) {
            add(key, shape<std::remove_cvref_t<std::invoke_result_t<F>>>());
        } else {
            add(key, shape<std::remove_cvref_t<std::invoke_result_t<F, const Catalogue&>>>());
        }
        object_->members.back().words = true;
    }
    void told(std::string_view key, const auto& value, const auto& /*hold*/) { words(key, value); }
    void held(std::string_view key, const auto& value, const auto& /*hold*/) { said(key, value); }
    void place(std::string_view key, std::size_t /*place*/, const auto& /*list*/,
               const auto& /*name*/) {
        add(key, {});
    }
    void counted(std::string_view key, int /*count*/) {
        add(key, or_null(of_kind(Shape::Kind::number)));
    }
    template <class T>
    void only(std::string_view key, bool /*holds*/, const T& /*value*/) {
        add(key, or_null(shape<T>()));
    }
    void disclosed(std::string_view key, const Percent& /*value*/) { add(key, {}); }
    void rounded(std::string_view key, const MeasuredDecimal auto& /*value*/, int /*decimals*/) {
        add(key, {});
    }
    void apr(std::string_view key, const std::optional<Rate>& /*value*/) { add(key, or_null({})); }
    template <class F>
    void object(std::string_view key, const F& members, std::string_view name = {}) {
        add(key, object_of(members, name));
    }
    template <class T, class F>
    void maybe(std::string_view key, const std::optional<T>& /*value*/, const F& members,
               std::string_view name = {}) {
        const T made{};
        unless(
            key, false, [&] { members(made); }, name);
    }
    template <class F>
    void unless(std::string_view key, bool /*flag*/, const F& members, std::string_view name = {}) {
        add(key, or_null(object_of(members, name)));
    }
    template <class T, class F>
    void given(std::string_view /*sign*/, const std::optional<T>& /*value*/, const F& members) {
        const T made{};
        only(There::sometimes, [&] { members(made); });
    }
    template <Listed T, class F>
    void each(std::string_view key, const T& /*list*/, const F& members,
              std::string_view name = {}) {
        const std::ranges::range_value_t<T> item{};
        add(key, list_of(object_of([&] { members(item, std::size_t{0}); }, name)));
    }
    void when(bool /*holds*/, const auto& members) { only(There::sometimes, members); }
    void unless_refused(bool /*available*/, const auto& members) {
        only(There::unless_refused, members);
    }
    template <class T>
    void all_of(const T& /*value*/) {
        Shape base = shape<T>();
        if (base.name.empty()) {
            for (ShapeMember& member : base.members) object_->members.push_back(std::move(member));
        } else {
            object_->bases.push_back(std::move(base));
        }
    }

    template <class T>
    static Shape shape() {
        if constexpr (is_optional<T>) {
            return or_null(shape<typename T::value_type>());
        } else if constexpr (std::same_as<T, bool>) {
            return of_kind(Shape::Kind::truth);
        } else if constexpr (std::integral<T> || std::same_as<T, Months>) {
            return of_kind(Shape::Kind::number);
        } else if constexpr (std::is_enum_v<T>) {
            return code_shape<T>();
        } else if constexpr (CodedSet<T>) {
            return list_of(code_shape<T>());
        } else if constexpr (std::convertible_to<T, std::string_view> || Exact<T> ||
                             MeasuredDecimal<T>) {
            return {};
        } else if constexpr (Listed<T>) {
            return list_of(shape<std::ranges::range_value_t<T>>());
        } else {
            return object_shape<T>();
        }
    }

  private:
    using There = ShapeMember::There;

    static Shape of_kind(Shape::Kind kind, std::string_view name = {}) {
        Shape shape;
        shape.kind = kind;
        shape.name = name;
        return shape;
    }
    static Shape one_of(std::vector<std::string> list) {
        Shape shape = of_kind(Shape::Kind::code);
        shape.codes = std::move(list);
        return shape;
    }
    static Shape or_null(Shape shape) {
        shape.nullable = true;
        return shape;
    }

    void only(There there, const auto& members) {
        const There outer = std::exchange(there_, there);
        members();
        there_ = outer;
    }
    template <class F>
    Shape object_of(const F& members, std::string_view name) {
        Shape inner = of_kind(Shape::Kind::object, name);
        Shape* const outer = std::exchange(object_, &inner);
        const There outside = std::exchange(there_, There::always);
        members();
        object_ = outer;
        there_ = outside;
        return inner;
    }
    template <class T>
    static Shape object_shape() {
        Shape of = of_kind(Shape::Kind::object);
        FieldsToShape visitor(of);
        const T value{};
        fields(visitor, value);
        return of;
    }
    template <class T>
    static Shape code_shape() {
        std::vector<std::string> list;
        for (const auto& one : codes<T>) list.emplace_back(one.code);
        return one_of(std::move(list));
    }
    static Shape list_of(Shape item) {
        Shape list = of_kind(Shape::Kind::list);
        list.item = std::make_shared<const Shape>(std::move(item));
        return list;
    }
    void add(std::string_view key, Shape shape) {
        object_->members.push_back({std::string(key), std::move(shape), there_});
    }

    Shape* object_;
    There there_ = There::always;
};

template <class Answer>
const Shape& shape_of() {
    static const Shape shape = FieldsToShape::shape<Answer>();
    return shape;
}

} // namespace quoin
