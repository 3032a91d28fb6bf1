// The interest of a month by one multiplication, against the division that it stands for.
#include <catch.hpp>

#include <numeric>

#include <quoin/exact/rounding.hpp>

#include "../../src/loan/rounded_interest.hpp"
#include "seeded.hpp"

using namespace quoin;

namespace {

constexpr auto largest = RoundedInterest::largest_balance;
constexpr auto D = RoundedInterest::denominator;

/// floor((balance x rate + offset) / D), in full.
std::uint64_t divided(std::uint64_t balance, Rate rate, std::uint64_t offset) {
    const Int128 product = Int128{balance} * rate.millionths() + offset;
    return static_cast<std::uint64_t>(product / D);
}

} // namespace

TEST_CASE("One multiplication gives the interest that a division gives") {
    Seeded seeded(9);
    const std::uint64_t offsets[] = {RoundedInterest::half, 600'500'000, 0, 1, D - 1};
    int differ = 0;
    for (int i = 0; i < 20'000; ++i) {
        const Rate rate = Rate::millionths(seeded.between(0, Rate::max_millionths));
        const std::uint64_t offset = offsets[i % 5];
        const RoundedInterest interest(rate, offset);
        for (int each = 0; each < 100; ++each) {
            const auto balance =
                static_cast<std::uint64_t>(seeded.loan(static_cast<std::int64_t>(largest)).count());
            if (interest(balance) != divided(balance, rate, offset)) ++differ;
        }
    }
    CHECK(differ == 0);
}

TEST_CASE("Balances whose interest is a whole cent, or a hair under one") {
    // balance x rate + offset is a multiple of D, or one less: where a reciprocal would slip first.
    Seeded seeded(10);
    int differ = 0;
    int whole = 0;
    for (int i = 0; i < 200'000; ++i) {
        const auto units = static_cast<std::uint64_t>(seeded.between(1, 1'000)) * 100'000;
        const Rate rate = Rate::millionths(static_cast<std::int64_t>(units));
        const RoundedInterest interest(rate, RoundedInterest::half);
        const std::uint64_t step = D / std::gcd(D, units);
        const std::uint64_t balance =
            largest - static_cast<std::uint64_t>(seeded.between(0, 1'000'000));
        const std::uint64_t tie = balance / step * step + step / 2;
        for (const std::uint64_t near : {tie - 1, tie, tie + 1, balance}) {
            if (near > largest) continue;
            if ((near * units + D / 2) % D == 0) ++whole;
            if (interest(near) != divided(near, rate, RoundedInterest::half)) ++differ;
        }
    }
    CHECK(differ == 0);
    CHECK(whole > 10'000);
}

TEST_CASE("Interest at the edges of what one multiplication can do") {
    for (const std::int64_t units :
         {std::int64_t{0}, std::int64_t{1}, std::int64_t{6'125'001}, Rate::max_millionths}) {
        const Rate rate = Rate::millionths(units);
        const RoundedInterest interest(rate, RoundedInterest::half);
        for (const std::uint64_t balance :
             {std::uint64_t{0}, std::uint64_t{1}, largest - 1, largest}) {
            CAPTURE(units, balance);
            CHECK(interest(balance) == divided(balance, rate, RoundedInterest::half));
            CHECK(interest(balance) ==
                  static_cast<std::uint64_t>(
                      monthly_interest(Money::cents(static_cast<std::int64_t>(balance)), rate)
                          .count()));
        }
    }
}
