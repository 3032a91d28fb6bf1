// "What does that add per month?"
//
// Every figure is the difference of two whole quotes, never a factor. An option that is not chosen
// is added to the home as it stands, with what it needs; one that is chosen is taken out, and what
// it adds is the way back. The stacked figures start from the home without options and add the
// buyer's picks in their order, so that they sum to the whole difference, to the cent.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/answers/heading.hpp>
#include <quoin/answers/scenario_answer.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/why_not.hpp>

namespace quoin {

/// One side of a jump: the row of the table as written, and its value.
struct JumpSide {
    std::string band;  ///< "ltv > 80, <= 85"; empty where no table's row decides
    std::string value; ///< empty: no row, so nothing is charged

    friend bool operator==(const JumpSide&, const JumpSide&) = default;
};

/// A figure that does not grow smoothly, and what it went from and to.
struct Jump {
    Lookup lookup = Lookup::note_rate;
    JumpSide before;
    JumpSide after;
};

/// True for a jump that does not depend on the way to pay.
[[nodiscard]] constexpr bool is_of_the_place(Lookup lookup) { return lookup == Lookup::homeowner; }

/// The difference that a change of the home makes under one scenario.
struct Added {
    std::vector<Refusal> refusals; ///< of the changed home; the figures are then not for use
    Monthly monthly;               ///< by part
    Money per_month;
    Money cash;          ///< all the cash needed
    Money to_close;      ///< what is left to bring to the closing, after deposits
    Money in_five_years; ///< cash and sixty months
    Money over_loan;     ///< cash and every month of the loan
    Ltv ltv_before;
    Ltv ltv_after;
    std::vector<Jump> jumps;

    [[nodiscard]] bool available() const { return refusals.empty(); }
};

enum class Standing {
    offered, ///< can be added
    chosen,  ///< is in the home; the figures are for taking it out
    held,    ///< comes with a package that is chosen
    barred,  ///< cannot be had here
};
template <>
inline constexpr auto codes<Standing> = coded<Standing>({{Standing::offered, "offered"},
                                                         {Standing::chosen, "chosen"},
                                                         {Standing::held, "held"},
                                                         {Standing::barred, "barred"}});

/// What a home has of an option that is in it already: the home with it, less the home without.
struct AddsInHome {
    Money price;
    std::vector<Added> by_scenario;
};

struct AddsItem {
    std::string id; ///< "kitchen-counters:quartz" for a level
    std::string name;
    std::string level;
    std::string area;
    Standing standing = Standing::offered;
    int wish = 0; ///< rank among the buyer's wishes; 0: none
    Decimal quantity = Decimal::whole(1);
    Unit unit = Unit::each;
    Money price;                      ///< change of the contract price
    std::vector<std::string> along;   ///< options added or taken out with it
    std::vector<std::string> instead; ///< options it replaces
    std::string package;              ///< held: the package that brings it
    std::optional<WhyNot> why_not;    ///< barred: the reason
    std::string note;
    bool structural = false;
    Work work;
    std::string cutoff; ///< name of the stage before which it must be chosen
    std::optional<Later> later;
    std::vector<Added> by_scenario;
    std::optional<AddsInHome> in_home; ///< chosen: the same the other way around
};

/// One pick in the buyer's order, on top of all before it.
struct AddsStep {
    std::string id;
    std::string name;
    std::string level;
    Money price;
    std::vector<Added> by_scenario;
};

struct AddsScenario {
    ScenarioTerms terms;
    Money per_thousand; ///< the rule of thumb: level payment on $1,000 at this rate and term
    Monthly monthly;    ///< of the home as it stands
    std::vector<Refusal> refusals;
};

struct AddsAnswer {
    Heading heading;
    Money contract_price;
    std::vector<AddsScenario> scenarios;
    std::vector<AddsItem> items;
    bool asked = false; ///< the items are those that were asked about
    std::vector<AddsStep> stacked;
    AddsStep whole; ///< all picks at once; the stacked figures sum to it
};

/// The options asked about, or every one that costs something where none is named.
[[nodiscard]] AddsAnswer adds(const Sitting& sitting, const std::vector<Pick>& asked);

} // namespace quoin
