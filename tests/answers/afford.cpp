// How much home: held against every dollar of a window, and against the published ratios.
#include <shown.hpp>

#include <algorithm>

#include <quoin/answers/afford.hpp>
#include <quoin/loan/level_payment.hpp>
#include <quoin/render/answers.hpp>

#include "homes.hpp"
#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::unique_ptr<apps::Loaded> buyer(const std::string& name) {
    return apps::load_inquiry(QUOIN_SOURCE_DIR "/examples/oxbarrow-meadow/buyers/" + name + ".json",
                              QUOIN_SOURCE_DIR "/rates");
}

/// The highest price is one that fits, and nothing above it does: dollar by dollar at first, then
/// in steps that share no factor with anything, up to five millions.
void check_highest(const Sitting& sitting, std::size_t s, const AffordFacts& facts) {
    const auto price = highest_price(sitting, s, facts);
    constexpr std::int64_t window = 400;
    constexpr std::int64_t stride = 1'511;
    std::int64_t dollars = 1'000;
    if (price) {
        REQUIRE(fits_at(sitting, s, facts, *price));
        dollars = price->count() / 100;
    }
    for (std::int64_t above = dollars + 1; above <= dollars + window; ++above) {
        if (fits_at(sitting, s, facts, Money::dollars(above))) FAIL(above);
    }
    for (std::int64_t above = dollars + window; above < 1'500'000; above += stride) {
        if (fits_at(sitting, s, facts, Money::dollars(above))) FAIL(above);
    }
}

/// Counts what is worked out: figures, and the bounds of ranges.
class Counted {
  public:
    [[nodiscard]] const Watch& watch() const { return watch_; }
    [[nodiscard]] int worked_out() const { return count_; }

  private:
    int count_ = 0;
    Watch watch_ = [this] {
        ++count_;
        return true;
    };
};

/// An inquiry whose every loan has a down payment of whatever this cash allows.
Inquiry all_from_cash(Inquiry inquiry, Money cash) {
    for (Scenario& scenario : inquiry.scenarios) {
        scenario.down = {DownPayment::By::cash, {}, cash};
    }
    return inquiry;
}

const AffordScenario& scenario_named(const AffordAnswer& answer, const std::string& name) {
    for (const AffordScenario& s : answer.scenarios) {
        if (s.terms.name == name) return s;
    }
    throw std::runtime_error("no scenario " + name);
}

const LimitRoom& room_of(const AffordScenario& s, AffordLimit limit) {
    for (const LimitRoom& room : s.rooms) {
        if (room.limit == limit) return room;
    }
    throw std::runtime_error("no such limit");
}

} // namespace

TEST_CASE("The highest price fits and nothing above it does, over incomes, debts and cash") {
    for (const char* name : {"six-programs", "short-of-cash", "moves-again"}) {
        const auto loaded = buyer(name);
        int turn = 0;
        for (const char* income : {"4100", "9950", "21000"}) {
            Inquiry inquiry = loaded->inquiry;
            inquiry.monthly_income = money(income);
            inquiry.monthly_debts = Money::dollars(120 * ++turn);
            if (turn == 2) inquiry.cash = money("61234.56");
            for (Scenario& scenario : inquiry.scenarios) scenario.single_premium = turn != 1;
            const Sitting sitting(loaded->desk, inquiry);
            for (std::size_t s = 0; s < sitting.rules().size(); ++s) {
                CAPTURE(name, income, inquiry.scenarios[s].name);
                check_highest(sitting, s, {turn % 2, false, Money::dollars(5000)});
            }
        }
    }
}

TEST_CASE("Cash alone, without income, is a limit too") {
    const auto loaded = buyer("six-programs");
    Inquiry inquiry = loaded->inquiry;
    inquiry.monthly_income.reset();
    inquiry.cash = money("40000");
    const Sitting sitting(loaded->desk, inquiry);
    for (std::size_t s = 0; s < 4; ++s) {
        CAPTURE(inquiry.scenarios[s].name);
        const auto price = highest_price(sitting, s, {});
        REQUIRE(price);
        CHECK_FALSE(fits_at(sitting, s, {}, *price + Money::dollars(1)));
    }
}

TEST_CASE("FHA's 31/43 and USDA's 34/41 are shares of gross income, HUD 4000.1, HB-1-3555") {
    const auto loaded = buyer("six-programs");
    Inquiry inquiry = loaded->inquiry;
    inquiry.monthly_income = money("6000");
    inquiry.monthly_debts = money("500");
    inquiry.cash = money("500000");
    const AffordAnswer answer = afford(Sitting(loaded->desk, inquiry), {});
    const AffordScenario& fha = scenario_named(answer, "FHA, 3.5% down, 30 years");
    CHECK(room_of(fha, AffordLimit::front_ratio).most == money("1860"));
    CHECK(room_of(fha, AffordLimit::back_ratio).most == money("2580"));
    const AffordScenario& usda = scenario_named(answer, "USDA, nothing down, 30 years");
    CHECK(room_of(usda, AffordLimit::front_ratio).most == money("2040"));
    CHECK(room_of(usda, AffordLimit::back_ratio).most == money("2460"));
    const AffordScenario& va = scenario_named(answer, "VA, nothing down, first use");
    // 38 CFR 36.4340(d): 41%, the ratio rounded to two digits: 2,489.99 is 41.4998%, 2,490 is 42
    // %.
    CHECK(room_of(va, AffordLimit::back_ratio).most == money("2489.99"));
    CHECK(va.rooms.size() == 2); // no front ratio; cash
}

TEST_CASE("What binds is broken a dollar higher, and without it the next limit is reached") {
    const auto loaded = buyer("short-of-cash");
    const AffordAnswer answer = afford(loaded->sitting(), {});
    for (const AffordScenario& s : answer.scenarios) {
        CAPTURE(s.terms.name);
        REQUIRE(s.price);
        REQUIRE_FALSE(s.binds.empty());
        for (const LimitRoom& room : s.rooms) CHECK(room.room >= Money{});
        if (!s.next_price) continue;
        CHECK(*s.next_price > *s.price);
        for (const AffordLimit next : s.next_binds) {
            CHECK(std::find(s.binds.begin(), s.binds.end(), next) == s.binds.end());
        }
    }
}

TEST_CASE("What a step takes is enough, and a cent less is not") {
    const auto loaded = buyer("short-of-cash");
    const Money cent = Money::cents(1);
    const AffordAnswer answer = afford(loaded->sitting(), {});
    for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
        const AffordScenario& s = answer.scenarios[i];
        CAPTURE(s.terms.name);
        REQUIRE(s.step);
        if (s.terms.down_from_cash || !s.step->refusals.empty()) continue;
        const auto with = [&](Money income, Money cash) {
            Inquiry inquiry = loaded->inquiry;
            inquiry.monthly_income = *inquiry.monthly_income + income;
            inquiry.cash = *inquiry.cash + cash;
            return fits_at(Sitting(loaded->desk, inquiry), i, {}, s.step->price);
        };
        CHECK(with(s.step->more_income, s.step->more_cash));
        if (s.step->more_cash > Money{}) {
            CHECK_FALSE(with(s.step->more_income, s.step->more_cash - cent));
        }
        // Down to the cent of the share: a few cents of income can share one.
        if (s.step->more_income > Money{}) {
            CHECK_FALSE(with(s.step->more_income - cent * 4, s.step->more_cash));
        }
        if (!s.step->debts_suffice || s.step->less_debts.is_zero()) continue;
        Inquiry inquiry = loaded->inquiry;
        inquiry.monthly_debts = *inquiry.monthly_debts - s.step->less_debts;
        inquiry.cash = *inquiry.cash + s.step->more_cash;
        CHECK(fits_at(Sitting(loaded->desk, inquiry), i, {}, s.step->price));
    }
}

TEST_CASE("The lower rate of a step is the first rung down at which it fits as things stand") {
    int found = 0;
    for (const char* name : {"six-programs", "short-of-cash", "va-used-before"}) {
        const auto loaded = buyer(name);
        Inquiry inquiry = loaded->inquiry;
        inquiry.cash = money("150000");
        const Sitting sitting(loaded->desk, inquiry);
        const AffordAnswer answer = afford(sitting, {});
        for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
            const AffordScenario& s = answer.scenarios[i];
            CAPTURE(s.terms.name);
            if (!s.step || !s.step->refusals.empty()) continue;
            const auto fits = [&](Rate note) {
                Inquiry other = inquiry;
                other.scenarios[i].rate = {RateChoice::By::note, {}, note};
                return fits_at(Sitting(loaded->desk, other), i, {}, s.step->price);
            };
            std::optional<Rate> first;
            for (const Rung& rung : sitting.rules()[i].ladder->rungs) {
                const bool lower = rung.rate < s.terms.rate && (!first || rung.rate > *first);
                if (lower && fits(rung.rate)) first = rung.rate;
            }
            CHECK(first.has_value() == s.step->lower_rate.has_value());
            if (!first || !s.step->lower_rate) continue;
            CHECK(s.step->lower_rate->rate == *first);
            ++found;
        }
    }
    CHECK(found > 3);
}

TEST_CASE("Residual income binds where taxes and debts leave little, exactly") {
    const auto loaded = buyer("va-used-before");
    Inquiry inquiry = loaded->inquiry;
    inquiry.monthly_income = money("7900");
    inquiry.monthly_debts = money("100");
    for (const char* taxes : {"2100", "3500.07"}) {
        inquiry.monthly_taxes = money(taxes);
        for (const int persons : {1, 4, 7}) {
            inquiry.household = persons;
            const Sitting sitting(loaded->desk, inquiry);
            for (std::size_t s = 0; s < sitting.rules().size(); ++s) {
                CAPTURE(taxes, persons, s);
                check_highest(sitting, s, {0, false, Money::dollars(5000)});
            }
        }
    }
    const AffordScenario s = afford(Sitting(loaded->desk, inquiry), {}).scenarios.front();
    CHECK(s.binds == std::vector{AffordLimit::residual_income});
    CHECK(s.residual_guide == money("1199")); // seven persons, Midwest: 1,039 and twice 80
    const LimitRoom& room = room_of(s, AffordLimit::residual_income);
    // 7,900 less taxes, debts and the guide; 2,242 sq ft at 14 cents.
    CHECK(room.most == money("3100.93"));
    CHECK(room.needed == s.scenario.monthly.total() + money("313.88"));
    REQUIRE(s.step);
    CHECK(s.step->more_after_tax > Money{});
    inquiry.monthly_taxes = *inquiry.monthly_taxes - s.step->more_after_tax;
    inquiry.cash = *inquiry.cash + s.step->more_cash;
    CHECK(fits_at(Sitting(loaded->desk, inquiry), 0, {}, s.step->price));
    inquiry.monthly_taxes = *inquiry.monthly_taxes + Money::cents(1);
    CHECK_FALSE(fits_at(Sitting(loaded->desk, inquiry), 0, {}, s.step->price));
}

TEST_CASE("A VA ratio over 41% is let pass while 120% of the residual income is left") {
    // 38 CFR 36.4340(d) and (e): one person in the Midwest, a loan of 80,000 and more: 441, of
    // which 120% are 529.20; 2,242 sq ft at 14 cents.
    const auto loaded = buyer("va-used-before");
    Inquiry inquiry = loaded->inquiry;
    inquiry.monthly_income = money("7900");
    inquiry.monthly_debts = money("1900");
    inquiry.monthly_taxes = money("1100");
    inquiry.household = 1;
    inquiry.cash = money("900000");
    const auto left = [&](const AffordScenario& s) {
        return money("7900") - money("1900") - money("1100") - money("313.88") -
               s.scenario.monthly.total();
    };
    const Sitting sitting(loaded->desk, inquiry);
    const AffordAnswer answer = afford(sitting, {});
    for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
        const AffordScenario& s = answer.scenarios[i];
        CAPTURE(s.terms.name);
        REQUIRE(s.price);
        CHECK(s.passes_by_ratio);
        CHECK(s.binds == std::vector{AffordLimit::back_ratio});
        CHECK(s.scenario.monthly.total() + money("1900") >
              percent_of(money("7900"), Percent(decimal("41.5")), Rounding::up));
        CHECK(left(s) >= money("529.20"));
        CHECK(left(s) < money("529.20") + Money::dollars(1)); // a dollar of price is under a dollar
        check_highest(sitting, i, {});
    }
    CHECK(text_of(answer).find("It passes here") != std::string::npos);
    // Where it is not tested, the ratio holds.
    inquiry.household.reset();
    const Sitting untested(loaded->desk, inquiry);
    for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
        CHECK(highest_price(untested, i, {}).value() < answer.scenarios[i].price);
    }
}

TEST_CASE("Without its facts residual income is not tested, and which are lacking is said") {
    const auto loaded = buyer("va-used-before");
    Inquiry inquiry = loaded->inquiry;
    inquiry.household.reset();
    const AffordAnswer answer = afford(Sitting(loaded->desk, inquiry), {});
    const AffordScenario& s = answer.scenarios.front();
    REQUIRE(s.residual);
    CHECK_FALSE(s.residual->tested());
    CHECK(std::none_of(s.rooms.begin(), s.rooms.end(), [](const LimitRoom& room) {
        return room.limit == AffordLimit::residual_income;
    }));
    CHECK(text_of(answer).find("Missing: people in the") != std::string::npos);
    CHECK_FALSE(afford(buyer("short-of-cash")->sitting(), {}).scenarios.front().residual);
}

TEST_CASE("An adjustable loan is qualified at a higher rate than its own, a fixed one is not") {
    const auto loaded = buyer("moves-again");
    const Sitting sitting = loaded->sitting();
    const AffordAnswer answer = afford(sitting, {});
    int held_higher = 0;
    for (std::size_t i = 0; i < answer.scenarios.size(); ++i) {
        const AffordScenario& s = answer.scenarios[i];
        CAPTURE(s.terms.name);
        REQUIRE(s.price);
        const auto& plan = sitting.rules()[i].program->adjustable;
        if (!plan) CHECK_FALSE(s.qualifying_rate);
        if (!s.qualifying_rate) continue;
        ++held_higher;
        // 12 CFR 1026.43(c)(5)(i): the fully indexed rate or the initial one, the greater; the
        // program of five years adds its first cap of two points (Fannie Mae B3-6-04).
        const Rate indexed = s.terms.adjustable->fully_indexed;
        const Decimal raised =
            s.terms.rate.percent() + (plan->initial == Months(60) ? decimal("2") : Decimal{});
        CHECK(s.qualifying_rate->percent() == std::max(raised, indexed.percent()));
        const Money payment = level_payment(s.scenario.loan, *s.qualifying_rate, s.terms.term);
        const Money month = s.scenario.monthly.total() -
                            s.scenario.monthly[MonthPart::principal_and_interest] + payment;
        CHECK(room_of(s, AffordLimit::back_ratio).needed ==
              month + loaded->inquiry.monthly_debts.value_or(Money{}));
    }
    CHECK(held_higher > 0);
}

TEST_CASE("Debts over the income leave nothing, and the miss is said") {
    const auto loaded = buyer("six-programs");
    Inquiry inquiry = loaded->inquiry;
    inquiry.monthly_income = money("2000");
    inquiry.monthly_debts = money("2500");
    const AffordAnswer answer = afford(Sitting(loaded->desk, inquiry), {});
    for (const AffordScenario& s : answer.scenarios) {
        CHECK_FALSE(s.price);
        CHECK(std::any_of(s.nearest.begin(), s.nearest.end(),
                          [](const LimitRoom& room) { return room.room < Money{}; }));
    }
    CHECK(text_of(answer).find("No price works for this loan.") != std::string::npos);
}

TEST_CASE("A raise never lowers what fits, and neither does more cash") {
    const auto loaded = buyer("six-programs");
    const auto at = [&](std::int64_t income, std::int64_t cash, std::size_t s) {
        Inquiry inquiry = loaded->inquiry;
        inquiry.monthly_income = Money::dollars(income);
        inquiry.cash = Money::dollars(cash);
        return highest_price(Sitting(loaded->desk, inquiry), s, {}).value_or(Money{});
    };
    for (std::size_t s = 0; s < loaded->inquiry.scenarios.size(); ++s) {
        for (const std::int64_t income : {3'000, 6'000, 12'000}) {
            CHECK(at(income, 60'000, s) <= at(income + 500, 60'000, s));
            CHECK(at(income, 60'000, s) <= at(income, 75'000, s));
        }
    }
}

TEST_CASE("Down payments from cash are searched exactly, with little work") {
    constexpr int most_by_scenario = 2'500; // of a quarter of a million prices
    for (const char* name :
         {"six-programs", "right-under-eighty", "short-of-cash", "moves-again", "va-used-before"}) {
        const auto loaded = buyer(name);
        for (const std::int64_t cash : {5'000, 21'000, 60'000, 128'000, 400'000}) {
            const Inquiry inquiry = all_from_cash(loaded->inquiry, Money::dollars(cash));
            for (const int reserves : {0, 2}) {
                CAPTURE(name, cash, reserves);
                const AffordFacts facts{reserves, false, Money::dollars(5000)};
                const Counted counted;
                const AffordAnswer answer =
                    afford(Sitting(loaded->desk, inquiry, &counted.watch()), facts);
                CHECK(counted.worked_out() <
                      most_by_scenario * static_cast<int>(answer.scenarios.size()));
            }
            const Sitting sitting(loaded->desk, inquiry);
            const auto s = static_cast<std::size_t>(cash / 1'000) % inquiry.scenarios.size();
            CAPTURE(name, cash, s);
            check_highest(sitting, s, {});
        }
    }
}

TEST_CASE("So they are on drawn homes, with credits, reserves, points and buydowns") {
    Homes homes(2'511);
    for (int round = 0; round < 40; ++round) {
        const int cash = 3'000 + homes.below(90'000);
        Inquiry inquiry = all_from_cash(homes.next(), Money::dollars(cash));
        inquiry.monthly_income = Money::dollars(3'000 + homes.below(15'000));
        inquiry.cash = Money::dollars(cash + homes.below(3) * 5'000 - 5'000);
        if (homes.below(3) == 0) inquiry.monthly_income.reset();
        if (homes.below(2) == 0) {
            inquiry.facts.credits.push_back(
                {"gift",
                 CreditFrom::seller,
                 Money::dollars(homes.below(12'000)),
                 {CreditUse::closing_costs, CreditUse::prepaids, CreditUse::points}});
        }
        const auto s = static_cast<std::size_t>(homes.below(inquiry.scenarios.size()));
        Scenario& scenario = inquiry.scenarios[s];
        scenario.rate = {RateChoice::By::points,
                         Points(Decimal::billionths((homes.below(9) - 4) * 250'000'000LL)),
                         {}};
        scenario.single_premium = homes.below(2) == 0;
        scenario.finance_fee = homes.below(2) == 0;
        const AffordFacts facts{homes.below(2) * 3, homes.below(2) == 0, Money::dollars(5000)};
        CAPTURE(round, cash, inquiry.scenarios[s].name);
        const Counted counted;
        static_cast<void>(
            highest_price(Sitting(six_programs().desk, inquiry, &counted.watch()), s, facts));
        CHECK(counted.worked_out() < 2'500);
        if (round % 4 == 0) check_highest(Sitting(six_programs().desk, inquiry), s, facts);
    }
}

TEST_CASE(
    "What no price changes is seen at once: the term, the place, a buydown, a changing rate") {
    constexpr int most_by_scenario = 200;
    const auto work = [](const Desk& desk, const Inquiry& inquiry) {
        const Counted counted;
        const AffordAnswer answer = afford(Sitting(desk, inquiry, &counted.watch()), {});
        for (const AffordScenario& one : answer.scenarios) {
            CAPTURE(one.terms.name);
            CHECK_FALSE(one.price);
            CHECK_FALSE(one.refusals.empty());
        }
        return counted.worked_out() / static_cast<int>(answer.scenarios.size());
    };
    const auto changed = [&](const char* name, auto change) {
        const auto loaded = buyer(name);
        for (Scenario& scenario : loaded->inquiry.scenarios) change(scenario);
        return work(loaded->desk, loaded->inquiry);
    };
    for (const char* name : {"six-programs", "moves-again"}) {
        CAPTURE(name);
        CHECK(changed(name, [](Scenario& s) { s.term = Months(12); }) < most_by_scenario);
        CHECK(changed(name, [](Scenario& s) {
                  s.buydown = {Percent(Decimal::whole(2)), Percent(Decimal::whole(3))};
              }) < most_by_scenario); // its payments would fall
    }
    const auto loaded = buyer("six-programs");
    for (Place& place : loaded->desk.lending.places) place.rural_eligible = false;
    auto& scenarios = loaded->inquiry.scenarios;
    std::erase_if(scenarios, [](const Scenario& s) { return s.program != "usda"; });
    REQUIRE(scenarios.size() == 1);
    CHECK(work(loaded->desk, loaded->inquiry) < most_by_scenario);

    const auto mover = buyer("moves-again");
    for (LoanProgram& program : mover->desk.lending.programs) {
        if (program.adjustable) program.adjustable->caps.life = Percent(Decimal::whole(-1));
    }
    const auto fixed = [&](const Scenario& s) {
        const auto& programs = mover->desk.lending.programs;
        return !at(programs, index_of(programs, s.program).value()).adjustable;
    };
    std::erase_if(mover->inquiry.scenarios, fixed);
    REQUIRE_FALSE(mover->inquiry.scenarios.empty());
    CHECK(work(mover->desk, mover->inquiry) < most_by_scenario);
}

TEST_CASE("How far is looked counts what is put down, and the credits that pay towards it") {
    const auto loaded = buyer("six-programs");
    Inquiry inquiry = loaded->inquiry;
    inquiry.monthly_income = money("3000");
    inquiry.monthly_debts.reset();
    inquiry.cash = money("900000");
    inquiry.facts.credits.push_back(
        {"family", CreditFrom::lender, money("250000"), {CreditUse::down_payment}});
    for (const auto by : {DownPayment::By::amount, DownPayment::By::cash}) {
        for (Scenario& scenario : inquiry.scenarios) scenario.down = {by, {}, money("300000")};
        const Sitting sitting(loaded->desk, inquiry);
        for (std::size_t s = 0; s < sitting.rules().size(); ++s) {
            CAPTURE(s);
            REQUIRE(highest_price(sitting, s, {}).value_or(Money{}) > money("300000"));
            check_highest(sitting, s, {});
        }
    }
}

TEST_CASE("A file accepted by automated underwriting is held to no ratio where none is published") {
    // HUD archive sfhp2-12; HB-1-3555, chapter 11; 38 CFR 36.4340(d).
    const auto loaded = buyer("six-programs");
    Inquiry inquiry = loaded->inquiry;
    inquiry.monthly_income = money("5000");
    const Sitting sitting(loaded->desk, inquiry);
    const AffordAnswer manual = afford(sitting, {});
    const AffordAnswer accepted = afford(sitting, {0, true, Money::dollars(5000)});
    const std::string text = text_of(accepted);
    int none = 0;
    for (std::size_t s = 0; s < accepted.scenarios.size(); ++s) {
        const AffordScenario& one = accepted.scenarios[s];
        CAPTURE(one.terms.name);
        const auto kind = sitting.rules()[s].program->kind;
        REQUIRE(one.automated);
        CHECK_FALSE(manual.scenarios[s].automated);
        const bool held =
            std::any_of(one.rooms.begin(), one.rooms.end(), [](const LimitRoom& room) {
                return room.limit == AffordLimit::front_ratio ||
                       room.limit == AffordLimit::back_ratio;
            });
        if (kind == ProgramKind::fha || kind == ProgramKind::usda) {
            ++none;
            CHECK(one.automated == AutomatedRatio::none_published);
            CHECK_FALSE(one.back);
            CHECK_FALSE(held);
            CHECK(one.price > manual.scenarios[s].price);
            check_highest(sitting, s, {0, true, Money::dollars(5000)});
        } else if (kind == ProgramKind::va) {
            CHECK(one.automated == AutomatedRatio::the_same);
            CHECK(one.price == manual.scenarios[s].price);
        } else {
            CHECK(one.automated == AutomatedRatio::another);
            CHECK(held);
            CHECK(one.price > manual.scenarios[s].price);
        }
    }
    CHECK(none > 1);
    CHECK(text.find("This program publishes no ratio") != std::string::npos);
    CHECK(text.find("This program uses 41% as its guide") != std::string::npos);
    CHECK(text_of(manual).find("Automated underwriting") == std::string::npos);
}
