# The answer of `compare` in JSON.
$ quoin compare data/buyer.json --scenario "A third down" --rates data/rates --json | digest
{
  "question": "compare"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none, invented", "sample_rates": true
  }
  "contract_price": "103120.00"
  "scenarios": [
    {
      "terms": {
        "name": "Ten percent down", "program": "short", "program_name": "A short loan"
        "months": 12, "lock_days": 60, "score": 700, "rate": "6.25", "points": "0", "apr": "6.422"
        "down_payment": "10312.00", "down_percent": "10.00", "ltv": "90.00"
        "down_from_cash": false, "extra_principal": "0.00"
        "fine_print": "It is invented, for transcripts only.", "adjustable": null
      }
      "available": true, "refusals": [], "price": "103120.00", "value": "103120.00"
      "base_loan": "92808.00"
      "upfront_fee": {"name": "", "percent": "0", "amount": "0.00", "financed": "0.00"}
      "loan": "92808.00"
      "monthly": {
        "principal_and_interest": "7998.32", "mortgage_insurance": "46.40"
        "property_tax": "103.12", "homeowners_insurance": "24.75", "flood_insurance": "0.00"
        "wind_insurance": "0.00", "association_dues": "25.00", "district_charges": "0.00"
        "total": "8197.59"
      }
      "first_year": {
        "months": 0
        "monthly": {
          "principal_and_interest": "7998.32", "mortgage_insurance": "46.40"
          "property_tax": "103.12", "homeowners_insurance": "24.75", "flood_insurance": "0.00"
          "wind_insurance": "0.00", "association_dues": "25.00", "district_charges": "0.00"
          "total": "8197.59"
        }
      }
      "temporary_buydown": null
      "mortgage_insurance": {
        "name": "Mortgage insurance", "annual_percent": "0.6", "first_monthly": "46.40"
        "payments": 2, "paid_up": false, "last_date": "2027-04-01", "whole_term": false
        "on_request_payment": 2, "on_request_date": "2027-04-01"
      }
      "cash": {
        "down_payment": "10312.00", "upfront_fee_in_cash": "0.00", "points": "0.00"
        "principal_reduction": "0.00", "closing_costs": "900.00", "prepaid_interest": "273.87"
        "prepaid_bills": "296.99", "initial_escrow_deposit": "383.59", "temporary_buydown": "0.00"
        "credits": "1200.00", "needed": "10966.45", "deposits": "1312.00", "to_close": "9654.45"
      }
      "credits_without_use": "0.00", "credits_over_cap": "0.00"
      "lender_credit_without_use": "0.00"
      "cost_of_credit": {
        "prepaid_finance_charge": "273.87", "amount_financed": "92534.13"
        "finance_charge": "3538.51", "total_of_payments": "97246.51"
        "total_interest_percentage": "3.713", "disclosed_in_five_years": "97246.51"
        "disclosed_principal_in_five_years": "92808.00", "buyers_buydown": "0.00"
        "payment_levels": [], "first_period": {"months": 1, "odd_days": 17}, "apr": "6.422"
      }
      "first_payment": "2027-03-01", "payments": 12, "last_payment": "7998.32"
      "total_interest": "3171.84", "paid_in_five_years": "108873.53"
      "paid_over_loan": "108873.53", "balance_after_five_years": "0.00"
      "balance_after_ten_years": "0.00"
      "against_first": {"per_month": "0.00", "cash_needed": "0.00", "cash_to_close": "0.00"}
      "against_shown": {"per_month": "2181.87", "cash_needed": "-25288.28", "cash_to_close": "-25288.28"}
      "curve": [
        {"year": 0, "paid": "10966.45", "balance": "92808.00", "spent_and_owed": "103774.45"}
        {"year": 1, "paid": "108873.53", "balance": "0.00", "spent_and_owed": "107039.09"}
      ]
      "apart": [
        {"year": 0, "paid": "-25288.28", "balance": "24688.00", "spent_and_owed": "-600.28"}
        {"year": 1, "paid": "430.21", "balance": "0.00", "spent_and_owed": "430.21"}
      ]
    }
    ...
    2 rows: price 206240.00, value 206240.00, base_loan 160928.00, loan 160928.00, credits_without_use
      0.00, credits_over_cap 0.00, lender_credit_without_use 0.00, payments 24, last_payment 13861.12,
      total_interest 5405.99, paid_in_five_years 217316.85, paid_over_loan 217316.85,
      balance_after_five_years 0.00, balance_after_ten_years 0.00 #548cce20
  ]
  "apart_from": "A third down"
  "points": [
    {
      "scenario": "A third down", "rate": "6", "rate_without": "6.25", "extra_cash": "673.04"
      "saved_monthly": "7.83", "break_even": null
      "stretches": [{"cheaper": "second", "from": 0, "to": null, "when": "the whole time"}]
      "words": "They never break even."
    }
  ]
  "orders": [
    {
      "first": "Ten percent down", "second": "A third down"
      "stretches": [
        {"cheaper": "first", "from": 0, "to": 4, "when": "through payment 4"}
        {"cheaper": "second", "from": 5, "to": null, "when": "from payment 5 on"}
      ]
    }
  ]
  "cautions": [
    {
      "code": "estimate", "about": []
      "words": "This is an estimate as of November 24, 2026. It is not a Lo..." 263 letters #23c23b25
    }
    {
      "code": "rates_until_locked", "about": []
      "words": "Rates are from Nobody's lender (license: none, invented), d..." 203 letters #d004cc3c
    }
    ...
    {
      "code": "agent_license", "about": []
      "words": "For the sales agent: you may explain prices, and how progra..." 243 letters #a0d54217
    }
    4 rows #b6620191
  ]
}
389 lines #17329f73
= 0
