# The glossary: each term, the sentence that explains it, and the regulation that names it.
$ quoin terms
What the words mean
Each term as quoin uses it, with the regulation that names it.

contract price
  The price that you and the builder sign for: the home, the lot, your options, less any
  discounts.
  Source: 12 CFR 1026.37(a)(7)

plan
  The floor plan of a home: its rooms, its size and what it costs before the lot and the options.
  Common practice, no source.

elevation
  The look of the front of a home. One plan can be built with several.
  Common practice, no source.

lot premium
  What a lot costs on top of the price of the plan, for its view, size or place.
  Common practice, no source.

option
  Something you can add to the home or change in it, for a price.
  Common practice, no source.

package
  Several options sold together at one price.
  Common practice, no source.

allowance
  An amount that the price already includes for something you pick later. You pay what goes over
  it.
  Common practice, no source.

incentive
  Money or a discount from the builder, often with conditions on how you may use it.
  Common practice, no source.

decide by
  The last day to choose an option before that part of the home is built.
  Common practice, no source.

price book
  The builder's list of plans, lots and options with their prices, good through the day it names.
  Common practice, no source.

monthly payment
  All you pay for the home each month: the loan, mortgage insurance, taxes, homeowner's insurance
  and dues.
  Source: 12 CFR 1026.37(c)

principal and interest
  The part of the payment that goes to the loan itself. Principal pays down what you owe; interest
  is the cost of borrowing.
  Source: 12 CFR 1026.37(c)(2)(i)

property taxes
  Taxes that the county and other local bodies charge each year on the value of the land and the
  home.
  Source: 12 CFR 1026.37(c)(4)

homeowner's insurance
  Insurance against fire, storms and other damage to the home. Lenders require it.
  Source: 12 CFR 1026.37(c)(4)

mortgage insurance
  Insurance that protects the lender if a loan is not repaid. You pay for it, most often when you
  put less than 20% down.
  Source: 12 CFR 1026.37(c)(2)(ii)

HOA dues
  What the homeowners' association charges for shared places and services.
  Common practice, no source.

escrow account
  An account the lender keeps. It collects part of your taxes and insurance each month and pays
  those bills for you.
  Source: 12 CFR 1024.17(b)

loan amount
  What you borrow, with any fee that is added to the loan.
  Source: 12 CFR 1026.37(b)(1)

base loan amount
  What you borrow before a fee is added to the loan.
  Common practice, no source.

upfront fee
  A fee that a government program charges once, at closing: in cash or added to the loan.
  Source: 24 CFR 203.284, 38 USC 3729, 7 CFR 3555.107

down payment
  The part of the price that you pay yourself and do not borrow.
  Source: 12 CFR 1026.37(h)(1)(iii)

loan term
  How long you have to pay the loan back.
  Source: 12 CFR 1026.37(a)(8)

interest rate
  The yearly price of borrowing, in percent of what you owe. It does not include fees.
  Source: 12 CFR 1026.37(b)(2)

APR
  Annual percentage rate: the interest rate with most of the loan's fees counted in. Use it to
  compare loans.
  Source: 12 CFR 1026.22

points
  Money you pay at closing for a lower rate. One point is 1% of the loan.
  Source: 12 CFR 1026.37(f)(1)(i)

lender credit
  Money the lender gives toward your closing costs because you take a higher rate.
  Source: 12 CFR 1026.37(g)(6)(ii)

rate lock
  The lender's promise to keep a rate for a number of days. Until you have a lock, the rate can
  change.
  Source: 12 CFR 1026.37(a)(13)

rate sheet
  The lender's list of rates and points for one day.
  Common practice, no source.

fixed rate
  A rate that stays the same for the whole loan.
  Source: 12 CFR 1026.37(a)(10)

adjustable rate
  A rate that can change after the first years, up to a limit. The payment changes with it.
  Source: 12 CFR 1026.37(a)(10)

temporary buydown
  Money set aside at closing that lowers your payments for the first one to three years. The loan
  keeps its full rate.
  Source: 12 CFR 1026, comment 17(c)(1)-3

extra principal
  Money you choose to pay on top of the payment. It pays the loan off sooner.
  Common practice, no source.

cash needed
  All the cash you pay from the first deposit through closing.
  Common practice, no source.

cash to close
  The cash you still bring to closing, after your deposits and credits are counted.
  Source: 12 CFR 1026.37(h)

closing
  The day you sign the loan papers, pay what is due and get the home.
  Common practice, no source.

closing costs
  What lenders, title companies and the government charge to make the loan and record the sale.
  Source: 12 CFR 1026.37(g)

prepaids
  Costs of owning the home that you pay ahead at closing, such as the first year of insurance.
  Source: 12 CFR 1026.37(g)(2)

prepaid interest
  Interest from the day of closing to the end of that month.
  Source: 12 CFR 1026.37(g)(2)(iii)

earnest money
  A deposit you pay when you sign the contract. It counts toward your cash at closing.
  Source: 12 CFR 1026.37(h)(1)(iv)

option deposit
  A deposit the builder asks for the options you choose. It counts toward your cash at closing.
  Common practice, no source.

limit on contributions
  The most that the builder and others with an interest in the sale may pay of your costs.
  Common practice, no source.

appraised value
  What a licensed appraiser says the home is worth. Lenders lend on this or on the price,
  whichever is less.
  Source: 12 CFR 1026.37(a)(7)

loan-to-value (LTV)
  The loan as a percent of the home's value. The lower it is, the less risk the lender takes.
  Common practice, no source.

housing ratio
  Your monthly payment as a percent of your monthly income before taxes.
  Common practice, no source.

debt-to-income ratio (DTI)
  Your monthly payment plus the payments on your other debts, as a percent of your monthly income
  before taxes.
  Source: 12 CFR 1026.43(c)(7)

residual income
  What is left to live on each month after taxes, debts, the monthly payment and utilities.
  Source: 38 CFR 36.4340(e)

reserves
  Savings you still have after closing, counted in months of the payment.
  Common practice, no source.

underwriting
  The lender's check of your income, debts, credit and the home: by software (automated) or by a
  person (manual).
  Common practice, no source.

credit score
  A number that sums up how you have paid your debts. Lenders use it to set rates.
  Common practice, no source.

finance charge
  What the loan costs in dollars over its whole life: the interest and the fees that federal rules
  count with it.
  Source: 12 CFR 1026.4

amount financed
  The loan amount less the loan fees you pay up front.
  Source: 12 CFR 1026.18(b)

total of payments
  All you will have paid in principal, interest, mortgage insurance and loan costs if you make
  every payment as scheduled.
  Source: 12 CFR 1026.38(o)(1)

total interest percentage (TIP)
  All the interest you will pay over the loan, as a percent of the loan amount.
  Source: 12 CFR 1026.37(l)(3)

Loan Estimate
  A federal form with the terms and costs of a loan. The lender sends it within three business
  days after you apply.
  Source: 12 CFR 1026.37

Closing Disclosure
  A federal form with the final terms and costs. You get it at least three business days before
  closing.
  Source: 12 CFR 1026.38

loan originator
  A licensed or registered person who takes loan applications and offers loan terms.
  Source: 12 CFR 1008.23
= 0
$ quoin terms --json | digest
{
  "terms": [
    {
      "term": "contract_price", "name": "contract price"
      "meaning": "The price that you and the builder sign for: the home, the ..." 97 letters #a44b73e2
      "source": "12 CFR 1026.37(a)(7)"
    }
    {
      "term": "plan", "name": "plan"
      "meaning": "The floor plan of a home: its rooms, its size and what it c..." 95 letters #8dc53e5c
      "source": ""
    }
    ...
    {
      "term": "loan_originator", "name": "loan originator"
      "meaning": "A licensed or registered person who takes loan applications..." 82 letters #060a3b03
      "source": "12 CFR 1008.23"
    }
    56 rows #1e9895b0
  ]
}
340 lines #84729343
= 0
$ quoin terms --help
What the words mean, with the regulations that name them
Usage: quoin terms [OPTIONS]

Options:
  -h,--help                   Print this help message and exit

Example:
  quoin terms --language es

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
