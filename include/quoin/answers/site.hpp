// "Where can it stand, and what would another lot or plan change?" The lots and the plans of the
// community against the home in hand: what is free, what fits, which picks would fall out, and what
// the move comes to under the way to pay in hand.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/audience.hpp>
#include <quoin/pricebook/lot.hpp>
#include <quoin/pricebook/site_map.hpp>
#include <quoin/text/why_not.hpp>

namespace quoin {

/// A pick, or an incentive in use, that could not stay on another lot or plan, and why.
struct FallsOut {
    std::string option; ///< id of the option or the incentive
    std::string name;
    WhyNot why;
};

/// What the home comes to elsewhere, without what falls out, against the home as it stands.
struct SiteMove {
    Money price; ///< change of the contract price
    Added added; ///< change under the scenario in hand
};

struct SiteLot {
    Lot lot;                        ///< its office note is empty but for the desk
    std::vector<std::string> plans; ///< ids of those that fit
    bool every_plan = false;
    bool chosen = false;
    bool fits = false; ///< the plan in hand
    std::vector<FallsOut> falls_out;
    std::optional<SiteMove> move; ///< nothing where it is chosen or cannot be had

    [[nodiscard]] bool can_be_had() const { return lot.status == LotStatus::free && fits; }
};

struct SiteElevation {
    Elevation elevation;
    std::vector<FallsOut> falls_out;
    std::optional<SiteMove> move; ///< nothing where it is chosen or its plan does not fit
};

struct SitePlan {
    Plan plan;
    std::vector<SiteElevation> elevations;
    bool chosen = false;
    bool fits = false; ///< the lot in hand
};

/// The map of the lots, and on each the house of the plan in hand.
struct SiteDrawn {
    SiteMap map;
    Footprint house;             ///< of the plan in hand
    std::vector<Outline> houses; ///< one for each of the map's lots, on the sheet, front left
                                 ///< first; empty where nothing tells the width
};

struct SiteAnswer {
    Heading heading;
    std::string lot;       ///< id of the lot in hand
    std::string plan;      ///< id of the plan in hand
    std::string elevation; ///< id of the elevation in hand
    std::string note;      ///< of the community
    ScenarioTerms terms;   ///< that the moves are figured under
    std::vector<SiteLot> lots;
    std::vector<SitePlan> plans;
    std::optional<SiteDrawn> map; ///< where the price book has one
};

/// The same map and lots without what a move would change.
[[nodiscard]] SiteAnswer site_as_drawn(const Sitting& sitting);

[[nodiscard]] SiteAnswer site(const Sitting& sitting, std::size_t scenario = 0,
                              Audience audience = Audience::buyer);

} // namespace quoin
