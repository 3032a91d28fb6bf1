# A loan month by month; the last payment clears the balance.
$ quoin schedule data/buyer.json --scenario "Ten percent down" --rates data/rates
Payment schedule, month by month
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Ten percent down: loan amount $92,808.00. A short loan: interest rate 6.250%, 0.000 points, APR
6.422%, loan term 1 year, down payment $10,312.00 (10.00%), LTV 90.00%, 60-day rate lock

                                                          mortgage
  payment        due        paid   interest   principal  insurance     balance
        1   3/1/2027   $7,998.32    $483.38   $7,514.94     $46.40  $85,293.06
        2   4/1/2027   $7,998.32    $444.23   $7,554.09     $46.40  $77,738.97
        3   5/1/2027   $7,998.32    $404.89   $7,593.43      $0.00  $70,145.54
        4   6/1/2027   $7,998.32    $365.34   $7,632.98      $0.00  $62,512.56
        5   7/1/2027   $7,998.32    $325.59   $7,672.73      $0.00  $54,839.83
        6   8/1/2027   $7,998.32    $285.62   $7,712.70      $0.00  $47,127.13
        7   9/1/2027   $7,998.32    $245.45   $7,752.87      $0.00  $39,374.26
        8  10/1/2027   $7,998.32    $205.07   $7,793.25      $0.00  $31,581.01
        9  11/1/2027   $7,998.32    $164.48   $7,833.84      $0.00  $23,747.17
       10  12/1/2027   $7,998.32    $123.68   $7,874.64      $0.00  $15,872.53
       11   1/1/2028   $7,998.32     $82.67   $7,915.65      $0.00   $7,956.88
       12   2/1/2028   $7,998.32     $41.44   $7,956.88      $0.00       $0.00
           ---------  ----------  ---------  ----------  ---------  ----------
               total  $95,979.84  $3,171.84  $92,808.00     $92.80

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.
= 0
$ quoin schedule data/buyer.json --scenario "Ten percent down" --extra 1500 --rates data/rates
Payment schedule, month by month
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Ten percent down: loan amount $92,808.00. A short loan: interest rate 6.250%, 0.000 points, APR
6.422%, loan term 1 year, down payment $10,312.00 (10.00%), LTV 90.00%, 60-day rate lock,
$1,500.00 a month in optional extra principal
With $1,500.00 a month in extra principal, the loan takes 11 payments instead of 12. The last one
is due January 1, 2028. This saves $477.91 in interest.

                                                          mortgage
  payment        due        paid   interest   principal  insurance     balance
        1   3/1/2027   $9,498.32    $483.38   $9,014.94     $46.40  $83,793.06
        2   4/1/2027   $9,498.32    $436.42   $9,061.90     $46.40  $74,731.16
        3   5/1/2027   $9,498.32    $389.22   $9,109.10      $0.00  $65,622.06
        4   6/1/2027   $9,498.32    $341.78   $9,156.54      $0.00  $56,465.52
        5   7/1/2027   $9,498.32    $294.09   $9,204.23      $0.00  $47,261.29
        6   8/1/2027   $9,498.32    $246.15   $9,252.17      $0.00  $38,009.12
        7   9/1/2027   $9,498.32    $197.96   $9,300.36      $0.00  $28,708.76
        8  10/1/2027   $9,498.32    $149.52   $9,348.80      $0.00  $19,359.96
        9  11/1/2027   $9,498.32    $100.83   $9,397.49      $0.00   $9,962.47
       10  12/1/2027   $9,498.32     $51.89   $9,446.43      $0.00     $516.04
       11   1/1/2028     $518.73      $2.69     $516.04      $0.00       $0.00
           ---------  ----------  ---------  ----------  ---------  ----------
               total  $95,501.93  $2,693.93  $92,808.00     $92.80

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

Extra principal of $1,500.00 a month (Ten percent down) is optional. It is counted in the totals and
costs over the years, in the number of payments and in when mortgage insurance ends. It is not
counted in the monthly payment, the APR or the disclosed cost of credit, which go by the scheduled
payments (12 CFR 1026.37(l), 1026.38(o)). Taxes, insurance and dues are counted to the end of the
loan term.
= 0
$ quoin schedule data/buyer.json --scenario "A third down" --csv --rates data/rates
payment,due,rate,paid,interest,principal,mortgage_insurance,balance
1,2027-03-01,6,5862.85,340.60,5522.25,0.00,62597.75
2,2027-04-01,6,5862.85,312.99,5549.86,0.00,57047.89
3,2027-05-01,6,5862.85,285.24,5577.61,0.00,51470.28
4,2027-06-01,6,5862.85,257.35,5605.50,0.00,45864.78
5,2027-07-01,6,5862.85,229.32,5633.53,0.00,40231.25
6,2027-08-01,6,5862.85,201.16,5661.69,0.00,34569.56
7,2027-09-01,6,5862.85,172.85,5690.00,0.00,28879.56
8,2027-10-01,6,5862.85,144.40,5718.45,0.00,23161.11
9,2027-11-01,6,5862.85,115.81,5747.04,0.00,17414.07
10,2027-12-01,6,5862.85,87.07,5775.78,0.00,11638.29
11,2028-01-01,6,5862.85,58.19,5804.66,0.00,5833.63
12,2028-02-01,6,5862.80,29.17,5833.63,0.00,0.00
= 0
$ quoin schedule data/buyer.json --scenario "Ten precent down" --rates data/rates
2> quoin: found no loan named "Ten precent down"
2>   expected one of "Ten percent down", "A third down"
2>   did you mean "Ten percent down"?
2>   [scenario-unknown]
= 1
$ quoin schedule data/buyer.json --scenario "A third down" --extra ten --rates data/rates
2> quoin: found --extra ten
2>   expected an amount of zero or more, such as 150
2>   [payment-input]
= 1
