# The loans side by side, with the catch in each and no verdict.
$ quoin compare data/buyer.json --rates data/rates
$8,197.59 a month · $10,966.45 cash needed ·
  Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down
$6,015.72 a month · $36,254.73 cash needed · -$2,181.87 a month ·
  +$25,288.28 cash needed against Ten percent down ·
  A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
These are estimates with sample rates, as of November 24, 2026.

Loans side by side for one home
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Contract price: $103,120.00

Monthly payment
                            Ten percent      A third
                                   down         down
  principal and interest      $7,998.32    $5,862.85
  mortgage insurance             $46.40        $0.00
  property taxes                $103.12      $103.12
  homeowner's insurance          $24.75       $24.75
  HOA dues                       $25.00       $25.00
                            -----------  -----------
  monthly payment             $8,197.59    $6,015.72

  interest rate                  6.250%       6.000%
  APR                            6.422%       7.739%
  points                          0.000        1.000
  loan term                      1 year       1 year
  rate lock                     60 days      60 days
  down payment               $10,312.00   $35,000.00
  down payment, % of price       10.00%       33.94%
  loan-to-value (LTV)            90.00%       66.06%

Loan
                               Ten percent      A third
                                      down         down
  contract price               $103,120.00  $103,120.00
  down payment                  $10,312.00   $35,000.00
  base loan amount              $92,808.00   $68,120.00
  loan amount                   $92,808.00   $68,120.00
  mortgage insurance                $46.40         none
  insurance rate, yearly             0.60%         none
  last payment with insurance       4/2027         none
  if you ask at 80% LTV             4/2027            -

Cash needed and cash to close
                               Ten percent      A third
                                      down         down
  down payment                  $10,312.00   $35,000.00
  points                             $0.00      $681.20
  closing costs                    $900.00      $900.00
  prepaid interest                 $273.87      $192.95
  prepaid insurance and taxes      $296.99      $296.99
  initial escrow deposit           $383.59      $383.59
  credits                       -$1,200.00   -$1,200.00
                               -----------  -----------
  cash needed                   $10,966.45   $36,254.73
  deposits                      -$1,312.00   -$1,312.00
  cash to close                  $9,654.45   $34,942.73

Over the years
                            Ten percent      A third
                                   down         down
  total paid in 5 years     $108,873.53  $108,443.32
  balance after 5 years           $0.00        $0.00
  balance after 10 years          $0.00        $0.00
  total interest              $3,171.84    $2,234.15
  total paid over the loan  $108,873.53  $108,443.32
  number of payments                 12           12

Break-even on points
  A third down: points lower the rate from 6.250% to 6.000%. They cost $673.04 more in cash and
    save $7.83 a month. They never break even.

Which loan costs less, and when
  Cost here means cash, loan payments and mortgage insurance so far, plus the balance still owed.
  Ten percent down vs. A third down: Ten percent down costs less through payment 4; A third down
    costs less from payment 5 on.

The catch in each program
  A short loan: It is invented, for transcripts only.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
