// The algebra of quoin's numbers as a table that the compiler reads: what may mix, and what may
// not.
#include <catch.hpp>

#include <concepts>
#include <optional>
#include <type_traits>
#include <vector>

#include <quoin/exact/date.hpp>
#include <quoin/exact/index.hpp>
#include <quoin/exact/money.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/exact/rate.hpp>

using namespace quoin;

namespace {

template <class A, class B>
concept addable = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept subtractable = requires(A a, B b) {
    a - b;
};
template <class A, class B>
concept multipliable = requires(A a, B b) {
    a* b;
};
template <class A, class B>
concept divisible = requires(A a, B b) {
    a / b;
};
template <class A, class B>
concept comparable = requires(A a, B b) {
    a < b;
};
template <class A, class B>
concept equatable = requires(A a, B b) {
    a == b;
};

template <class A, class B>
concept strangers =
    !addable<A, B> && !addable<B, A> && !subtractable<A, B> && !subtractable<B, A> &&
    !multipliable<A, B> && !multipliable<B, A> && !comparable<A, B> && !comparable<B, A> &&
    !equatable<A, B> && !std::is_convertible_v<A, B> && !std::is_convertible_v<B, A> &&
    !std::is_constructible_v<A, B>;

/// Neither made from bare numbers without a name, nor turned back into one.
template <class A>
concept closed = !std::is_convertible_v<int, A> && !std::is_convertible_v<double, A> &&
                 !std::is_constructible_v<A, double> && !std::is_constructible_v<A, float> &&
                 !std::is_convertible_v<A, int> && !std::is_convertible_v<A, long long> &&
                 !std::is_convertible_v<A, double> && !std::is_convertible_v<A, bool>;

template <class Number>
concept cents_from = requires(Number n) {
    Money::cents(n);
};
template <class Number>
concept dollars_from = requires(Number n) {
    Money::dollars(n);
};
template <class Number>
concept billionths_from = requires(Number n) {
    Decimal::billionths(n);
};
template <class Number>
concept whole_from = requires(Number n) {
    Decimal::whole(n);
};
template <class Number>
concept millionths_from = requires(Number n) {
    Rate::millionths(n);
};
template <class List, class Place>
concept found_in = requires(List list, Place place) {
    at(list, place);
};
template <class Number>
concept years_from = requires(Number n) {
    Months::years(n);
};

struct Door {};
struct Window {};
struct Nail {};

} // namespace

template <>
inline constexpr bool quoin::only_by_index<Door> = true;

TEST_CASE("Each number mixes with its own kind") {
    STATIC_REQUIRE(addable<Money, Money>);
    STATIC_REQUIRE(subtractable<Money, Money>);
    STATIC_REQUIRE(comparable<Money, Money>);
    STATIC_REQUIRE(multipliable<Money, int>);
    STATIC_REQUIRE(multipliable<Money, std::int64_t>);
    STATIC_REQUIRE(addable<Decimal, Decimal>);
    STATIC_REQUIRE(addable<Percent, Percent>);
    STATIC_REQUIRE(addable<Points, Points>);
    STATIC_REQUIRE(subtractable<Ltv, Ltv>);
    STATIC_REQUIRE(addable<Months, Months>);
    STATIC_REQUIRE(comparable<Rate, Rate>);
    STATIC_REQUIRE(comparable<Date, Date>);
}

TEST_CASE("No number mixes with another kind") {
    STATIC_REQUIRE(strangers<Money, Rate>);
    STATIC_REQUIRE(strangers<Money, Percent>);
    STATIC_REQUIRE(strangers<Money, Points>);
    STATIC_REQUIRE(strangers<Money, Ltv>);
    STATIC_REQUIRE(strangers<Money, Decimal>);
    STATIC_REQUIRE(strangers<Money, Months>);
    STATIC_REQUIRE(strangers<Money, Date>);
    STATIC_REQUIRE(strangers<Percent, Points>);
    STATIC_REQUIRE(strangers<Percent, Ltv>);
    STATIC_REQUIRE(strangers<Percent, Rate>);
    STATIC_REQUIRE(strangers<Points, Ltv>);
    STATIC_REQUIRE(strangers<Points, Rate>);
    STATIC_REQUIRE(strangers<Ltv, Rate>);
    STATIC_REQUIRE(strangers<Months, Rate>);
    STATIC_REQUIRE(strangers<Months, Date>);
}

TEST_CASE("A decimal becomes a percent only by name") {
    STATIC_REQUIRE(std::is_constructible_v<Percent, Decimal>);
    STATIC_REQUIRE(!std::is_convertible_v<Decimal, Percent>);
    STATIC_REQUIRE(!std::is_convertible_v<Percent, Decimal>);
    STATIC_REQUIRE(!addable<Percent, Decimal>);
    STATIC_REQUIRE(!comparable<Ltv, Decimal>);
    STATIC_REQUIRE(!std::is_constructible_v<Rate, Decimal>);
}

TEST_CASE("Nothing is made from a bare or binary number") {
    STATIC_REQUIRE(closed<Money>);
    STATIC_REQUIRE(closed<Decimal>);
    STATIC_REQUIRE(closed<Percent>);
    STATIC_REQUIRE(closed<Points>);
    STATIC_REQUIRE(closed<Ltv>);
    STATIC_REQUIRE(closed<Rate>);
    STATIC_REQUIRE(closed<Months>);
    STATIC_REQUIRE(closed<Date>);
    STATIC_REQUIRE(std::is_constructible_v<Months, int>);
    STATIC_REQUIRE(!std::is_constructible_v<Money, int>);
}

TEST_CASE("Named makers take whole numbers only") {
    STATIC_REQUIRE((cents_from<int> && cents_from<std::int64_t>));
    STATIC_REQUIRE((!cents_from<double> && !cents_from<float> && !cents_from<long double>));
    STATIC_REQUIRE((dollars_from<int> && !dollars_from<double>));
    STATIC_REQUIRE((billionths_from<std::int64_t> && !billionths_from<double>));
    STATIC_REQUIRE((whole_from<int> && !whole_from<double>));
    STATIC_REQUIRE((millionths_from<int> && !millionths_from<double>));
    STATIC_REQUIRE((years_from<int> && !years_from<double>));
}

TEST_CASE("Money is multiplied by counts and by nothing else") {
    STATIC_REQUIRE(!multipliable<Money, Money>);
    STATIC_REQUIRE(!multipliable<Money, double>);
    STATIC_REQUIRE(!multipliable<Money, bool>);
    STATIC_REQUIRE(!divisible<Money, int>);
    STATIC_REQUIRE(!divisible<Money, Money>);
    STATIC_REQUIRE(!divisible<Money, double>);
    STATIC_REQUIRE(!addable<Money, int>);
    STATIC_REQUIRE(!comparable<Money, int>);
    STATIC_REQUIRE(!equatable<Money, int>);
}

TEST_CASE("An index finds its own kind of item and nothing else") {
    STATIC_REQUIRE(comparable<Index<Door>, Index<Door>>);
    STATIC_REQUIRE(strangers<Index<Door>, Index<Window>>);
    STATIC_REQUIRE(strangers<Index<Door>, std::optional<Index<Window>>>);
    STATIC_REQUIRE(closed<Index<Door>>);
    STATIC_REQUIRE(!std::is_convertible_v<std::size_t, Index<Door>>);
    STATIC_REQUIRE(!addable<Index<Door>, int>);
    STATIC_REQUIRE(!equatable<Index<Door>, int>);
    STATIC_REQUIRE(!comparable<Index<Door>, std::size_t>);
    STATIC_REQUIRE(found_in<std::vector<Door>, Index<Door>>);
    STATIC_REQUIRE(!found_in<std::vector<Door>, Index<Window>>);
    STATIC_REQUIRE(!found_in<std::vector<Door>, std::optional<Index<Door>>>);
    STATIC_REQUIRE(!found_in<std::vector<Door>, int>); // only by its index
    STATIC_REQUIRE(found_in<std::vector<Nail>, int>);
}

TEST_CASE("An index that does not fit its list is a fault of our own") {
    std::vector<Nail> nails(2);
    CHECK(&at(nails, Index<Nail>(1)) == &nails[1]);
    CHECK_THROWS_AS(at(nails, Index<Nail>(2)), Broken);
    CHECK_THROWS_AS(at(nails, -1), Broken);
    std::size_t seen = 0;
    for (const Index<Nail> index : indexes_of(nails)) seen += index.position() + 1;
    CHECK(seen == 3);
    const PerItem<Nail, int> lengths({7, 9});
    CHECK(lengths[Index<Nail>(1)] == 9);
    CHECK_THROWS_AS(lengths[Index<Nail>(2)], Broken);
}

TEST_CASE("Rates and dates have no sums of their own") {
    STATIC_REQUIRE(!addable<Rate, Rate>);
    STATIC_REQUIRE(!multipliable<Rate, Rate>);
    STATIC_REQUIRE(!multipliable<Rate, int>);
    STATIC_REQUIRE(!addable<Date, Date>);
    STATIC_REQUIRE(!subtractable<Date, Date>); // days_between says which way it counts
    STATIC_REQUIRE(!addable<Date, int>);
    STATIC_REQUIRE(!multipliable<Decimal, Decimal>); // a product needs a rounding
    STATIC_REQUIRE(!multipliable<Percent, Percent>);
}
