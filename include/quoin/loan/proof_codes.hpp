// What a proof of figures names by code: the figures, the rules and sources they rest on, and its
// parts. What is said of each code is in the words (src/words/recheck.hpp).
#pragma once

#include <cstddef>
#include <cstdint>

#include <quoin/text/codes.hpp>

namespace quoin {

/// A figure that needs no name beside its code. Where it is one of two ways to come to the same
/// figure, its id is the other's.
enum class FigureCode : std::uint8_t {
    // The home.
    contract_price,
    deposits,
    deposits_paid, ///< deposits, as stated
    earnest_percent,
    earnest_money,
    structural_options,
    other_options,
    structural_share,
    other_share,
    option_deposit,
    // The loan.
    value,
    value_by_price, ///< value, before any appraisal
    appraised_value,
    down_asked,
    down_percent_asked, ///< down_asked, of the value
    cash_there_is,
    base_loan,
    down_payment,
    ltv,
    maximum_ltv,
    most_lent,
    loan_limit,
    single_premium_percent, ///< upfront_percent
    single_premium,         ///< upfront_fee
    financed_fee,
    financed_premium, ///< financed_fee
    loan,
    loan_with_fee, ///< loan, a share of which is the fee
    gross_ltv,
    note_rate,
    points_percent,
    points_of_rung,
    term,
    principal_and_interest,
    margin,
    cap_first,
    cap_later,
    cap_life,
    fully_indexed,
    // The month.
    upfront_in_loan,
    insured_until_percent,
    insured_payments,
    assessed_percent,
    assessed,
    taxable,
    land_percent,
    land_value,
    dwelling_percent,
    dwelling_value,
    homeowner_rate,
    dues,
    month,
    first_year_month,
    // Closing costs, prepaids and escrow.
    closing_costs,
    per_diem_year,
    prepaid_days,
    per_diem,
    prepaid_interest,
    prepaid_insurance_months,
    prepaid_insurance,
    prepaid_bills,
    escrow_yearly,
    escrow_monthly,
    cushion_months,
    cushion,
    lowest_balance,
    escrow_deposit,
    // Credits and the cash to close.
    points,
    points_or_credit, ///< points
    lender_credit_lost,
    principal_reduction,
    buydown_subsidy,
    upfront_in_cash,
    premium_in_cash,       ///< upfront_in_cash
    contribution_percent,  ///< of the value
    contribution_by_price, ///< contribution_percent, of the price
    contribution_cap,
    credits,
    sellers_points,
    buyers_buydown,
    cash_needed,
    cash_to_close,
    // What the loan costs.
    prepaid_finance_charge,
    amount_financed,
    all_interest,
    all_insurance,
    finance_charge,
    total_interest_percentage,
    loan_costs,
    total_of_payments,
    disclosed_in_five_years,
    disclosed_principal_in_five_years,
    first_months,
    odd_days,
    apr,
    worth_at_apr,
};
template <>
inline constexpr auto codes<FigureCode> = coded<FigureCode>(
    {{FigureCode::contract_price, "contract_price"},
     {FigureCode::deposits, "deposits"},
     {FigureCode::deposits_paid, "deposits_paid"},
     {FigureCode::earnest_percent, "earnest_percent"},
     {FigureCode::earnest_money, "earnest_money"},
     {FigureCode::structural_options, "structural_options"},
     {FigureCode::other_options, "other_options"},
     {FigureCode::structural_share, "structural_share"},
     {FigureCode::other_share, "other_share"},
     {FigureCode::option_deposit, "option_deposit"},
     {FigureCode::value, "value"},
     {FigureCode::value_by_price, "value_by_price"},
     {FigureCode::appraised_value, "appraised_value"},
     {FigureCode::down_asked, "down_asked"},
     {FigureCode::down_percent_asked, "down_percent_asked"},
     {FigureCode::cash_there_is, "cash_there_is"},
     {FigureCode::base_loan, "base_loan"},
     {FigureCode::down_payment, "down_payment"},
     {FigureCode::ltv, "ltv"},
     {FigureCode::maximum_ltv, "maximum_ltv"},
     {FigureCode::most_lent, "most_lent"},
     {FigureCode::loan_limit, "loan_limit"},
     {FigureCode::single_premium_percent, "single_premium_percent"},
     {FigureCode::single_premium, "single_premium"},
     {FigureCode::financed_fee, "financed_fee"},
     {FigureCode::financed_premium, "financed_premium"},
     {FigureCode::loan, "loan"},
     {FigureCode::loan_with_fee, "loan_with_fee"},
     {FigureCode::gross_ltv, "gross_ltv"},
     {FigureCode::note_rate, "note_rate"},
     {FigureCode::points_percent, "points_percent"},
     {FigureCode::points_of_rung, "points_of_rung"},
     {FigureCode::term, "term"},
     {FigureCode::principal_and_interest, "principal_and_interest"},
     {FigureCode::margin, "margin"},
     {FigureCode::cap_first, "cap_first"},
     {FigureCode::cap_later, "cap_later"},
     {FigureCode::cap_life, "cap_life"},
     {FigureCode::fully_indexed, "fully_indexed"},
     {FigureCode::upfront_in_loan, "upfront_in_loan"},
     {FigureCode::insured_until_percent, "insured_until_percent"},
     {FigureCode::insured_payments, "insured_payments"},
     {FigureCode::assessed_percent, "assessed_percent"},
     {FigureCode::assessed, "assessed"},
     {FigureCode::taxable, "taxable"},
     {FigureCode::land_percent, "land_percent"},
     {FigureCode::land_value, "land_value"},
     {FigureCode::dwelling_percent, "dwelling_percent"},
     {FigureCode::dwelling_value, "dwelling_value"},
     {FigureCode::homeowner_rate, "homeowner_rate"},
     {FigureCode::dues, "dues"},
     {FigureCode::month, "month"},
     {FigureCode::first_year_month, "first_year_month"},
     {FigureCode::closing_costs, "closing_costs"},
     {FigureCode::per_diem_year, "per_diem_year"},
     {FigureCode::prepaid_days, "prepaid_days"},
     {FigureCode::per_diem, "per_diem"},
     {FigureCode::prepaid_interest, "prepaid_interest"},
     {FigureCode::prepaid_insurance_months, "prepaid_insurance_months"},
     {FigureCode::prepaid_insurance, "prepaid_insurance"},
     {FigureCode::prepaid_bills, "prepaid_bills"},
     {FigureCode::escrow_yearly, "escrow_yearly"},
     {FigureCode::escrow_monthly, "escrow_monthly"},
     {FigureCode::cushion_months, "cushion_months"},
     {FigureCode::cushion, "cushion"},
     {FigureCode::lowest_balance, "lowest_balance"},
     {FigureCode::escrow_deposit, "escrow_deposit"},
     {FigureCode::points, "points"},
     {FigureCode::points_or_credit, "points_or_credit"},
     {FigureCode::lender_credit_lost, "lender_credit_lost"},
     {FigureCode::principal_reduction, "principal_reduction"},
     {FigureCode::buydown_subsidy, "buydown_subsidy"},
     {FigureCode::upfront_in_cash, "upfront_in_cash"},
     {FigureCode::premium_in_cash, "premium_in_cash"},
     {FigureCode::contribution_percent, "contribution_percent"},
     {FigureCode::contribution_by_price, "contribution_by_price"},
     {FigureCode::contribution_cap, "contribution_cap"},
     {FigureCode::credits, "credits"},
     {FigureCode::sellers_points, "sellers_points"},
     {FigureCode::buyers_buydown, "buyers_buydown"},
     {FigureCode::cash_needed, "cash_needed"},
     {FigureCode::cash_to_close, "cash_to_close"},
     {FigureCode::prepaid_finance_charge, "prepaid_finance_charge"},
     {FigureCode::amount_financed, "amount_financed"},
     {FigureCode::all_interest, "all_interest"},
     {FigureCode::all_insurance, "all_insurance"},
     {FigureCode::finance_charge, "finance_charge"},
     {FigureCode::total_interest_percentage, "total_interest_percentage"},
     {FigureCode::loan_costs, "loan_costs"},
     {FigureCode::total_of_payments, "total_of_payments"},
     {FigureCode::disclosed_in_five_years, "disclosed_in_five_years"},
     {FigureCode::disclosed_principal_in_five_years, "disclosed_principal_in_five_years"},
     {FigureCode::first_months, "first_months"},
     {FigureCode::odd_days, "odd_days"},
     {FigureCode::apr, "apr"},
     {FigureCode::worth_at_apr, "worth_at_apr"}});

/// A figure of something that has a name: of the price book, a program, a place, a part of a month.
enum class NamedFigure : std::uint8_t {
    itself,
    base_price,
    elevation,
    lot_premium,
    of_loan, ///< a percent
    adjustment,
    yearly,
    monthly,
    monthly_at_first,
    credit,
};
inline constexpr std::size_t named_figure_count = 10;

/// A figure of a year, or of the months from a payment on. Its code is what its ids begin with.
enum class NumberedFigure : std::uint8_t {
    rate_from,
    payment_from,
    bought_down,
    subsidy,
    bought_down_month,
    disclosed_payment,
};
template <>
inline constexpr auto codes<NumberedFigure> =
    coded<NumberedFigure>({{NumberedFigure::rate_from, "rate_from"},
                           {NumberedFigure::payment_from, "payment_from"},
                           {NumberedFigure::bought_down, "bought_down"},
                           {NumberedFigure::subsidy, "subsidy"},
                           {NumberedFigure::bought_down_month, "bought_down_month"},
                           {NumberedFigure::disclosed_payment, "disclosed_payment"}});

/// A rule that is nobody's file's.
enum class CommonRule : std::uint8_t {
    inquiry,
    inquiry_and_price_book,
    smallest_loan, ///< that the cash covers
    quoted_rate,
    gross_ltv,
    premium_pricing,
    lender_credits,
    aggregate_analysis,
    temporary_buydown,
};
inline constexpr std::size_t common_rule_count = 9;

/// A rule of a file that has an id: a price book, a rate sheet, a program, a place.
enum class FileRule : std::uint8_t {
    price_book,
    rate_sheet,
    sheet_single_premium,
    sheet_adjustment,
    sheet_insurance,
    lender_credit_left,
    property_tax,
    land_only,
    exemption,
    levy,
    district,
    insurance,
    dues,
    closing_costs,
    escrow,
};
inline constexpr std::size_t file_rule_count = 15;

/// A source that is no publication.
enum class CommonSource : std::uint8_t {
    buyers_choice,
    stated_by_buyer,
    stated_in_inquiry,
    offered,
    rate_that_holds, ///< an APR, by the figure after it
};
inline constexpr std::size_t common_source_count = 5;

/// The parts of a proof, in their order.
enum class ProofPart : std::uint8_t {
    home,
    loan,
    month,
    closing_costs,
    prepaids,
    credits,
    cost_of_credit,
};
inline constexpr std::size_t proof_part_count = 7;

} // namespace quoin
