# The example community: every option of a buyer short of cash, in each of the four ways to pay.
$ quoin adds ../../examples/oxbarrow-meadow/buyers/short-of-cash.json
your options together: +$1,325.00 · +$10.34 a month · +$62.20 cash needed ·
  $3,131.71 a month in all · FHA, 3.5% down: 6.000% (6.742% APR), 30 years, $13,851.00 down
your options together: +$1,325.00 · +$10.71 a month · -$0.54 cash needed ·
  $3,074.84 a month in all · FHA, all available cash: 6.000% (6.693% APR), 30 years, $20,152.00 down
your options together: +$1,325.00 · +$10.49 a month · +$14.40 cash needed ·
  $3,172.77 a month in all · USDA, nothing down: 6.125% (6.603% APR), 30 years, $0.00 down
your options together: +$1,325.00 · +$11.75 a month · +$56.68 cash needed ·
  $3,550.09 a month in all · Conventional, 3% down: 6.500% (7.817% APR), 30 years, $11,872.00 down
These are estimates with sample rates, as of November 24, 2026.

What each option adds
Oxbarrow Meadow by Tarnwick Builders
Sorrel plan (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 20, 2027
Prepared by Sales desk, Oxbarrow Meadow
Contract price now: $395,725.00

Add one option to your home as it is now: the change in price and in monthly payment
                                                           FHA,    FHA, all     USDA,
                                                           3.5%   available   nothing  Conventional,
                                                price      down        cash      down        3% down
  Outside and structure
    Deeper front porch *                   +$5,400.00   +$42.18     +$43.58   +$42.73        +$47.89
    Stone on the front, up to the sills    +$4,416.00   +$34.49     +$35.65   +$34.95        +$39.15
    Siding: Wood-composite lap             +$6,900.00   +$53.90   +$71.54 a   +$54.60        +$61.19
    Siding: Fiber-cement lap              +$10,400.00   +$81.24   +$99.94 a   +$82.31        +$92.23
    Windows: Triple pane, low-E            +$5,600.00   +$43.74     +$45.20   +$44.32        +$49.67
    Rear deck, 12 x 16 ft: Treated         +$9,800.00   +$76.54   +$95.08 a   +$77.56        +$86.91
      wood *
        wish 1
    Rear deck, 12 x 16 ft: Composite      +$14,900.00  +$116.37  +$136.46 a  +$117.92       +$132.12
      boards and rails *
    Rear deck, 12 x 16 ft: Composite,     +$23,800.00  +$185.89  +$208.67 a  +$188.36       +$211.05
      with a roof *
    Steps to the yard *                   +$13,450.00  +$105.06  +$124.70 a  +$106.45       +$119.27
        also adds Rear deck, 12 x 16 ft
  Garage
    Garage doors: Insulated steel            +$980.00    +$7.64      +$7.90    +$7.75         +$8.68
    Garage doors: Insulated steel with     +$1,690.00   +$13.20     +$13.65   +$13.38        +$14.99
      windows
    Insulated garage walls                 +$2,653.50   +$20.73     +$21.42   +$21.01        +$23.53
        wish 4
    Gas garage heater *                    +$6,413.50   +$50.09     +$51.77   +$50.75        +$56.87
        also adds Insulated garage walls, Garage doors
    240-volt charging outlet *             +$1,150.00    +$8.98      +$9.28    +$9.10        +$10.19
  Entry and stairs
    Front door: Fiberglass with a glass    +$1,180.00    +$9.22      +$9.52    +$9.35        +$10.46
      panel
    Front door: Fiberglass with            +$2,940.00   +$22.95     +$23.72   +$23.25        +$26.06
      sidelights
    A second wall color                      +$385.00    +$3.02      +$3.12    +$3.06         +$3.42
  Great room and dining
    Vaulted great-room ceiling *           +$5,900.00   +$46.09     +$47.62   +$46.69        +$52.32
    Gas fireplace *                        +$5,150.00   +$40.22     +$41.56   +$40.75        +$45.65
    Fireplace surround: Tile to the        +$6,390.00   +$49.91     +$51.58   +$50.57        +$56.67
      shelf
        also adds Gas fireplace
    Fireplace surround: Stone to the       +$7,530.00   +$58.81   +$76.66 a   +$59.60        +$66.77
      shelf
        also adds Gas fireplace
    Fireplace surround: Stone to the       +$9,050.00   +$70.69   +$88.99 a   +$71.62        +$80.26
      ceiling
        also adds Gas fireplace
    Main-floor flooring: Engineered oak,   +$2,997.00   +$23.41     +$24.19   +$23.73        +$26.59
      5-inch
    Recessed lights *                      +$1,320.00   +$10.32     +$10.65   +$10.45        +$11.70
        wish 3
    Nine-foot sliding door *              +$17,550.00  +$137.07  +$157.96 a  +$138.88       +$155.62
        also adds Rear deck, 12 x 16 ft
  Kitchen
    Kitchen cabinets: Shaker maple,        +$2,850.00   +$22.25     +$23.00   +$22.57        +$25.27
      42-inch uppers
    Kitchen cabinets: Painted, full        +$5,900.00   +$46.09     +$47.62   +$46.69        +$52.32
      overlay, 42-inch uppers
    Kitchen countertops: Granite           +$2,552.00   +$19.92     +$20.60   +$20.20        +$22.63
    Kitchen countertops: Quartz            +$3,190.00   +$24.91     +$25.74   +$25.25        +$28.29
    Kitchen countertops: Quartz with       +$4,582.00   +$35.80     +$36.99   +$36.26        +$40.63
      veins
    Undermount sink *                      +$3,092.00   +$24.16     +$24.95   +$24.48        +$27.42
        also adds Kitchen countertops
    Larger island *                        +$6,452.00   +$50.39     +$52.08   +$51.06        +$57.21
        also adds Kitchen countertops
    Backsplash: Ceramic tile                 +$693.00    +$5.42      +$5.60    +$5.50         +$6.15
    Backsplash: Glass and stone tile       +$1,176.00    +$9.18      +$9.49    +$9.31        +$10.42
    Gas range *                            +$1,180.00    +$9.22      +$9.52    +$9.35        +$10.46
    Induction range                        +$1,390.00   +$10.85     +$11.22   +$11.00        +$12.32
    Cooktop and wall ovens *               +$7,200.00   +$56.23   +$73.97 a   +$56.97        +$63.84
        also adds Kitchen cabinets
    Range hood vented outdoors *             +$890.00    +$6.95      +$7.18    +$7.05         +$7.89
    Lights under the upper cabinets *        +$684.00    +$5.34      +$5.51    +$5.41         +$6.06
    Cook's package                         +$5,200.00   +$40.61     +$41.97   +$41.15        +$46.11
    Kitchen finish package                 +$6,700.00   +$52.33   +$69.93 a   +$53.03        +$59.41
  Owner's suite
    Tray ceiling *                         +$2,150.00   +$16.80     +$17.35   +$17.01        +$19.06
    Vinyl plank in the suite                 +$727.60    +$5.68      +$5.86    +$5.74         +$6.44
  Baths
    Owner's shower: Tiled walls and        +$3,200.00   +$24.99     +$25.82   +$25.32        +$28.37
      pan *
        wish 2
    Owner's shower: Tiled, no curb, with   +$5,600.00   +$43.74     +$45.20   +$44.32        +$49.67
      a bench *
    Vanity tops: Quartz, undermount        +$1,450.00   +$11.33     +$11.71   +$11.48        +$12.86
      sinks
    Tile floors in the baths               +$1,817.20   +$14.20     +$14.67   +$14.38        +$16.12
    Heated floor, owner's bath *           +$3,641.20   +$28.43     +$29.37   +$28.81        +$32.28
        also adds Tile floors in the baths
  Laundry and mudroom
    Cabinets over the machines             +$1,290.00   +$10.08     +$10.41   +$10.21        +$11.44
    Mudroom lockers                        +$1,920.00   +$15.01     +$15.49   +$15.19        +$17.03
  Bedrooms and study
    Bedroom carpet: Plush, 8-pound pad       +$650.70    +$5.09      +$5.25    +$5.15         +$5.78
    Bedroom carpet: Wool blend, 8-pound    +$1,831.60   +$14.31     +$14.77   +$14.49        +$16.23
      pad
    Wood closet shelving                     +$690.00    +$5.39      +$5.57    +$5.46         +$6.11
  Basement
    Basement finish: Framed, wired and     +$9,800.00   +$76.54   +$95.08 a   +$77.56        +$86.91
      insulated *
    Basement finish: Family room,         +$33,500.00  +$261.66  +$287.38 a  +$265.13       +$297.06
      finished *
    Nine-foot basement walls *             +$4,200.00   +$32.81     +$33.90   +$33.24        +$37.24
    Egress window *                        +$2,850.00   +$22.25     +$23.00   +$22.57        +$25.27
    Basement bedroom *                    +$45,250.00  +$353.42  +$382.73 a  +$358.12       +$401.26
        also adds Basement finish, Egress window
    Basement bath *                       +$19,500.00  +$152.31  +$173.79 a  +$154.33       +$172.92
        also adds Basement finish
    Basement suite package                +$51,400.00  +$401.47  +$432.63 a  +$406.80       +$455.81
        also adds Egress window
  Heating, energy and wiring
    Heating and cooling: 97% two-stage     +$1,680.00   +$13.12     +$13.55   +$13.29        +$14.89
      gas furnace, air conditioner *
    Heating and cooling: Cold-climate      +$6,200.00   +$48.42     +$50.03   +$49.06        +$54.97
      heat pump, gas backup *
    Water heater: Tankless gas *           +$1,450.00   +$11.33     +$11.71   +$11.48        +$12.86
    Water heater: 65-gallon heat pump *    +$1,980.00   +$15.46     +$15.98   +$15.67        +$17.55
    Attic to R-60                          +$1,531.40   +$11.97     +$12.36   +$12.12        +$13.58
    Heat-recovery ventilation *            +$1,980.00   +$15.46     +$15.98   +$15.67        +$17.55
    Cold-winter package                    +$8,200.00   +$64.05   +$82.09 a   +$64.89        +$72.71
    Radon fan *                              +$690.00    +$5.39      +$5.57    +$5.46         +$6.11
    Data lines                               +$540.00    +$4.21      +$4.34    +$4.26         +$4.78
  Yard and driveway
    Lawn irrigation *                      +$6,250.00   +$48.80     +$50.44   +$49.45        +$55.41
        takes the place of Leave out the lawn
    Sod in the back yard                   +$4,600.00   +$35.93     +$37.14   +$36.41        +$40.79
        takes the place of Leave out the lawn
    Concrete patio                         +$2,500.00   +$19.52     +$20.17   +$19.78        +$22.16

Take out one option you chose: the change in price and in monthly payment
                                                                  FHA, all      USDA,
                                                      FHA, 3.5%  available    nothing  Conventional,
                                               price       down       cash       down        3% down
  Garage
    Garage door opener                      -$520.00     -$4.06     -$4.20     -$4.11         -$4.61
  Great room and dining
    Main-floor flooring: Vinyl plank      -$1,755.00    -$13.70    -$14.18    -$13.89        -$15.57
  Basement
    Rough plumbing for a bath *           -$1,350.00    -$10.54    -$10.90    -$10.67        -$11.97
  Yard and driveway
    Leave out the lawn                    +$2,300.00    +$17.96    +$18.56    +$18.21        +$20.39

Not available
  Screened porch, 14 x 14 ft: needs a lot whose rear setback is 32 ft or more
  Sunroom, 12 x 14 ft: needs a lot whose rear setback is 34 ft or more
  Third garage bay: needs a lot whose width is 78 ft or more
  Stair rail: Oak rail, iron balusters: not available on this plan
  Stair rail: Oak rail, steel cable: not available on this plan
  Great room four feet deeper: needs a lot whose rear setback is 34 ft or more
  Bay window: not available on this plan
  Soaking tub: not available on this plan
  Laundry upstairs: not available on this plan
  Bedroom instead of the study: not available on this plan
  Glass doors on the study: not available on this plan
  Walk-out basement: only on walk-out lots
  Wider driveway: needs Third garage bay
  Boulder wall and steps: only on lot 7, 8 or 9

Your options one by one, starting from none: the change in price and in monthly payment
                                                                  FHA, all      USDA,
                                                      FHA, 3.5%  available    nothing  Conventional,
                                               price       down       cash       down        3% down
  Rough plumbing for a bath               +$1,350.00    +$10.53    +$10.90    +$10.68        +$11.96
  Main-floor flooring: Vinyl plank        +$1,755.00    +$13.71    +$14.17    +$13.90        +$15.57
  Garage door opener                        +$520.00     +$4.06     +$4.20     +$4.12         +$4.61
  Leave out the lawn                      -$2,300.00    -$17.96    -$18.56    -$18.21        -$20.39
                                         -----------  ---------  ---------  ---------  -------------
  all together                            +$1,325.00    +$10.34    +$10.71    +$10.49        +$11.75

Why some figures jump
  a  FHA, all available cash: annual mortgage insurance goes from 0.5% to 0.55% (LTV over 95%)

The loans
  FHA, 3.5% down: $3,131.71 a month. FHA, fixed rate: interest rate 6.000%, lender credit of
    0.125 points, APR 6.742%, loan term 30 years, down payment $13,851.00 (3.50%), LTV 96.50%,
    180-day rate lock. Rule of thumb: each $1,000 you borrow costs $6.00 a month.
  FHA, all available cash: $3,074.84 a month. FHA, fixed rate: interest rate 6.000%, lender
    credit of 0.125 points, APR 6.693%, loan term 30 years, down payment $20,152.00 (5.09%), LTV
    94.91%, 180-day rate lock. Rule of thumb: each $1,000 you borrow costs $6.00 a month.
  USDA, nothing down: $3,172.77 a month. USDA, fixed rate: interest rate 6.125%, lender credit
    of 0.125 points, APR 6.603%, loan term 30 years, down payment $0.00 (0.00%), LTV 100.00%,
    180-day rate lock. Rule of thumb: each $1,000 you borrow costs $6.08 a month.
  Conventional, 3% down: $3,550.09 a month. Conventional, fixed rate: interest rate 6.500%,
    0.000 points, APR 7.817%, loan term 30 years, down payment $11,872.00 (3.00%), LTV 97.00%,
    180-day rate lock. Rule of thumb: each $1,000 you borrow costs $6.32 a month.

Each figure is one whole quote minus another, with each quote rounded first. So an option alone and
the same option after others can differ by cents. They can differ by more where a loan rule changes
at a certain amount.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Sample lender (license: none, sample data), dated November 20, 2026 and good through
December 18, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Venning County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

* Marked items involve gas, electric, plumbing or structural work. That work must follow local code,
needs a permit and must be done by a licensed trade, now or later.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
# Another buyer sits right under 80 % LTV: with the better windows mortgage insurance starts.
$ quoin adds ../../examples/oxbarrow-meadow/buyers/right-under-eighty.json windows:triple
Windows: Triple pane, low-E: +$8,100.00 · +$153.97 a month · +$70.00 cash needed ·
  $4,373.03 a month in all · Conventional, 30 years: 6.500% (6.525% APR), 30 years, $127,600.50 down
Windows: Triple pane, low-E: +$8,100.00 · +$136.09 a month · +$59.76 cash needed ·
  $4,859.07 a month in all · Conventional, 20 years: 6.250% (6.282% APR), 20 years, $127,600.50 down
Windows: Triple pane, low-E: +$8,100.00 · +$153.30 a month · +$130.69 cash needed ·
  $4,330.57 a month in all ·
  Conventional, 30 years, paid ahead: 6.375% (6.447% APR), 30 years, $127,600.50 down
These are estimates with sample rates, as of November 24, 2026.

What each option adds
Oxbarrow Meadow by Tarnwick Builders
Comfrey plan (two-story, 2,694 sq ft), elevation Quarry, lot 9, for Buyer 4
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing July 30, 2027
Prepared by Sales desk, Oxbarrow Meadow
Contract price now: $637,333.50

Windows: Triple pane, low-E (windows:triple), added: +$8,100.00
  Triple pane is quieter, and warmer to sit next to. Do not buy it just for the heating bill. The
  savings are small.
  decide by: Framing started
                                                            Conventional,
                              Conventional,  Conventional,      30 years,
                                   30 years       20 years     paid ahead
  principal and interest            +$51.20        +$59.21        +$50.53
  mortgage insurance                +$90.62        +$64.73        +$90.62
  property taxes                     +$9.79         +$9.79         +$9.79
  homeowner's insurance              +$2.00         +$2.00         +$2.00
  district charges                   +$0.36         +$0.36         +$0.36
                              -------------  -------------  -------------
  a month                          +$153.97       +$136.09       +$153.30
  cash needed                       +$70.00        +$59.76       +$130.69
  cash to close                  -$1,955.00     -$1,965.24     -$1,894.31
  over five years                +$6,498.98     +$5,182.85     +$4,163.35
  over the whole loan           +$25,500.86    +$18,025.42    +$22,456.91

Why some figures jump
  a  Conventional, 30 years: LTV goes from 79.97% to 80.23%: mortgage insurance starts at 0.21% a
     year (loan term over 240 months, credit score at least 760, LTV over 80% and up to 85%)
  b  Conventional, 20 years: LTV goes from 79.97% to 80.23%: mortgage insurance starts at 0.15% a
     year (loan term up to 240 months, credit score at least 760, LTV over 80% and up to 85%)
  c  Conventional, 30 years, paid ahead: LTV goes from 79.97% to 80.23%: mortgage insurance starts
     at 0.21% a year (loan term over 240 months, credit score at least 760, LTV over 80% and up to
     85%)

The loans
  Conventional, 30 years: $4,219.06 a month. Conventional, fixed rate: interest rate 6.500%,
    lender credit of 0.250 points, APR 6.525%, loan term 30 years, down payment $127,600.50
    (20.02%), LTV 79.98%, 270-day rate lock. Rule of thumb: each $1,000 you borrow costs $6.32 a
    month.
  Conventional, 20 years: $4,722.98 a month. Conventional, fixed rate: interest rate 6.250%,
    lender credit of 0.375 points, APR 6.282%, loan term 20 years, down payment $127,600.50
    (20.02%), LTV 79.98%, 270-day rate lock. Rule of thumb: each $1,000 you borrow costs $7.31 a
    month.
  Conventional, 30 years, paid ahead: $4,177.27 a month. Conventional, fixed rate: interest rate
    6.375%, 0.500 points, APR 6.447%, loan term 30 years, down payment $127,600.50 (20.02%), LTV
    79.98%, 270-day rate lock, $250.00 a month in optional extra principal. Rule of thumb: each
    $1,000 you borrow costs $6.24 a month.

Each figure is one whole quote minus another, with each quote rounded first. So an option alone and
the same option after others can differ by cents. They can differ by more where a loan rule changes
at a certain amount.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Sample lender (license: none, sample data), dated November 20, 2026 and good through
December 18, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Venning County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

Extra principal of $250.00 a month (Conventional, 30 years, paid ahead) is optional. It is counted
in the totals and costs over the years, in the number of payments and in when mortgage insurance
ends. It is not counted in the monthly payment, the APR or the disclosed cost of credit, which go by
the scheduled payments (12 CFR 1026.37(l), 1026.38(o)). Taxes, insurance and dues are counted to the
end of the loan term.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
