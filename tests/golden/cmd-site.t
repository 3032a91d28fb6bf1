# Where the home can stand, and what another lot or plan would change.
$ quoin site data/buyer.json --rates data/rates
Lots and plans
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Each change below is figured with Ten percent down: A short loan: interest rate 6.250%, 0.000
  points, APR 6.422%, loan term 1 year, down payment $10,312.00 (10.00%), LTV 90.00%, 60-day rate
  lock

  lot               ground     plans                     for you                 premium
  1      available  level      every plan                yours                     $0.00
  2      available  walk-out   every plan                your plan fits        $5,000.00
        +$5,000.00 in price, +$396.27 a month, +$546.26 in cash needed
  3      sold       level      every plan                                          $0.00

  plan                                                           for you                  base price
  Cabin         ranch       600 sq ft, 1 bed, 1 bath             yours                   $100,000.00

Lot widths and setbacks come from the price book. The survey and the permit drawings decide what can
be built where.

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

# Under another way to pay.
$ quoin site data/buyer.json --scenario "A third down" --rates data/rates
Lots and plans
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Each change below is figured with A third down: A short loan: interest rate 6.000%, 1.000
  points, APR 7.739%, loan term 1 year, down payment $35,000.00 (33.94%), LTV 66.06%, 60-day rate
  lock

  lot               ground     plans                     for you                 premium
  1      available  level      every plan                yours                     $0.00
  2      available  walk-out   every plan                your plan fits        $5,000.00
        +$5,000.00 in price, +$436.53 a month, +$97.28 in cash needed
  3      sold       level      every plan                                          $0.00

  plan                                                           for you                  base price
  Cabin         ranch       600 sq ft, 1 bed, 1 bath             yours                   $100,000.00

Lot widths and setbacks come from the price book. The survey and the permit drawings decide what can
be built where.

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
