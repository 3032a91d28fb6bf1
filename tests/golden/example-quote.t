# The example community: a buyer short of cash, four ways to pay.
$ quoin quote ../../examples/oxbarrow-meadow/buyers/short-of-cash.json
$395,725.00 · $3,131.71 a month · $16,214.69 cash needed ·
  FHA, 3.5% down: 6.000% (6.742% APR), 30 years, $13,851.00 down
$395,725.00 · $3,074.84 a month · $22,499.06 cash needed ·
  FHA, all available cash: 6.000% (6.693% APR), 30 years, $20,152.00 down
$395,725.00 · $3,172.77 a month · $2,418.65 cash needed ·
  USDA, nothing down: 6.125% (6.603% APR), 30 years, $0.00 down
$395,725.00 · $3,550.09 a month · $14,766.73 cash needed ·
  Conventional, 3% down: 6.500% (7.817% APR), 30 years, $11,872.00 down
These are estimates with sample rates, as of November 24, 2026.

Home price and monthly payment
Oxbarrow Meadow by Tarnwick Builders
Sorrel plan (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 20, 2027
Prepared by Sales desk, Oxbarrow Meadow

  Sorrel plan, base price                                                           $389,900.00
  Elevation Field                                                                         $0.00
  Lot 4 premium                                                                       $4,500.00

  Outside and structure
    Exterior colors: Barn red, cream trim, black door                                 no charge
        Homes next to each other cannot have the same scheme. Whoever signs first
        keeps it.

  Garage
    Garage door opener                                                                  $520.00
        You need one for each door: one for the two-car garage, two with a third
        bay. The outlet is included either way.

  Great room and dining
    Main-floor flooring: Vinyl plank                          540 sq ft x $3.25       $1,755.00

  Kitchen
    Cabinet pulls: Black                                                              no charge

  Basement
    Rough plumbing for a bath *                                                       $1,350.00
        It costs little now. After the slab is poured, it takes a saw and a
        jackhammer.

  Yard and driveway
    Leave out the lawn                                                               -$2,300.00
        The credit is what the builder saves, not what a lawn would cost you. The
        association requires grass within one growing season.
                                                              -----------------  --------------
  Contract price                                                                    $395,725.00

Still to choose, at no charge
  Entry and stairs: Wall color (if you do not choose: Chalk white)
  Baths: Finish of the bath fittings (if you do not choose: Chrome)

Incentives
  Closing cost credit with the named lender: $5,848.50 toward closing costs
  Closing cost credit with the named lender: Paid only with a loan from the lender named here.
    You may choose any lender, and the price of the home stays the same.
  You get this incentive only with a loan from Sample lender. You may choose any lender, but
    with another one you give the incentive up.

Deposits (part of the cash needed)
  earnest money, at contract                 $5,000.00
  option deposit, at selection                 $331.25
  Earnest money is due when you sign the contract. The option deposit is due when you sign for the
  option. You do not get it back once the work is ordered.

Monthly payment
                                                 FHA, all         USDA,
                                  FHA, 3.5%     available       nothing  Conventional,
                                       down          cash          down        3% down
  principal and interest          $2,329.59     $2,291.15     $2,428.75      $2,426.21
  mortgage insurance                $174.05       $155.62       $115.95        $495.81
  property taxes                    $444.00       $444.00       $444.00        $444.00
  homeowner's insurance              $91.02        $91.02        $91.02         $91.02
  HOA dues                           $64.50        $64.50        $64.50         $64.50
  district charges                   $28.55        $28.55        $28.55         $28.55
                               ------------  ------------  ------------  -------------
  monthly payment, full taxes     $3,131.71     $3,074.84     $3,172.77      $3,550.09
  at first, land-only taxes       $2,769.36     $2,712.49     $2,810.42      $3,187.74

  interest rate                      6.000%        6.000%        6.125%         6.500%
  APR                                6.742%        6.693%        6.603%         7.817%
  points                       0.125 credit  0.125 credit  0.125 credit          0.000
  loan term                        30 years      30 years      30 years       30 years
  rate lock                        180 days      180 days      180 days       180 days
  down payment                   $13,851.00    $20,152.00         $0.00     $11,872.00
  down payment, % of price            3.50%         5.09%         0.00%          3.00%
  loan-to-value (LTV)                96.50%        94.91%       100.00%         97.00%

Cash needed and cash to close
                                               FHA, all        USDA,
                                 FHA, 3.5%    available      nothing  Conventional,
                                      down         cash         down        3% down
  down payment                  $13,851.00   $20,152.00        $0.00     $11,872.00
  upfront fee in cash                $0.80        $0.53        $0.22          $0.00
  points                                 -            -            -          $0.00
  lender credit                   -$485.70     -$477.68     -$499.65              -
  closing costs                  $4,475.90    $4,464.36    $4,506.39      $4,467.44
  prepaid interest                 $777.12      $764.28      $816.12        $831.72
  prepaid insurance and taxes    $1,753.41    $1,753.41    $1,753.41      $1,753.41
  initial escrow deposit         $1,690.66    $1,690.66    $1,690.66      $1,690.66
  credits                       -$5,848.50   -$5,848.50   -$5,848.50     -$5,848.50
                               -----------  -----------  -----------  -------------
  cash needed                   $16,214.69   $22,499.06    $2,418.65     $14,766.73
  deposits                      -$5,331.25   -$5,331.25   -$5,331.25     -$5,331.25
  cash to close                 $10,883.44   $17,167.81            -      $9,435.48
  cash back at closing                   -            -    $2,912.60              -

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Sample lender (license: none, sample data), dated November 20, 2026 and good through
December 18, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Venning County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

* Marked items involve gas, electric, plumbing or structural work. That work must follow local code,
needs a permit and must be done by a licensed trade, now or later.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
