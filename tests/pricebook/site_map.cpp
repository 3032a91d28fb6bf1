// Maps of lots: in feet, in degrees, where a house stands, and what the price book says of it.
#include <catch.hpp>

#include <quoin/pricebook/price_book.hpp>
#include <quoin/pricebook/site_map.hpp>
#include <quoin/text/problems.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

/// A price book of one plan, 30 feet wide, and these lots.
PriceBook book_of(const std::string& lots) {
    Findings findings;
    PriceBook book = read_price_book(json(R"({"format": "quoin/pricebook/1",
                 "community": {"name": "Two Lots", "builder": "Nobody", "place": "here"},
                 "version": "1", "effective": "2026-11-01", "expires": "2026-12-31",
                 "areas": [{"id": "inside", "name": "Inside"}],
                 "plans": [{"id": "cabin", "name": "Cabin", "base_price": "100000",
                            "bedrooms": 1, "bathrooms": 1, "square_feet": 600,
                            "measures": {"house_width_ft": 30, "house_depth_ft": 40},
                            "elevations": [{"id": "plain", "name": "Plain", "price": "0"}]}],
                 "lots": [)" + lots + "]}"),
                                     nullptr, findings);
    REQUIRE(findings.none());
    return book;
}

std::string lot_of_book(const std::string& id, const std::string& more = "") {
    return R"({"id": ")" + id + R"(", "premium": "0", "status": "free", "grade": "level")" + more +
           "}";
}

std::string drawn(const std::string& id, const std::string& outline,
                  const std::string& setbacks = R"({"front": 25, "side": 7, "rear": 20})") {
    return R"({"lot": ")" + id + R"(", "front": 0, "outline": )" + outline + R"(, "setbacks": )" +
           setbacks + "}";
}

std::string map_of(const std::string& lots) {
    return R"({"format": "quoin/map/1", "lots": [)" + lots + "]}";
}

struct Read {
    SiteMap map;
    std::vector<Problem> problems;
};

Read read(const std::string& map, const PriceBook& book) {
    Findings findings;
    std::vector<Footprint> footprints;
    for (const Plan& plan : book.plans) footprints.push_back(footprint_of(plan, nullptr));
    SiteMap found =
        read_site_map(json(map), book, PerItem<Plan, Footprint>(std::move(footprints)), findings);
    return {std::move(found), findings.problems()};
}

/// The one problem of a map.
ProblemId problem_of(const std::string& map, const PriceBook& book) {
    const Read found = read(map, book);
    REQUIRE(found.problems.size() == 1);
    return found.problems.front().id;
}

const std::string fifty = "[[0, 0], [50, 0], [50, 100], [0, 100]]";

LotOutline lot_of(Outline outline, std::size_t front = 0) {
    return {Index<Lot>{}, std::move(outline), front, 2500, 700, 2000};
}

} // namespace

TEST_CASE("A house stands on the front setback line, in the middle of what the sides leave") {
    const auto house =
        footprint_on(lot_of({{0, 0}, {6400, 0}, {6400, 12000}, {0, 12000}}), 5000, 4400);
    REQUIRE(house);
    CHECK(*house == Outline{{700, 2500}, {5700, 2500}, {5700, 6900}, {700, 6900}});
}

TEST_CASE("A foot more than the setbacks leave is too much, either way") {
    const LotOutline lot = lot_of({{0, 0}, {6400, 0}, {6400, 12000}, {0, 12000}});
    CHECK_FALSE(footprint_on(lot, 5100, 4400));
    CHECK(footprint_on(lot, 5000, 7500)); // 25 + 75 + 20 = 120
    CHECK_FALSE(footprint_on(lot, 5000, 7600));
    CHECK(footprint_on(lot, 5000, 0)); // by its width alone
}

TEST_CASE("However a lot is turned, and whichever way its corners run, the house is the same") {
    const LotOutline clockwise = lot_of({{0, 0}, {0, 12000}, {6400, 12000}, {6400, 0}}, 3);
    const auto house = footprint_on(clockwise, 5000, 4400);
    REQUIRE(house);
    CHECK(house->front() == Point{700, 2500});
    // The street to the east: left, as seen from it, is south.
    const auto east =
        footprint_on(lot_of({{0, 0}, {0, -6400}, {-12000, -6400}, {-12000, 0}}, 0), 5000, 4400);
    REQUIRE(east);
    CHECK(east->front() == Point{-2500, -5700});
    CHECK(east->at(1) == Point{-2500, -700});
    // By 3-4-5 triangles: along (4, 3), into the lot (-3, 4).
    const auto slanted =
        footprint_on(lot_of({{0, 0}, {5120, 3840}, {-2080, 13440}, {-7200, 9600}}), 5000, 4400);
    REQUIRE(slanted);
    CHECK(slanted->front() == Point{700 * 4 / 5 - 2500 * 3 / 5, 700 * 3 / 5 + 2500 * 4 / 5});
}

TEST_CASE("On a lot like a slice of pie a house needs its width at its front") {
    // Twice as wide at the back as at the street.
    const LotOutline pie = lot_of({{-2500, 0}, {2500, 0}, {5000, 12000}, {-5000, 12000}});
    const LotView view(pie);
    REQUIRE(view.across(2500));
    CHECK(view.across(2500)->length() == 6042); // 50 + 50 * 25 / 120
    CHECK(view.house({4550, 4400}));
    CHECK_FALSE(view.house({4650, 4400}));
    // The other way round the back of the house is what is tight.
    const LotView narrowing(lot_of({{-5000, 0}, {5000, 0}, {2500, 12000}, {-2500, 12000}}));
    CHECK(narrowing.house({4550, 6900 - 2500}));
    CHECK(narrowing.house({5600, 1000}));
    CHECK(narrowing.house({5700, 4400})); // 100 - 50 * 69 / 120 - 14 = 57.25
    CHECK_FALSE(narrowing.house({5750, 4400}));
}

TEST_CASE("A house slides along its front past what is in its way") {
    // A notch out of the left half of the back, 60 feet from the street.
    const LotOutline notched =
        lot_of({{0, 0}, {10000, 0}, {10000, 12000}, {5000, 12000}, {5000, 6000}, {0, 6000}});
    const auto deep = footprint_on(notched, 3500, 5000);
    REQUIRE(deep);
    CHECK((*deep)[0].x >= 5700);
    CHECK((*deep)[1].x <= 9300);
    CHECK_FALSE(footprint_on(notched, 4000, 5000)); // neither beside the notch nor before it
    CHECK(footprint_on(notched, 8600, 1500));
}

TEST_CASE("The yard behind a house is what is least between it and the rear line") {
    const LotView view(lot_of({{0, 0}, {8000, 0}, {8000, 12000}, {0, 10400}})); // rises 1 in 5
    const auto house = view.house({5000, 4400});
    REQUIRE(house);
    CHECK(view.behind(*house) == 10400 + (*house)[0].x / 5 - 6900);
}

TEST_CASE("A map in feet is read as it stands") {
    const PriceBook book = book_of(lot_of_book("1", R"(, "measures": {"width_ft": 50,
                                                        "rear_setback_ft": 35})"));
    const Read found = read(R"({"format": "quoin/map/1", "north": 30,
                 "streets": [{"name": "Lane", "line": [[-10, -25.5], [60, "-25.5"]], "width": 50}],
                 "land": [{"name": "Pond", "kind": "water",
                           "outline": [[50, 0], [90, 0], [90, 90]]}],
                 "lots": [)" + drawn("1", fifty) +
                                "]}",
                            book);
    CHECK(found.problems.empty());
    CHECK(found.map.north == 30);
    REQUIRE(found.map.streets.size() == 1);
    CHECK(found.map.streets[0].line == Outline{{-1000, -2550}, {6000, -2550}});
    REQUIRE(found.map.land.size() == 1);
    CHECK(found.map.land[0].kind == LandKind::water);
    REQUIRE(found.map.lots.size() == 1);
    CHECK(found.map.lots[0].outline[2] == Point{5000, 10000});
}

TEST_CASE("Each lot of the book is drawn once, soundly, on ground of its own") {
    const PriceBook one = book_of(lot_of_book("1"));
    const PriceBook two = book_of(lot_of_book("1") + "," + lot_of_book("2"));
    const std::string beside = "[[50, 0], [100, 0], [100, 100], [50, 100]]";
    CHECK(read(map_of(drawn("1", fifty)), one).problems.empty());
    CHECK(read(map_of(drawn("1", fifty) + "," + drawn("2", beside)), two).problems.empty());
    CHECK(problem_of(map_of(drawn("1", fifty)), two) == ProblemId::lot_not_drawn);
    CHECK(problem_of(map_of(drawn("1", fifty) + "," + drawn("3", beside)), one) ==
          ProblemId::name_unknown);
    CHECK(problem_of(map_of(drawn("1", fifty) + "," + drawn("1", beside)), one) ==
          ProblemId::id_repeated);
    CHECK(problem_of(map_of(drawn("1", "[[0, 0], [50, 100], [50, 0], [0, 100]]")), one) ==
          ProblemId::outline_unsound);
    const std::string over = "[[40, 0], [100, 0], [100, 100], [40, 100]]";
    CHECK(problem_of(map_of(drawn("1", fifty) + "," + drawn("2", over)), two) ==
          ProblemId::outlines_overlap);
    CHECK(problem_of(map_of(drawn("1", fifty) + "," + drawn("2", fifty)), two) ==
          ProblemId::outlines_overlap);
    // Corners that were each rounded: a third of a foot over the line is none.
    const std::string near = "[[49.7, 0], [100, 0], [100, 100], [49.7, 100]]";
    CHECK(read(map_of(drawn("1", fifty) + "," + drawn("2", near)), two).problems.empty());
}

TEST_CASE("A yard is held to the deepest plan that fits, where all of their depths are known") {
    PriceBook book = book_of(lot_of_book("1", R"(, "measures": {"rear_setback_ft": 38})"));
    const std::string map = map_of(drawn("1", fifty));
    CHECK(problem_of(map, book) == ProblemId::drawn_otherwise);
    book.plans.push_back(book.plans.front());
    book.plans.back().measures.clear();
    CHECK(read(map, book).problems.empty());
}

TEST_CASE("Widths and yards are the book's within 2 %, and so is what fits") {
    const auto with = [](const std::string& more) { return book_of(lot_of_book("1", more)); };
    const std::string map = map_of(drawn("1", fifty));
    CHECK(read(map, with(R"(, "measures": {"width_ft": 51})")).problems.empty());
    CHECK(problem_of(map, with(R"(, "measures": {"width_ft": 52})")) == ProblemId::drawn_otherwise);
    CHECK(read(map, with(R"(, "measures": {"rear_setback_ft": 35})")).problems.empty());
    CHECK(problem_of(map, with(R"(, "measures": {"rear_setback_ft": 36})")) ==
          ProblemId::drawn_otherwise);
    const std::string narrow = "[[0, 0], [43, 0], [43, 100], [0, 100]]";
    CHECK(problem_of(map_of(drawn("1", narrow)), with("")) == ProblemId::too_small_as_drawn);
    const std::string nearly = "[[0, 0], [43.5, 0], [43.5, 100], [0, 100]]"; // 44 less 1.1 %
    CHECK(read(map_of(drawn("1", nearly)), with("")).problems.empty());
    const std::string shallow = "[[0, 0], [50, 0], [50, 80], [0, 80]]";
    CHECK(problem_of(map_of(drawn("1", shallow)), with("")) == ProblemId::too_small_as_drawn);
}

namespace {

/// Feet on the ground about 45 degrees north, as degrees: by the lengths that the National
/// Geospatial-Intelligence Agency's formulas give for a degree there, 364 605.57 ft of latitude and
/// 258 683.84 ft of longitude.
std::string geo_ring(const std::vector<std::pair<int, int>>& feet) {
    std::string ring;
    for (std::size_t i = 0; i <= feet.size(); ++i) {
        const auto [x, y] = feet[i % feet.size()];
        const auto text = [](std::int64_t billionths) {
            return Decimal::billionths(billionths).text();
        };
        const std::int64_t longitude = -93'000'000'000 + x * 100'000'000'000LL / 25'868'384;
        const std::int64_t latitude = 45'000'000'000 + y * 100'000'000'000LL / 36'460'557;
        ring += (ring.empty() ? "[" : ", [") + text(longitude) + ", " + text(latitude) + ", 812.5]";
    }
    return "[" + ring + "]";
}

std::string feature(const std::string& properties, const std::string& type,
                    const std::string& coordinates) {
    return R"({"type": "Feature", "id": 7, "properties": )" + properties +
           R"(, "geometry": {"type": ")" + type + R"(", "coordinates": )" + coordinates + "}}";
}

std::string collection(const std::string& features) {
    return R"({"type": "FeatureCollection", "name": "from a survey", "features": [)" + features +
           "]}";
}

const std::string geo_lot =
    R"({"lot": "1", "front_setback_ft": 25, "side_setback_ft": 7, "rear_setback_ft": 20, )"
    R"("gid": 4})";

} // namespace

TEST_CASE("A map in degrees is laid flat: a FeatureCollection of RFC 7946") {
    const PriceBook book =
        book_of(lot_of_book("1", R"(, "measures": {"width_ft": 50, "rear_setback_ft": 35})"));
    const std::string street = feature(R"({"street": "Lane", "width_ft": 50})", "LineString",
                                       geo_ring({{-50, -25}, {100, -25}, {100, -25}}));
    // The corners begin at the back, so the street tells the front.
    const std::string lot =
        feature(geo_lot, "Polygon", "[" + geo_ring({{50, 100}, {0, 100}, {0, 0}, {50, 0}}) + "]");
    const Read found = read(collection(lot + "," + street), book);
    REQUIRE(found.problems.empty());
    REQUIRE(found.map.lots.size() == 1);
    CHECK(found.map.lots[0].front == 2);
    const LotView view(found.map.lots[0]);
    CHECK(std::abs(view.outline()[1].x - 5000) <= 1);
    CHECK(std::abs(view.outline()[2].y - 10000) <= 1);
    CHECK(found.map.streets.at(0).width == 5000);
}

TEST_CASE("What a GeoJSON has beside polygons without holes is told") {
    const PriceBook book = book_of(lot_of_book("1"));
    const std::string ring = geo_ring({{0, 0}, {50, 0}, {50, 100}, {0, 100}});
    CHECK(read(collection(feature(geo_lot, "Polygon", "[" + ring + "]")), book).problems.empty());
    CHECK(problem_of(collection(feature(geo_lot, "Polygon", "[" + ring + ", " + ring + "]")),
                     book) == ProblemId::too_many);
    CHECK(problem_of(collection(feature(geo_lot, "MultiPolygon", "[[" + ring + "]]")), book) ==
          ProblemId::not_one_of);
    const std::string open = ring.substr(0, ring.rfind(", [")) + "]";
    CHECK(problem_of(collection(feature(geo_lot, "Polygon", "[" + open + "]")), book) ==
          ProblemId::outline_unsound);
    CHECK(problem_of(collection(feature(geo_lot, "Polygon", "[[[200, 45], [0, 0], [1, 1]]]")),
                     book) == ProblemId::number_too_large);
    CHECK(problem_of(R"({"type": "Feature"})", book) == ProblemId::not_one_of);
    const Read tree =
        read(collection(feature(R"({"note": "a tree"})", "Polygon", "[" + ring + "]")), book);
    REQUIRE(tree.problems.size() == 4); // whose lot it is, and its setbacks
    for (const Problem& problem : tree.problems) CHECK(problem.id == ProblemId::member_missing);
}

TEST_CASE("A GeoJSON map is told by what it is") {
    CHECK(kind_of(json(collection(""))) == FileKind::site_map);
    CHECK(kind_of(json(R"({"type": "Polygon"})")) == FileKind::unknown);
}

TEST_CASE("The example: twelve lots, four plans, as the price book says") {
    const auto loaded =
        apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/six-programs.json",
                           QUOIN_SOURCE_DIR "/rates", Language::english, apps::Drawn::yes);
    const PriceBook& book = loaded->desk.book;
    const Drawings& drawings = loaded->desk.drawings;
    REQUIRE(drawings.map);
    REQUIRE(drawings.map->lots.size() == 12);
    for (const LotOutline& drawn : drawings.map->lots) {
        const Lot& lot = at(book.lots, drawn.lot);
        for (const Index<Plan> plan : indexes_of(book.plans)) {
            const Footprint size = footprint_of(at(book.plans, plan), drawings.of(plan));
            INFO("lot " << lot.id << ", plan " << at(book.plans, plan).id);
            const bool fits = footprint_on(drawn, size.width, size.depth).has_value();
            CHECK(fits == allows(lot.plans, plan));
        }
    }
    // The pie: wider at the back than at the street. The widths of the others are those of the
    // list.
    const LotView pie(drawings.map->lots[9]);
    CHECK(pie.across(8000)->length() > pie.across(500)->length() * 5 / 4);
}
