// Whether a selection obeys the price book, and how it changes when an option comes or goes.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/home/selection.hpp>

namespace quoin {

/// Why an option cannot stand in a selection, in order of precedence.
enum class Barrier {
    not_on_plan, ///< neither it nor, where one is named, this level of it
    only,        ///< a limit of where it can be had
    past_cutoff,
    needs,
    excludes,
    one_of,
};

/// Whether it lies in the plan, the elevation, the lot or the stage, not in other options.
[[nodiscard]] constexpr bool is_of_the_home(Barrier barrier) {
    return barrier == Barrier::not_on_plan || barrier == Barrier::only ||
           barrier == Barrier::past_cutoff;
}

struct Conflict {
    Barrier barrier = Barrier::not_on_plan;
    OptionRef of = {};                  ///< what cannot stand; its level where that is the reason
    std::vector<OptionRef> others = {}; ///< needs: any of them; excludes, one_of: the other one
    Unkept limit = {};                  ///< only: which
};

/// Whether the build has reached the stage before which an option must be chosen.
[[nodiscard]] bool cutoff_passed(const Option& option, const Selection& selection);

/// Why a pick cannot be had on this plan, elevation, lot and stage at all; empty where it can. What
/// is agreed is past no cutoff.
[[nodiscard]] std::vector<Conflict> barriers(const PriceBook& book, const Selection& selection,
                                             const Pick& pick);

/// Everything that is wrong with a selection's picks, in their order.
[[nodiscard]] std::vector<Conflict> conflicts(const PriceBook& book, const Selection& selection);

/// Why an option cannot stand beside another by "excludes" or "one_of", or what they bring as
/// packages cannot.
[[nodiscard]] std::optional<Conflict> conflict_between(const PriceBook& book, Index<Option> option,
                                                       Index<Option> other);

/// True where the selection holds the option at the level or better, by itself or in a package.
[[nodiscard]] bool holds(const PriceBook& book, const Selection& selection, OptionRef ref);

/// True where a pick comes with the plan: the included level or one under it, the first choice, an
/// allowance's budget.
[[nodiscard]] bool comes_with_plan(const PriceBook& book, const Pick& pick, Index<Plan> plan);

/// The pick that fulfils a reference with as little as possible: in its usual quantity, at the
/// lowest level that will do. Nothing where the plan is offered none.
[[nodiscard]] std::optional<Pick> least_pick(const PriceBook& book, OptionRef ref,
                                             Index<Plan> plan);

/// A selection after an option came or went, with what that brought along.
struct Change {
    Selection selection;
    std::vector<Index<Option>> also_added; ///< options that the new one needs
    std::vector<Index<Option>>
        also_removed;              ///< options that it excludes or replaces, or that needed it
    std::vector<Conflict> blocked; ///< why it cannot be done; empty where it can
};

/// Adds a pick at the end, with what it needs before it; takes out what it excludes. An option that
/// is there already is replaced in place.
[[nodiscard]] Change with_pick(const PriceBook& book, const Selection& selection, const Pick& pick);

/// Takes an option out, with what needs it.
[[nodiscard]] Change without_option(const PriceBook& book, const Selection& selection,
                                    Index<Option> option);

/// How a sentence calls options: by the ids that people write, or by the names that people read.
enum class Naming { ids, names };

/// What a conflict comes to: the limit of where it can be had, the names of what it needs.
[[nodiscard]] WhyNot why_not(const PriceBook& book, const Conflict& conflict,
                             Naming naming = Naming::ids);
/// "kitchen-counters:quartz".
[[nodiscard]] std::string name_of(const PriceBook& book, OptionRef ref);

} // namespace quoin
