// The floor plan as chosen: what is there, by which option, and how large it is.
#include <shown.hpp>

#include <algorithm>

#include <quoin/answers/rooms.hpp>
#include <quoin/home/rules.hpp>
#include <quoin/render/answers.hpp>
#include <quoin/render/shape.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Outline box(std::int64_t left, std::int64_t front, std::int64_t right, std::int64_t back) {
    return {{left, front}, {right, front}, {right, back}, {left, back}};
}

Room room_of(const char* id, Outline outline) {
    Room room;
    room.id = id;
    room.name = id;
    room.area = Index<Area>(1);
    room.outline = std::move(outline);
    return room;
}

/// The cabin of the transcripts with a drawing: one room; a stove that the warm package may bring;
/// a nook where the floor is oak; a window where the walls are sand; steps on a walk-out lot.
class Cabin {
  public:
    Cabin() : loaded_(small()) {
        loaded_->inquiry.selection.picks.clear();
        PlanDrawing drawing;
        drawing.floors.push_back({"main", "Main floor", {}});
        Parts& parts = drawing.floors.front().parts;
        parts.rooms = {room_of("hall", box(0, 0, 3000, 2000))};
        parts.openings = {{"front", OpeningKind::door, {500, 0}, {800, 0}, true}};
        drawing.changes.push_back(change({ref("stove"), {}, {}, {}}));
        drawing.changes.back().parts.symbols = {
            {"stove", SymbolKind::fireplace, box(1400, 1700, 1700, 1950)}};
        drawing.changes.push_back(change({ref("floor", 0), {}, {}, {}}));
        drawing.changes.back().parts.symbols = {
            {"rug", SymbolKind::bench, box(900, 900, 1200, 1000)}};
        drawing.changes.push_back(change({ref("floor", 1), {}, {}, {}}));
        drawing.changes.back().parts.rooms = {room_of("nook", box(0, 2000, 1000, 2600))};
        drawing.changes.back().not_priced = "The nook is in the price.";
        drawing.changes.push_back(change({ref("paint"), Index<Choice>(0), {}, {}}));
        drawing.changes.back().parts.openings = {
            {"white", OpeningKind::window, {0, 300}, {0, 700}, true}};
        drawing.changes.push_back(change({ref("paint"), Index<Choice>(1), {}, {}}));
        drawing.changes.back().parts.openings = {
            {"sand", OpeningKind::window, {0, 300}, {0, 700}, true}};
        drawing.changes.push_back(change({{}, {}, {}, Grade::walk_out}));
        drawing.changes.back().parts.symbols = {
            {"steps", SymbolKind::steps, box(2500, 0, 2800, 400)}};
        std::vector<std::optional<PlanDrawing>> plans;
        plans.emplace_back(std::move(drawing));
        loaded_->desk.drawings.plans = PerItem<Plan, std::optional<PlanDrawing>>(std::move(plans));
    }

    void pick(Pick one) { loaded_->inquiry.selection.picks.push_back(one); }
    void stand_on(int lot) { loaded_->inquiry.selection.lot = Index<Lot>(lot); }
    [[nodiscard]] Index<Option> option(std::string_view id) const {
        const auto& options = loaded_->desk.book.options;
        const auto found = std::find_if(options.begin(), options.end(),
                                        [&](const Option& one) { return one.id == id; });
        return Index<Option>(found - options.begin());
    }
    [[nodiscard]] RoomsAnswer answer() const { return rooms(loaded_->sitting()); }
    [[nodiscard]] FloorOfPlan floor() const { return answer().floors.at(0); }

  private:
    [[nodiscard]] OptionRef ref(std::string_view id) const { return {option(id)}; }
    [[nodiscard]] OptionRef ref(std::string_view id, int level) const {
        return {option(id), Index<Level>(level)};
    }
    static DrawingChange change(DrawnIf condition) {
        DrawingChange change;
        change.when = {condition};
        return change;
    }

    std::unique_ptr<apps::Loaded> loaded_;
};

/// The ids of parts, each with the options that bring it.
template <class Part>
std::vector<std::string> ids(const std::vector<OnFloor<Part>>& parts) {
    std::vector<std::string> told;
    for (const OnFloor<Part>& one : parts) {
        told.push_back(one.part.id);
        for (const BroughtBy& by : one.by) told.back() += " by " + by.option;
    }
    return told;
}

using Ids = std::vector<std::string>;

} // namespace

TEST_CASE("A plan without a drawing has no floors, and the text says why") {
    const auto loaded = small();
    const RoomsAnswer answer = rooms(loaded->sitting());
    CHECK(answer.floors.empty());
    CHECK(answer.plan == "cabin");
    CHECK(text_of(answer).find("The price book has no drawing of this plan.") != std::string::npos);
}

TEST_CASE("What comes with the plan is there by nobody's choice") {
    const FloorOfPlan floor = Cabin().floor();
    CHECK(ids(floor.symbols) == Ids{"rug"});             // the included level
    CHECK(ids(floor.openings) == Ids{"front", "white"}); // the first choice
    REQUIRE(floor.rooms.size() == 1);
    CHECK(floor.rooms[0].area == "inside");
    CHECK(floor.square_feet == decimal("600"));
    CHECK(floor.rooms[0].width == decimal("29"));
    CHECK(floor.rooms[0].depth == decimal("19"));
}

TEST_CASE("A pick brings its part, and so does a package that has it") {
    for (const char* id : {"stove", "warm"}) {
        Cabin cabin;
        cabin.pick({cabin.option(id)});
        CHECK(ids(cabin.floor().symbols) == Ids{"stove by stove", "rug"});
    }
}

TEST_CASE("A better level brings its own and keeps that of the included one") {
    Cabin cabin;
    cabin.pick({cabin.option("floor"), Index<Level>(1)});
    const RoomsAnswer answer = cabin.answer();
    const FloorOfPlan& floor = answer.floors.at(0);
    CHECK(ids(floor.symbols) == Ids{"rug"});
    REQUIRE(floor.rooms.size() == 2);
    CHECK(floor.rooms[0].by.empty());
    REQUIRE(floor.rooms[1].by.size() == 1);
    CHECK(floor.rooms[1].by[0].name == "Floor");
    CHECK(floor.square_feet == decimal("660"));
    // Half a wall towards the room in front, the whole one on the other sides.
    CHECK(floor.rooms[1].width == decimal("9"));
    CHECK(floor.rooms[1].depth == decimal("5.31"));
    CHECK(answer.notes == std::vector<std::string>{"The nook is in the price."});
    const std::string text = text_of(answer);
    CHECK(text.find("9' 0\" x 5' 4\"") != std::string::npos);
    CHECK(text.find("with Floor") != std::string::npos);
}

TEST_CASE("Another choice takes the place of the first one") {
    Cabin cabin;
    cabin.pick({cabin.option("paint"), {}, Index<Choice>(1)});
    CHECK(ids(cabin.floor().openings) == Ids{"front", "sand by paint"});
}

TEST_CASE("What the lot brings is nobody's choice either") {
    Cabin cabin;
    cabin.stand_on(1);
    CHECK(ids(cabin.floor().symbols) == Ids{"rug", "steps"});
}

TEST_CASE("A floor plan is read back whole") {
    Cabin cabin;
    cabin.pick({cabin.option("floor"), Index<Level>(1)});
    const std::string text = json_text_of(cabin.answer());
    Findings findings;
    const auto again = read_answer<RoomsAnswer>(json(text), findings);
    REQUIRE(again.has_value());
    CHECK(json_text_of(*again) == text);
}

TEST_CASE("A drawing shows what is chosen, names rooms in the language, and runs nothing") {
    Cabin cabin;
    cabin.pick({cabin.option("floor"), Index<Level>(1)});
    const std::string text = json_text_of(cabin.answer(), catalogue_in(Language::spanish));
    for (const char* part : {"role=\\\"img\\\"", "class=\\\"room chosen\\\" data-room=\\\"nook\\\"",
                             "class=\\\"room\\\" data-room=\\\"hall\\\" data-area=\\\"inside\\\"",
                             "10 pies", "aria-label=\\\"Cabin, Main floor: distribución\\\""}) {
        CAPTURE(part);
        CHECK(text.find(part) != std::string::npos);
    }
    for (const char* none : {"<script", "<style", "style=", "href", "NaN"}) {
        CHECK(text.find(none) == std::string::npos);
    }
}
