// The published guides on what housing and debts may take of an income, and what must be left of
// it, as the shipped programs hold them.
#include <shown.hpp>

#include <quoin/lending/editions.hpp>

#include <algorithm>

#include "support/files.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const LoanProgram& program(const char* id) {
    const Lending& lending = six_programs().desk.lending;
    return at(lending.programs, index_of(lending.programs, id).value());
}

const RatioLimits& ratios(const char* id, const char* as_of = "2026-11-24") {
    return *edition_on(program(id).ratios, {date(as_of), date(as_of)}).rule();
}

const ResidualIncome& residual() {
    return *edition_on(program("va").residual_income, {date("2026-11-24"), date("2027-05-14")})
                .rule();
}

/// A row of the regulation's tables: a family, and dollars by region.
struct Row {
    int persons;
    std::array<std::int64_t, region_count> small; ///< loans of 79,999 and below
    std::array<std::int64_t, region_count> large; ///< loans of 80,000 and above
};

// 38 CFR 36.4340(e), Northeast, Midwest, South, West; over five persons 75 or 80 for each, up to
// seven.
constexpr std::array<Row, 8> published = {{
    {1, {390, 382, 382, 425}, {450, 441, 441, 491}},
    {2, {654, 641, 641, 713}, {755, 738, 738, 823}},
    {3, {788, 772, 772, 859}, {909, 889, 889, 990}},
    {4, {888, 868, 868, 967}, {1025, 1003, 1003, 1117}},
    {5, {921, 902, 902, 1004}, {1062, 1039, 1039, 1158}},
    {6, {996, 977, 977, 1079}, {1142, 1119, 1119, 1238}},
    {7, {1071, 1052, 1052, 1154}, {1222, 1199, 1199, 1318}},
    {8, {1071, 1052, 1052, 1154}, {1222, 1199, 1199, 1318}},
}};

} // namespace

TEST_CASE("Every cell of the residual income tables") {
    for (const Row& row : published) {
        for (std::size_t i = 0; i < region_count; ++i) {
            CAPTURE(row.persons, i);
            const auto region = static_cast<Region>(i);
            const auto needed = [&](const char* loan) {
                return residual().needed(region, row.persons, money(loan));
            };
            CHECK(needed("79999") == Money::dollars(row.small[i]));
            CHECK(needed("1000") == Money::dollars(row.small[i]));
            CHECK(needed("80000") == Money::dollars(row.large[i]));
            CHECK(needed("1200000") == Money::dollars(row.large[i]));
            CHECK(residual().least_needed(region, row.persons) == Money::dollars(row.small[i]));
        }
    }
    CHECK(residual().status == Status::published);
}

TEST_CASE("Maintenance and utilities at 14 cents a square foot") {
    // VA Pamphlet 26-7, chapter 4.
    CHECK(times(residual().upkeep_per_square_foot, Decimal::whole(1'500), Rounding::half_away) ==
          money("210"));
}

TEST_CASE("A VA ratio is rounded to two digits before it is held to 41%") {
    // 38 CFR 36.4340(d): 35.6 becomes 36.
    const RatioLimits& va = ratios("va");
    CHECK(va.whole_percents);
    const Money income = money("10000");
    CHECK(va.most(income, Percent(decimal("36"))) == money("3649.99"));
    CHECK(va.most(income, va.back) == money("4149.99")); // 41.4999%; 4,150 is 41.5 and so 42%
    CHECK(va.least_income(money("4150"), va.back) == money("10000.01"));
}

TEST_CASE("31 and 43, 29 and 41, then 34 and 41, 45 and 50 percent of an income of 6,000") {
    const Money income = money("6000");
    const RatioLimits& fha = ratios("fha"); // HUD 4000.1, II.A.5.d: manual underwriting 31/43
    CHECK(fha.most(income, *fha.front) == money("1860"));
    CHECK(fha.most(income, fha.back) == money("2580"));
    const RatioLimits& before = ratios("usda", "2024-08-04"); // 7 CFR 3555.151(h)
    CHECK(before.most(income, *before.front) == money("1740"));
    CHECK(before.most(income, before.back) == money("2460"));
    const RatioLimits& usda = ratios("usda", "2024-08-05"); // HB-1-3555, chapter 11, PN 621
    CHECK(usda.most(income, *usda.front) == money("2040"));
    CHECK(usda.most(income, usda.back) == money("2460"));
    const RatioLimits& conventional = ratios("conventional"); // Fannie Mae B3-6-02
    CHECK_FALSE(conventional.front);
    CHECK(conventional.most(income, conventional.back) == money("2700"));
    CHECK(conventional.back_automated == Percent(decimal("50")));
    CHECK_FALSE(conventional.whole_percents);
}

TEST_CASE(
    "Where automated underwriting accepts, another ratio, none published, or the same guide") {
    // Fannie Mae B3-6-02; HUD archive sfhp2-12: the ratios bind manual files alone; HB-1-3555,
    // chapter 11: a file that the system accepts needs no waiver; 38 CFR 36.4340(d): a guide.
    CHECK(ratios("conventional").automated == AutomatedRatio::another);
    CHECK(ratios("conventional-7-6").automated == AutomatedRatio::another);
    CHECK(ratios("fha").automated == AutomatedRatio::none_published);
    CHECK(ratios("usda").automated == AutomatedRatio::none_published);
    CHECK(ratios("usda", "2024-08-04").automated == AutomatedRatio::not_known);
    CHECK(ratios("va").automated == AutomatedRatio::the_same);
}

TEST_CASE("The least income is the least: a cent less does not do, over odd amounts") {
    for (const char* id : {"fha", "va", "usda", "conventional"}) {
        const RatioLimits& limits = ratios(id);
        for (std::int64_t cents = 1; cents < 2'000'000; cents += 13'577) {
            const Money amount = Money::cents(cents);
            const Money income = limits.least_income(amount, limits.back);
            CHECK(limits.most(income, limits.back) >= amount);
            CHECK(limits.most(income - Money::cents(1), limits.back) < amount);
        }
    }
}
