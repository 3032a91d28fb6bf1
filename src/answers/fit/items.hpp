// What may be put into a home to fulfil wishes: the wishes, and the options that those need.
//
// The rules and prices of the price book, turned into lists of indexes for the search. They are
// never stricter than the price book's own: what the search proposes is held to home/rules.hpp and
// home/priced_home.hpp before it counts.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/home/rules.hpp>
#include <quoin/inquiry/sitting.hpp>

namespace quoin {

/// A line's amount where a package that is put in brings the option.
struct FitGrant {
    int package = -1; ///< index of the item
    Money amount;
};

/// What a pick costs: by itself, or beside a package.
struct FitPrice {
    Money alone;
    std::vector<FitGrant> beside;

    [[nodiscard]] Money least() const;
    [[nodiscard]] Money most() const;
};

struct FitItem {
    Pick pick;
    std::optional<Index<Wish>> wish = {}; ///< nothing: only there for what needs it
    std::int64_t worth = 0;               ///< billionths
    bool must = false;
    std::optional<Index<Pick>> replaces = {}; ///< the selected pick that it takes the place of
    FitPrice price;
    std::vector<int> clashes;            ///< items that it cannot stand with
    std::vector<std::vector<int>> needs; ///< of each entry, one of these items
};

/// A wish that no choice can hold, or that the home holds already.
struct FitAside {
    Index<Wish> wish;
    bool held = false;
    std::optional<WhyNot> why = {}; ///< else
};

struct FitItems {
    std::vector<FitItem> items; ///< wishes first, in their order
    std::vector<FitAside> aside;
    std::vector<FitPrice> selected; ///< what the selections cost, one for each pick
};

/// On a selection that obeys the rules.
[[nodiscard]] FitItems fit_items(const PriceBook& book, const Inquiry& inquiry,
                                 const Selection& selection);

/// The selection with these items in it.
[[nodiscard]] Selection with_items(const FitItems& items, const Selection& selection,
                                   const std::vector<int>& taken);

} // namespace quoin
