// How an option stands for a home, and what would have to change to have it: the one answer for
// every question that asks.
//
//   OptionStanding standing = option_standing(book, selection, pick);
//   standing.kind  ==  OptionStanding::Kind::barred  =>  why_not(book, standing.reason())
#pragma once

#include <quoin/home/rules.hpp>

namespace quoin {

/// Of one form of an option: the option itself, a level, a choice.
struct OptionStanding {
    enum class Kind {
        chosen,   ///< is in the home in just this form
        held,     ///< comes with a package that is chosen, in this form or a better one
        included, ///< comes with the plan, and no other choice was made instead
        offered,  ///< can be had
        barred,   ///< cannot be had here
    };

    Kind kind = Kind::offered;
    std::optional<Index<Option>> package; ///< held: the first that brings it
    bool better = false;                  ///< held: the package brings a better one
    /// Takes out what is chosen; of what is held or included, the other form that is chosen in its
    /// stead. Else puts it in, or says why it cannot be.
    Change change;
    bool takes_out = false;

    /// Precondition: the change is blocked, as of all that is barred.
    [[nodiscard]] const Conflict& reason() const { return change.blocked.front(); }
    /// Barred by the plan, the elevation, the lot or the stage, whatever else is chosen.
    [[nodiscard]] bool barred_by_the_home() const {
        return kind == Kind::barred && is_of_the_home(reason().barrier);
    }
};

/// A quantity or an amount to spend that the pick does not name is not compared.
[[nodiscard]] OptionStanding option_standing(const PriceBook& book, const Selection& selection,
                                             const Pick& pick);

} // namespace quoin
