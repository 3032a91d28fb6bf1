// Drawing windows and doors.
#include "plan_openings.hpp"

#include <algorithm>
#include <cstdlib>

namespace quoin {
namespace {

struct Openings {
    const Walls& walls;
    PathText& wall;
    Pens& pens;
    std::vector<Extent>& swings;

    void draw_lines(const WallCut& cut, Pen pen, bool chosen);
    void draw_window(const WallCut& cut, bool chosen);
    void draw_leaf(Point hinge, Point closed, bool left, bool chosen);
    void draw_doors(const Opening& opening, const WallCut& cut, bool chosen);
    void draw_sliding(const WallCut& cut, bool chosen);
    void draw_opening(const OnFloor<Opening>& opening);
};

/// Lines along both faces of the wall.
void Openings::draw_lines(const WallCut& cut, Pen pen, bool chosen) {
    const Point along{cut.to.x - cut.from.x, cut.to.y - cut.from.y};
    PathText& line = pens.with(pen, chosen);
    line.segment(aside(cut.from, along, cut.left), aside(cut.to, along, cut.left));
    line.segment(aside(cut.from, along, -cut.right), aside(cut.to, along, -cut.right));
}

void Openings::draw_window(const WallCut& cut, bool chosen) {
    draw_lines(cut, Pen::medium, chosen);
    const Point along{cut.to.x - cut.from.x, cut.to.y - cut.from.y};
    const std::int64_t glass = (cut.left - cut.right) / 2;
    pens.with(Pen::fine, chosen)
        .segment(aside(cut.from, along, glass), aside(cut.to, along, glass));
}

/// A leaf that stands open by a quarter, and the way that it swings.
void Openings::draw_leaf(Point hinge, Point closed, bool left, bool chosen) {
    const Point leaf{closed.x - hinge.x, closed.y - hinge.y};
    const Point open = left ? Point{hinge.x - leaf.y, hinge.y + leaf.x}
                            : Point{hinge.x + leaf.y, hinge.y - leaf.x};
    pens.with(Pen::heavy, chosen).segment(hinge, open);
    PathText& swing = pens.with(Pen::fine, chosen);
    const std::int64_t radius = std::max(std::abs(leaf.x), std::abs(leaf.y));
    swing.move(open);
    swing.quarter(radius, closed, left);
    swings.push_back(extent_of({hinge, open, closed}));
}

void Openings::draw_doors(const Opening& opening, const WallCut& cut, bool chosen) {
    const Point along{cut.to.x - cut.from.x, cut.to.y - cut.from.y};
    const std::int64_t face = opening.left ? cut.left : -cut.right;
    const Point hinge = aside(cut.from, along, face);
    const Point end = aside(cut.to, along, face);
    if (opening.kind == OpeningKind::door) return draw_leaf(hinge, end, opening.left, chosen);
    const Point meet{(hinge.x + end.x) / 2, (hinge.y + end.y) / 2};
    draw_leaf(hinge, meet, opening.left, chosen);
    draw_leaf(end, meet, !opening.left, chosen);
}

/// Two leaves that pass each other.
void Openings::draw_sliding(const WallCut& cut, bool chosen) {
    const Point along{cut.to.x - cut.from.x, cut.to.y - cut.from.y};
    const auto at = [&](std::int64_t hundredths, std::int64_t side) {
        const Point place{cut.from.x + along.x * hundredths / 100,
                          cut.from.y + along.y * hundredths / 100};
        return aside(place, along, (cut.left - cut.right) / 2 + side);
    };
    constexpr std::int64_t apart = 9;
    pens.with(Pen::heavy, chosen).segment(at(0, apart), at(54, apart));
    pens.with(Pen::heavy, chosen).segment(at(46, -apart), at(100, -apart));
    draw_lines(cut, Pen::fine, chosen);
}

void Openings::draw_opening(const OnFloor<Opening>& opening) {
    const Opening& part = opening.part;
    const bool chosen = !opening.by.empty();
    const WallCut cut = walls.cut(part.from, part.to, part.kind != OpeningKind::cased);
    const Point along{cut.to.x - cut.from.x, cut.to.y - cut.from.y};
    if (cut.left + cut.right > 0) {
        wall.outline({aside(cut.from, along, -cut.right), aside(cut.to, along, -cut.right),
                      aside(cut.to, along, cut.left), aside(cut.from, along, cut.left)});
    }
    switch (part.kind) {
    case OpeningKind::window:
        return draw_window(cut, chosen);
    case OpeningKind::door:
    case OpeningKind::double_door:
        return draw_doors(part, cut, chosen);
    case OpeningKind::sliding_door:
        return draw_sliding(cut, chosen);
    case OpeningKind::garage_door:
        return draw_lines(cut, Pen::dashed, chosen);
    case OpeningKind::cased:
        return;
    }
}

/// Where doorless openings meet in a corner, nothing stands.
void clear_posts(const std::vector<OnFloor<Opening>>& openings, const Walls& walls,
                 PathText& wall) {
    struct Post {
        Point at;
        int openings = 0;
        Extent reach{{-half_inner_wall, -half_inner_wall}, {half_inner_wall, half_inner_wall}};
    };
    std::vector<Post> posts;
    for (const OnFloor<Opening>& opening : openings) {
        const Opening& part = opening.part;
        if (part.kind != OpeningKind::cased) continue;
        const WallCut cut = walls.cut(part.from, part.to, false);
        for (const Point end : {walls.corner_at(part.from), walls.corner_at(part.to)}) {
            auto post = std::find_if(posts.begin(), posts.end(),
                                     [&](const Post& one) { return one.at == end; });
            if (post == posts.end()) post = posts.insert(post, Post{end});
            ++post->openings;
            if (part.from.x == part.to.x) {
                const bool up = part.to.y > part.from.y;
                post->reach.low.x = -(up ? cut.left : cut.right);
                post->reach.high.x = up ? cut.right : cut.left;
            } else {
                const bool right = part.to.x > part.from.x;
                post->reach.low.y = -(right ? cut.right : cut.left);
                post->reach.high.y = right ? cut.left : cut.right;
            }
        }
    }
    for (const Post& post : posts) {
        if (post.openings < 2) continue;
        wall.box({{post.at.x + post.reach.low.x, post.at.y + post.reach.low.y},
                  {post.at.x + post.reach.high.x, post.at.y + post.reach.high.y}});
    }
}

} // namespace

void draw_openings(const std::vector<OnFloor<Opening>>& openings, const Walls& walls,
                   PathText& wall, Pens& pens, std::vector<Extent>& swings) {
    Openings drawing{walls, wall, pens, swings};
    for (const OnFloor<Opening>& opening : openings) drawing.draw_opening(opening);
    clear_posts(openings, walls, wall);
}

} // namespace quoin
