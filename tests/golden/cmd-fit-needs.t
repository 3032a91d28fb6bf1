# Must-haves that exclude each other through what they need: which of them, and by which rules.
$ quoin fit data/needs/buyer.json --rates data/rates --monthly 9000 --cash 20000
Ten percent down: nothing fits

Which wishes fit your limits
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Your limits: $9,000.00 a month and $20,000.00 cash needed, deposits included

Ten percent down
Your choices do not work for this home: Darkroom and Window seat, must-haves, do not go
  together: Darkroom (needs Blackout shutters); Window seat (needs Bay window); Blackout shutters
  and Bay window do not go together.


A wish is worth its weight. If it has no weight, its place by rank decides: the last of your wishes
is worth 1, the one before it 2, and so on up to the first. What a wish left out would add is the
difference between two whole quotes. Your limits are for the monthly payment with full taxes and for
all the cash needed, deposits included.

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
