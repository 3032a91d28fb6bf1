// AdjustablePlan: when the rate of an adjustable loan may change, and by how much.
#pragma once

#include <string>

#include <quoin/exact/months.hpp>
#include <quoin/exact/percent.hpp>

namespace quoin {

/// In percentage points, as in "2/1/5".
struct RateCaps {
    Percent first;    ///< up or down from the initial rate, at the first change
    Percent periodic; ///< up or down from the rate before, at each later change
    Percent life;     ///< above the initial rate, ever

    friend bool operator==(const RateCaps&, const RateCaps&) = default;
};

struct AdjustablePlan {
    Months initial; ///< at the initial rate
    Months reset;   ///< between later changes
    RateCaps caps;
    std::string source;
    Percent qualifying_over_initial; ///< points over the initial rate that a buyer qualifies at
    std::string qualifying_source = "12 CFR 1026.43(c)(5)(i)"; ///< the law's, if no other
};

} // namespace quoin
