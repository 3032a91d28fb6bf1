# Every option by part of the month, with cash and years.
$ quoin adds --by-part --rates data/rates data/buyer.json
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

Insulated flue * (flue), -$900.00, taken out
  to be chosen before: Framing
                              Ten percent      A third
                                     down         down
  principal and interest          -$69.81      -$77.46
  mortgage insurance               -$0.40        $0.00
  property tax                     -$0.90       -$0.90
  homeowner's insurance            -$0.22       -$0.22
                              -----------  -----------
  a month                         -$71.33      -$78.58
  cash needed                     -$98.29      -$17.46
  left to bring at closing         -$8.29      +$72.54
  over five years                -$950.20     -$960.44
  over the whole loan            -$950.20     -$960.44

Gas heater * (heater), +$1,800.00, added
                              Ten percent      A third
                                     down         down
  principal and interest         +$139.62     +$154.91
  mortgage insurance               +$0.81        $0.00
  property tax                     +$1.80       +$1.80
  homeowner's insurance            +$0.43       +$0.43
                              -----------  -----------
  a month                        +$142.66     +$157.14
  cash needed                    +$196.66      +$35.00
  left to bring at closing        +$16.66     -$145.00
  over five years              +$1,900.43   +$1,920.79
  over the whole loan          +$1,900.43   +$1,920.79

Shelves (shelves), -$180.00, taken out
                              Ten percent      A third
                                     down         down
  principal and interest          -$13.96      -$15.50
  mortgage insurance               -$0.08        $0.00
  property tax                     -$0.18       -$0.18
  homeowner's insurance            -$0.04       -$0.04
                              -----------  -----------
  a month                         -$14.26      -$15.72
  cash needed                     -$19.73       -$3.53
  left to bring at closing         -$1.73      +$14.47
  over five years                -$190.03     -$192.08
  over the whole loan            -$190.03     -$192.08

Warm package (warm), +$2,200.00, added
                              Ten percent      A third
                                     down         down
  principal and interest         +$170.64     +$189.34
  mortgage insurance               +$0.99        $0.00
  property tax                     +$2.20       +$2.20
  homeowner's insurance            +$0.53       +$0.53
                              -----------  -----------
  a month                        +$174.36     +$192.07
  cash needed                    +$240.44      +$42.78
  left to bring at closing        +$20.44     -$177.22
  over five years              +$2,322.87   +$2,347.68
  over the whole loan          +$2,322.87   +$2,347.68

Not to be had here
  Walk-out door: only on lots graded walk-out

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

* Marked work on gas, wiring, plumbing or structure follows local code, needs a permit, and is done
by a licensed trade, now or later.

For the agent: prices, and how programs work in general, are yours to explain; presenting particular
loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment
brings duties (12 CFR 1026.24).
= 0
