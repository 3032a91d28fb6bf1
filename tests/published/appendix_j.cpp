// The worked examples of 12 CFR 1026, Appendix J(c), and others' odd first periods.
//
// Status: L read in the regression tests of a general-purpose finance library that quotes the
// regulation example by example (second-hand), M from memory. Each prints its APR to two decimals.
#include <shown.hpp>

#include <quoin/loan/actuarial.hpp>
#include <quoin/loan/annual_percentage_rate.hpp>
#include <quoin/loan/level_payment.hpp>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Flow flow(const char* amount, int periods, Ratio fraction = {}, int count = 1) {
    return {money(amount), periods, fraction, count};
}

std::int64_t hundredths(const ActuarialSolution& solution) {
    REQUIRE(solution.trouble == ActuarialTrouble::none);
    return divide_rounded(solution.apr.billionths(), Decimal::one / 100, Rounding::half_away);
}

struct Example {
    const char* name;
    ActuarialProblem problem;
    std::int64_t printed; ///< APR in hundredths of a percent
};

} // namespace

TEST_CASE("The worked examples of Appendix J(c)") {
    const std::vector<Example> examples = {
        // L
        {"(c)(1)(i) monthly", {{12, 1}, {flow("5000", 0)}, {flow("230", 1, {}, 24)}}, 969},
        {"(c)(1)(ii) long first period",
         {{12, 1}, {flow("6000", 0)}, {flow("200", 1, {19, 30}, 36)}},
         1182},
        {"(c)(1)(iv) quarterly, long first",
         {{4, 1}, {flow("10000", 0)}, {flow("385", 1, {39, 90}, 40)}},
         897},
        {"(c)(1)(v) weekly, long first",
         {{52, 1}, {flow("500", 0)}, {flow("17.60", 4, {4, 7}, 30)}},
         1496},
        {"(c)(2)(i) odd first payment",
         {{12, 1}, {flow("5000", 0)}, {flow("250", 1), flow("230", 2, {}, 23)}},
         1008},
        {"(c)(3)(i) odd final payment",
         {{12, 1}, {flow("5000", 0)}, {flow("230", 1, {}, 23), flow("280", 24)}},
         1050},
        {"(c)(4)(i) odd first and final payment",
         {{12, 1}, {flow("5000", 0)}, {flow("250", 1), flow("230", 2, {}, 22), flow("280", 24)}},
         1090},
        // M
        {"(c)(5)(ii) single payment, six months",
         {{2, 1}, {flow("1000", 0)}, {flow("1044", 1)}},
         880},
        {"(c)(5)(iv) single payment, two years",
         {{1, 1}, {flow("1000", 0)}, {flow("1240", 2)}},
         1136},
        {"(c)(6)(i) skipped payments",
         {{13, 1},
          {flow("2135", 0)},
          {flow("100", 0, {26, 28}, 9), flow("100", 10, {12, 28}, 6), flow("100", 16, {26, 28}, 6),
           flow("100", 23, {12, 28}, 3)}},
         1200},
    };
    for (const Example& example : examples) {
        CAPTURE(example.name);
        CHECK(hundredths(solve(example.problem)) == example.printed);
    }
}

TEST_CASE("A fraction of a unit-period is simple interest: compounded, the example would differ") {
    // (c)(1)(ii) with the first 19/30 of a month as 19 whole thirtieths, compounded, and payments
    // 30 thirtieths apart: 11.77%, not the printed 11.82%.
    ActuarialProblem compounded{{360, 1}, {flow("6000", 0)}, {}};
    for (int month = 0; month < 36; ++month) {
        compounded.payments.push_back(flow("200", 30 + 19 + 30 * month));
    }
    CHECK(hundredths(solve(compounded)) != 1182);
}

TEST_CASE("A payment with a first period of 36 days, MathWorks Financial Toolbox, payodd") {
    // payodd(0.11/12, 24, 4000, 0, 36) = 186.7731; at that payment the APR is 11%.
    const ActuarialProblem problem{{12, 1}, {flow("4000", 0)}, {flow("186.77", 1, {6, 30}, 24)}};
    CHECK(hundredths(solve(problem)) == 1100);
}

TEST_CASE("A loan without charges has its note rate as APR") {
    for (const char* percent : {"0.125", "3.875", "6.5", "12", "25"}) {
        for (const int months : {12, 180, 360, 480}) {
            CAPTURE(percent, months);
            const LoanTerms terms{Money::dollars(1'000'000), rate(percent), Months(months)};
            const Schedule schedule = amortize(terms);
            std::vector<Money> payments;
            for (int month = 1; month <= schedule.months(); ++month) {
                payments.push_back(schedule.row(month).payment);
            }
            const auto apr = annual_percentage_rate(terms.loan, payments);
            REQUIRE(apr.has_value());
            CHECK(std::abs(apr->millionths() - terms.rate.millionths()) <= 10);
        }
    }
}

TEST_CASE("Both ways to an APR agree, odd days among them") {
    const Schedule schedule = amortize({Money::dollars(250'000), rate("6.5"), Months(360)});
    std::vector<Money> payments;
    std::vector<Flow> flows;
    for (int month = 1; month <= 360; ++month) {
        const Money payment = schedule.row(month).payment + (month <= 100 ? money("90") : Money{});
        payments.push_back(payment);
        flows.push_back({payment, month, {18, 30}, 1});
    }
    const Money financed = money("246123.45");
    const auto fast = annual_percentage_rate(financed, payments, {1, 18});
    const ActuarialSolution general = solve({{12, 1}, {flow("246123.45", 0)}, flows});
    REQUIRE(fast.has_value());
    CHECK(fast->millionths() == general.apr.billionths() / 1000);
}

TEST_CASE("First periods are counted back from the first payment") {
    CHECK(first_period(date("2027-05-14"), date("2027-07-01")).months == 1);
    CHECK(first_period(date("2027-05-14"), date("2027-07-01")).odd_days == 18);
    CHECK(first_period(date("2027-06-01"), date("2027-07-01")).odd_days == 0);
    CHECK(first_period(date("2027-06-02"), date("2027-07-01")).months == 0);
    // Appendix J(c)(1)(ii): from 10 February 1978 to 1 April 1978, one month and 19 days.
    CHECK(first_period(date("1978-02-10"), date("1978-04-01")).months == 1);
    CHECK(first_period(date("1978-02-10"), date("1978-04-01")).odd_days == 19);
}

TEST_CASE("No rate and several rates are told apart from one") {
    const ActuarialProblem too_little{{12, 1}, {flow("1000", 0)}, {flow("900", 1)}};
    CHECK(solve(too_little).trouble == ActuarialTrouble::no_rate);
    // 100 in, 230 out, 132 in: worth nothing at 10 and at 20% a period.
    const ActuarialProblem twice{{1, 1}, {flow("100", 0), flow("132", 2)}, {flow("230", 1)}};
    CHECK(solve(twice).trouble == ActuarialTrouble::several_rates);
}
