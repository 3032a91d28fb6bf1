// The glossary, in English.
#pragma once

#include "../glossary.hpp"

namespace quoin::english {

inline constexpr GlossaryWords glossary = {
    .title = "What the words mean",
    .about = "Each term as quoin uses it, with the regulation that names it.",
    .source = "Source: {}",
    .common_practice = "Common practice, no source.",
    .name = {{{Term::contract_price, "contract price"},
              {Term::plan, "plan"},
              {Term::elevation, "elevation"},
              {Term::lot_premium, "lot premium"},
              {Term::option, "option"},
              {Term::package, "package"},
              {Term::allowance, "allowance"},
              {Term::incentive, "incentive"},
              {Term::decide_by, "decide by"},
              {Term::price_book, "price book"},
              {Term::monthly_payment, "monthly payment"},
              {Term::principal_and_interest, "principal and interest"},
              {Term::property_taxes, "property taxes"},
              {Term::homeowners_insurance, "homeowner's insurance"},
              {Term::mortgage_insurance, "mortgage insurance"},
              {Term::dues, "HOA dues"},
              {Term::escrow_account, "escrow account"},
              {Term::loan_amount, "loan amount"},
              {Term::base_loan, "base loan amount"},
              {Term::upfront_fee, "upfront fee"},
              {Term::down_payment, "down payment"},
              {Term::loan_term, "loan term"},
              {Term::interest_rate, "interest rate"},
              {Term::apr, "APR"},
              {Term::points, "points"},
              {Term::lender_credit, "lender credit"},
              {Term::rate_lock, "rate lock"},
              {Term::rate_sheet, "rate sheet"},
              {Term::fixed_rate, "fixed rate"},
              {Term::adjustable_rate, "adjustable rate"},
              {Term::temporary_buydown, "temporary buydown"},
              {Term::extra_principal, "extra principal"},
              {Term::cash_needed, "cash needed"},
              {Term::cash_to_close, "cash to close"},
              {Term::closing, "closing"},
              {Term::closing_costs, "closing costs"},
              {Term::prepaids, "prepaids"},
              {Term::prepaid_interest, "prepaid interest"},
              {Term::earnest_money, "earnest money"},
              {Term::option_deposit, "option deposit"},
              {Term::contribution_limit, "limit on contributions"},
              {Term::appraised_value, "appraised value"},
              {Term::ltv, "loan-to-value (LTV)"},
              {Term::housing_ratio, "housing ratio"},
              {Term::dti, "debt-to-income ratio (DTI)"},
              {Term::residual_income, "residual income"},
              {Term::reserves, "reserves"},
              {Term::underwriting, "underwriting"},
              {Term::credit_score, "credit score"},
              {Term::finance_charge, "finance charge"},
              {Term::amount_financed, "amount financed"},
              {Term::total_of_payments, "total of payments"},
              {Term::tip, "total interest percentage (TIP)"},
              {Term::loan_estimate, "Loan Estimate"},
              {Term::closing_disclosure, "Closing Disclosure"},
              {Term::loan_originator, "loan originator"}}},
    .meaning =
        {{{Term::contract_price, "The price that you and the builder sign for: the home, the lot, "
                                 "your options, less any discounts."},
          {Term::plan, "The floor plan of a home: its rooms, its size and what it costs before the "
                       "lot and the options."},
          {Term::elevation, "The look of the front of a home. One plan can be built with several."},
          {Term::lot_premium,
           "What a lot costs on top of the price of the plan, for its view, size or place."},
          {Term::option, "Something you can add to the home or change in it, for a price."},
          {Term::package, "Several options sold together at one price."},
          {Term::allowance, "An amount that the price already includes for something you pick "
                            "later. You pay what goes over it."},
          {Term::incentive,
           "Money or a discount from the builder, often with conditions on how you may use it."},
          {Term::decide_by,
           "The last day to choose an option before that part of the home is built."},
          {Term::price_book, "The builder's list of plans, lots and options with their prices, "
                             "good through the day it names."},
          {Term::monthly_payment, "All you pay for the home each month: the loan, mortgage "
                                  "insurance, taxes, homeowner's insurance and dues."},
          {Term::principal_and_interest,
           "The part of the payment that goes to the loan itself. Principal pays down what you "
           "owe; interest is the cost of borrowing."},
          {Term::property_taxes, "Taxes that the county and other local bodies charge each year on "
                                 "the value of the land and the home."},
          {Term::homeowners_insurance,
           "Insurance against fire, storms and other damage to the home. Lenders require it."},
          {Term::mortgage_insurance, "Insurance that protects the lender if a loan is not repaid. "
                                     "You pay for it, most often when you put less than 20% down."},
          {Term::dues, "What the homeowners' association charges for shared places and services."},
          {Term::escrow_account, "An account the lender keeps. It collects part of your taxes and "
                                 "insurance each month and pays those bills for you."},
          {Term::loan_amount, "What you borrow, with any fee that is added to the loan."},
          {Term::base_loan, "What you borrow before a fee is added to the loan."},
          {Term::upfront_fee, "A fee that a government program charges once, at closing: in cash "
                              "or added to the loan."},
          {Term::down_payment, "The part of the price that you pay yourself and do not borrow."},
          {Term::loan_term, "How long you have to pay the loan back."},
          {Term::interest_rate,
           "The yearly price of borrowing, in percent of what you owe. It does not include fees."},
          {Term::apr, "Annual percentage rate: the interest rate with most of the loan's fees "
                      "counted in. Use it to compare loans."},
          {Term::points, "Money you pay at closing for a lower rate. One point is 1% of the loan."},
          {Term::lender_credit,
           "Money the lender gives toward your closing costs because you take a higher rate."},
          {Term::rate_lock, "The lender's promise to keep a rate for a number of days. Until you "
                            "have a lock, the rate can change."},
          {Term::rate_sheet, "The lender's list of rates and points for one day."},
          {Term::fixed_rate, "A rate that stays the same for the whole loan."},
          {Term::adjustable_rate, "A rate that can change after the first years, up to a limit. "
                                  "The payment changes with it."},
          {Term::temporary_buydown, "Money set aside at closing that lowers your payments for the "
                                    "first one to three years. The loan keeps its full rate."},
          {Term::extra_principal,
           "Money you choose to pay on top of the payment. It pays the loan off sooner."},
          {Term::cash_needed, "All the cash you pay from the first deposit through closing."},
          {Term::cash_to_close,
           "The cash you still bring to closing, after your deposits and credits are counted."},
          {Term::closing, "The day you sign the loan papers, pay what is due and get the home."},
          {Term::closing_costs, "What lenders, title companies and the government charge to make "
                                "the loan and record the sale."},
          {Term::prepaids, "Costs of owning the home that you pay ahead at closing, such as the "
                           "first year of insurance."},
          {Term::prepaid_interest, "Interest from the day of closing to the end of that month."},
          {Term::earnest_money,
           "A deposit you pay when you sign the contract. It counts toward your cash at closing."},
          {Term::option_deposit, "A deposit the builder asks for the options you choose. It counts "
                                 "toward your cash at closing."},
          {Term::contribution_limit, "The most that the builder and others with an interest in the "
                                     "sale may pay of your costs."},
          {Term::appraised_value, "What a licensed appraiser says the home is worth. Lenders lend "
                                  "on this or on the price, whichever is less."},
          {Term::ltv, "The loan as a percent of the home's value. The lower it is, the less risk "
                      "the lender takes."},
          {Term::housing_ratio,
           "Your monthly payment as a percent of your monthly income before taxes."},
          {Term::dti, "Your monthly payment plus the payments on your other debts, as a percent "
                      "of your monthly income before taxes."},
          {Term::residual_income, "What is left to live on each month after taxes, debts, the "
                                  "monthly payment and utilities."},
          {Term::reserves,
           "Savings you still have after closing, counted in months of the payment."},
          {Term::underwriting, "The lender's check of your income, debts, credit and the home: by "
                               "software (automated) or by a person (manual)."},
          {Term::credit_score,
           "A number that sums up how you have paid your debts. Lenders use it to set rates."},
          {Term::finance_charge, "What the loan costs in dollars over its whole life: the interest "
                                 "and the fees that federal rules count with it."},
          {Term::amount_financed, "The loan amount less the loan fees you pay up front."},
          {Term::total_of_payments,
           "All you will have paid in principal, interest, mortgage insurance and loan costs if "
           "you make every payment as scheduled."},
          {Term::tip,
           "All the interest you will pay over the loan, as a percent of the loan amount."},
          {Term::loan_estimate, "A federal form with the terms and costs of a loan. The lender "
                                "sends it within three business days after you apply."},
          {Term::closing_disclosure, "A federal form with the final terms and costs. You get it at "
                                     "least three business days before closing."},
          {Term::loan_originator,
           "A licensed or registered person who takes loan applications and offers loan terms."}}},
};

} // namespace quoin::english
