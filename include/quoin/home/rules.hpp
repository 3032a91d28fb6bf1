// Whether a selection obeys the price book, and how it changes when an option comes or goes.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/home/selection.hpp>

namespace quoin {

/// Why an option cannot stand in a selection, in order of precedence.
enum class Barrier {
    not_on_plan,
    not_on_elevation,
    not_on_lot,
    lot_grade,
    lot_too_small,
    past_cutoff,
    needs,
    excludes,
    one_of,
};

struct Conflict {
    Barrier barrier = Barrier::not_on_plan;
    int option = -1;               ///< the option that cannot stand
    std::vector<OptionRef> others; ///< needs: any of them; excludes, one_of: the other one
    std::string measure;           ///< lot_too_small: which
};

/// Why an option cannot be had on this plan, elevation, lot and stage at all; empty where it can.
[[nodiscard]] std::vector<Conflict> barriers(const PriceBook& book, const Selection& selection,
                                             int option);

/// Everything that is wrong with a selection's picks, in their order.
[[nodiscard]] std::vector<Conflict> conflicts(const PriceBook& book, const Selection& selection);

/// Whether two options cannot stand together by "excludes" or "one_of", or what they bring as
/// packages cannot.
[[nodiscard]] bool exclude_each_other(const PriceBook& book, int a, int b);

/// True where the selection holds the option at the level or better, by itself or in a package.
[[nodiscard]] bool holds(const PriceBook& book, const Selection& selection, OptionRef ref);

/// The pick that fulfils a reference with as little as possible: in its usual quantity, at the
/// lowest level that will do. Nothing where the plan is offered none.
[[nodiscard]] std::optional<Pick> least_pick(const PriceBook& book, OptionRef ref, int plan);

/// A selection after an option came or went, with what that brought along.
struct Change {
    Selection selection;
    std::vector<int> also_added;   ///< options that the new one needs
    std::vector<int> also_removed; ///< options that it excludes or replaces, or that needed it
    std::vector<Conflict> blocked; ///< why it cannot be done; empty where it can
};

/// Adds a pick at the end, with what it needs before it; takes out what it excludes. An option that
/// is there already is replaced in place.
[[nodiscard]] Change with_pick(const PriceBook& book, const Selection& selection, const Pick& pick);

/// Takes an option out, with what needs it.
[[nodiscard]] Change without_option(const PriceBook& book, const Selection& selection, int option);

/// How a sentence calls options: by the ids that people write, or by the names that people read.
enum class Naming { ids, names };

/// A conflict in words: "on lots that walk out", "needs kitchen-hood or kitchen-vent".
[[nodiscard]] std::string described(const PriceBook& book, const Conflict& conflict,
                                    Naming naming = Naming::ids);
/// "kitchen-counters:quartz".
[[nodiscard]] std::string name_of(const PriceBook& book, OptionRef ref);

} // namespace quoin
