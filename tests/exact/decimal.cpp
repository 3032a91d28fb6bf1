// Decimal: exact from its literal or not at all, and shortest in its text.
#include <shown.hpp>

#include <cstdint>
#include <limits>
#include <random>

#include <quoin/exact/decimal.hpp>
#include <quoin/exact/percent.hpp>

using namespace quoin;

TEST_CASE("Literals are read exactly") {
    struct Row {
        const char* literal;
        std::int64_t billionths;
        const char* text;
    };
    const Row rows[] = {
        {"0", 0, "0"},
        {"-0", 0, "0"},
        {"0.000000000000", 0, "0"},
        {"0e99", 0, "0"},
        {"12", 12'000'000'000, "12"},
        {"6.125", 6'125'000'000, "6.125"},
        {"-0.5", -500'000'000, "-0.5"},
        {".5", 500'000'000, "0.5"},
        {"0.0085", 8'500'000, "0.0085"},
        {"0.000000001", 1, "0.000000001"},
        {"-0.000000001", -1, "-0.000000001"},
        {"1.5e3", 1'500'000'000'000, "1500"},
        {"1.5E+3", 1'500'000'000'000, "1500"},
        {"25e-1", 2'500'000'000, "2.5"},
        {"1e-9", 1, "0.000000001"},
        {"100000e-14", 1, "0.000000001"},
        {"3.1000000000000", 3'100'000'000, "3.1"},
        {"000123.450", 123'450'000'000, "123.45"},
        {"9223372036.854775807", 9'223'372'036'854'775'807, "9223372036.854775807"},
        {"-9223372036.854775807", -9'223'372'036'854'775'807, "-9223372036.854775807"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.literal);
        const auto value = Decimal::parse(row.literal);
        REQUIRE(value);
        CHECK(value->billionths() == row.billionths);
        CHECK(value->text() == row.text);
    }
}

TEST_CASE("What is no exact decimal is refused") {
    const char* texts[] = {
        "",
        " ",
        "-",
        "+1",
        "--1",
        "1.",
        ".",
        "1.2.3",
        "1e",
        "1e+",
        "1e-",
        "1e+-5",
        "1e--5",
        "1e5.0",
        "e3",
        "1 ",
        " 1",
        "1,000",
        "0x1",
        "1f",
        "0.0000000001",
        "1e-10",
        "1.23456789e-2",
        "1e10",
        "1e11",
        "1e99",
        "9223372036.854775808",
        "1e99999999999999999999",
        "-e1",
        "nan",
        "inf",
        "1/2",
        "½",
    };
    for (const char* text : texts) {
        CAPTURE(text);
        CHECK_FALSE(Decimal::parse(text));
    }
}

TEST_CASE("Decimals survive their own text") {
    std::mt19937_64 random(2);
    for (int i = 0; i < 20'000; ++i) {
        const auto size = static_cast<std::int64_t>(random() >> (1 + random() % 63));
        const Decimal value = Decimal::billionths(i % 2 == 0 ? size : -size);
        if (Decimal::parse(value.text()) != value) FAIL(value.text());
    }
    CHECK(Decimal::billionths(std::numeric_limits<std::int64_t>::min()).text() ==
          "-9223372036.854775808");
}

TEST_CASE("Decimals add, compare and round exactly") {
    const Decimal tenth = *Decimal::parse("0.1");
    const Decimal fifth = *Decimal::parse("0.2");
    CHECK(tenth + fifth == *Decimal::parse("0.3"));
    CHECK(tenth - fifth == -tenth);
    CHECK(Decimal::whole(3) > *Decimal::parse("2.999999999"));
    CHECK(Decimal::whole(-3).is_whole());
    CHECK_FALSE(tenth.is_whole());
    CHECK(Decimal::parse("2.5")->rounded(Rounding::half_away) == 3);
    CHECK(Decimal::parse("-2.5")->rounded(Rounding::half_away) == -3);
    CHECK(Decimal::parse("2.499999999")->rounded(Rounding::half_away) == 2);
    CHECK(Decimal::parse("2.999999999")->rounded(Rounding::down) == 2);
    CHECK(Decimal::parse("2.000000001")->rounded(Rounding::up) == 3);
    CHECK(Percent(tenth) + Percent(fifth) == Percent(*Decimal::parse("0.3")));
    CHECK(Ltv(fifth) - Ltv(tenth) == Ltv(tenth));
    CHECK(Points(-tenth) < Points{});
}

TEST_CASE("Decimals that leave their range are an error with a message") {
    const Decimal largest = Decimal::billionths(std::numeric_limits<std::int64_t>::max());
    const Decimal smallest = Decimal::billionths(std::numeric_limits<std::int64_t>::min());
    const Decimal step = Decimal::billionths(1);
    CHECK_THROWS_WITH(largest + step, "a sum of decimals is too large");
    CHECK_THROWS_WITH(smallest - step, "a difference of decimals is too large");
    CHECK_THROWS_AS(-smallest, Overflow);
    CHECK_THROWS_AS(Decimal{} - smallest, Overflow);
    CHECK_THROWS_AS(Decimal::whole(10'000'000'000), Overflow);
    CHECK(Decimal::billionths(-1) - smallest == largest);
}
