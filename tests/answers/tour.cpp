// The tour: its figures are those of `adds`, its states those of the rules, its touches can be
// done.
#include <shown.hpp>

#include <quoin/answers/tour.hpp>
#include <quoin/home/rules.hpp>
#include <quoin/inquiry/asking.hpp>
#include <quoin/render/answers.hpp>

#include "homes.hpp"
#include "support/files.hpp"
#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const TourOption& option_named(const TourAnswer& answer, const std::string& id) {
    for (const TourArea& area : answer.areas) {
        for (const TourOption& item : area.options) {
            if (item.id == id) return item;
        }
    }
    throw std::runtime_error("the tour has no " + id);
}

const TourForm& form_named(const TourAnswer& answer, const std::string& option,
                           const std::string& id) {
    for (const TourForm& form : option_named(answer, option).forms) {
        if (form.id == id) return form;
    }
    throw std::runtime_error("no " + id + " of " + option);
}

Pick pick_of(const PriceBook& book, const char* text) {
    Findings findings;
    return asked_option(book, text, findings).value();
}

/// What `adds` says of a form, or nullptr where it lists none.
const AddsItem* item_of(const AddsAnswer& adds, const std::string& id) {
    for (const AddsItem& item : adds.items) {
        if (item.id == id) return &item;
    }
    return nullptr;
}

/// Every form that `adds` lists has the same figures in the tour; says how many those were.
int same_as_adds(const Sitting& sitting, std::size_t scenario) {
    const TourAnswer walked = tour(sitting, scenario);
    const AddsAnswer added = adds(sitting, {});
    int same = 0;
    for (const TourArea& area : walked.areas) {
        for (const TourOption& option : area.options) {
            for (const TourForm& form : option.forms) {
                const AddsItem* item =
                    item_of(added, form.id.empty() ? option.id : option.id + ":" + form.id);
                if (item == nullptr || item->by_scenario.empty()) continue;
                if (option.kind == OptionKind::choice) continue;
                REQUIRE(form.touch);
                CHECK(form.touch->price == item->price);
                CHECK(form.touch->takes_out == (item->standing == Standing::chosen));
                CHECK(form.touch->along == item->along);
                CHECK(form.touch->instead == item->instead);
                const Added& here = item->by_scenario.at(scenario);
                CHECK(form.touch->added.available() == here.available());
                CHECK(form.touch->added.per_month == here.per_month);
                CHECK(form.touch->added.to_close == here.to_close);
                CHECK(form.touch->added.jumps.size() == here.jumps.size());
                ++same;
            }
        }
    }
    return same;
}

Pick read(const PriceBook& book, const TourPick& named) {
    Pick pick;
    pick.option = index_of(book.options, named.option).value();
    const Option& option = at(book.options, pick.option);
    if (!named.level.empty()) pick.level = index_of(option.levels, named.level);
    if (!named.choice.empty()) pick.choice = index_of(option.choices, named.choice);
    pick.quantity = named.quantity;
    pick.spend = named.spend;
    return pick;
}

/// The selection after a touch, made of nothing but what the touch says.
Selection after(const PriceBook& book, const Selection& before, const TourOption& item,
                const TourForm& form) {
    Selection then = before;
    const Index<Option> option = index_of(book.options, item.id).value();
    const auto take_out = [&](Index<Option> index) {
        std::erase_if(then.picks, [&](const Pick& pick) { return pick.option == index; });
    };
    for (const std::string& drop : form.touch->drops) {
        take_out(index_of(book.options, drop).value());
    }
    if (form.touch->takes_out) {
        take_out(option);
        return then;
    }
    for (const TourPick& named : form.touch->brings) {
        const Pick pick = read(book, named);
        take_out(pick.option);
        then.picks.push_back(pick);
    }
    Pick pick;
    if (const Pick* present = before.find(option)) pick = *present;
    const bool choice = item.kind == OptionKind::choice;
    const Pick asked = read(
        book, {item.id, choice ? "" : form.id, choice ? form.id : "", pick.quantity, pick.spend});
    pick.option = asked.option;
    pick.level = asked.level;
    pick.choice = asked.choice;
    for (Pick& present : then.picks) {
        if (present.option != option) continue;
        present = pick;
        return then;
    }
    then.picks.push_back(pick);
    return then;
}

} // namespace

TEST_CASE("The tour's figures are those of adds, under every scenario") {
    const Sitting sitting = six_programs().sitting();
    for (std::size_t i = 0; i < sitting.rules().size(); ++i) CHECK(same_as_adds(sitting, i) > 60);
    CHECK(same_as_adds(small()->sitting(), 1) > 3);
}

TEST_CASE("On homes drawn at random the tour's figures are those of adds") {
    Homes homes(20261125);
    for (int i = 0; i < 12; ++i) {
        const Inquiry inquiry = homes.next();
        CHECK(same_as_adds(Sitting(six_programs().desk, inquiry), 0) > 20);
    }
}

TEST_CASE("The head of the tour is the quote's scenario") {
    const Sitting sitting = six_programs().sitting();
    const TourAnswer answer = tour(sitting, 3);
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    const LoanFigures figures = sitting.figures(home).at(3);
    CHECK(answer.contract_price == home.contract_price);
    CHECK(answer.scenario.terms.name == "FHA, 3.5% down, 30 years");
    CHECK(answer.scenario.monthly.total() == figures.monthly.total());
    CHECK(answer.scenario.cash.to_close() == figures.cash.to_close());
}

TEST_CASE(
    "What a touch says can be done, and leaves a home within the rules at the price it says") {
    const auto& loaded = six_programs();
    const Sitting sitting = loaded.sitting();
    const TourAnswer answer = tour(sitting, 0);
    const Selection& now = loaded.inquiry.selection;
    int touched = 0;
    for (const TourArea& area : answer.areas) {
        for (const TourOption& option : area.options) {
            for (const TourForm& form : option.forms) {
                if (!form.touch) continue;
                const Selection then = after(loaded.desk.book, now, option, form);
                CHECK(conflicts(loaded.desk.book, then).empty());
                CHECK(price_home(loaded.desk.book, then).contract_price ==
                      answer.contract_price + form.touch->price);
                ++touched;
            }
        }
    }
    CHECK(touched > 90);
}

TEST_CASE("Areas say what is chosen in them comes to, and taking all of it out is one quote less "
          "another") {
    const auto& loaded = six_programs();
    const TourAnswer answer = tour(loaded.sitting(), 0);
    Money sum;
    for (const TourArea& area : answer.areas) sum += area.price;
    CHECK(sum == answer.options_price);
    REQUIRE(answer.emptied);
    CHECK(answer.emptied->keeps.empty());
    Inquiry bare = loaded.inquiry;
    bare.selection.picks.clear();
    const TourAnswer then = tour(Sitting(loaded.desk, bare), 0);
    CHECK(answer.emptied->price == then.contract_price - answer.contract_price);
    CHECK(answer.emptied->added.per_month ==
          then.scenario.monthly.total() - answer.scenario.monthly.total());
    CHECK_FALSE(then.emptied);
}

TEST_CASE(
    "What is agreed stays where all is taken out, and nothing is offered where it needs more") {
    const auto& loaded = six_programs();
    Inquiry inquiry = loaded.inquiry;
    for (Pick& pick : inquiry.selection.picks) pick.agreed = false;
    inquiry.selection.picks.front().agreed = true;
    const TourAnswer answer = tour(Sitting(loaded.desk, inquiry), 0);
    const auto& kept = at(loaded.desk.book.options, inquiry.selection.picks.front().option).id;
    REQUIRE(answer.emptied);
    CHECK(answer.emptied->keeps == std::vector<std::string>{kept});
    const auto surround = index_of(loaded.desk.book.options, "fireplace-surround").value();
    for (Pick& pick : inquiry.selection.picks) pick.agreed = pick.option == surround;
    CHECK_FALSE(tour(Sitting(loaded.desk, inquiry), 0).emptied); // it needs the fireplace
}

TEST_CASE("States of the tour: what comes with the plan, is chosen, in a package, barred") {
    const auto loaded = small();
    const TourAnswer answer = tour(loaded->sitting(), 0);
    CHECK(form_named(answer, "floor", "oak").state == TourState::chosen);
    CHECK(form_named(answer, "stove", "").state == TourState::offered);
    CHECK(form_named(answer, "walk-out", "").state == TourState::barred);
    CHECK(told(form_named(answer, "walk-out", "").why_not) == "only on walk-out lots");
    CHECK_FALSE(form_named(answer, "walk-out", "").touch);

    loaded->inquiry.selection.picks.push_back(pick_of(loaded->desk.book, "warm"));
    const TourAnswer warm = tour(loaded->sitting(), 0);
    CHECK(form_named(warm, "stove", "").state == TourState::held);
    CHECK(form_named(warm, "stove", "").package == "Warm package");
}

TEST_CASE(
    "Of the levels a package brings, one is in the home and those under it are not to be had") {
    const TourAnswer answer = tour(six_programs().sitting(), 0); // with the cook's package
    CHECK(form_named(answer, "kitchen-counters", "quartz").state == TourState::held);
    const TourForm& granite = form_named(answer, "kitchen-counters", "granite");
    CHECK(granite.state == TourState::barred);
    CHECK(told(granite.why_not) == "a better choice comes in Cook's package");
    CHECK_FALSE(granite.touch);
}

TEST_CASE("The included level takes the chosen one out, and is nothing to touch where it stands") {
    const auto loaded = small();
    const TourAnswer answer = tour(loaded->sitting(), 0);
    const TourForm& pine = option_named(answer, "floor").forms.front();
    REQUIRE(pine.state == TourState::offered);
    REQUIRE(pine.touch);
    CHECK(pine.touch->takes_out);
    CHECK(pine.price == Money{});

    std::erase_if(loaded->inquiry.selection.picks, [&](const Pick& pick) {
        return at(loaded->desk.book.options, pick.option).id == "floor";
    });
    const TourAnswer bare = tour(loaded->sitting(), 0);
    CHECK(option_named(bare, "floor").forms.front().state == TourState::included);
    CHECK_FALSE(option_named(bare, "floor").forms.front().touch);
}

TEST_CASE("The choice that is the default can be taken again after another") {
    const auto loaded = small(); // sand is chosen
    const TourAnswer answer = tour(loaded->sitting(), 0);
    CHECK(form_named(answer, "paint", "sand").state == TourState::chosen);
    const TourForm& white = form_named(answer, "paint", "white");
    CHECK(white.state == TourState::offered);
    REQUIRE(white.touch);
    CHECK_FALSE(white.touch->takes_out);
    CHECK(white.touch->price == Money{});

    std::erase_if(loaded->inquiry.selection.picks, [&](const Pick& pick) {
        return at(loaded->desk.book.options, pick.option).id == "paint";
    });
    CHECK(form_named(tour(loaded->sitting(), 0), "paint", "white").state == TourState::included);
}

TEST_CASE("Reasons in a tour call options by their names") {
    const auto& loaded = six_programs();
    bool seen = false;
    const TourAnswer answer = tour(loaded.sitting(), 0);
    for (const TourArea& area : answer.areas) {
        for (const TourOption& option : area.options) {
            for (const TourForm& form : option.forms) {
                if (!form.why_not || form.why_not->kind != WhyNot::Kind::needs) continue;
                seen = true;
                for (const Option& known : loaded.desk.book.options) {
                    if (known.id.find('-') == std::string::npos) continue;
                    CHECK(told(form.why_not).find(known.id) == std::string::npos);
                }
            }
        }
    }
    const Conflict conflict{Barrier::needs, {Index<Option>(0)}, {{Index<Option>(1)}}};
    CHECK(told(why_not(loaded.desk.book, conflict, Naming::names)) ==
          "needs " + loaded.desk.book.options[1].name);
    CHECK(told(why_not(loaded.desk.book, conflict)) == "needs " + loaded.desk.book.options[1].id);
    INFO("reasons seen: " << seen);
}

TEST_CASE("Over a level that a package brings, the higher one alone is chosen") {
    Inquiry inquiry = six_programs().inquiry;
    const PriceBook& book = six_programs().desk.book;
    const Pick above = pick_of(book, "kitchen-counters:quartz-veined");
    const Change change = with_pick(book, inquiry.selection, above);
    REQUIRE(change.blocked.empty());
    inquiry.selection = change.selection;
    const TourAnswer answer = tour(Sitting(six_programs().desk, inquiry), 0);
    CHECK(form_named(answer, "kitchen-counters", "quartz-veined").state == TourState::chosen);
    const TourForm& brought = form_named(answer, "kitchen-counters", "quartz");
    CHECK(brought.state == TourState::offered);
    REQUIRE(brought.touch);
    CHECK(brought.touch->takes_out);
    CHECK(brought.touch->price < Money{});
}

TEST_CASE("A tour of one area is that area of the whole tour, and all areas are told in short") {
    const auto loaded = six_programs();
    const TourAnswer whole = tour(loaded.sitting(), 1, Audience::desk);
    REQUIRE(whole.all_areas.size() == whole.areas.size());
    const PriceBook& book = loaded.desk.book;
    for (const TourArea& area : whole.areas) {
        INFO(area.id);
        const auto asked = areas_named(book, {area.id});
        TourAnswer same = whole;
        same.areas = {area};
        CHECK(json_text_of(tour(loaded.sitting(), 1, Audience::desk, asked)) == json_text_of(same));
    }
    std::size_t chosen = 0;
    for (const TourAreaInShort& area : whole.all_areas) {
        for (const auto& one : area.chosen) {
            CHECK(option_named(whole, one.option).picked);
            CHECK(option_named(whole, one.option).name == one.name);
            ++chosen;
        }
    }
    CHECK(chosen == loaded.inquiry.selection.picks.size());
    CHECK_THROWS_AS(areas_named(book, {"kitchen", "attic"}), Refused);
}
