# How much home: what binds, what comes next, what a step takes.
$ quoin afford ../../examples/oxbarrow-meadow/buyers/six-programs.json --reserves 2 --step 10000
How much home
Oxbarrow Meadow, Tarnwick Builders
Teasel (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 14 May 2027
prepared by Sales desk, Oxbarrow Meadow
2 months of the payment kept in reserve

Conventional, 5 % down, 30 years
  up to $513,765.00: $4,087.50 a month, $28,312.15 of cash needed
    Conventional fixed: 6.375 % note rate, -0.125 points, APR 6.847 %, 30 years, $25,689.00 down
    (5.00 %), LTV 95.00 %, 180-day lock
                                                takes         most        left
    housing and debts over 45 % of income   $4,477.50    $4,477.50       $0.00
    the cash there is                      $36,487.15  $121,000.00  $84,512.85
    What binds: housing and debts over 45 % of income. Without it, up to $876,579.00, where the
    program's own limit binds.
    A home of $523,765.00 would take $175.07 more income a month, or $78.78 less in debts. Instead
    of all that a note rate of 6.125 % at 0.875 points would do.
    sorrel: 14 pairs of elevation and free lot, from $389,900.00 (field, lot 11)
    teasel: 15 pairs of elevation and free lot, from $424,400.00 (field, lot 4)
    burdock: 24 pairs of elevation and free lot, from $439,900.00 (field, lot 3)
    comfrey: 11 pairs of elevation and free lot, from $489,900.00 (field, lot 3)

Conventional, 20 % down, 20 years
  up to $550,895.00: $4,051.27 a month, $112,896.79 of cash needed
    Conventional fixed: 6.125 % note rate, -0.125 points, APR 6.162 %, 20 years, $110,179.00 down
    (20.00 %), LTV 80.00 %, 180-day lock
                                                 takes         most    left
    housing and debts over 45 % of income    $4,441.27    $4,477.50  $36.23
    the cash there is                      $120,999.33  $121,000.00   $0.67
    What binds: the cash there is. Without it, up to $555,871.00, where housing and debts over
    45 % of income binds.
    A home of $560,895.00 would take $2,261.80 more cash, and $81.27 more income a month, or
    $36.57 less in debts.
    sorrel: 14 pairs of elevation and free lot, from $389,900.00 (field, lot 11)
    teasel: 15 pairs of elevation and free lot, from $424,400.00 (field, lot 4)
    burdock: 24 pairs of elevation and free lot, from $439,900.00 (field, lot 3)
    comfrey: 16 pairs of elevation and free lot, from $489,900.00 (field, lot 3)

Conventional, 10 % down, 15 years
  up to $444,323.00: $4,087.50 a month, $44,921.22 of cash needed
    Conventional fixed: 5.625 % note rate, -0.375 points, APR 5.776 %, 15 years, $44,433.00 down
    (10.00 %), LTV 90.00 %, 180-day lock
                                                takes         most        left
    housing and debts over 45 % of income   $4,477.50    $4,477.50       $0.00
    the cash there is                      $53,096.22  $121,000.00  $67,903.78
    What binds: housing and debts over 45 % of income. Without it, up to $925,278.00, where the
    program's own limit binds.
    A home of $454,323.00 would take $202.40 more income a month, or $91.08 less in debts. Instead
    of all that a note rate of 5.125 % at 1.750 points would do.
    sorrel: 14 pairs of elevation and free lot, from $389,900.00 (field, lot 11)
    teasel: 10 pairs of elevation and free lot, from $424,400.00 (field, lot 4)
    burdock: 1 pair of elevation and free lot, from $439,900.00 (field, lot 3)

FHA, 3.5 % down, 30 years
  up to $393,648.00: $3,084.50 a month, $15,312.47 of cash needed
    FHA-insured fixed: 5.875 % note rate, 0.000 points, APR 6.615 %, 30 years, $13,778.00 down
    (3.50 %), LTV 96.50 %, 180-day lock
                                                takes         most        left
    housing over 31 % of income             $3,084.50    $3,084.50       $0.00
    housing and debts over 43 % of income   $3,474.50    $4,278.50     $804.00
    the cash there is                      $21,481.47  $121,000.00  $99,518.53
    What binds: housing over 31 % of income. Without it, up to $497,635.00, where housing and
    debts over 43 % of income binds.
    A home of $403,648.00 would take $249.42 more income a month. Instead of all that a note rate
    of 5.500 % at 1.625 points would do.
    No home of the price book is within it.

VA, nothing down, first use
  up to $491,387.00: $3,739.24 a month, $2,330.48 of cash needed
    VA-guaranteed fixed: 5.875 % note rate, -0.125 points, APR 6.098 %, 30 years, $0.00 down
    (0.00 %), LTV 100.00 %, 180-day lock
                                               takes         most         left
    housing and debts over 41 % of income  $4,129.24    $4,129.24        $0.00
    the cash there is                      $9,808.96  $121,000.00  $111,191.04
    What binds: housing and debts over 41 % of income.
    A ratio is rounded to a whole percent before it is held to the limit.
    Residual income, which this program asks for, is not tested: the taxes on it ("income_taxes"),
    the persons in the household are not given.
    A home of $501,387.00 would take $189.40 more income a month, or $78.61 less in debts. Instead
    of all that a note rate of 5.625 % at 0.875 points would do.
    sorrel: 14 pairs of elevation and free lot, from $389,900.00 (field, lot 11)
    teasel: 15 pairs of elevation and free lot, from $424,400.00 (field, lot 4)
    burdock: 24 pairs of elevation and free lot, from $439,900.00 (field, lot 3)
    comfrey: 1 pair of elevation and free lot, from $489,900.00 (field, lot 3)

USDA, nothing down, 30 years
  up to $426,679.00: $3,383.00 a month, $2,070.68 of cash needed
    USDA-guaranteed fixed: 6.000 % note rate, 0.000 points, APR 6.474 %, 30 years, $0.00 down
    (0.00 %), LTV 100.00 %, 180-day lock
                                               takes         most         left
    housing over 34 % of income            $3,383.00    $3,383.00        $0.00
    housing and debts over 41 % of income  $3,773.00    $4,079.50      $306.50
    the cash there is                      $8,836.68  $121,000.00  $112,163.32
    What binds: housing over 34 % of income. Without it, up to $465,808.00, where housing and
    debts over 41 % of income binds.
    A home of $436,679.00 would take $230.42 more income a month. Instead of all that a note rate
    of 5.625 % at 1.625 points would do.
    sorrel: 13 pairs of elevation and free lot, from $389,900.00 (field, lot 11)
    teasel: 1 pair of elevation and free lot, from $424,400.00 (field, lot 4)

Ratios are guides of the published rules, not an approval: a lender looks at credit, income and
assets, and may go above them or stay below. What a buyer can borrow and what suits them are two
questions. A temporary buydown lowers the first payments and lets nothing more: loans are held to
the note rate.

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.

Rates of 20 November 2026 from Sample lender (none: sample data), good through 18 December 2026;
they hold only when locked. They are samples, not anybody's offer.

Taxes, insurance, dues and closing costs as known for Venning County (sample figures). Interest runs
from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep
taxes, insurance and dues as they are today.
= 0
$ quoin afford ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --automated
How much home
Oxbarrow Meadow, Tarnwick Builders
Sorrel (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
as of 24 November 2026; price book 2026-11, in force to 31 January 2027; closing 20 May 2027
prepared by Sales desk, Oxbarrow Meadow

FHA, 3.5 % down
  up to $530,614.00, the income held to no ratio: $4,188.81 a month, $22,499.95 of cash needed
    FHA-insured fixed: 6.000 % note rate, -0.125 points, APR 6.734 %, 30 years, $18,572.00 down
    (3.50 %), LTV 96.50 %, 180-day lock
                            takes        most   left
    the cash there is  $22,499.95  $22,500.00  $0.05
    What binds: the cash there is. Without it, up to $560,920.00, where the program's own limit
    binds.
    No ratio is published for a file that this program's automated underwriting accepts, so none
    is held here: what it accepts is not known before it is asked. A file that it refers is held
    to the ratios of manual underwriting.
    A home of $535,614.00 would take $230.93 more cash.
    sorrel: 14 pairs of elevation and free lot, from $389,900.00 (field, lot 11)
    teasel: 15 pairs of elevation and free lot, from $424,400.00 (field, lot 4)
    burdock: 24 pairs of elevation and free lot, from $439,900.00 (field, lot 3)
    comfrey: 15 pairs of elevation and free lot, from $489,900.00 (field, lot 3)

FHA, all the cash there is
  up to $530,614.00, the income held to no ratio: $4,188.81 a month, $22,499.95 of cash needed
    FHA-insured fixed: 6.000 % note rate, -0.125 points, APR 6.734 %, 30 years, $18,572.00 down
    (3.50 %), LTV 96.50 %, 180-day lock
                            takes        most   left
    the cash there is  $22,499.95  $22,500.00  $0.05
    What binds: the program's own limit (cash of $22,500.00 is $0.01 short of the least that is
    needed, $22,500.01).
    No ratio is published for a file that this program's automated underwriting accepts, so none
    is held here: what it accepts is not known before it is asked. A file that it refers is held
    to the ratios of manual underwriting.
    A home of $535,614.00 is not to be had so: cash of $22,500.00 is $230.93 short of the least
    that is needed, $22,730.93.
    sorrel: 14 pairs of elevation and free lot, from $389,900.00 (field, lot 11)
    teasel: 15 pairs of elevation and free lot, from $424,400.00 (field, lot 4)
    burdock: 24 pairs of elevation and free lot, from $439,900.00 (field, lot 3)
    comfrey: 15 pairs of elevation and free lot, from $489,900.00 (field, lot 3)

USDA, nothing down
  up to $2,120,436.00, the income held to no ratio: $16,858.02 a month, $22,499.99 of cash needed
    USDA-guaranteed fixed: 6.125 % note rate, -0.125 points, APR 6.577 %, 30 years, $0.00 down
    (0.00 %), LTV 100.00 %, 180-day lock
                            takes        most   left
    the cash there is  $22,499.99  $22,500.00  $0.01
    What binds: the cash there is.
    No ratio is published for a file that this program's automated underwriting accepts, so none
    is held here: what it accepts is not known before it is asked. A file that it refers is held
    to the ratios of manual underwriting.
    A home of $2,125,436.00 would take $57.47 more cash.
    sorrel: 14 pairs of elevation and free lot, from $389,900.00 (field, lot 11)
    teasel: 15 pairs of elevation and free lot, from $424,400.00 (field, lot 4)
    burdock: 24 pairs of elevation and free lot, from $439,900.00 (field, lot 3)
    comfrey: 16 pairs of elevation and free lot, from $489,900.00 (field, lot 3)

Conventional, 3 % down
  up to $405,863.00: $3,639.99 a month, $15,197.91 of cash needed
    Conventional fixed: 6.500 % note rate, 0.000 points, APR 7.816 %, 30 years, $12,176.00 down
    (3.00 %), LTV 97.00 %, 180-day lock
                                                takes        most       left
    housing and debts over 50 % of income   $3,949.99   $3,950.00      $0.01
    the cash there is                      $15,197.91  $22,500.00  $7,302.09
    What binds: housing and debts over 50 % of income. Without it, up to $576,128.00, where the
    cash there is binds.
    A home of $410,863.00 would take $88.66 more income a month, or $44.33 less in debts. Instead
    of all that a note rate of 6.250 % at 0.875 points would do.
    sorrel: 9 pairs of elevation and free lot, from $389,900.00 (field, lot 11)

Ratios are guides of the published rules, not an approval: a lender looks at credit, income and
assets, and may go above them or stay below. What a buyer can borrow and what suits them are two
questions. A temporary buydown lowers the first payments and lets nothing more: loans are held to
the note rate.

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.

Rates of 20 November 2026 from Sample lender (none: sample data), good through 18 December 2026;
they hold only when locked. They are samples, not anybody's offer.

Taxes, insurance, dues and closing costs as known for Venning County (sample figures). Interest runs
from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep
taxes, insurance and dues as they are today.
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
    "lender": "Sample lender", "license": "none: sample data", "sample_rates": true
  }
  "reserve_months": 0, "automated": false, "assumptions": []
  "scenarios": [
    {
      "terms": {
        "name": "FHA, 3.5 % down", "program": "fha", "program_name": "FHA-insured fixed"
        "months": 360, "lock_days": 180, "score": 664, "rate": "6", "points": "-0.125"
        "apr": "6.752", "down_payment": "10796.00", "down_percent": "3.50", "ltv": "96.50"
        "down_from_cash": false, "extra_principal": "0.00"
        "fine_print": "There are two premiums: one at closing, usually added to th..." 261 letters #f9633c40
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
          "name": "FHA, 3.5 % down", "program": "fha", "program_name": "FHA-insured fixed"
          "months": 360, "lock_days": 180, "score": 664, "rate": "6", "points": "-0.125"
          "apr": "6.752", "down_payment": "10796.00", "down_percent": "3.50", "ltv": "96.50"
          "down_from_cash": false, "extra_principal": "0.00"
          "fine_print": "There are two premiums: one at closing, usually added to th..." 261 letters #f9633c40
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
    4 rows: price 1322606.00, next_price 1728440.00 #298f6bf8
  ]
  "cautions": [
    {
      "code": "ratios_are_guides", "about": []
      "words": "Ratios are guides of the published rules, not an approval: ..." 305 letters #a2fa0465
    }
    {
      "code": "estimate", "about": []
      "words": "An estimate as of 24 November 2026: not a Loan Estimate, no..." 232 letters #1af3725c
    }
    ...
    {
      "code": "costs_as_known", "about": []
      "words": "Taxes, insurance, dues and closing costs as known for Venni..." 244 letters #446f1b1b
    }
    4 rows #2441b255
  ]
}
795 lines #01f9f995
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
The highest price that income, debts, cash and the programs allow
Usage: quoin afford [OPTIONS] [INQUIRY]

Positionals:
  INQUIRY TEXT                the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --reserves TEXT             months of the payment to be left over in cash, 0 to 24
  --step TEXT                 the higher price to ask about, in dollars more
  --automated                 a file that automated underwriting accepts: its ratio, none where none is published
[Option Group: without a price book]
  figures in place of an inquiry; what is not given is assumed, and told
  Options:
    --income TEXT               gross income a month, in dollars
    --rate TEXT                 the yearly note rate, in percent
    --debts TEXT                payments on debts a month
    --cash TEXT                 all the cash there is
    --years TEXT                the term, 30 if not given
    --down TEXT                 the down payment in percent; the program's usual ones if not given
    --program TEXT ...          a program by its id; may be repeated
    --property-tax TEXT         percent of the price a year
    --insurance TEXT            homeowner's insurance, percent of the price a year
    --dues TEXT                 association dues a month
    --closing-costs TEXT        percent of the loan
    --score TEXT                credit score
    --taxes TEXT                taxes on the income a month, for residual income
    --persons TEXT              persons in the household, for residual income
    --region TEXT               northeast, midwest, south or west, for residual income
    --square-feet TEXT          living area, for residual income
    --as-of TEXT                the day it is as of; today if not given

Example:
  quoin afford buyer.json --reserves 2
  quoin afford --income 8400 --debts 450 --cash 60000 --rate 6.25

--json and --rates DIR go with every command; 'quoin --help' explains them.

= 0
