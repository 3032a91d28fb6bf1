// "What comes with it, and what is only in the model?" The furnished model against what the buyer's
// plan includes and what the buyer has chosen.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/why_not.hpp>

namespace quoin {

enum class ShownStanding {
    included,     ///< comes with the home
    free_choice,  ///< a choice at no cost
    yours,        ///< chosen, as shown or better
    yours_partly, ///< chosen, but less than shown
    extra,        ///< offered at a price; not chosen
    unavailable,  ///< not to be had on this plan, elevation, lot or stage
    decor,        ///< not for sale
};
template <>
inline constexpr auto codes<ShownStanding> =
    coded<ShownStanding>({{ShownStanding::included, "included"},
                          {ShownStanding::free_choice, "free_choice", "choice at no cost"},
                          {ShownStanding::yours, "yours"},
                          {ShownStanding::yours_partly, "yours_partly", "yours in part"},
                          {ShownStanding::extra, "extra"},
                          {ShownStanding::unavailable, "unavailable", "not to be had"},
                          {ShownStanding::decor, "decor", "not for sale"}});

struct ShownItem {
    std::string area;
    std::string name;
    std::string as_shown;            ///< level or choice in the model
    std::optional<Decimal> quantity; ///< in the model, where it is counted or measured
    Unit unit = Unit::each;
    ShownStanding standing = ShownStanding::extra;
    std::optional<Money> price;    ///< of what is shown, on the buyer's plan
    std::optional<Money> yours;    ///< what the buyer pays for the option as chosen
    std::string your_level;        ///< what the buyer has of it
    std::optional<WhyNot> why_not; ///< unavailable: the reason
};

/// A feature that comes with the buyer's plan.
struct IncludedItem {
    std::string area;
    std::string text;
};

struct ShownAnswer {
    Heading heading;
    std::string model_plan;
    std::string model_elevation;
    std::string model_lot; ///< empty: none named
    std::string model_note;
    std::vector<std::string> areas;     ///< those with anything in them, in tour order
    std::vector<IncludedItem> included; ///< on the buyer's plan
    std::vector<ShownItem> items;       ///< by area in tour order
    Money shown_total;                  ///< of everything shown that can be had here
    Money missing;                      ///< of what is shown, can be had here and is not chosen
};

/// Nothing where the price book has no furnished model.
[[nodiscard]] std::optional<ShownAnswer> shown(const Sitting& sitting);

} // namespace quoin
