# What a builder's money does in each use, and in the best mix.
$ quoin credit data/buyer.json --amount 2500 --rates data/rates
What $2,500.00 from the builder can do
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
contract price without it $103,120.00

Ten percent down: $8,197.59 a month without it. A short loan: 6.250 % note rate, 0.000 points,
  APR 6.422 %, 1 year, $10,312.00 down (10.00 %), LTV 90.00 %, 60-day lock
  Interested parties may give 3 % of the value, $3,093.60; $1,200.00 of it is taken already.

                                                     a month  after three
  each use by itself          note rate       APR        now        years  cash needed  no use for
  without it                    6.250 %   6.422 %  $8,197.59      $152.87   $10,966.45       $0.00
  off the price                 6.250 %   6.422 %  $7,999.46      $149.77   $10,693.32       $0.00
  closing costs and prepaids    6.250 %   6.422 %  $8,197.59      $152.87   $10,312.00   $1,845.55
  points: 1.000 points          6.000 %   6.172 %  $8,186.92      $152.87   $10,955.57   $1,571.92
  temporary buydown 1-0: not with this loan
  temporary buydown 2-1: not with this loan
  temporary buydown 3-2-1: not with this loan
  upfront fee or single premium: not with this loan

  what it costs, with what is owed, after  the whole loan
  without it                                  $108,873.53
  off the price                               $106,234.07
  closing costs and prepaids                  $108,219.08
  points: 1.000 points                        $108,734.66

  The best of every mix
  lowest payment now: $2,500.00 off the price. Note rate 6.250 %, APR 6.422 %: $7,999.46 a month
    now, $149.77 after three years, $10,693.32 cash, $106,234.07 over the whole loan.
  least cash: $1,862.00 off the price, $637.24 to prepaids; $0.76 finds nothing left to pay.
    Note rate 6.250 %, APR 6.422 %: $8,050.01 a month now, $150.56 after three years, $10,126.00
    cash, $106,270.44 over the whole loan.
  least cost over the whole loan: $2,500.00 off the price. Note rate 6.250 %, APR 6.422 %:
    $7,999.46 a month now, $149.77 after three years, $10,693.32 cash, $106,234.07 over the whole
    loan.

  Mixes that no other beats in month, cash and cost at once
                                               pays of                            cost over
     off the                                points and    a month                 the whole
       price  note rate       APR  buydown       costs        now  cash needed         loan
   $2,500.00    6.250%   6.422%     none       $0.00  $7,999.46   $10,693.32  $106,234.07
   $2,187.00    6.250%   6.422%     none     $313.00  $8,024.20   $10,415.22  $106,251.42
   $1,875.00    6.250%   6.422%     none     $625.00  $8,048.96   $10,137.20  $106,269.08
   $1,863.00    6.250%   6.422%     none     $637.00  $8,049.93   $10,126.21  $106,269.61
   $1,862.00    6.250%   6.422%     none     $637.24  $8,050.01   $10,126.00  $106,270.44

A third down: $6,015.72 a month without it. A short loan: 6.000 % note rate, 1.000 points, APR
  7.739 %, 1 year, $35,000.00 down (33.94 %), LTV 66.06 %, 60-day lock
  Interested parties may give 3 % of the value, $3,093.60; $1,200.00 of it is taken already.

                                                     a month  after three
  each use by itself          note rate       APR        now        years  cash needed  no use for
  without it                    6.000 %   7.739 %  $6,015.72      $152.87   $36,254.73       $0.00
  off the price                 6.000 %   7.739 %  $5,797.45      $149.77   $36,206.26       $0.00
  closing costs and prepaids    6.000 %   7.739 %  $6,015.72      $152.87   $35,681.20   $1,926.47
  points: no lower rate to be had
  temporary buydown 1-0: not with this loan
  temporary buydown 2-1: not with this loan
  temporary buydown 3-2-1: not with this loan
  upfront fee or single premium: not with this loan

  what it costs, with what is owed, after  the whole loan
  without it                                  $108,443.32
  off the price                               $105,775.66
  closing costs and prepaids                  $107,869.79

  The best of every mix
  lowest payment now: $2,500.00 off the price. Note rate 6.000 %, APR 7.739 %: $5,797.45 a month
    now, $149.77 after three years, $36,206.26 cash, $105,775.66 over the whole loan.
  least cash: $1,269.00 off the price, $668.51 to points (6.000 % at 1.000 points), $561.55 to
    prepaids; $0.94 finds nothing left to pay. Note rate 6.000 %, APR 6.001 %: $5,904.92 a month
    now, $151.29 after three years, $35,000.00 cash, $105,859.02 over the whole loan.
  least cost over the whole loan: $2,500.00 off the price. Note rate 6.000 %, APR 7.739 %:
    $5,797.45 a month now, $149.77 after three years, $36,206.26 cash, $105,775.66 over the whole
    loan.

  Mixes that no other beats in month, cash and cost at once
                                               pays of                            cost over
     off the                                points and    a month                 the whole
       price  note rate       APR  buydown       costs        now  cash needed         loan
   $2,500.00    6.000%   7.739%     none       $0.00  $5,797.45   $36,206.26  $105,775.66
   $2,187.00    6.000%   6.911%     none     $313.00  $5,824.77   $35,899.29  $105,796.51
   $1,875.00    6.000%   6.099%     none     $625.00  $5,852.02   $35,593.39  $105,817.64
   $1,562.00    6.000%   6.001%     none     $938.00  $5,879.34   $35,286.42  $105,838.49
   $1,270.00    6.000%   6.001%     none   $1,230.00  $5,904.83   $35,000.13  $105,858.11
   $1,269.00    6.000%   6.001%     none   $1,230.06  $5,904.92   $35,000.00  $105,859.02

The money comes on top of the incentives and credits that the inquiry uses already, and the cap is
on all of them together. It pays points first, then the buydown, closing costs, prepaids, a fee or
premium in cash; never a down payment. In no mix does the buyer put more of their own into costs and
points than without it. Money that options are credited with makes the price less and is reckoned as
off the price.

Cost is what has been spent and is still owed: cash, payments less what a buydown pays of them,
insurance, taxes, dues, and the balance. The month is the settled one, now and after three years.
Money off the price comes in whole dollars; between the amounts told the figures run evenly.

Where such money depends on a lender, a title company or a date, its conditions say so. You may
choose any lender, and then may have to go without it: compare the whole cost.

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
$ quoin credit ../../examples/oxbarrow-meadow/buyers/six-programs.json --amount 10000 --scenario "Conventional, 5% down, 30 years" --years 5
What $10,000.00 from the builder can do
Oxbarrow Meadow, Tarnwick Builders
Teasel (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 14 May 2027
prepared by Sales desk, Oxbarrow Meadow
contract price without it $497,660.00

Conventional, 5 % down, 30 years: $3,957.34 a month without it. Conventional fixed: 6.375 % note
  rate, -0.125 points, APR 6.848 %, 30 years, $24,883.00 down (5.00 %), LTV 95.00 %, 180-day lock
  Interested parties may give 3 % of the value, $14,929.80; $7,500.00 of it is taken already.

                                                     a month  after three
  each use by itself          note rate       APR        now        years  cash needed  no use for
  without it                    6.375 %   6.848 %  $3,957.34    $3,957.34   $27,257.45       $0.00
  off the price                 6.375 %   6.849 %  $3,878.65    $3,878.65   $26,635.00       $0.00
  closing costs and prepaids    6.375 %   6.848 %  $3,957.34    $3,957.34   $24,883.00   $7,625.55
  points: 1.375 points          6.000 %   6.459 %  $3,842.37    $3,842.37   $27,759.86   $3,499.32
  temporary buydown 1-0         6.375 %   6.848 %  $3,655.25    $3,957.34   $27,257.45   $6,374.92
  temporary buydown 2-1: takes $10,693.08
  temporary buydown 3-2-1: takes $21,005.64
  Mortgage insurance, single premium, in cash: takes $9,550.10, more than the cap leaves

  what it costs, with what is owed, after       3 years       5 years       7 years      10 years  the whole loan
  without it                                $625,177.14   $706,627.52   $786,243.78   $901,676.02   $1,400,260.01
  off the price                             $612,569.63   $692,403.01   $770,439.06   $883,581.20   $1,372,338.21
  closing costs and prepaids                $622,802.69   $704,253.07   $783,869.33   $899,301.57   $1,397,885.56
  points: 1.375 points                      $620,348.49   $698,241.51   $774,313.06   $884,490.67   $1,358,224.32
  temporary buydown 1-0                     $621,552.06   $703,002.44   $782,618.70   $898,050.94   $1,396,634.93

  The best of every mix
  lowest payment now: $4,162.00 off the price, $1,758.09 to points (6.250 % at 0.375 points),
    $3,573.12 to a 1-0 buydown, $506.79 to prepaids. Note rate 6.250%, APR 6.718%: $3,588.60 a
    month now, $3,886.36 after three years, $27,048.41 cash, $694,243.63 over 5 years.
  least cash: $7,720.00 off the price, $2,279.91 to prepaids; $0.09 finds nothing left to pay.
    Note rate 6.375 %, APR 6.849 %: $3,896.59 a month now, $3,896.59 after three years, $24,497.00
    cash, $693,366.32 over 5 years.
  least cost over 5 years: $10,000.00 off the price. Note rate 6.375 %, APR 6.849 %: $3,878.65 a
    month now, $3,878.65 after three years, $26,635.00 cash, $692,403.01 over 5 years.

  Mixes that no other beats in month, cash and cost at once (16 of 29, evenly)
                                               pays of
     off the                                points and    a month               cost over 5
       price  note rate       APR  buydown       costs        now  cash needed        years
   $4,162.00    6.250%   6.718%      1-0   $5,838.00  $3,588.60   $27,048.41  $694,243.63
   $3,641.00    6.250%   6.718%      1-0   $6,359.00  $3,592.35   $26,566.07  $694,463.50
   $2,649.00    6.250%   6.718%      1-0   $7,350.33  $3,599.46   $25,648.74  $694,880.80
   $6,501.00    6.375%   6.849%      1-0   $3,499.00  $3,608.03   $26,931.72  $693,881.39
   $4,875.00    6.375%   6.848%      1-0   $5,125.00  $3,619.83   $25,419.41  $694,567.29
   $4,081.00    6.375%   6.848%      1-0   $5,919.00  $3,625.61   $24,679.79  $694,903.29
   $2,692.00    6.000%   6.459%     none   $7,308.00  $3,821.79   $26,747.59  $693,614.28
   $2,649.00    6.000%   6.459%     none   $7,350.33  $3,822.12   $26,708.50  $693,632.89
   $5,449.00    6.125%    6.59%     none   $4,551.00  $3,838.44   $26,985.28  $693,080.41
   $4,086.00    6.125%    6.59%     none   $5,914.00  $3,848.95   $25,719.77  $693,652.26
   $3,023.00    6.125%    6.59%     none   $6,977.00  $3,857.15   $24,732.72  $694,099.01
   $7,797.00    6.250%   6.718%     none   $2,203.00  $3,858.04   $26,867.65  $692,712.44
   $5,847.00    6.250%   6.718%     none   $4,153.00  $3,873.24   $25,047.69  $693,533.97
   $5,382.00    6.250%   6.718%     none   $4,617.65  $3,876.86   $24,614.00  $693,730.11
   $8,750.00    6.375%   6.849%     none   $1,250.00  $3,888.48   $25,463.28  $692,931.06
   $7,720.00    6.375%   6.849%     none   $2,279.91  $3,896.59   $24,497.00  $693,366.32

The money comes on top of the incentives and credits that the inquiry uses already, and the cap is
on all of them together. It pays points first, then the buydown, closing costs, prepaids, a fee or
premium in cash; never a down payment. In no mix does the buyer put more of their own into costs and
points than without it. Money that options are credited with makes the price less and is reckoned as
off the price.

Cost is what has been spent and is still owed: cash, payments less what a buydown pays of them,
insurance, taxes, dues, and the balance. The month is the settled one, now and after three years.
Money off the price comes in whole dollars; between the amounts told the figures run evenly.

Where such money depends on a lender, a title company or a date, its conditions say so. You may
choose any lender, and then may have to go without it: compare the whole cost.

An upfront fee in cash is not borrowed, and so bears no interest. A single premium takes the place
of the month's insurance: whether any of it comes back when the loan ends early is in its
certificate.

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
$ quoin credit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --amount 10000 --scenario "Conventional, 3% down" --instead
What $10,000.00 from the builder can do
Oxbarrow Meadow, Tarnwick Builders
Sorrel (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 20 May 2027
prepared by Sales desk, Oxbarrow Meadow
contract price without it $395,725.00

Conventional, 3 % down: $3,550.09 a month without it. Conventional fixed: 6.500 % note rate,
  0.000 points, APR 7.817 %, 30 years, $11,872.00 down (3.00 %), LTV 97.00 %, 180-day lock
  Interested parties may give 3 % of the value, $11,871.75.

                                                     a month  after three
  each use by itself          note rate       APR        now        years  cash needed  no use for
  without it                    6.500 %   7.817 %  $3,550.09    $3,550.09   $20,615.23       $0.00
  off the price                 6.500 %   7.818 %  $3,461.41    $3,461.41   $20,189.77       $0.00
  closing costs and prepaids    6.500 %   7.817 %  $3,550.09    $3,550.09   $11,872.00   $1,256.77
  points: 2.500 points          5.875 %   7.139 %  $3,394.52    $3,394.52   $20,535.19     $403.67
  temporary buydown 1-0         6.500 %   7.817 %  $3,303.36    $3,550.09   $20,615.23   $7,039.24
  temporary buydown 2-1         6.500 %   7.817 %  $3,068.81    $3,550.09   $20,615.23   $1,263.88
  temporary buydown 3-2-1: takes $17,166.60
  Mortgage insurance, single premium, in cash: takes $21,419.00

  what it costs, with what is owed, after       3 years       5 years       7 years      10 years  the whole loan
  without it                                $518,519.00   $592,949.30   $665,888.45   $772,042.01   $1,191,554.87
  off the price                             $505,548.58   $578,122.75   $649,243.42   $752,751.57   $1,161,910.25
  closing costs and prepaids                $509,775.77   $584,206.07   $657,145.22   $763,298.78   $1,182,811.64
  points: 2.500 points                      $511,225.10   $580,841.78   $648,984.55   $748,028.06   $1,131,496.48
  temporary buydown 1-0                     $515,558.24   $589,988.54   $662,927.69   $769,081.25   $1,188,594.11
  temporary buydown 2-1                     $509,782.88   $584,213.18   $657,152.33   $763,305.89   $1,182,818.75

  The best of every mix
  lowest payment now: $1,309.00 off the price, $8,691.00 to a 2-1 buydown. Note rate 6.500 %,
    APR 7.817 %: $3,058.79 a month now, $3,538.48 after three years, $20,576.10 cash, $655,018.76
    over 7 years.
  least cash: $1,272.00 off the price, $4,465.21 to closing costs, $4,261.97 to prepaids; $0.82
    finds nothing left to pay. Note rate 6.500 %, APR 7.817 %: $3,538.80 a month now, $3,538.80
    after three years, $11,834.00 cash, $655,043.20 over 7 years.
  least cost over 7 years: $2,957.00 off the price, $7,043.00 to points (6.000 % at 1.875
    points). Note rate 6.000 %, APR 7.28 %: $3,399.98 a month now, $3,399.98 after three years,
    $20,527.12 cash, $647,637.30 over 7 years.

  Mixes that no other beats in month, cash and cost at once (16 of 62, evenly)
                                               pays of
     off the                                points and    a month               cost over 7
       price  note rate       APR  buydown       costs        now  cash needed        years
   $1,309.00    6.500%   7.817%      2-1   $8,691.00  $3,058.79   $20,576.10  $655,018.76
     $654.00    6.500%   7.817%      2-1   $9,346.00  $3,063.80   $19,963.79  $655,453.42
       $0.00    6.500%   7.817%      2-1  $10,000.00  $3,068.81   $19,351.35  $655,888.45
   $1,203.00    6.125%    7.41%      1-0   $8,797.00  $3,204.27   $19,879.95  $650,228.21
     $240.00    6.125%    7.41%      1-0   $9,760.00  $3,211.98   $18,977.99  $650,855.65
     $964.00    6.250%   7.548%      1-0   $9,036.00  $3,235.74   $17,775.12  $651,842.71
   $1,442.00    6.375%   7.685%      1-0   $8,558.00  $3,261.57   $16,347.07  $652,988.89
       $0.00    6.500%   7.817%      1-0  $10,000.00  $3,303.36   $13,575.99  $655,888.45
     $313.00    5.875%   7.139%     none   $9,687.00  $3,391.87   $20,424.10  $648,379.14
      $62.00    5.875%   7.139%     none   $9,938.00  $3,393.99   $20,189.33  $648,541.03
   $2,217.00    6.000%   7.277%     none   $7,783.00  $3,406.31   $19,831.71  $648,116.70
   $1,108.00    6.000%   7.277%     none   $8,892.00  $3,415.79   $18,789.66  $648,835.61
   $3,060.00    6.125%    7.41%     none   $6,940.00  $3,429.80   $18,734.30  $649,016.43
       $0.00    6.125%    7.41%     none  $10,000.00  $3,456.21   $15,845.21  $651,012.60
       $0.00    6.250%   7.548%     none  $10,000.00  $3,487.33   $13,941.90  $652,474.13
   $1,272.00    6.500%   7.817%     none   $8,727.18  $3,538.80   $11,834.00  $655,043.20

The money comes on top of the incentives and credits that the inquiry uses already, and the cap is
on all of them together. It pays points first, then the buydown, closing costs, prepaids, a fee or
premium in cash; never a down payment. In no mix does the buyer put more of their own into costs and
points than without it. Money that options are credited with makes the price less and is reckoned as
off the price.

Cost is what has been spent and is still owed: cash, payments less what a buydown pays of them,
insurance, taxes, dues, and the balance. The month is the settled one, now and after three years.
Money off the price comes in whole dollars; between the amounts told the figures run evenly.

Where such money depends on a lender, a title company or a date, its conditions say so. You may
choose any lender, and then may have to go without it: compare the whole cost.

An upfront fee in cash is not borrowed, and so bears no interest. A single premium takes the place
of the month's insurance: whether any of it comes back when the loan ends early is in its
certificate.

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
$ quoin credit data/buyer.json --amount 0 --rates data/rates
2> quoin: found --amount 0
2>   expected an amount above zero and under the price, such as 10000
2>   [payment-input]
= 1
$ quoin credit data/buyer.json --amount -5 --rates data/rates
2> quoin: found --amount -5
2>   expected an amount above zero and under the price, such as 10000
2>   [payment-input]
= 1
$ quoin credit data/buyer.json --amount 900000 --rates data/rates
2> quoin: found --amount 900000
2>   expected an amount above zero and under the price, such as 10000
2>   [payment-input]
= 1
$ quoin credit data/buyer.json --amount 2500 --scenario "A thrd down" --rates data/rates
2> quoin: found no scenario "A thrd down"
2>   expected one of "Ten percent down", "A third down"
2>   did you mean "A third down"?
2>   [scenario-unknown]
= 1
$ quoin credit data/buyer.json --amount 2500 --years 0 --rates data/rates
2> quoin: found --years 0
2>   expected a whole number of years from 1 to 40
2>   [payment-input]
= 1
