// Outlines: which are simple, which overlap, what lies in a side; overlaps against counted squares.
#include <random>

#include <shown.hpp>

#include "pricebook/geometry.hpp"

using namespace quoin;

namespace {

Outline box(std::int64_t left, std::int64_t front, std::int64_t right, std::int64_t back) {
    return {{left, front}, {right, front}, {right, back}, {left, back}};
}

/// A square of ten without its right back quarter.
const Outline ell{{0, 0}, {10, 0}, {10, 4}, {4, 4}, {4, 10}, {0, 10}};

/// The same line the other way around, begun at its second corner.
Outline turned(Outline outline) {
    std::rotate(outline.begin(), outline.begin() + 1, outline.end());
    std::reverse(outline.begin(), outline.end());
    return outline;
}

/// However each is written, and whichever comes first.
bool overlap_always(const Outline& one, const Outline& other) {
    const bool found = overlap(one, other);
    CHECK(overlap(other, one) == found);
    CHECK(overlap(turned(one), other) == found);
    CHECK(overlap(other, turned(one)) == found);
    CHECK(overlap(turned(other), turned(one)) == found);
    return found;
}

/// Whether the middle of a small square lies in both, looked at square by square.
bool share_a_square(const Outline& one, const Outline& other, std::int64_t size) {
    const auto doubled = [](Outline outline) {
        for (Point& corner : outline) corner = {2 * corner.x, 2 * corner.y};
        return outline;
    };
    const Outline a = doubled(one);
    const Outline b = doubled(other);
    for (std::int64_t x = 1; x < 2 * size; x += 2) {
        for (std::int64_t y = 1; y < 2 * size; y += 2) {
            if (lies({x, y}, a) == Lies::inside && lies({x, y}, b) == Lies::inside) return true;
        }
    }
    return false;
}

Outline mirrored(Outline outline, std::int64_t size) {
    for (Point& corner : outline) corner.x = size - corner.x;
    return outline;
}

/// A stair of steps within a square: an outline of upright and level sides.
Outline random_steps(std::mt19937& random, std::int64_t size) {
    std::uniform_int_distribution<std::int64_t> any(0, size - 1);
    const std::int64_t left = any(random);
    const std::int64_t front = any(random);
    std::int64_t x = std::uniform_int_distribution<std::int64_t>(left + 1, size)(random);
    Outline outline{{left, front}, {x, front}};
    std::int64_t y = front;
    while (x > left && y < size) {
        y = std::uniform_int_distribution<std::int64_t>(y + 1, size)(random);
        outline.push_back({x, y});
        x = std::uniform_int_distribution<std::int64_t>(left, x - 1)(random);
        outline.push_back({x, y});
    }
    if (x > left) outline.push_back({left, y});
    return outline;
}

} // namespace

TEST_CASE("Twice the area is positive counterclockwise, negative clockwise") {
    CHECK(twice_area(box(0, 0, 3, 5)) == 30);
    CHECK(twice_area(turned(box(0, 0, 3, 5))) == -30);
    CHECK(twice_area(ell) == 2 * 64);
    CHECK(twice_area({{0, 0}, {1, 0}, {0, 1}}) == 1);
    CHECK(twice_area({}) == 0);
    CHECK(twice_area(box(0, 0, 100'000, 100'000)) == 20'000'000'000);
}

TEST_CASE("A simple outline has three corners, no crossing, no fold and no place met twice") {
    CHECK(is_simple({{0, 0}, {5, 0}, {0, 5}}));
    CHECK(is_simple(box(0, 0, 3, 5)));
    CHECK(is_simple(turned(box(0, 0, 3, 5))));
    CHECK(is_simple(ell));
    CHECK(is_simple({{0, 0}, {3, 0}, {7, 0}, {7, 5}, {0, 5}})); // a corner in a straight side
    CHECK_FALSE(is_simple({}));
    CHECK_FALSE(is_simple({{0, 0}}));
    CHECK_FALSE(is_simple({{0, 0}, {5, 0}}));
    CHECK_FALSE(is_simple({{0, 0}, {5, 0}, {9, 0}}));                         // encloses nothing
    CHECK_FALSE(is_simple({{0, 0}, {5, 0}, {0, 5}, {5, 5}}));                 // crosses itself
    CHECK_FALSE(is_simple({{0, 0}, {5, 0}, {5, 0}, {5, 5}}));                 // a side of no length
    CHECK_FALSE(is_simple({{0, 0}, {5, 0}, {5, 5}, {5, 2}, {0, 5}}));         // folds back
    CHECK_FALSE(is_simple({{0, 0}, {9, 0}, {9, 9}, {5, 0}, {0, 9}}));         // touches a side
    CHECK_FALSE(is_simple({{0, 0}, {4, 4}, {8, 0}, {8, 8}, {4, 4}, {0, 8}})); // a corner twice
    CHECK_FALSE(is_simple({{5, 0}, {0, 5}, {0, 0}, {9, 0}, {0, 0}}));         // folds at its end
}

TEST_CASE("The plainest outline is the same for one shape, however it is written") {
    const Outline with_corners{{4, 4}, {4, 7}, {4, 10}, {0, 10}, {0, 0}, {10, 0}, {10, 4}};
    CHECK(plainest(with_corners) == ell);
    CHECK(plainest(turned(with_corners)) == ell);
    CHECK(plainest(turned(ell)) == ell);
    CHECK(plainest(box(0, 0, 10, 10)) != ell);
}

TEST_CASE("A place lies inside, on the line or outside") {
    CHECK(lies({2, 9}, ell) == Lies::inside);
    CHECK(lies({9, 2}, turned(ell)) == Lies::inside);
    CHECK(lies({4, 4}, ell) == Lies::on_line);
    CHECK(lies({4, 7}, ell) == Lies::on_line);
    CHECK(lies({5, 5}, ell) == Lies::outside);
    CHECK(lies({-1, 4}, ell) == Lies::outside); // level with two corners
    CHECK(lies({11, 4}, ell) == Lies::outside);
}

TEST_CASE("Outlines that touch do not overlap") {
    const Outline room = box(0, 0, 10, 10);
    CHECK_FALSE(overlap_always(room, box(10, 0, 20, 10)));  // a whole side
    CHECK_FALSE(overlap_always(room, box(10, 3, 20, 7)));   // a part of a side
    CHECK_FALSE(overlap_always(room, box(10, -5, 20, 15))); // a side within a longer one
    CHECK_FALSE(overlap_always(room, box(10, 5, 20, 15)));  // a part of either
    CHECK_FALSE(overlap_always(room, box(10, 10, 20, 20))); // a corner
    CHECK_FALSE(overlap_always(room, box(20, 20, 30, 30))); // nothing
    CHECK_FALSE(overlap_always(ell, box(4, 4, 10, 10)));    // in the bend of an L
    CHECK_FALSE(overlap_always(ell, box(5, 5, 12, 12)));
    CHECK_FALSE(overlap_always({{0, 0}, {10, 0}, {0, 10}}, {{10, 0}, {10, 10}, {0, 10}}));
    CHECK_FALSE(overlap_always({{0, 0}, {30, 0}, {0, 20}}, {{15, 10}, {30, 10}, {30, 20}}));
}

TEST_CASE("Outlines with ground in common overlap, by little or by all") {
    const Outline room = box(0, 0, 10, 10);
    CHECK(overlap_always(room, room));
    CHECK(overlap_always(room, {{0, 0}, {5, 0}, {10, 0}, {10, 10}, {0, 10}}));
    CHECK(overlap_always(room, box(9, 9, 20, 20)));
    CHECK(overlap_always(room, box(3, 3, 7, 7)));    // one inside the other
    CHECK(overlap_always(room, box(0, 3, 7, 7)));    // inside, along a part of a side
    CHECK(overlap_always(room, box(0, 0, 10, 5)));   // inside, along three sides
    CHECK(overlap_always(room, box(-5, 3, 15, 7)));  // a cross: no corner in the other
    CHECK(overlap_always(room, box(-5, 0, 15, 10))); // across, flush at both sides
    CHECK(overlap_always(room, ell));
    CHECK(overlap_always(ell, box(3, 3, 5, 5))); // over the inner corner
    CHECK(overlap_always(ell, box(0, 0, 2, 2)));
    CHECK(overlap_always(ell, {{4, 4}, {4, 10}, {3, 10}})); // a sliver behind the inner side
    CHECK(overlap_always({{0, 0}, {10, 0}, {0, 10}}, box(4, 4, 10, 10)));
    CHECK(overlap_always({{0, 0}, {10, 10}, {0, 10}}, {{0, 10}, {10, 0}, {10, 10}}));
    CHECK(overlap_always({{5, 0}, {10, 5}, {5, 10}, {0, 5}}, room)); // corners on the sides
}

TEST_CASE("Stepped outlines overlap just where they have a small square in common") {
    std::mt19937 random(20261124);
    constexpr std::int64_t size = 7;
    int overlapping = 0;
    for (int i = 0; i < 4000; ++i) {
        const Outline one = random_steps(random, size);
        const Outline steps = random_steps(random, size);
        const Outline other = i % 2 == 0 ? steps : mirrored(steps, size);
        REQUIRE(is_simple(one));
        REQUIRE(is_simple(other));
        const bool expected = share_a_square(one, other, size);
        INFO(i);
        REQUIRE(overlap(one, other) == expected);
        REQUIRE(overlap(turned(other), one) == expected);
        overlapping += expected ? 1 : 0;
    }
    CHECK(overlapping > 1000);
    CHECK(overlapping < 3000);
}

TEST_CASE("An opening lies in one side, of any slope, and not around a corner") {
    CHECK(in_one_side({2, 0}, {8, 0}, ell));
    CHECK(in_one_side({8, 0}, {2, 0}, turned(ell)));
    CHECK(in_one_side({0, 0}, {10, 0}, ell)); // all of it
    CHECK(in_one_side({5, 0}, {8, 0}, {{0, 0}, {6, 0}, {10, 0}, {10, 9}, {0, 9}}));
    CHECK_FALSE(in_one_side({2, 1}, {8, 1}, ell));
    CHECK_FALSE(in_one_side({8, 0}, {12, 0}, ell)); // beyond the corner
    CHECK_FALSE(in_one_side({8, 0}, {10, 2}, ell)); // around it
    CHECK_FALSE(in_one_side({10, 2}, {10, 6}, ell));
    const Outline slanted{{0, 0}, {1000, 0}, {1000, 700}, {0, 400}}; // 3 in 10
    CHECK(in_one_side({500, 550}, {100, 430}, slanted));
    CHECK(in_one_side({501, 550}, {103, 431}, slanted)); // nearer than a hundredth
    CHECK_FALSE(in_one_side({501, 552}, {103, 431}, slanted));
}
