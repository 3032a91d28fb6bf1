// Every direction of rounding, as a table and against a plain definition.
#include <catch.hpp>

#include <cstdint>
#include <limits>
#include <random>

#include <quoin/exact/rounding.hpp>

using namespace quoin;

namespace {

constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t least = std::numeric_limits<std::int64_t>::min();

/// Rounds by trying: the whole numbers around numerator / denominator, compared as the names say.
Int128 tried(Int128 numerator, Int128 denominator, Rounding rounding) {
    if (numerator < 0) return -tried(-numerator, denominator, rounding);
    Int128 below = numerator / denominator;
    const Int128 twice_rest = 2 * (numerator - below * denominator);
    if (rounding == Rounding::down || twice_rest == 0) return below;
    if (rounding == Rounding::up || twice_rest >= denominator) return below + 1;
    return below;
}

} // namespace

TEST_CASE("Each rounding, by its name") {
    struct Row {
        std::int64_t numerator, denominator, half_away, down, up;
    };
    const Row rows[] = {
        {0, 1, 0, 0, 0},
        {0, 7, 0, 0, 0},
        {5, 2, 3, 2, 3},
        {-5, 2, -3, -2, -3},
        {7, 2, 4, 3, 4},
        {-7, 2, -4, -3, -4},
        {1, 2, 1, 0, 1},
        {-1, 2, -1, 0, -1},
        {1, 3, 0, 0, 1},
        {-1, 3, 0, 0, -1},
        {2, 3, 1, 0, 1},
        {-2, 3, -1, 0, -1},
        {29, 10, 3, 2, 3},
        {-29, 10, -3, -2, -3},
        {21, 10, 2, 2, 3},
        {-21, 10, -2, -2, -3},
        {24, 10, 2, 2, 3},
        {25, 10, 3, 2, 3},
        {26, 10, 3, 2, 3},
        {6, 3, 2, 2, 2},
        {-6, 3, -2, -2, -2},
        {2005, 10, 201, 200, 201},
        {most, 1, most, most, most},
        {least, 1, least, least, least},
        {most, most, 1, 1, 1},
        {least, most, -1, -1, -2},
        {most - 1, most, 1, 0, 1},
        {most / 2, most, 0, 0, 1},
        {most / 2 + 1, most, 1, 0, 1},
        {most, 2, most / 2 + 1, most / 2, most / 2 + 1},
        {least, 2, least / 2, least / 2, least / 2},
    };
    for (const Row& row : rows) {
        CAPTURE(row.numerator, row.denominator);
        CHECK(divide_rounded(row.numerator, row.denominator, Rounding::half_away) == row.half_away);
        CHECK(divide_rounded(row.numerator, row.denominator, Rounding::down) == row.down);
        CHECK(divide_rounded(row.numerator, row.denominator, Rounding::up) == row.up);
    }
}

TEST_CASE("Rounding is known to the compiler") {
    STATIC_REQUIRE(divide_rounded(5, 2, Rounding::half_away) == 3);
    STATIC_REQUIRE(multiply_divide(most, most, most, Rounding::down) == most);
}

TEST_CASE("Products and quotients agree with their definition") {
    std::mt19937_64 random(3);
    const auto any = [&] { return static_cast<std::int64_t>(random()) >> random() % 64; };
    int in_range = 0;
    for (int i = 0; i < 100'000; ++i) {
        const std::int64_t a = any();
        const std::int64_t b = any();
        const auto denominator = static_cast<std::int64_t>((random() >> (1 + random() % 63)) | 1U);
        const auto rounding = static_cast<Rounding>(i % 3);
        const Int128 expected = tried(Int128{a} * b, denominator, rounding);
        if (least <= expected && expected <= most) {
            ++in_range;
            if (multiply_divide(a, b, denominator, rounding) != expected) FAIL(a << " " << b);
        } else {
            REQUIRE_THROWS_AS(multiply_divide(a, b, denominator, rounding), Overflow);
        }
    }
    CHECK(in_range > 50'000);
}

TEST_CASE("A product that leaves 64 bits on its way may come back") {
    CHECK(multiply_divide(most, 1'000, 1'000, Rounding::half_away) == most);
    CHECK(multiply_divide(least, 1'000, 1'000, Rounding::half_away) == least);
    CHECK(multiply_divide(most, 3, 6, Rounding::half_away) == most / 2 + 1);
    CHECK(multiply_divide(-most, 3, 6, Rounding::half_away) == -(most / 2 + 1));
    CHECK_THROWS_AS(multiply_divide(most, 2, 1, Rounding::down), Overflow);
    CHECK_THROWS_AS(multiply_divide(least, -1, 1, Rounding::down), Overflow);
    CHECK_THROWS_WITH(multiply_divide(most, most, 1, Rounding::down),
                      "a product is too large for 64 bits");
}
