# What moves until the closing.
$ quoin shift data/buyer.json --rates data/rates
What can move before the closing
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
contract price as it stands $103,120.00

Ten percent down: $8,197.59 a month, $10,966.45 cash needed. A short loan: 6.250 % note rate,
  0.000 points, APR 6.422 %, 1 year, $10,312.00 down (10.00 %), LTV 90.00 %, 60-day lock

                                as it                                options    appraised    appraised
  the month at       APR       stands   price -1 %   price +1 %   +$5,000.00         -2 %         -5 %
  5.750 %        5.922 %      -$21.33     -$102.92      +$60.19     +$373.90     -$181.86     -$422.55
  5.875 %        6.047 %      -$16.00      -$97.64      +$65.57     +$379.49     -$176.64     -$417.49
  6.000 %        6.172 %      -$10.67      -$92.36      +$70.95     +$385.08     -$171.41     -$412.42
  6.125 %        6.297 %       -$5.33      -$87.08      +$76.34     +$390.67     -$166.19     -$407.35
  6.250 %        6.422 %    $8,197.59      -$81.80      +$81.73     +$396.27     -$160.96     -$402.29
  6.375 %        6.547 %       +$5.34      -$76.52      +$87.12     +$401.86     -$155.73     -$397.22
  6.500 %        6.673 %      +$10.68      -$71.23      +$92.51     +$407.46     -$150.49     -$392.14
  6.625 %        6.798 %      +$16.02      -$65.94      +$97.91     +$413.06     -$145.26     -$387.07
  6.750 %        6.923 %      +$21.36      -$60.65     +$103.30     +$418.66     -$140.02     -$381.99

                               as it                                options    appraised    appraised
  the cash at       APR       stands   price -1 %   price +1 %   +$5,000.00         -2 %         -5 %
  5.750 %       5.922 %      -$21.93     -$133.28      +$90.62     +$523.31   +$1,830.14   +$4,606.49
  5.875 %       6.047 %      -$16.32     -$128.01      +$96.23     +$529.09   +$1,835.41   +$4,611.76
  6.000 %       6.172 %      -$10.88     -$122.57     +$101.67     +$534.87   +$1,840.85   +$4,616.86
  6.125 %       6.297 %       -$5.44     -$117.13     +$107.28     +$540.65   +$1,846.12   +$4,622.13
  6.250 %       6.422 %   $10,966.45     -$111.69     +$112.72     +$546.26   +$1,851.56   +$4,627.40
  6.375 %       6.547 %       +$5.44     -$106.25     +$118.33     +$552.04   +$1,857.00   +$4,632.50
  6.500 %       6.673 %      +$11.05     -$100.81     +$123.77     +$557.82   +$1,862.27   +$4,637.77
  6.625 %       6.798 %      +$16.49      -$95.37     +$129.38     +$563.60   +$1,867.71   +$4,643.04
  6.750 %       6.923 %      +$21.93      -$89.93     +$134.99     +$569.38   +$1,872.98   +$4,648.14

  What a lock of 6.250 % costs (* the one chosen)
                                                       points at    cash against
  lock          taken now ends                      today's rate  the chosen one
  60 days *    23 January 2027                             0.000           $0.00

A third down: $6,015.72 a month, $36,254.73 cash needed. A short loan: 6.000 % note rate, 1.000
  points, APR 7.739 %, 1 year, $35,000.00 down (33.94 %), LTV 66.06 %, 60-day lock

                                as it                                options    appraised    appraised
  the month at       APR       stands   price -1 %   price +1 %   +$5,000.00         -2 %         -5 %
  5.500 %        7.237 %      -$15.65     -$105.51      +$74.13     +$419.74      -$15.65      -$15.65
  5.625 %        7.362 %      -$11.74     -$101.66      +$78.10     +$423.93      -$11.74      -$11.74
  5.750 %        7.488 %       -$7.83      -$97.81      +$82.07     +$428.13       -$7.83       -$7.83
  5.875 %        7.614 %       -$3.92      -$93.96      +$86.04     +$432.33       -$3.92       -$3.92
  6.000 %        7.739 %    $6,015.72      -$90.11      +$90.01     +$436.53        $0.00        $0.00
  6.125 %        7.865 %       +$3.91      -$86.25      +$93.98     +$440.73       +$3.91       +$3.91
  6.250 %        7.991 %       +$7.83      -$82.39      +$97.96     +$444.93       +$7.83       +$7.83
  6.375 %        8.116 %      +$11.74      -$78.54     +$101.94     +$449.14      +$11.74      +$11.74
  6.500 %        8.242 %      +$15.66      -$74.68     +$105.91     +$453.34      +$15.66      +$15.66

                               as it                                options    appraised    appraised
  the cash at       APR       stands   price -1 %   price +1 %   +$5,000.00         -2 %         -5 %
  5.500 %       7.237 %      -$15.98      -$34.99       +$3.88      +$79.94      -$15.98      -$15.98
  5.625 %       7.362 %      -$12.07      -$31.08       +$7.96      +$84.36      -$12.07      -$12.07
  5.750 %       7.488 %       -$7.99      -$27.00      +$12.04      +$88.61       -$7.99       -$7.99
  5.875 %       7.614 %       -$3.91      -$23.09      +$16.29      +$92.86       -$3.91       -$3.91
  6.000 %       7.739 %   $36,254.73      -$19.18      +$20.37      +$97.28        $0.00        $0.00
  6.125 %       7.865 %       +$4.08      -$15.27      +$24.45     +$101.53       +$4.08       +$4.08
  6.250 %       7.991 %       +$8.16      -$11.19      +$28.53     +$105.78       +$8.16       +$8.16
  6.375 %       8.116 %      +$12.07       -$7.28      +$32.61     +$110.20      +$12.07      +$12.07
  6.500 %       8.242 %      +$16.15       -$3.37      +$36.69     +$114.45      +$16.15      +$16.15

  What a lock of 6.000 % costs (* the one chosen)
                                                       points at    cash against
  lock          taken now ends                      today's rate  the chosen one
  60 days *    23 January 2027                             1.000           $0.00

A figure with a sign is the difference to the quote as it stands. Nobody knows where rates will be
at the closing: these are steps, not a forecast. A rate moves as the whole ladder does, each rung
with its points. Until a rate is locked it can be any of these, or past them.

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
$ quoin shift ../../examples/oxbarrow-meadow/buyers/six-programs.json --scenario "FHA, 3.5% down, 30 years" --steps 2 --step 0.25
What can move before the closing
Oxbarrow Meadow, Tarnwick Builders
Teasel (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 14 May 2027
prepared by Sales desk, Oxbarrow Meadow
contract price as it stands $497,660.00

FHA, 3.5 % down, 30 years: $3,888.70 a month, $20,341.56 cash needed. FHA-insured fixed: 5.875 %
  note rate, 0.000 points, APR 6.608 %, 30 years, $17,419.00 down (3.50 %), LTV 96.50 %, 180-day
  lock

                                as it                                options    appraised    appraised
  the month at       APR       stands   price -1 %   price +1 %   +$5,000.00         -2 %         -5 %
  5.375 %        6.102 %     -$154.38     -$191.30     -$114.08     -$113.92     -$213.47     -$302.12
  5.625 %        6.355 %      -$77.66     -$115.36      -$36.61      -$36.44     -$138.30     -$229.25
  5.875 %        6.608 %    $3,888.70      -$38.47      +$41.83      +$42.00      -$62.19     -$155.47
  6.125 %        6.861 %      +$78.59      +$39.34     +$121.21     +$121.39      +$14.84      -$80.80
  6.375 %        7.114 %     +$158.10     +$118.05     +$201.52     +$201.69      +$92.75       -$5.27

                               as it                                options    appraised    appraised
  the cash at       APR       stands   price -1 %   price +1 %   +$5,000.00         -2 %         -5 %
  5.375 %       6.102 %     -$122.04     -$361.93     +$167.09     +$169.14   +$9,438.02  +$23,780.07
  5.625 %       6.355 %      -$61.02     -$301.45     +$228.65     +$230.88   +$9,497.78  +$23,838.03
  5.875 %       6.608 %   $20,341.56     -$240.97     +$290.39     +$292.62   +$9,557.72  +$23,896.17
  6.125 %       6.861 %      +$61.20     -$180.49     +$352.13     +$354.18   +$9,617.48  +$23,954.13
  6.375 %       7.114 %     +$122.22     -$120.01     +$413.87     +$415.92   +$9,677.42  +$24,012.09

  What a lock of 5.875 % costs (* the one chosen)
                                                       points at    cash against
  lock          taken now ends                      today's rate  the chosen one
  30 days     24 December 2026  before the closing        -0.750      -$2,922.56
  60 days      23 January 2027  before the closing        -0.625      -$2,922.56
  180 days *       23 May 2027                             0.000           $0.00
  270 days      21 August 2027                             0.500      +$2,443.23

  If the income changes: its part for housing, and the highest rate within the limits
                                                          up to a rate    in whole
  income           a month   housing  with debts  within            of       steps
  -20 %          $7,960.00   48.85 %     53.75 %      no       0.543 %     0.375 %
  -10 %          $8,955.00   43.42 %     47.78 %      no       1.889 %     1.875 %
  -5 %           $9,452.50   41.14 %     45.27 %      no       2.509 %     2.375 %
  as it stands   $9,950.00   39.08 %     43.00 %      no       3.102 %     2.875 %
  +5 %          $10,447.50   37.22 %     40.95 %      no       3.671 %     3.625 %
  +10 %         $10,945.00   35.53 %     39.09 %      no       4.219 %     4.125 %
  The limits: housing 31.00 %, housing and debts 43.00 %. Source: HUD Handbook 4000.1, II.A.5.d
  (manually underwritten loans: approvable ratio requirements).
  The least income a month that stays within them at today's rate: $12,544.20.

A figure with a sign is the difference to the quote as it stands. Nobody knows where rates will be
at the closing: these are steps, not a forecast. A rate moves as the whole ladder does, each rung
with its points. Until a rate is locked it can be any of these, or past them.

Ratios are of gross monthly income, at the note rate; of a loan whose rate can rise, at the rate
that its program qualifies buyers at. Where the income moves, the taxes on it stay as they are. They
are guides of the published rules, not an approval: lenders look at more, and go above or stay
below. Income and debts are private: they are shown because the inquiry has them.

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
$ quoin shift ../../examples/oxbarrow-meadow/buyers/six-programs.json --scenario "Conventional, 5% down, 30 years" --steps 1
What can move before the closing
Oxbarrow Meadow, Tarnwick Builders
Teasel (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 14 May 2027
prepared by Sales desk, Oxbarrow Meadow
contract price as it stands $497,660.00

Conventional, 5 % down, 30 years: $3,957.34 a month, $27,257.45 cash needed. Conventional fixed:
  6.375 % note rate, -0.125 points, APR 6.848 %, 30 years, $24,883.00 down (5.00 %), LTV 95.00 %,
  180-day lock

                                as it                                options    appraised    appraised
  the month at       APR       stands   price -1 %   price +1 %   +$5,000.00         -2 %         -5 %
  6.250 %        6.718 %      -$38.54      -$77.32       +$3.58       +$3.77     -$101.33     -$195.52
  6.375 %        6.848 %    $3,957.34      -$39.16      +$42.51      +$42.70      -$63.56     -$158.90
  6.500 %        6.976 %      +$38.76       -$0.79      +$81.66      +$81.85      -$25.58     -$122.08

                               as it                                options    appraised    appraised
  the cash at       APR       stands   price -1 %   price +1 %   +$5,000.00         -2 %         -5 %
  6.250 %       6.718 %      -$29.52     -$338.80     +$330.98     +$331.61   +$9,391.76  +$23,522.68
  6.375 %       6.848 %   $27,257.45     -$309.64     +$360.86     +$361.49   +$9,420.74  +$23,550.58
  6.500 %       6.976 %      +$29.52     -$280.30     +$390.74     +$391.37   +$9,449.72  +$23,578.66

  What a lock of 6.375 % costs (* the one chosen)
                                                       points at    cash against
  lock          taken now ends                      today's rate  the chosen one
  30 days     24 December 2026  before the closing        -0.875      -$2,374.45
  60 days      23 January 2027  before the closing        -0.750      -$2,374.45
  180 days *       23 May 2027                            -0.125           $0.00
  270 days      21 August 2027                             0.375      +$2,363.88

  If the income changes: its part for housing, and the highest rate within the limits
                                                          up to a rate    in whole
  income           a month   housing  with debts  within            of       steps
  -20 %          $7,960.00   49.72 %     54.61 %      no       3.730 %     3.625 %
  -10 %          $8,955.00   44.19 %     48.55 %      no       5.322 %     5.250 %
  -5 %           $9,452.50   41.87 %     45.99 %      no       6.069 %     6.000 %
  as it stands   $9,950.00   39.77 %     43.69 %     yes       6.792 %     6.750 %
  +5 %          $10,447.50   37.88 %     41.61 %     yes       7.493 %     7.375 %
  +10 %         $10,945.00   36.16 %     39.72 %     yes       8.176 %     8.125 %
  The limits: housing and debts 45.00 % (50.00 % by automated underwriting). Source: Fannie Mae
  Selling Guide B3-6-02, 4 May 2022.
  The least income a month that stays within them at today's rate: $9,660.76; $8,694.68 by
  automated underwriting. The highest rate by automated underwriting: up to 8.326 % (8.250 % in
  whole steps).

A figure with a sign is the difference to the quote as it stands. Nobody knows where rates will be
at the closing: these are steps, not a forecast. A rate moves as the whole ladder does, each rung
with its points. Until a rate is locked it can be any of these, or past them.

Ratios are of gross monthly income, at the note rate; of a loan whose rate can rise, at the rate
that its program qualifies buyers at. Where the income moves, the taxes on it stay as they are. They
are guides of the published rules, not an approval: lenders look at more, and go above or stay
below. Income and debts are private: they are shown because the inquiry has them.

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
$ quoin shift data/buyer.json --scenario "A thrd down" --rates data/rates
2> quoin: found no scenario "A thrd down"
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
