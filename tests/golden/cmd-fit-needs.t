# Must-haves that exclude each other through what they need: which of them, and by which rules.
$ quoin fit data/needs/buyer.json --rates data/rates --monthly 9000 --cash 20000
Which wishes fit
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
within $9,000.00 a month and $20,000.00 of cash in all

Ten percent down
Nothing can be chosen: Darkroom and Window seat, must-haves, cannot stand together: Darkroom
  needs Blackout shutters; Window seat needs Bay window; Blackout shutters and Bay window exclude
  each other.


A wish is worth its weight, or n + 1 less its place among the n wishes by rank. What was left out is
figured as the difference of two whole quotes. Limits are on the settled month and on all the cash,
deposits among it.

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
