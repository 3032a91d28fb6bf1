# The example community: an FHA buyer with an incentive, and taxes on land alone at first.
$ quoin cash ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5% down"
$16,214.69 cash needed · $10,883.44 cash to close · $3,131.71 a month ·
  FHA, 3.5% down: 6.000% (6.742% APR), 30 years, $13,851.00 down
These are estimates with sample rates, as of November 24, 2026.

The cash you need
Oxbarrow Meadow by Tarnwick Builders
Sorrel plan (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 20, 2027
Prepared by Sales desk, Oxbarrow Meadow
FHA, 3.5% down: $3,131.71 a month. FHA, fixed rate: interest rate 6.000%, lender credit of 0.125
points, APR 6.742%, loan term 30 years, down payment $13,851.00 (3.50%), LTV 96.50%, 180-day rate
lock

Cash
  down payment                                                                        $13,851.00
  upfront fee, in cash                                                                     $0.80
  lender credit                                                                         -$485.70
  closing costs                                                                        $4,475.90
  prepaid interest                                                                       $777.12
  prepaid insurance and taxes                                                          $1,753.41
  initial escrow deposit                                                               $1,690.66
  credits                                                                             -$5,848.50
                                                                  --------------  --------------
  cash needed                                                                         $16,214.69
  deposits                                                                            -$5,331.25
  cash to close                                                                       $10,883.44

When it is due
  earnest money                                                   12/5/2026            $5,000.00
  option deposit                                                  12/5/2026              $331.25
  costs paid when ordered                                         12/5/2026              $767.50
  at closing                                                      5/20/2027           $10,115.94

Closing costs
                                                                                       buyer's total
  origination charges                                                                      $1,195.00
    Lender's underwriting fee (finance charge)                                             $1,195.00
  services you cannot shop for                                                               $873.50
    Tax service, life of loan (finance charge)                                                $84.00
    Appraisal                                                     when ordered               $675.00
    Credit report                                                 when ordered                $92.50
    Flood determination, life of loan (finance charge)                                        $22.00
  services you can shop for                                                                $1,190.00
    Settlement agent                                                                         $595.00
    Lender's title insurance                                                                 $185.00
    Title search and commitment                                                              $410.00
    Lot survey                                                    paid by the seller         $460.00
  taxes and government fees                                                                  $867.40
    Recording, deed and mortgage                                                             $168.00
    Mortgage registration tax                                                                $699.40
    Deed transfer tax                                             paid by the seller         $870.60
  other                                                                                      $350.00
    Owner's title insurance                                       paid by the seller       $1,178.89
    HOA reserve, paid once                                                                   $350.00
    10-year structural warranty                                   paid by the seller         $640.00

Prepaids
  interest, 12 days at $64.76 a day                                                      $777.12
  insurance, 12 months                                                                 $1,092.20
  property taxes and district charges                             due 5/31/2027          $661.21

Escrow account: $1,690.66 at closing, then $563.57 a month. Its balance never drops below
$1,127.13.
  month            paid in         bills       balance
  6/2027         $1,690.66         $0.00     $1,690.66
  7/2027           $563.57         $0.00     $2,254.23
  8/2027           $563.57         $0.00     $2,817.80
  9/2027           $563.57         $0.00     $3,381.37
  10/2027          $563.57         $0.00     $3,944.94
  11/2027          $563.57     $2,835.30     $1,673.21
  12/2027          $563.57         $0.00     $2,236.78
  1/2028           $563.57         $0.00     $2,800.35
  2/2028           $563.57         $0.00     $3,363.92
  3/2028           $563.57         $0.00     $3,927.49
  4/2028           $563.57         $0.00     $4,491.06
  5/2028           $563.57     $3,927.50     $1,127.13
  6/2028           $563.57         $0.00     $1,690.70
  property taxes and district charges, due 11/30/2027: $2,835.30
  homeowner's insurance, due 5/20/2028: $1,092.20
  property taxes and district charges, due 5/31/2028: $2,835.30
  These deposits are set from the full taxes, after the home is assessed. The escrow review after
  the first year finds $2,174.13 too much. You get it back.
  If the lender sets them from the first year's bills instead, such as land-only taxes, you pay
  $382.39 a month into escrow in the first year. The escrow review after the first year finds
  $543.49 missing. You make it up over the next 12 months, and you pay $226.47 more a month into
  escrow.

Credits
  used for closing costs                                                               $3,990.20
  used for prepaids and escrow                                                         $1,858.30
  The seller and other interested parties may contribute up to 6% of the price. Of these credits,
  $5,848.50 counts toward that limit.

What the loan costs
  prepaid finance charge                                                               $8,760.92
  amount financed                                                                    $379,795.08
  finance charge                                                                     $499,405.97
  total of payments                                                                  $889,919.47
  in 5 years: paid for the loan and its costs, as disclosed                          $160,654.94
  in 5 years: principal paid off                                                      $26,987.74
  APR                                                                                     6.742%
  total interest percentage (TIP)                                                       116.038%

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Sample lender (license: none, sample data), dated November 20, 2026 and good through
December 18, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Venning County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
