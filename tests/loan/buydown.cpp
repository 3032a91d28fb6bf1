// Temporary buydowns: their rules, each year's payment, the subsidy to the cent.
#include <shown.hpp>

#include <vector>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/buydown.hpp>
#include <quoin/loan/level_payment.hpp>

#include "seeded.hpp"

using namespace quoin;

namespace {

using Reductions = std::vector<Percent>;
using Problems = std::vector<BuydownProblem>;

Money money(const char* text) { return Money::parse(text).value(); }
Rate rate(const char* text) { return Rate::percent(Decimal::parse(text).value()).value(); }

Reductions points(std::initializer_list<const char*> texts) {
    Reductions reductions;
    for (const char* text : texts) reductions.emplace_back(Decimal::parse(text).value());
    return reductions;
}

/// Of the borrower.
Money payment_in_month(const Buydown& buydown, int month) {
    const auto index = static_cast<std::size_t>((month - 1) / 12);
    return index < buydown.years.size() ? buydown.years[index].payment : buydown.note_payment;
}

LoanTerms note_at(const char* text) { return {Money::dollars(200000), rate(text), Months(360)}; }

} // namespace

TEST_CASE("Each year of a 3-2-1 pays as a loan at its rate would") {
    // Source: commentary to 12 CFR 1026.43, 200,000 over 30 years: 1,199 at 6%, 1,331 at 7%,
    // 1,468 at 8%, 1,609 at 9%; printed to the dollar.
    const Buydown buydown = buy_down(note_at("9"), points({"3", "2", "1"}));
    const std::int64_t printed[] = {1199, 1331, 1468};
    REQUIRE(buydown.years.size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        CAPTURE(i);
        const BuydownYear& year = buydown.years[i];
        CHECK(to_dollars(year.payment, Rounding::half_away) == Money::dollars(printed[i]));
        CHECK(year.payment + year.subsidy == buydown.note_payment);
    }
    CHECK(buydown.years[0].rate == rate("6"));
    CHECK(buydown.years[2].rate == rate("8"));
    CHECK(to_dollars(buydown.note_payment, Rounding::half_away) == Money::dollars(1609));
}

TEST_CASE("The subsidy of a 2-1, month by month and in all") {
    // By hand from level payments of 200,000 over 30 years: 1199.10 at 6% (the printed balloon of
    // the commentary to 12 CFR 1026.43, 193,367, holds it to the cent), 1330.60 at 7%, 1467.53 at
    // 8%. Subsidies 268.43 and 136.93; 12 x 268.43 + 12 x 136.93 = 4864.32.
    const Buydown buydown = buy_down(note_at("8"), points({"2", "1"}));
    CHECK(buydown.years[0].payment == money("1199.10"));
    CHECK(buydown.years[0].subsidy == money("268.43"));
    CHECK(buydown.years[1].payment == money("1330.60"));
    CHECK(buydown.years[1].subsidy == money("136.93"));
    CHECK(buydown.total_subsidy() == money("4864.32"));
    CHECK(buydown.months() == 24);

    CHECK(payment_in_month(buydown, 1) == money("1199.10"));
    CHECK(payment_in_month(buydown, 12) == money("1199.10"));
    CHECK(payment_in_month(buydown, 13) == money("1330.60"));
    CHECK(payment_in_month(buydown, 24) == money("1330.60"));
    CHECK(payment_in_month(buydown, 25) == money("1467.53"));
    CHECK(buydown.subsidy_in_month(25) == Money{});
    CHECK(buydown.subsidy_through(0) == Money{});
    CHECK(buydown.subsidy_through(13) == money("3358.09")); // 12 x 268.43 + 136.93
    CHECK(buydown.subsidy_through(360) == money("4864.32"));
}

TEST_CASE("A borrower qualifies at the note rate") {
    const Buydown buydown = buy_down(note_at("7"), points({"1"}));
    CHECK(buydown.qualifying_rate() == rate("7"));
    CHECK(buydown.note_payment == money("1330.60"));
    CHECK(buydown.total_subsidy() == (money("1330.60") - money("1199.10")) * 12);
}

TEST_CASE("A buydown keeps to the rules, or what it breaks is said") {
    // Sources: reduction of up to 3 points and rises of up to one a year, Fannie Mae B2-1.4-04; up
    // to three years, Freddie Mac 4204.4.
    using enum BuydownProblem;
    struct Row {
        Reductions reductions;
        const char* note;
        Problems problems;
    };
    const Row rows[] = {
        {points({"1"}), "6.5", {}},
        {points({"2", "1"}), "6.5", {}},
        {points({"3", "2", "1"}), "6.5", {}},
        {points({"1", "1"}), "6.5", {}},
        {points({"1.5", "0.75"}), "6.5", {}},
        {points({"3", "2", "1"}), "3", {}}, // a first year at no interest
        {points({}), "6.5", {no_years}},
        {points({"1", "1", "1", "1"}), "6.5", {too_many_years}},
        {points({"0"}), "6.5", {reduction_not_positive}},
        {points({"1", "-1"}), "6.5", {reduction_not_positive, rate_rises_too_fast}},
        {points({"0.00000001"}), "6.5", {reduction_too_fine}},
        {points({"0.000001"}), "6.5", {}},
        {points({"3.125", "2.125", "1.125"}), "6.5", {reduction_too_large, rate_rises_too_fast}},
        {points({"3", "2", "1"}), "2.875", {rate_under_zero}},
        {points({"1", "2", "1"}), "6.5", {rate_falls}},
        {points({"2"}), "6.5", {rate_rises_too_fast}},
        {points({"3", "1"}), "6.5", {rate_rises_too_fast}},
    };
    for (const Row& row : rows) {
        CAPTURE(&row - rows);
        CHECK(buydown_problems(note_at(row.note), row.reductions) == row.problems);
        if (row.problems.empty()) {
            CHECK(buy_down(note_at(row.note), row.reductions).years.size() ==
                  row.reductions.size());
        } else {
            CHECK_THROWS_AS(buy_down(note_at(row.note), row.reductions), Broken);
        }
    }
}

TEST_CASE("A buydown ends before its loan does") {
    LoanTerms note = note_at("6.5");
    note.term = Months(24);
    const Problems outlasts{BuydownProblem::outlasts_term};
    CHECK(buydown_problems(note, points({"2", "1"})) == outlasts);
    note.term = Months(25);
    CHECK(buydown_problems(note, points({"2", "1"})).empty());
}

TEST_CASE("Any buydown: payment and subsidy make the note's payment, and all of it is put up") {
    Seeded seeded(21);
    const Reductions plans[] = {points({"1"}), points({"2", "1"}), points({"3", "2", "1"}),
                                points({"1.5", "0.5"})};
    for (int i = 0; i < 2'000; ++i) {
        LoanTerms note{seeded.loan(500'000'000), seeded.eighth(), seeded.home_term()};
        note.rate = Rate::millionths(note.rate.millionths() + 3'000'000);
        const Buydown buydown = buy_down(note, plans[seeded.between(0, 3)]);
        Money subsidies;
        Money before;
        for (int month = 1; month <= 40; ++month) {
            const Money paid = payment_in_month(buydown, month);
            if (paid < before) FAIL(i);
            before = paid;
            subsidies += buydown.subsidy_in_month(month);
            if (paid + buydown.subsidy_in_month(month) != buydown.note_payment) FAIL(i);
            if (buydown.subsidy_through(month) != subsidies) FAIL(i);
        }
        if (subsidies != buydown.total_subsidy()) FAIL(i);
    }
    CHECK(buy_down(note_at("9"), plans[0]).total_subsidy() > Money{});
}
