// Promises of prices and rules over homes of the shipped example, drawn from a fixed seed.
#include <shown.hpp>

#include <algorithm>
#include <random>

#include <quoin/home/priced_home.hpp>
#include <quoin/home/rules.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const PriceBook& book() {
    static const PriceBook read =
        apps::load_price_book(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/pricebook.json");
    return read;
}

const Option& option_of(const Pick& pick) { return at(book().options, pick.option); }

/// Homes and picks from a seed. A home is filled pick by pick, each with what it needs.
class Drawn {
  public:
    explicit Drawn(unsigned seed) : random_(seed) {}

    int below(std::size_t end) { return static_cast<int>(random_() % end); }
    template <class Item>
    Index<Item> index_in(const std::vector<Item>& list) {
        return Index<Item>(random_() % list.size());
    }

    Selection bare() {
        Selection selection;
        selection.plan = index_in(book().plans);
        selection.elevation = index_in(at(book().plans, selection.plan).elevations);
        selection.lot = index_in(book().lots);
        return selection;
    }
    Pick pick() {
        Pick pick;
        pick.option = index_in(book().options);
        const Option& option = option_of(pick);
        if (option.kind == OptionKind::levels) pick.level = index_in(option.levels);
        if (option.kind == OptionKind::choice) pick.choice = index_in(option.choices);
        if (option.kind == OptionKind::allowance) pick.spend = Money::cents(below(600'000));
        if (option.quantity.from == Quantity::From::buyer) pick.quantity = quantity(option);
        return pick;
    }
    Selection home() {
        Selection selection = bare();
        for (int tries = below(60); tries > 0; --tries) {
            Change change = with_pick(book(), selection, pick());
            if (change.blocked.empty()) selection = std::move(change.selection);
        }
        return selection;
    }
    std::mt19937& random() { return random_; }

  private:
    Decimal quantity(const Option& option) {
        const Quantity& limits = option.quantity;
        const std::int64_t steps =
            (limits.highest - limits.lowest).billionths() / limits.step.billionths();
        const int taken = below(static_cast<std::size_t>(steps) + 1);
        Decimal quantity = limits.lowest;
        for (int i = 0; i < taken; ++i) quantity = quantity + limits.step;
        return quantity;
    }

    std::mt19937 random_;
};

bool same_price(const PricedHome& a, const PricedHome& b) {
    const auto same_line = [](const Line& one, const Line& other) {
        return one.kind == other.kind && one.option == other.option &&
               one.incentive == other.incentive && one.level == other.level &&
               one.quantity == other.quantity && one.unit_price == other.unit_price &&
               one.amount == other.amount;
    };
    return a.contract_price == b.contract_price && a.options == b.options &&
           a.option_deposit == b.option_deposit && a.earnest_deposit == b.earnest_deposit &&
           std::equal(a.lines.begin(), a.lines.end(), b.lines.begin(), b.lines.end(), same_line);
}

Money price(const Selection& selection) { return price_home(book(), selection).contract_price; }

/// A charge as the price book states it, worked out another way: in whole cents of billionths.
Money charge_alone(const Pick& pick, Index<Plan> plan) {
    const Option& option = option_of(pick);
    Int128 unit = 0;
    if (option.kind == OptionKind::levels) {
        unit = at(option.levels, pick.level.value()).price.on(plan).value_or(Money{}).count();
        const auto included = option.included_level_on(plan);
        if (included) {
            unit -= at(option.levels, *included).price.on(plan).value_or(Money{}).count();
            if (unit < 0) unit = 0;
        }
    } else if (option.kind == OptionKind::allowance) {
        unit = pick.spend->count() - option.price.on(plan).value_or(Money{}).count();
        if (unit < 0) unit = 0;
    } else if (option.kind != OptionKind::choice) {
        unit = option.price.on(plan).value_or(Money{}).count();
    }
    const Decimal quantity = option.quantity.from == Quantity::From::buyer
                                 ? pick.quantity.value_or(option.quantity.usual)
                             : option.quantity.from == Quantity::From::plan
                                 ? option.quantity.usual_on(plan)
                                 : Decimal::whole(1);
    const Int128 product = unit * quantity.billionths();
    const Int128 half = Decimal::one / 2;
    return Money::cents(
        static_cast<std::int64_t>((product + (product < 0 ? -half : half)) / Decimal::one));
}

bool has_package(const Selection& selection) {
    return std::any_of(selection.picks.begin(), selection.picks.end(), [](const Pick& pick) {
        return option_of(pick).kind == OptionKind::package;
    });
}

} // namespace

TEST_CASE("Homes filled by the rules obey them, and their lines sum to their price") {
    Drawn drawn(1);
    std::size_t largest = 0;
    for (int i = 0; i < 400; ++i) {
        const Selection selection = drawn.home();
        largest = std::max(largest, selection.picks.size());
        REQUIRE(conflicts(book(), selection).empty());
        const PricedHome home = price_home(book(), selection);
        Money sum;
        for (const Line& line : home.lines) sum += line.amount;
        REQUIRE(sum == home.contract_price);
        REQUIRE(home.lines.size() == 3 + selection.picks.size());
        Money option_lines;
        for (const Line& line : home.lines) {
            if (line.pick) option_lines += line.amount;
        }
        REQUIRE(option_lines == home.options);
        REQUIRE(home.contract_price ==
                home.base_price + home.elevation + home.lot_premium + home.options);
        REQUIRE(home.option_deposit >= Money{});
        REQUIRE(home.option_deposit <= std::max(home.options, Money{}) + money("2300"));
    }
    CHECK(largest > 20);
}

TEST_CASE("Each line without a package is quantity x price, worked out another way") {
    Drawn drawn(2);
    int compared = 0;
    for (int i = 0; i < 400; ++i) {
        const Selection selection = drawn.home();
        if (has_package(selection)) continue;
        const PricedHome home = price_home(book(), selection);
        for (const Line& line : home.lines) {
            if (!line.pick) continue;
            const Pick& pick = at(selection.picks, line.pick.value());
            CAPTURE(option_of(pick).id);
            REQUIRE(line.amount == charge_alone(pick, selection.plan));
            ++compared;
        }
    }
    CHECK(compared > 1000);
}

TEST_CASE("The price does not depend on the order of the picks") {
    Drawn drawn(3);
    for (int i = 0; i < 200; ++i) {
        const Selection selection = drawn.home();
        Selection shuffled = selection;
        std::shuffle(shuffled.picks.begin(), shuffled.picks.end(), drawn.random());
        REQUIRE(price(shuffled) == price(selection));
        REQUIRE(price_home(book(), shuffled).option_deposit ==
                price_home(book(), selection).option_deposit);
        REQUIRE(conflicts(book(), shuffled).empty());
    }
}

TEST_CASE("Adding and then removing gives back the same priced home") {
    Drawn drawn(4);
    int plain = 0;
    int with_needs = 0;
    for (int i = 0; i < 600; ++i) {
        const Selection selection = drawn.home();
        const Pick pick = drawn.pick();
        const Change added = with_pick(book(), selection, pick);
        if (!added.blocked.empty() || !added.also_removed.empty()) continue;
        if (selection.find(pick.option) != nullptr) continue;
        const bool raises =
            std::any_of(added.also_added.begin(), added.also_added.end(),
                        [&](Index<Option> option) { return selection.find(option) != nullptr; });
        if (raises) continue;
        ++(added.also_added.empty() ? plain : with_needs);
        Selection back = added.selection;
        back = without_option(book(), back, pick.option).selection;
        for (auto need = added.also_added.rbegin(); need != added.also_added.rend(); ++need) {
            back = without_option(book(), back, *need).selection;
        }
        REQUIRE(back.picks == selection.picks);
        REQUIRE(same_price(price_home(book(), back), price_home(book(), selection)));
    }
    CHECK(plain > 100);
    CHECK(with_needs > 5);
}

TEST_CASE("Adding keeps what it does not name, and says all that it changed") {
    Drawn drawn(5);
    int changed = 0;
    int blocked = 0;
    for (int i = 0; i < 800; ++i) {
        const Selection selection = drawn.home();
        const Pick pick = drawn.pick();
        const Change change = with_pick(book(), selection, pick);
        if (!change.blocked.empty()) {
            ++blocked;
            continue;
        }
        REQUIRE(conflicts(book(), change.selection).empty());
        REQUIRE(change.selection.find(pick.option) != nullptr);
        REQUIRE(*change.selection.find(pick.option) == pick);
        const auto lists = [](const std::vector<Index<Option>>& list, Index<Option> option) {
            return std::find(list.begin(), list.end(), option) != list.end();
        };
        for (const Pick& before : selection.picks) {
            const Pick* after = change.selection.find(before.option);
            REQUIRE((after == nullptr) == lists(change.also_removed, before.option));
            if (after == nullptr || before.option == pick.option) continue;
            if (!lists(change.also_added, before.option)) REQUIRE(*after == before);
        }
        for (const Pick& after : change.selection.picks) {
            if (selection.find(after.option) != nullptr || after.option == pick.option) continue;
            REQUIRE(lists(change.also_added, after.option));
        }
        changed += change.also_added.empty() && change.also_removed.empty() ? 0 : 1;
    }
    CHECK(changed > 50);
    CHECK(blocked > 50);
}

TEST_CASE("Removing leaves a home within the rules, without the option") {
    Drawn drawn(6);
    int removed = 0;
    for (int i = 0; i < 300; ++i) {
        const Selection selection = drawn.home();
        if (selection.picks.empty()) continue;
        const Index<Option> option = at(selection.picks, drawn.index_in(selection.picks)).option;
        const Change change = without_option(book(), selection, option);
        REQUIRE(change.selection.find(option) == nullptr);
        REQUIRE(conflicts(book(), change.selection).empty());
        REQUIRE(change.selection.picks.size() ==
                selection.picks.size() - 1 - change.also_removed.size());
        ++removed;
    }
    CHECK(removed > 200);
}

TEST_CASE("The price never goes down when an option with a positive price joins") {
    Drawn drawn(7);
    int joined = 0;
    for (int i = 0; i < 800; ++i) {
        const Selection selection = drawn.home();
        const Pick pick = drawn.pick();
        const Option& option = option_of(pick);
        const auto unit = unit_price(option, pick.level, selection.plan);
        // A package may cost less than the parts it takes the place of.
        if (!unit || *unit <= Money{} || option.kind == OptionKind::package) continue;
        if (selection.find(pick.option) != nullptr) continue;
        const Change change = with_pick(book(), selection, pick);
        if (!change.blocked.empty() || !change.also_removed.empty()) continue;
        ++joined;
        CAPTURE(option.id);
        REQUIRE(price(change.selection) >= price(selection));
        if (!has_package(selection) && change.also_added.empty() &&
            option.kind != OptionKind::allowance) {
            REQUIRE(price(change.selection) > price(selection));
        }
    }
    CHECK(joined > 200);
}

TEST_CASE("A better level, a larger count and more spent never cost less") {
    Drawn drawn(8);
    int raised = 0;
    for (int i = 0; i < 400; ++i) {
        const Selection selection = drawn.home();
        for (std::size_t p = 0; p < selection.picks.size(); ++p) {
            Selection more = selection;
            Pick& pick = more.picks[p];
            const Option& option = option_of(pick);
            const std::size_t next = pick.level ? pick.level->position() + 1 : 0;
            if (option.kind == OptionKind::levels && next < option.levels.size() &&
                option.levels[next].price.on(selection.plan)) {
                pick.level = Index<Level>(next);
            } else if (option.kind == OptionKind::allowance) {
                pick.spend = *pick.spend + money("100.01");
            } else if (pick.quantity &&
                       *pick.quantity<option.quantity.highest&& * option.price.on(selection.plan)>
                            Money{}) {
                pick.quantity = *pick.quantity + option.quantity.step;
            } else {
                continue;
            }
            ++raised;
            CAPTURE(option.id);
            REQUIRE(price(more) >= price(selection));
        }
    }
    CHECK(raised > 500);
}

TEST_CASE("Every package of the example costs no more than its parts one by one") {
    int compared = 0;
    for (const Index<Option> index : indexes_of(book().options)) {
        const Option& package = at(book().options, index);
        if (package.kind != OptionKind::package) continue;
        for (const Index<Plan> plan : indexes_of(book().plans)) {
            const auto together = package.price.on(plan);
            if (!together) continue;
            Money apart;
            for (const OptionRef& part : package.parts) {
                apart += charge_alone({part.option, part.level}, plan);
            }
            CAPTURE(package.id, plan.position(), apart);
            CHECK(*together <= apart);
            CHECK(*together > Money{});
            ++compared;
        }
    }
    CHECK(compared >= 12);
}

TEST_CASE("What an incentive gives does not depend on where else it may go") {
    Drawn drawn(9);
    for (int i = 0; i < 200; ++i) {
        Selection selection = drawn.home();
        const PricedHome before = price_home(book(), selection);
        const Index<Incentive> index = drawn.index_in(book().incentives);
        for (const IncentiveUse use : at(book().incentives, index).uses) {
            selection.incentives = {{index, use, {}}};
            const PricedHome home = price_home(book(), selection);
            const Money credits = home.credited();
            REQUIRE(home.contract_price == before.contract_price - home.incentives);
            REQUIRE(home.incentives >= Money{});
            REQUIRE((home.incentives.is_zero() || credits.is_zero()));
            REQUIRE(home.options == before.options);
            if (use == IncentiveUse::options) {
                REQUIRE(home.incentives <= std::max(before.options, Money{}));
            }
            // Taken in two parts it comes to the same.
            selection.incentives = {{index, use, money("1000.01")}, {index, use, {}}};
            const PricedHome twice = price_home(book(), selection);
            REQUIRE(twice.contract_price == home.contract_price);
            REQUIRE(twice.credited() == home.credited());
        }
    }
}
