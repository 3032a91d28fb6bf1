// What the builder gives: what it comes to, where it goes, and why it is not given.
#include <quoin/answers/incentive_offers.hpp>

#include "homes.hpp"

using namespace quoin;
using namespace quoin::test;

namespace {

const IncentiveOffer& named(const Sitting& sitting, const std::vector<IncentiveOffer>& offers,
                            const std::string& id) {
    for (const IncentiveOffer& offer : offers) {
        if (at(sitting.book().incentives, offer.incentive).id == id) return offer;
    }
    throw std::runtime_error("no incentive " + id);
}

} // namespace

TEST_CASE("Each incentive says why it is not given here") {
    const Sitting sitting = six_programs().sitting(); // a one-story plan on lot 7
    const PricedHome home = price_home(sitting.book(), sitting.inquiry().selection);
    const auto offers = incentive_offers(sitting, home);
    CHECK(offers.size() == 4);
    CHECK(named(sitting, offers, "winter-start").why_not.empty());
    CHECK(named(sitting, offers, "finish-credit").why_not == "not on this plan");
    CHECK(named(sitting, offers, "road-lots").why_not == "not on this lot");
    CHECK(named(sitting, offers, "lender-credit").why_not.empty()); // the sheet is that lender's
    Inquiry late = sitting.inquiry();
    late.closing = date("2027-09-01");
    CHECK(why_not_given(at(sitting.book().incentives, 0), late) == "for closings until 2027-08-31");
}

TEST_CASE("An incentive tied to a lender is not given with another's rates") {
    RateSheet other;
    other.lender = "Another lender";
    const PriceBook& book = six_programs().desk.book;
    CHECK(why_not_given(book.incentives[2], &other) == "only with a loan from Sample lender");
    CHECK(why_not_given(book.incentives[0], &other).empty());
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
        CHECK(given ==
              home.incentives + home.closing_credit + home.points_credit + home.buydown_credit);
    }
    CHECK(seen > 40);
}
