# The answer of `quote` in JSON.
$ quoin quote data/buyer.json --rates data/rates --json | digest
{
  "question": "quote"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none, invented", "sample_rates": true
  }
  "lines": [
    {
      "kind": "base", "area": "", "id": "", "name": "Cabin", "detail": "", "quantity": "1"
      "unit": "each", "unit_price": "100000.00", "amount": "100000.00", "structural": false
      "work": [], "note": ""
    }
    {
      "kind": "elevation", "area": "", "id": "", "name": "Plain", "detail": "", "quantity": "1"
      "unit": "each", "unit_price": "0.00", "amount": "0.00", "structural": false, "work": []
      "note": ""
    }
    ...
    {
      "kind": "option", "area": "Inside", "id": "floor", "name": "Floor", "detail": "Oak"
      "quantity": "480", "unit": "sq_ft", "unit_price": "4.25", "amount": "2040.00"
      "structural": false, "work": [], "note": ""
    }
    ...
    {
      "kind": "choice", "area": "Inside", "id": "paint", "name": "Wall color", "detail": "Sand"
      "quantity": "1", "unit": "each", "unit_price": "0.00", "amount": "0.00", "structural": false
      "work": [], "note": ""
    }
    7 rows: quantity 488, unit_price 100964.25, amount 103120.00 #938809ed
  ]
  "options": "3120.00", "incentives": "0.00", "contract_price": "103120.00"
  "requests": [
    {
      "area": "Outside", "text": "A bench by the door", "status": "to_be_confirmed"
      "estimate": "350.00"
    }
  ]
  "open_choices": []
  "credits": [{"id": "opening", "name": "Opening weeks", "use": "closing_costs", "amount": "1200.00"}]
  "incentive_conditions": [], "incentive_lenders": []
  "deposits": {"earnest": "1000.00", "options": "312.00", "paid": null, "note": ""}
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
    }
    ...
    2 rows: price 206240.00, value 206240.00, base_loan 160928.00, loan 160928.00, credits_without_use
      0.00, credits_over_cap 0.00, lender_credit_without_use 0.00, payments 24, last_payment 13861.12,
      total_interest 5405.99, paid_in_five_years 217316.85, paid_over_loan 217316.85,
      balance_after_five_years 0.00, balance_after_ten_years 0.00 #42a78b0e
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
    5 rows #f59d8c85
  ]
}
407 lines #3e053420
= 0
