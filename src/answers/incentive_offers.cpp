// Which incentives a home is given, and where they go.
#include <quoin/answers/incentive_offers.hpp>

#include <algorithm>

#include <quoin/exact/broken.hpp>
#include <quoin/inquiry/incentive_rules.hpp>

namespace quoin {
namespace {

IncentiveOffer offer_of(const Incentive& incentive, const PricedHome& home,
                        const Sitting& sitting) {
    IncentiveOffer offer;
    offer.incentive = incentive;
    offer.whole = incentive_amount(incentive, home);
    offer.left = offer.whole;
    offer.why_not = why_not_given(incentive, sitting.inquiry());
    if (!offer.why_not) offer.why_not = why_not_given(incentive, &sitting.sheet());
    return offer;
}

} // namespace

std::vector<IncentiveOffer> incentive_offers(const Sitting& sitting, const PricedHome& home) {
    std::vector<IncentiveOffer> offers;
    for (const Incentive& incentive : sitting.book().incentives) {
        offers.push_back(offer_of(incentive, home, sitting));
    }
    const auto& picks = sitting.inquiry().selection.incentives;
    ensure(picks.size() == home.given.size(), "a home knows what each pick of an incentive gives");
    for (std::size_t i = 0; i < picks.size(); ++i) {
        const IncentiveGiven& given = home.given[i];
        IncentiveOffer& offer = offers[given.incentive.position()];
        offer.used.push_back({given.use, picks[i].amount, given.amount});
        ensure(given.incentive == picks[i].incentive, "a pick is given what it picks");
        offer.left -= given.amount;
    }
    for (const IncentiveOffer& offer : offers) {
        ensure(offer.left >= std::min(offer.whole, Money{}),
               "the picks of an incentive take no more than it gives");
    }
    return offers;
}

} // namespace quoin
