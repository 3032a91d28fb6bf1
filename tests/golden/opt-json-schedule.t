# The answer of `schedule` in JSON.
$ quoin schedule data/buyer.json --scenario "Ten percent down" --rates data/rates --json | digest
{
  "question": "schedule"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none, invented", "sample_rates": true
  }
  "scenario": {
    "terms": {
      "name": "Ten percent down", "program": "short", "program_name": "A short loan", "months": 12
      "lock_days": 60, "score": 700, "rate": "6.25", "points": "0", "apr": "6.422"
      "down_payment": "10312.00", "down_percent": "10.00", "ltv": "90.00", "down_from_cash": false
      "extra_principal": "0.00", "fine_print": "It is invented, for transcripts only."
      "adjustable": null
    }
    "available": true, "refusals": [], "price": "103120.00", "value": "103120.00"
    "base_loan": "92808.00"
    "upfront_fee": {"name": "", "percent": "0", "amount": "0.00", "financed": "0.00"}
    "loan": "92808.00"
    "monthly": {
      "principal_and_interest": "7998.32", "mortgage_insurance": "46.40", "property_tax": "103.12"
      "homeowners_insurance": "24.75", "flood_insurance": "0.00", "wind_insurance": "0.00"
      "association_dues": "25.00", "district_charges": "0.00", "total": "8197.59"
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
    "credits_without_use": "0.00", "credits_over_cap": "0.00", "lender_credit_without_use": "0.00"
    "cost_of_credit": {
      "prepaid_finance_charge": "273.87", "amount_financed": "92534.13"
      "finance_charge": "3538.51", "total_of_payments": "97246.51"
      "total_interest_percentage": "3.713", "disclosed_in_five_years": "97246.51"
      "disclosed_principal_in_five_years": "92808.00", "buyers_buydown": "0.00"
      "payment_levels": [], "first_period": {"months": 1, "odd_days": 17}, "apr": "6.422"
    }
    "first_payment": "2027-03-01", "payments": 12, "last_payment": "7998.32"
    "total_interest": "3171.84", "paid_in_five_years": "108873.53", "paid_over_loan": "108873.53"
    "balance_after_five_years": "0.00", "balance_after_ten_years": "0.00"
  }
  "rate_way": "fixed", "at_closing": null
  "rows": [
    {
      "month": 1, "due": "2027-03-01", "rate": "6.25", "payment": "7998.32", "interest": "483.38"
      "principal": "7514.94", "mortgage_insurance": "46.40", "balance": "85293.06"
      "from_buydown": "0.00"
    }
    {
      "month": 2, "due": "2027-04-01", "rate": "6.25", "payment": "7998.32", "interest": "444.23"
      "principal": "7554.09", "mortgage_insurance": "46.40", "balance": "77738.97"
      "from_buydown": "0.00"
    }
    ...
    {
      "month": 12, "due": "2028-02-01", "rate": "6.25", "payment": "7998.32", "interest": "41.44"
      "principal": "7956.88", "mortgage_insurance": "0.00", "balance": "0.00"
      "from_buydown": "0.00"
    }
    12 rows: month 78, rate 75.00, payment 95979.84, interest 3171.84, principal 92808.00,
      mortgage_insurance 92.80, balance 516188.94, from_buydown 0.00 #267b3b72
  ]
  "years": [
    {
      "year": 1, "last_due": "2028-02-01", "payment": "95979.84", "interest": "3171.84"
      "principal": "92808.00", "mortgage_insurance": "92.80", "balance": "0.00"
      "from_buydown": "0.00"
    }
  ]
  "total_interest": "3171.84", "total_insurance": "92.80", "total_from_buydown": "0.00"
  "extra": null
  "cautions": [
    {
      "code": "estimate", "about": []
      "words": "This is an estimate as of November 24, 2026. It is not a Lo..." 263 letters #23c23b25
    }
    {
      "code": "rates_until_locked", "about": []
      "words": "Rates are from Nobody's lender (license: none, invented), d..." 203 letters #d004cc3c
    }
    {
      "code": "costs_as_known", "about": []
      "words": "Taxes, insurance, HOA dues and closing costs use the figure..." 276 letters #a4b7134b
    }
  ]
}
306 lines #731de9c0
= 0
