// The glossary, out of a catalogue and the sources of its terms.
#include "glossary.hpp"

namespace quoin {
namespace {

/// Where a regulation names a term or says what it is.
std::string_view source_of(Term term) {
    switch (term) {
    case Term::homeowners_insurance:
    case Term::property_taxes:
        return "12 CFR 1026.37(c)(4)";
    case Term::principal_and_interest:
        return "12 CFR 1026.37(c)(2)(i)";
    case Term::mortgage_insurance:
        return "12 CFR 1026.37(c)(2)(ii)";
    case Term::monthly_payment:
        return "12 CFR 1026.37(c)";
    case Term::escrow_account:
        return "12 CFR 1024.17(b)";
    case Term::loan_amount:
        return "12 CFR 1026.37(b)(1)";
    case Term::upfront_fee:
        return "24 CFR 203.284, 38 USC 3729, 7 CFR 3555.107";
    case Term::down_payment:
        return "12 CFR 1026.37(h)(1)(iii)";
    case Term::loan_term:
        return "12 CFR 1026.37(a)(8)";
    case Term::interest_rate:
        return "12 CFR 1026.37(b)(2)";
    case Term::apr:
        return "12 CFR 1026.22";
    case Term::points:
        return "12 CFR 1026.37(f)(1)(i)";
    case Term::lender_credit:
        return "12 CFR 1026.37(g)(6)(ii)";
    case Term::rate_lock:
        return "12 CFR 1026.37(a)(13)";
    case Term::fixed_rate:
    case Term::adjustable_rate:
        return "12 CFR 1026.37(a)(10)";
    case Term::temporary_buydown:
        return "12 CFR 1026, comment 17(c)(1)-3";
    case Term::cash_to_close:
        return "12 CFR 1026.37(h)";
    case Term::closing_costs:
        return "12 CFR 1026.37(g)";
    case Term::prepaids:
        return "12 CFR 1026.37(g)(2)";
    case Term::prepaid_interest:
        return "12 CFR 1026.37(g)(2)(iii)";
    case Term::earnest_money:
        return "12 CFR 1026.37(h)(1)(iv)";
    case Term::contract_price:
    case Term::appraised_value:
        return "12 CFR 1026.37(a)(7)";
    case Term::dti:
        return "12 CFR 1026.43(c)(7)";
    case Term::residual_income:
        return "38 CFR 36.4340(e)";
    case Term::finance_charge:
        return "12 CFR 1026.4";
    case Term::amount_financed:
        return "12 CFR 1026.18(b)";
    case Term::total_of_payments:
        return "12 CFR 1026.38(o)(1)";
    case Term::tip:
        return "12 CFR 1026.37(l)(3)";
    case Term::loan_estimate:
        return "12 CFR 1026.37";
    case Term::closing_disclosure:
        return "12 CFR 1026.38";
    case Term::loan_originator:
        return "12 CFR 1008.23";
    case Term::plan:
    case Term::elevation:
    case Term::lot_premium:
    case Term::option:
    case Term::package:
    case Term::allowance:
    case Term::incentive:
    case Term::decide_by:
    case Term::price_book:
    case Term::dues:
    case Term::base_loan:
    case Term::rate_sheet:
    case Term::extra_principal:
    case Term::cash_needed:
    case Term::closing:
    case Term::option_deposit:
    case Term::contribution_limit:
    case Term::ltv:
    case Term::housing_ratio:
    case Term::reserves:
    case Term::underwriting:
    case Term::credit_score:
        return {};
    }
    return {};
}

} // namespace

std::vector<ExplainedTerm> glossary(const Catalogue& say) {
    std::vector<ExplainedTerm> terms;
    for (const auto& term : codes<Term>) {
        terms.push_back({term.meaning, say.glossary.name(term.meaning),
                         say.glossary.meaning(term.meaning), source_of(term.meaning)});
    }
    return terms;
}

} // namespace quoin
