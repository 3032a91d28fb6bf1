// What the builder gives: what it comes to, where it goes, and why it is not given.
#include <quoin/answers/incentive_offers.hpp>
#include <quoin/answers/quote.hpp>
#include <quoin/inquiry/incentive_rules.hpp>
#include <quoin/render/answers.hpp>

#include "homes.hpp"
#include "support/told.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const IncentiveOffer& named(const std::vector<IncentiveOffer>& offers, const std::string& id) {
    for (const IncentiveOffer& offer : offers) {
        if (offer.incentive.id == id) return offer;
    }
    throw std::runtime_error("no incentive " + id);
}

} // namespace

TEST_CASE("Each incentive says why it is not given here") {
    const Sitting sitting = six_programs().sitting(); // a one-story plan on lot 7
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    const auto offers = incentive_offers(sitting, home);
    CHECK(offers.size() == 4);
    CHECK_FALSE(named(offers, "winter-start").why_not);
    CHECK(told(named(offers, "finish-credit").why_not) == "not on this plan");
    CHECK(told(named(offers, "road-lots").why_not) == "not on this lot");
    CHECK_FALSE(named(offers, "lender-credit").why_not); // the sheet is that lender's
    Inquiry late = sitting.inquiry();
    late.closing = date("2027-09-01");
    CHECK(told(why_not_given(sitting.book().incentives[0], late)) ==
          "only for closings by August 31, 2027");
}

TEST_CASE("An incentive tied to a lender is not given with another's rates") {
    RateSheet other;
    other.lender = "Another lender";
    const PriceBook& book = six_programs().desk.book;
    CHECK(told(why_not_given(book.incentives[2], &other)) == "only with a loan from Sample lender");
    CHECK_FALSE(why_not_given(book.incentives[0], &other));
}

TEST_CASE("What is given in parts is never more than the whole, and the home holds just that") {
    Homes homes(41);
    int seen = 0;
    for (int i = 0; i < 200; ++i) {
        Inquiry inquiry = homes.next();
        for (IncentivePick& pick : inquiry.selection.incentives) {
            pick.amount = Money::dollars(homes.below(12'000));
        }
        for (const IncentivePick& pick : std::vector(inquiry.selection.incentives)) {
            const Incentive& incentive = at(Homes::book().incentives, pick.incentive);
            inquiry.selection.incentives.push_back({pick.incentive, incentive.uses.front(), {}});
        }
        const Sitting sitting(six_programs().desk, inquiry);
        const PricedHome home = price_home(sitting.book(), inquiry.selection);
        Money given;
        for (const IncentiveOffer& offer : incentive_offers(sitting, home)) {
            Money sum;
            for (const IncentiveUsed& used : offer.used) sum += used.given;
            CHECK(sum + offer.left == offer.whole);
            CHECK(offer.left >= Money{});
            given += sum;
            if (offer.used.size() == 2) ++seen;
        }
        CHECK(given == home.incentives + home.credited());
    }
    CHECK(seen > 40);
}

TEST_CASE("A quote tells what each incentive gives to each use, a temporary buydown among them") {
    const PriceBook& book = six_programs().desk.book;
    const Index<Incentive> winter = index_of(book.incentives, "winter-start").value();
    const Index<Incentive> lender = index_of(book.incentives, "lender-credit").value();
    Inquiry inquiry = six_programs().inquiry;
    inquiry.selection.incentives = {{winter, IncentiveUse::closing_costs, money("2000")},
                                    {lender, IncentiveUse::closing_costs, money("1000")},
                                    {lender, IncentiveUse::buydown, money("1500")},
                                    {winter, IncentiveUse::closing_costs, {}},
                                    {lender, IncentiveUse::price, money("500")}};
    const QuoteAnswer answer = quote(Sitting(six_programs().desk, inquiry));
    REQUIRE(answer.credits.size() == 3);
    const auto is = [&](std::size_t i, const char* id, IncentiveUse use, const char* amount) {
        const QuoteCredit& credit = answer.credits[i];
        return credit.id == id && credit.use == use && credit.amount == money(amount);
    };
    CHECK(is(0, "winter-start", IncentiveUse::closing_costs, "7500")); // its two parts together
    CHECK(is(1, "lender-credit", IncentiveUse::closing_costs, "1000"));
    CHECK(is(2, "lender-credit", IncentiveUse::buydown, "1500"));
    CHECK(answer.incentives == money("500"));
    // What each asks for in return, once.
    CHECK(answer.incentive_conditions.size() == 2);
    CHECK(answer.incentive_lenders == std::vector<std::string>{"Sample lender"});
    const std::string text = text_of(answer);
    CHECK(text.find("Winter start: $7,500.00 toward closing costs") != std::string::npos);
    CHECK(text.find("$1,500.00 toward a temporary buydown") != std::string::npos);
    for (const ScenarioAnswer& scenario : answer.scenarios) {
        if (!scenario.available()) continue;
        CHECK(scenario.cash[CashPart::credits] + scenario.credits.without_use +
                  scenario.credits.over_cap ==
              money("10000"));
    }
}
