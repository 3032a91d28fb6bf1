// Walls: clear floors, outer faces, and what openings cut.
#include <algorithm>

#include <shown.hpp>

#include "pricebook/walls.hpp"

using namespace quoin;

namespace {

Outline box(std::int64_t left, std::int64_t front, std::int64_t right, std::int64_t back) {
    return {{left, front}, {right, front}, {right, back}, {left, back}};
}

Extent clear_of(const Walls& walls, std::size_t room) { return extent_of(walls.clear(room)); }

} // namespace

TEST_CASE("A lone room is clear between its outer walls, whichever way it is written") {
    Outline outline = box(0, 0, 1200, 1000);
    for (int turn = 0; turn < 2; ++turn) {
        const Walls walls({{outline}});
        CHECK(width_of(clear_of(walls, 0)) == 1200 - 2 * outer_wall);
        CHECK(depth_of(clear_of(walls, 0)) == 1000 - 2 * outer_wall);
        REQUIRE(walls.around().size() == 1);
        CHECK(twice_area(walls.around().front()) == 2 * 1200 * 1000);
        std::reverse(outline.begin(), outline.end());
    }
}

TEST_CASE("Two rooms share a wall, in the middle of their line, and an open room has none") {
    const Walls walls(
        {{box(0, 0, 1000, 1000)}, {box(1000, 0, 2000, 1000)}, {box(0, 1000, 1000, 1800), true}});
    CHECK(clear_of(walls, 0).high.x == 1000 - half_inner_wall);
    CHECK(clear_of(walls, 1).low.x == 1000 + half_inner_wall);
    CHECK(clear_of(walls, 0).high.y == 1000 - outer_wall); // towards the porch
    CHECK(walls.clear(2).size() == 4);
    CHECK(depth_of(clear_of(walls, 2)) == 800);
    REQUIRE(walls.around().size() == 1);
    CHECK(walls.around().front().size() == 4);
    CHECK(twice_area(walls.around().front()) == 2 * 2000 * 1000);
}

TEST_CASE("A side that goes on outside keeps one face") {
    const Walls walls({{box(0, 0, 1000, 2000)}, {box(1000, 0, 2000, 1000)}});
    CHECK(clear_of(walls, 0).high.x == 1000 - outer_wall);
    CHECK(clear_of(walls, 1).low.x == 1000 + half_inner_wall);
    CHECK(walls.clear(0).size() == 4);
    REQUIRE(walls.around().size() == 1);
    CHECK(walls.around().front().size() == 6);
}

TEST_CASE("A bay of slanted walls is clear by as much all around") {
    const Walls walls({{{{0, 0}, {1000, 0}, {1000, 1000}, {700, 1300}, {300, 1300}, {0, 1000}}}});
    CHECK(walls.clear(0).size() == 6);
    CHECK(clear_of(walls, 0).high.y == 1300 - outer_wall);
    // A wall slanted by 45 degrees: the corner moves by thickness x tan(22.5 degrees).
    const auto& clear = walls.clear(0);
    const auto right =
        std::find_if(clear.begin(), clear.end(), [](Point p) { return p.x == 950 && p.y > 500; });
    REQUIRE(right != clear.end());
    CHECK(std::abs(right->y - (1000 - 21)) <= 1);
}

TEST_CASE("A ring of rooms has an outer face and an inner one") {
    const Walls walls({{box(0, 0, 3000, 1000)},
                       {box(0, 1000, 1000, 2000)},
                       {box(2000, 1000, 3000, 2000)},
                       {box(0, 2000, 3000, 3000)}});
    REQUIRE(walls.around().size() == 2);
    const std::int64_t areas = twice_area(walls.around()[0]) + twice_area(walls.around()[1]);
    CHECK(areas == 2 * (9'000'000 + 1'000'000));
}

TEST_CASE("An opening cuts its wall, and stops at the faces of others") {
    const Walls walls({{box(0, 0, 1000, 1000)}, {box(1000, 0, 2000, 1000)}});
    const WallCut window = walls.cut({200, 0}, {600, 0});
    CHECK(window.left == outer_wall); // inward: to the left of the way to the right
    CHECK(window.right == 0);
    CHECK(window.from == Point{200, 0});
    const WallCut other_way = walls.cut({600, 0}, {200, 0});
    CHECK(other_way.left == 0);
    CHECK(other_way.right == outer_wall);
    const WallCut door = walls.cut({1000, 300}, {1000, 600});
    CHECK(door.left == half_inner_wall);
    CHECK(door.right == half_inner_wall);
    const WallCut whole = walls.cut({1000, 0}, {1000, 1000});
    CHECK(whole.from == Point{1000, outer_wall});
    CHECK(whole.to == Point{1000, 1000 - outer_wall});
    const WallCut none = walls.cut({100, 500}, {300, 500}); // amid a room
    CHECK(none.left + none.right == 0);
}

TEST_CASE("A doorless opening leaves no post that is none") {
    const Walls walls({{box(0, 0, 1000, 1000)}, {box(1000, 0, 2000, 1000)}});
    CHECK(walls.cut({1000, 90}, {1000, 700}, true).from == Point{1000, 90});
    CHECK(walls.cut({1000, 90}, {1000, 700}, false).from == Point{1000, outer_wall});
    CHECK(walls.cut({1000, 90}, {1000, 700}, false).to == Point{1000, 700});
}

TEST_CASE("A place aside of a slanted way is as far as asked, to a hundredth") {
    const Point place = aside({0, 0}, {300, 400}, 50);
    CHECK(place == Point{-40, 30});
    CHECK(aside({10, 10}, {0, -7}, 5) == Point{15, 10});
}
