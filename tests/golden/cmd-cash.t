# The cash of one loan: what it is for, when it is due, and what the credit costs.
$ quoin cash data/buyer.json --scenario "Ten percent down" --rates data/rates
$10,966.45 cash needed · $9,654.45 cash to close · $8,197.59 a month ·
  Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down
These are estimates with sample rates, as of November 24, 2026.

The cash you need
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Ten percent down: $8,197.59 a month. A short loan: interest rate 6.250%, 0.000 points, APR 6.422%,
loan term 1 year, down payment $10,312.00 (10.00%), LTV 90.00%, 60-day rate lock

Cash
  down payment                                                                        $10,312.00
  closing costs                                                                          $900.00
  prepaid interest                                                                       $273.87
  prepaid insurance and taxes                                                            $296.99
  initial escrow deposit                                                                 $383.59
  credits                                                                             -$1,200.00
                                                                  --------------  --------------
  cash needed                                                                         $10,966.45
  deposits                                                                            -$1,312.00
  cash to close                                                                        $9,654.45

When it is due
  earnest money                                                   11/24/2026           $1,000.00
  option deposit                                                  11/24/2026             $312.00
  at closing                                                      1/15/2027            $9,654.45

Closing costs
                                                                                   buyer's total
  services you can shop for                                                              $900.00
    Title and recording                                                                  $900.00

Prepaids
  interest, 17 days at $16.11 a day                                                      $273.87
  insurance, 12 months                                                                   $296.99

Escrow account: $383.59 at closing, then $127.87 a month. Its balance never drops below $255.73.
  month            paid in         bills       balance
  2/2027           $383.59         $0.00       $383.59
  3/2027           $127.87         $0.00       $511.46
  4/2027           $127.87         $0.00       $639.33
  5/2027           $127.87         $0.00       $767.20
  6/2027           $127.87       $618.72       $276.35
  7/2027           $127.87         $0.00       $404.22
  8/2027           $127.87         $0.00       $532.09
  9/2027           $127.87         $0.00       $659.96
  10/2027          $127.87         $0.00       $787.83
  11/2027          $127.87         $0.00       $915.70
  12/2027          $127.87       $618.72       $424.85
  1/2028           $127.87       $296.99       $255.73
  2/2028           $127.87         $0.00       $383.60
  property taxes and district charges, due 6/30/2027: $618.72
  property taxes and district charges, due 12/31/2027: $618.72
  homeowner's insurance, due 1/15/2028: $296.99

Credits
  used for closing costs                                                                 $900.00
  used for prepaids and escrow                                                           $300.00
  The seller and other interested parties may contribute up to 3% of the home's value. Of these
  credits, $1,200.00 counts toward that limit.

What the loan costs
  prepaid finance charge                                                                 $273.87
  amount financed                                                                     $92,534.13
  finance charge                                                                       $3,538.51
  total of payments                                                                   $97,246.51
  in 5 years: paid for the loan and its costs, as disclosed                           $97,246.51
  in 5 years: principal paid off                                                      $92,808.00
  APR                                                                                     6.422%
  total interest percentage (TIP)                                                         3.713%

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
$ quoin cash data/buyer.json --scenario "A third down" --appraised 98000 --rates data/rates
$36,254.73 cash needed · $34,942.73 cash to close · $6,015.72 a month ·
  A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
These are estimates with sample rates, as of November 24, 2026.

The cash you need
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
A third down: $6,015.72 a month. A short loan: interest rate 6.000%, 1.000 points, APR 7.739%,
loan term 1 year, down payment $35,000.00 (33.94%), LTV 69.51%, 60-day rate lock

Cash
  down payment                                                                        $35,000.00
    part of it: price above appraised value                                            $5,120.00
  points                                                                                 $681.20
  closing costs                                                                          $900.00
  prepaid interest                                                                       $192.95
  prepaid insurance and taxes                                                            $296.99
  initial escrow deposit                                                                 $383.59
  credits                                                                             -$1,200.00
                                                                  --------------  --------------
  cash needed                                                                         $36,254.73
  deposits                                                                            -$1,312.00
  cash to close                                                                       $34,942.73

When it is due
  earnest money                                                   11/24/2026           $1,000.00
  option deposit                                                  11/24/2026             $312.00
  at closing                                                      1/15/2027           $34,942.73

Closing costs
                                                                                   buyer's total
  services you can shop for                                                              $900.00
    Title and recording                                                                  $900.00

Prepaids
  interest, 17 days at $11.35 a day                                                      $192.95
  insurance, 12 months                                                                   $296.99

Escrow account: $383.59 at closing, then $127.87 a month. Its balance never drops below $255.73.
  month            paid in         bills       balance
  2/2027           $383.59         $0.00       $383.59
  3/2027           $127.87         $0.00       $511.46
  4/2027           $127.87         $0.00       $639.33
  5/2027           $127.87         $0.00       $767.20
  6/2027           $127.87       $618.72       $276.35
  7/2027           $127.87         $0.00       $404.22
  8/2027           $127.87         $0.00       $532.09
  9/2027           $127.87         $0.00       $659.96
  10/2027          $127.87         $0.00       $787.83
  11/2027          $127.87         $0.00       $915.70
  12/2027          $127.87       $618.72       $424.85
  1/2028           $127.87       $296.99       $255.73
  2/2028           $127.87         $0.00       $383.60
  property taxes and district charges, due 6/30/2027: $618.72
  property taxes and district charges, due 12/31/2027: $618.72
  homeowner's insurance, due 1/15/2028: $296.99

Credits
  used for closing costs                                                                 $900.00
  used for prepaids and escrow                                                           $300.00
  The seller and other interested parties may contribute up to 3% of the home's value. Of these
  credits, $1,200.00 counts toward that limit.

What the loan costs
  prepaid finance charge                                                                 $874.15
  amount financed                                                                     $67,245.85
  finance charge                                                                       $3,108.30
  total of payments                                                                   $72,128.30
  in 5 years: paid for the loan and its costs, as disclosed                           $72,128.30
  in 5 years: principal paid off                                                      $68,120.00
  APR                                                                                     7.739%
  total interest percentage (TIP)                                                         3.563%

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
$ quoin cash data/buyer.json --scenario "A third down" --appraised none --rates data/rates
2> quoin: found --appraised none
2>   expected an amount above zero, such as 455000
2>   [payment-input]
= 1
