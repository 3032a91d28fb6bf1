// RatioLimits: how much of the gross income a program lets housing and debts take.
//
// A guide of the published underwriting rules, not an approval: lenders and automated underwriting
// look at more, and go above or stay below it.
#pragma once

#include <optional>

#include <quoin/exact/money.hpp>
#include <quoin/exact/percent.hpp>
#include <quoin/lending/dated.hpp>

namespace quoin {

/// What holds for a file that the program's automated underwriting accepts.
enum class AutomatedRatio {
    not_known,      ///< the data say nothing of it
    another,        ///< `back_automated` in place of `back`
    the_same,       ///< the ratio is a guide however a file is underwritten
    none_published, ///< no ratio is published: none is held
};

struct RatioLimits : Dated {
    std::optional<Percent> front; ///< housing over gross monthly income; nothing: no such limit
    Percent back;                 ///< housing and debts over gross monthly income
    AutomatedRatio automated = AutomatedRatio::not_known;
    std::optional<Percent> back_automated; ///< where `automated` is another
    /// A ratio is rounded to whole percents before it is held to these.
    bool whole_percents = false;
    /// Percent of the residual income guide: a household that has as much left may be over `back`.
    /// Nothing: no such way.
    std::optional<Percent> residual_instead;

    /// The most a month that a share of the income lets an amount be, to the cent.
    [[nodiscard]] Money most(Money income, Percent share) const;
    /// The least income a month that lets an amount be, to the cent.
    [[nodiscard]] Money least_income(Money amount, Percent share) const;
};

} // namespace quoin
