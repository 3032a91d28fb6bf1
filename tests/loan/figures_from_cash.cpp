// The down payment solved from cash is the largest that fits: against trying every loan there is.
#include <shown.hpp>

#include "support/purchase.hpp"
#include <quoin/lending/reading.hpp>
#include <quoin/text/reader.hpp>

using namespace quoin;
using namespace quoin::test;

namespace {

/// A cheap home, so that every base loan in whole dollars can be tried, on a sheet whose points
/// change with the LTV and with costs that grow with the loan.
Purchase cheap(const char* program) {
    Purchase home(program, "3000");
    home.by_points("1");
    Findings findings;
    const Document extra = json(R"({"adjustments": [
      {"programs": ["conventional", "fha", "va", "usda"], "status": "sample", "source": "invented",
       "value": "points", "dimensions": ["ltv"],
       "rows": [{"ltv": "<= 60", "value": "-2"}, {"ltv": "> 60, <= 75", "value": "0"},
                {"ltv": "> 75, <= 80", "value": "-0.25"}, {"ltv": "> 80, <= 95", "value": "0.75"},
                {"ltv": "> 95", "value": "-1"}]}],
      "costs": [
        {"name": "Fee", "section": "origination", "amount": "120"},
        {"name": "Stamp", "section": "taxes and government fees", "percent_of_loan": "0.5"}]})");
    Reader reader(extra.root, Path{}, findings);
    reader.each("adjustments", [&](Reader& item) {
        Adjustment adjustment;
        adjustment.programs = item.texts("programs");
        adjustment.table = read_band_table(item);
        home.sheet.adjustments.push_back(adjustment);
    });
    reader.each("costs",
                [&](Reader& item) { home.sheet.costs.push_back(read_closing_cost(item)); });
    if (!findings.none()) throw Refused(std::move(findings));
    return home;
}

/// What a base loan takes, and why it is refused: for its band, at most.
struct Tried {
    Money needed;
    std::vector<Barred> refused;
};

/// Each base loan in dollars; nothing past the most that is lent.
std::vector<Tried> tried_by_loan(Purchase home) {
    std::vector<Tried> all;
    for (std::int64_t dollars = 0; dollars <= 3000; ++dollars) {
        home.scenario.down = {
            DownPayment::By::amount, {}, home.home.contract_price - Money::dollars(dollars)};
        const LoanFigures f = home.figures();
        const auto reasons = why_not(f);
        if (!reasons.empty() && reasons.front() == Barred::ltv_over_maximum) break;
        all.push_back({f.cash.needed(), reasons});
    }
    return all;
}

/// The least cash of the loans that can be had.
Money least_needed(const std::vector<Tried>& all) {
    std::optional<Money> least;
    for (const Tried& one : all) {
        if (one.refused.empty()) least = std::min(least.value_or(one.needed), one.needed);
    }
    return least.value();
}

void check_against_all(const Purchase& home) {
    const std::vector<Tried> all = tried_by_loan(home);
    REQUIRE(all.size() > 2000);
    int solved = 0;
    int refused = 0;
    for (std::int64_t cents = 100; cents < 330'000; cents += 2'337) {
        const Money cash = Money::cents(cents);
        const auto covered = [&](const Tried& one) { return one.needed <= cash; };
        const auto any = std::find_if(all.begin(), all.end(), covered);
        const auto first = std::find_if(all.begin(), all.end(), [&](const Tried& one) {
            return covered(one) && one.refused.empty();
        });
        const LoanFigures f = Purchase(home).cash(cash).figures();
        CAPTURE(home.scenario.name, cash);
        if (any == all.end()) {
            ++refused;
            REQUIRE(why_not(f) == std::vector{Barred::cash_short});
            CHECK(f.refusals.front().found == cash);
            CHECK(f.refusals.front().limit == least_needed(all));
            continue;
        }
        if (first == all.end()) { // none of those that are covered can be had: the smallest
            REQUIRE(why_not(f) == any->refused);
            REQUIRE(f.base_loan == Money::dollars(any - all.begin()));
            continue;
        }
        ++solved;
        REQUIRE(f.available());
        REQUIRE(f.base_loan == Money::dollars(first - all.begin()));
        REQUIRE(f.cash.needed() == first->needed);
        REQUIRE(f.cash.needed() <= cash);
    }
    CHECK(solved > 50);
    CHECK(refused > 0);
}

} // namespace

TEST_CASE("Each program's smallest loan that the cash covers is found among all there are") {
    for (const char* program : {"conventional", "fha", "va", "usda"}) {
        CAPTURE(program);
        check_against_all(cheap(program));
    }
}

TEST_CASE("Also with the fee or the insurance in cash, a low appraisal and credits held to a cap "
          "that moves") {
    Purchase home = cheap("va");
    home.scenario.finance_fee = false;
    home.scenario.use = EntitlementUse::subsequent;
    check_against_all(home);
    Purchase credited = cheap("conventional"); // caps of 3, 6 and 9% by LTV
    credited.given(IncentiveUse::closing_costs, "150");
    credited.given(IncentiveUse::points, "75");
    check_against_all(credited);
    Purchase paid_up = cheap("conventional"); // a premium of 1.05 to 3.1% by LTV, none to 80%
    paid_up.scenario.single_premium = true;
    check_against_all(paid_up);
    paid_up.scenario.finance_premium = true; // the gross LTV moves the adjustments and the most
    check_against_all(paid_up);
    for (const char* program : {"conventional", "fha"}) {
        Purchase lender_pays = cheap(program); // more than the costs, for some of the loans
        lender_pays.quoted("7", "-6");
        check_against_all(lender_pays);
    }
    Purchase low = cheap("fha");
    low.appraised("2900");
    check_against_all(low);
}

TEST_CASE("Loans of a band without a rate or an insurer are passed by for larger ones") {
    // Points over the one asked for from 60 to 75%, so that no rung is left for those loans.
    Purchase dear = cheap("conventional");
    BandTable& points = dear.sheet.adjustments.front().table;
    points.values.at(1) = decimal("4");
    check_against_all(dear);
    // Money that would do for 75% is enough for 80% as well.
    Purchase home = dear;
    const LoanFigures f = home.cash(money("930")).figures();
    CHECK(f.available());
    CHECK(f.ltv > Ltv(decimal("75")));
    // Nobody insures from 80 to 85%, and from 90% on.
    Purchase uninsured = cheap("conventional");
    BandTable& factors = uninsured.sheet.mortgage_insurance.front();
    factors.values = {factors.values.at(1)};
    factors.written = {factors.written.at(1)};
    factors.bands = {factors.bands.at(1)};
    check_against_all(uninsured);
}

TEST_CASE("Where every loan that the cash covers is refused, the smallest says why") {
    Purchase home = cheap("va");
    home.by_points("-5"); // no rung is so cheap
    CHECK(why_not(home.cash(money("900")).figures()) == std::vector{Barred::rate_not_offered});
}

TEST_CASE("Every table that adjusts the points keeps its own row, however many there are") {
    Purchase home("conventional");
    home.by_points("1");
    Findings findings;
    const Document extra = json(R"({"table": {"status": "sample", "source": "invented",
       "value": "points", "dimensions": ["ltv"],
       "rows": [{"ltv": "<= 60", "value": "0.125"}, {"ltv": "> 60, <= 75", "value": "0.25"},
                {"ltv": "> 75, <= 80", "value": "0.375"}]}})");
    Reader reader(extra.root, Path{}, findings);
    BandTable table;
    reader.object("table", [&](Reader& item) { table = read_band_table(item); });
    for (int i = 0; i < 7; ++i) {
        Adjustment adjustment;
        adjustment.programs = {"conventional"};
        adjustment.table = table;
        // Points of the first alone tell the bands apart.
        if (i > 0) adjustment.table.values = {Decimal{}, Decimal{}, Decimal{}};
        home.sheet.adjustments.push_back(adjustment);
    }
    const auto rows = [&](const char* base) {
        return Purchase(home).base_loan(base).figures().rows;
    };
    CHECK(rows("200000").adjustments == std::vector<int>(7, 0));
    CHECK(rows("280000").adjustments == std::vector<int>(7, 1));
    CHECK(rows("320000").adjustments == std::vector<int>(7, 2));
    CHECK(rows("340000").adjustments == std::vector<int>(7, no_row));
    CHECK(rows("280000") != rows("320000"));
    CHECK_FALSE(rows("280000").same_in(Lookup::points_adjustment, rows("320000")));
    CHECK(rows("280000") == rows("281000"));
}

TEST_CASE("At the edges of the funding fee a dollar of cash changes the fee, not the rule") {
    // 38 USC 3729(b)(2): 2.15% under 5% down, 1.50% from there.
    Purchase home("va", "400000");
    home.down("20000");
    const Money enough = home.figures().cash.needed();
    CHECK(home.cash(enough).figures().base_loan == money("380000"));
    CHECK(home.cash(enough).figures().upfront_percent == Percent(decimal("1.50")));
    // One cent less does not reach 5%: the loan and its fee are both larger.
    const LoanFigures less = home.cash(enough - Money::cents(1)).figures();
    CHECK(less.base_loan > money("380000"));
    CHECK(less.upfront_percent == Percent(decimal("2.15")));
    CHECK(less.cash.needed() <= enough - Money::cents(1));
}

TEST_CASE("Cash for everything buys the home, cash for nothing names the least there must be") {
    Purchase home("conventional");
    const LoanFigures all = home.cash(money("1000000")).figures();
    CHECK(all.base_loan == Money{});
    CHECK(all.available());
    const LoanFigures none = home.cash(Money{}).figures();
    REQUIRE(why_not(none) == std::vector{Barred::cash_short});
    CHECK(none.refusals.front().limit == home.base_loan("388000").figures().cash.needed()); // 97%
    CHECK(home.cash(none.refusals.front().limit).figures().base_loan == money("388000"));
    // Deposits that were paid are part of the cash, not more of it.
    home.facts.deposits_paid = money("5000");
    CHECK(home.cash(none.refusals.front().limit).figures().base_loan == money("388000"));
    CHECK(home.figures().cash.to_close() == none.refusals.front().limit - money("5000"));
}
