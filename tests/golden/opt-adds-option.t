# One option in full, by part: a level is ID:LEVEL, a number ID=NUMBER.
$ quoin adds --rates data/rates data/buyer.json stove
What each option adds
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
contract price as it stands $103,120.00

The ways to pay
  Ten percent down: $8,197.59 a month. A short loan: 6.250 % note rate, 0.000 points, APR
    6.422 %, 1 year, $10,312.00 down (10.00 %), LTV 90.00 %, 60-day lock. Rule of thumb: $86.18 a
    month for each $1,000 of loan
  A third down: $6,015.72 a month. A short loan: 6.000 % note rate, 1.000 points, APR 7.739 %, 1
    year, $35,000.00 down (33.94 %), LTV 66.06 %, 60-day lock. Rule of thumb: $86.07 a month for
    each $1,000 of loan

Wood stove (stove), +$2,600.00, added
  wish 1
                              Ten percent      A third
                                     down         down
  principal and interest         +$201.67     +$223.77
  mortgage insurance               +$1.17        $0.00
  property tax                     +$2.60       +$2.60
  homeowner's insurance            +$0.62       +$0.62
                              -----------  -----------
  a month                        +$206.06     +$226.99
  cash needed                    +$284.16      +$50.67
  left to bring at closing        +$24.16     -$209.33
  over five years              +$2,745.13   +$2,774.57
  over the whole loan          +$2,745.13   +$2,774.57

Each figure is the difference of two whole quotes, rounded as they are; what an option adds alone
and what it adds stacked can differ by cents, and where a rule's line is crossed by more.

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
$ quoin adds --rates data/rates data/buyer.json floor:oak shelves=5
What each option adds
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
contract price as it stands $103,120.00

The ways to pay
  Ten percent down: $8,197.59 a month. A short loan: 6.250 % note rate, 0.000 points, APR
    6.422 %, 1 year, $10,312.00 down (10.00 %), LTV 90.00 %, 60-day lock. Rule of thumb: $86.18 a
    month for each $1,000 of loan
  A third down: $6,015.72 a month. A short loan: 6.000 % note rate, 1.000 points, APR 7.739 %, 1
    year, $35,000.00 down (33.94 %), LTV 66.06 %, 60-day lock. Rule of thumb: $86.07 a month for
    each $1,000 of loan

Floor: Oak (floor:oak), -$2,040.00, taken out
                              Ten percent      A third
                                     down         down
  principal and interest         -$158.23     -$175.58
  mortgage insurance               -$0.91        $0.00
  property tax                     -$2.04       -$2.04
  homeowner's insurance            -$0.49       -$0.49
                              -----------  -----------
  a month                        -$161.67     -$178.11
  cash needed                    -$222.91      -$39.65
  left to bring at closing        -$18.91     +$164.35
  over five years              -$2,153.82   -$2,176.93
  over the whole loan          -$2,153.82   -$2,176.93

Shelves (shelves), +$120.00, added
                              Ten percent      A third
                                     down         down
  principal and interest           +$9.31      +$10.32
  mortgage insurance               +$0.06        $0.00
  property tax                     +$0.12       +$0.12
  homeowner's insurance            +$0.03       +$0.03
                              -----------  -----------
  a month                          +$9.52      +$10.47
  cash needed                     +$13.11       +$2.31
  left to bring at closing         +$1.11       -$9.69
  over five years                +$126.76     +$128.02
  over the whole loan            +$126.76     +$128.02

Each figure is the difference of two whole quotes, rounded as they are; what an option adds alone
and what it adds stacked can differ by cents, and where a rule's line is crossed by more.

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
$ quoin adds --rates data/rates data/buyer.json floor:oka stvoe shelves=99
2> quoin: found no option "floor:oka"
2>   expected the id of an option, such as those of 'quoin list options'
2>   did you mean "floor:oak"?
2>   [option-unknown]
2> quoin: found no option "stvoe"
2>   expected the id of an option, such as those of 'quoin list options'
2>   did you mean "stove"?
2>   [option-unknown]
2> quoin: found "99" for shelves
2>   expected a quantity from 1 to 8 in steps of 1
2>   [option-number]
= 1
