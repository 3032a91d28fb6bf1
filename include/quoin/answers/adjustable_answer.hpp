// AdjustableAnswer: what an adjustable rate may do, as plain values with names.
#pragma once

#include <optional>
#include <vector>

#include <quoin/lending/rate_sheet.hpp>
#include <quoin/loan/loan_figures.hpp>

namespace quoin {

struct AdjustableAnswer {
    Months initial; ///< at the note rate
    Months reset;   ///< between later changes
    RateIndex index;
    Percent margin;
    RateCaps caps;
    Rate fully_indexed; ///< index and margin of today, to the nearest eighth
    Rate ceiling;
    std::vector<PaymentStep> as_indexed; ///< principal and interest if the index stays
    std::vector<PaymentStep> worst;      ///< if every change is as high as the caps let it be

    [[nodiscard]] Money largest_payment() const; ///< of the worst case
};

/// Nothing where the rate is fixed. Precondition: the figures are available.
[[nodiscard]] std::optional<AdjustableAnswer>
adjustable_answer(const ScenarioRules& rules, const RateSheet& sheet, const LoanFigures& figures);

} // namespace quoin
