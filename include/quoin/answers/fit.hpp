// "Which of our wishes fit?" Of the wishes, those whose worth sums highest while the month and the
// cash stay within the buyer's limits and every rule of the price book holds.
//
// The selections stay; a wish for more of a selected option takes its place. What a wish needs is
// taken along, by itself or in a package, as little of it as will do; nothing else comes in that is
// no wish, though it might save money. The choice is proven, not greedy: branch
// and bound over whole quotes, because a month and the cash jump, and may fall, where a table
// changes rows. Of choices of equal worth the cheapest is given: the least month, and of those the
// least cash. Where the search is stopped, the best so far is given with the most that any other
// choice could be worth.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <quoin/answers/adds.hpp>
#include <quoin/inquiry/asks.hpp>
#include <quoin/text/codes.hpp>
#include <quoin/text/why_not.hpp>

namespace quoin {

/// What is being looked for.
enum class FitStage {
    best,     ///< the choice of the most worth
    cheapest, ///< of those worth as much, the cheapest
    next,     ///< what would let a wish in that was left out
    nearest,  ///< where nothing fits: the home that misses by the least
};

struct FitProgress {
    FitStage stage = FitStage::best;
    std::string scenario;
    std::string lot;
    std::int64_t nodes = 0;
    Decimal worth; ///< of the best so far
    Decimal most;  ///< that any choice could be worth
    bool found = false;
};
/// Told many times a second. False, once said, stops all of it: what was not looked into by then is
/// answered as not proven.
using FitWatch = std::function<bool(const FitProgress&)>;

struct FitWish {
    std::string id;
    std::string name;
    std::string level;
    int rank = 0;
    bool must = false;
    Decimal worth;
    Decimal quantity = Decimal::whole(1);
    Unit unit = Unit::each;
    Money price; ///< its line in the home
};

/// An option that is there because a wish needs it.
struct FitAlong {
    std::string id;
    std::string name;
    Money price;
};

enum class FitReason {
    rule, ///< the price book does not let it stand beside the selections, or beside what is chosen
    limits, ///< the month or the cash would be over
    loan,   ///< the scenario could not be had
};
template <>
inline constexpr auto codes<FitReason> = coded<FitReason>({{FitReason::rule, "rule"},
                                                           {FitReason::limits, "limits"},
                                                           {FitReason::loan, "loan"}});

struct FitLeftOut {
    FitWish wish;
    FitReason reason = FitReason::limits;
    std::optional<WhyNot> rule;       ///< where a rule is the reason
    std::vector<std::string> along;   ///< names of options that would come with it
    std::vector<std::string> instead; ///< names of options that would have to go
    std::string as_chosen;            ///< of one that would stay by another choice; mostly empty
    std::optional<Added> added;       ///< to the home as chosen; nothing where it cannot be had
    Money price;
    Money over_monthly; ///< not negative
    Money over_cash;    ///< not negative
};

/// What would let the left-out wish of the greatest worth in.
struct FitNext {
    FitWish wish;
    Money raise_monthly; ///< with all that is chosen
    Money raise_cash;
    bool can_be_chosen = false;       ///< within the limits, if others are given up
    std::vector<std::string> give_up; ///< names, in the best choice that holds it
    std::vector<std::string> gained;  ///< names of others that then fit
    Decimal worth;                    ///< of that choice
    bool proven = false;
    Money limit_monthly; ///< the limits raised by so much: it fits
    Money limit_cash;
};

/// By how much every home that holds the selections and the must-haves misses the limits: none is
/// over the month by less, and none over the cash by less. Zero: that limit alone can be met.
struct FitMiss {
    Money least_monthly;
    Money least_cash;
    bool in_one_home = false; ///< the home given is over by just these; else by the least over the
                              ///< month and, of such homes, over the cash
    bool proven = false;      ///< else of what was looked into
};

/// A rule of the price book that keeps an option out, by its name.
struct FitRule {
    std::string option;
    WhyNot why;
    std::string other; ///< of two that cannot stand together; else empty
};

/// Why nothing can be chosen for a home.
struct FitBarred {
    enum class Kind {
        selection,     ///< would fall out
        must_have,     ///< cannot be had here
        contradiction, ///< must-haves cannot stand here, or not together
    };

    Kind kind = Kind::selection;
    std::vector<FitRule> rules; ///< the one of what cannot stand; of a contradiction all
    std::vector<std::string> must_haves = {}; ///< of a contradiction: names
};

/// The best choice on one lot under one scenario.
struct FitHome {
    std::string lot;
    std::optional<FitBarred> barred; ///< where nothing can be chosen here at all
    bool fits = false; ///< false: price and figures are of the home that misses by the least
    std::vector<FitWish> chosen;
    std::vector<FitAlong> along;
    std::vector<FitWish> held; ///< the home has them already
    std::vector<FitLeftOut> left_out;
    std::optional<FitNext> next;
    std::vector<std::string> incentives_lost; ///< names of those not given on this lot
    Decimal worth;
    Decimal most; ///< that any choice could be worth; equal to worth where it is proven
    bool proven = false;
    bool cheapest = false; ///< proven: of the choices of that worth it has the least month and, of
                           ///< those, the least cash
    std::int64_t nodes = 0;
    Money price;
    Money over_monthly; ///< where nothing fits; not negative
    Money over_cash;
    std::optional<FitMiss> miss; ///< where nothing fits and the loan can be had
    /// Nothing where it is barred, or where the search stopped before it found any home.
    std::optional<ScenarioAnswer> scenario;
};

struct FitScenario {
    ScenarioTerms terms; ///< of the inquiry's own home
    std::size_t best = 0;
    std::vector<FitHome> homes; ///< one for each lot; the inquiry's first
};

struct FitAnswer {
    Heading heading;
    FitLimits limits;
    bool lots = false;
    std::vector<FitScenario> scenarios;
};

/// Precondition: limits not negative.
[[nodiscard]] FitAnswer fit(const Sitting& sitting, const FitQuestion& question,
                            const FitWatch& watch = {});

} // namespace quoin
