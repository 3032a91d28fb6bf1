# What every option adds: each alone, those in the home taken out, and stacked in the order chosen.
# The stove needs its flue, which is chosen; the gas heater cannot stand beside a stove.
$ quoin adds data/buyer.json --rates data/rates
your options together: +$3,120.00 · +$247.27 a month · +$340.74 cash needed ·
  $8,197.59 a month in all · Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down
your options together: +$3,120.00 · +$272.40 a month · +$60.62 cash needed ·
  $6,015.72 a month in all · A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
These are estimates with sample rates, as of November 24, 2026.

What each option adds
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Contract price now: $103,120.00

Add one option to your home as it is now: the change in price and in monthly payment
                                                         Ten percent    A third
                                                  price         down       down
  Inside
    Wood stove                               +$2,600.00     +$206.06   +$226.99
        wish 1
    Gas heater *                             +$1,800.00     +$142.66   +$157.14
    Warm package                             +$2,200.00     +$174.36   +$192.07

Take out one option you chose: the change in price and in monthly payment
                                                         Ten percent    A third
                                                  price         down       down
  Inside
    Floor: Oak                               -$2,040.00     -$161.67   -$178.11
    Insulated flue *                           -$900.00      -$71.33    -$78.58
    Shelves                                    -$180.00      -$14.26    -$15.72

Not available
  Walk-out door: only on walk-out lots

Your options one by one, starting from none: the change in price and in monthly payment
                                                         Ten percent    A third
                                                  price         down       down
  Floor: Oak                                 +$2,040.00     +$161.68   +$178.10
  Insulated flue                               +$900.00      +$71.33    +$78.58
  Shelves                                      +$180.00      +$14.26    +$15.72
                                            -----------  -----------  ---------
  all together                               +$3,120.00     +$247.27   +$272.40

The loans
  Ten percent down: $8,197.59 a month. A short loan: interest rate 6.250%, 0.000 points, APR
    6.422%, loan term 1 year, down payment $10,312.00 (10.00%), LTV 90.00%, 60-day rate lock. Rule
    of thumb: each $1,000 you borrow costs $86.18 a month.
  A third down: $6,015.72 a month. A short loan: interest rate 6.000%, 1.000 points, APR 7.739%,
    loan term 1 year, down payment $35,000.00 (33.94%), LTV 66.06%, 60-day rate lock. Rule of
    thumb: each $1,000 you borrow costs $86.07 a month.

Each figure is one whole quote minus another, with each quote rounded first. So an option alone and
the same option after others can differ by cents. They can differ by more where a loan rule changes
at a certain amount.

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
