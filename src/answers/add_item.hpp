// What one option adds to a home as it stands: shared by the questions that say so.
#pragma once

#include <string>
#include <vector>

#include <quoin/answers/adds.hpp>
#include <quoin/home/standing.hpp>

namespace quoin {

/// A home as it stands, priced and figured under every scenario.
struct Standpoint {
    PricedHome home;
    std::vector<LoanFigures> figures;
};
[[nodiscard]] Standpoint standpoint(const Sitting& sitting, const Selection& selection);

/// What a change of the home comes to, and the names of what it brings and drops.
struct ChangeAdds {
    Money price;
    std::vector<std::string> along;   ///< added or, where an option is taken out, taken out with it
    std::vector<std::string> instead; ///< replaced
    std::vector<Added> by_scenario;
};
[[nodiscard]] ChangeAdds change_adds(const Sitting& sitting, const Standpoint& now,
                                     const Change& change, bool takes_out);
/// `then` is the home after the change.
[[nodiscard]] ChangeAdds change_adds(const Sitting& sitting, const Standpoint& now,
                                     const Standpoint& then, const Change& change, bool takes_out);

/// A pick that is not in the home is added, with what it needs; one that is there is taken out.
[[nodiscard]] AddsItem add_item(const Sitting& sitting, const Standpoint& now, const Pick& pick);

/// A home in hand, that every change of it is held against.
struct InHand {
    const Sitting& sitting; ///< with one scenario alone
    const PriceBook& book = sitting.book();
    const Selection& selection = sitting.inquiry().selection;
    Standpoint now = standpoint(sitting, selection);
};

[[nodiscard]] std::vector<std::string> option_names(const PriceBook& book,
                                                    const std::vector<Index<Option>>& options);
/// Of the level or the choice that is picked; empty where the option has neither.
[[nodiscard]] std::string form_name(const Option& option, const Pick& pick);
/// Empty for kinds without levels.
[[nodiscard]] std::string level_name(const Option& option, std::optional<Index<Level>> level);

} // namespace quoin
