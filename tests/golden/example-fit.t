# The wishes of a buyer of the example: one loan, on the lot in hand and on the others.
$ quoin fit ../../examples/oxbarrow-meadow/buyers/six-programs.json --monthly 4060 --cash 45000 --scenario "Conventional, 5% down, 30 years"
worth 12 · $508,567.60 · $4,046.57 a month · $27,987.68 cash needed ·
  Conventional, 5% down, 30 years: 6.375% (6.848% APR), 30 years, $25,428.60 down
These are estimates with sample rates, as of November 24, 2026.

Which wishes fit your limits
Oxbarrow Meadow by Tarnwick Builders
Teasel plan (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 14, 2027
Prepared by Sales desk, Oxbarrow Meadow
Your limits: $4,060.00 a month and $45,000.00 cash needed, deposits included

Conventional, 5% down, 30 years
Price $508,567.60, $4,046.57 a month, $27,987.68 cash needed; $266.72 cash back at closing
  Conventional, fixed rate: interest rate 6.375%, lender credit of 0.125 points, APR 6.848%, loan
  term 30 years, down payment $25,428.60 (5.00%), LTV 95.00%, 180-day rate lock
Worth 12. Proven: no choice within your limits is worth more, and none worth as much costs less
  a month. Choices looked into: 4.

                                                rank      worth        price     a month        cash

  chosen
  Windows: Triple pane, low-E                   2             5    $6,400.00
  Tile floors in the baths, 192 sq ft           3             4    $2,265.60
  Heated floor, owner's bath, 118 sq ft         4             3    $2,242.00

  left out: what each would add, and why it did not fit
  Basement finish: Framed, wired and insulated  1             6  +$11,200.00     +$88.22    +$698.19
        over your monthly limit by $74.79
  Larger island                                 5             2   +$4,200.00     +$33.09    +$261.66
        over your monthly limit by $19.66
  Boulder wall and steps                        6             1   +$7,800.00     +$61.45    +$486.28
        over your monthly limit by $48.02

To add Basement finish: Framed, wired and insulated: raise your monthly limit by $74.79. Or stay
  within your limits and give up Windows: Triple pane, low-E; Tile floors in the baths; Heated
  floor, owner's bath. That choice is worth 6.

A wish is worth its weight. If it has no weight, its place by rank decides: the last of your wishes
is worth 1, the one before it 2, and so on up to the first. What a wish left out would add is the
difference between two whole quotes. Your limits are for the monthly payment with full taxes and for
all the cash needed, deposits included.

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
$ quoin fit ../../examples/oxbarrow-meadow/buyers/six-programs.json --monthly 4000 --cash 40000 --lots --scenario "FHA, 3.5% down, 30 years"
lot 7 · worth 12 · $508,567.60 · $3,976.41 a month · $20,919.95 cash needed ·
  FHA, 3.5% down, 30 years: 5.875% (6.607% APR), 30 years, $17,800.60 down
These are estimates with sample rates, as of November 24, 2026.

Which wishes fit your limits
Oxbarrow Meadow by Tarnwick Builders
Teasel plan (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 14, 2027
Prepared by Sales desk, Oxbarrow Meadow
Your limits: $4,000.00 a month and $40,000.00 cash needed, deposits included

FHA, 3.5% down, 30 years
  lot       worth        price     a month         cash
  7            12  $508,567.60   $3,976.41   $20,919.95
  4                                                      your choices do not work here
        Walk-out basement would be removed: only on walk-out lots
  6                                                      your choices do not work here
        Walk-out basement would be removed: only on walk-out lots
  9             0  $511,160.00   $3,996.47   $21,045.04
  12                                                     your choices do not work here
        Walk-out basement would be removed: only on walk-out lots

On lot 7:
Price $508,567.60, $3,976.41 a month, $20,919.95 cash needed; $7,334.45 cash back at closing
  FHA, fixed rate: interest rate 5.875%, 0.000 points, APR 6.607%, loan term 30 years, down
  payment $17,800.60 (3.50%), LTV 96.50%, 180-day rate lock
Worth 12. Proven: no choice within your limits is worth more, and none worth as much costs less
  a month. Choices looked into: 8.

                                                rank      worth        price     a month        cash

  chosen
  Windows: Triple pane, low-E                   2             5    $6,400.00
  Tile floors in the baths, 192 sq ft           3             4    $2,265.60
  Heated floor, owner's bath, 118 sq ft         4             3    $2,242.00

  left out: what each would add, and why it did not fit
  Basement finish: Framed, wired and insulated  1             6  +$11,200.00     +$86.68    +$542.83
        over your monthly limit by $63.09
  Larger island                                 5             2   +$4,200.00     +$32.52    +$203.28
        over your monthly limit by $8.93
  Boulder wall and steps                        6             1   +$7,800.00     +$60.38    +$377.65
        over your monthly limit by $36.79

To add Basement finish: Framed, wired and insulated: raise your monthly limit by $63.09. Or stay
  within your limits and give up Windows: Triple pane, low-E; Heated floor, owner's bath. That
  choice is worth 10.

A wish is worth its weight. If it has no weight, its place by rank decides: the last of your wishes
is worth 1, the one before it 2, and so on up to the first. What a wish left out would add is the
difference between two whole quotes. Your limits are for the monthly payment with full taxes and for
all the cash needed, deposits included.

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
