# The example community: a buyer who expects to move, with the rate fixed for thirty, seven or five years.
$ quoin quote ../../examples/oxbarrow-meadow/buyers/moves-again.json
$482,184.00 · $3,385.05 a month · $73,820.33 cash needed ·
  Fixed for 30 years: 6.375% (6.508% APR), 30 years, $72,328.00 down
$482,184.00 · $3,351.63 a month · $74,819.41 cash needed ·
  Fixed for 7 years: 6.250% (6.62% APR), 30 years, $72,328.00 down, adjustable after 7 years
$482,184.00 · $3,285.37 a month · $74,768.11 cash needed ·
  Fixed for 5 years: 6.000% (6.578% APR), 30 years, $72,328.00 down, adjustable after 5 years
$482,184.00 · $3,385.05 a month · $83,090.45 cash needed ·
  Fixed, first two years bought down: 6.375% (6.521% APR), 30 years, $72,328.00 down
These are estimates with sample rates, as of November 24, 2026.

Home price and monthly payment
Oxbarrow Meadow by Tarnwick Builders
Burdock plan (two-story, 2,242 sq ft), elevation Field, lot 6, for Buyer 5
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 14, 2027
Prepared by Sales desk, Oxbarrow Meadow

  Burdock plan, base price                                                              $439,900.00
  Elevation Field                                                                             $0.00
  Lot 6 premium                                                                           $9,500.00

  Garage
    Third garage bay *                                                                   $18,600.00
        It takes ten feet of side yard. The driveway gets wider only in front of the
        home. For the rest, add the wider driveway.

  Great room and dining
    Main-floor flooring: Engineered oak, 5-inch                   655 sq ft x $8.80       $5,764.00

  Kitchen
    Kitchen countertops: Granite                              33 linear ft x $88.00       $2,904.00
    Larger island *                                                                       $4,200.00
        The price includes its top, in the counter you choose. Laminate does not
        come in a sheet this wide without a seam.
    Backsplash: Glass and stone tile                              47 sq ft x $28.00       $1,316.00
                                                              ---------------------  --------------
  Contract price                                                                        $482,184.00

Still to choose, at no charge
  Outside and structure: Exterior colors (if you do not choose: Oat, white trim, green door)
  Entry and stairs: Wall color (if you do not choose: Chalk white)
  Kitchen: Cabinet pulls (if you do not choose: Brushed nickel)
  Baths: Finish of the bath fittings (if you do not choose: Chrome)

Incentives
  Winter start: $7,500.00 toward closing costs
  Winter start: You must sign for structural options within 21 days of the contract, so that the
    foundation goes in before spring.

Deposits (part of the cash needed)
  earnest money, at contract                 $5,000.00
  option deposit, at selection              $13,896.00
  Earnest money is due when you sign the contract. The option deposit is due when you sign for the
  option. You do not get it back once the work is ordered.

Monthly payment
                                                                             Fixed,
                                                                          first two
                                  Fixed for  Fixed for 7  Fixed for 5         years
                                   30 years        years        years   bought down
  principal and interest          $2,556.97    $2,523.55    $2,457.29     $2,556.97
  mortgage insurance                 $71.72       $71.72       $71.72        $71.72
  property taxes                    $548.51      $548.51      $548.51       $548.51
  homeowner's insurance             $110.90      $110.90      $110.90       $110.90
  HOA dues                           $64.50       $64.50       $64.50        $64.50
  district charges                   $32.45       $32.45       $32.45        $32.45
                               ------------  -----------  -----------  ------------
  monthly payment, full taxes     $3,385.05    $3,351.63    $3,285.37     $3,385.05
  at first, land-only taxes       $2,935.75    $2,902.33    $2,836.07     $2,935.75
  year 1, bought down                     -            -            -     $2,874.43
  year 2, bought down                     -            -            -     $3,123.16
  payment at highest rate                 -    $4,572.56    $4,547.79             -

  interest rate                      6.375%       6.250%       6.000%        6.375%
  APR                                6.508%        6.62%       6.578%        6.521%
  points                       0.250 credit        0.000        0.000  0.250 credit
  loan term                        30 years     30 years     30 years      30 years
  rate lock                        180 days     180 days     180 days      180 days
  down payment                   $72,328.00   $72,328.00   $72,328.00    $72,328.00
  down payment, % of price           15.00%       15.00%       15.00%        15.00%
  loan-to-value (LTV)                85.00%       85.00%       85.00%        85.00%
  highest interest rate               fixed      11.250%      11.000%         fixed

Cash needed and cash to close
                                                                           Fixed,
                                                                        first two
                                 Fixed for  Fixed for 7  Fixed for 5        years
                                  30 years        years        years  bought down
  down payment                  $72,328.00   $72,328.00   $72,328.00   $72,328.00
  points                                 -        $0.00        $0.00            -
  lender credit                 -$1,024.64            -            -   -$1,024.64
  closing costs                  $4,514.24    $4,514.24    $4,514.24    $4,514.24
  prepaid interest               $1,306.44    $1,280.88    $1,229.58    $1,306.44
  prepaid insurance and taxes    $2,120.77    $2,120.77    $2,120.77    $2,120.77
  initial escrow deposit         $2,075.52    $2,075.52    $2,075.52    $2,075.52
  temporary buydown                  $0.00        $0.00        $0.00    $9,270.12
  credits                       -$7,500.00   -$7,500.00   -$7,500.00   -$7,500.00
                               -----------  -----------  -----------  -----------
  cash needed                   $73,820.33   $74,819.41   $74,768.11   $83,090.45
  deposits                     -$18,896.00  -$18,896.00  -$18,896.00  -$18,896.00
  cash to close                 $54,924.33   $55,923.41   $55,872.11   $64,194.45

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Sample lender (license: none, sample data), dated November 20, 2026 and good through
December 18, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Venning County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

For an adjustable rate, the APR and the totals assume that the index stays where it is (comment
17(c)(1)-10 to 12 CFR 1026). It will move, and the payment will move with it.

* Marked items involve gas, electric, plumbing or structural work. That work must follow local code,
needs a permit and must be done by a licensed trade, now or later.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
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
2>   expected a loan with an adjustable rate
2>   [payment-input]
= 1
$ quoin schedule ../../examples/oxbarrow-meadow/buyers/moves-again.json --scenario "Fixed for 7 years" --index 4.x
2> quoin: found --index 4.x
2>   expected a percent from -100 to 100, such as 4.25
2>   [payment-input]
= 1
