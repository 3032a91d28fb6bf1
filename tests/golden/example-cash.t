# The example community: an FHA buyer with an incentive, and taxes on land alone at first.
$ quoin cash ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5% down"
The cash it takes
Oxbarrow Meadow, Tarnwick Builders
Sorrel (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 20 May 2027
prepared by Sales desk, Oxbarrow Meadow
FHA, 3.5 % down: $3,131.71 a month. FHA-insured fixed: 6.000 % note rate, -0.125 points, APR
6.742 %, 30 years, $13,851.00 down (3.50 %), LTV 96.50 %, 180-day lock

Cash
  down payment                                                                        $13,851.00
  upfront fee, in cash                                                                     $0.80
  points (credit if minus)                                                              -$485.70
  closing costs                                                                        $4,475.90
  prepaid interest                                                                       $777.12
  prepaid bills                                                                        $1,753.41
  escrow, first deposit                                                                $1,690.66
  credits                                                                             -$5,848.50
                                                                  --------------  --------------
  cash needed                                                                         $16,214.69
  less deposits                                                                       -$5,331.25
  left to bring to the closing                                                        $10,883.44

When
  earnest money                                                   2026-12-05           $5,000.00
  share of options, at their selection                            2026-12-05             $331.25
  costs paid when ordered                                         2026-12-05             $767.50
  at closing                                                      2027-05-20          $10,115.94

Closing costs
                                                                                        buyer's sums
  origination                                                                              $1,195.00
    Lender's underwriting fee (finance charge)                                             $1,195.00
  services not shopped for                                                                   $873.50
    Tax service, life of loan (finance charge)                                                $84.00
    Appraisal                                                     when ordered               $675.00
    Credit report                                                 when ordered                $92.50
    Flood determination, life of loan (finance charge)                                        $22.00
  services shopped for                                                                     $1,190.00
    Settlement agent                                                                         $595.00
    Lender's title insurance                                                                 $185.00
    Title search and binder                                                                  $410.00
    Lot survey                                                    paid by the seller         $460.00
  taxes and government fees                                                                  $867.40
    Recording, deed and mortgage                                                             $168.00
    Mortgage registration tax                                                                $699.40
    Deed transfer tax                                             paid by the seller         $870.60
  other                                                                                      $350.00
    Owner's title insurance                                       paid by the seller       $1,178.89
    Association's reserve, once                                                              $350.00
    Ten-year structural warranty                                  paid by the seller         $640.00

Prepaid at closing
  interest, 12 days of $64.76                                                            $777.12
  insurance, 12 months                                                                 $1,092.20
  property tax and district charges                               due 2027-05-31         $661.21

Escrow account: $1,690.66 at closing, $563.57 a month, never under its cushion of $1,127.13
  month                 in         bills       balance
  2027-06        $1,690.66         $0.00     $1,690.66
  2027-07          $563.57         $0.00     $2,254.23
  2027-08          $563.57         $0.00     $2,817.80
  2027-09          $563.57         $0.00     $3,381.37
  2027-10          $563.57         $0.00     $3,944.94
  2027-11          $563.57     $2,835.30     $1,673.21
  2027-12          $563.57         $0.00     $2,236.78
  2028-01          $563.57         $0.00     $2,800.35
  2028-02          $563.57         $0.00     $3,363.92
  2028-03          $563.57         $0.00     $3,927.49
  2028-04          $563.57         $0.00     $4,491.06
  2028-05          $563.57     $3,927.50     $1,127.13
  2028-06          $563.57         $0.00     $1,690.70
  property tax and district charges due 2027-11-30: $2,835.30
  homeowner's insurance due 2028-05-20: $1,092.20
  property tax and district charges due 2028-05-31: $2,835.30
  It is set from the settled tax. The analysis after the first year finds $2,174.13 over, which is
  paid back.
  If the lender sets it from the land-only bills instead, it is $382.39 a month in the first year.
  The analysis after the first year finds $543.49 short and spreads it over twelve months; $226.47
  more a month.

Credits
  used for closing costs                                                               $3,990.20
  used for prepaids and escrow                                                         $1,858.30
  interested parties may give 6 % of the price; $5,848.50 of it counts here

What the loan costs
  prepaid finance charge                                                               $8,760.92
  amount financed                                                                    $379,795.08
  finance charge                                                                     $499,405.97
  total of payments                                                                  $889,919.47
  in five years: loan and its costs, as disclosed                                    $160,654.94
  in five years: principal paid off                                                   $26,987.74
  APR                                                                                    6.742 %
  total interest percentage                                                            116.038 %

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.

Rates of 20 November 2026 from Sample lender (none: sample data), good through 18 December 2026;
they hold only when locked. They are samples, not anybody's offer.

Taxes, insurance, dues and closing costs as known for Venning County (sample figures). Interest runs
from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep
taxes, insurance and dues as they are today.

For the agent: prices, and how programs work in general, are yours to explain; presenting particular
loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment
brings duties (12 CFR 1026.24).
= 0
