// What is not known of a rule on a day refuses a loan; what has ended, or is used on, does not.
#include <shown.hpp>

#include <quoin/loan/least_figures.hpp>

#include "support/purchase.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

std::vector<BandTable>& tables(Purchase& home, Rule rule) {
    return home.program.rules[static_cast<std::size_t>(rule)];
}

/// Why a loan is refused for what is not known; the least figures agree with it.
std::vector<ListGap> gaps(const Purchase& home) {
    std::vector<ListGap> found;
    const LoanFigures f = home.figures();
    for (const Refusal& refusal : f.refusals) {
        CHECK((refusal.why == Barred::rule_unknown) == refusal.gap.has_value());
        if (refusal.gap) found.push_back(*refusal.gap);
    }
    const Money price = home.home.contract_price;
    if (f.available()) {
        CHECK(least_figures(home.rules(), home.facts, {price, price, {}, false, {}}).possible);
    }
    return found;
}

bool may_be(const Purchase& home) {
    const Money price = home.home.contract_price;
    return least_figures(home.rules(), home.facts, {price, price, {}, false, {}}).possible;
}

/// A list's last table ends before the day of the quote.
void end(std::vector<BandTable>& list, After after) {
    list.back().until = date("2026-11-24");
    list.back().after = after;
}

} // namespace

TEST_CASE("Each list of a program: unknown after its end refuses, by name and day") {
    for (const Rule rule : {Rule::maximum_ltv, Rule::loan_limit, Rule::upfront_fee,
                            Rule::annual_fee, Rule::annual_fee_months, Rule::contribution_cap}) {
        CAPTURE(name_of(rule));
        Purchase home("fha");
        home.down_percent("10");
        REQUIRE(gaps(home).empty());
        auto& list = tables(home, rule);
        list.back().by_closing = false;
        end(list, After::unknown);
        CHECK(gaps(home) ==
              std::vector{ListGap{list_of(rule), ListGap::Kind::ended, date("2026-11-24")}});
        CHECK(home.figures().refusals.size() == 1); // nothing follows from it
        CHECK_FALSE(may_be(home));
        end(list, After::continues);
        CHECK(gaps(home).empty());
        CHECK(home.rules().gaps.continued.size() == 1);
        end(list, After::ends);
        CHECK(gaps(home).empty());
        list.back().until = std::nullopt;
        list = {list.back()};
        list.back().effective = date("2026-11-25");
        CHECK(gaps(home) ==
              std::vector{ListGap{list_of(rule), ListGap::Kind::not_yet, date("2026-11-25")}});
        CHECK_FALSE(may_be(home));
    }
}

TEST_CASE("A fee that is no more is nothing, and a limit that is no more binds nobody") {
    Purchase home("fha", "700000");
    home.down_percent("3.5");
    CHECK(why_not(home.figures()) == std::vector{Barred::loan_over_limit});
    end(tables(home, Rule::loan_limit), After::ends);
    REQUIRE(home.figures().available());
    CHECK(home.figures().upfront_fee > Money{});
    for (const Rule fee : {Rule::upfront_fee, Rule::annual_fee}) {
        tables(home, fee).back().by_closing = false;
        end(tables(home, fee), After::ends);
    }
    const LoanFigures f = home.figures();
    REQUIRE(f.available());
    CHECK(f.upfront_fee.is_zero());
    CHECK(f.insurance.months() == 0);
    CHECK(may_be(home));
}

TEST_CASE("The VA funding fee after the sunset of its table is the code's later one, never none") {
    // 38 USC 3729(b)(2): 2.15% before 29 November 2031, 1.40% from then on, nothing down.
    Purchase home("va");
    home.down_percent("0");
    home.closing = date("2031-11-28");
    CHECK(home.figures().upfront_fee == money("8600"));
    home.closing = date("2031-11-29");
    CHECK(home.figures().upfront_fee == money("5600"));
    home.scenario.use = EntitlementUse::subsequent;
    CHECK(home.figures().upfront_fee == money("5000"));
    home.closing = date("2019-12-31"); // before the first table that is here
    CHECK(gaps(home) ==
          std::vector{ListGap{RuleList::upfront_fee, ListGap::Kind::not_yet, date("2020-01-01")}});
}

TEST_CASE("A fee table without a row for a loan is not no fee") {
    Purchase home("va");
    home.down_percent("0");
    auto& list = tables(home, Rule::upfront_fee);
    for (BandTable& table : list) {
        table.bands.clear(), table.values.clear(), table.written.clear();
    }
    CHECK(gaps(home) == std::vector{ListGap{RuleList::upfront_fee, ListGap::Kind::no_row, {}}});
}

TEST_CASE("Prices of insurance are asked for where a loan is insured, and not else") {
    Purchase home("conventional");
    end(home.sheet.mortgage_insurance, After::unknown);
    const std::vector<ListGap> ended = {
        {RuleList::mi_factors, ListGap::Kind::ended, date("2026-11-24")}};
    home.down_percent("10");
    CHECK(gaps(home) == ended);
    CHECK(why_not(home.figures()) == std::vector{Barred::rule_unknown});
    CHECK_FALSE(may_be(home));
    home.scenario.single_premium = true; // another list
    CHECK(gaps(home).empty());
    end(home.sheet.single_premium, After::unknown);
    CHECK(gaps(home).front().list == RuleList::single_premium);
    CHECK_FALSE(may_be(home));
    home.down_percent("20");
    CHECK(gaps(home).empty());
    home.scenario.single_premium = false;
    CHECK(gaps(home).empty());
    // And those of points where the sheet's rates are asked for.
    home.sheet.adjustments = {{{"conventional"}, home.sheet.single_premium.front()}};
    CHECK(gaps(home).empty());
    home.by_points("2");
    CHECK(gaps(home).front().list == RuleList::points_adjustment);
    CHECK_FALSE(may_be(home));
}

TEST_CASE("A home is insured: a table of premiums that has ended is never none") {
    Purchase home("conventional");
    home.down_percent("20");
    for (const After after : {After::unknown, After::ends}) {
        home.place.homeowner.until = date("2026-11-24");
        home.place.homeowner.after = after;
        CHECK(gaps(home).front().list == RuleList::homeowner);
        CHECK_FALSE(may_be(home));
    }
    home.place.homeowner.after = After::continues;
    CHECK(gaps(home).empty());
    CHECK(home.rules().gaps.continued.front().list == RuleList::homeowner);
}
