# The answer of `credit` in JSON.
$ quoin credit data/buyer.json --amount 2500 --scenario "A third down" --rates data/rates --json | digest
{
  "question": "credit"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none, invented", "sample_rates": true
  }
  "amount": "2500.00", "years": 7, "contract_price": "103120.00", "any_incentive": true
  "allowed_uses": ["closing_costs", "price"]
  "scenarios": [
    {
      "terms": {
        "name": "A third down", "program": "short", "program_name": "A short loan", "months": 12
        "lock_days": 60, "score": 700, "rate": "6", "points": "1", "apr": "7.739"
        "down_payment": "35000.00", "down_percent": "33.94", "ltv": "66.06"
        "down_from_cash": false, "extra_principal": "0.00"
        "fine_print": "It is invented, for transcripts only.", "adjustable": null
      }
      "refusals": []
      "contribution_cap": {
        "percent": "3", "of": "value", "amount": "3093.60", "taken": "1200.00"
        "concessions_alone": false
      }
      "without": {
        "off_price": "0.00", "rate": "6", "points": "1", "apr": "7.739", "buydown": null
        "paid_in_cash": "none"
        "pays": {
          "points": "0.00", "buydown": "0.00", "upfront_fee": "0.00", "closing_costs": "0.00"
          "prepaids": "0.00"
        }
        "without_use": "0.00", "over_cap": "0.00", "loan": "68120.00", "monthly_now": "6015.72"
        "monthly_after_three_years": "152.87", "cash_needed": "36254.73"
        "cash_to_close": "34942.73"
        "cost_over_years": {
          "3": "108443.32", "5": "108443.32", "7": "108443.32", "10": "108443.32"
          "30": "108443.32"
        }
        "cost_over_asked_years": "108443.32", "every_incentive_allows": true
      }
      "each_use": [
        {
          "use": "off_price", "name": "off the price"
          "mix": {
            "off_price": "2500.00", "rate": "6", "points": "1", "apr": "7.739", "buydown": null
            "paid_in_cash": "none"
            "pays": {
              "points": "0.00", "buydown": "0.00", "upfront_fee": "0.00", "closing_costs": "0.00"
              "prepaids": "0.00"
            }
            "without_use": "0.00", "over_cap": "0.00", "loan": "65620.00"
            "monthly_now": "5797.45", "monthly_after_three_years": "149.77"
            "cash_needed": "36206.26", "cash_to_close": "34894.26"
            "cost_over_years": {
              "3": "105775.66", "5": "105775.66", "7": "105775.66", "10": "105775.66"
              "30": "105775.66"
            }
            "cost_over_asked_years": "105775.66", "every_incentive_allows": true
          }
          "why_not": null
        }
        ...
        7 rows #227b3a28
      ]
      "lowest_payment": {
        "off_price": "2500.00", "rate": "6", "points": "1", "apr": "7.739", "buydown": null
        "paid_in_cash": "none"
        "pays": {
          "points": "0.00", "buydown": "0.00", "upfront_fee": "0.00", "closing_costs": "0.00"
          "prepaids": "0.00"
        }
        "without_use": "0.00", "over_cap": "0.00", "loan": "65620.00", "monthly_now": "5797.45"
        "monthly_after_three_years": "149.77", "cash_needed": "36206.26"
        "cash_to_close": "34894.26"
        "cost_over_years": {
          "3": "105775.66", "5": "105775.66", "7": "105775.66", "10": "105775.66"
          "30": "105775.66"
        }
        "cost_over_asked_years": "105775.66", "every_incentive_allows": true
      }
      "least_cash": {
        "off_price": "1269.00", "rate": "6", "points": "1", "apr": "6.001", "buydown": null
        "paid_in_cash": "none"
        "pays": {
          "points": "668.51", "buydown": "0.00", "upfront_fee": "0.00", "closing_costs": "0.00"
          "prepaids": "561.55"
        }
        "without_use": "0.94", "over_cap": "0.00", "loan": "66851.00", "monthly_now": "5904.92"
        "monthly_after_three_years": "151.29", "cash_needed": "35000.00"
        "cash_to_close": "33688.00"
        "cost_over_years": {
          "3": "105859.02", "5": "105859.02", "7": "105859.02", "10": "105859.02"
          "30": "105859.02"
        }
        "cost_over_asked_years": "105859.02", "every_incentive_allows": false
      }
      "least_cost": {
        "off_price": "2500.00", "rate": "6", "points": "1", "apr": "7.739", "buydown": null
        "paid_in_cash": "none"
        "pays": {
          "points": "0.00", "buydown": "0.00", "upfront_fee": "0.00", "closing_costs": "0.00"
          "prepaids": "0.00"
        }
        "without_use": "0.00", "over_cap": "0.00", "loan": "65620.00", "monthly_now": "5797.45"
        "monthly_after_three_years": "149.77", "cash_needed": "36206.26"
        "cash_to_close": "34894.26"
        "cost_over_years": {
          "3": "105775.66", "5": "105775.66", "7": "105775.66", "10": "105775.66"
          "30": "105775.66"
        }
        "cost_over_asked_years": "105775.66", "every_incentive_allows": true
      }
      "frontier": [
        {
          "off_price": "2500.00", "rate": "6", "points": "1", "apr": "7.739", "buydown": null
          "paid_in_cash": "none"
          "pays": {
            "points": "0.00", "buydown": "0.00", "upfront_fee": "0.00", "closing_costs": "0.00"
            "prepaids": "0.00"
          }
          "without_use": "0.00", "over_cap": "0.00", "loan": "65620.00", "monthly_now": "5797.45"
          "monthly_after_three_years": "149.77", "cash_needed": "36206.26"
          "cash_to_close": "34894.26"
          "cost_over_years": {
            "3": "105775.66", "5": "105775.66", "7": "105775.66", "10": "105775.66"
            "30": "105775.66"
          }
          "cost_over_asked_years": "105775.66", "every_incentive_allows": true
        }
        ...
        6 rows: off_price 10663.00, rate 36, points 6, apr 38.752, without_use 0.94, over_cap 0.00, loan
          398057.00, monthly_now 35163.33, monthly_after_three_years 903.98, cash_needed 212985.49,
          cash_to_close 205113.49, cost_over_asked_years 634945.43 #c74d03e1
      ]
    }
  ]
  "cautions": [
    {
      "code": "money_on_top", "about": []
      "words": "This money comes on top of any incentives and credits alrea..." 444 letters #870e4233
    }
    {
      "code": "cost_spent_and_owed", "about": []
      "words": "Cost is what you have spent plus what you still owe: cash, ..." 332 letters #58a4b049
    }
    ...
    {
      "code": "agent_license", "about": []
      "words": "For the sales agent: you may explain prices, and how progra..." 243 letters #a0d54217
    }
    7 rows #39649de0
  ]
}
517 lines #39749e89
= 0
