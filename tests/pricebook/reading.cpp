// A price book read whole: every member of every kind arrives where it should.
#include <shown.hpp>

#include "support/files.hpp"
#include "support/small_book.hpp"
#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const PriceBook& book() { return small_book(); }

const Option& option(const char* id) {
    return quoin::at(book().options, index_of(book().options, id).value());
}

constexpr Index<Plan> small_plan(0);
constexpr Index<Plan> large_plan(1);

Index<Option> index(const char* id) { return index_of(book().options, id).value(); }

} // namespace

TEST_CASE("Community, dates, areas and stages") {
    CHECK(book().file == "book.json");
    CHECK(book().community.name == "Three Lots");
    CHECK(book().community.builder == "Nobody");
    CHECK(book().community.place == "here");
    CHECK(book().version == "7");
    CHECK(book().effective == date("2026-01-01"));
    CHECK(book().expires == date("2026-12-31"));
    CHECK(book().areas.at(1).name == "Inside");
    CHECK(ids_of(book().stages) == std::vector<std::string>{"permit", "frame", "paint"});
}

TEST_CASE("Plans with their measures and elevations") {
    REQUIRE(book().plans.size() == 2);
    const Plan& plan = book().plans[0];
    CHECK(plan.style == "ranch");
    CHECK(plan.base_price == money("200000"));
    CHECK(plan.bedrooms == decimal("2"));
    CHECK(plan.bathrooms == decimal("1.5"));
    CHECK(plan.square_feet == decimal("1000"));
    REQUIRE(find_measure(plan.measures, "floor") != nullptr);
    CHECK(*find_measure(plan.measures, "floor") == decimal("317.5"));
    CHECK(find_measure(plan.measures, "attic") == nullptr);
    const Elevation& stone = book().plans[1].elevations.at(1);
    CHECK(stone.id == "stone");
    CHECK(stone.price == money("4500"));
    CHECK(stone.note == "a note");
}

TEST_CASE("Lots: premium, status, grade, fitting plans, flood zone, measures") {
    REQUIRE(book().lots.size() == 3);
    const Lot& first = book().lots[0];
    CHECK(first.plans.empty()); // all fit
    CHECK_FALSE(first.flood_zone);
    CHECK(name_of(first.status) == "free");
    CHECK(name_of(first.grade) == "level");
    const Lot& second = book().lots[1];
    CHECK(second.premium == money("8000"));
    CHECK(second.status == LotStatus::held);
    CHECK(second.grade == Grade::walk_out);
    CHECK(second.plans == std::vector{large_plan});
    CHECK(second.flood_zone);
    CHECK(*find_measure(second.measures, "width_ft") == decimal("70.5"));
    CHECK(second.note == "a note");
    CHECK(book().lots[2].premium == money("-500"));
    CHECK(book().lots[2].status == LotStatus::sold);
    CHECK(book().lots[2].grade == Grade::garden);
}

TEST_CASE("Office notes of lots, options, levels and choices, and none where none is written") {
    CHECK(book().lots[0].office_note.empty());
    CHECK(option("top").office_note.empty());
    const auto noted = patched_book(R"([
        {"op": "add", "path": "/lots/0/office_note", "value": "of a lot"},
        {"op": "add", "path": "/options/2/office_note", "value": "of an option"},
        {"op": "add", "path": "/options/2/levels/1/office_note", "value": "of a level"}])");
    INFO(listing(noted.findings));
    REQUIRE(noted.findings.none());
    CHECK(noted.book.lots[0].office_note == "of a lot");
    CHECK(noted.book.options[2].office_note == "of an option");
    CHECK(noted.book.options[2].levels[1].office_note == "of a level");
    CHECK(noted.book.options[2].levels[2].note == "a note"); // what all may read stays apart
    const auto color = index_of(book().options, "color");
    REQUIRE(color.has_value());
    const auto chosen =
        patched_book(R"([{"op": "add", "path": "/options/)" + std::to_string(color->position()) +
                     R"(/choices/1/office_note", "value": "of a choice"}])");
    REQUIRE(chosen.findings.none());
    CHECK(at(chosen.book.options, *color).choices[1].office_note == "of a choice");
    CHECK(at(chosen.book.options, *color).choices[1].note == "a note");
}

TEST_CASE("An upgrade by a measure of the plan is offered where the plan has the measure") {
    const Option& wood = option("wood");
    CHECK(wood.kind == OptionKind::upgrade);
    CHECK(wood.unit == Unit::square_foot);
    CHECK(wood.text == "a text");
    CHECK(wood.note == "a note");
    CHECK(wood.area == Index<Area>(1));
    CHECK(wood.cutoff == Index<Stage>(2));
    CHECK(wood.price.on(small_plan) == money("3.33"));
    CHECK(wood.quantity.from == Quantity::From::plan);
    CHECK(wood.quantity.usual_on(small_plan) == decimal("317.5"));
    CHECK(wood.quantity.usual_on(large_plan) == decimal("500"));
    CHECK(option("rail").unit == Unit::linear_foot);
    CHECK(option("rail").quantity.usual_on(large_plan) == decimal("0"));
    CHECK(told(quantity_limits(wood)) == "no quantity; the price book sets it");
}

TEST_CASE("Levels: prices by plan, the included one by plan or for all, or none") {
    const Option& top = option("top");
    CHECK(top.kind == OptionKind::levels);
    CHECK(ids_of(top.levels) == std::vector<std::string>{"plain", "stone", "rare"});
    CHECK(top.levels[1].price.on(small_plan) == money("2000"));
    CHECK(top.levels[1].price.on(large_plan) == money("2600"));
    CHECK(top.levels[2].price.on(small_plan) == std::nullopt); // not offered
    CHECK(top.levels[2].note == "a note");
    CHECK(top.included_level_on(small_plan) == Index<Level>(0));
    CHECK(top.included_level_on(large_plan) == Index<Level>(1));
    CHECK(option("deck").included_level_on(small_plan) == std::nullopt);
    const auto one_for_all = patched_book(
        R"([{"op": "replace", "path": "/options/2/included_level", "value": "stone"}])");
    REQUIRE(one_for_all.findings.none());
    CHECK(one_for_all.book.options[2].included_level_on(small_plan) == Index<Level>(1));
    CHECK(one_for_all.book.options[2].included_level_on(large_plan) == Index<Level>(1));
    const auto on_one = patched_book(
        R"([{"op": "replace", "path": "/options/2/included_level", "value": {"large": "plain"}}])");
    REQUIRE(on_one.findings.none());
    CHECK(on_one.book.options[2].included_level_on(small_plan) == std::nullopt);
    CHECK(on_one.book.options[2].included_level_on(large_plan) == Index<Level>(0));
}

TEST_CASE("A count by the buyer: limits, step, and what is usual") {
    const Option& lights = option("lights");
    CHECK(lights.quantity.from == Quantity::From::buyer);
    CHECK(lights.quantity.usual_on(small_plan) == decimal("4"));
    struct Row {
        const char* quantity;
        bool allowed;
    };
    for (const Row& row :
         {Row{"0", false}, Row{"1", false}, Row{"2", true}, Row{"3", false}, Row{"4", true},
          Row{"4.5", false}, Row{"10", true}, Row{"12", false}, Row{"-2", false}}) {
        CAPTURE(row.quantity);
        CHECK(lights.quantity.allows(decimal(row.quantity)) == row.allowed);
    }
    CHECK(told(quantity_limits(lights)) == "a quantity from 2 to 10, in steps of 2");
    // Left out: from one, by ones, the least is usual. Steps count from the least, also in parts.
    const auto plain =
        patched_book(R"([{"op": "replace", "path": "/options/5/quantity", "value": {"max": 3}}])");
    REQUIRE(plain.findings.none());
    CHECK(told(quantity_limits(plain.book.options[5])) == "a quantity from 1 to 3, in steps of 1");
    CHECK(plain.book.options[5].quantity.usual == decimal("1"));
    const auto parts = patched_book(R"([{"op": "replace", "path": "/options/5/quantity",
        "value": {"min": "3", "max": "9", "step": "1.5", "usual": "4.5"}}])");
    REQUIRE(parts.findings.none());
    CHECK(parts.book.options[5].quantity.allows(decimal("7.5")));
    CHECK_FALSE(parts.book.options[5].quantity.allows(decimal("8")));
}

TEST_CASE("Choices, allowances, credits and packages") {
    const Option& color = option("color");
    CHECK(color.kind == OptionKind::choice);
    CHECK(ids_of(color.choices) == std::vector<std::string>{"white", "gray"});
    CHECK(color.choices[1].note == "a note");
    const Option& lamps = option("lamps");
    CHECK(lamps.kind == OptionKind::allowance);
    CHECK(lamps.price.on(small_plan) == money("900"));
    CHECK(lamps.price.on(large_plan) == money("1200"));
    CHECK(option("no-lawn").price.on(small_plan) == money("-1500"));
    const Option& warm = option("warm");
    CHECK(warm.kind == OptionKind::package);
    CHECK(warm.price.on(large_plan) == money("3000"));
    const std::vector<OptionRef> parts = {
        {index("stove")}, {index("flue")}, {index("top"), Index<Level>(1)}};
    CHECK(warm.parts == parts);
}

TEST_CASE("Rules on options: requires, excludes, groups, limits, cutoff, work, later") {
    const Option& steps = option("steps");
    REQUIRE(steps.needs.size() == 1);
    REQUIRE(steps.needs[0].size() == 2); // any one of the two
    CHECK(steps.needs[0][0] == OptionRef{index("deck"), Index<Level>(1)});
    CHECK(steps.needs[0][1] == OptionRef{index("porch")});
    CHECK(steps.only.lots == std::vector{Index<Lot>(0), Index<Lot>(1)});
    CHECK(option("stove").needs == // named before it stands in the file
          std::vector<std::vector<OptionRef>>{{{index("flue")}}});
    CHECK(option("gas").excludes == std::vector{index("stove")});
    CHECK(option("gas").price.on(large_plan) == std::nullopt);
    CHECK(option("deck").one_of == "rear");
    CHECK(option("deck").structural);
    CHECK_FALSE(option("door").structural);
    CHECK(option("deck").cutoff == Index<Stage>(0));
    CHECK_FALSE(option("door").cutoff);
    CHECK(option("deck").work.structure);
    CHECK_FALSE(option("deck").work.gas);
    CHECK(option("gas").work.gas);
    CHECK(option("gas").work.plumbing);
    CHECK(option("lights").work.wiring);
    CHECK_FALSE(option("door").work.any());
    REQUIRE(option("deck").later.has_value());
    CHECK(option("deck").later->estimate == money("11000"));
    CHECK(option("deck").later->note == "a note");
    CHECK(option("door").only.grades == std::vector{Grade::walk_out, Grade::garden});
    CHECK(option("arch").only.plans == std::vector{large_plan});
    CHECK(option("arch").only.elevations == std::vector<std::string>{"stone"});
    REQUIRE(option("porch").only.lot_at_least.size() == 2);
    CHECK(option("porch").only.lot_at_least[0].value == decimal("30"));
}

TEST_CASE("Included features, incentives and deposits") {
    REQUIRE(book().included.size() == 2);
    CHECK(book().included[0].option == index("top"));
    CHECK(book().included[0].plans == std::vector{small_plan});
    CHECK_FALSE(book().included[1].option);
    CHECK(book().included[1].area == Index<Area>(0));
    const Incentive& opening = book().incentives.at(0);
    CHECK(opening.amount == money("3000"));
    CHECK(opening.uses == std::vector{IncentiveUse::price, IncentiveUse::options,
                                      IncentiveUse::closing_costs, IncentiveUse::points,
                                      IncentiveUse::buydown});
    CHECK(opening.expires == std::nullopt);
    const Incentive& share = book().incentives.at(1);
    CHECK(share.amount == std::nullopt);
    CHECK(share.percent == Percent(decimal("1.5")));
    CHECK(share.of == IncentiveBase::options);
    CHECK(share.plans == std::vector{large_plan});
    CHECK(share.lots == std::vector{Index<Lot>(1)});
    CHECK(share.lender == "Some lender");
    CHECK(share.expires == date("2026-06-30"));
    CHECK(share.close_by == date("2026-11-30"));
    CHECK(share.conditions == "a text");
    CHECK(book().deposits.earnest == std::nullopt);
    CHECK(book().deposits.earnest_percent == Percent(decimal("1")));
    CHECK(book().deposits.structural_percent == Percent(decimal("50")));
    CHECK(book().deposits.finish_percent == Percent(decimal("20")));
    const auto flat = patched_book(
        R"([{"op": "replace", "path": "/deposits/earnest", "value": {"amount": "5000"}}])");
    REQUIRE(flat.findings.none());
    CHECK(flat.book.deposits.earnest == money("5000"));
    const auto none = patched_book(R"([{"op": "remove", "path": "/deposits"}])");
    REQUIRE(none.findings.none());
    CHECK(none.book.deposits.finish_percent == Percent{});
}

TEST_CASE("The furnished model: options as shown, and decor that is not for sale") {
    REQUIRE(book().model.has_value());
    const FurnishedModel& model = *book().model;
    CHECK(model.plan == large_plan);
    CHECK(model.elevation == Index<Elevation>(1));
    CHECK(model.lot == Index<Lot>(1));
    REQUIRE(model.shows.size() == 5);
    CHECK(model.shows[0].level == Index<Level>(2));
    CHECK(model.shows[1].quantity == decimal("6"));
    CHECK(model.shows[2].choice == Index<Choice>(1));
    CHECK(model.shows[3].spend == money("2500"));
    CHECK_FALSE(model.shows[4].option);
    CHECK(model.shows[4].text == "A sofa");
    CHECK(model.shows[0].area == Index<Area>(1)); // of its option
    const auto none = patched_book(R"([{"op": "remove", "path": "/model"}])");
    CHECK(none.findings.none());
    CHECK_FALSE(none.book.model.has_value());
}

TEST_CASE("The shipped price books read without a problem") {
    for (const char* file :
         {"/examples/oxbarrow-meadow/pricebook.json", "/examples/first-home/pricebook.json"}) {
        CAPTURE(file);
        const PriceBook read = apps::load_price_book(QUOIN_SOURCE_DIR + std::string(file));
        CHECK_FALSE(read.plans.empty());
        CHECK_FALSE(read.lots.empty());
        CHECK_FALSE(read.options.empty());
    }
}

namespace {

template <class List, class Place>
concept found_in = requires(List list, Place place) {
    quoin::at(list, place);
};

} // namespace

TEST_CASE("No index of a price book finds another kind of item, nor does a bare number") {
    STATIC_REQUIRE(found_in<std::vector<Option>, Index<Option>>);
    STATIC_REQUIRE(!found_in<std::vector<Option>, Index<Level>>);
    STATIC_REQUIRE(!found_in<std::vector<Lot>, Index<Plan>>);
    STATIC_REQUIRE(!found_in<std::vector<Plan>, Index<Elevation>>);
    STATIC_REQUIRE(!found_in<std::vector<Area>, Index<Stage>>);
    STATIC_REQUIRE(!found_in<std::vector<Incentive>, Index<Option>>);
    STATIC_REQUIRE(!found_in<std::vector<Option>, int>);
    STATIC_REQUIRE(!found_in<std::vector<Lot>, int>);
    STATIC_REQUIRE(!std::is_convertible_v<Index<Level>, Index<Choice>>);
    STATIC_REQUIRE(!std::is_constructible_v<Index<Plan>, Index<Lot>>);
}
