// The glossary: the terms that a buyer meets, each with the sentence that explains it and, where a
// regulation names it, its source.
//
//   glossary(catalogue_in(Language::english))[0].meaning
//       ->  "The price that you and the builder sign for: the home, the lot, ..."
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include <quoin/text/codes.hpp>
#include <quoin/words/catalogue.hpp>

namespace quoin {

enum class Term : std::uint8_t {
    contract_price,
    plan,
    elevation,
    lot_premium,
    option,
    package,
    allowance,
    incentive,
    decide_by,
    price_book,
    monthly_payment,
    principal_and_interest,
    property_taxes,
    homeowners_insurance,
    mortgage_insurance,
    dues,
    escrow_account,
    loan_amount,
    base_loan,
    upfront_fee,
    down_payment,
    loan_term,
    interest_rate,
    apr,
    points,
    lender_credit,
    rate_lock,
    rate_sheet,
    fixed_rate,
    adjustable_rate,
    temporary_buydown,
    extra_principal,
    cash_needed,
    cash_to_close,
    closing,
    closing_costs,
    prepaids,
    prepaid_interest,
    earnest_money,
    option_deposit,
    contribution_limit,
    appraised_value,
    ltv,
    housing_ratio,
    dti,
    residual_income,
    reserves,
    underwriting,
    credit_score,
    finance_charge,
    amount_financed,
    total_of_payments,
    tip,
    loan_estimate,
    closing_disclosure,
    loan_originator,
};
template <>
inline constexpr auto codes<Term> =
    coded<Term>({{Term::contract_price, "contract_price"},
                 {Term::plan, "plan"},
                 {Term::elevation, "elevation"},
                 {Term::lot_premium, "lot_premium"},
                 {Term::option, "option"},
                 {Term::package, "package"},
                 {Term::allowance, "allowance"},
                 {Term::incentive, "incentive"},
                 {Term::decide_by, "decide_by"},
                 {Term::price_book, "price_book"},
                 {Term::monthly_payment, "monthly_payment"},
                 {Term::principal_and_interest, "principal_and_interest"},
                 {Term::property_taxes, "property_taxes"},
                 {Term::homeowners_insurance, "homeowners_insurance"},
                 {Term::mortgage_insurance, "mortgage_insurance"},
                 {Term::dues, "dues"},
                 {Term::escrow_account, "escrow_account"},
                 {Term::loan_amount, "loan_amount"},
                 {Term::base_loan, "base_loan"},
                 {Term::upfront_fee, "upfront_fee"},
                 {Term::down_payment, "down_payment"},
                 {Term::loan_term, "loan_term"},
                 {Term::interest_rate, "interest_rate"},
                 {Term::apr, "apr"},
                 {Term::points, "points"},
                 {Term::lender_credit, "lender_credit"},
                 {Term::rate_lock, "rate_lock"},
                 {Term::rate_sheet, "rate_sheet"},
                 {Term::fixed_rate, "fixed_rate"},
                 {Term::adjustable_rate, "adjustable_rate"},
                 {Term::temporary_buydown, "temporary_buydown"},
                 {Term::extra_principal, "extra_principal"},
                 {Term::cash_needed, "cash_needed"},
                 {Term::cash_to_close, "cash_to_close"},
                 {Term::closing, "closing"},
                 {Term::closing_costs, "closing_costs"},
                 {Term::prepaids, "prepaids"},
                 {Term::prepaid_interest, "prepaid_interest"},
                 {Term::earnest_money, "earnest_money"},
                 {Term::option_deposit, "option_deposit"},
                 {Term::contribution_limit, "contribution_limit"},
                 {Term::appraised_value, "appraised_value"},
                 {Term::ltv, "ltv"},
                 {Term::housing_ratio, "housing_ratio"},
                 {Term::dti, "dti"},
                 {Term::residual_income, "residual_income"},
                 {Term::reserves, "reserves"},
                 {Term::underwriting, "underwriting"},
                 {Term::credit_score, "credit_score"},
                 {Term::finance_charge, "finance_charge"},
                 {Term::amount_financed, "amount_financed"},
                 {Term::total_of_payments, "total_of_payments"},
                 {Term::tip, "tip"},
                 {Term::loan_estimate, "loan_estimate"},
                 {Term::closing_disclosure, "closing_disclosure"},
                 {Term::loan_originator, "loan_originator"}});

struct ExplainedTerm {
    Term term;
    std::string name;
    std::string meaning;
    std::string_view source; ///< the regulation that names it; empty: common practice, no source
};

/// In the order in which a buyer meets them.
[[nodiscard]] std::vector<ExplainedTerm> glossary(const Catalogue& say);

} // namespace quoin
