// Money: its text both ways, checked arithmetic, and the named functions that round.
#include <shown.hpp>

#include <cstdint>
#include <limits>
#include <random>
#include <string>

#include <quoin/exact/money.hpp>

using namespace quoin;

namespace {

constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t least = std::numeric_limits<std::int64_t>::min();

Decimal decimal(const char* text) { return Decimal::parse(text).value(); }
Percent percent(const char* text) { return Percent(decimal(text)); }

} // namespace

TEST_CASE("Amounts are read to the cent") {
    struct Row {
        const char* text;
        std::int64_t cents;
    };
    const Row rows[] = {
        {"0", 0},
        {"0.00", 0},
        {"-0", 0},
        {"0.01", 1},
        {".01", 1},
        {"-0.01", -1},
        {"7", 700},
        {"7.5", 750},
        {"1580.17", 158017},
        {"-250", -25000},
        {"$1,580.17", 158017},
        {"-$1,580.17", -158017},
        {"$0.5", 50},
        {"999", 99900},
        {"1,000", 100000},
        {"12,345", 1234500},
        {"1,234,567.89", 123456789},
        {"007", 700},
        {"1.5e3", 150000},
        {"158017e-2", 158017},
        {"9223372036.85", 922337203685},
        {"-9223372036.85", -922337203685},
    };
    for (const Row& row : rows) {
        CAPTURE(row.text);
        const auto amount = Money::parse(row.text);
        REQUIRE(amount);
        CHECK(amount->count() == row.cents);
    }
}

TEST_CASE("What is no amount is refused") {
    const char* texts[] = {
        "",         " ",         "abc",   "-",        "$",         "--5",        "$-5",
        "$$5",      "+5",        "5-",    " 5",       "5 ",        "5.",         ".",
        "1.005",    "0.001",     "1.2.3", "1,00",     "1,0000",    "10,00,000",  ",100",
        "100,",     "1,",        ",",     "1,000,00", "1,000.0,0", "1,2e3",      "1000,000",
        "1.5,000",  "1e",        "1e+",   "1e+-5",    "1e2.0",     "e5",         "0x10",
        "1'000",    "NaN",       "inf",   "1_000",    "1e-3",      "9223372037", "1e300",
        "1e999999", "5 dollars", "€5",    "１２",     "1\n",       "$ 5",        "5$",
    };
    for (const char* text : texts) {
        CAPTURE(text);
        CHECK_FALSE(Money::parse(text));
    }
}

TEST_CASE("Amounts are written with two decimals") {
    struct Row {
        std::int64_t cents;
        const char* text;
    };
    const Row rows[] = {
        {0, "0.00"},
        {1, "0.01"},
        {-1, "-0.01"},
        {-99, "-0.99"},
        {-100, "-1.00"},
        {-101, "-1.01"},
        {10, "0.10"},
        {158017, "1580.17"},
        {-25000, "-250.00"},
        {100000000, "1000000.00"},
        {most, "92233720368547758.07"},
        {least, "-92233720368547758.08"},
    };
    for (const Row& row : rows) CHECK(Money::cents(row.cents).text() == row.text);
}

TEST_CASE("Amounts survive their own text") {
    std::mt19937_64 random(1);
    for (int i = 0; i < 20'000; ++i) {
        const auto size = static_cast<std::int64_t>(random() % 922'337'203'685);
        const Money amount = Money::cents(i % 2 == 0 ? size : -size);
        if (Money::parse(amount.text()) != amount) FAIL(amount.text());
    }
    CHECK(Money::parse(Money::cents(-5).text()) == Money::cents(-5));
}

TEST_CASE("Sums and multiples of money") {
    const Money price = Money::dollars(412900);
    CHECK(price + Money::cents(1) == Money::cents(41290001));
    CHECK(price - price == Money{});
    CHECK(-price == Money::cents(-41290000));
    CHECK(price * 3 == Money::cents(123870000));
    CHECK(price * -1 == -price);
    CHECK(price * 2U == price + price);
    Money sum;
    sum += price;
    sum -= Money::cents(1);
    CHECK(sum == Money::cents(41289999));
    CHECK(Money::cents(-1) < Money{});
    CHECK(Money{}.is_zero());
}

TEST_CASE("Money that leaves 64 bits is an error with a message") {
    const Money largest = Money::cents(most);
    const Money smallest = Money::cents(least);
    const Money cent = Money::cents(1);
    CHECK_THROWS_AS(largest + cent, Overflow);
    CHECK_THROWS_AS(smallest - cent, Overflow);
    CHECK_THROWS_AS(-smallest, Overflow);
    CHECK_THROWS_AS(largest * 2, Overflow);
    CHECK_THROWS_AS(cent * std::numeric_limits<std::uint64_t>::max(), Overflow);
    CHECK_THROWS_AS(Money::dollars(most / 100 + 1), Overflow);
    CHECK_THROWS_WITH(largest + cent, "a sum of money is too large");
    CHECK_THROWS_WITH(smallest - cent, "a difference of money is too large");
    CHECK_THROWS_WITH(largest * 2, "a multiple of money is too large");
    CHECK(largest + Money{} == largest);
    CHECK(smallest + largest == Money::cents(-1));
}

TEST_CASE("Shares of an amount, each rounded the way it says") {
    using enum Rounding;
    const Money price = Money::parse("412900").value();
    CHECK(percent_of(price, percent("3.5"), down) == Money::parse("14451.50"));
    CHECK(percent_of(Money::cents(333), percent("50"), half_away) == Money::cents(167));
    CHECK(percent_of(Money::cents(333), percent("50"), down) == Money::cents(166));
    CHECK(percent_of(Money::cents(-333), percent("50"), half_away) == Money::cents(-167));
    CHECK(percent_of(Money::cents(1), percent("0.000000001"), up) == Money::cents(1));
    CHECK(percent_of(Money::cents(1), percent("0.000000001"), half_away) == Money{});
    CHECK(percent_of(Money::dollars(162000), percent("0.61"), half_away) == Money::cents(98820));
    CHECK(percent_of(price, Percent{}, up) == Money{});

    CHECK(times(Money::parse("4.25").value(), decimal("317.5"), half_away) ==
          Money::parse("1349.38")); // 1349.375
    CHECK(times(Money::parse("4.25").value(), decimal("317.5"), down) == Money::parse("1349.37"));
    CHECK(times(Money::cents(-1), decimal("0.5"), half_away) == Money::cents(-1));

    CHECK(per_thousand_of(price, decimal("11.75"), half_away) == Money::parse("4851.58"));
    CHECK(per_thousand_of(price, decimal("11.75"), down) == Money::parse("4851.57"));

    CHECK(part_of(Money::cents(100), 3, down) == Money::cents(33));
    CHECK(part_of(Money::cents(100), 3, up) == Money::cents(34));
    CHECK(part_of(Money::cents(-100), 8, half_away) == Money::cents(-13));

    CHECK(to_dollars(Money::cents(199), down) == Money::dollars(1));
    CHECK(to_dollars(Money::cents(150), half_away) == Money::dollars(2));
    CHECK(to_dollars(Money::cents(149), half_away) == Money::dollars(1));
    CHECK(to_dollars(Money::cents(-150), half_away) == Money::dollars(-2));
    CHECK(to_dollars(Money::cents(101), up) == Money::dollars(2));
}

TEST_CASE("A share of the largest amount is formed in full") {
    using enum Rounding;
    const Money largest = Money::cents(most);
    CHECK(percent_of(largest, percent("100"), down) == largest);
    CHECK(percent_of(largest, percent("50"), down) == Money::cents(most / 2));
    CHECK(percent_of(largest, percent("50"), up) == Money::cents(most / 2 + 1));
    CHECK_THROWS_AS(percent_of(largest, percent("100.000000001"), up), Overflow);
    CHECK_THROWS_AS(times(largest, Decimal::whole(2), down), Overflow);
    CHECK_THROWS_WITH(times(largest, Decimal::whole(2), down),
                      "a product is too large for 64 bits");
}
