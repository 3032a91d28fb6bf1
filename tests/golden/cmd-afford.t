# How much home: what binds, what comes next, what a step takes.
$ quoin afford ../../examples/oxbarrow-meadow/buyers/six-programs.json --reserves 2 --step 10000
up to $513,765.00 · $4,087.50 a month · $28,312.15 cash needed ·
  Conventional, 5% down, 30 years: 6.375% (6.847% APR), 30 years, $25,689.00 down
up to $550,895.00 · $4,051.27 a month · $112,896.79 cash needed ·
  Conventional, 20% down, 20 years: 6.125% (6.162% APR), 20 years, $110,179.00 down
up to $444,323.00 · $4,087.50 a month · $44,921.22 cash needed ·
  Conventional, 10% down, 15 years: 5.625% (5.776% APR), 15 years, $44,433.00 down
up to $393,648.00 · $3,084.50 a month · $15,312.47 cash needed ·
  FHA, 3.5% down, 30 years: 5.875% (6.615% APR), 30 years, $13,778.00 down
up to $491,387.00 · $3,739.24 a month · $2,330.48 cash needed ·
  VA, nothing down, first use: 5.875% (6.098% APR), 30 years, $0.00 down
up to $426,679.00 · $3,383.00 a month · $2,070.68 cash needed ·
  USDA, nothing down, 30 years: 6.000% (6.474% APR), 30 years, $0.00 down
These are estimates with sample rates, as of November 24, 2026.

Highest price that fits
Oxbarrow Meadow by Tarnwick Builders
Teasel plan (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 14, 2027
Prepared by Sales desk, Oxbarrow Meadow
2 monthly payments kept as reserves, on top of the cash needed

Conventional, 5% down, 30 years
  up to $513,765.00: $4,087.50 a month, $28,312.15 cash needed
    Conventional, fixed rate: interest rate 6.375%, lender credit of 0.125 points, APR 6.847%,
    loan term 30 years, down payment $25,689.00 (5.00%), LTV 95.00%, 180-day rate lock
                                     needed        limit        left
    debt-to-income ratio of 45%   $4,477.50    $4,477.50       $0.00
    your cash                    $36,487.15  $121,000.00  $84,512.85
    What limits the price: debt-to-income ratio of 45%. Without that, you could go up to
    $876,579.00 (next limit: the loan's own limits).
    For a home at $523,765.00, you would need $175.07 more income a month or $78.78 less in
    monthly debts. Or you could take an interest rate of 6.125% at 0.875 points and need none of
    that.
    plan sorrel: 14 choices of elevation and lot, from $389,900.00 without options (field, lot 11)
    plan teasel: 15 choices of elevation and lot, from $424,400.00 without options (field, lot 4)
    plan burdock: 24 choices of elevation and lot, from $439,900.00 without options (field, lot 3)
    plan comfrey: 11 choices of elevation and lot, from $489,900.00 without options (field, lot 3)

Conventional, 20% down, 20 years
  up to $550,895.00: $4,051.27 a month, $112,896.79 cash needed
    Conventional, fixed rate: interest rate 6.125%, lender credit of 0.125 points, APR 6.162%,
    loan term 20 years, down payment $110,179.00 (20.00%), LTV 80.00%, 180-day rate lock
                                      needed        limit    left
    debt-to-income ratio of 45%    $4,441.27    $4,477.50  $36.23
    your cash                    $120,999.33  $121,000.00   $0.67
    What limits the price: your cash. Without that, you could go up to $555,871.00 (next limit:
    debt-to-income ratio of 45%).
    For a home at $560,895.00, you would need $2,261.80 more cash, and $81.27 more income a month
    or $36.57 less in monthly debts.
    plan sorrel: 14 choices of elevation and lot, from $389,900.00 without options (field, lot 11)
    plan teasel: 15 choices of elevation and lot, from $424,400.00 without options (field, lot 4)
    plan burdock: 24 choices of elevation and lot, from $439,900.00 without options (field, lot 3)
    plan comfrey: 16 choices of elevation and lot, from $489,900.00 without options (field, lot 3)

Conventional, 10% down, 15 years
  up to $444,323.00: $4,087.50 a month, $44,921.22 cash needed
    Conventional, fixed rate: interest rate 5.625%, lender credit of 0.375 points, APR 5.776%,
    loan term 15 years, down payment $44,433.00 (10.00%), LTV 90.00%, 180-day rate lock
                                     needed        limit        left
    debt-to-income ratio of 45%   $4,477.50    $4,477.50       $0.00
    your cash                    $53,096.22  $121,000.00  $67,903.78
    What limits the price: debt-to-income ratio of 45%. Without that, you could go up to
    $925,278.00 (next limit: the loan's own limits).
    For a home at $454,323.00, you would need $202.40 more income a month or $91.08 less in
    monthly debts. Or you could take an interest rate of 5.125% at 1.750 points and need none of
    that.
    plan sorrel: 14 choices of elevation and lot, from $389,900.00 without options (field, lot 11)
    plan teasel: 10 choices of elevation and lot, from $424,400.00 without options (field, lot 4)
    plan burdock: 1 choice of elevation and lot, from $439,900.00 without options (field, lot 3)

FHA, 3.5% down, 30 years
  up to $393,648.00: $3,084.50 a month, $15,312.47 cash needed
    FHA, fixed rate: interest rate 5.875%, 0.000 points, APR 6.615%, loan term 30 years, down
    payment $13,778.00 (3.50%), LTV 96.50%, 180-day rate lock
                                     needed        limit        left
    housing ratio of 31%          $3,084.50    $3,084.50       $0.00
    debt-to-income ratio of 43%   $3,474.50    $4,278.50     $804.00
    your cash                    $21,481.47  $121,000.00  $99,518.53
    What limits the price: housing ratio of 31%. Without that, you could go up to $497,635.00
    (next limit: debt-to-income ratio of 43%).
    For a home at $403,648.00, you would need $249.42 more income a month. Or you could take an
    interest rate of 5.500% at 1.625 points and need none of that.
    No home in the price book is within this price.

VA, nothing down, first use
  up to $491,387.00: $3,739.24 a month, $2,330.48 cash needed
    VA, fixed rate: interest rate 5.875%, lender credit of 0.125 points, APR 6.098%, loan term 30
    years, down payment $0.00 (0.00%), LTV 100.00%, 180-day rate lock
                                    needed        limit         left
    debt-to-income ratio of 41%  $4,129.24    $4,129.24        $0.00
    your cash                    $9,808.96  $121,000.00  $111,191.04
    What limits the price: debt-to-income ratio of 41%.
    Each ratio is rounded to a whole percent before it is compared with the limit.
    This program also looks at residual income. It is not tested here. Missing: income taxes
    ("income_taxes"), people in the household.
    For a home at $501,387.00, you would need $189.40 more income a month or $78.61 less in
    monthly debts. Or you could take an interest rate of 5.625% at 0.875 points and need none of
    that.
    plan sorrel: 14 choices of elevation and lot, from $389,900.00 without options (field, lot 11)
    plan teasel: 15 choices of elevation and lot, from $424,400.00 without options (field, lot 4)
    plan burdock: 24 choices of elevation and lot, from $439,900.00 without options (field, lot 3)
    plan comfrey: 1 choice of elevation and lot, from $489,900.00 without options (field, lot 3)

USDA, nothing down, 30 years
  up to $426,679.00: $3,383.00 a month, $2,070.68 cash needed
    USDA, fixed rate: interest rate 6.000%, 0.000 points, APR 6.474%, loan term 30 years, down
    payment $0.00 (0.00%), LTV 100.00%, 180-day rate lock
                                    needed        limit         left
    housing ratio of 34%         $3,383.00    $3,383.00        $0.00
    debt-to-income ratio of 41%  $3,773.00    $4,079.50      $306.50
    your cash                    $8,836.68  $121,000.00  $112,163.32
    What limits the price: housing ratio of 34%. Without that, you could go up to $465,808.00
    (next limit: debt-to-income ratio of 41%).
    For a home at $436,679.00, you would need $230.42 more income a month. Or you could take an
    interest rate of 5.625% at 1.625 points and need none of that.
    plan sorrel: 13 choices of elevation and lot, from $389,900.00 without options (field, lot 11)
    plan teasel: 1 choice of elevation and lot, from $424,400.00 without options (field, lot 4)

Ratios are guides from the published rules, not an approval. The housing ratio is the monthly
payment divided by gross monthly income. The debt-to-income ratio (DTI) adds monthly debts to that
payment. A lender looks at credit, income and assets, and may go above these ratios or stay below
them. What you can borrow and what suits you are two questions. A temporary buydown lowers the first
payments, but it does not raise the price that fits: loans are held to the note rate.

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
$ quoin afford ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --automated
up to $530,614.00 · $4,188.81 a month · $22,499.95 cash needed ·
  FHA, 3.5% down: 6.000% (6.734% APR), 30 years, $18,572.00 down
up to $530,614.00 · $4,188.81 a month · $22,499.95 cash needed ·
  FHA, all available cash: 6.000% (6.734% APR), 30 years, $18,572.00 down
up to $2,120,436.00 · $16,858.02 a month · $22,499.99 cash needed ·
  USDA, nothing down: 6.125% (6.577% APR), 30 years, $0.00 down
up to $405,863.00 · $3,639.99 a month · $15,197.91 cash needed ·
  Conventional, 3% down: 6.500% (7.816% APR), 30 years, $12,176.00 down
These are estimates with sample rates, as of November 24, 2026.

Highest price that fits
Oxbarrow Meadow by Tarnwick Builders
Sorrel plan (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 20, 2027
Prepared by Sales desk, Oxbarrow Meadow

FHA, 3.5% down
  up to $530,614.00 (no income ratio applied): $4,188.81 a month, $22,499.95 cash needed
    FHA, fixed rate: interest rate 6.000%, lender credit of 0.125 points, APR 6.734%, loan term 30
    years, down payment $18,572.00 (3.50%), LTV 96.50%, 180-day rate lock
                   needed       limit   left
    your cash  $22,499.95  $22,500.00  $0.05
    What limits the price: your cash. Without that, you could go up to $560,920.00 (next limit:
    the loan's own limits).
    This program publishes no ratio for loans that its automated underwriting accepts, so none is
    applied here. No one knows what it accepts until a lender submits the loan. A loan that it
    refers to manual underwriting is held to the ratios for that.
    For a home at $535,614.00, you would need $230.93 more cash.
    plan sorrel: 14 choices of elevation and lot, from $389,900.00 without options (field, lot 11)
    plan teasel: 15 choices of elevation and lot, from $424,400.00 without options (field, lot 4)
    plan burdock: 24 choices of elevation and lot, from $439,900.00 without options (field, lot 3)
    plan comfrey: 15 choices of elevation and lot, from $489,900.00 without options (field, lot 3)

FHA, all available cash
  up to $530,614.00 (no income ratio applied): $4,188.81 a month, $22,499.95 cash needed
    FHA, fixed rate: interest rate 6.000%, lender credit of 0.125 points, APR 6.734%, loan term 30
    years, down payment $18,572.00 (3.50%), LTV 96.50%, 180-day rate lock
                   needed       limit   left
    your cash  $22,499.95  $22,500.00  $0.05
    What limits the price: the loan's own limits (cash of $22,500.00 is $0.01 short of the
    $22,500.01 needed).
    This program publishes no ratio for loans that its automated underwriting accepts, so none is
    applied here. No one knows what it accepts until a lender submits the loan. A loan that it
    refers to manual underwriting is held to the ratios for that.
    For a home at $535,614.00, this loan is not available: cash of $22,500.00 is $230.93 short of
    the $22,730.93 needed.
    plan sorrel: 14 choices of elevation and lot, from $389,900.00 without options (field, lot 11)
    plan teasel: 15 choices of elevation and lot, from $424,400.00 without options (field, lot 4)
    plan burdock: 24 choices of elevation and lot, from $439,900.00 without options (field, lot 3)
    plan comfrey: 15 choices of elevation and lot, from $489,900.00 without options (field, lot 3)

USDA, nothing down
  up to $2,120,436.00 (no income ratio applied): $16,858.02 a month, $22,499.99 cash needed
    USDA, fixed rate: interest rate 6.125%, lender credit of 0.125 points, APR 6.577%, loan term
    30 years, down payment $0.00 (0.00%), LTV 100.00%, 180-day rate lock
                   needed       limit   left
    your cash  $22,499.99  $22,500.00  $0.01
    What limits the price: your cash.
    This program publishes no ratio for loans that its automated underwriting accepts, so none is
    applied here. No one knows what it accepts until a lender submits the loan. A loan that it
    refers to manual underwriting is held to the ratios for that.
    For a home at $2,125,436.00, you would need $57.47 more cash.
    plan sorrel: 14 choices of elevation and lot, from $389,900.00 without options (field, lot 11)
    plan teasel: 15 choices of elevation and lot, from $424,400.00 without options (field, lot 4)
    plan burdock: 24 choices of elevation and lot, from $439,900.00 without options (field, lot 3)
    plan comfrey: 16 choices of elevation and lot, from $489,900.00 without options (field, lot 3)

Conventional, 3% down
  up to $405,863.00: $3,639.99 a month, $15,197.91 cash needed
    Conventional, fixed rate: interest rate 6.500%, 0.000 points, APR 7.816%, loan term 30 years,
    down payment $12,176.00 (3.00%), LTV 97.00%, 180-day rate lock
                                     needed       limit       left
    debt-to-income ratio of 50%   $3,949.99   $3,950.00      $0.01
    your cash                    $15,197.91  $22,500.00  $7,302.09
    What limits the price: debt-to-income ratio of 50%. Without that, you could go up to
    $576,128.00 (next limit: your cash).
    For a home at $410,863.00, you would need $88.66 more income a month or $44.33 less in monthly
    debts. Or you could take an interest rate of 6.250% at 0.875 points and need none of that.
    plan sorrel: 9 choices of elevation and lot, from $389,900.00 without options (field, lot 11)

Ratios are guides from the published rules, not an approval. The housing ratio is the monthly
payment divided by gross monthly income. The debt-to-income ratio (DTI) adds monthly debts to that
payment. A lender looks at credit, income and assets, and may go above these ratios or stay below
them. What you can borrow and what suits you are two questions. A temporary buydown lowers the first
payments, but it does not raise the price that fits: loans are held to the note rate.

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
$ quoin afford ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --json | digest
{
  "question": "afford"
  "heading": {
    "community": "Oxbarrow Meadow", "builder": "Tarnwick Builders", "buyer": "Buyer 2"
    "prepared_by": "Sales desk, Oxbarrow Meadow", "originator": "", "plan": "Sorrel"
    "elevation": "Field", "lot": "4", "price_book_version": "2026-11"
    "price_book_expires": "2027-01-31", "as_of": "2026-11-24", "contract": "2026-12-05"
    "closing": "2027-05-20", "place": "Venning County", "sample_place": true
    "rate_sheet": "2026-11-20", "rates_date": "2026-11-20", "rates_good_through": "2026-12-18"
    "lender": "Sample lender", "license": "none, sample data", "sample_rates": true
  }
  "reserve_months": 0, "automated": false, "assumptions": []
  "scenarios": [
    {
      "terms": {
        "name": "FHA, 3.5% down", "program": "fha", "program_name": "FHA, fixed rate"
        "months": 360, "lock_days": 180, "score": 664, "rate": "6", "points": "-0.125"
        "apr": "6.752", "down_payment": "10796.00", "down_percent": "3.50", "ltv": "96.50"
        "down_from_cash": false, "extra_principal": "0.00"
        "fine_print": "You pay two premiums: one at closing, usually added to the ..." 257 letters #0f36df3d
        "adjustable": null
      }
      "ratios": {
        "front": "31", "back": "43", "automated": null, "whole_percents": false
        "passes_by_residual_income": false, "passed_by": null, "status": "published"
        "source": "HUD Handbook 4000.1, II.A.5.d (manually underwritten loans:..." 90 letters #7ddf5b20
      }
      "residual_income": null, "qualifying_rate": null, "qualifying_source": ""
      "price": "308449.00"
      "rooms": [
        {"limit": "front_ratio", "needed": "2449.00", "most": "2449.00", "room": "0.00"}
        {"limit": "back_ratio", "needed": "2759.00", "most": "3397.00", "room": "638.00"}
        {"limit": "cash", "needed": "12166.57", "most": "22500.00", "room": "10333.43"}
      ]
      "binds": ["front_ratio"], "refusals": [], "next_price": "390002.00"
      "next_binds": ["back_ratio"]
      "step": {
        "price": "313449.00", "more_cash": "0.00", "more_income": "125.94"
        "more_after_tax": "0.00", "less_debts": "0.00", "debts_suffice": false
        "lower_rate": {"rate": "5.75", "points": "0.875"}, "refusals": []
      }
      "plans": []
      "scenario": {
        "terms": {
          "name": "FHA, 3.5% down", "program": "fha", "program_name": "FHA, fixed rate"
          "months": 360, "lock_days": 180, "score": 664, "rate": "6", "points": "-0.125"
          "apr": "6.752", "down_payment": "10796.00", "down_percent": "3.50", "ltv": "96.50"
          "down_from_cash": false, "extra_principal": "0.00"
          "fine_print": "You pay two premiums: one at closing, usually added to the ..." 257 letters #0f36df3d
          "adjustable": null
        }
        "available": true, "refusals": [], "price": "308449.00", "value": "308449.00"
        "base_loan": "297653.00"
        "upfront_fee": {
          "name": "Upfront mortgage insurance premium", "percent": "1.75", "amount": "5208.93"
          "financed": "5208.00"
        }
        "loan": "302861.00"
        "monthly": {
          "principal_and_interest": "1815.80", "mortgage_insurance": "135.66"
          "property_tax": "338.50", "homeowners_insurance": "69.92", "flood_insurance": "0.00"
          "wind_insurance": "0.00", "association_dues": "64.50", "district_charges": "24.62"
          "total": "2449.00"
        }
        "first_year": {
          "months": 12
          "monthly": {
            "principal_and_interest": "1815.80", "mortgage_insurance": "135.66"
            "property_tax": "73.79", "homeowners_insurance": "69.92", "flood_insurance": "0.00"
            "wind_insurance": "0.00", "association_dues": "64.50", "district_charges": "14.75"
            "total": "2174.42"
          }
        }
        "temporary_buydown": null
        "mortgage_insurance": {
          "name": "Annual mortgage insurance premium", "annual_percent": "0.55"
          "first_monthly": "135.66", "payments": 360, "paid_up": false, "last_date": "2057-06-01"
          "whole_term": true, "on_request_payment": 0, "on_request_date": null
        }
        "cash": {
          "down_payment": "10796.00", "upfront_fee_in_cash": "0.93", "points": "-378.58"
          "principal_reduction": "0.00", "closing_costs": "4321.65", "prepaid_interest": "605.76"
          "prepaid_bills": "1370.24", "initial_escrow_deposit": "1299.07"
          "temporary_buydown": "0.00", "credits": "5848.50", "needed": "12166.57"
          "deposits": "5331.25", "to_close": "6835.32"
        }
        "credits_without_use": "0.00", "credits_over_cap": "0.00"
        "lender_credit_without_use": "0.00"
        "cost_of_credit": {
          "prepaid_finance_charge": "7115.69", "amount_financed": "295745.31"
          "finance_charge": "389554.21", "total_of_payments": "694372.71"
          "total_interest_percentage": "116.039", "disclosed_in_five_years": "125941.07"
          "disclosed_principal_in_five_years": "21035.30", "buyers_buydown": "0.00"
          "payment_levels": [], "first_period": {"months": 1, "odd_days": 12}, "apr": "6.752"
        }
        "first_payment": "2027-07-01", "payments": 360, "last_payment": "1820.76"
        "total_interest": "350831.96", "paid_in_five_years": "158886.85"
        "paid_over_loan": "876580.49", "balance_after_five_years": "281825.70"
        "balance_after_ten_years": "253452.25"
      }
    }
    ...
    4 rows: price 1322606.00, next_price 1728440.00 #0ac8fa2c
  ]
  "cautions": [
    {
      "code": "ratios_are_guides", "about": []
      "words": "Ratios are guides from the published rules, not an approval..." 477 letters #1c737116
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
    4 rows #9190ebc2
  ]
}
795 lines #72273a03
= 0
$ quoin afford ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --reserves two
2> quoin: found --reserves two
2>   expected a whole number of months from 0 to 24
2>   [payment-input]
= 1
$ quoin afford ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --step 0
2> quoin: found --step 0
2>   expected an amount above zero, such as 5000
2>   [payment-input]
= 1
$ quoin afford --help
The highest price that income, debts, cash and loan programs allow
Usage: quoin afford [OPTIONS] [INQUIRY]

Positionals:
  INQUIRY TEXT                the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --reserves TEXT             months of the payment to keep as reserves after closing, 0 to 24
  --step TEXT                 also show a price this many dollars higher
  --automated                 assume that automated underwriting accepts the file: its DTI limit where one is published, else none
  --brief                     one line for each loan, with what the payment rests on
[Option Group: without a price book]
  figures instead of an inquiry; quoin assumes what is not given, and says so
  Options:
    --income TEXT               monthly income before taxes, in dollars
    --rate TEXT                 the yearly interest rate, in percent
    --debts TEXT                monthly payments on debts, in dollars
    --cash TEXT                 cash available for the purchase, in dollars
    --years TEXT                the loan term in years; 30 if not given
    --down TEXT                 the down payment in percent; the program's usual ones if not given
    --program TEXT ...          a program by its id; can be given more than once
    --property-tax TEXT         property taxes a year, in percent of the price
    --insurance TEXT            homeowner's insurance a year, in percent of the price
    --dues TEXT                 HOA dues a month, in dollars
    --closing-costs TEXT        closing costs, in percent of the loan amount
    --score TEXT                credit score
    --taxes TEXT                monthly taxes on the income, in dollars, for residual income
    --persons TEXT              people in the household, for residual income
    --region TEXT               northeast, midwest, south or west, for residual income
    --square-feet TEXT          living area in square feet, for residual income
    --as-of TEXT                the day of the estimate, such as 2026-11-24; today if not given

Example:
  quoin afford buyer.json --reserves 2
  quoin afford --income 8400 --debts 450 --cash 60000 --rate 6.25

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
