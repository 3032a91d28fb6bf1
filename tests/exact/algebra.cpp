// The algebra of quoin's numbers as a table that the compiler reads: what may mix, and what may
// not.
#include <catch.hpp>

#include <concepts>
#include <type_traits>

#include <quoin/exact/date.hpp>
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
template <class Number>
concept years_from = requires(Number n) {
    Months::years(n);
};

} // namespace

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
