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
   $2,500.00    6.250 %   6.422 %     none       $0.00  $7,999.46   $10,693.32  $106,234.07
   $2,187.00    6.250 %   6.422 %     none     $313.00  $8,024.20   $10,415.22  $106,251.42
   $1,875.00    6.250 %   6.422 %     none     $625.00  $8,048.96   $10,137.20  $106,269.08
   $1,863.00    6.250 %   6.422 %     none     $637.00  $8,049.93   $10,126.21  $106,269.61
   $1,862.00    6.250 %   6.422 %     none     $637.24  $8,050.01   $10,126.00  $106,270.44

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
   $2,500.00    6.000 %   7.739 %     none       $0.00  $5,797.45   $36,206.26  $105,775.66
   $2,187.00    6.000 %   6.911 %     none     $313.00  $5,824.77   $35,899.29  $105,796.51
   $1,875.00    6.000 %   6.099 %     none     $625.00  $5,852.02   $35,593.39  $105,817.64
   $1,562.00    6.000 %   6.001 %     none     $938.00  $5,879.34   $35,286.42  $105,838.49
   $1,270.00    6.000 %   6.001 %     none   $1,230.00  $5,904.83   $35,000.13  $105,858.11
   $1,269.00    6.000 %   6.001 %     none   $1,230.06  $5,904.92   $35,000.00  $105,859.02

The money comes on top of the incentives and credits that the inquiry uses already, and the cap is
on all of them together. It pays points first, then the buydown, closing costs, prepaids; never a
down payment. In no mix does the buyer put more of their own into costs and points than without it.
Money that options are credited with makes the price less and is reckoned as off the price.

Cost is what has been spent and is still owed: cash, payments less what a buydown pays of them,
insurance, taxes, dues, and the balance. The month is the settled one, now and after three years.
Money off the price comes in whole dollars; between the amounts told the figures run evenly.

Where such money depends on a lender, a title company or a date, its conditions say so. You may
choose any lender, and then may have to go without it: compare the whole cost.

Mortgage insurance paid up at once in place of the month's could be another use: the lending data
has no factors for it.

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
$ quoin credit ../../examples/oxbarrow-meadow/buyers/six-programs.json --amount 10000 --scenario "Conventional, 5 % down, 30 years" --years 5
What $10,000.00 from the builder can do
Oxbarrow Meadow, Tarnwick Builders
Teasel (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 14 May 2027
prepared by Sales desk, Oxbarrow Meadow
contract price without it $497,660.00

Conventional, 5 % down, 30 years: $3,957.34 a month without it. Conventional fixed: 6.375 % note
  rate, -0.125 points, APR 6.846 %, 30 years, $24,883.00 down (5.00 %), LTV 95.00 %, 180-day lock
  Interested parties may give 3 % of the value, $14,929.80; $7,500.00 of it is taken already.

                                                     a month  after three
  each use by itself          note rate       APR        now        years  cash needed  no use for
  without it                    6.375 %   6.846 %  $3,957.34    $3,957.34   $28,004.92       $0.00
  off the price                 6.375 %   6.847 %  $3,878.65    $3,878.65   $27,362.05       $0.00
  closing costs and prepaids    6.375 %   6.846 %  $3,957.34    $3,957.34   $24,883.00   $6,878.08
  points: 1.375 points          6.000 %   6.457 %  $3,842.37    $3,842.37   $28,507.33   $3,499.32
  temporary buydown 1-0         6.375 %   6.846 %  $3,655.25    $3,957.34   $28,004.92   $6,374.92
  temporary buydown 2-1: takes $10,693.08
  temporary buydown 3-2-1: takes $21,005.64

  what it costs, with what is owed, after       3 years       5 years       7 years      10 years  the whole loan
  without it                                $625,924.61   $707,374.99   $786,991.25   $902,423.49   $1,401,007.48
  off the price                             $613,296.68   $693,130.06   $771,166.11   $884,308.25   $1,373,065.26
  closing costs and prepaids                $622,802.69   $704,253.07   $783,869.33   $899,301.57   $1,397,885.56
  points: 1.375 points                      $621,095.96   $698,988.98   $775,060.53   $885,238.14   $1,358,971.79
  temporary buydown 1-0                     $622,299.53   $703,749.91   $783,366.17   $898,798.41   $1,397,382.40

  The best of every mix
  lowest payment now: $4,171.00 off the price, $1,758.05 to points (6.250 % at 0.375 points),
    $3,573.12 to a 1-0 buydown, $497.83 to prepaids. Note rate 6.250 %, APR 6.716 %: $3,588.53 a
    month now, $3,886.29 after three years, $27,796.20 cash, $694,978.41 over 5 years.
  least cash: $6,977.00 off the price, $3,022.23 to prepaids; $0.77 finds nothing left to pay.
    Note rate 6.375 %, APR 6.847 %: $3,902.43 a month now, $3,902.43 after three years, $24,535.00
    cash, $694,413.57 over 5 years.
  least cost over 5 years: $10,000.00 off the price. Note rate 6.375 %, APR 6.847 %: $3,878.65 a
    month now, $3,878.65 after three years, $27,362.05 cash, $693,130.06 over 5 years.

  Mixes that no other beats in month, cash and cost at once (16 of 33, evenly)
                                               pays of
     off the                                points and    a month               cost over 5
       price  note rate       APR  buydown       costs        now  cash needed        years
   $4,171.00    6.250 %   6.716 %      1-0   $5,829.00  $3,588.53   $27,796.20  $694,978.41
   $3,128.00    6.250 %   6.716 %      1-0   $6,872.00  $3,596.02   $26,832.51  $695,419.48
   $2,650.00    6.250 %   6.716 %      1-0   $7,350.00  $3,599.46   $26,391.09  $695,621.83
   $5,700.00    6.375 %   6.847 %      1-0   $4,300.00  $3,613.85   $26,922.14  $694,955.63
   $4,071.00    6.375 %   6.847 %      1-0   $5,929.00  $3,625.68   $25,410.24  $695,646.75
   $3,325.00    6.375 %   6.847 %      1-0   $6,675.00  $3,631.10   $24,717.32  $695,963.42
   $2,698.00    6.000 %   6.458 %     none   $7,302.00  $3,821.74   $27,495.41  $694,353.81
   $2,649.00    6.000 %   6.458 %     none   $7,350.33  $3,822.12   $27,450.56  $694,374.95
   $4,095.00    6.125 %   6.588 %     none   $5,905.00  $3,848.88   $26,467.68  $694,388.04
   $7,814.00    6.250 %   6.716 %     none   $2,186.00  $3,857.91   $27,614.88  $693,436.96
   $2,650.00    6.125 %   6.588 %     none   $7,350.00  $3,860.01   $25,128.89  $694,996.78
   $6,837.00    6.250 %   6.716 %     none   $3,163.00  $3,865.51   $26,705.48  $693,850.06
  $10,000.00    6.375 %   6.847 %     none       $0.00  $3,878.65   $27,362.05  $693,130.06
   $4,632.00    6.250 %   6.716 %     none   $5,368.00  $3,882.70   $24,652.41  $694,783.77
   $8,750.00    6.375 %   6.847 %     none   $1,250.00  $3,888.48   $26,192.88  $693,660.66
   $6,977.00    6.375 %   6.847 %     none   $3,022.23  $3,902.43   $24,535.00  $694,413.57

The money comes on top of the incentives and credits that the inquiry uses already, and the cap is
on all of them together. It pays points first, then the buydown, closing costs, prepaids; never a
down payment. In no mix does the buyer put more of their own into costs and points than without it.
Money that options are credited with makes the price less and is reckoned as off the price.

Cost is what has been spent and is still owed: cash, payments less what a buydown pays of them,
insurance, taxes, dues, and the balance. The month is the settled one, now and after three years.
Money off the price comes in whole dollars; between the amounts told the figures run evenly.

Where such money depends on a lender, a title company or a date, its conditions say so. You may
choose any lender, and then may have to go without it: compare the whole cost.

Mortgage insurance paid up at once in place of the month's could be another use: the lending data
has no factors for it.

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
$ quoin credit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --amount 10000 --scenario "Conventional, 3 % down" --instead
What $10,000.00 from the builder can do
Oxbarrow Meadow, Tarnwick Builders
Sorrel (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 20 May 2027
prepared by Sales desk, Oxbarrow Meadow
contract price without it $395,725.00

Conventional, 3 % down: $3,550.09 a month without it. Conventional fixed: 6.500 % note rate,
  0.000 points, APR 7.815 %, 30 years, $11,872.00 down (3.00 %), LTV 97.00 %, 180-day lock
  Interested parties may give 3 % of the value, $11,871.75.

                                                     a month  after three
  each use by itself          note rate       APR        now        years  cash needed  no use for
  without it                    6.500 %   7.815 %  $3,550.09    $3,550.09   $21,171.51       $0.00
  off the price                 6.500 %   7.816 %  $3,461.41    $3,461.41   $20,725.20       $0.00
  closing costs and prepaids    6.500 %   7.815 %  $3,550.09    $3,550.09   $11,872.00     $700.49
  points: 2.500 points          5.875 %   7.136 %  $3,394.52    $3,394.52   $21,091.47     $403.67
  temporary buydown 1-0         6.500 %   7.815 %  $3,303.36    $3,550.09   $21,171.51   $7,039.24
  temporary buydown 2-1         6.500 %   7.815 %  $3,068.81    $3,550.09   $21,171.51   $1,263.88
  temporary buydown 3-2-1: takes $17,166.60

  what it costs, with what is owed, after       3 years       5 years       7 years      10 years  the whole loan
  without it                                $519,075.28   $593,505.58   $666,444.73   $772,598.29   $1,192,111.15
  off the price                             $506,084.01   $578,658.18   $649,778.85   $753,287.00   $1,162,445.68
  closing costs and prepaids                $509,775.77   $584,206.07   $657,145.22   $763,298.78   $1,182,811.64
  points: 2.500 points                      $511,781.38   $581,398.06   $649,540.83   $748,584.34   $1,132,052.76
  temporary buydown 1-0                     $516,114.52   $590,544.82   $663,483.97   $769,637.53   $1,189,150.39
  temporary buydown 2-1                     $510,339.16   $584,769.46   $657,708.61   $763,862.17   $1,183,375.03

  The best of every mix
  lowest payment now: $1,311.00 off the price, $8,689.00 to a 2-1 buydown. Note rate 6.500 %,
    APR 7.815 %: $3,058.78 a month now, $3,538.47 after three years, $21,131.69 cash, $655,571.40
    over 7 years.
  least cash: $710.00 off the price, $5,021.00 to closing costs, $4,268.10 to prepaids; $0.90
    finds nothing left to pay. Note rate 6.500 %, APR 7.815 %: $3,543.79 a month now, $3,543.79
    after three years, $11,851.00 cash, $655,971.54 over 7 years.
  least cost over 7 years: $2,963.00 off the price, $7,037.00 to points (6.000 % at 1.875
    points). Note rate 6.000 %, APR 7.278 %: $3,399.94 a month now, $3,399.94 after three years,
    $21,082.06 cash, $648,184.46 over 7 years.

  Mixes that no other beats in month, cash and cost at once (16 of 63, evenly)
                                               pays of
     off the                                points and    a month               cost over 7
       price  note rate       APR  buydown       costs        now  cash needed        years
   $1,311.00    6.500 %   7.815 %      2-1   $8,689.00  $3,058.78   $21,131.69  $655,571.40
     $655.00    6.500 %   7.815 %      2-1   $9,345.00  $3,063.79   $20,519.69  $656,008.07
       $0.00    6.500 %   7.815 %      2-1  $10,000.00  $3,068.81   $19,907.63  $656,444.73
   $1,206.00    6.125 %   7.407 %      1-0   $8,794.00  $3,204.24   $20,436.61  $650,779.83
     $241.00    6.125 %   7.407 %      1-0   $9,759.00  $3,211.98   $19,534.60  $651,411.11
     $966.00    6.250 %   7.545 %      1-0   $9,034.00  $3,235.71   $18,331.42  $652,394.45
   $1,445.00    6.375 %   7.683 %      1-0   $8,555.00  $3,261.54   $16,903.22  $653,539.15
       $0.00    6.500 %   7.815 %      1-0  $10,000.00  $3,303.36   $14,132.27  $656,444.73
     $251.00    5.875 %   7.136 %     none   $9,749.00  $3,392.38   $20,922.13  $648,974.17
       $0.00    5.875 %   7.136 %     none  $10,000.00  $3,394.52   $20,687.80  $649,137.16
   $1,851.00    6.000 %   7.275 %     none   $8,149.00  $3,409.43   $20,040.36  $648,906.47
     $740.00    6.000 %   7.275 %     none   $9,260.00  $3,418.95   $18,998.66  $649,630.08
   $1,839.00    6.125 %   7.407 %     none   $8,161.00  $3,440.34   $18,134.19  $650,365.80
   $2,561.00    6.250 %   7.545 %     none   $7,439.00  $3,465.01   $16,923.17  $651,344.64
   $3,275.00    6.375 %   7.683 %     none   $6,725.00  $3,489.83   $15,712.22  $652,328.35
     $710.00    6.500 %   7.815 %     none   $9,289.10  $3,543.79   $11,851.00  $655,971.54

The money comes on top of the incentives and credits that the inquiry uses already, and the cap is
on all of them together. It pays points first, then the buydown, closing costs, prepaids; never a
down payment. In no mix does the buyer put more of their own into costs and points than without it.
Money that options are credited with makes the price less and is reckoned as off the price.

Cost is what has been spent and is still owed: cash, payments less what a buydown pays of them,
insurance, taxes, dues, and the balance. The month is the settled one, now and after three years.
Money off the price comes in whole dollars; between the amounts told the figures run evenly.

Where such money depends on a lender, a title company or a date, its conditions say so. You may
choose any lender, and then may have to go without it: compare the whole cost.

Mortgage insurance paid up at once in place of the month's could be another use: the lending data
has no factors for it.

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
2>   expected whole years from 1 to 40, such as 7
2>   [payment-input]
= 1
