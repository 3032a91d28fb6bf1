# Now, or after the closing: the same thing three or four ways.
$ quoin later ../../examples/oxbarrow-meadow/buyers/short-of-cash.json deck:treated garage-insulation --loan-rate 11.5 --loan-months 60
Rear deck, 12 x 16 ft: Treated wood: +$9,800.00 ·
  adding it to your loan: $452.28 at closing, $76.54 a month ·
  paying the builder in cash: $9,885.29 at closing, -$1.28 a month ·
  paying cash after closing: about $13,500.00 ·
  a personal loan after closing: $0.00 at closing, $296.90 a month ·
  FHA, 3.5% down: 6.000% (6.742% APR), 30 years, $13,851.00 down
Rear deck, 12 x 16 ft: Treated wood: +$9,800.00 ·
  adding it to your loan: $0.43 at closing, $95.08 a month ·
  paying the builder in cash: $9,885.29 at closing, $14.54 a month ·
  paying cash after closing: about $13,500.00 ·
  a personal loan after closing: $0.00 at closing, $296.90 a month ·
  FHA, all available cash: 6.000% (6.693% APR), 30 years, $20,152.00 down
Rear deck, 12 x 16 ft: Treated wood: +$9,800.00 ·
  adding it to your loan: $111.13 at closing, $77.56 a month ·
  paying the builder in cash: $9,874.90 at closing, $14.54 a month ·
  paying cash after closing: about $13,500.00 ·
  a personal loan after closing: $0.00 at closing, $296.90 a month ·
  USDA, nothing down: 6.125% (6.603% APR), 30 years, $0.00 down
Rear deck, 12 x 16 ft: Treated wood: +$9,800.00 ·
  adding it to your loan: $416.92 at closing, $86.91 a month ·
  paying the builder in cash: $9,885.29 at closing, -$94.22 a month ·
  paying cash after closing: about $13,500.00 ·
  a personal loan after closing: $0.00 at closing, $296.90 a month ·
  Conventional, 3% down: 6.500% (7.817% APR), 30 years, $11,872.00 down
Insulated garage walls: +$2,653.50 · adding it to your loan: $122.07 at closing, $20.73 a month ·
  paying the builder in cash: $2,676.66 at closing, $3.94 a month ·
  FHA, 3.5% down: 6.000% (6.742% APR), 30 years, $13,851.00 down
Insulated garage walls: +$2,653.50 · adding it to your loan: $0.64 at closing, $21.42 a month ·
  paying the builder in cash: $2,676.66 at closing, $3.94 a month ·
  FHA, all available cash: 6.000% (6.693% APR), 30 years, $20,152.00 down
Insulated garage walls: +$2,653.50 · adding it to your loan: $30.41 at closing, $21.01 a month ·
  paying the builder in cash: $2,669.77 at closing, $3.94 a month ·
  USDA, nothing down: 6.125% (6.603% APR), 30 years, $0.00 down
Insulated garage walls: +$2,653.50 · adding it to your loan: $112.81 at closing, $23.53 a month ·
  paying the builder in cash: $2,676.66 at closing, $3.94 a month ·
  Conventional, 3% down: 6.500% (7.817% APR), 30 years, $11,872.00 down
These are estimates with sample rates, as of November 24, 2026.

Now or later
Oxbarrow Meadow by Tarnwick Builders
Sorrel plan (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 20, 2027
Prepared by Sales desk, Oxbarrow Meadow

Rear deck, 12 x 16 ft: Treated wood (deck:treated): +$9,800.00 through the builder
  after closing: about $13,500.00. Treated wood, by a licensed builder. It needs its own permit,
  its own footings below the frost line, and the association's approval.

  FHA, 3.5% down
    $3,131.71 a month without it; FHA, fixed rate: interest rate 6.000%, lender credit of 0.125
    points, APR 6.742%, loan term 30 years, down payment $13,851.00 (3.50%), LTV 96.50%, 180-day
    rate lock
                              adding it to       paying the    paying cash  a personal loan
                                 your loan  builder in cash  after closing    after closing
    added at closing               $452.28        $9,885.29          $0.00            $0.00
    added a month                   $76.54           -$1.28          $0.00          $296.90
    cost after 1 year           $10,875.64        $9,869.93     $13,500.00       $14,832.24
    cost after 3 years          $12,452.03        $9,846.53     $13,500.00       $16,963.98
    cost after 5 years          $13,992.57        $9,833.93     $13,500.00       $17,811.19
    cost after 7 years          $15,492.93        $9,833.81     $13,500.00       $17,814.01
    cost after 10 years         $17,656.06        $9,859.85     $13,500.00       $17,814.01
    cost after 15 years         $20,976.74        $9,989.57     $13,500.00       $17,814.01
    cost after 30 years         $27,464.81       $11,433.89     $13,500.00       $17,814.01
    When one way has cost more than another:
      from month 1 on, adding it to your loan has cost more than paying the builder in cash
      from month 53 on, adding it to your loan has cost more than paying cash after closing
      from month 123 on, adding it to your loan has cost more than a personal loan after closing
      from month 1 through month 52, paying cash after closing has cost more than adding it to
        your loan
      from month 1 on, paying cash after closing has cost more than paying the builder in cash
      from month 1 through month 122, a personal loan after closing has cost more than adding it
        to your loan
      from month 1 on, a personal loan after closing has cost more than paying the builder in
        cash
      from month 2 on, a personal loan after closing has cost more than paying cash after
        closing

  FHA, all available cash
    $3,074.84 a month without it; FHA, fixed rate: interest rate 6.000%, lender credit of 0.125
    points, APR 6.693%, loan term 30 years, down payment $20,152.00 (5.09%), LTV 94.91%, 180-day
    rate lock
                              adding it to       paying the    paying cash  a personal loan
                                 your loan  builder in cash  after closing    after closing
    added at closing                 $0.43        $9,885.29          $0.00            $0.00
    added a month                   $95.08           $14.54          $0.00          $296.90
    cost after 1 year           $11,101.54       $10,059.77     $13,500.00       $14,832.24
    cost after 3 years          $13,103.01       $10,408.73     $13,500.00       $16,963.98
    cost after 5 years          $15,056.21       $10,757.69     $13,500.00       $17,811.19
    cost after 7 years          $16,954.96       $11,106.65     $13,500.00       $17,814.01
    cost after 10 years         $19,685.71       $11,630.09     $13,500.00       $17,814.01
    cost after 15 years         $23,853.79       $12,502.49     $13,500.00       $17,814.01
    cost after 30 years         $31,677.16       $15,119.69     $13,500.00       $17,814.01
    When one way has cost more than another:
      from month 1 on, adding it to your loan has cost more than paying the builder in cash
      from month 41 on, adding it to your loan has cost more than paying cash after closing
      from month 96 on, adding it to your loan has cost more than a personal loan after closing
      from month 249 on, paying the builder in cash has cost more than paying cash after closing
      from month 1 through month 40, paying cash after closing has cost more than adding it to
        your loan
      from month 1 through month 248, paying cash after closing has cost more than paying the
        builder in cash
      from month 1 through month 95, a personal loan after closing has cost more than adding it
        to your loan
      from month 1 on, a personal loan after closing has cost more than paying the builder in
        cash
      from month 2 on, a personal loan after closing has cost more than paying cash after
        closing

  USDA, nothing down
    $3,172.77 a month without it; USDA, fixed rate: interest rate 6.125%, lender credit of 0.125
    points, APR 6.603%, loan term 30 years, down payment $0.00 (0.00%), LTV 100.00%, 180-day rate
    lock
                              adding it to       paying the    paying cash  a personal loan
                                 your loan  builder in cash  after closing    after closing
    added at closing               $111.13        $9,874.90          $0.00            $0.00
    added a month                   $77.56           $14.54          $0.00          $296.90
    cost after 1 year           $10,822.06       $10,049.38     $13,500.00       $14,832.24
    cost after 3 years          $12,421.83       $10,398.34     $13,500.00       $16,963.98
    cost after 5 years          $13,985.81       $10,747.30     $13,500.00       $17,811.19
    cost after 7 years          $15,509.28       $11,096.26     $13,500.00       $17,814.01
    cost after 10 years         $17,707.06       $11,619.70     $13,500.00       $17,814.01
    cost after 15 years         $21,082.98       $12,492.10     $13,500.00       $17,814.01
    cost after 30 years         $27,668.59       $15,109.30     $13,500.00       $17,814.01
    When one way has cost more than another:
      from month 1 on, adding it to your loan has cost more than paying the builder in cash
      from month 53 on, adding it to your loan has cost more than paying cash after closing
      from month 122 on, adding it to your loan has cost more than a personal loan after closing
      from month 250 on, paying the builder in cash has cost more than paying cash after closing
      from month 1 through month 52, paying cash after closing has cost more than adding it to
        your loan
      from month 1 through month 249, paying cash after closing has cost more than paying the
        builder in cash
      from month 1 through month 121, a personal loan after closing has cost more than adding it
        to your loan
      from month 1 on, a personal loan after closing has cost more than paying the builder in
        cash
      from month 2 on, a personal loan after closing has cost more than paying cash after
        closing

  Conventional, 3% down
    $3,550.09 a month without it; Conventional, fixed rate: interest rate 6.500%, 0.000 points,
    APR 7.817%, loan term 30 years, down payment $11,872.00 (3.00%), LTV 97.00%, 180-day rate lock
                              adding it to       paying the    paying cash  a personal loan
                                 your loan  builder in cash  after closing    after closing
    added at closing               $416.92        $9,885.29          $0.00            $0.00
    added a month                   $86.91          -$94.22          $0.00          $296.90
    cost after 1 year           $10,859.54        $8,754.65     $13,500.00       $14,832.24
    cost after 3 years          $12,710.91        $6,493.37     $13,500.00       $16,963.98
    cost after 5 years          $14,529.82        $4,232.09     $13,500.00       $17,811.19
    cost after 7 years          $16,311.79        $1,970.81     $13,500.00       $17,814.01
    cost after 10 years         $18,904.10       -$1,421.11     $13,500.00       $17,814.01
    cost after 15 years         $22,514.50       -$7,029.45     $13,500.00       $17,814.01
    cost after 30 years         $29,046.00       -$4,412.25     $13,500.00       $17,814.01
    When one way has cost more than another:
      from month 1 on, adding it to your loan has cost more than paying the builder in cash
      from month 47 on, adding it to your loan has cost more than paying cash after closing
      from month 105 on, adding it to your loan has cost more than a personal loan after closing
      from month 1 through month 46, paying cash after closing has cost more than adding it to
        your loan
      from month 1 on, paying cash after closing has cost more than paying the builder in cash
      from month 1 through month 104, a personal loan after closing has cost more than adding it
        to your loan
      from month 1 on, a personal loan after closing has cost more than paying the builder in
        cash
      from month 2 on, a personal loan after closing has cost more than paying cash after
        closing

Insulated garage walls (garage-insulation): +$2,653.50 through the builder
  after closing: the price book has no estimate

  FHA, 3.5% down
    $3,131.71 a month without it; FHA, fixed rate: interest rate 6.000%, lender credit of 0.125
    points, APR 6.742%, loan term 30 years, down payment $13,851.00 (3.50%), LTV 96.50%, 180-day
    rate lock
                              adding it to       paying the
                                 your loan  builder in cash
    added at closing               $122.07        $2,676.66
    added a month                   $20.73            $3.94
    cost after 1 year            $2,944.87        $2,723.94
    cost after 3 years           $3,371.71        $2,818.50
    cost after 5 years           $3,788.96        $2,913.06
    cost after 7 years           $4,195.47        $3,007.62
    cost after 10 years          $4,781.34        $3,149.46
    cost after 15 years          $5,680.87        $3,385.86
    cost after 30 years          $7,440.16        $4,095.06
    When one way has cost more than another:
      from month 1 on, adding it to your loan has cost more than paying the builder in cash

  FHA, all available cash
    $3,074.84 a month without it; FHA, fixed rate: interest rate 6.000%, lender credit of 0.125
    points, APR 6.693%, loan term 30 years, down payment $20,152.00 (5.09%), LTV 94.91%, 180-day
    rate lock
                              adding it to       paying the
                                 your loan  builder in cash
    added at closing                 $0.64        $2,676.66
    added a month                   $21.42            $3.94
    cost after 1 year            $2,954.12        $2,723.94
    cost after 3 years           $3,394.28        $2,818.50
    cost after 5 years           $3,824.39        $2,913.06
    cost after 7 years           $4,243.12        $3,007.62
    cost after 10 years          $4,846.56        $3,149.46
    cost after 15 years          $5,772.16        $3,385.86
    cost after 30 years          $7,568.89        $4,095.06
    When one way has cost more than another:
      from month 1 on, adding it to your loan has cost more than paying the builder in cash

  USDA, nothing down
    $3,172.77 a month without it; USDA, fixed rate: interest rate 6.125%, lender credit of 0.125
    points, APR 6.603%, loan term 30 years, down payment $0.00 (0.00%), LTV 100.00%, 180-day rate
    lock
                              adding it to       paying the
                                 your loan  builder in cash
    added at closing                $30.41        $2,669.77
    added a month                   $21.01            $3.94
    cost after 1 year            $2,930.32        $2,717.05
    cost after 3 years           $3,363.52        $2,811.61
    cost after 5 years           $3,787.07        $2,906.17
    cost after 7 years           $4,199.67        $3,000.73
    cost after 10 years          $4,794.61        $3,142.57
    cost after 15 years          $5,708.50        $3,378.97
    cost after 30 years          $7,489.10        $4,088.17
    When one way has cost more than another:
      from month 1 on, adding it to your loan has cost more than paying the builder in cash

  Conventional, 3% down
    $3,550.09 a month without it; Conventional, fixed rate: interest rate 6.500%, 0.000 points,
    APR 7.817%, loan term 30 years, down payment $11,872.00 (3.00%), LTV 97.00%, 180-day rate lock
                              adding it to       paying the
                                 your loan  builder in cash
    added at closing               $112.81        $2,676.66
    added a month                   $23.53            $3.94
    cost after 1 year            $2,940.42        $2,723.94
    cost after 3 years           $3,441.67        $2,818.50
    cost after 5 years           $3,934.14        $2,913.06
    cost after 7 years           $4,416.60        $3,007.62
    cost after 10 years          $5,118.53        $3,149.46
    cost after 15 years          $6,096.25        $1,898.43
    cost after 30 years          $7,866.03        $2,607.63
    When one way has cost more than another:
      from month 1 on, adding it to your loan has cost more than paying the builder in cash

Each cost is how much more the home with the option has cost you by the end of that year than the
home without it. It counts any added balance you still owe. A minus sign means the option has
lowered what you pay. The cost of work after closing is an estimate from the price book, not an
offer. Prices may rise, and money you keep may earn something. Neither is counted.

Gas, electric, plumbing or structural work must follow local code. It needs a permit and a licensed
trade, no matter who does it or when.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Sample lender (license: none, sample data), dated November 20, 2026 and good through
December 18, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Venning County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.
= 0
$ quoin later ../../examples/oxbarrow-meadow/buyers/short-of-cash.json garage-opener --month 13 --json | digest
{
  "question": "later"
  "heading": {
    "community": "Oxbarrow Meadow", "builder": "Tarnwick Builders", "buyer": "Buyer 2"
    "prepared_by": "Sales desk, Oxbarrow Meadow", "originator": "", "plan": "Sorrel"
    "elevation": "Field", "lot": "4", "price_book_version": "2026-11"
    "price_book_expires": "2027-01-31", "as_of": "2026-11-24", "contract": "2026-12-05"
    "closing": "2027-05-20", "place": "Venning County", "sample_place": true
    "rate_sheet": "2026-11-20", "rates_date": "2026-11-20", "rates_good_through": "2026-12-18"
    "lender": "Sample lender", "license": "none, sample data", "sample_rates": true
  }
  "month": 13
  "items": [
    {
      "id": "garage-opener", "name": "Garage door opener", "level": "", "price": "520.00"
      "estimate": "480.00", "note": "An easy job, since the outlet is already there."
      "why_not": "", "work": []
      "scenarios": [
        {
          "terms": {
            "name": "FHA, 3.5% down", "program": "fha", "program_name": "FHA, fixed rate"
            "months": 360, "lock_days": 180, "score": 664, "rate": "6", "points": "-0.125"
            "apr": "6.742", "down_payment": "13833.00", "down_percent": "3.50", "ltv": "96.50"
            "down_from_cash": false, "extra_principal": "0.00"
            "fine_print": "You pay two premiums: one at closing, usually added to the ..." 257 letters #0f36df3d
            "adjustable": null
          }
          "monthly_without": "3127.65", "refusals": []
          "ways": [
            {
              "way": "financed", "refusals": [], "at_closing": "24.69", "a_month": "4.06"
              "months": 360
              "cost": [
                "534.69"
                "538.24"
                ...
                "1454.16"
                361 rows: 387568.35 #57fb926b
              ]
            }
            ...
            3 rows: at_closing 549.23, a_month 4.83, months 720 #abc29eaa
          ]
          "break_even": [
            {
              "dearer": "financed", "than": "cash", "month": 1, "to": null
              "when": "from month 1 on"
            }
            {
              "dearer": "financed", "than": "after", "month": 1, "to": null
              "when": "from month 1 on"
            }
            {"dearer": "cash", "than": "after", "month": 1, "to": null, "when": "from month 1 on"}
          ]
        }
        ...
        4 rows: monthly_without 12912.43 #83a637d1
      ]
    }
  ]
  "cautions": [
    {
      "code": "costs_over_the_home_without", "about": []
      "words": "Each cost is how much more the home with the option has cos..." 370 letters #aa0ebc1b
    }
    {
      "code": "estimate", "about": []
      "words": "This is an estimate as of November 24, 2026. It is not a Lo..." 263 letters #23c23b25
    }
    ...
    {
      "code": "costs_as_known", "about": []
      "words": "Taxes, insurance, HOA dues and closing costs use the figure..." 276 letters #68c1cbdd
    }
    4 rows #7b75d82e
  ]
}
4691 lines #e2775c17
= 0
$ quoin later ../../examples/oxbarrow-meadow/buyers/short-of-cash.json deck:treated --loan-rate 11.5
2> quoin: found --loan-rate 11.5
2>   expected both --loan-rate and --loan-months
2>   [payment-input]
= 1
$ quoin later ../../examples/oxbarrow-meadow/buyers/short-of-cash.json deck:treated --month 0
2> quoin: found --month 0
2>   expected a whole number of months from 1 to 120
2>   [payment-input]
= 1
$ quoin later --help
An option now, financed or in cash, or later, after closing
Usage: quoin later [OPTIONS] INQUIRY OPTION...

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file
  OPTION TEXT ... REQUIRED    options, as ID, ID:LEVEL or ID=NUMBER

Options:
  -h,--help                   Print this help message and exit
  --month TEXT                the number of the loan payment when the later work is done, 1 to 120; 1 if not given
  --loan-rate TEXT            the yearly rate of a personal loan or card for the later work, in percent
  --loan-months TEXT          the months of that loan, 1 to 240
  --brief                     one line for each loan, with what the payment rests on

Example:
  quoin later buyer.json deck:composite --loan-rate 11.5 --loan-months 60

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
