// The furnished model: what of it comes with the home, is chosen, is extra, cannot be had.
#include <shown.hpp>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/inquiry/asking.hpp>
#include <quoin/render/answers.hpp>

#include "support/files.hpp"
#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const char* word_for(ShownStanding standing) {
    switch (standing) {
    case ShownStanding::included:
        return "included";
    case ShownStanding::free_choice:
        return "free choice";
    case ShownStanding::yours:
        return "yours";
    case ShownStanding::yours_partly:
        return "yours partly";
    case ShownStanding::extra:
        return "extra";
    case ShownStanding::unavailable:
        return "unavailable";
    case ShownStanding::decor:
        return "decor";
    }
    return "";
}

const ShownItem& item_named(const ShownAnswer& answer, const char* name) {
    for (const ShownItem& item : answer.items) {
        if (item.name == name) return item;
    }
    throw std::runtime_error(std::string("the model shows no ") + name);
}

std::string standing_of(const apps::Loaded& loaded, const char* name) {
    const ShownAnswer answer = shown(loaded.sitting()).value();
    return word_for(item_named(answer, name).standing);
}

Pick pick_of(const apps::Loaded& loaded, const char* text) {
    Findings findings;
    return asked_option(loaded.desk.book, text, findings).value();
}

void choose(apps::Loaded& loaded, const char* text) {
    const Pick pick = pick_of(loaded, text);
    auto& picks = loaded.inquiry.selection.picks;
    std::erase_if(picks, [&](const Pick& present) { return present.option == pick.option; });
    picks.push_back(pick);
}

} // namespace

TEST_CASE("Every standing of what the model shows") {
    struct Row {
        const char* name;
        const char* standing;
        const char* price; ///< nullptr: none
        const char* yours; ///< nullptr: none
    };
    const auto loaded = small(); // oak floor, flue, 3 shelves, sand paint, on a level lot
    const ShownAnswer answer = shown(loaded->sitting()).value();
    REQUIRE(answer.items.size() == 6);
    for (const Row& row : {
             Row{"Floor", "yours", "2040", "2040"},
             Row{"Wood stove", "extra", "2600", nullptr},
             Row{"Wall color", "free choice", "0", "0"},
             Row{"Shelves", "yours partly", "240", "180"},
             Row{"Walk-out door", "unavailable", nullptr, nullptr},
             Row{"The armchair", "decor", nullptr, nullptr},
         }) {
        CAPTURE(row.name);
        const ShownItem& item = item_named(answer, row.name);
        CHECK(std::string(word_for(item.standing)) == row.standing);
        CHECK(item.price == (row.price ? std::optional(money(row.price)) : std::nullopt));
        CHECK(item.yours == (row.yours ? std::optional(money(row.yours)) : std::nullopt));
    }
    CHECK(told(item_named(answer, "Walk-out door").why_not) == "only on walk-out lots");
    CHECK(answer.shown_total == money("4880")); // 2040 + 2600 + 0 + 240
    CHECK(answer.missing == money("2660"));     // the stove, and one shelf
    CHECK(answer.model_lot.empty());
}

TEST_CASE("A level that the plan includes comes with it, a package and a better level are yours") {
    const auto loaded = small();
    choose(*loaded, "floor:pine");
    CHECK(standing_of(*loaded, "Floor") == "yours partly");
    CHECK(standing_of(*loaded, "Wood stove") == "extra");
    choose(*loaded, "warm"); // brings stove and flue
    CHECK(standing_of(*loaded, "Wood stove") == "yours");
    choose(*loaded, "shelves=8");
    CHECK(standing_of(*loaded, "Shelves") == "yours");

    // On Comfrey, quartz counters, the shaker cabinets and the like are included.
    const auto comfrey = apps::load_inquiry(
        QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/right-under-eighty.json",
        QUOIN_SOURCE_DIR "/rates");
    comfrey->inquiry.selection.picks.clear();
    CHECK(standing_of(*comfrey, "Siding") == "included");
    CHECK(standing_of(*comfrey, "Kitchen cabinets") == "extra"); // shows painted ones
}

TEST_CASE("Past its cutoff an option is not to be had, but what is chosen stays yours") {
    const auto loaded = small();
    loaded->inquiry.selection.lot = Index<Lot>(1); // the lot that walks out
    CHECK(standing_of(*loaded, "Walk-out door") == "extra");
    loaded->inquiry.selection.stage = Index<Stage>{}; // permit drawings are made
    CHECK(standing_of(*loaded, "Walk-out door") == "unavailable");
    choose(*loaded, "walk-out");
    CHECK(standing_of(*loaded, "Walk-out door") == "yours");
}

TEST_CASE("What a package brings is yours, whatever its own cutoff") {
    const auto loaded = small();
    const Index<Option> stove = pick_of(*loaded, "stove").option;
    at(loaded->desk.book.options, stove).cutoff = Index<Stage>(0);
    loaded->inquiry.selection.picks.clear();
    loaded->inquiry.selection.stage = Index<Stage>(0);
    CHECK(standing_of(*loaded, "Wood stove") == "unavailable");
    choose(*loaded, "warm");
    CHECK(standing_of(*loaded, "Wood stove") == "yours");
}

TEST_CASE("What is included on the plan is listed, and only areas with something in them") {
    const ShownAnswer answer = shown(small()->sitting()).value();
    REQUIRE(answer.included.size() == 1);
    CHECK(answer.included.front().text == "Pine floor");
    CHECK(answer.areas == std::vector<std::string>{"Outside", "Inside"});
    // The door of the first area comes before what the second shows, whatever the model's order.
    CHECK(answer.items.front().name == "Walk-out door");
}

TEST_CASE("A price book without a furnished model has no answer") {
    const auto loaded = small();
    loaded->desk.book.model.reset();
    CHECK_FALSE(shown(loaded->sitting()).has_value());
}

TEST_CASE("No payment is shown with the model, so that none needs its terms") {
    const ShownAnswer answer = shown(small()->sitting()).value();
    for (const std::string& text : {text_of(answer), json_text_of(answer)}) {
        for (const char* words : {"payment", "note rate", "APR", "monthly", "per_month"}) {
            CAPTURE(words);
            CHECK(text.find(words) == std::string::npos);
        }
    }
}
