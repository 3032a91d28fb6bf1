// "What comes with it, what is extra, what does that add per month?" The home area by area, as it
// is walked through: each thing that can be had or chosen, and what one touch on it would change.
//
// Figures are those of adds.hpp: differences of two whole quotes, here under one scenario.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/answers/adds.hpp>
#include <quoin/answers/audience.hpp>
#include <quoin/answers/incentive_offers.hpp>
#include <quoin/answers/shown.hpp>
#include <quoin/pricebook/look.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/why_not.hpp>

namespace quoin {

enum class TourState {
    included, ///< comes with the plan, and nothing else was chosen instead
    chosen,   ///< is in the home
    held,     ///< comes with a package that is chosen
    offered,  ///< can be had
    barred,   ///< cannot be had here; `why_not` has the reason
};
template <>
inline constexpr auto
    codes<TourState> = coded<TourState>({{TourState::included, "included"},
                                         {TourState::chosen, "chosen"},
                                         {TourState::held, "in_package", "in a package"},
                                         {TourState::offered, "offered"},
                                         {TourState::barred, "unavailable", "not to be had"}});

/// What one touch does: puts a form into the home, or takes out the one that is there.
/// A pick as an inquiry writes it: ids, empty where there is none.
struct TourPick {
    std::string option;
    std::string level;
    std::string choice;
    std::optional<Decimal> quantity;
    std::optional<Money> spend;
};

struct TourTouch {
    bool takes_out = false;
    Money price;                      ///< change of the contract price
    Added added;                      ///< change under the scenario in hand
    std::vector<std::string> along;   ///< names of what comes or goes with it
    std::vector<std::string> instead; ///< names of what it replaces
    std::vector<TourPick> brings;     ///< picks that have to come before it
    std::vector<std::string> drops;   ///< ids of options that have to go
};

/// One form of an option: the option itself, one of its levels or one of its choices.
struct TourForm {
    std::string id; ///< of the level or choice; empty: the option itself
    std::string name;
    std::string note;
    std::string office_note; ///< for the desk alone, as of an option
    Look look;               ///< of the level or choice
    TourState state = TourState::offered;
    std::optional<WhyNot> why_not; ///< barred: the reason
    std::string package;           ///< held: the one that brings it
    std::optional<Money> price;    ///< the charge on this plan, against what is included
    std::optional<TourTouch> touch;
};

/// How many of an option there are, where it is counted or measured.
struct TourQuantity {
    Decimal now;
    Unit unit = Unit::each;
    Quantity::From from = Quantity::From::buyer; ///< who says how many
    Decimal lowest;                              ///< this and the next three where the buyer does
    Decimal highest;
    Decimal step;
    Decimal usual;

    /// What the buyer may ask for.
    [[nodiscard]] Wanted limits() const {
        return {.kind = Wanted::Kind::quantity_in_steps,
                .least = lowest,
                .most = highest,
                .step = step};
    }
};

struct TourOption {
    std::string id;
    std::string name;
    OptionKind kind = OptionKind::upgrade;
    std::string text;
    std::string note;        ///< the catch
    std::string office_note; ///< empty but for the desk
    Look look;
    bool structural = false;
    Work work;
    std::string cutoff; ///< name of the stage before which it must be chosen; empty: any time
    std::string one_of; ///< of a group of which at most one is chosen
    std::optional<Later> later;
    int wish = 0; ///< rank among the buyer's wishes; 0: none
    bool picked = false;
    bool agreed = false;
    bool cutoff_passed = false;
    std::optional<TourQuantity> quantity;
    std::optional<Money> budget; ///< of an allowance
    std::optional<Money> spend;  ///< of an allowance, where the buyer has said
    std::vector<std::string> parts;
    std::vector<TourForm> forms;
};

/// An option as it was picked, by name.
struct NamedPick {
    std::string option; ///< id
    std::string name;
    std::string form; ///< name of the level or the choice; empty: it has none
};

/// Every area of the home in short.
struct TourAreaInShort {
    std::string id;
    std::string name;
    Money price; ///< of what is chosen here, as the home's lines charge it
    std::vector<NamedPick> chosen;
};

struct TourArea {
    std::string id;
    std::string name;
    Money price; ///< of what is chosen here, as the home's lines charge it
    std::vector<std::string> included;
    std::vector<ShownItem> shown; ///< in the furnished model
    std::vector<TourOption> options;
    std::vector<Request> requests;
};

/// Taking out all that may still be taken out.
struct TourEmptied {
    std::vector<std::string> keeps; ///< ids of options that stay: agreed, or past their cutoff
    Money price;                    ///< change of the contract price
    Added added;                    ///< change under the scenario in hand
};

struct TourAnswer {
    Heading heading;
    Money contract_price;
    Money options_price;
    std::string stage;  ///< that the build has reached; empty: none
    bool drawn = false; ///< the price book names a drawing of the plan
    std::string model;  ///< plan of the furnished model; empty: none
    ScenarioAnswer scenario;
    std::vector<TourAreaInShort> all_areas; ///< those with anything in them
    std::vector<TourArea> areas;            ///< of those the ones asked about
    std::vector<NamedPick> wishes;          ///< in the inquiry's order
    std::vector<IncentiveOffer> incentives;
    std::optional<TourEmptied> emptied; ///< nothing where nothing can be taken out together
};

/// `areas`: the ones asked about; empty: all of them. One area takes a fraction of the time, since
/// every touch is a quote of its own.
[[nodiscard]] TourAnswer tour(const Sitting& sitting, std::size_t scenario,
                              Audience audience = Audience::buyer,
                              const std::vector<Index<Area>>& areas = {});

} // namespace quoin
