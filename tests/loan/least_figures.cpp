// The least figures of a range of prices under lender credits and financed premiums: never above
// the figures of any price in it.
#include <shown.hpp>

#include <quoin/loan/least_figures.hpp>

#include <quoin/lending/reading.hpp>
#include <quoin/text/reader.hpp>

#include "seeded.hpp"
#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

Purchase drawn(Seeded& seeded) {
    constexpr const char* programs[] = {"conventional", "fha", "va", "usda"};
    Purchase home(programs[seeded.between(0, 3)]);
    home.by_points("1");
    if (seeded.between(0, 1) == 0) {
        home.scenario.rate = {RateChoice::By::quoted,
                              Points(Decimal::whole(-static_cast<int>(seeded.between(0, 5)))),
                              rate("6.875")};
    }
    home.scenario.single_premium = seeded.between(0, 1) == 0;
    home.scenario.finance_premium = seeded.between(0, 1) == 0;
    home.scenario.finance_fee = seeded.between(0, 1) == 0;
    Findings findings;
    const Document table = json(R"({"status": "sample", "source": "invented", "value": "points",
      "dimensions": ["ltv"], "rows": [{"ltv": "<= 75", "value": "-1"},
        {"ltv": "> 75, <= 90", "value": "0.5"}, {"ltv": "> 90", "value": "-0.5"}]})");
    Reader reader(table.root, Path{}, findings);
    home.sheet.adjustments.push_back({{home.program.id}, read_band_table(reader)});
    ClosingCost cost;
    cost.name = "Costs";
    cost.amount = Money::dollars(seeded.between(500, 9'000));
    home.place.closing_costs.push_back(cost);
    home.place.escrow.prepaid_insurance_months = 12;
    const Money down = Money::dollars(seeded.between(0, 120'000));
    const auto how = seeded.between(0, 2);
    if (how == 0) home.scenario.down = {DownPayment::By::amount, {}, down};
    if (how == 1) home.cash(down);
    if (how == 2) {
        home.scenario.down = {DownPayment::By::percent,
                              Percent(Decimal::whole(static_cast<int>(seeded.between(3, 25)))),
                              {}};
    }
    return home;
}

} // namespace

TEST_CASE("No price of a range takes less than its least figures say") {
    Seeded seeded(31);
    int compared = 0;
    int lost_or_reduced = 0;
    int financed = 0;
    for (int round = 0; round < 500; ++round) {
        Purchase home = drawn(seeded);
        const ScenarioRules rules = home.rules();
        const Money first = Money::dollars(seeded.between(150'000, 500'000));
        const Money width = Money::dollars(seeded.between(0, round % 2 == 0 ? 300 : 60'000));
        const LeastFigures least =
            least_figures(rules, home.facts, {first, first + width, {}, false, {}});
        for (int i = 0; i < 8; ++i) {
            home.home.contract_price = i == 0 ? first
                                       : i == 1
                                           ? first + width
                                           : first + Money::cents(seeded.between(0, width.count()));
            const LoanFigures f = loan_figures(rules, home.home, home.facts);
            if (!f.available()) continue;
            CAPTURE(round, home.scenario.program, f.price);
            ++compared;
            REQUIRE(least.possible);
            REQUIRE(least.monthly <= f.monthly.total());
            REQUIRE(least.cash <= f.cash.needed());
            REQUIRE(least.loan <= f.loan);
            lost_or_reduced +=
                f.lender_credit_without_use + f.cash[CashPart::principal_reduction] > Money{};
            financed += f.gross_ltv > f.ltv;
        }
    }
    CHECK(compared > 1'000);
    CHECK(lost_or_reduced > 100);
    CHECK(financed > 100);
}

TEST_CASE("Among the loans that the cash may buy, none is smaller than those that are told") {
    // A part of which some loan is surely had ends the telling: what comes later is not needed.
    Seeded seeded(57);
    int compared = 0;
    int ended_early = 0;
    for (int round = 0; round < 1'200; ++round) {
        Purchase home = drawn(seeded);
        home.scenario.finance_premium = false;
        if (home.scenario.rate.by == RateChoice::By::points && round % 3 > 0) {
            home.by_points(round % 3 == 1 ? "-0.25" : "-1.25"); // some bands have no rate
        }
        const Money cash = Money::dollars(seeded.between(2'000, 150'000));
        home.cash(cash);
        const ScenarioRules rules = home.rules();
        const Money first = Money::dollars(seeded.between(90'000, 500'000));
        const Money width = Money::dollars(seeded.between(0, round % 2 == 0 ? 50 : 9'000));
        const KeptBack kept{static_cast<int>(seeded.between(0, 3)),
                            cash + Money::dollars(seeded.between(-2'000, 20'000))};
        std::vector<LeastFigures> told;
        any_least_figures(rules, home.facts, {first, first + width, {}, false, kept},
                          [&](const LeastFigures& part) {
                              told.push_back(part);
                              return false;
                          });
        std::vector<LeastFigures> all; // nothing is kept to, so that nothing is surely had
        any_least_figures(rules, home.facts, {first, first + width, {}, false, {}},
                          [&](const LeastFigures& part) {
                              all.push_back(part);
                              return false;
                          });
        ended_early += told.size() < all.size();
        for (int i = 0; i < 6; ++i) {
            home.home.contract_price = first + Money::cents(seeded.between(0, width.count()));
            const LoanFigures f = loan_figures(rules, home.home, home.facts);
            const Money left = f.monthly.total() * kept.months;
            if (!f.available() || f.cash.needed() + left > kept.of) continue;
            CAPTURE(round, home.scenario.program, f.price, cash, kept.months, kept.of);
            ++compared;
            REQUIRE(std::any_of(told.begin(), told.end(), [&](const LeastFigures& part) {
                return part.monthly <= f.monthly.total() && part.cash <= f.cash.needed() &&
                       part.loan <= f.loan && part.rate <= f.rate;
            }));
        }
    }
    CHECK(compared > 1'000);
    CHECK(ended_early > 300);
}
