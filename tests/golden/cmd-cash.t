# The cash of one loan: what it is for, when it is due, and what the credit costs.
$ quoin cash data/buyer.json --scenario "Ten percent down" --rates data/rates
The cash it takes
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
Ten percent down: $8,197.59 a month. A short loan: 6.250 % note rate, 0.000 points, APR 6.422 %, 1
year, $10,312.00 down (10.00 %), LTV 90.00 %, 60-day lock

Cash
  down payment                                                                        $10,312.00
  closing costs                                                                          $900.00
  prepaid interest                                                                       $273.87
  prepaid bills                                                                          $296.99
  escrow, first deposit                                                                  $383.59
  credits                                                                             -$1,200.00
                                                                  --------------  --------------
  cash needed                                                                         $10,966.45
  less deposits                                                                       -$1,312.00
  left to bring to the closing                                                         $9,654.45

When
  earnest money                                                   2026-11-24           $1,000.00
  share of options, at their selection                            2026-11-24             $312.00
  at closing                                                      2027-01-15           $9,654.45

Closing costs
                                                                                    buyer's sums
  services shopped for                                                                   $900.00
    Title and recording                                                                  $900.00

Prepaid at closing
  interest, 17 days of $16.11                                                            $273.87
  insurance, 12 months                                                                   $296.99

Escrow account: $383.59 at closing, $127.87 a month, never under its cushion of $255.73
  month                 in         bills       balance
  2027-02          $383.59         $0.00       $383.59
  2027-03          $127.87         $0.00       $511.46
  2027-04          $127.87         $0.00       $639.33
  2027-05          $127.87         $0.00       $767.20
  2027-06          $127.87       $618.72       $276.35
  2027-07          $127.87         $0.00       $404.22
  2027-08          $127.87         $0.00       $532.09
  2027-09          $127.87         $0.00       $659.96
  2027-10          $127.87         $0.00       $787.83
  2027-11          $127.87         $0.00       $915.70
  2027-12          $127.87       $618.72       $424.85
  2028-01          $127.87       $296.99       $255.73
  2028-02          $127.87         $0.00       $383.60
  property tax and district charges due 2027-06-30: $618.72
  property tax and district charges due 2027-12-31: $618.72
  homeowner's insurance due 2028-01-15: $296.99

Credits
  used for closing costs                                                                 $900.00
  used for prepaids and escrow                                                           $300.00
  interested parties may give 3 % of the value; $1,200.00 of it counts here

What the loan costs
  prepaid finance charge                                                                 $273.87
  amount financed                                                                     $92,534.13
  finance charge                                                                       $3,538.51
  total of payments                                                                   $97,246.51
  in five years: loan and its costs, as disclosed                                     $97,246.51
  in five years: principal paid off                                                   $92,808.00
  APR                                                                                    6.422 %
  total interest percentage                                                              3.713 %

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.

Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they
hold only when locked. They are samples, not anybody's offer.

Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs
from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep
taxes, insurance and dues as they are today.

For the agent: prices, and how programs work in general, are yours to explain; presenting particular
loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment
brings duties (12 CFR 1026.24).
= 0
$ quoin cash data/buyer.json --scenario "A third down" --appraised 98000 --rates data/rates
The cash it takes
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
A third down: $6,015.72 a month. A short loan: 6.000 % note rate, 1.000 points, APR 7.739 %, 1
year, $35,000.00 down (33.94 %), LTV 69.51 %, 60-day lock

Cash
  down payment                                                                        $35,000.00
    of it, because the appraisal is under the price                                    $5,120.00
  points (credit if minus)                                                               $681.20
  closing costs                                                                          $900.00
  prepaid interest                                                                       $192.95
  prepaid bills                                                                          $296.99
  escrow, first deposit                                                                  $383.59
  credits                                                                             -$1,200.00
                                                                  --------------  --------------
  cash needed                                                                         $36,254.73
  less deposits                                                                       -$1,312.00
  left to bring to the closing                                                        $34,942.73

When
  earnest money                                                   2026-11-24           $1,000.00
  share of options, at their selection                            2026-11-24             $312.00
  at closing                                                      2027-01-15          $34,942.73

Closing costs
                                                                                    buyer's sums
  services shopped for                                                                   $900.00
    Title and recording                                                                  $900.00

Prepaid at closing
  interest, 17 days of $11.35                                                            $192.95
  insurance, 12 months                                                                   $296.99

Escrow account: $383.59 at closing, $127.87 a month, never under its cushion of $255.73
  month                 in         bills       balance
  2027-02          $383.59         $0.00       $383.59
  2027-03          $127.87         $0.00       $511.46
  2027-04          $127.87         $0.00       $639.33
  2027-05          $127.87         $0.00       $767.20
  2027-06          $127.87       $618.72       $276.35
  2027-07          $127.87         $0.00       $404.22
  2027-08          $127.87         $0.00       $532.09
  2027-09          $127.87         $0.00       $659.96
  2027-10          $127.87         $0.00       $787.83
  2027-11          $127.87         $0.00       $915.70
  2027-12          $127.87       $618.72       $424.85
  2028-01          $127.87       $296.99       $255.73
  2028-02          $127.87         $0.00       $383.60
  property tax and district charges due 2027-06-30: $618.72
  property tax and district charges due 2027-12-31: $618.72
  homeowner's insurance due 2028-01-15: $296.99

Credits
  used for closing costs                                                                 $900.00
  used for prepaids and escrow                                                           $300.00
  interested parties may give 3 % of the value; $1,200.00 of it counts here

What the loan costs
  prepaid finance charge                                                                 $874.15
  amount financed                                                                     $67,245.85
  finance charge                                                                       $3,108.30
  total of payments                                                                   $72,128.30
  in five years: loan and its costs, as disclosed                                     $72,128.30
  in five years: principal paid off                                                   $68,120.00
  APR                                                                                    7.739 %
  total interest percentage                                                              3.563 %

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.

Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they
hold only when locked. They are samples, not anybody's offer.

Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs
from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep
taxes, insurance and dues as they are today.

For the agent: prices, and how programs work in general, are yours to explain; presenting particular
loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment
brings duties (12 CFR 1026.24).
= 0
$ quoin cash data/buyer.json --scenario "A third down" --appraised none --rates data/rates
2> quoin: found --appraised none
2>   expected an amount above zero, such as 455000
2>   [payment-input]
= 1
