// What a question is asked with besides the inquiry.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include <quoin/exact/money.hpp>
#include <quoin/exact/months.hpp>
#include <quoin/exact/rate.hpp>

namespace quoin {

/// What a highest price is looked for under.
struct AffordFacts {
    int reserve_months = 0; ///< months of the payment to be left over in cash
    bool automated = false; ///< the ratio of automated underwriting where the program has one
    Money step = Money::dollars(5000);
};

/// A builder's money, and how long it is weighed over.
struct CreditAsk {
    Money amount;  ///< above zero, under the contract price
    int years = 7; ///< over which the least cost is looked for
};

/// What a choice of options must stay within.
struct FitLimits {
    Money monthly; ///< the settled month may come to this
    Money cash;    ///< all the cash the purchase takes may come to this
};

/// Which homes are searched, and how long.
struct FitQuestion {
    FitLimits limits;
    std::optional<std::size_t> scenario; ///< nothing: each of them
    bool lots = false;                   ///< on every free lot that the plan fits
    std::int64_t nodes = 2'000'000;      ///< of each search; then it stops with what it has
};

/// How a personal loan or a card is taken to be.
struct PersonalLoan {
    Rate rate;
    Months term;
};

/// When an option is done after the closing, and how it is paid then.
struct LaterFacts {
    int month = 1; ///< the work is paid with this payment of the loan
    std::optional<PersonalLoan> loan;
};

/// What the schedule is run under besides the scenario.
struct RunAs {
    std::optional<Money> extra = {};   ///< instead of the scenario's own extra principal
    std::vector<Percent> indexes = {}; ///< of each change in order; the last for all later ones
    bool worst_case = false;
};

/// How far a rate moves.
struct ShiftAsk {
    int steps = 4;                                       ///< each way
    Percent step{Decimal::billionths(Decimal::one / 8)}; ///< above zero
};

} // namespace quoin
