# What a builder's money does in each use, and in the best mix.
$ quoin credit data/buyer.json --amount 2500 --rates data/rates
lowest cost over the whole loan: $2,500.00 off the price · $7,999.46 a month ·
  $10,693.32 cash needed · Ten percent down: 6.250% (6.422% APR), 1 year, $10,062.00 down
lowest cost over the whole loan: $2,500.00 off the price · $5,797.45 a month ·
  $36,206.26 cash needed · A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
These are estimates with sample rates, as of November 24, 2026.

What $2,500.00 from the builder can do
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Contract price without it: $103,120.00

Ten percent down: $8,197.59 a month without it. A short loan: interest rate 6.250%, 0.000
  points, APR 6.422%, loan term 1 year, down payment $10,312.00 (10.00%), LTV 90.00%, 60-day rate
  lock

  The best mix for each goal
  lowest payment now: $2,500.00 off the price. Interest rate 6.250%, APR 6.422%. $7,999.46 a
    month now, $149.77 a month after three years. Cash needed: $10,693.32. Cost over the whole
    loan: $106,234.07.
  least cash: $1,862.00 off the price, $637.24 to prepaids; $0.76 is not used. Interest rate
    6.250%, APR 6.422%. $8,050.01 a month now, $150.56 a month after three years. Cash needed:
    $10,126.00. Cost over the whole loan: $106,270.44.
  lowest cost over the whole loan: $2,500.00 off the price. Interest rate 6.250%, APR 6.422%.
    $7,999.46 a month now, $149.77 a month after three years. Cash needed: $10,693.32. Cost over
    the whole loan: $106,234.07.

                              interest              a month  after three
  all of it put to one use        rate       APR        now        years  cash needed   not used
  without it                    6.250%    6.422%  $8,197.59      $152.87   $10,966.45      $0.00
  off the price                 6.250%    6.422%  $7,999.46      $149.77   $10,693.32      $0.00
  closing costs and prepaids    6.250%    6.422%  $8,197.59      $152.87   $10,312.00  $1,845.55
  points: 1.000                 6.000%    6.172%  $8,186.92      $152.87   $10,955.57  $1,571.92
  1-0 temporary buydown: not with this loan
  2-1 temporary buydown: not with this loan
  3-2-1 temporary buydown: not with this loan
  upfront fee or single premium: not with this loan

  cost, with what is still owed, after  the whole loan
  without it                               $108,873.53
  off the price                            $106,234.07
  closing costs and prepaids               $108,219.08
  points: 1.000                            $108,734.66

  Mixes that no other mix beats on payment, cash and cost all at once
                                                                                 cost over
     off the  interest                      to points    a month                 the whole
       price      rate       APR  buydown   and costs        now  cash needed         loan
   $2,500.00    6.250%    6.422%     none       $0.00  $7,999.46   $10,693.32  $106,234.07
   $2,187.00    6.250%    6.422%     none     $313.00  $8,024.20   $10,415.22  $106,251.42
   $1,875.00    6.250%    6.422%     none     $625.00  $8,048.96   $10,137.20  $106,269.08
   $1,863.00    6.250%    6.422%     none     $637.00  $8,049.93   $10,126.21  $106,269.61
   $1,862.00    6.250%    6.422%     none     $637.24  $8,050.01   $10,126.00  $106,270.44

  The seller and other interested parties may contribute up to 3% of the home's value, or
  $3,093.60. $1,200.00 of that is already used.

A third down: $6,015.72 a month without it. A short loan: interest rate 6.000%, 1.000 points,
  APR 7.739%, loan term 1 year, down payment $35,000.00 (33.94%), LTV 66.06%, 60-day rate lock

  The best mix for each goal
  lowest payment now: $2,500.00 off the price. Interest rate 6.000%, APR 7.739%. $5,797.45 a
    month now, $149.77 a month after three years. Cash needed: $36,206.26. Cost over the whole
    loan: $105,775.66.
  least cash: $1,269.00 off the price, $668.51 to points (6.000% with 1.000 points), $561.55 to
    prepaids; $0.94 is not used. Interest rate 6.000%, APR 6.001%. $5,904.92 a month now, $151.29
    a month after three years. Cash needed: $35,000.00. Cost over the whole loan: $105,859.02.
  lowest cost over the whole loan: $2,500.00 off the price. Interest rate 6.000%, APR 7.739%.
    $5,797.45 a month now, $149.77 a month after three years. Cash needed: $36,206.26. Cost over
    the whole loan: $105,775.66.

                              interest              a month  after three
  all of it put to one use        rate       APR        now        years  cash needed   not used
  without it                    6.000%    7.739%  $6,015.72      $152.87   $36,254.73      $0.00
  off the price                 6.000%    7.739%  $5,797.45      $149.77   $36,206.26      $0.00
  closing costs and prepaids    6.000%    7.739%  $6,015.72      $152.87   $35,681.20  $1,926.47
  points: no lower rate is available
  1-0 temporary buydown: not with this loan
  2-1 temporary buydown: not with this loan
  3-2-1 temporary buydown: not with this loan
  upfront fee or single premium: not with this loan

  cost, with what is still owed, after  the whole loan
  without it                               $108,443.32
  off the price                            $105,775.66
  closing costs and prepaids               $107,869.79

  Mixes that no other mix beats on payment, cash and cost all at once
                                                                                 cost over
     off the  interest                      to points    a month                 the whole
       price      rate       APR  buydown   and costs        now  cash needed         loan
   $2,500.00    6.000%    7.739%     none       $0.00  $5,797.45   $36,206.26  $105,775.66
   $2,187.00    6.000%    6.911%     none     $313.00  $5,824.77   $35,899.29  $105,796.51
   $1,875.00    6.000%    6.099%     none     $625.00  $5,852.02   $35,593.39  $105,817.64
   $1,562.00    6.000%    6.001%     none     $938.00  $5,879.34   $35,286.42  $105,838.49
   $1,270.00    6.000%    6.001%     none   $1,230.00  $5,904.83   $35,000.13  $105,858.11
   $1,269.00    6.000%    6.001%     none   $1,230.06  $5,904.92   $35,000.00  $105,859.02

  The seller and other interested parties may contribute up to 3% of the home's value, or
  $3,093.60. $1,200.00 of that is already used.

This money comes on top of any incentives and credits already counted here. The limit on
contributions covers all of them together. The money pays points first, then the buydown, closing
costs, prepaids, and an upfront fee or premium in cash. It never pays the down payment. In no mix do
you pay more of your own money for costs and points than without it. Money credited toward options
lowers the price, and counts here as money off the price.

Cost is what you have spent plus what you still owe: cash, payments minus the part a buydown pays,
insurance, taxes, dues and the loan balance. Monthly payments, now and after three years, count full
taxes, after the home is assessed. Money off the price comes in whole dollars. Between the amounts
shown, the figures change evenly.

If the money depends on a lender, a title company or a date, its conditions say so. You may choose
any lender, and may then have to go without the money. Compare the whole cost.

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
$ quoin credit ../../examples/oxbarrow-meadow/buyers/six-programs.json --amount 10000 --scenario "Conventional, 5% down, 30 years" --years 5
lowest cost over 5 years: $10,000.00 off the price · $3,878.65 a month · $26,635.00 cash needed ·
  Conventional, 5% down, 30 years: 6.375% (6.849% APR), 30 years, $24,383.00 down
These are estimates with sample rates, as of November 24, 2026.

What $10,000.00 from the builder can do
Oxbarrow Meadow by Tarnwick Builders
Teasel plan (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 14, 2027
Prepared by Sales desk, Oxbarrow Meadow
Contract price without it: $497,660.00

Conventional, 5% down, 30 years: $3,957.34 a month without it. Conventional, fixed rate:
  interest rate 6.375%, lender credit of 0.125 points, APR 6.848%, loan term 30 years, down
  payment $24,883.00 (5.00%), LTV 95.00%, 180-day rate lock

  The best mix for each goal
  lowest payment now: $4,162.00 off the price, $1,758.09 to points (6.250% with 0.375 points),
    $3,573.12 to a 1-0 buydown, $506.79 to prepaids. Interest rate 6.250%, APR 6.718%. $3,588.60 a
    month now, $3,886.36 a month after three years. Cash needed: $27,048.41. Cost over 5 years:
    $694,243.63.
  least cash: $7,720.00 off the price, $2,279.91 to prepaids; $0.09 is not used. Interest rate
    6.375%, APR 6.849%. $3,896.59 a month now, $3,896.59 a month after three years. Cash needed:
    $24,497.00. Cost over 5 years: $693,366.32.
  lowest cost over 5 years: $10,000.00 off the price. Interest rate 6.375%, APR 6.849%.
    $3,878.65 a month now, $3,878.65 a month after three years. Cash needed: $26,635.00. Cost over
    5 years: $692,403.01.

                              interest              a month  after three
  all of it put to one use        rate       APR        now        years  cash needed   not used
  without it                    6.375%    6.848%  $3,957.34    $3,957.34   $27,257.45      $0.00
  off the price                 6.375%    6.849%  $3,878.65    $3,878.65   $26,635.00      $0.00
  closing costs and prepaids    6.375%    6.848%  $3,957.34    $3,957.34   $24,883.00  $7,625.55
  points: 1.375                 6.000%    6.459%  $3,842.37    $3,842.37   $27,759.86  $3,499.32
  1-0 temporary buydown         6.375%    6.848%  $3,655.25    $3,957.34   $27,257.45  $6,374.92
  2-1 temporary buydown: needs $10,693.08
  3-2-1 temporary buydown: needs $21,005.64
  Mortgage insurance, single premium, in cash: needs $9,550.10, more than the limit on
    contributions leaves

  cost, with what is still
  owed, after                      3 years       5 years       7 years      10 years  the whole loan
  without it                   $625,177.14   $706,627.52   $786,243.78   $901,676.02   $1,400,260.01
  off the price                $612,569.63   $692,403.01   $770,439.06   $883,581.20   $1,372,338.21
  closing costs and prepaids   $622,802.69   $704,253.07   $783,869.33   $899,301.57   $1,397,885.56
  points: 1.375                $620,348.49   $698,241.51   $774,313.06   $884,490.67   $1,358,224.32
  1-0 temporary buydown        $621,552.06   $703,002.44   $782,618.70   $898,050.94   $1,396,634.93

  Mixes that no other mix beats on payment, cash and cost all at once (16 of 29 shown, evenly
    spaced)
     off the  interest                      to points    a month               cost over 5
       price      rate       APR  buydown   and costs        now  cash needed        years
   $4,162.00    6.250%    6.718%      1-0   $5,838.00  $3,588.60   $27,048.41  $694,243.63
   $3,641.00    6.250%    6.718%      1-0   $6,359.00  $3,592.35   $26,566.07  $694,463.50
   $2,649.00    6.250%    6.718%      1-0   $7,350.33  $3,599.46   $25,648.74  $694,880.80
   $6,501.00    6.375%    6.849%      1-0   $3,499.00  $3,608.03   $26,931.72  $693,881.39
   $4,875.00    6.375%    6.848%      1-0   $5,125.00  $3,619.83   $25,419.41  $694,567.29
   $4,081.00    6.375%    6.848%      1-0   $5,919.00  $3,625.61   $24,679.79  $694,903.29
   $2,692.00    6.000%    6.459%     none   $7,308.00  $3,821.79   $26,747.59  $693,614.28
   $2,649.00    6.000%    6.459%     none   $7,350.33  $3,822.12   $26,708.50  $693,632.89
   $5,449.00    6.125%     6.59%     none   $4,551.00  $3,838.44   $26,985.28  $693,080.41
   $4,086.00    6.125%     6.59%     none   $5,914.00  $3,848.95   $25,719.77  $693,652.26
   $3,023.00    6.125%     6.59%     none   $6,977.00  $3,857.15   $24,732.72  $694,099.01
   $7,797.00    6.250%    6.718%     none   $2,203.00  $3,858.04   $26,867.65  $692,712.44
   $5,847.00    6.250%    6.718%     none   $4,153.00  $3,873.24   $25,047.69  $693,533.97
   $5,382.00    6.250%    6.718%     none   $4,617.65  $3,876.86   $24,614.00  $693,730.11
   $8,750.00    6.375%    6.849%     none   $1,250.00  $3,888.48   $25,463.28  $692,931.06
   $7,720.00    6.375%    6.849%     none   $2,279.91  $3,896.59   $24,497.00  $693,366.32

  The seller and other interested parties may contribute up to 3% of the home's value, or
  $14,929.80. $7,500.00 of that is already used.

This money comes on top of any incentives and credits already counted here. The limit on
contributions covers all of them together. The money pays points first, then the buydown, closing
costs, prepaids, and an upfront fee or premium in cash. It never pays the down payment. In no mix do
you pay more of your own money for costs and points than without it. Money credited toward options
lowers the price, and counts here as money off the price.

Cost is what you have spent plus what you still owe: cash, payments minus the part a buydown pays,
insurance, taxes, dues and the loan balance. Monthly payments, now and after three years, count full
taxes, after the home is assessed. Money off the price comes in whole dollars. Between the amounts
shown, the figures change evenly.

If the money depends on a lender, a title company or a date, its conditions say so. You may choose
any lender, and may then have to go without the money. Compare the whole cost.

An upfront fee paid in cash is not borrowed, so you pay no interest on it. A single premium takes
the place of monthly mortgage insurance. Its certificate says whether any of it comes back if the
loan ends early.

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
$ quoin credit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --amount 10000 --scenario "Conventional, 3% down" --instead
lowest cost over 7 years: $2,957.00 off the price, $7,043.00 to points (6.000% with 1.875 points) ·
  $3,399.98 a month · $20,527.12 cash needed ·
  Conventional, 3% down: 6.000% (7.28% APR), 30 years, $11,784.00 down
These are estimates with sample rates, as of November 24, 2026.

What $10,000.00 from the builder can do
Oxbarrow Meadow by Tarnwick Builders
Sorrel plan (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 20, 2027
Prepared by Sales desk, Oxbarrow Meadow
Contract price without it: $395,725.00

Conventional, 3% down: $3,550.09 a month without it. Conventional, fixed rate: interest rate
  6.500%, 0.000 points, APR 7.817%, loan term 30 years, down payment $11,872.00 (3.00%), LTV
  97.00%, 180-day rate lock

  The best mix for each goal
  lowest payment now: $1,309.00 off the price, $8,691.00 to a 2-1 buydown. Interest rate 6.500%,
    APR 7.817%. $3,058.79 a month now, $3,538.48 a month after three years. Cash needed:
    $20,576.10. Cost over 7 years: $655,018.76.
  least cash: $1,272.00 off the price, $4,465.21 to closing costs, $4,261.97 to prepaids; $0.82
    is not used. Interest rate 6.500%, APR 7.817%. $3,538.80 a month now, $3,538.80 a month after
    three years. Cash needed: $11,834.00. Cost over 7 years: $655,043.20.
  lowest cost over 7 years: $2,957.00 off the price, $7,043.00 to points (6.000% with 1.875
    points). Interest rate 6.000%, APR 7.28%. $3,399.98 a month now, $3,399.98 a month after three
    years. Cash needed: $20,527.12. Cost over 7 years: $647,637.30.

                              interest              a month  after three
  all of it put to one use        rate       APR        now        years  cash needed   not used
  without it                    6.500%    7.817%  $3,550.09    $3,550.09   $20,615.23      $0.00
  off the price                 6.500%    7.818%  $3,461.41    $3,461.41   $20,189.77      $0.00
  closing costs and prepaids    6.500%    7.817%  $3,550.09    $3,550.09   $11,872.00  $1,256.77
  points: 2.500                 5.875%    7.139%  $3,394.52    $3,394.52   $20,535.19    $403.67
  1-0 temporary buydown         6.500%    7.817%  $3,303.36    $3,550.09   $20,615.23  $7,039.24
  2-1 temporary buydown         6.500%    7.817%  $3,068.81    $3,550.09   $20,615.23  $1,263.88
  3-2-1 temporary buydown: needs $17,166.60
  Mortgage insurance, single premium, in cash: needs $21,419.00

  cost, with what is still
  owed, after                      3 years       5 years       7 years      10 years  the whole loan
  without it                   $518,519.00   $592,949.30   $665,888.45   $772,042.01   $1,191,554.87
  off the price                $505,548.58   $578,122.75   $649,243.42   $752,751.57   $1,161,910.25
  closing costs and prepaids   $509,775.77   $584,206.07   $657,145.22   $763,298.78   $1,182,811.64
  points: 2.500                $511,225.10   $580,841.78   $648,984.55   $748,028.06   $1,131,496.48
  1-0 temporary buydown        $515,558.24   $589,988.54   $662,927.69   $769,081.25   $1,188,594.11
  2-1 temporary buydown        $509,782.88   $584,213.18   $657,152.33   $763,305.89   $1,182,818.75

  Mixes that no other mix beats on payment, cash and cost all at once (16 of 62 shown, evenly
    spaced)
     off the  interest                      to points    a month               cost over 7
       price      rate       APR  buydown   and costs        now  cash needed        years
   $1,309.00    6.500%    7.817%      2-1   $8,691.00  $3,058.79   $20,576.10  $655,018.76
     $654.00    6.500%    7.817%      2-1   $9,346.00  $3,063.80   $19,963.79  $655,453.42
       $0.00    6.500%    7.817%      2-1  $10,000.00  $3,068.81   $19,351.35  $655,888.45
   $1,203.00    6.125%     7.41%      1-0   $8,797.00  $3,204.27   $19,879.95  $650,228.21
     $240.00    6.125%     7.41%      1-0   $9,760.00  $3,211.98   $18,977.99  $650,855.65
     $964.00    6.250%    7.548%      1-0   $9,036.00  $3,235.74   $17,775.12  $651,842.71
   $1,442.00    6.375%    7.685%      1-0   $8,558.00  $3,261.57   $16,347.07  $652,988.89
       $0.00    6.500%    7.817%      1-0  $10,000.00  $3,303.36   $13,575.99  $655,888.45
     $313.00    5.875%    7.139%     none   $9,687.00  $3,391.87   $20,424.10  $648,379.14
      $62.00    5.875%    7.139%     none   $9,938.00  $3,393.99   $20,189.33  $648,541.03
   $2,217.00    6.000%    7.277%     none   $7,783.00  $3,406.31   $19,831.71  $648,116.70
   $1,108.00    6.000%    7.277%     none   $8,892.00  $3,415.79   $18,789.66  $648,835.61
   $3,060.00    6.125%     7.41%     none   $6,940.00  $3,429.80   $18,734.30  $649,016.43
       $0.00    6.125%     7.41%     none  $10,000.00  $3,456.21   $15,845.21  $651,012.60
       $0.00    6.250%    7.548%     none  $10,000.00  $3,487.33   $13,941.90  $652,474.13
   $1,272.00    6.500%    7.817%     none   $8,727.18  $3,538.80   $11,834.00  $655,043.20

  The seller and other interested parties may contribute up to 3% of the home's value, or
  $11,871.75.

This money comes on top of any incentives and credits already counted here. The limit on
contributions covers all of them together. The money pays points first, then the buydown, closing
costs, prepaids, and an upfront fee or premium in cash. It never pays the down payment. In no mix do
you pay more of your own money for costs and points than without it. Money credited toward options
lowers the price, and counts here as money off the price.

Cost is what you have spent plus what you still owe: cash, payments minus the part a buydown pays,
insurance, taxes, dues and the loan balance. Monthly payments, now and after three years, count full
taxes, after the home is assessed. Money off the price comes in whole dollars. Between the amounts
shown, the figures change evenly.

If the money depends on a lender, a title company or a date, its conditions say so. You may choose
any lender, and may then have to go without the money. Compare the whole cost.

An upfront fee paid in cash is not borrowed, so you pay no interest on it. A single premium takes
the place of monthly mortgage insurance. Its certificate says whether any of it comes back if the
loan ends early.

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
$ quoin credit data/buyer.json --amount 0 --rates data/rates
2> quoin: found --amount 0
2>   expected an amount above zero and below the price, such as 10000
2>   [payment-input]
= 1
$ quoin credit data/buyer.json --amount -5 --rates data/rates
2> quoin: found --amount -5
2>   expected an amount above zero and below the price, such as 10000
2>   [payment-input]
= 1
$ quoin credit data/buyer.json --amount 900000 --rates data/rates
2> quoin: found --amount 900000
2>   expected an amount above zero and below the price, such as 10000
2>   [payment-input]
= 1
$ quoin credit data/buyer.json --amount 2500 --scenario "A thrd down" --rates data/rates
2> quoin: found no loan named "A thrd down"
2>   expected one of "Ten percent down", "A third down"
2>   did you mean "A third down"?
2>   [scenario-unknown]
= 1
$ quoin credit data/buyer.json --amount 2500 --years 0 --rates data/rates
2> quoin: found --years 0
2>   expected a whole number of years from 1 to 40
2>   [payment-input]
= 1
