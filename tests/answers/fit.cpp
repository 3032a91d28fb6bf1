// Which wishes fit: the best by trying all, the bound it rests on, and each kind of rule by itself.
#include <catch.hpp>

#include <algorithm>
#include <array>

#include <nlohmann/json.hpp>

#include <quoin/answers/fit.hpp>
#include <quoin/loan/least_figures.hpp>
#include <quoin/render/answers.hpp>

#include "fit_all.hpp"
#include "fit_cases.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::vector<std::string> ids(const std::vector<FitWish>& wishes) {
    std::vector<std::string> list;
    for (const FitWish& wish : wishes) list.push_back(wish.id);
    std::sort(list.begin(), list.end());
    return list;
}

Decimal sum_of(const std::vector<FitWish>& wishes) {
    Decimal sum;
    for (const FitWish& wish : wishes) sum = sum + wish.worth;
    return sum;
}

/// Why nothing can be chosen, as the JSON of the answer says it.
std::string barred_words(const FitCase& one) {
    const std::string text = json_text_of(fit(Sitting(one.desk, one.inquiry), one.question));
    return nlohmann::json::parse(text)["scenarios"][0]["homes"][0]["barred"];
}

/// What would let the next wish in, against every choice that holds it.
void check_next(FitCase one, const FitNext& next) {
    for (Wish& wish : one.inquiry.wishes) wish.must = wish.must || wish.rank == next.wish.rank;
    const auto best = EveryChoice(one).best();
    CHECK(next.proven);
    CHECK(next.can_be_chosen == best.has_value());
    if (best) CHECK(next.worth.billionths() == best->worth);
}

/// The answer against every choice there is.
void check_against_all(const FitCase& one) {
    const auto best = EveryChoice(one).best();
    const FitHome home = one.answer();
    INFO(text_of(fit(Sitting(one.desk, one.inquiry), one.question)));
    CHECK(home.fits == best.has_value());
    CHECK((home.proven || home.barred.has_value()));
    if (!best || !home.fits) return;
    CHECK(home.worth.billionths() == best->worth);
    CHECK(home.most == home.worth);
    CHECK(sum_of(home.chosen) == home.worth);
    CHECK(home.scenario->monthly.total() == best->least.monthly);
    CHECK(home.scenario->cash.needed() == best->least.cash);
    if (home.next) check_next(one, *home.next);
}

/// Limits that the bare home with options of this total just meets.
void limit_to(FitCase& one, Money options) {
    const Sitting sitting(one.desk, one.inquiry);
    const LoanFigures figures =
        loan_figures(sitting.rules()[*one.question.scenario],
                     home_at(one.desk.book, one.inquiry.selection, options), one.inquiry.facts);
    REQUIRE(figures.available());
    one.question.limits = {figures.monthly.total(), figures.cash.needed()};
}

} // namespace

TEST_CASE("No choice of wishes is worth more than the one that is given") {
    FitCases cases(20261125);
    int fitting = 0;
    int left_out = 0;
    for (int round = 0; round < 240; ++round) {
        const FitCase one = cases.next(3 + round % 6);
        INFO("round " << round);
        check_against_all(one);
        const FitHome home = one.answer();
        fitting += home.fits;
        left_out += !home.left_out.empty();
    }
    CHECK(fitting > 120); // and not because nothing ever fits, or everything does
    CHECK(left_out > 60);
}

TEST_CASE("Needs met in several ways by shared helpers and packages are chosen as by trying all") {
    FitCases cases(4711, FitRules::tangled);
    int fitting = 0;
    int along = 0;
    int packages = 0;
    for (int round = 0; round < 240; ++round) {
        const FitCase one = cases.next(3 + round % 6, 10 + round % 8);
        INFO("round " << round);
        check_against_all(one);
        const FitHome home = one.answer();
        fitting += home.fits;
        along += !home.along.empty();
        packages += std::any_of(home.chosen.begin(), home.chosen.end(), [&](const FitWish& wish) {
            return std::any_of(one.desk.book.options.begin(), one.desk.book.options.end(),
                               [&](const Option& option) {
                                   return option.id == wish.id &&
                                          option.kind == OptionKind::package;
                               });
        });
    }
    CHECK(fitting > 120);
    CHECK(along > 40);
    CHECK(packages > 30);
}

TEST_CASE("Twelve wishes among twenty options are chosen as well as by trying all") {
    const FitRules rules = GENERATE(FitRules::loose, FitRules::tangled);
    FitCases cases(1625, rules);
    for (int round = 0; round < 25; ++round) {
        INFO("round " << round);
        check_against_all(cases.next(12 + round % 3, 20));
    }
}

TEST_CASE("No price in a range has a smaller month or cash than the least that is said") {
    FitCases cases(77);
    int possible = 0;
    for (int round = 0; round < 300; ++round) {
        const FitCase one = cases.next(2);
        const Sitting sitting(one.desk, one.inquiry);
        const ScenarioRules& rules = sitting.rules()[*one.question.scenario];
        const Money first = Money::cents(cases.below(20'000'000) - 5'000'000);
        const Money width = Money::cents(1 + cases.below(round % 2 == 0 ? 50'000 : 9'000'000));
        const auto home = [&](Money options) {
            return home_at(one.desk.book, one.inquiry.selection, options);
        };
        PriceRange range{
            home(first).contract_price, home(first + width).contract_price, {}, false, {}};
        PricedHome most = home(first);
        for (std::size_t i = 0; i < most.given.size(); ++i) {
            Money& amount = most.given[i].amount;
            amount = std::max(amount, home(first + width).given[i].amount);
        }
        range.incentives = incentive_credits(most);
        range.flood_zone = home(first).flood_zone;
        const LeastFigures least = least_figures(rules, one.inquiry.facts, range);
        possible += least.possible;
        for (int i = 0; i < 12; ++i) {
            const Money options =
                i == 0   ? first
                : i == 1 ? first + width
                         : first + Money::cents(cases.below(static_cast<int>(width.count())));
            const LoanFigures figures = loan_figures(rules, home(options), one.inquiry.facts);
            if (!figures.available()) continue;
            CHECK(least.possible);
            CHECK(least.monthly <= figures.monthly.total());
            CHECK(least.cash <= figures.cash.needed());
            // One part of the loans there may be is under all of them at once.
            CHECK(any_least_figures(rules, one.inquiry.facts, range, [&](const LeastFigures& part) {
                return part.monthly <= figures.monthly.total() &&
                       part.cash <= figures.cash.needed() && part.loan <= figures.loan &&
                       part.rate <= figures.rate;
            }));
        }
    }
    CHECK(possible > 200);
}

TEST_CASE("A narrow range is bounded within a few dollars of its own figures") {
    const Sitting sitting = six_programs().sitting();
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    for (const ScenarioRules& rules : sitting.rules()) {
        const LoanFigures figures = loan_figures(rules, home, sitting.inquiry().facts);
        if (!figures.available()) continue;
        const LeastFigures least = least_figures(rules, sitting.inquiry().facts,
                                                 {home.contract_price,
                                                  home.contract_price,
                                                  incentive_credits(home),
                                                  home.flood_zone,
                                                  {}});
        CHECK(least.monthly >= figures.monthly.total() - Money::dollars(2));
        CHECK(least.cash >= figures.cash.needed() - Money::dollars(20));
    }
}

TEST_CASE("A wish brings what it needs along, and what that needs") {
    FitCase one = bare_case();
    const Index<Option> pipe = one.add_option("pipe", money("700"));
    const Index<Option> stove = one.add_option("stove", money("2500"));
    const Index<Option> hood = one.add_option("hood", money("900"));
    at(one.desk.book.options, stove).needs = {{{pipe}}};
    at(one.desk.book.options, hood).needs = {{{stove}}};
    one.wish(hood);
    limit_to(one, money("4100"));
    const FitHome home = one.answer();
    CHECK(ids(home.chosen) == std::vector<std::string>{"hood"});
    CHECK(home.along.size() == 2);
    limit_to(one, money("4000"));
    CHECK(one.answer().chosen.empty());
    CHECK(one.answer().left_out.front().along == std::vector<std::string>{"pipe", "stove"});
}

TEST_CASE("The cheaper of two ways to meet a need leaves room for another wish") {
    FitCase one = bare_case();
    const Index<Option> dear = one.add_option("dear", money("5000"));
    const Index<Option> cheap = one.add_option("cheap", money("1000"));
    const Index<Option> stove = one.add_option("stove", money("2000"));
    const Index<Option> lamp = one.add_option("lamp", money("3000"));
    at(one.desk.book.options, stove).needs = {{{dear}, {cheap}}};
    one.wish(stove);
    one.wish(lamp);
    limit_to(one, money("6000"));
    const FitHome home = one.answer();
    CHECK(ids(home.chosen) == std::vector<std::string>{"lamp", "stove"});
    REQUIRE(home.along.size() == 1);
    CHECK(home.along.front().id == "cheap");
}

TEST_CASE("Of two wishes that exclude each other the one of more worth is chosen, weight first") {
    FitCase one = bare_case();
    const Index<Option> deck = one.add_option("deck", money("5000"));
    const Index<Option> porch = one.add_option("porch", money("5000"));
    at(one.desk.book.options, deck).excludes = {porch};
    one.wish(deck);
    one.wish(porch);
    CHECK(ids(one.answer().chosen) == std::vector<std::string>{"deck"});
    CHECK(one.answer().left_out.front().reason == FitReason::rule);
    one.inquiry.wishes[1].weight = decimal("2.5"); // against two by rank
    CHECK(ids(one.answer().chosen) == std::vector<std::string>{"porch"});
    one.inquiry.wishes[0].must = true;
    CHECK(ids(one.answer().chosen) == std::vector<std::string>{"deck"});
}

TEST_CASE("A quantity is charged and weighed as it is wished for") {
    FitCase one = bare_case();
    const Index<Option> lights = one.add_option("lights", money("200"));
    Option& option = at(one.desk.book.options, lights);
    option.quantity.from = Quantity::From::buyer;
    option.quantity.highest = decimal("20");
    one.wish(lights).pick.quantity = decimal("8");
    limit_to(one, money("1600"));
    CHECK(one.answer().chosen.size() == 1);
    CHECK(one.answer().chosen.front().price == money("1600"));
    limit_to(one, money("1500"));
    const FitHome home = one.answer();
    CHECK(home.chosen.empty());
    REQUIRE(home.next);
    CHECK(home.next->raise_monthly + home.next->raise_cash > Money{});
    one.question.limits.monthly = home.next->limit_monthly;
    one.question.limits.cash = home.next->limit_cash;
    CHECK(ids(one.answer().chosen) == std::vector<std::string>{"lights"});
}

TEST_CASE("A limit below the home itself is missed by as much as is said") {
    FitCase one = bare_case();
    one.wish(one.add_option("deck", money("5000")));
    limit_to(one, Money{});
    one.question.limits.monthly = one.question.limits.monthly - money("12.34");
    const FitHome home = one.answer();
    CHECK_FALSE(home.fits);
    CHECK(home.proven);
    CHECK(home.over_monthly == money("12.34"));
    CHECK(home.over_cash == Money{});
    REQUIRE(home.miss);
    CHECK(home.miss->in_one_home);
    CHECK(home.miss->proven);
}

TEST_CASE("No home with the must-haves is nearer to the limits than is said, by trying all") {
    const FitRules rules = GENERATE(FitRules::loose, FitRules::tangled);
    FitCases cases(909, rules);
    int missed = 0;
    int with_musts = 0;
    for (int round = 0; round < 160; ++round) {
        FitCase one = cases.next(3 + round % 5, 8 + round % 6);
        if (one.inquiry.wishes.size() > 1) one.inquiry.wishes[1].must = round % 2 == 0;
        const std::vector<FitLimits> homes = EveryChoice(one).homes();
        if (homes.empty()) continue;
        FitLimits least = homes.front();
        for (const FitLimits& home : homes) {
            least = {std::min(least.monthly, home.monthly), std::min(least.cash, home.cash)};
        }
        const auto under = [](Money amount, int cents) {
            return std::max(amount - Money::cents(cents), Money{});
        };
        one.question.limits = {under(least.monthly, round % 3 == 0 ? 0 : 12'345),
                               under(least.cash, round % 3 == 1 ? 0 : 67'890)};
        const FitHome home = one.answer();
        if (home.fits || home.barred) continue;
        INFO("round " << round);
        REQUIRE(home.miss);
        CHECK(home.miss->proven);
        CHECK(one.question.limits.monthly + home.miss->least_monthly == least.monthly);
        CHECK(one.question.limits.cash + home.miss->least_cash == least.cash);
        const bool both = std::any_of(homes.begin(), homes.end(), [&](const FitLimits& each) {
            return each.monthly == least.monthly && each.cash == least.cash;
        });
        CHECK(home.miss->in_one_home == both);
        CHECK(home.over_monthly == home.miss->least_monthly);
        if (both) CHECK(home.over_cash == home.miss->least_cash);
        ++missed;
        with_musts += std::any_of(home.chosen.begin(), home.chosen.end(),
                                  [](const FitWish& wish) { return wish.must; });
    }
    CHECK(missed > 60);
    CHECK(with_musts > 20);
}

TEST_CASE("The nearest home meets a must-have's need in the cheapest way") {
    FitCase one = bare_case();
    const Index<Option> dear = one.add_option("dear", money("5000"));
    const Index<Option> cheap = one.add_option("cheap", money("1000"));
    const Index<Option> stove = one.add_option("stove", money("2000"));
    at(one.desk.book.options, stove).needs = {{{dear}, {cheap}}};
    one.wish(stove).must = true;
    limit_to(one, money("3000"));
    one.question.limits.monthly = one.question.limits.monthly - money("0.01");
    const FitHome home = one.answer();
    CHECK_FALSE(home.fits);
    CHECK(home.over_monthly == money("0.01"));
    REQUIRE(home.along.size() == 1);
    CHECK(home.along.front().id == "cheap");
}

TEST_CASE("Must-haves whose needs exclude each other are named, with the rules") {
    FitCase one = bare_case();
    const Index<Option> pipe = one.add_option("pipe", money("700"));
    const Index<Option> flue = one.add_option("flue", money("900"));
    const Index<Option> stove = one.add_option("stove", money("2500"));
    const Index<Option> hood = one.add_option("hood", money("900"));
    const Index<Option> lamp = one.add_option("lamp", money("90"));
    at(one.desk.book.options, stove).needs = {{{pipe}}};
    at(one.desk.book.options, hood).needs = {{{flue}}};
    at(one.desk.book.options, flue).excludes = {pipe};
    for (const Index<Option> each : {lamp, stove, hood}) one.wish(each).must = true;
    CHECK(barred_words(one) ==
          "stove and hood, must-haves, do not go together: stove (needs pipe); hood (needs flue); "
          "pipe and flue do not go together");
    const Index<Lot> elsewhere(one.inquiry.selection.lot == Index<Lot>{} ? 1 : 0);
    at(one.desk.book.options, pipe).only.lots = {elsewhere};
    CHECK(barred_words(one) ==
          "stove, a must-have, cannot be chosen here: stove (needs pipe); pipe (only on lot " +
              at(one.desk.book.lots, elsewhere).id + ")");
}

TEST_CASE("A must-have that the limits do not hold leaves nothing to choose, and is priced") {
    FitCase one = bare_case();
    one.wish(one.add_option("deck", money("5000"))).must = true;
    one.wish(one.add_option("lamp", money("100")));
    limit_to(one, money("4000"));
    const FitHome home = one.answer();
    CHECK_FALSE(home.fits);
    CHECK(ids(home.chosen) == std::vector<std::string>{"deck"});
    CHECK(home.over_monthly + home.over_cash > Money{});
}

TEST_CASE("A must-have that is not for this lot bars it, and another lot is better") {
    FitCase one = bare_case();
    const Index<Option> deck = one.add_option("deck", money("500"));
    std::optional<Index<Lot>> other;
    for (const Index<Lot> index : indexes_of(one.desk.book.lots)) {
        const Lot& lot = at(one.desk.book.lots, index);
        const bool can = lot.status == LotStatus::free && index != one.inquiry.selection.lot;
        if (can && allows(lot.plans, one.inquiry.selection.plan)) other = index;
    }
    REQUIRE(other);
    at(one.desk.book.options, deck).only.lots = {*other};
    one.wish(deck).must = true;
    one.question.lots = true;
    const FitAnswer answer = fit(Sitting(one.desk, one.inquiry), one.question);
    const FitScenario& scenario = answer.scenarios.front();
    CHECK(scenario.homes.front().barred);
    CHECK(scenario.homes[scenario.best].lot == at(one.desk.book.lots, *other).id);
    CHECK(ids(scenario.homes[scenario.best].chosen) == std::vector<std::string>{"deck"});
}

TEST_CASE("A stopped search says how much better a choice could be, and never too little") {
    const FitRules rules = GENERATE(FitRules::loose, FitRules::tangled);
    FitCases cases(5, rules);
    for (int round = 0; round < 80; ++round) {
        FitCase one = cases.next(12, 20);
        const FitHome whole = one.answer();
        one.question.nodes = 1 + round % 7;
        const FitHome stopped = one.answer();
        if (whole.barred || stopped.barred) continue;
        CHECK(stopped.nodes <= one.question.nodes);
        if (whole.fits) CHECK(stopped.most >= whole.worth);
        if (stopped.fits) CHECK(stopped.worth <= whole.worth);
        if (stopped.proven && stopped.fits) CHECK(stopped.worth == whole.worth);
    }
}

TEST_CASE("Stopped at any moment, what is said is true") {
    FitCases cases(31, FitRules::tangled);
    std::array<int, 4> stopped_in{};
    for (int round = 0; round < 40; ++round) {
        FitCase one = cases.next(9, 18);
        if (round % 4 == 0) one.question.limits.cash = Money::dollars(1); // nothing fits
        const FitHome whole = one.answer();
        for (int calls = 0, last = 0; last == 0 && calls < 4000; calls += 1 + calls / 10) {
            FitStage stage = FitStage::best;
            int told = 0;
            const FitAnswer answer =
                fit(Sitting(one.desk, one.inquiry), one.question, [&](const FitProgress& now) {
                    stage = now.stage;
                    return told++ < calls;
                });
            last = told <= calls;
            CHECK((last == 1 || told == calls + 1)); // not told again once it said stop
            const FitHome& home = answer.scenarios.front().homes.front();
            INFO("round " << round << ", stopped after " << calls);
            if (last == 0) ++stopped_in[static_cast<std::size_t>(stage)];
            if (home.fits) CHECK(home.worth <= whole.worth);
            if (whole.fits && home.barred) FAIL("barred, though it fits");
            if (whole.fits) CHECK(home.most >= whole.worth);
            if (whole.fits) CHECK((home.fits || !home.proven));
            if (home.fits && home.proven) CHECK(home.worth == whole.worth);
            if (home.cheapest) CHECK(home.price == whole.price);
            if (home.miss && home.miss->proven) {
                CHECK(home.miss->least_monthly == whole.miss->least_monthly);
                CHECK(home.miss->least_cash == whole.miss->least_cash);
            }
            CHECK_FALSE(text_of(answer).empty());
            CHECK_FALSE(json_text_of(answer).empty());
        }
    }
    for (const int count : stopped_in) CHECK(count > 0);
}

TEST_CASE("Of choices of equal worth the one of the least month is given") {
    FitCase one = bare_case();
    for (const char* price : {"5000", "3000.01", "3000", "4000"}) {
        one.wish(one.add_option(std::string("lamp-") + price, money(price))).weight = decimal("1");
    }
    limit_to(one, money("8000"));
    const FitHome home = one.answer();
    CHECK(ids(home.chosen) == std::vector<std::string>{"lamp-3000", "lamp-3000.01"});
    CHECK(home.cheapest);
}

TEST_CASE("What is left out would add what adding it to the chosen home adds") {
    const Sitting sitting = six_programs().sitting();
    FitQuestion question;
    question.limits = {Money::dollars(3900), Money::dollars(60'000)};
    for (const FitScenario& scenario : fit(sitting, question).scenarios) {
        const FitHome& home = scenario.homes.front();
        for (const FitLeftOut& left : home.left_out) {
            if (left.reason != FitReason::limits) continue;
            const Money month = home.scenario->monthly.total() + left.added->per_month;
            CHECK(left.over_monthly == std::max(month - question.limits.monthly, Money{}));
            CHECK((left.over_monthly > Money{} || left.over_cash > Money{}));
        }
    }
}

TEST_CASE("A wish without a weight is worth n + 1 less its place by rank") {
    Inquiry inquiry;
    for (const int rank : {10, 10, 3, 40}) {
        Wish wish;
        wish.rank = rank;
        inquiry.wishes.push_back(wish);
    }
    std::vector<std::string> worths;
    for (const Wish& wish : inquiry.wishes) worths.push_back(inquiry.worth_of(wish).text());
    CHECK(worths == std::vector<std::string>{"3", "3", "4", "1"});
}
