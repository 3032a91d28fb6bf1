// What the builder gives on a home: each incentive of the price book, what it may be used for, what
// the buyer uses it for, and why it is not given here where it is not.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/inquiry/sitting.hpp>
#include <quoin/text/why_not.hpp>

namespace quoin {

struct IncentiveUsed {
    IncentiveUse use = IncentiveUse::price;
    std::optional<Money> asked; ///< a part of it; else all that is left
    Money given;
};

struct IncentiveOffer {
    Incentive incentive;
    Money whole;                   ///< what it comes to on this home
    Money left;                    ///< of that, not used
    std::optional<WhyNot> why_not; ///< why it is not given on this home; nothing: it is
    std::vector<IncentiveUsed> used;
};

/// Every incentive of the price book, in its order.
[[nodiscard]] std::vector<IncentiveOffer> incentive_offers(const Sitting& sitting,
                                                           const PricedHome& home);

} // namespace quoin
