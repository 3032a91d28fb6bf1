// Index: the place of an item in its list, of a type of its own for each kind of item, so that the
// index of a plan is never taken for that of a lot. Where there may be none, it is optional.
//
//   at(book.options, pick.option).name
//   for (const Index<Lot> lot : indexes_of(book.lots)) ...
//
// An index that does not fit its list is our own mistake, never a user's.
#pragma once

#include <compare>
#include <concepts>
#include <cstddef>
#include <vector>

#include <quoin/exact/broken.hpp>

namespace quoin {

template <class Item>
class Index {
  public:
    constexpr Index() = default; ///< of the first item
    template <std::integral Number>
    constexpr explicit Index(Number position) : position_(static_cast<std::size_t>(position)) {}

    [[nodiscard]] constexpr std::size_t position() const { return position_; }

    friend constexpr auto operator<=>(const Index&, const Index&) = default;

  private:
    std::size_t position_ = 0;
};

/// True of items that are found by their own Index alone, never by a bare number.
template <class Item>
inline constexpr bool only_by_index = false;

template <class Item>
[[nodiscard]] const Item& at(const std::vector<Item>& list, Index<Item> index) {
    ensure(index.position() < list.size(), "an index must fit its list");
    return list[index.position()];
}
template <class Item>
[[nodiscard]] Item& at(std::vector<Item>& list, Index<Item> index) {
    ensure(index.position() < list.size(), "an index must fit its list");
    return list[index.position()];
}
template <class List>
requires(!only_by_index<typename List::value_type>) [[nodiscard]] auto& at(List& list, int index) {
    const auto position = static_cast<std::size_t>(index);
    ensure(position < list.size(), "an index must fit its list");
    return list[position];
}

/// The indexes of a list, in its order.
template <class Item>
class Indexes {
  public:
    class Iterator {
      public:
        explicit constexpr Iterator(std::size_t position) : position_(position) {}
        constexpr Index<Item> operator*() const { return Index<Item>(position_); }
        constexpr Iterator& operator++() {
            ++position_;
            return *this;
        }
        friend constexpr bool operator==(const Iterator&, const Iterator&) = default;

      private:
        std::size_t position_;
    };

    explicit constexpr Indexes(std::size_t size) : size_(size) {}
    [[nodiscard]] constexpr Iterator begin() const { return Iterator(0); }
    [[nodiscard]] constexpr Iterator end() const { return Iterator(size_); }

  private:
    std::size_t size_;
};

template <class Item>
[[nodiscard]] Indexes<Item> indexes_of(const std::vector<Item>& list) {
    return Indexes<Item>(list.size());
}

/// A value for each item of a list; where it is empty, for none.
template <class Item, class Value>
class PerItem {
  public:
    PerItem() = default;
    explicit PerItem(std::vector<Value> values) : values_(std::move(values)) {}

    [[nodiscard]] bool empty() const { return values_.empty(); }
    [[nodiscard]] const Value& operator[](Index<Item> index) const {
        ensure(index.position() < values_.size(), "an index must fit its list");
        return values_[index.position()];
    }

    friend bool operator==(const PerItem&, const PerItem&) = default;

  private:
    std::vector<Value> values_;
};

} // namespace quoin
