// The methods by which a program charges its fees: one at closing, one for each year.
//
// A method is one file of its name in src/loan/fees/ and one row in the table beside it. It says
// what it charges and, apart from that and sharing nothing with it, the least it can come to where
// a loan is known within bounds (least_figures.hpp), and the formula that proves it (recheck).
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include <quoin/lending/program.hpp>
#include <quoin/loan/formula.hpp>
#include <quoin/loan/mortgage_insurance.hpp>
#include <quoin/loan/proof_codes.hpp>

namespace quoin {

/// What a fee at closing is made of.
struct UpfrontBasis {
    Money base_loan;
    Percent percent;           ///< as the program's `upfront_fee` says for this loan
    bool financed = false;     ///< it goes into the loan
    bool whole_dollars = true; ///< of which loans are whole dollars
};

struct UpfrontFee {
    Money fee;
    Money financed; ///< what of it is in the loan: cut, and so the rest is paid in cash
};

/// A figure of recheck's. Figures it may name: base_loan, upfront_percent, and those before it.
struct FeeProof {
    std::string_view id;              ///< upfront_fee, financed_fee or loan: each is entered once
    std::optional<FigureCode> figure; ///< nothing: the fee, by the program's name for it
    Formula formula;
    int rounding = 0; ///< number in docs/roundings.md; 0: nothing is rounded
};

struct UpfrontMethod {
    std::string_view name; ///< in a program's file
    UpfrontFee (*charge)(const UpfrontBasis&);
    /// The same rounded one way and never cut: it does not fall as base loan and percent grow.
    Money (*bound)(const UpfrontBasis&, Rounding);
    std::vector<FeeProof> (*proof)(bool financed, bool whole_dollars);
};

/// What a yearly fee is made of.
struct AnnualBasis {
    LoanTerms note; ///< with what is financed, at the initial rate
    Money base_loan;
    Percent yearly;
    Percent upfront;          ///< of the fee at closing, where that is in the loan
    const Schedule& schedule; ///< as disclosed
    int months = 0;           ///< payments that carry it, at most
};

/// The same of loans known within bounds: the least of each, but for the upfront percent.
struct LeastAnnualBasis {
    LoanTerms note;
    Money base_loan;
    Percent yearly;
    Percent most_upfront;
    bool is_fixed = true; ///< the rate
};

/// The rows of the schedule before the payments of a loan year.
struct YearRows {
    int first = 0;
    int last = 11;
};

struct AnnualMethod {
    std::string_view name; ///< in a program's file
    /// It is the premium of a lender's mortgage insurance: the yearly percent is the rate sheet's,
    /// due where over 80% of value is lent until the Homeowners Protection Act ends it, and may be
    /// paid up at closing. Else it is the program's `annual_fee`, for its `annual_fee_months`.
    bool is_lenders = false;
    int rounding = 0; ///< number in docs/roundings.md
    MonthlyPremium (*charge)(const AnnualBasis&);
    /// Of a month of the first year.
    Money (*least)(const LeastAnnualBasis&);
    /// A month of a loan year. Figures it may name: value, base_loan, loan, note_rate,
    /// principal_and_interest, annual_percent, and upfront_in_loan, the percent of that.
    Formula (*proof)(const YearRows&);
    /// The next balance of HUD's own schedule, from that of row `before`; nullptr: it reads none.
    Formula (*hud_balance)(int before) = nullptr;
};

/// By their names in a program's file.
[[nodiscard]] FeeMethods fee_methods();

} // namespace quoin
