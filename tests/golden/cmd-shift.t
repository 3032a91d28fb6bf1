# What moves until the closing.
$ quoin shift data/buyer.json --rates data/rates
$8,197.59 a month · $10,966.45 cash needed · at 5.750%: -$21.33 a month ·
  at 6.750%: +$21.36 a month · Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down
$6,015.72 a month · $36,254.73 cash needed · at 5.500%: -$15.65 a month ·
  at 6.500%: +$15.66 a month · A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
These are estimates with sample rates, as of November 24, 2026.

What can change before closing
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Contract price as quoted $103,120.00

Ten percent down: $8,197.59 a month, $10,966.45 cash needed. A short loan: interest rate 6.250%,
  0.000 points, APR 6.422%, loan term 1 year, down payment $10,312.00 (10.00%), LTV 90.00%, 60-day
  rate lock

  monthly                                                          options    appraisal    appraisal
  payment at       APR    as quoted    price -1%    price +1%   +$5,000.00          -2%          -5%
  5.750%        5.922%      -$21.33     -$102.92      +$60.19     +$373.90     -$181.86     -$422.55
  5.875%        6.047%      -$16.00      -$97.64      +$65.57     +$379.49     -$176.64     -$417.49
  6.000%        6.172%      -$10.67      -$92.36      +$70.95     +$385.08     -$171.41     -$412.42
  6.125%        6.297%       -$5.33      -$87.08      +$76.34     +$390.67     -$166.19     -$407.35
  6.250%        6.422%    $8,197.59      -$81.80      +$81.73     +$396.27     -$160.96     -$402.29
  6.375%        6.547%       +$5.34      -$76.52      +$87.12     +$401.86     -$155.73     -$397.22
  6.500%        6.673%      +$10.68      -$71.23      +$92.51     +$407.46     -$150.49     -$392.14
  6.625%        6.798%      +$16.02      -$65.94      +$97.91     +$413.06     -$145.26     -$387.07
  6.750%        6.923%      +$21.36      -$60.65     +$103.30     +$418.66     -$140.02     -$381.99

  cash                                                             options    appraisal    appraisal
  needed at        APR    as quoted    price -1%    price +1%   +$5,000.00          -2%          -5%
  5.750%        5.922%      -$21.93     -$133.28      +$90.62     +$523.31   +$1,830.14   +$4,606.49
  5.875%        6.047%      -$16.32     -$128.01      +$96.23     +$529.09   +$1,835.41   +$4,611.76
  6.000%        6.172%      -$10.88     -$122.57     +$101.67     +$534.87   +$1,840.85   +$4,616.86
  6.125%        6.297%       -$5.44     -$117.13     +$107.28     +$540.65   +$1,846.12   +$4,622.13
  6.250%        6.422%   $10,966.45     -$111.69     +$112.72     +$546.26   +$1,851.56   +$4,627.40
  6.375%        6.547%       +$5.44     -$106.25     +$118.33     +$552.04   +$1,857.00   +$4,632.50
  6.500%        6.673%      +$11.05     -$100.81     +$123.77     +$557.82   +$1,862.27   +$4,637.77
  6.625%        6.798%      +$16.49      -$95.37     +$129.38     +$563.60   +$1,867.71   +$4,643.04
  6.750%        6.923%      +$21.93      -$89.93     +$134.99     +$569.38   +$1,872.98   +$4,648.14

  What each rate lock costs at 6.250% (* your lock)
                if locked now,                         points at  change in cash
  rate lock               ends                      today's rate          needed
  60 days *          1/23/2027                             0.000           $0.00

A third down: $6,015.72 a month, $36,254.73 cash needed. A short loan: interest rate 6.000%,
  1.000 points, APR 7.739%, loan term 1 year, down payment $35,000.00 (33.94%), LTV 66.06%, 60-day
  rate lock

  monthly                                                          options    appraisal    appraisal
  payment at       APR    as quoted    price -1%    price +1%   +$5,000.00          -2%          -5%
  5.500%        7.237%      -$15.65     -$105.51      +$74.13     +$419.74      -$15.65      -$15.65
  5.625%        7.362%      -$11.74     -$101.66      +$78.10     +$423.93      -$11.74      -$11.74
  5.750%        7.488%       -$7.83      -$97.81      +$82.07     +$428.13       -$7.83       -$7.83
  5.875%        7.614%       -$3.92      -$93.96      +$86.04     +$432.33       -$3.92       -$3.92
  6.000%        7.739%    $6,015.72      -$90.11      +$90.01     +$436.53        $0.00        $0.00
  6.125%        7.865%       +$3.91      -$86.25      +$93.98     +$440.73       +$3.91       +$3.91
  6.250%        7.991%       +$7.83      -$82.39      +$97.96     +$444.93       +$7.83       +$7.83
  6.375%        8.116%      +$11.74      -$78.54     +$101.94     +$449.14      +$11.74      +$11.74
  6.500%        8.242%      +$15.66      -$74.68     +$105.91     +$453.34      +$15.66      +$15.66

  cash                                                             options    appraisal    appraisal
  needed at        APR    as quoted    price -1%    price +1%   +$5,000.00          -2%          -5%
  5.500%        7.237%      -$15.98      -$34.99       +$3.88      +$79.94      -$15.98      -$15.98
  5.625%        7.362%      -$12.07      -$31.08       +$7.96      +$84.36      -$12.07      -$12.07
  5.750%        7.488%       -$7.99      -$27.00      +$12.04      +$88.61       -$7.99       -$7.99
  5.875%        7.614%       -$3.91      -$23.09      +$16.29      +$92.86       -$3.91       -$3.91
  6.000%        7.739%   $36,254.73      -$19.18      +$20.37      +$97.28        $0.00        $0.00
  6.125%        7.865%       +$4.08      -$15.27      +$24.45     +$101.53       +$4.08       +$4.08
  6.250%        7.991%       +$8.16      -$11.19      +$28.53     +$105.78       +$8.16       +$8.16
  6.375%        8.116%      +$12.07       -$7.28      +$32.61     +$110.20      +$12.07      +$12.07
  6.500%        8.242%      +$16.15       -$3.37      +$36.69     +$114.45      +$16.15      +$16.15

  What each rate lock costs at 6.000% (* your lock)
                if locked now,                         points at  change in cash
  rate lock               ends                      today's rate          needed
  60 days *          1/23/2027                             1.000           $0.00

A figure with a sign is the difference from the quote. Nobody knows where rates will be at closing:
these are steps, not a forecast. In each step, every rate on the rate sheet moves by the same amount
and keeps its points. Until you lock a rate, it can be any of these, or go beyond them.

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
$ quoin shift ../../examples/oxbarrow-meadow/buyers/six-programs.json --scenario "FHA, 3.5% down, 30 years" --steps 2 --step 0.25
$3,888.70 a month · $20,341.56 cash needed · at 5.375%: -$154.38 a month ·
  at 6.375%: +$158.10 a month ·
  FHA, 3.5% down, 30 years: 5.875% (6.608% APR), 30 years, $17,419.00 down
These are estimates with sample rates, as of November 24, 2026.

What can change before closing
Oxbarrow Meadow by Tarnwick Builders
Teasel plan (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 14, 2027
Prepared by Sales desk, Oxbarrow Meadow
Contract price as quoted $497,660.00

FHA, 3.5% down, 30 years: $3,888.70 a month, $20,341.56 cash needed. FHA, fixed rate: interest
  rate 5.875%, 0.000 points, APR 6.608%, loan term 30 years, down payment $17,419.00 (3.50%), LTV
  96.50%, 180-day rate lock

  monthly                                                          options    appraisal    appraisal
  payment at       APR    as quoted    price -1%    price +1%   +$5,000.00          -2%          -5%
  5.375%        6.102%     -$154.38     -$191.30     -$114.08     -$113.92     -$213.47     -$302.12
  5.625%        6.355%      -$77.66     -$115.36      -$36.61      -$36.44     -$138.30     -$229.25
  5.875%        6.608%    $3,888.70      -$38.47      +$41.83      +$42.00      -$62.19     -$155.47
  6.125%        6.861%      +$78.59      +$39.34     +$121.21     +$121.39      +$14.84      -$80.80
  6.375%        7.114%     +$158.10     +$118.05     +$201.52     +$201.69      +$92.75       -$5.27

  cash                                                             options    appraisal    appraisal
  needed at        APR    as quoted    price -1%    price +1%   +$5,000.00          -2%          -5%
  5.375%        6.102%     -$122.04     -$361.93     +$167.09     +$169.14   +$9,438.02  +$23,780.07
  5.625%        6.355%      -$61.02     -$301.45     +$228.65     +$230.88   +$9,497.78  +$23,838.03
  5.875%        6.608%   $20,341.56     -$240.97     +$290.39     +$292.62   +$9,557.72  +$23,896.17
  6.125%        6.861%      +$61.20     -$180.49     +$352.13     +$354.18   +$9,617.48  +$23,954.13
  6.375%        7.114%     +$122.22     -$120.01     +$413.87     +$415.92   +$9,677.42  +$24,012.09

  What each rate lock costs at 5.875% (* your lock)
                if locked now,                         points at  change in cash
  rate lock               ends                      today's rate          needed
  30 days           12/24/2026  before closing      0.750 credit      -$2,922.56
  60 days            1/23/2027  before closing      0.625 credit      -$2,922.56
  180 days *         5/23/2027                             0.000           $0.00
  270 days           8/21/2027                             0.500      +$2,443.23

  If the income changes: the housing ratio, the DTI and the highest rate within the limits
                           housing            within                  in whole
  income         a month     ratio       DTI  limits  highest rate       steps
  -20%         $7,960.00    48.85%    53.75%      no        0.543%      0.375%
  -10%         $8,955.00    43.42%    47.78%      no        1.889%      1.875%
  -5%          $9,452.50    41.14%    45.27%      no        2.509%      2.375%
  now          $9,950.00    39.08%    43.00%      no        3.102%      2.875%
  +5%         $10,447.50    37.22%    40.95%      no        3.671%      3.625%
  +10%        $10,945.00    35.53%    39.09%      no        4.219%      4.125%
  The limits: housing ratio 31.00%, debt-to-income ratio (DTI) 43.00%. Source: HUD Handbook
  4000.1, II.A.5.d (manually underwritten loans: approvable ratio requirements).
  Lowest income a month that stays within the limits at today's rate: $12,544.20.

A figure with a sign is the difference from the quote. Nobody knows where rates will be at closing:
these are steps, not a forecast. In each step, every rate on the rate sheet moves by the same amount
and keeps its points. Until you lock a rate, it can be any of these, or go beyond them.

Ratios are of gross monthly income. They use the note rate or, where the rate can rise, the rate
that the program uses to qualify buyers. Where the income changes here, the taxes on it stay the
same. The ratios are guides from the published rules, not an approval: lenders look at more, and may
go above them or stay below. Income and debts are private. They are shown because they are in the
inquiry.

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
$ quoin shift ../../examples/oxbarrow-meadow/buyers/six-programs.json --scenario "Conventional, 5% down, 30 years" --steps 1
$3,957.34 a month · $27,257.45 cash needed · at 6.250%: -$38.54 a month ·
  at 6.500%: +$38.76 a month ·
  Conventional, 5% down, 30 years: 6.375% (6.848% APR), 30 years, $24,883.00 down
These are estimates with sample rates, as of November 24, 2026.

What can change before closing
Oxbarrow Meadow by Tarnwick Builders
Teasel plan (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 14, 2027
Prepared by Sales desk, Oxbarrow Meadow
Contract price as quoted $497,660.00

Conventional, 5% down, 30 years: $3,957.34 a month, $27,257.45 cash needed. Conventional, fixed
  rate: interest rate 6.375%, lender credit of 0.125 points, APR 6.848%, loan term 30 years, down
  payment $24,883.00 (5.00%), LTV 95.00%, 180-day rate lock

  monthly                                                          options    appraisal    appraisal
  payment at       APR    as quoted    price -1%    price +1%   +$5,000.00          -2%          -5%
  6.250%        6.718%      -$38.54      -$77.32       +$3.58       +$3.77     -$101.33     -$195.52
  6.375%        6.848%    $3,957.34      -$39.16      +$42.51      +$42.70      -$63.56     -$158.90
  6.500%        6.976%      +$38.76       -$0.79      +$81.66      +$81.85      -$25.58     -$122.08

  cash                                                             options    appraisal    appraisal
  needed at        APR    as quoted    price -1%    price +1%   +$5,000.00          -2%          -5%
  6.250%        6.718%      -$29.52     -$338.80     +$330.98     +$331.61   +$9,391.76  +$23,522.68
  6.375%        6.848%   $27,257.45     -$309.64     +$360.86     +$361.49   +$9,420.74  +$23,550.58
  6.500%        6.976%      +$29.52     -$280.30     +$390.74     +$391.37   +$9,449.72  +$23,578.66

  What each rate lock costs at 6.375% (* your lock)
                if locked now,                         points at  change in cash
  rate lock               ends                      today's rate          needed
  30 days           12/24/2026  before closing      0.875 credit      -$2,374.45
  60 days            1/23/2027  before closing      0.750 credit      -$2,374.45
  180 days *         5/23/2027                      0.125 credit           $0.00
  270 days           8/21/2027                             0.375      +$2,363.88

  If the income changes: the housing ratio, the DTI and the highest rate within the limits
                           housing            within                  in whole
  income         a month     ratio       DTI  limits  highest rate       steps
  -20%         $7,960.00    49.72%    54.61%      no        3.730%      3.625%
  -10%         $8,955.00    44.19%    48.55%      no        5.322%      5.250%
  -5%          $9,452.50    41.87%    45.99%      no        6.069%      6.000%
  now          $9,950.00    39.77%    43.69%     yes        6.792%      6.750%
  +5%         $10,447.50    37.88%    41.61%     yes        7.493%      7.375%
  +10%        $10,945.00    36.16%    39.72%     yes        8.176%      8.125%
  The limits: debt-to-income ratio (DTI) 45.00% (50.00% with automated underwriting). Source:
  Fannie Mae Selling Guide B3-6-02, May 4, 2022.
  Lowest income a month that stays within the limits at today's rate: $9,660.76; $8,694.68 with
  automated underwriting. Highest rate with automated underwriting: 8.326% (8.250% in whole
  steps).

A figure with a sign is the difference from the quote. Nobody knows where rates will be at closing:
these are steps, not a forecast. In each step, every rate on the rate sheet moves by the same amount
and keeps its points. Until you lock a rate, it can be any of these, or go beyond them.

Ratios are of gross monthly income. They use the note rate or, where the rate can rise, the rate
that the program uses to qualify buyers. Where the income changes here, the taxes on it stay the
same. The ratios are guides from the published rules, not an approval: lenders look at more, and may
go above them or stay below. Income and debts are private. They are shown because they are in the
inquiry.

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
$ quoin shift data/buyer.json --scenario "A thrd down" --rates data/rates
2> quoin: found no loan named "A thrd down"
2>   expected one of "Ten percent down", "A third down"
2>   did you mean "A third down"?
2>   [scenario-unknown]
= 1
$ quoin shift data/buyer.json --steps 99 --rates data/rates
2> quoin: found --steps 99
2>   expected a whole number from 0 to 24
2>   [payment-input]
= 1
$ quoin shift data/buyer.json --step 0 --rates data/rates
2> quoin: found --step 0
2>   expected percentage points from 0.001 to 1, such as 0.125
2>   [payment-input]
= 1
