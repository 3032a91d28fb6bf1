# The home area by area: what comes with it, what is in it, what a touch changes.
$ quoin tour data/buyer.json --rates data/rates
The home, area by area
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Contract price $103,120.00
Ten percent down: $8,197.59 a month, $9,654.45 cash to close. A short loan: interest rate
  6.250%, 0.000 points, APR 6.422%, loan term 1 year, down payment $10,312.00 (10.00%), LTV
  90.00%, 60-day rate lock
Lines marked + come with your plan. The last two columns show what changes if you add an option,
or take out one you chose.

                                                                       price    a month  cash needed

  Outside
    Walk-out door                                 not available    $3,200.00
        only on walk-out lots
        decide by: Permit drawings
    special request, not in the price: A bench by the door

  Inside
    + Pine floor
    Floor
      Pine                                        available        no charge   -$161.67     -$222.91
      Oak                                         chosen           $2,040.00   -$161.67     -$222.91
        480 sq ft
    Wood stove                                    available        $2,600.00   +$206.06     +$284.16
        wish 1
    Insulated flue *                              chosen             $900.00    -$71.33      -$98.29
        decide by: Framing
    Gas heater *                                  available        $1,800.00   +$142.66     +$196.66
    Shelves                                       chosen             $180.00    -$14.26      -$19.73
        3 of them; a quantity from 1 to 8, in steps of 1
    Wall color
      White                                       available        no charge
      Sand                                        chosen           no charge
    Lamps                                         included         no charge
        $300.00 allowance included
    Warm package                                  available        $3,100.00   +$174.36     +$240.44
        comes with Wood stove, Insulated flue

Incentives from the builder
  Opening weeks, $1,200.00: used: $1,200.00 toward closing costs

What an option changes is one whole quote minus another, with each quote rounded first.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

* Marked items involve gas, electric, plumbing or structural work. That work must follow local code,
needs a permit and must be done by a licensed trade, now or later.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
$ quoin tour data/buyer.json --scenario "A third down" --rates data/rates
The home, area by area
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Contract price $103,120.00
A third down: $6,015.72 a month, $34,942.73 cash to close. A short loan: interest rate 6.000%,
  1.000 points, APR 7.739%, loan term 1 year, down payment $35,000.00 (33.94%), LTV 66.06%, 60-day
  rate lock
Lines marked + come with your plan. The last two columns show what changes if you add an option,
or take out one you chose.

                                                                       price    a month  cash needed

  Outside
    Walk-out door                                 not available    $3,200.00
        only on walk-out lots
        decide by: Permit drawings
    special request, not in the price: A bench by the door

  Inside
    + Pine floor
    Floor
      Pine                                        available        no charge   -$178.11      -$39.65
      Oak                                         chosen           $2,040.00   -$178.11      -$39.65
        480 sq ft
    Wood stove                                    available        $2,600.00   +$226.99      +$50.67
        wish 1
    Insulated flue *                              chosen             $900.00    -$78.58      -$17.46
        decide by: Framing
    Gas heater *                                  available        $1,800.00   +$157.14      +$35.00
    Shelves                                       chosen             $180.00    -$15.72       -$3.53
        3 of them; a quantity from 1 to 8, in steps of 1
    Wall color
      White                                       available        no charge
      Sand                                        chosen           no charge
    Lamps                                         included         no charge
        $300.00 allowance included
    Warm package                                  available        $3,100.00   +$192.07      +$42.78
        comes with Wood stove, Insulated flue

Incentives from the builder
  Opening weeks, $1,200.00: used: $1,200.00 toward closing costs

What an option changes is one whole quote minus another, with each quote rounded first.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

* Marked items involve gas, electric, plumbing or structural work. That work must follow local code,
needs a permit and must be done by a licensed trade, now or later.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
$ quoin tour data/buyer.json --scenario nobody --rates data/rates
2> quoin: found no loan named "nobody"
2>   expected one of "Ten percent down", "A third down"
2>   [scenario-unknown]
= 1

# One area alone.
$ quoin tour data/buyer.json --rates data/rates --area outside
The home, area by area
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Contract price $103,120.00
Ten percent down: $8,197.59 a month, $9,654.45 cash to close. A short loan: interest rate
  6.250%, 0.000 points, APR 6.422%, loan term 1 year, down payment $10,312.00 (10.00%), LTV
  90.00%, 60-day rate lock
Lines marked + come with your plan. The last two columns show what changes if you add an option,
or take out one you chose.

                                                                       price    a month  cash needed

  Outside
    Walk-out door                                 not available    $3,200.00
        only on walk-out lots
        decide by: Permit drawings
    special request, not in the price: A bench by the door

Incentives from the builder
  Opening weeks, $1,200.00: used: $1,200.00 toward closing costs

What an option changes is one whole quote minus another, with each quote rounded first.

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
