# One option in full, by part: a level is ID:LEVEL, a number ID=NUMBER.
$ quoin adds --rates data/rates data/buyer.json stove
Wood stove: +$2,600.00 · +$206.06 a month · +$284.16 cash needed · $8,403.65 a month in all ·
  Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down
Wood stove: +$2,600.00 · +$226.99 a month · +$50.67 cash needed · $6,242.71 a month in all ·
  A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
These are estimates with sample rates, as of November 24, 2026.

What each option adds
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Contract price now: $103,120.00

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

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
$ quoin adds --rates data/rates data/buyer.json floor:oak shelves=5
Floor: Oak, in your home already: +$2,040.00 · +$161.67 a month · +$222.91 cash needed ·
  $8,197.59 a month in all · Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down
Floor: Oak, in your home already: +$2,040.00 · +$178.11 a month · +$39.65 cash needed ·
  $6,015.72 a month in all · A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
Shelves: +$120.00 · +$9.52 a month · +$13.11 cash needed · $8,207.11 a month in all ·
  Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down
Shelves: +$120.00 · +$10.47 a month · +$2.31 cash needed · $6,026.19 a month in all ·
  A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
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

Shelves (shelves), added: +$120.00
                              Ten percent      A third
                                     down         down
  principal and interest           +$9.31      +$10.32
  mortgage insurance               +$0.06        $0.00
  property taxes                   +$0.12       +$0.12
  homeowner's insurance            +$0.03       +$0.03
                              -----------  -----------
  a month                          +$9.52      +$10.47
  cash needed                     +$13.11       +$2.31
  cash to close                    +$1.11       -$9.69
  over five years                +$126.76     +$128.02
  over the whole loan            +$126.76     +$128.02

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

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
$ quoin adds --rates data/rates data/buyer.json floor:oka stvoe shelves=99
2> quoin: found no option named "floor:oka"
2>   expected the id of an option; 'quoin list options' shows them
2>   did you mean "floor:oak"?
2>   [option-unknown]
2> quoin: found no option named "stvoe"
2>   expected the id of an option; 'quoin list options' shows them
2>   did you mean "stove"?
2>   [option-unknown]
2> quoin: found "99" for shelves
2>   expected a quantity from 1 to 8, in steps of 1
2>   [option-number]
= 1
