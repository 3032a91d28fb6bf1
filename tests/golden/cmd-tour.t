# The home area by area: what comes with it, what is in it, what a touch changes.
$ quoin tour data/buyer.json --rates data/rates
The home, area by area
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
contract price $103,120.00
Ten percent down: $8,197.59 a month, $9,654.45 to bring to the closing. A short loan: 6.250 %
  note rate, 0.000 points, APR 6.422 %, 1 year, $10,312.00 down (10.00 %), LTV 90.00 %, 60-day
  lock
lines with + come with your plan; a month and cash are what taking it, or taking it out, changes

                                                                             price    a month  cash in all

  Outside
    Walk-out door                                       not to be had    $3,200.00
        only on lots graded walk-out
        choose before: Permit drawings
    asked for outside the price book: A bench by the door

  Inside
    + Pine floor
    Floor
    Pine                                                offered            no cost   -$161.67     -$222.91
    Oak                                                 chosen           $2,040.00   -$161.67     -$222.91
        480 sq ft
    Wood stove                                          offered          $2,600.00   +$206.06     +$284.16
        wish 1
    Insulated flue *                                    chosen             $900.00    -$71.33      -$98.29
        choose before: Framing
    Gas heater *                                        offered          $1,800.00   +$142.66     +$196.66
    Shelves                                             chosen             $180.00    -$14.26      -$19.73
        3 of them; a quantity from 1 to 8 in steps of 1
    Wall color
    White                                               offered            no cost
    Sand                                                chosen             no cost
    Lamps                                               included           no cost
        $300.00 is included
    Warm package                                        offered          $3,100.00   +$174.36     +$240.44
        brings Wood stove, Insulated flue

What the builder gives
  Opening weeks, $1,200.00: used: $1,200.00 towards closing costs

What a touch adds a month is the difference of two whole quotes, rounded as they are.

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
$ quoin tour data/buyer.json --scenario "A third down" --rates data/rates
The home, area by area
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
contract price $103,120.00
A third down: $6,015.72 a month, $34,942.73 to bring to the closing. A short loan: 6.000 % note
  rate, 1.000 points, APR 7.739 %, 1 year, $35,000.00 down (33.94 %), LTV 66.06 %, 60-day lock
lines with + come with your plan; a month and cash are what taking it, or taking it out, changes

                                                                             price    a month  cash in all

  Outside
    Walk-out door                                       not to be had    $3,200.00
        only on lots graded walk-out
        choose before: Permit drawings
    asked for outside the price book: A bench by the door

  Inside
    + Pine floor
    Floor
    Pine                                                offered            no cost   -$178.11      -$39.65
    Oak                                                 chosen           $2,040.00   -$178.11      -$39.65
        480 sq ft
    Wood stove                                          offered          $2,600.00   +$226.99      +$50.67
        wish 1
    Insulated flue *                                    chosen             $900.00    -$78.58      -$17.46
        choose before: Framing
    Gas heater *                                        offered          $1,800.00   +$157.14      +$35.00
    Shelves                                             chosen             $180.00    -$15.72       -$3.53
        3 of them; a quantity from 1 to 8 in steps of 1
    Wall color
    White                                               offered            no cost
    Sand                                                chosen             no cost
    Lamps                                               included           no cost
        $300.00 is included
    Warm package                                        offered          $3,100.00   +$192.07      +$42.78
        brings Wood stove, Insulated flue

What the builder gives
  Opening weeks, $1,200.00: used: $1,200.00 towards closing costs

What a touch adds a month is the difference of two whole quotes, rounded as they are.

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
$ quoin tour data/buyer.json --scenario nobody --rates data/rates
2> quoin: found no scenario "nobody"
2>   expected one of "Ten percent down", "A third down"
2>   [scenario-unknown]
= 1
