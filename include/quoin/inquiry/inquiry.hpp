// Inquiry: what one buyer asks about: the home, the wishes, the ways to pay, the dates.
//
// Income, debts and cash are private: they stay in the inquiry and are in no answer that does not
// need them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <quoin/home/selection.hpp>
#include <quoin/inquiry/desk.hpp>
#include <quoin/loan/loan_figures.hpp>
#include <quoin/loan/scenario.hpp>

namespace quoin {

/// A pick that is not in the price, with its place in the buyer's order of wishes (1 first).
struct Wish {
    Pick pick;
    int rank = 1;
    std::optional<Decimal> weight; ///< what it is worth to the buyer, above zero; else by its rank
    bool must = false;             ///< nothing is worth having without it

    friend bool operator==(const Wish&, const Wish&) = default;
};

struct Inquiry {
    std::string price_book; ///< path, relative to the inquiry's own file
    std::string buyer;      ///< a label
    std::string prepared_by;
    std::string originator; ///< the licensed loan originator; may be empty
    Date as_of;
    Date contract;
    Date closing;
    std::string rates; ///< id of a sheet; empty: the newest on or before as_of
    std::string place; ///< id; empty: the community's
    Selection selection;
    std::vector<Wish> wishes;
    PurchaseFacts facts;
    std::optional<int> score;
    std::optional<Money> monthly_income;
    std::optional<Money> monthly_debts;
    std::optional<Money> cash;
    std::optional<int> household;       ///< persons
    std::optional<Money> monthly_taxes; ///< on the income: federal, state, social security
    std::vector<Scenario> scenarios;

    /// What a wish is worth: its weight, or n + 1 - its place among the n wishes by rank (equal
    /// ranks share the better place), so that the first is worth n and the last 1.
    [[nodiscard]] Decimal worth_of(const Wish& wish) const;
    /// The rate sheet it uses, or nullptr where there is none.
    [[nodiscard]] const RateSheet* sheet(const Lending& lending) const;
    [[nodiscard]] const Scenario* find_scenario(std::string_view name) const;
};

/// The price book an inquiry names, or nothing where it names none.
[[nodiscard]] std::optional<std::string> price_book_of(const Document& document);

/// The rate sheet an inquiry asks for, or nothing where it does not say so as it should.
[[nodiscard]] std::optional<SheetAsked> sheet_asked(const Document& document);

/// Reads an inquiry against a desk and checks it: names, dates, the rules of the price book, the
/// price book's and the incentives' own dates. Where findings were added, it must not be used.
[[nodiscard]] Inquiry read_inquiry(const Document& document, const Desk& desk, Findings& findings);

} // namespace quoin
