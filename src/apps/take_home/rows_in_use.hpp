// The rows of a rate sheet that the loans of an inquiry rest on.
#pragma once

#include <map>
#include <set>
#include <vector>

#include <quoin/inquiry/sitting.hpp>

namespace quoin::apps {

struct RowsInUse {
    std::map<const Ladder*, std::set<int>> rungs; ///< each ladder in play, also without a rung
    std::map<const BandTable*, std::set<int>> rows;
    /// Adjustments that add nothing to these loans, for want of a row.
    std::map<const BandTable*, std::vector<Case>> without;
};

/// Of the home as it stands, under each scenario, and of the rate without points that a comparison
/// holds each loan with points against.
[[nodiscard]] RowsInUse rows_in_use(const Sitting& sitting);

} // namespace quoin::apps
