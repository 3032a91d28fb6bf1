// "Where can it stand, and what would another lot or plan change?" The lots and the plans of the
// community against the home in hand: what is free, what fits, and which picks would fall out.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/pricebook/lot.hpp>

namespace quoin {

/// A pick that could not stay on another lot or plan, and why.
struct FallsOut {
    std::string option; ///< id
    std::string name;
    std::string why;
};

struct SiteLot {
    std::string id;
    Money premium;
    LotStatus status = LotStatus::free;
    Grade grade = Grade::level;
    bool flood_zone = false;
    std::vector<std::string> plans; ///< ids of those that fit
    bool every_plan = false;
    std::vector<Measure> measures;
    std::string note;
    bool chosen = false;
    bool fits = false; ///< the plan in hand
    std::vector<FallsOut> falls_out;

    [[nodiscard]] bool can_be_had() const { return status == LotStatus::free && fits; }
};

struct SitePlan {
    std::string id;
    std::string name;
    std::string style;
    std::string note;
    Money base_price;
    Decimal bedrooms;
    Decimal bathrooms;
    Decimal square_feet;
    std::vector<Measure> measures;
    std::vector<Elevation> elevations;
    bool chosen = false;
    bool fits = false; ///< the lot in hand
    std::vector<FallsOut> falls_out;
};

struct SiteAnswer {
    Heading heading;
    std::string lot;       ///< id of the lot in hand
    std::string plan;      ///< id of the plan in hand
    std::string elevation; ///< id of the elevation in hand
    std::string note;      ///< of the community
    std::vector<SiteLot> lots;
    std::vector<SitePlan> plans;
};

[[nodiscard]] SiteAnswer site(const Sitting& sitting);

} // namespace quoin
