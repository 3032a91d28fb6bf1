# What every option adds: each alone, those in the home taken out, and stacked in the order chosen.
# The stove needs its flue, which is chosen; the gas heater cannot stand beside a stove.
$ quoin adds data/buyer.json --rates data/rates
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

Each one alone, added to the home as it stands: a month
                                                         Ten percent    A third
                                                  price         down       down
  Inside
    Wood stove                               +$2,600.00     +$206.06   +$226.99
        wish 1
    Gas heater *                             +$1,800.00     +$142.66   +$157.14
    Warm package                             +$2,200.00     +$174.36   +$192.07

Already chosen; taking one out: a month
                                                         Ten percent    A third
                                                  price         down       down
  Inside
    Floor: Oak                               -$2,040.00     -$161.67   -$178.11
    Insulated flue *                           -$900.00      -$71.33    -$78.58
    Shelves                                    -$180.00      -$14.26    -$15.72

Not to be had here
  Walk-out door: only on lots graded walk-out

Stacked in the buyer's order, from the home without options: a month
                                                         Ten percent    A third
                                                  price         down       down
  Floor: Oak                                 +$2,040.00     +$161.68   +$178.10
  Insulated flue                               +$900.00      +$71.33    +$78.58
  Shelves                                      +$180.00      +$14.26    +$15.72
                                            -----------  -----------  ---------
  together                                   +$3,120.00     +$247.27   +$272.40

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
