// Property tax, districts, insurance and dues, worked out by hand.
#include <shown.hpp>

#include <quoin/loan/local_costs.hpp>

#include <quoin/lending/reading.hpp>
#include <quoin/text/reader.hpp>

#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Percent percent(const char* text) { return Percent(decimal(text)); }

/// 80% assessed, 6.25 and 3.5 mills, an owner's exemption from the second year and a share from
/// the first, half a mill and 120 for districts, 4 per thousand of 75% for insurance.
Place taxed() {
    Place place = Purchase("conventional").place;
    place.assessed_percent = percent("80");
    place.levies = {{"County", decimal("6.25")}, {"School", decimal("3.5")}};
    place.exemptions = {{"Owner", money("5000"), {}, 2}, {"Share", std::nullopt, percent("10"), 1}};
    place.districts = {{"Drains", std::nullopt, decimal("0.5")}, {"Lights", money("120"), {}}};
    place.dwelling_percent = percent("75");
    place.homeowner.values.front() = decimal("4");
    return place;
}

} // namespace

TEST_CASE("A settled year: assessed value, exemptions, each levy to the cent") {
    const LocalCosts costs = local_costs(taxed(), money("412345"), false);
    CHECK(costs.settled.assessed == money("329876"));
    CHECK(costs.settled.exempt == money("37988")); // 5,000 and 10% of it, 32,987.60
    CHECK(costs.settled.taxable == money("291888"));
    CHECK(costs.settled.levies == money("2845.91"));   // 1,824.30 + 1,021.608
    CHECK(costs.settled.districts == money("265.94")); // 145.944 + 120
    CHECK(costs.dwelling_value == money("309259"));    // 309,258.75
    CHECK(costs.premiums[MonthPart::homeowners_insurance] == money("1237.04")); // 1,237.036
    CHECK_FALSE(costs.land_only.has_value());
}

TEST_CASE("A land-only year: the land's value, and the exemptions of the first year alone") {
    Place place = taxed();
    place.land_only = LandOnly{percent("20"), 6};
    const LocalCosts costs = local_costs(place, money("412345"), false);
    REQUIRE(costs.land_only.has_value());
    CHECK(costs.land_only_months == 6);
    CHECK(costs.land_only->assessed == money("65975")); // 80% of 82,469: 65,975.20
    CHECK(costs.land_only->exempt == money("6598"));    // 10%: 6,597.50, half away
    CHECK(costs.land_only->taxable == money("59377"));
    CHECK(costs.land_only->levies == money("578.93"));    // 371.10625 + 207.8195
    CHECK(costs.land_only->districts == money("149.69")); // 29.6885 + 120
    CHECK(costs.settled.levies == money("2845.91"));      // as without it
    // An exemption from the third year on is no exemption of the first either.
    place.exemptions[1].from_year = 3;
    CHECK(local_costs(place, money("412345"), false).land_only->exempt == Money{});
}

TEST_CASE("Each levy is rounded by itself, so that its own line is what the bill says") {
    Place place = taxed();
    place.exemptions.clear();
    place.assessed_percent = percent("100");
    place.levies = {{"A", decimal("0.0125")},
                    {"B", decimal("0.0125")}}; // 0.0125 of 1,000 is 1.25 c
    place.districts = {{"C", std::nullopt, decimal("0.005")},
                       {"D", std::nullopt, decimal("0.004")}};
    const LocalCosts costs = local_costs(place, money("1000"), false);
    CHECK(costs.settled.levies == money("0.02"));    // twice 0.0125, each 0.01
    CHECK(costs.settled.districts == money("0.01")); // 0.005 up, 0.004 down
}

TEST_CASE("Exemptions never reach below nothing") {
    Place place = taxed();
    place.exemptions = {{"Large", money("1000000"), {}, 1}};
    const LocalCosts costs = local_costs(place, money("412345"), false);
    CHECK(costs.settled.exempt == costs.settled.assessed);
    CHECK(costs.settled.taxable == Money{});
    CHECK(costs.settled.levies == Money{});
    CHECK(costs.settled.districts == money("120")); // what is not by value stays
    place.exemptions = {{"All", std::nullopt, percent("60"), 1},
                        {"More", std::nullopt, percent("60"), 1}};
    CHECK(local_costs(place, money("412345"), false).settled.taxable == Money{});
}

TEST_CASE("A value in whole dollars is rounded once, half a dollar up") {
    Place place = taxed();
    place.exemptions.clear();
    place.assessed_percent = percent("50");
    CHECK(local_costs(place, money("200001"), false).settled.assessed == money("100001"));
    // 100,000.495 is under the half, though it is 100,000.50 to the cent.
    CHECK(local_costs(place, money("200000.99"), false).settled.assessed == money("100000"));
    CHECK(local_costs(place, money("200000.98"), false).settled.assessed == money("100000"));
}

TEST_CASE("Insurance by the dwelling's value, flood on flood lots, wind everywhere, dues summed") {
    Place place = taxed();
    Findings findings;
    const Document table = json(R"({"status": "sample", "source": "invented",
        "value": "per thousand", "dimensions": ["dwelling_value"],
        "rows": [{"dwelling_value": "> 0, <= 300000", "value": "3.4"},
                 {"dwelling_value": "> 300000", "value": "3.45"}]})");
    Reader reader(table.root, Path{}, findings);
    place.homeowner = read_band_table(reader);
    REQUIRE(findings.none());
    place.premiums[MonthPart::flood_insurance] = money("700");
    place.premiums[MonthPart::wind_insurance] = money("90");
    place.dues = {{"A", money("46")}, {"B", money("18.50")}};
    const LocalCosts at_edge = local_costs(place, money("400000"), true); // dwelling 300,000
    CHECK(at_edge.homeowner_row == 0);
    CHECK(at_edge.premiums[MonthPart::homeowners_insurance] == money("1020"));
    CHECK(at_edge.premiums[MonthPart::flood_insurance] == money("700"));
    CHECK(at_edge.premiums[MonthPart::wind_insurance] == money("90"));
    CHECK(at_edge.dues[MonthPart::association_dues] == money("64.50"));
    const LocalCosts above = local_costs(place, money("400001"), false); // 300,000.75: 300,001
    CHECK(above.homeowner_row == 1);
    CHECK(above.premiums[MonthPart::homeowners_insurance] == money("1035"));
    CHECK(above.premiums[MonthPart::flood_insurance] == Money{});
    CHECK(above.premiums[MonthPart::wind_insurance] == money("90"));
    const LocalCosts nothing = local_costs(place, Money{}, false);
    CHECK_FALSE(nothing.homeowner_row.has_value());
}

TEST_CASE("A higher price never lowers a tax or a premium of one row") {
    const Place place = taxed();
    LocalCosts before = local_costs(place, money("100000"), true);
    for (std::int64_t dollars = 100'000; dollars < 900'000; dollars += 977) {
        const LocalCosts now = local_costs(place, Money::dollars(dollars), true);
        REQUIRE(now.settled.levies >= before.settled.levies);
        REQUIRE(now.settled.districts >= before.settled.districts);
        REQUIRE(now.premiums[MonthPart::homeowners_insurance] >=
                before.premiums[MonthPart::homeowners_insurance]);
        REQUIRE(now.settled.assessed - now.settled.exempt == now.settled.taxable);
        before = now;
    }
}
