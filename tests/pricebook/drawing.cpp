// A plan's drawing: read whole, then one mistake at a time; each at its place, and no other.
#include <quoin/pricebook/drawn.hpp>
#include <quoin/text/ids.hpp>

#include <shown.hpp>

#include "support/small_book.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

constexpr Index<Plan> small_plan(0);

/// A home of 40 by 25 feet over a basement: a hall, a den and a bedroom.
const char* const drawing_text = R"({
  "format": "quoin/drawing/1",
  "floors": [
    {"id": "below", "name": "Basement",
     "rooms": [{"id": "cellar", "name": "Cellar", "living": false,
                "outline": [[0, 0], [40, 0], [40, 25], [0, 25]]}],
     "stairs": [{"id": "up", "to": "main", "outline": [[2, 2], [5.5, 2], [5.5, 12], [2, 12]],
                 "from": [3.75, 12], "toward": [3.75, 2]}]},
    {"id": "main", "name": "Main floor",
     "rooms": [{"id": "hall", "name": "Hall", "outline": [[0, 0], [20, 0], [20, 25], [0, 25]]},
               {"id": "den", "name": "Den", "area": "inside", "measures": ["floor"],
                "outline": [[20, 0], [28, 0], [28, 25], [20, 25]]},
               {"id": "bedroom", "name": "Bedroom",
                "outline": [[28, 0], [40, 0], [40, 25], [28, 25]]}],
     "openings": [{"id": "front", "kind": "door", "from": [9.333, 0], "to": [12.333, 0],
                   "opens": "right"},
                  {"kind": "window", "from": [31, 25], "to": [36, 25]},
                  {"id": "arch", "kind": "cased", "from": [20, 10], "to": [20, 16]}],
     "stairs": [{"id": "down", "to": "below", "outline": [[5.5, 12], [2, 12], [2, 2], [5.5, 2]],
                 "from": [3.75, 2], "toward": [3.75, 12]}],
     "symbols": [{"id": "fire", "kind": "fireplace",
                  "outline": [[10, 24], [14, 24], [14, 25], [10, 25]]}]}],
  "changes": []
})";

/// The small book with its small plan's measures as drawn.
const PriceBook& drawn_book() {
    static const ReadBook read = patched_book(R"([
        {"op": "replace", "path": "/plans/0/measures",
         "value": {"floor": "200", "rail": "12", "house_width_ft": "40"}},
        {"op": "add", "path": "/plans/0/elevations/-",
         "value": {"id": "stone", "name": "Stone", "price": "1000"}}])");
    return read.book;
}

struct ReadDrawing {
    Document document;
    Findings findings;
    PlanDrawing drawing;
};

ReadDrawing read_patched(const std::string& patch) {
    ReadDrawing read;
    read.document = parse_json(std::make_shared<Source>("small.json", patched(drawing_text, patch)),
                               read.findings);
    read.drawing = read_drawing(read.document, drawn_book(), small_plan, read.findings);
    return read;
}

/// One of each problem: its name and the path that it is told at.
struct Told {
    std::string id;
    std::string path;

    friend bool operator==(const Told&, const Told&) = default;
};

std::vector<Told> told(const Findings& findings) {
    std::vector<Told> list;
    for (const Problem& problem : findings.problems()) {
        list.push_back({std::string(name_of(problem.id)), problem.path});
    }
    return list;
}

void check_told(const std::string& operations, const std::vector<Told>& expected) {
    const ReadDrawing read = read_patched("[" + operations + "]");
    INFO(operations << "\n" << listing(read.findings));
    CHECK(told(read.findings) == expected);
}

std::string with_changes(const std::string& changes) {
    return op_replace("/changes", "[" + changes + "]");
}

void check_changes(const std::string& changes, const std::vector<Told>& expected) {
    check_told(with_changes(changes), expected);
}

/// Changes that are drawn without a mistake.
PlanDrawing sound(const std::string& changes) {
    ReadDrawing read = read_patched("[" + with_changes(changes) + "]");
    INFO(listing(read.findings));
    REQUIRE(read.findings.none());
    return std::move(read.drawing);
}

/// A porch behind the hall, or behind the bedroom, where something is had.
std::string porch(const std::string& when, int left, int right) {
    const std::string l = std::to_string(left);
    const std::string r = std::to_string(right);
    return R"({"when": [)" + when + R"(], "floor": "main", "rooms": [{"id": "porch-)" + l +
           R"(", "name": "Porch", "living": false, "open": true, "outline": [[)" + l + ", 25], [" +
           r + ", 25], [" + r + ", 30], [" + l + ", 30]]}]}";
}

const std::string deck = R"({"option": "deck"})";
const std::string lights = R"({"option": "lights"})";
const std::string stove = R"({"option": "stove"})";

std::vector<std::string> ids(const std::vector<Drawn<Room>>& rooms) {
    std::vector<std::string> list;
    for (const Drawn<Room>& room : rooms) list.push_back(room->id);
    return list;
}

constexpr Index<DrawingChange> change(int position) { return Index<DrawingChange>(position); }

} // namespace

TEST_CASE("A drawing is read whole: floors, rooms, openings, stairs, symbols") {
    const ReadDrawing read = read_patched("[]");
    INFO(listing(read.findings));
    REQUIRE(read.findings.none());
    const PlanDrawing& drawing = read.drawing;
    CHECK(drawing.file == "small.json");
    REQUIRE(drawing.floors.size() == 2);
    CHECK(drawing.floors[0].id == "below");
    CHECK(drawing.floors[1].name == "Main floor");
    CHECK_FALSE(drawing.floors[0].parts.rooms.at(0).living);
    const Parts& parts = drawing.floors[1].parts;
    const Room& den = parts.rooms.at(1);
    CHECK(den.id == "den");
    CHECK(den.name == "Den");
    CHECK(den.area == index_of(drawn_book().areas, "inside"));
    CHECK(den.living);
    CHECK(den.measures == std::vector<std::string>{"floor"});
    CHECK(den.outline == Outline{{2000, 0}, {2800, 0}, {2800, 2500}, {2000, 2500}});
    const Opening& door = parts.openings.at(0);
    CHECK(door.id == "front");
    CHECK(door.kind == OpeningKind::door);
    CHECK(door.from == Point{933, 0}); // 9.333 feet
    CHECK(door.to == Point{1233, 0});
    CHECK_FALSE(door.left);
    CHECK(parts.openings.at(1).id.empty());
    CHECK(parts.openings.at(1).left);
    const Stairs& stairs = parts.stairs.at(0);
    CHECK(stairs.id == "down");
    CHECK(stairs.to == "below");
    CHECK(stairs.from == Point{375, 200});
    CHECK(stairs.toward == Point{375, 1200});
    CHECK(stairs.outline.at(0) == Point{550, 1200});
    CHECK(parts.symbols.at(0).id == "fire");
    CHECK(parts.symbols.at(0).kind == SymbolKind::fireplace);
    CHECK(drawing.changes.empty());
}

TEST_CASE("Changes are read with what they depend on") {
    const PlanDrawing drawing = sound(R"(
        {"when": [{"option": "deck", "level": "cedar"}, {"option": "color", "choice": "gray"}],
         "unless": [{"elevation": "stone"}, {"grade": "walk-out"}], "floor": "main",
         "removes": ["arch", "fire"], "not_priced": "a reason",
         "symbols": [{"kind": "car", "outline": [[1, 1], [9, 1], [9, 6], [1, 6]]}]})");
    const DrawingChange& read = drawing.changes.at(0);
    const Option& deck_option =
        quoin::at(drawn_book().options, *index_of(drawn_book().options, "deck"));
    REQUIRE(read.when.size() == 2);
    CHECK(read.when[0].option->option == index_of(drawn_book().options, "deck"));
    CHECK(read.when[0].option->level == index_of(deck_option.levels, "cedar"));
    CHECK(read.when[1].choice == Index<Choice>(1));
    REQUIRE(read.unless.size() == 2);
    CHECK(read.unless[0].elevation == Index<Elevation>(1));
    CHECK(read.unless[1].grade == Grade::walk_out);
    CHECK(read.floor == 1);
    CHECK(read.removes == std::vector<std::string>{"arch", "fire"});
    CHECK(read.not_priced == "a reason");
    CHECK(read.parts.symbols.at(0).kind == SymbolKind::car);
}

TEST_CASE("What is missing, unknown or of another kind is told where it stands") {
    check_told(op_replace("/format", R"("quoin/drawing/2")"), {{"format-unknown", "/format"}});
    check_told(op_remove("/floors"), {{"member-missing", ""}});
    check_told(op_replace("/floors", "[]"), {{"out-of-range", "/floors"}});
    check_told(op_remove("/floors/1/rooms/0/name"), {{"member-missing", "/floors/1/rooms/0"}});
    check_told(op_remove("/floors/1/rooms/0/outline"), {{"member-missing", "/floors/1/rooms/0"}});
    check_told(op_remove("/floors/1/rooms/0/id"), {{"member-missing", "/floors/1/rooms/0"}});
    check_told(op_remove("/floors/1/openings/1/to"), {{"member-missing", "/floors/1/openings/1"}});
    check_told(op_remove("/floors/1/stairs/0/toward"), {{"member-missing", "/floors/1/stairs/0"}});
    check_told(op_add("/floors/1/rooms/0/color", R"("red")"),
               {{"member-unknown", "/floors/1/rooms/0/color"}});
    check_told(op_replace("/floors/1/rooms/1/area", R"("attic")"),
               {{"name-unknown", "/floors/1/rooms/1/area"}});
    check_told(op_replace("/floors/1/rooms/1/measures/0", R"("flor")"),
               {{"name-unknown", "/floors/1/rooms/1/measures/0"}});
    check_told(op_replace("/floors/1/stairs/0/to", R"("attic")"),
               {{"name-unknown", "/floors/1/stairs/0/to"}});
    check_told(op_replace("/floors/1/openings/1/kind", R"("hole")"),
               {{"not-one-of", "/floors/1/openings/1/kind"}});
    check_told(op_replace("/floors/1/openings/0/opens", R"("up")"),
               {{"not-one-of", "/floors/1/openings/0/opens"}});
    check_told(op_replace("/floors/1/symbols/0/kind", R"("sofa")"),
               {{"not-one-of", "/floors/1/symbols/0/kind"}});
}

TEST_CASE("A place is two numbers of feet, from 0 to 1,000") {
    const std::string corner = "/floors/1/rooms/0/outline/0";
    check_told(op_replace(corner, "7"), {{"wrong-kind", corner}});
    check_told(op_replace(corner, "[]"), {{"member-missing", corner}});
    check_told(op_replace(corner, "[0]"), {{"member-missing", corner}});
    check_told(op_replace(corner, "[0, 0, 0]"), {{"too-many", corner}});
    check_told(op_replace(corner, R"(["a", 0])"), {{"not-a-decimal", corner + "/0"}});
    check_told(op_replace(corner, "[0, -0.01]"), {{"out-of-range", corner + "/1"}});
    check_told(op_replace(corner, "[1000.001, 0]"), {{"number-too-large", ""}});
    check_told(op_replace("/floors/1/openings/0/from", "[2000, 0]"), {{"number-too-large", ""}});
}

TEST_CASE("Lists longer than their caps are told and not read") {
    const auto many = [](std::size_t count, const std::string& entry) {
        std::string list = "[";
        for (std::size_t i = 0; i < count; ++i) list += (i > 0 ? "," : "") + entry;
        return list + "]";
    };
    check_told(op_replace("/floors/1/rooms/0/outline", many(caps::corners + 1, "[0, 0]")),
               {{"too-many", "/floors/1/rooms/0/outline"}});
    check_told(op_replace("/floors/1/openings", many(caps::drawn + 1, "{}")),
               {{"too-many", "/floors/1/openings"}});
    check_told(op_replace("/changes", many(caps::changes + 1, "{}")), {{"too-many", "/changes"}});
    check_told(op_replace("/floors", many(caps::floors + 1, "{}")), {{"too-many", "/floors"}});
}

TEST_CASE("Every outline encloses something and does not cross itself") {
    const std::string crossed = "[[0, 0], [20, 0], [0, 25], [20, 25]]";
    check_told(op_replace("/floors/1/rooms/0/outline", crossed),
               {{"outline-unsound", "/floors/1/rooms/0/outline"}});
    check_told(op_replace("/floors/1/stairs/0/outline", crossed),
               {{"outline-unsound", "/floors/1/stairs/0/outline"}});
    check_told(op_replace("/floors/1/symbols/0/outline", "[[0, 0], [1, 0]]"),
               {{"outline-unsound", "/floors/1/symbols/0/outline"}});
}

TEST_CASE("An id stands once on a floor, and for one kind of part in its changes too") {
    check_told(op_replace("/floors/1/rooms/1/id", R"("hall")"),
               {{"id-repeated", "/floors/1/rooms/1/id"}});
    check_told(op_replace("/floors/1/symbols/0/id", R"("arch")"),
               {{"id-repeated", "/floors/1/symbols/0/id"}});
    check_told(op_replace("/floors/1/id", R"("below")") + "," +
                   op_replace("/floors/0/stairs/0/to", R"("below")"),
               {{"id-repeated", "/floors/1/id"}});
    check_changes(R"({"when": [)" + deck + R"(], "floor": "main", "symbols":
                      [{"id": "hall", "kind": "car",
                        "outline": [[1, 1], [9, 1], [9, 6], [1, 6]]}]})",
                  {{"id-repeated", "/changes/0/symbols/0/id"}});
}

TEST_CASE("A change depends on one thing at a time, of the price book") {
    const auto condition = [](const std::string& one) {
        return R"({"when": [)" + one + R"(], "floor": "main", "removes": ["arch"]})";
    };
    check_changes(condition(""), {{"out-of-range", "/changes/0/when"}});
    check_changes(condition("{}"), {{"member-missing", "/changes/0/when/0"}});
    check_changes(condition(R"({"option": "dock"})"),
                  {{"name-unknown", "/changes/0/when/0/option"}});
    check_changes(condition(R"({"option": "deck", "level": "oak"})"),
                  {{"name-unknown", "/changes/0/when/0/level"}});
    check_changes(condition(R"({"option": "color", "choice": "red"})"),
                  {{"name-unknown", "/changes/0/when/0/choice"}});
    check_changes(condition(R"({"elevation": "brick"})"),
                  {{"name-unknown", "/changes/0/when/0/elevation"}});
    check_changes(condition(R"({"grade": "steep"})"), {{"not-one-of", "/changes/0/when/0/grade"}});
    check_changes(condition(R"({"option": "deck", "grade": "level"})"),
                  {{"member-unknown", "/changes/0/when/0/option"}});
    check_changes(R"({"floor": "main", "removes": ["arch"]})", {{"member-missing", "/changes/0"}});
    check_changes(R"({"when": [)" + deck + R"(], "floor": "roof"})",
                  {{"name-unknown", "/changes/0/floor"}});
    check_changes(R"({"when": [)" + deck + R"(], "floor": "main", "removes": ["ark"]})",
                  {{"name-unknown", "/changes/0/removes/0"}});
    // What another floor has is not there; what an earlier change brings is.
    check_changes(R"({"when": [)" + deck + R"(], "floor": "main", "removes": ["cellar"]})",
                  {{"name-unknown", "/changes/0/removes/0"}});
    check_changes(porch(deck, 0, 9) + R"(, {"when": [)" + deck +
                      R"(], "floor": "main", "removes": ["porch-0"]})",
                  {});
}

TEST_CASE("Rooms of a floor do not overlap; those of two floors may") {
    check_told(op_replace("/floors/1/rooms/1/outline", "[[19, 0], [28, 0], [28, 25], [19, 25]]"),
               {{"outlines-overlap", "/floors/1/rooms/1/outline"}});
    check_told(op_add("/floors/1/rooms/-", R"({"id": "closet", "name": "Closet", "living": false,
                  "outline": [[1, 14], [4, 14], [4, 18], [1, 18]]})"),
               {{"outlines-overlap", "/floors/1/rooms/3/outline"}});
}

TEST_CASE("An opening lies in a wall of its own floor") {
    const auto window = [](const std::string& from, const std::string& to) {
        return op_add("/floors/1/openings/-",
                      R"({"kind": "window", "from": )" + from + R"(, "to": )" + to + "}");
    };
    const std::vector<Told> nowhere{{"not-in-wall", "/floors/1/openings/3"}};
    check_told(window("[28, 3]", "[28, 8]"), {});
    check_told(window("[29, 3]", "[29, 8]"), nowhere);
    check_told(window("[18, 0]", "[22, 0]"), nowhere); // across the wall between two rooms
    check_told(window("[40, 24]", "[40, 26]"), nowhere);
    check_told(window("[28, 3]", "[28, 3]"), nowhere);
}

TEST_CASE("Stairs arrive where they lead, and lead back") {
    const std::string up = "/floors/0/stairs/0";
    const std::string down = "/floors/1/stairs/0";
    check_told(op_replace(up + "/outline", "[[2, 2], [6, 2], [6, 12], [2, 12]]"),
               {{"stairs-unmatched", up + "/outline"}, {"stairs-unmatched", down + "/outline"}});
    check_told(op_remove(up), {{"stairs-unmatched", down + "/outline"}});
    check_told(op_replace(down + "/to", R"("main")"),
               {{"stairs-unmatched", up + "/outline"}, {"stairs-unmatched", down + "/outline"}});
}

TEST_CASE("Square feet, measures and width are those of the price book within 2 %") {
    const std::string bedroom = "/floors/1/rooms/2/outline";
    const std::string window = op_remove("/floors/1/openings/1") + ",";
    // 1,000 sq ft: from 980 to 1,020. The bedroom is 12 feet wide; the house stays 40 wide.
    check_told(window + op_replace(bedroom, "[[28, 0], [40, 0], [40, 26.66], [28, 26.66]]"), {});
    check_told(window + op_replace(bedroom, "[[28, 0], [40, 0], [40, 26.67], [28, 26.67]]"),
               {{"drawn-otherwise", "/floors"}});
    check_told(window + op_replace(bedroom, "[[28, 0], [40, 0], [40, 23.34], [28, 23.34]]"), {});
    check_told(window + op_replace(bedroom, "[[28, 0], [40, 0], [40, 23.33], [28, 23.33]]"),
               {{"drawn-otherwise", "/floors"}});
    // 200 sq ft of "floor": 8 by 25 feet, of which 4.08 make 2 %.
    const auto den = [](const char* depth) {
        return op_replace("/floors/1/rooms/1/outline", std::string("[[20, 0], [28, 0], [28, ") +
                                                           depth + "], [20, " + depth + "]]");
    };
    check_told(den("25.5"), {});
    check_told(den("25.51"), {{"drawn-otherwise", "/floors/1/rooms/1/measures/0"}});
    check_told(den("24.5"), {});
    check_told(den("24.49"), {{"drawn-otherwise", "/floors/1/rooms/1/measures/0"}});
    // A porch may not stick out by more than 0.8 feet.
    const auto beside = [](const char* right) {
        return op_add("/floors/1/rooms/-",
                      std::string(R"({"id": "porch", "name": "Porch", "living": false,
                      "outline": [[40, 0], [)") +
                          right + ", 0], [" + right + ", 9], [40, 9]]}");
    };
    check_told(beside("40.8"), {});
    check_told(beside("40.81"), {{"drawn-otherwise", "/floors"}});
}

TEST_CASE("Of what is drawn otherwise, both figures are told") {
    const ReadDrawing read = read_patched("[" + op_remove("/floors/1/rooms/0/outline/2") + "," +
                                          op_remove("/floors/1/openings/2") + "]");
    const Problem& problem = read.findings.problems().at(0);
    const ProblemWords words = words_of(problem, catalogue_in(Language::english));
    CHECK(words.found == "square_feet drawn as 750");
    CHECK(words.expected == "1000, the price book's own, within 2%");
}

TEST_CASE("Each change is held to the same") {
    const std::string here = R"({"when": [)" + deck + R"(], "floor": "main", )";
    check_changes(porch(deck, 0, 9), {});
    check_changes(here + R"("rooms": [{"id": "hall", "name": "Hall",
                      "outline": [[0, 0], [21, 0], [21, 25], [0, 25]]}]})",
                  {{"outlines-overlap", "/changes/0/rooms/0/outline"}});
    check_changes(here + R"("openings": [{"kind": "door", "from": [1, 1], "to": [4, 1]}]})",
                  {{"not-in-wall", "/changes/0/openings/0"}});
    // What takes away the wall of a window, or one of two stairs, is itself at fault.
    const std::string priced = R"("not_priced": "a reason", )";
    check_changes(here + priced + R"("removes": ["bedroom"]})", {{"not-in-wall", "/changes/0"}});
    check_changes(here + R"("removes": ["down"]})", {{"stairs-unmatched", "/changes/0"}});
    // Both stairs go at once: the changes are made together, and are held to it together.
    check_changes(here + R"("removes": ["down"]}, {"when": [)" + deck +
                      R"(], "floor": "below", "removes": ["up"]})",
                  {});
}

TEST_CASE("A change of what options are priced by says why they are not priced by it") {
    const auto den = [](const std::string& depth, const std::string& more) {
        return R"({"when": [)" + deck + R"(], "floor": "main", )" + more +
               R"("rooms": [{"id": "den", "name": "Den", "measures": ["floor"],
               "outline": [[20, 0], [28, 0], [28, )" +
               depth + "], [20, " + depth + "]]}]}";
    };
    check_changes(den("25.5", ""), {});
    check_changes(den("25.51", ""), {{"change-not-priced", "/changes/0"}}); // the floor alone
    check_changes(den("25.51", R"("not_priced": "a reason", )"), {});
    check_changes(den("28", ""), {{"change-not-priced", "/changes/0"}, // floor and square feet
                                  {"change-not-priced", "/changes/0"}});
    check_changes(R"({"when": [)" + deck +
                      R"(], "floor": "main", "removes": ["den", "arch"],
                      "rooms": [{"id": "study", "name": "Study",
                      "outline": [[20, 0], [28, 0], [28, 25], [20, 25]]}]})",
                  {{"change-not-priced", "/changes/0"}}); // none of the floor is left
    // Where the rooms are drawn otherwise at first, that is told and not each change beside it.
    check_told(op_replace("/floors/1/rooms/2/outline", "[[28, 0], [40, 0], [40, 28], [28, 28]]") +
                   "," + op_remove("/floors/1/openings/1") + "," + with_changes(porch(deck, 0, 9)),
               {{"drawn-otherwise", "/floors"}});
    // No option is priced by the width of the house.
    check_changes(porch(deck, 35, 45), {});
}

TEST_CASE("Two changes that a home may have together are held to the same") {
    const std::vector<Told> overlapping{{"outlines-overlap", "/changes/1/rooms/0/outline"}};
    check_changes(porch(deck, 0, 9) + "," + porch(lights, 8, 15), overlapping);
    check_changes(porch(deck, 0, 9) + "," + porch(lights, 9, 15), {});
    // The first of both takes away a wall that the second needs for its window.
    check_changes(porch(deck, 0, 9) + "," + R"({"when": [)" + lights + R"(], "floor": "main",
                      "rooms": [{"id": "porch-0", "name": "Porch", "living": false,
                      "outline": [[0, 25], [5, 25], [5, 28], [0, 28]]}],
                      "openings": [{"kind": "window", "from": [1, 28], "to": [3, 28]}]})",
                  {});
    check_changes(R"({"when": [)" + deck + R"(], "floor": "main",
                      "rooms": [{"id": "porch", "name": "Porch", "living": false,
                      "outline": [[0, 25], [9, 25], [9, 30], [0, 30]]}],
                      "openings": [{"kind": "window", "from": [1, 30], "to": [3, 30]}]},
                      {"when": [)" +
                      lights + R"(], "floor": "main",
                      "rooms": [{"id": "porch", "name": "Porch", "living": false,
                      "outline": [[0, 25], [9, 25], [9, 28], [0, 28]]}]})",
                  {{"not-in-wall", "/changes/1"}});
}

TEST_CASE("Two changes that no home has together are not looked at together") {
    const auto apart = [](const std::string& one, const std::string& other,
                          const std::string& unless = "") {
        std::string second = porch(other, 8, 15);
        second.insert(second.size() - 1, R"(, "unless": [)" + unless + "]");
        check_changes(porch(one, 0, 9) + "," + second, {});
    };
    apart(deck, R"({"option": "porch"})");                  // one of a group
    apart(R"({"option": "gas"})", stove);                   // one excludes the other
    apart(R"({"option": "gas"})", R"({"option": "warm"})"); // what it brings is excluded
    apart(R"({"elevation": "plain"})", R"({"elevation": "stone"})");
    apart(R"({"grade": "level"})", R"({"grade": "garden"})");
    apart(R"({"grade": "level"})", R"({"option": "door"})");     // only on other grades
    apart(R"({"elevation": "plain"})", R"({"option": "arch"})"); // only on one elevation
    apart(R"({"option": "color", "choice": "white"})", R"({"option": "color", "choice": "gray"})");
    apart(deck, lights, deck);
    apart(R"({"option": "flue"})", lights, stove + R"(, {"option": "flue"})");
}

TEST_CASE("What an option needs and brings is there with it") {
    const auto hall_with = [](const std::string& when) {
        return R"({"when": [)" + when + R"(], "floor": "main", "openings":
               [{"id": "niche", "kind": "window", "from": [1, 30], "to": [3, 30]}]})";
    };
    const std::vector<Told> nowhere{{"not-in-wall", "/changes/1/openings/0"}};
    check_changes(porch(lights, 0, 9) + "," + hall_with(stove), nowhere);
    // The porch of the flue is there with the stove, which needs a flue, and with the package.
    check_changes(porch(R"({"option": "flue"})", 0, 9) + "," + hall_with(stove), {});
    check_changes(porch(stove, 0, 9) + "," + hall_with(R"({"option": "warm"})"), {});
    // An included level is there in every home, and a better one counts as it.
    const std::string plain_top = R"({"option": "top", "level": "plain"})";
    const std::string cedar = R"({"option": "deck", "level": "cedar"})";
    const std::string pine = R"({"option": "deck", "level": "pine"})";
    const std::string white = R"({"option": "color", "choice": "white"})";
    check_changes(porch(plain_top, 0, 9) + "," + hall_with(stove), {});
    check_changes(porch(white, 0, 9) + "," + hall_with(stove), {});
    check_changes(porch(pine, 0, 9) + "," + hall_with(cedar), {});
    check_changes(porch(cedar, 0, 9) + "," + hall_with(pine), nowhere);
}

TEST_CASE(
    "Changes are made in their order: the last one of an id stands, in the first one's place") {
    const std::string again = R"({"when": [)" + lights + R"(], "floor": "main",
        "rooms": [{"id": "porch-0", "name": "Large porch", "living": false,
        "outline": [[0, 25], [9, 25], [9, 33], [0, 33]]}]})";
    const PlanDrawing drawing =
        sound(porch(deck, 0, 9) + "," + porch(stove, 9, 15) + "," + again + "," + R"({"when": [)" +
              stove + R"(], "floor": "main", "removes": ["arch", "porch-0"]})");
    using Made = std::vector<Index<DrawingChange>>;
    const auto rooms = [&](const Made& made) { return floors_drawn(drawing, made).at(1).rooms; };
    using Names = std::vector<std::string>;
    CHECK(ids(rooms({})) == Names{"hall", "den", "bedroom"});
    CHECK(ids(rooms({change(0), change(1), change(2)})) ==
          Names{"hall", "den", "bedroom", "porch-0", "porch-9"});
    const auto both = rooms({change(0), change(2)});
    CHECK(both.at(3)->name == "Large porch");
    CHECK(both.at(3).by == change(2));
    CHECK_FALSE(both.at(0).by.has_value());
    CHECK(rooms({change(0)}).at(3)->name == "Porch");
    CHECK(rooms({change(0)}).at(3)->open);
    CHECK_FALSE(rooms({change(0)}).at(0)->open);
    CHECK(ids(rooms({change(0), change(1), change(2), change(3)})) ==
          Names{"hall", "den", "bedroom", "porch-9"});
    const auto floors = floors_drawn(drawing, {change(3)});
    CHECK(floors.at(1).openings.size() == 2);
    CHECK(floors.at(0).floor->id == "below");
    CHECK(floors.at(0).stairs.size() == 1);
    CHECK(floors.at(1).symbols.size() == 1);
}

TEST_CASE("A change is made where all of `when` and none of `unless` holds") {
    const PlanDrawing drawing =
        sound(R"({"when": [)" + deck + "," + lights + R"(], "unless": [)" + stove +
              R"(, {"grade": "garden"}], "floor": "main", "removes": ["arch"]},
              {"when": [{"grade": "garden"}], "floor": "main", "removes": ["arch"]})");
    const auto made = [&](const std::vector<std::string>& options, Grade grade) {
        return changes_made(drawing, [&](const DrawnIf& one) {
            if (one.grade) return one.grade == grade;
            const std::string& id = quoin::at(drawn_book().options, one.option->option).id;
            return std::count(options.begin(), options.end(), id) > 0;
        });
    };
    using Made = std::vector<Index<DrawingChange>>;
    CHECK(made({"deck", "lights"}, Grade::level) == Made{change(0)});
    CHECK(made({"deck"}, Grade::level).empty());
    CHECK(made({"deck", "lights", "stove"}, Grade::level).empty());
    CHECK(made({"deck", "lights"}, Grade::garden) == Made{change(1)});
}
