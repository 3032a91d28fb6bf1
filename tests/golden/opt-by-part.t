# Every option by part of the month, with cash and years.
$ quoin adds --by-part --rates data/rates data/buyer.json
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

Floor: Oak (floor:oak), in your home already: it adds +$2,040.00
                              Ten percent      A third
                                     down         down
  principal and interest         +$158.23     +$175.58
  mortgage insurance               +$0.91        $0.00
  property taxes                   +$2.04       +$2.04
  homeowner's insurance            +$0.49       +$0.49
                              -----------  -----------
  a month                        +$161.67     +$178.11
  cash needed                    +$222.91      +$39.65
  cash to close                   +$18.91     -$164.35
  over five years              +$2,153.82   +$2,176.93
  over the whole loan          +$2,153.82   +$2,176.93

Wood stove (stove), added: +$2,600.00
  wish 1
                              Ten percent      A third
                                     down         down
  principal and interest         +$201.67     +$223.77
  mortgage insurance               +$1.17        $0.00
  property taxes                   +$2.60       +$2.60
  homeowner's insurance            +$0.62       +$0.62
                              -----------  -----------
  a month                        +$206.06     +$226.99
  cash needed                    +$284.16      +$50.67
  cash to close                   +$24.16     -$209.33
  over five years              +$2,745.13   +$2,774.57
  over the whole loan          +$2,745.13   +$2,774.57

Insulated flue * (flue), in your home already: it adds +$900.00
  decide by: Framing
                              Ten percent      A third
                                     down         down
  principal and interest          +$69.81      +$77.46
  mortgage insurance               +$0.40        $0.00
  property taxes                   +$0.90       +$0.90
  homeowner's insurance            +$0.22       +$0.22
                              -----------  -----------
  a month                         +$71.33      +$78.58
  cash needed                     +$98.29      +$17.46
  cash to close                    +$8.29      -$72.54
  over five years                +$950.20     +$960.44
  over the whole loan            +$950.20     +$960.44

Gas heater * (heater), added: +$1,800.00
                              Ten percent      A third
                                     down         down
  principal and interest         +$139.62     +$154.91
  mortgage insurance               +$0.81        $0.00
  property taxes                   +$1.80       +$1.80
  homeowner's insurance            +$0.43       +$0.43
                              -----------  -----------
  a month                        +$142.66     +$157.14
  cash needed                    +$196.66      +$35.00
  cash to close                   +$16.66     -$145.00
  over five years              +$1,900.43   +$1,920.79
  over the whole loan          +$1,900.43   +$1,920.79

Shelves (shelves), in your home already: it adds +$180.00
                              Ten percent      A third
                                     down         down
  principal and interest          +$13.96      +$15.50
  mortgage insurance               +$0.08        $0.00
  property taxes                   +$0.18       +$0.18
  homeowner's insurance            +$0.04       +$0.04
                              -----------  -----------
  a month                         +$14.26      +$15.72
  cash needed                     +$19.73       +$3.53
  cash to close                    +$1.73      -$14.47
  over five years                +$190.03     +$192.08
  over the whole loan            +$190.03     +$192.08

Warm package (warm), added: +$2,200.00
                              Ten percent      A third
                                     down         down
  principal and interest         +$170.64     +$189.34
  mortgage insurance               +$0.99        $0.00
  property taxes                   +$2.20       +$2.20
  homeowner's insurance            +$0.53       +$0.53
                              -----------  -----------
  a month                        +$174.36     +$192.07
  cash needed                    +$240.44      +$42.78
  cash to close                   +$20.44     -$177.22
  over five years              +$2,322.87   +$2,347.68
  over the whole loan          +$2,322.87   +$2,347.68

Not available
  Walk-out door: only on walk-out lots

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
