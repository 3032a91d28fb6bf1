# Lines of a given width: loans side by side stand in groups, names are wrapped, no figure is cut.
$ quoin quote --rates data/rates data/buyer.json --width 40
$103,120.00 · $8,197.59 a month ·
  $10,966.45 cash needed ·
  Ten percent down: 6.250% (6.422% APR),
    1 year, $10,312.00 down
$103,120.00 · $6,015.72 a month ·
  $36,254.73 cash needed ·
  A third down: 6.000% (7.739% APR), 1
    year, $35,000.00 down
These are estimates with sample rates,
  as of November 24, 2026.

Home price and monthly payment
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation
Plain, lot 1, for Somebody
As of November 24, 2026; price book 1,
good through December 31, 2026; closing
January 15, 2027

  Cabin plan, base price  $100,000.00
  Elevation Plain               $0.00
  Lot 1 premium                 $0.00

  Inside
    Floor: Oak              $2,040.00
        480 sq ft x $4.25
    Insulated flue *          $900.00
    Shelves                   $180.00
        3 x $60.00
    Wall color: Sand        no charge
                          -----------
  Contract price          $103,120.00

Special requests: not in the price, and
  the builder still has to confirm them
  Outside: A bench by the door,
    estimated at $350.00

Incentives
  Opening weeks: $1,200.00 toward
    closing costs

Deposits (part of the cash needed)
  earnest money, at contract   $1,000.00
  option deposit, at             $312.00
    selection

Monthly payment
                            Ten percent
                                   down
  principal and interest      $7,998.32
  mortgage insurance             $46.40
  property taxes                $103.12
  homeowner's insurance          $24.75
  HOA dues                       $25.00
                            -----------
  monthly payment             $8,197.59

  interest rate                  6.250%
  APR                            6.422%
  points                          0.000
  loan term                      1 year
  rate lock                     60 days
  down payment               $10,312.00
  down payment, % of price       10.00%
  loan-to-value (LTV)            90.00%

                                A third
                                   down
  principal and interest      $5,862.85
  mortgage insurance              $0.00
  property taxes                $103.12
  homeowner's insurance          $24.75
  HOA dues                       $25.00
                            -----------
  monthly payment             $6,015.72

  interest rate                  6.000%
  APR                            7.739%
  points                          1.000
  loan term                      1 year
  rate lock                     60 days
  down payment               $35,000.00
  down payment, % of price       33.94%
  loan-to-value (LTV)            66.06%

Cash needed and cash to close
                                     Ten
                                 percent
                                    down
  down payment                $10,312.00
  points                           $0.00
  closing costs                  $900.00
  prepaid interest               $273.87
  prepaid insurance and          $296.99
    taxes
  initial escrow deposit         $383.59
  credits                     -$1,200.00
                              ----------
  cash needed                 $10,966.45
  deposits                    -$1,312.00
  cash to close                $9,654.45

                                 A third
                                    down
  down payment                $35,000.00
  points                         $681.20
  closing costs                  $900.00
  prepaid interest               $192.95
  prepaid insurance and          $296.99
    taxes
  initial escrow deposit         $383.59
  credits                     -$1,200.00
                              ----------
  cash needed                 $36,254.73
  deposits                    -$1,312.00
  cash to close               $34,942.73

This is an estimate as of November 24,
2026. It is not a Loan Estimate, an
approval or an offer to lend. Those come
from a licensed loan originator (none is
named here yet). The published program
rules and local law decide what applies.
You may choose any lender.

Rates are from Nobody's lender (license:
none, invented), dated November 20, 2026
and good through December 4, 2026. A
rate holds only once it is locked. These
are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing
costs use the figures on file for
Nowhere County (sample figures).
Interest starts at closing. The APR
counts prepaid interest and the odd days
of the first period. Totals over the
years keep taxes, insurance and dues at
today's amounts.

* Marked items involve gas, electric,
plumbing or structural work. That work
must follow local code, needs a permit
and must be done by a licensed trade,
now or later.

For the sales agent: you may explain
prices, and how programs work in
general. Presenting particular loan
terms for gain can require a license of
your own (12 CFR 1008.103). An
advertised payment calls for further
disclosures (12 CFR 1026.24).
= 0
# Options with more loans than a line has room for: each figure stands under its option.
$ quoin adds --rates data/rates data/buyer.json --width 60
your options together: +$3,120.00 · +$247.27 a month ·
  +$340.74 cash needed · $8,197.59 a month in all ·
  Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00
    down
your options together: +$3,120.00 · +$272.40 a month ·
  +$60.62 cash needed · $6,015.72 a month in all ·
  A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
These are estimates with sample rates, as of November 24,
  2026.

What each option adds
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for
Somebody
As of November 24, 2026; price book 1, good through December
31, 2026; closing January 15, 2027
Contract price now: $103,120.00

Add one option to your home as it is now: the change in
  price and in monthly payment
                                      Ten percent    A third
                               price         down       down
  Inside
    Wood stove            +$2,600.00     +$206.06   +$226.99
        wish 1
    Gas heater *          +$1,800.00     +$142.66   +$157.14
    Warm package          +$2,200.00     +$174.36   +$192.07

Take out one option you chose: the change in price and in
  monthly payment
                                      Ten percent    A third
                               price         down       down
  Inside
    Floor: Oak            -$2,040.00     -$161.67   -$178.11
    Insulated flue *        -$900.00      -$71.33    -$78.58
    Shelves                 -$180.00      -$14.26    -$15.72

Not available
  Walk-out door: only on walk-out lots

Your options one by one, starting from none: the change in
  price and in monthly payment
                                      Ten percent    A third
                               price         down       down
  Floor: Oak              +$2,040.00     +$161.68   +$178.10
  Insulated flue            +$900.00      +$71.33    +$78.58
  Shelves                   +$180.00      +$14.26    +$15.72
                         -----------  -----------  ---------
  all together            +$3,120.00     +$247.27   +$272.40

The loans
  Ten percent down: $8,197.59 a month. A short loan:
    interest rate 6.250%, 0.000 points, APR 6.422%, loan
    term 1 year, down payment $10,312.00 (10.00%), LTV
    90.00%, 60-day rate lock. Rule of thumb: each $1,000 you
    borrow costs $86.18 a month.
  A third down: $6,015.72 a month. A short loan: interest
    rate 6.000%, 1.000 points, APR 7.739%, loan term 1 year,
    down payment $35,000.00 (33.94%), LTV 66.06%, 60-day
    rate lock. Rule of thumb: each $1,000 you borrow costs
    $86.07 a month.

Each figure is one whole quote minus another, with each
quote rounded first. So an option alone and the same option
after others can differ by cents. They can differ by more
where a loan rule changes at a certain amount.

This is an estimate as of November 24, 2026. It is not a
Loan Estimate, an approval or an offer to lend. Those come
from a licensed loan originator (none is named here yet).
The published program rules and local law decide what
applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented),
dated November 20, 2026 and good through December 4, 2026. A
rate holds only once it is locked. These are sample rates,
not an offer from anyone.

Taxes, insurance, HOA dues and closing costs use the figures
on file for Nowhere County (sample figures). Interest starts
at closing. The APR counts prepaid interest and the odd days
of the first period. Totals over the years keep taxes,
insurance and dues at today's amounts.

* Marked items involve gas, electric, plumbing or structural
work. That work must follow local code, needs a permit and
must be done by a licensed trade, now or later.

For the sales agent: you may explain prices, and how
programs work in general. Presenting particular loan terms
for gain can require a license of your own (12 CFR
1008.103). An advertised payment calls for further
disclosures (12 CFR 1026.24).
= 0
$ quoin payment --loan 250000 --rate 6.5 --years 30 --width 40
  loan amount             $250,000.00
  interest rate                6.500%
  loan term                  30 years
                          -----------
  principal and interest    $1,580.17
  number of payments              360
  last payment              $1,580.55
  total interest          $318,861.58
  total of payments       $568,861.58

This is an estimate of the monthly
principal and interest only. It has no
points or fees, so the APR equals the
interest rate. It is not a Loan
Estimate, an approval or an offer to
lend. Taxes, insurance, dues and
mortgage insurance are extra. Only a
licensed loan originator can make an
offer.
= 0
$ quoin list options data/book.json --width 40
Two Lots, Nobody: price book 1, in
  effect from November 1, 2026 through
  December 31, 2026

  option             floor:pine
      area               inside
      kind               choice
      name          Floor: Pine
      price               $0.00
      unit                sq ft
  option              floor:oak
      area               inside
      kind               choice
      name           Floor: Oak
      price               $4.25
      unit                sq ft
  option                  stove
      area               inside
      kind              upgrade
      name           Wood stove
      price           $2,600.00
      unit                 each
  option                   flue
      area               inside
      kind              upgrade
      name       Insulated flue
      price             $900.00
      unit                 each
      decide by           frame
  option                 heater
      area               inside
      kind              upgrade
      name           Gas heater
      price           $1,800.00
      unit                 each
  option                shelves
      area               inside
      kind              upgrade
      name              Shelves
      price              $60.00
      unit                 each
  option               walk-out
      area              outside
      kind              upgrade
      name        Walk-out door
      price           $3,200.00
      unit                 each
      decide by          permit
  option                  paint
      area               inside
      kind       no-cost choice
      name           Wall color
      unit                 each
  option                  lamps
      area               inside
      kind            allowance
      name                Lamps
      price             $300.00
      unit                 each
  option                   warm
      area               inside
      kind              package
      name         Warm package
      price           $3,100.00
      unit                 each
= 0
$ quoin terms --width 160 | digest
What the words mean
Each term as quoin uses it, with the regulation that names it.

...
  Source: 12 CFR 1026.37(a)(7)
169 rows #a9f7bd22
= 0
$ quoin payment --loan 250000 --rate 6.5 --years 30 --width 39
2> quoin payment: --width: Value 39 not in range 40 to 200
2>   'quoin payment --help' explains it with an example
= 2
