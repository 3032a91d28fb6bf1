# Now, or after the closing: the same thing three or four ways.
$ quoin later ../../examples/oxbarrow-meadow/buyers/short-of-cash.json deck:treated garage-insulation --loan-rate 11.5 --loan-months 60
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
                                          added cash  added a month      year 1      year 3      year 5      year 7     year 10     year 15     year 30
    adding it to your loan                   $452.28         $76.54  $10,875.64  $12,452.03  $13,992.57  $15,492.93  $17,656.06  $20,976.74  $27,464.81
    paying the builder in cash             $9,885.29         -$1.28   $9,869.93   $9,846.53   $9,833.93   $9,833.81   $9,859.85   $9,989.57  $11,433.89
    paying cash after closing                  $0.00          $0.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00
    a personal loan after closing              $0.00        $296.90  $14,832.24  $16,963.98  $17,811.19  $17,814.01  $17,814.01  $17,814.01  $17,814.01
    from month 1 on, adding it to your loan costs more than paying the builder in cash
    from month 53 on, adding it to your loan costs more than paying cash after closing
    from month 123 on, adding it to your loan costs more than a personal loan after closing
    from month 1 through month 52, paying cash after closing costs more than adding it to your
      loan
    from month 1 on, paying cash after closing costs more than paying the builder in cash
    from month 1 through month 122, a personal loan after closing costs more than adding it to
      your loan
    from month 1 on, a personal loan after closing costs more than paying the builder in cash
    from month 2 on, a personal loan after closing costs more than paying cash after closing

  FHA, all available cash
    $3,074.84 a month without it; FHA, fixed rate: interest rate 6.000%, lender credit of 0.125
    points, APR 6.693%, loan term 30 years, down payment $20,152.00 (5.09%), LTV 94.91%, 180-day
    rate lock
                                          added cash  added a month      year 1      year 3      year 5      year 7     year 10     year 15     year 30
    adding it to your loan                     $0.43         $95.08  $11,101.54  $13,103.01  $15,056.21  $16,954.96  $19,685.71  $23,853.79  $31,677.16
    paying the builder in cash             $9,885.29         $14.54  $10,059.77  $10,408.73  $10,757.69  $11,106.65  $11,630.09  $12,502.49  $15,119.69
    paying cash after closing                  $0.00          $0.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00
    a personal loan after closing              $0.00        $296.90  $14,832.24  $16,963.98  $17,811.19  $17,814.01  $17,814.01  $17,814.01  $17,814.01
    from month 1 on, adding it to your loan costs more than paying the builder in cash
    from month 41 on, adding it to your loan costs more than paying cash after closing
    from month 96 on, adding it to your loan costs more than a personal loan after closing
    from month 249 on, paying the builder in cash costs more than paying cash after closing
    from month 1 through month 40, paying cash after closing costs more than adding it to your
      loan
    from month 1 through month 248, paying cash after closing costs more than paying the builder
      in cash
    from month 1 through month 95, a personal loan after closing costs more than adding it to
      your loan
    from month 1 on, a personal loan after closing costs more than paying the builder in cash
    from month 2 on, a personal loan after closing costs more than paying cash after closing

  USDA, nothing down
    $3,172.77 a month without it; USDA, fixed rate: interest rate 6.125%, lender credit of 0.125
    points, APR 6.603%, loan term 30 years, down payment $0.00 (0.00%), LTV 100.00%, 180-day rate
    lock
                                          added cash  added a month      year 1      year 3      year 5      year 7     year 10     year 15     year 30
    adding it to your loan                   $111.13         $77.56  $10,822.06  $12,421.83  $13,985.81  $15,509.28  $17,707.06  $21,082.98  $27,668.59
    paying the builder in cash             $9,874.90         $14.54  $10,049.38  $10,398.34  $10,747.30  $11,096.26  $11,619.70  $12,492.10  $15,109.30
    paying cash after closing                  $0.00          $0.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00
    a personal loan after closing              $0.00        $296.90  $14,832.24  $16,963.98  $17,811.19  $17,814.01  $17,814.01  $17,814.01  $17,814.01
    from month 1 on, adding it to your loan costs more than paying the builder in cash
    from month 53 on, adding it to your loan costs more than paying cash after closing
    from month 122 on, adding it to your loan costs more than a personal loan after closing
    from month 250 on, paying the builder in cash costs more than paying cash after closing
    from month 1 through month 52, paying cash after closing costs more than adding it to your
      loan
    from month 1 through month 249, paying cash after closing costs more than paying the builder
      in cash
    from month 1 through month 121, a personal loan after closing costs more than adding it to
      your loan
    from month 1 on, a personal loan after closing costs more than paying the builder in cash
    from month 2 on, a personal loan after closing costs more than paying cash after closing

  Conventional, 3% down
    $3,550.09 a month without it; Conventional, fixed rate: interest rate 6.500%, 0.000 points,
    APR 7.817%, loan term 30 years, down payment $11,872.00 (3.00%), LTV 97.00%, 180-day rate lock
                                          added cash  added a month      year 1      year 3      year 5      year 7     year 10     year 15     year 30
    adding it to your loan                   $416.92         $86.91  $10,859.54  $12,710.91  $14,529.82  $16,311.79  $18,904.10  $22,514.50  $29,046.00
    paying the builder in cash             $9,885.29        -$94.22   $8,754.65   $6,493.37   $4,232.09   $1,970.81  -$1,421.11  -$7,029.45  -$4,412.25
    paying cash after closing                  $0.00          $0.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00  $13,500.00
    a personal loan after closing              $0.00        $296.90  $14,832.24  $16,963.98  $17,811.19  $17,814.01  $17,814.01  $17,814.01  $17,814.01
    from month 1 on, adding it to your loan costs more than paying the builder in cash
    from month 47 on, adding it to your loan costs more than paying cash after closing
    from month 105 on, adding it to your loan costs more than a personal loan after closing
    from month 1 through month 46, paying cash after closing costs more than adding it to your
      loan
    from month 1 on, paying cash after closing costs more than paying the builder in cash
    from month 1 through month 104, a personal loan after closing costs more than adding it to
      your loan
    from month 1 on, a personal loan after closing costs more than paying the builder in cash
    from month 2 on, a personal loan after closing costs more than paying cash after closing

Insulated garage walls (garage-insulation): +$2,653.50 through the builder
  after closing: the price book has no estimate

  FHA, 3.5% down
    $3,131.71 a month without it; FHA, fixed rate: interest rate 6.000%, lender credit of 0.125
    points, APR 6.742%, loan term 30 years, down payment $13,851.00 (3.50%), LTV 96.50%, 180-day
    rate lock
                                          added cash  added a month     year 1     year 3     year 5     year 7    year 10    year 15    year 30
    adding it to your loan                   $122.07         $20.73  $2,944.87  $3,371.71  $3,788.96  $4,195.47  $4,781.34  $5,680.87  $7,440.16
    paying the builder in cash             $2,676.66          $3.94  $2,723.94  $2,818.50  $2,913.06  $3,007.62  $3,149.46  $3,385.86  $4,095.06
    from month 1 on, adding it to your loan costs more than paying the builder in cash

  FHA, all available cash
    $3,074.84 a month without it; FHA, fixed rate: interest rate 6.000%, lender credit of 0.125
    points, APR 6.693%, loan term 30 years, down payment $20,152.00 (5.09%), LTV 94.91%, 180-day
    rate lock
                                          added cash  added a month     year 1     year 3     year 5     year 7    year 10    year 15    year 30
    adding it to your loan                     $0.64         $21.42  $2,954.12  $3,394.28  $3,824.39  $4,243.12  $4,846.56  $5,772.16  $7,568.89
    paying the builder in cash             $2,676.66          $3.94  $2,723.94  $2,818.50  $2,913.06  $3,007.62  $3,149.46  $3,385.86  $4,095.06
    from month 1 on, adding it to your loan costs more than paying the builder in cash

  USDA, nothing down
    $3,172.77 a month without it; USDA, fixed rate: interest rate 6.125%, lender credit of 0.125
    points, APR 6.603%, loan term 30 years, down payment $0.00 (0.00%), LTV 100.00%, 180-day rate
    lock
                                          added cash  added a month     year 1     year 3     year 5     year 7    year 10    year 15    year 30
    adding it to your loan                    $30.41         $21.01  $2,930.32  $3,363.52  $3,787.07  $4,199.67  $4,794.61  $5,708.50  $7,489.10
    paying the builder in cash             $2,669.77          $3.94  $2,717.05  $2,811.61  $2,906.17  $3,000.73  $3,142.57  $3,378.97  $4,088.17
    from month 1 on, adding it to your loan costs more than paying the builder in cash

  Conventional, 3% down
    $3,550.09 a month without it; Conventional, fixed rate: interest rate 6.500%, 0.000 points,
    APR 7.817%, loan term 30 years, down payment $11,872.00 (3.00%), LTV 97.00%, 180-day rate lock
                                          added cash  added a month     year 1     year 3     year 5     year 7    year 10    year 15    year 30
    adding it to your loan                   $112.81         $23.53  $2,940.42  $3,441.67  $3,934.14  $4,416.60  $5,118.53  $6,096.25  $7,866.03
    paying the builder in cash             $2,676.66          $3.94  $2,723.94  $2,818.50  $2,913.06  $3,007.62  $3,149.46  $1,898.43  $2,607.63
    from month 1 on, adding it to your loan costs more than paying the builder in cash

Each cost is what the home with the option has taken by the end of that year, beyond the home
without it. Any added balance you still owe is in it. The cost of work after closing is an estimate
from the price book, not an offer. Prices may rise, and money you keep may earn something. Neither
is counted.

Work on gas, wiring, plumbing or structure must follow local code. It needs a permit and a licensed
trade, whoever does it and whenever.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Only a licensed loan originator (none is named here yet) can give you those. The published
programs and local law decide. You may choose any lender.

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
      "words": "Each cost is what the home with the option has taken by the..." 304 letters #7e199a79
    }
    {
      "code": "estimate", "about": []
      "words": "This is an estimate as of November 24, 2026. It is not a Lo..." 253 letters #7b4a1ad8
    }
    ...
    {
      "code": "costs_as_known", "about": []
      "words": "Taxes, insurance, HOA dues and closing costs use the figure..." 276 letters #68c1cbdd
    }
    4 rows #62445094
  ]
}
4691 lines #b136373a
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
An option from the builder, financed or in cash, or after closing
Usage: quoin later [OPTIONS] INQUIRY OPTION...

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file
  OPTION TEXT ... REQUIRED    options, as ID, ID:LEVEL or ID=NUMBER

Options:
  -h,--help                   Print this help message and exit
  --month TEXT                the payment of the loan with which it is done, 1 to 120; 1 if not said
  --loan-rate TEXT            on a personal loan or card: its yearly rate, in percent
  --loan-months TEXT          and its months, 1 to 240

Example:
  quoin later buyer.json deck:composite --loan-rate 11.5 --loan-months 60

--json, --language and --rates go with every command; 'quoin --help' explains them.

= 0
