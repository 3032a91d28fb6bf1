# The wishes of a buyer of the example: one loan, on the lot in hand and on the others.
$ quoin fit ../../examples/oxbarrow-meadow/buyers/six-programs.json --monthly 4060 --cash 45000 --scenario "Conventional, 5% down, 30 years"
Which wishes fit
Oxbarrow Meadow, Tarnwick Builders
Teasel (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 14 May 2027
prepared by Sales desk, Oxbarrow Meadow
within $4,060.00 a month and $45,000.00 of cash in all

Conventional, 5 % down, 30 years
price $508,567.60, $4,046.57 a month, $27,987.68 in cash: $266.72 back at the closing
  Conventional fixed: 6.375 % note rate, -0.125 points, APR 6.848 %, 30 years, $25,428.60 down
  (5.00 %), LTV 95.00 %, 180-day lock
worth 12: proven, no choice within the limits is worth more, none worth as much costs less a
  month (4 looked into)

                                                rank      worth        price     a month         cash

  chosen
  Windows: Triple pane, low-E                   2             5    $6,400.00
  Tile floors in the baths, 192 sq ft           3             4    $2,265.60
  Heated floor, owner's bath, 118 sq ft         4             3    $2,242.00

  left out: what each would add to the above, and why it did not fit
  Basement finish: Framed, wired and insulated  1             6  +$11,200.00     +$88.22     +$698.19
        over the month by $74.79
  Larger island                                 5             2   +$4,200.00     +$33.09     +$261.66
        over the month by $19.66
  Boulder wall and steps                        6             1   +$7,800.00     +$61.45     +$486.28
        over the month by $48.02

To have Basement finish: Framed, wired and insulated as well: a month of $74.79 more; or, within
  the limits, give up Windows: Triple pane, low-E, Tile floors in the baths, Heated floor, owner's
  bath: worth 6 in all.

A wish is worth its weight, or n + 1 less its place among the n wishes by rank. What was left out is
figured as the difference of two whole quotes. Limits are on the settled month and on all the cash,
deposits among it.

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
$ quoin fit ../../examples/oxbarrow-meadow/buyers/six-programs.json --monthly 4000 --cash 40000 --lots --scenario "FHA, 3.5% down, 30 years"
Which wishes fit
Oxbarrow Meadow, Tarnwick Builders
Teasel (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 14 May 2027
prepared by Sales desk, Oxbarrow Meadow
within $4,000.00 a month and $40,000.00 of cash in all

FHA, 3.5 % down, 30 years
  lot       worth        price     a month         cash
  7            12  $508,567.60   $3,976.41   $20,919.95
  4                                                      nothing can be chosen
        Walk-out basement would fall out: only on lots graded walk-out
  6                                                      nothing can be chosen
        Walk-out basement would fall out: only on lots graded walk-out
  9             0  $511,160.00   $3,996.47   $21,045.04
  12                                                     nothing can be chosen
        Walk-out basement would fall out: only on lots graded walk-out

On lot 7:
price $508,567.60, $3,976.41 a month, $20,919.95 in cash: $7,334.45 back at the closing
  FHA-insured fixed: 5.875 % note rate, 0.000 points, APR 6.607 %, 30 years, $17,800.60 down
  (3.50 %), LTV 96.50 %, 180-day lock
worth 12: proven, no choice within the limits is worth more, none worth as much costs less a
  month (8 looked into)

                                                rank      worth        price     a month         cash

  chosen
  Windows: Triple pane, low-E                   2             5    $6,400.00
  Tile floors in the baths, 192 sq ft           3             4    $2,265.60
  Heated floor, owner's bath, 118 sq ft         4             3    $2,242.00

  left out: what each would add to the above, and why it did not fit
  Basement finish: Framed, wired and insulated  1             6  +$11,200.00     +$86.68     +$542.83
        over the month by $63.09
  Larger island                                 5             2   +$4,200.00     +$32.52     +$203.28
        over the month by $8.93
  Boulder wall and steps                        6             1   +$7,800.00     +$60.38     +$377.65
        over the month by $36.79

To have Basement finish: Framed, wired and insulated as well: a month of $63.09 more; or, within
  the limits, give up Windows: Triple pane, low-E, Heated floor, owner's bath: worth 10 in all.

A wish is worth its weight, or n + 1 less its place among the n wishes by rank. What was left out is
figured as the difference of two whole quotes. Limits are on the settled month and on all the cash,
deposits among it.

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
