# The example community: a buyer who expects to move, with the rate fixed for thirty, seven or five years.
$ quoin quote ../../examples/oxbarrow-meadow/buyers/moves-again.json
The price of a home, and its month
Oxbarrow Meadow, Tarnwick Builders
Burdock (two-story, 2,242 sq ft), elevation Field, lot 6, for Buyer 5
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 14 May 2027
prepared by Sales desk, Oxbarrow Meadow

  Burdock, base price                                                                   $439,900.00
  Elevation Field                                                                             $0.00
  Lot 6, premium                                                                          $9,500.00

  Garage
    Third garage bay *                                                                   $18,600.00
        Takes ten feet of side yard. The drive widens only in front of the house;
        the rest is the wider-drive line.

  Great room and dining
    Main-floor flooring: Engineered oak, 5-inch                   655 sq ft x $8.80       $5,764.00

  Kitchen
    Kitchen countertops: Granite                              33 linear ft x $88.00       $2,904.00
    Larger island *                                                                       $4,200.00
        Its top is in this price, in the counter that you choose. Laminate has no
        seamless sheet so wide.
    Backsplash: Glass and stone tile                              47 sq ft x $28.00       $1,316.00
                                                              ---------------------  --------------
  Contract price                                                                        $482,184.00

Still to choose, at no cost
  Outside and structure: Exterior colors (else Oat, white trim, green door)
  Entry and stairs: Wall color (else Chalk white)
  Kitchen: Cabinet pulls (else Brushed nickel)
  Baths: Finish of the bath fittings (else Chrome)

Incentives
  Winter start towards closing costs: $7,500.00
  Winter start: Structural options signed within 21 days of the contract, so that the foundation
    goes in before spring.

Deposits, part of the cash needed
  earnest money, at contract                 $5,000.00
  share of options, at their selection      $13,896.00
  Earnest money at contract. Option money when the option is signed; it is not paid back once the
  work is ordered.

The month
                                                                         Fixed,
                                                                      first two
                               Fixed for  Fixed for 7  Fixed for 5        years
                                30 years        years        years  bought down
  principal and interest       $2,556.97    $2,523.55    $2,457.29    $2,556.97
  mortgage insurance              $71.72       $71.72       $71.72       $71.72
  property tax                   $548.51      $548.51      $548.51      $548.51
  homeowner's insurance          $110.90      $110.90      $110.90      $110.90
  association dues                $64.50       $64.50       $64.50       $64.50
  district charges                $32.45       $32.45       $32.45       $32.45
                             -----------  -----------  -----------  -----------
  a month, settled             $3,385.05    $3,351.63    $3,285.37    $3,385.05
  a month, tax on land only    $2,935.75    $2,902.33    $2,836.07    $2,935.75
  year 1, bought down                  -            -            -    $2,874.43
  year 2, bought down                  -            -            -    $3,123.16
  at the highest rate                  -    $4,572.56    $4,547.79            -

  note rate                      6.375 %      6.250 %      6.000 %      6.375 %
  APR                            6.508 %       6.62 %      6.578 %      6.521 %
  points                          -0.250        0.000        0.000       -0.250
  term                          30 years     30 years     30 years     30 years
  rate lock                     180 days     180 days     180 days     180 days
  down payment                $72,328.00   $72,328.00   $72,328.00   $72,328.00
  down, of the price             15.00 %      15.00 %      15.00 %      15.00 %
  LTV                            85.00 %      85.00 %      85.00 %      85.00 %
  highest rate                     fixed     11.250 %     11.000 %        fixed

Cash
                                                                        Fixed,
                                                                     first two
                              Fixed for  Fixed for 7  Fixed for 5        years
                               30 years        years        years  bought down
  down payment               $72,328.00   $72,328.00   $72,328.00   $72,328.00
  points (credit if minus)   -$1,024.64        $0.00        $0.00   -$1,024.64
  closing costs               $4,514.24    $4,514.24    $4,514.24    $4,514.24
  prepaid interest            $1,306.44    $1,280.88    $1,229.58    $1,306.44
  prepaid bills               $2,120.77    $2,120.77    $2,120.77    $2,120.77
  escrow, first deposit       $2,075.52    $2,075.52    $2,075.52    $2,075.52
  temporary buydown               $0.00        $0.00        $0.00    $9,270.12
  credits                    -$7,500.00   -$7,500.00   -$7,500.00   -$7,500.00
                            -----------  -----------  -----------  -----------
  cash needed                $73,820.33   $74,819.41   $74,768.11   $83,090.45
  less deposits             -$18,896.00  -$18,896.00  -$18,896.00  -$18,896.00
  left to bring              $54,924.33   $55,923.41   $55,872.11   $64,194.45

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.

Rates of 20 November 2026 from Sample lender (none: sample data), good through 18 December 2026;
they hold only when locked. They are samples, not anybody's offer.

Taxes, insurance, dues and closing costs as known for Venning County (sample figures). Interest runs
from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep
taxes, insurance and dues as they are today.

Where a rate is adjustable, its APR and totals take the index to stay where it is (comment
17(c)(1)-10 to 12 CFR 1026); it will move, and the payment with it.

* Marked work on gas, wiring, plumbing or structure follows local code, needs a permit, and is done
by a licensed trade, now or later.

For the agent: prices, and how programs work in general, are yours to explain; presenting particular
loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment
brings duties (12 CFR 1026.24).
= 0
$ quoin schedule ../../examples/oxbarrow-meadow/buyers/moves-again.json --scenario "Fixed for 5 years" --csv --worst-case | digest
payment,due,rate,paid,interest,principal,mortgage_insurance,balance
1,2027-07-01,6,2457.29,2049.28,408.01,71.72,409447.99
2,2027-08-01,6,2457.29,2047.24,410.05,71.72,409037.94
...
61,2032-07-01,8,2943.62,2542.59,401.03,71.72,380988.10
...
67,2033-01-01,9,3197.51,2842.07,355.44,71.72,378587.07
...
73,2033-07-01,10,3456.44,3139.75,316.69,71.72,376452.79
...
76,2033-10-01,10,3456.44,3131.76,324.68,0.00,375486.79
...
360,2057-06-01,11,3718.49,33.78,3684.71,0.00,0.00
360 rows: payment 64980, rate 3624, paid 1253979.82, interest 844123.82, principal 409856.00,
  mortgage_insurance 5379.00, balance 103731800.26 #73ed5b46
= 0
$ quoin schedule ../../examples/oxbarrow-meadow/buyers/moves-again.json --scenario "Fixed for 30 years" --worst-case
2> quoin: found --worst-case Fixed for 30 years
2>   expected a scenario whose rate is adjustable
2>   [payment-input]
= 1
$ quoin schedule ../../examples/oxbarrow-meadow/buyers/moves-again.json --scenario "Fixed for 7 years" --index 4.x
2> quoin: found --index 4.x
2>   expected a percent from -100 to 100, such as 4.25
2>   [payment-input]
= 1
