# The example community: a buyer short of cash, four ways to pay.
$ quoin quote ../../examples/oxbarrow-meadow/buyers/short-of-cash.json
The price of a home, and its month
Oxbarrow Meadow, Tarnwick Builders
Sorrel (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 20 May 2027
prepared by Sales desk, Oxbarrow Meadow

  Sorrel, base price                                                                $389,900.00
  Elevation Field                                                                         $0.00
  Lot 4, premium                                                                      $4,500.00

  Outside and structure
    Exterior colors: Barn red, cream trim, black door                                   no cost
        Neighbors on either side may not have the same scheme; the one signed first
        keeps it.

  Garage
    Garage door opener                                                                  $520.00
        One for each door: one for the two-car garage, two with a third bay. The
        outlet is there in any case.

  Great room and dining
    Main-floor flooring: Vinyl plank                          540 sq ft x $3.25       $1,755.00

  Kitchen
    Cabinet pulls: Black                                                                no cost

  Basement
    Rough plumbing for a bath *                                                       $1,350.00
        Cheap now; after the slab is poured it is a saw and a jackhammer.

  Grounds
    Leave out the lawn                                                               -$2,300.00
        The credit is what the builder saves, not what a lawn costs you, and the
        association wants grass within one growing season.
                                                              -----------------  --------------
  Contract price                                                                    $395,725.00

Still to choose, at no cost
  Entry and stairs: Wall color (else Chalk white)
  Baths: Finish of the bath fittings (else Chrome)

Incentives
  Closing cost credit with the named lender towards closing costs: $5,848.50
  Closing cost credit with the named lender: Paid only with a loan from the lender named here.
    The buyer may choose any lender, at the same house price.
  This incentive is given only with a loan from Sample lender; you may choose any lender, and
    then go without it.

Deposits, part of the cash needed
  earnest money, at contract                 $5,000.00
  share of options, at their selection         $331.25
  Earnest money at contract. Option money when the option is signed; it is not paid back once the
  work is ordered.

The month
                                             FHA, all        USDA,
                              FHA, 3.5 %     the cash      nothing  Conventional,
                                    down     there is         down       3 % down
  principal and interest       $2,329.59    $2,291.15    $2,428.75      $2,426.21
  mortgage insurance             $174.05      $155.62      $115.95        $495.81
  property tax                   $444.00      $444.00      $444.00        $444.00
  homeowner's insurance           $91.02       $91.02       $91.02         $91.02
  association dues                $64.50       $64.50       $64.50         $64.50
  district charges                $28.55       $28.55       $28.55         $28.55
                             -----------  -----------  -----------  -------------
  a month, settled             $3,131.71    $3,074.84    $3,172.77      $3,550.09
  a month, tax on land only    $2,769.36    $2,712.49    $2,810.42      $3,187.74

  note rate                      6.000 %      6.000 %      6.125 %        6.500 %
  APR                            6.742 %      6.693 %      6.603 %        7.817 %
  points                          -0.125       -0.125       -0.125          0.000
  term                          30 years     30 years     30 years       30 years
  rate lock                     180 days     180 days     180 days       180 days
  down payment                $13,851.00   $20,152.00        $0.00     $11,872.00
  down, of the price              3.50 %       5.09 %       0.00 %         3.00 %
  LTV                            96.50 %      94.91 %     100.00 %        97.00 %

Cash
                                               FHA, all        USDA,
                                FHA, 3.5 %     the cash      nothing  Conventional,
                                      down     there is         down       3 % down
  down payment                  $13,851.00   $20,152.00        $0.00     $11,872.00
  upfront fee, in cash               $0.80        $0.53        $0.22          $0.00
  points (credit if minus)        -$485.70     -$477.68     -$499.65          $0.00
  closing costs                  $4,475.90    $4,464.36    $4,506.39      $4,467.44
  prepaid interest                 $777.12      $764.28      $816.12        $831.72
  prepaid bills                  $1,753.41    $1,753.41    $1,753.41      $1,753.41
  escrow, first deposit          $1,690.66    $1,690.66    $1,690.66      $1,690.66
  credits                       -$5,848.50   -$5,848.50   -$5,848.50     -$5,848.50
                               -----------  -----------  -----------  -------------
  cash needed                   $16,214.69   $22,499.06    $2,418.65     $14,766.73
  less deposits                 -$5,331.25   -$5,331.25   -$5,331.25     -$5,331.25
  left to bring (minus: back)   $10,883.44   $17,167.81   -$2,912.60      $9,435.48

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.

Rates of 20 November 2026 from Sample lender (none: sample data), good through 18 December 2026;
they hold only when locked. They are samples, not anybody's offer.

Taxes, insurance, dues and closing costs as known for Venning County (sample figures). Interest runs
from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep
taxes, insurance and dues as they are today.

* Marked work on gas, wiring, plumbing or structure follows local code, needs a permit, and is done
by a licensed trade, now or later.

For the agent: prices, and how programs work in general, are yours to explain; presenting particular
loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment
brings duties (12 CFR 1026.24).
= 0
