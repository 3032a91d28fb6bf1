// Which incentives a home is given, and where they go.
#include <quoin/answers/incentive_offers.hpp>

#include <quoin/exact/broken.hpp>
#include <quoin/home/rules.hpp>

namespace quoin {

std::string why_not_given(const Incentive& incentive, const Inquiry& inquiry) {
    if (!allows(incentive.plans, inquiry.selection.plan)) return "not on this plan";
    if (!allows(incentive.lots, inquiry.selection.lot)) return "not on this lot";
    if (incentive.expires && inquiry.contract > *incentive.expires) {
        return "for contracts until " + incentive.expires->text();
    }
    if (incentive.close_by && inquiry.closing > *incentive.close_by) {
        return "for closings until " + incentive.close_by->text();
    }
    return {};
}

std::string why_not_given(const Incentive& incentive, const RateSheet* sheet) {
    const bool here =
        incentive.lender.empty() || sheet == nullptr || incentive.lender == sheet->lender;
    return here ? "" : "only with a loan from " + incentive.lender;
}

std::vector<IncentiveOffer> incentive_offers(const Sitting& sitting, const PricedHome& home) {
    const PriceBook& book = sitting.book();
    const Inquiry& inquiry = sitting.inquiry();
    std::vector<IncentiveOffer> offers(book.incentives.size());
    for (std::size_t i = 0; i < offers.size(); ++i) {
        const Incentive& incentive = book.incentives[i];
        IncentiveOffer& offer = offers[i];
        offer.incentive = static_cast<int>(i);
        offer.whole = incentive_amount(incentive, home);
        offer.left = offer.whole;
        offer.why_not = why_not_given(incentive, inquiry);
        if (offer.why_not.empty()) offer.why_not = why_not_given(incentive, &sitting.sheet());
    }
    const auto& picks = inquiry.selection.incentives;
    ensure(picks.size() == home.given.size(), "a home knows what each pick of an incentive gives");
    for (std::size_t i = 0; i < picks.size(); ++i) {
        const IncentiveGiven& given = home.given[i];
        IncentiveOffer& offer = offers[static_cast<std::size_t>(given.incentive)];
        offer.used.push_back({given.use, picks[i].amount, given.amount});
        offer.left -= given.amount;
    }
    return offers;
}

} // namespace quoin
