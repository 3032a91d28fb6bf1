// Adjustable-rate loans: rates along an index, the caps, published payments, schedules that clear.
#include <shown.hpp>

#include <span>
#include <vector>

#include <quoin/exact/broken.hpp>
#include <quoin/loan/adjustable.hpp>
#include <quoin/loan/annual_percentage_rate.hpp>
#include <quoin/loan/level_payment.hpp>

#include "seeded.hpp"

using namespace quoin;

template <>
struct Catch::StringMaker<RateStep> {
    static std::string convert(const RateStep& step) {
        return std::to_string(step.from_payment) + ": " + step.rate.text() + " %";
    }
};

namespace {

using Steps = std::vector<RateStep>;
using Problems = std::vector<AdjustableProblem>;

Money money(const char* text) { return Money::parse(text).value(); }
Percent percent(const char* text) { return Percent(Decimal::parse(text).value()); }
Rate rate(const char* text) { return Rate::percent(Decimal::parse(text).value()).value(); }
Money in_dollars(Money amount) { return to_dollars(amount, Rounding::half_away); }

LoanTerms loan_at(const char* initial) {
    return {Money::dollars(200000), rate(initial), Months(360)};
}
RateCaps rate_caps(const char* first, const char* periodic, const char* life) {
    return {percent(first), percent(periodic), percent(life)};
}
AdjustableTerms terms(int initial, int reset, const RateCaps& limits, const char* index = "3.5",
                      const char* margin = "2.75") {
    return {Months(initial), Months(reset), percent(index), percent(margin), limits, {}};
}

/// What a seeded loan and plan may be, within the rules.
struct Case {
    LoanTerms loan;
    AdjustableTerms terms;
    std::vector<Percent> indexes;
};
Case any_case(Seeded& seeded) {
    const auto points = [&](std::int64_t eighths) {
        return Percent(Decimal::billionths(seeded.between(0, eighths) * 125'000'000));
    };
    LoanTerms loan{seeded.loan(200'000'000), seeded.eighth(), seeded.home_term()};
    AdjustableTerms plan{Months(static_cast<int>(seeded.between(1, loan.term.count() - 1))),
                         Months(static_cast<int>(seeded.between(1, 24))),
                         points(64),
                         points(24),
                         {points(40), points(16), points(48)},
                         {}};
    plan.caps.life = plan.caps.life + plan.margin; // a ceiling is above the floor
    std::vector<Percent> indexes;
    for (auto count = seeded.between(1, 40); count > 0; --count) {
        indexes.emplace_back(Decimal::billionths(seeded.between(-1'000'000'000, 14'000'000'000)));
    }
    return {loan, plan, indexes};
}

} // namespace

TEST_CASE("An index and its margin round to the nearest eighth, an exact tie down") {
    // Source of the rule: Fannie Mae B2-1.4-02.
    struct Row {
        const char* value;
        const char* rounded;
    };
    const Row rows[] = {
        {"6", "6"},
        {"6.0624", "6"},
        {"6.0625", "6"}, // the tie
        {"6.062500001", "6.125"},
        {"6.0626", "6.125"},
        {"6.125", "6.125"},
        {"6.1874", "6.125"},
        {"6.1875", "6.125"}, // the tie
        {"6.1876", "6.25"},
        {"7.08123", "7.125"},
        {"0", "0"},
        {"0.0625", "0"},
        {"-0.0625", "-0.125"}, // down, not towards zero
        {"-0.0624", "0"},
        {"-0.125", "-0.125"},
    };
    for (const Row& row : rows) {
        CAPTURE(row.value);
        CHECK(to_nearest_eighth(percent(row.value)) == percent(row.rounded));
    }
}

TEST_CASE("A fully indexed rate is never under the floor, which is the margin or as given") {
    AdjustableTerms plan = terms(60, 6, rate_caps("2", "1", "5"));
    CHECK(fully_indexed_rate(plan, percent("4.33124")) == rate("7.125")); // 7.08124
    CHECK(fully_indexed_rate(plan, percent("4.3125")) == rate("7"));      // 7.0625, the tie
    CHECK(fully_indexed_rate(plan, percent("0")) == rate("2.75"));
    CHECK(fully_indexed_rate(plan, percent("-0.75")) == rate("2.75"));
    plan.floor = percent("4");
    CHECK(fully_indexed_rate(plan, percent("1")) == rate("4"));
    CHECK(fully_indexed_rate(plan, percent("1.5")) == rate("4.25"));
}

TEST_CASE("The rate-cap path of the ability-to-repay commentary") {
    // Source: commentary to 12 CFR 1026.43: 5% to start with, caps of 2 points, at most 12% (or
    // 10%): 7, 9, 11 (or 10) after months 36, 48 and 60.
    const LoanTerms loan = loan_at("5");
    const Steps to_twelve{
        {1, rate("5")}, {37, rate("7")}, {49, rate("9")}, {61, rate("11")}, {73, rate("12")}};
    CHECK(worst_case_path(loan, terms(36, 12, rate_caps("2", "2", "7"))) == to_twelve);
    const Steps to_ten{{1, rate("5")}, {37, rate("7")}, {49, rate("9")}, {61, rate("10")}};
    CHECK(worst_case_path(loan, terms(36, 12, rate_caps("2", "2", "5"))) == to_ten);
}

TEST_CASE("The adjustable loan of the ability-to-repay commentary") {
    // Source: commentary to 12 CFR 1026.43: 200,000 over 30 years at 5% for 36 months, then 7%
    // for 12; 188,218 is left, and 9% over 312 months takes 1,564 a month.
    const LoanTerms loan = loan_at("5");
    const Schedule schedule =
        amortize(loan, worst_case_path(loan, terms(36, 12, rate_caps("2", "2", "4"))));
    CHECK(in_dollars(schedule.balance(48)) == Money::dollars(188218));
    REQUIRE(schedule.steps().size() == 3);
    CHECK(schedule.steps()[2].from_payment == 49);
    CHECK(in_dollars(schedule.steps()[2].payment) == Money::dollars(1564));
    CHECK(in_dollars(schedule.largest_payment()) == Money::dollars(1564));
    CHECK(schedule.months() == 360);
}

TEST_CASE("Fixed, balloon and interest-only loans of the same commentary") {
    // Source: commentary to 12 CFR 1026.43, all on 200,000 over 30 years.
    struct Fixed {
        const char* at;
        std::int64_t payment;
    };
    const Fixed fixed[] = {{"6", 1199}, {"7", 1331}, {"7.5", 1398}, {"8", 1468}, {"9", 1609}};
    for (const Fixed& row : fixed) {
        CAPTURE(row.at);
        const Schedule schedule = amortize(loan_at(row.at), Steps{{1, rate(row.at)}});
        CHECK(in_dollars(schedule.row(1).payment) == Money::dollars(row.payment));
    }
    // A balloon is the balance with that month's payment in it.
    const Schedule six = amortize(loan_at("6"), Steps{{1, rate("6")}});
    CHECK(in_dollars(six.balance(36) + six.row(36).payment) == Money::dollars(193367));
    // The commentary pays an unrounded 1,330.60499... at 7%: the half cent a month that is not
    // paid here grows to 0.86 with payment 120, across the printed dollar.
    const Schedule seven = amortize(loan_at("7"), Steps{{1, rate("7")}});
    const Money beyond = seven.balance(120) + seven.row(120).payment - Money::dollars(172955);
    CHECK(beyond > Money{});
    CHECK(beyond < money("1.50"));
    // Interest only at 7% for 60 months, then over 300.
    const Money loan = Money::dollars(200000);
    CHECK(in_dollars(monthly_interest(loan, rate("7"))) == Money::dollars(1167));
    const Schedule after = amortize({loan, rate("7"), Months(300)}, Steps{{1, rate("7")}});
    CHECK(in_dollars(after.row(1).payment) == Money::dollars(1414));
}

TEST_CASE("The adjustable loan of the consumer handbook") {
    // Source: Consumer Handbook on Adjustable-Rate Mortgages, 2014, from memory: 200,000 at 6% for
    // the first year 1,199.10; the second at 9% 1,600.42, or 8% under a cap of 2 points 1,461.72;
    // 138.70 between them.
    const LoanTerms loan = loan_at("6");
    const AdjustableTerms uncapped = terms(12, 12, rate_caps("6", "6", "6"), "6.25");
    const AdjustableTerms capped = terms(12, 12, rate_caps("2", "2", "6"), "6.25");
    const Schedule free = amortize(loan, composite_path(loan, uncapped));
    const Schedule held = amortize(loan, composite_path(loan, capped));
    CHECK(free.row(12).payment == money("1199.10"));
    CHECK(free.row(13).payment == money("1600.42"));
    CHECK(held.row(13).payment == money("1461.72"));
    CHECK(free.row(13).payment - held.row(13).payment == money("138.70"));
}

TEST_CASE("Payments of a loan whose rates are agreed from the start") {
    // Source: SAS/ETS User's Guide, the LOAN procedure, Figure 17.4: 100,000 over 180 months at
    // 6.5%, from payment 24 on 8%, from 48 on 9%: 871.11, 946.50, 992.01.
    const LoanTerms loan{Money::dollars(100000), rate("6.5"), Months(180)};
    const Schedule schedule =
        amortize(loan, Steps{{1, rate("6.5")}, {24, rate("8")}, {48, rate("9")}});
    CHECK(schedule.row(23).payment == money("871.11"));
    CHECK(schedule.row(24).payment == money("946.50"));
    CHECK(schedule.row(48).payment == money("992.01"));
    CHECK(schedule.step(47).rate == rate("8"));
    CHECK(schedule.step(48).rate == rate("9"));
}

TEST_CASE("The worst of the SOFR plans") {
    // Source of the caps: Fannie Mae's notice of 1 April 2020: 5/6 2/1/5; 7/6 and 10/6 5/1/5. First
    // changes with payments 61, 85 and 121, then every six months.
    const LoanTerms loan = loan_at("6");
    const Steps five{
        {1, rate("6")}, {61, rate("8")}, {67, rate("9")}, {73, rate("10")}, {79, rate("11")}};
    CHECK(worst_case_path(loan, terms(60, 6, rate_caps("2", "1", "5"))) == five);
    const Steps seven{{1, rate("6")}, {85, rate("11")}};
    CHECK(worst_case_path(loan, terms(84, 6, rate_caps("5", "1", "5"))) == seven);
    const Steps ten{{1, rate("6")}, {121, rate("11")}};
    CHECK(worst_case_path(loan, terms(120, 6, rate_caps("5", "1", "5"))) == ten);
    CHECK(ceiling_rate(loan, terms(120, 6, rate_caps("5", "1", "5"))) == rate("11"));
}

TEST_CASE("A rate follows its index within caps and floor") {
    // By hand: 5/6, 6% to start with, margin 2.75, caps 2/1/5.
    const LoanTerms loan = loan_at("6");
    const AdjustableTerms plan = terms(60, 6, rate_caps("2", "1", "5"));
    const std::vector<Percent> up{percent("4"), percent("7"), percent("9"), percent("9")};
    const Steps rises{{1, rate("6")}, // index + margin 6.75, 9.75, 11.75 ...
                      {61, rate("6.75")}, {67, rate("7.75")},  {73, rate("8.75")},
                      {79, rate("9.75")}, {85, rate("10.75")}, {91, rate("11")}};
    CHECK(rate_path(loan, plan, up) == rises);
    const std::vector<Percent> down{percent("0")}; // to the floor of 2.75: -2, -1, -0.25
    const Steps falls{{1, rate("6")}, {61, rate("4")}, {67, rate("3")}, {73, rate("2.75")}};
    CHECK(rate_path(loan, plan, down) == falls);
    const std::vector<Percent> flat{percent("3.25")}; // 6 again: nothing changes
    CHECK(rate_path(loan, plan, flat) == Steps{{1, rate("6")}});
    const std::vector<Percent> back{percent("4.25"), percent("3.25")};
    const Steps returns{{1, rate("6")}, {61, rate("7")}, {67, rate("6")}};
    CHECK(rate_path(loan, plan, back) == returns);
    CHECK_THROWS_AS(rate_path(loan, plan, {}), Broken);
}

TEST_CASE("A cap goes before a floor above the initial rate") {
    AdjustableTerms plan = terms(60, 6, rate_caps("2", "1", "5"), "0");
    plan.floor = percent("6.5");
    const Steps path{{1, rate("4")}, {61, rate("6")}, {67, rate("6.5")}};
    CHECK(composite_path(loan_at("4"), plan) == path);
}

TEST_CASE("The composite rate is the fully indexed one of consummation, as the caps let it come") {
    // Source of the method: comment 17(c)(1)-10 to 12 CFR 1026. By hand: index 5.5 and margin 2.75
    // make 8.25 against 5% to start with: up 2, then 1, then the rest.
    const LoanTerms loan = loan_at("5");
    const AdjustableTerms plan = terms(60, 6, rate_caps("2", "1", "5"), "5.5");
    const Steps path{{1, rate("5")}, {61, rate("7")}, {67, rate("8")}, {73, rate("8.25")}};
    CHECK(composite_path(loan, plan) == path);
    const Schedule schedule = amortize(loan, path);
    const auto apr = annual_percentage_rate(loan.loan, schedule.payments());
    REQUIRE(apr);
    CHECK(*apr > rate("5"));
    CHECK(*apr < rate("8.25"));
    // No discount: the APR is the rate, but for cents of rounding.
    const AdjustableTerms even = terms(60, 6, rate_caps("2", "1", "5"), "2.25");
    const Schedule level = amortize(loan, composite_path(loan, even));
    const auto same = annual_percentage_rate(loan.loan, level.payments());
    REQUIRE(same);
    CHECK(*same > rate("4.9999"));
    CHECK(*same < rate("5.0001"));
}

TEST_CASE("What is wrong with adjustable terms is said, all of it") {
    using enum AdjustableProblem;
    const LoanTerms loan = loan_at("6");
    const AdjustableTerms good = terms(60, 6, rate_caps("2", "1", "5"));
    CHECK(adjustable_problems(loan, good).empty());
    const auto broken = [&](auto change) {
        AdjustableTerms plan = good;
        change(plan);
        const Problems problems = adjustable_problems(loan, plan);
        if (!problems.empty()) CHECK_THROWS_AS(worst_case_path(loan, plan), Broken);
        return problems;
    };
    using Plan = AdjustableTerms;
    CHECK(broken([](Plan& p) { p.initial = Months(0); }) == Problems{initial_not_positive});
    CHECK(broken([](Plan& p) { p.initial = Months(360); }) == Problems{initial_not_under_term});
    CHECK(broken([](Plan& p) { p.initial = Months(359); }).empty());
    CHECK(broken([](Plan& p) { p.reset = Months(0); }) == Problems{reset_not_positive});
    CHECK(broken([](Plan& p) { p.margin = percent("-1"); }) == Problems{negative_margin});
    CHECK(broken([](Plan& p) { p.floor = percent("-1"); }) == Problems{negative_floor});
    CHECK(broken([](Plan& p) { p.caps.first = percent("-1"); }) == Problems{negative_first_cap});
    CHECK(broken([](Plan& p) { p.caps.periodic = percent("-1"); }) ==
          Problems{negative_periodic_cap});
    CHECK(broken([](Plan& p) { p.caps.life = percent("-1"); }) == Problems{negative_life_cap});
    CHECK(broken([](Plan& p) { p.margin = percent("2.0000001"); }) == Problems{value_too_fine});
    CHECK(broken([](Plan& p) { p.margin = percent("11"); }).empty());
    CHECK(broken([](Plan& p) { p.margin = percent("11.125"); }) == Problems{ceiling_under_floor});
    CHECK(broken([](Plan& p) { p.floor = percent("11.125"); }) == Problems{ceiling_under_floor});
    CHECK(broken([](Plan& p) { p.caps.life = percent("94"); }).empty());
    CHECK(broken([](Plan& p) { p.caps.life = percent("94.125"); }) == Problems{ceiling_too_high});
    CHECK(broken([](Plan& p) {
              p.initial = Months(-1);
              p.caps.periodic = percent("-0.5");
          }) == Problems{initial_not_positive, negative_periodic_cap});
}

TEST_CASE("A path that does not rise is refused, and so is a row that is not there") {
    const LoanTerms loan = loan_at("6");
    CHECK_THROWS_AS(amortize(loan, Steps{}), Broken);
    CHECK_THROWS_AS(amortize(loan, Steps{{2, rate("6")}}), Broken);
    CHECK_THROWS_AS(amortize(loan, Steps{{1, rate("6")}, {1, rate("7")}}), Broken);
    CHECK_THROWS_AS(amortize(loan, Steps{{1, rate("6")}, {362, rate("7")}}), Broken);
    const Schedule schedule = amortize(loan, Steps{{1, rate("6")}});
    CHECK_THROWS_AS(schedule.row(0), Broken);
    CHECK_THROWS_AS(schedule.row(361), Broken);
    CHECK(schedule.balance(361) == Money{});
}

TEST_CASE("A loan of nothing has no payments") {
    const Schedule schedule =
        amortize({Money{}, rate("6"), Months(360)}, Steps{{1, rate("6")}, {61, rate("7")}});
    CHECK(schedule.months() == 0);
    CHECK(schedule.payments().empty());
    CHECK(schedule.largest_payment() == Money{});
    CHECK(schedule.total_interest() == Money{});
}

TEST_CASE("A rate that never changes makes the schedule of a fixed loan") {
    Seeded seeded(10);
    for (int i = 0; i < 300; ++i) {
        const LoanTerms loan = seeded.terms();
        const Schedule fixed = amortize(loan);
        const Schedule schedule = amortize(loan, Steps{{1, loan.rate}});
        if (schedule.balances() != fixed.balances()) FAIL(i);
        if (schedule.total_interest() != fixed.total_interest()) FAIL(i);
    }
    CHECK(amortize(loan_at("6")).months() == 360);
}

TEST_CASE("Any adjustable loan keeps within its caps, and its principal sums to the loan") {
    Seeded seeded(43);
    for (int i = 0; i < 1'000; ++i) {
        CAPTURE(i);
        const Case any = any_case(seeded);
        REQUIRE(adjustable_problems(any.loan, any.terms).empty());
        const Steps path = rate_path(any.loan, any.terms, any.indexes);
        const Steps worst = worst_case_path(any.loan, any.terms);
        const Schedule schedule = amortize(any.loan, path);
        Money principal;
        Money paid;
        for (int month = 1; month <= schedule.months(); ++month) {
            const ScheduleRow row = schedule.row(month);
            principal += row.principal;
            paid += row.payment;
            if (row.interest + row.principal != row.payment) FAIL(month);
        }
        CHECK(principal == any.loan.loan);
        CHECK(paid - principal == schedule.total_interest());
        const auto worst_at = [&](int payment) {
            Rate found = worst.front().rate;
            for (const RateStep& step : worst) {
                if (step.from_payment <= payment) found = step.rate;
            }
            return found;
        };
        for (std::size_t k = 1; k < path.size(); ++k) {
            const bool first = path[k].from_payment == any.terms.initial.count() + 1;
            const Percent cap = first ? any.terms.caps.first : any.terms.caps.periodic;
            const Percent step(path[k].rate.percent() - path[k - 1].rate.percent());
            if (step > cap || Percent{} - step > cap) FAIL(k);
            if (path[k].rate > worst_at(path[k].from_payment)) FAIL(k);
        }
    }
}
