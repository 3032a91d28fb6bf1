// LoanProgram: the published rules of a kind of loan, with their dates and sources.
//
// A rule is a list of dated band tables; rules of the past stay, so that an old quote can be
// recomputed as of its day.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/lending/adjustable_plan.hpp>
#include <quoin/lending/band_table.hpp>
#include <quoin/lending/program_policy.hpp>
#include <quoin/lending/ratio_limits.hpp>
#include <quoin/lending/residual_income.hpp>
#include <quoin/text/codes.hpp>

namespace quoin {

/// The rules a program may have, each a band table.
enum class Rule {
    maximum_ltv,       ///< percent of value
    loan_limit,        ///< dollars, of the base loan
    upfront_fee,       ///< percent
    annual_fee,        ///< percent a year
    annual_fee_months, ///< how long it is paid
    contribution_cap,  ///< interested-party contributions, percent of price or value
};
inline constexpr std::size_t rule_count = 6;
[[nodiscard]] std::string_view name_of(Rule rule);

/// How a fee is charged (loan/fee_methods.hpp). This floor carries it, and knows its name alone.
struct UpfrontMethod;
struct AnnualMethod;

/// Those that a program's file may name; at least one of each.
struct FeeMethods {
    Words<const UpfrontMethod*> upfront;
    Words<const AnnualMethod*> annual;
};

struct LoanProgram {
    std::string id;
    std::string name;
    ProgramKind kind = ProgramKind::conventional;
    ProgramPolicy policy;
    std::string summary;
    std::string fine_print; ///< the catch, plainly
    std::vector<int> terms_months;
    bool whole_dollars = true;              ///< loan amounts are cut down to whole dollars
    const UpfrontMethod* upfront = nullptr; ///< nullptr: there is no such fee
    std::string upfront_name;
    const AnnualMethod* annual = nullptr; ///< nullptr: there is no such fee
    std::string annual_name;
    std::optional<AdjustablePlan> adjustable; ///< nothing where the rate is fixed
    std::string rules_of; ///< id of the program whose rules stand where this one gives none
    std::array<std::vector<BandTable>, rule_count> rules;
    std::vector<RatioLimits> ratios;             ///< dated; empty: none are known
    std::vector<ResidualIncome> residual_income; ///< dated; empty: no such guide
};

} // namespace quoin
