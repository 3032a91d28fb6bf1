# The answer of `cash` in JSON.
$ quoin cash data/buyer.json --scenario "A third down" --rates data/rates --json | digest
{
  "question": "cash"
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
      "name": "A third down", "program": "short", "program_name": "A short loan", "months": 12
      "lock_days": 60, "score": 700, "rate": "6", "points": "1", "apr": "7.739"
      "down_payment": "35000.00", "down_percent": "33.94", "ltv": "66.06", "down_from_cash": false
      "extra_principal": "0.00", "fine_print": "It is invented, for transcripts only."
      "adjustable": null
    }
    "available": true, "refusals": [], "price": "103120.00", "value": "103120.00"
    "base_loan": "68120.00"
    "upfront_fee": {"name": "", "percent": "0", "amount": "0.00", "financed": "0.00"}
    "loan": "68120.00"
    "monthly": {
      "principal_and_interest": "5862.85", "mortgage_insurance": "0.00", "property_tax": "103.12"
      "homeowners_insurance": "24.75", "flood_insurance": "0.00", "wind_insurance": "0.00"
      "association_dues": "25.00", "district_charges": "0.00", "total": "6015.72"
    }
    "first_year": {
      "months": 0
      "monthly": {
        "principal_and_interest": "5862.85", "mortgage_insurance": "0.00"
        "property_tax": "103.12", "homeowners_insurance": "24.75", "flood_insurance": "0.00"
        "wind_insurance": "0.00", "association_dues": "25.00", "district_charges": "0.00"
        "total": "6015.72"
      }
    }
    "temporary_buydown": null
    "mortgage_insurance": {
      "name": "Mortgage insurance", "annual_percent": "0", "first_monthly": "0.00", "payments": 0
      "paid_up": false, "last_date": null, "whole_term": false, "on_request_payment": 0
      "on_request_date": null
    }
    "cash": {
      "down_payment": "35000.00", "upfront_fee_in_cash": "0.00", "points": "681.20"
      "principal_reduction": "0.00", "closing_costs": "900.00", "prepaid_interest": "192.95"
      "prepaid_bills": "296.99", "initial_escrow_deposit": "383.59", "temporary_buydown": "0.00"
      "credits": "1200.00", "needed": "36254.73", "deposits": "1312.00", "to_close": "34942.73"
    }
    "credits_without_use": "0.00", "credits_over_cap": "0.00", "lender_credit_without_use": "0.00"
    "cost_of_credit": {
      "prepaid_finance_charge": "874.15", "amount_financed": "67245.85"
      "finance_charge": "3108.30", "total_of_payments": "72128.30"
      "total_interest_percentage": "3.563", "disclosed_in_five_years": "72128.30"
      "disclosed_principal_in_five_years": "68120.00", "buyers_buydown": "0.00"
      "payment_levels": [], "first_period": {"months": 1, "odd_days": 17}, "apr": "7.739"
    }
    "first_payment": "2027-03-01", "payments": 12, "last_payment": "5862.80"
    "total_interest": "2234.15", "paid_in_five_years": "108443.32", "paid_over_loan": "108443.32"
    "balance_after_five_years": "0.00", "balance_after_ten_years": "0.00"
  }
  "costs": [
    {
      "section": "shopped_for", "name": "Title and recording", "amount": "900.00"
      "paid_by": "buyer", "finance_charge": false, "before_closing": false
    }
  ]
  "prepaids": [
    {
      "what": "interest", "name": "interest, 17 days at $11.35 a day", "count": 17
      "per_day": "11.35", "due": null, "amount": "192.95"
    }
    {
      "what": "insurance", "name": "insurance, 12 months", "count": 12, "per_day": "0.00"
      "due": null, "amount": "296.99"
    }
  ]
  "escrow": {
    "deposit": "127.87", "initial_deposit": "383.59", "cushion": "255.73"
    "bills": [
      {
        "what": "property_tax", "name": "property taxes and district charges", "due": "2027-06-30"
        "amount": "618.72"
      }
      {
        "what": "property_tax", "name": "property taxes and district charges", "due": "2027-12-31"
        "amount": "618.72"
      }
      {
        "what": "homeowners_insurance", "name": "homeowner's insurance", "due": "2028-01-15"
        "amount": "296.99"
      }
    ]
    "months": [
      {"month": "2027-02-01", "deposit": "383.59", "paid": "0.00", "balance": "383.59"}
      {"month": "2027-03-01", "deposit": "127.87", "paid": "0.00", "balance": "511.46"}
      ...
      {"month": "2027-06-01", "deposit": "127.87", "paid": "618.72", "balance": "276.35"}
      ...
      {"month": "2027-12-01", "deposit": "127.87", "paid": "618.72", "balance": "424.85"}
      ...
      {"month": "2028-02-01", "deposit": "127.87", "paid": "0.00", "balance": "383.60"}
      13 rows: deposit 1918.03, paid 1534.43, balance 6941.91 #6f33e118
    ]
  }
  "credits": {
    "used": [
      {"use": "closing_costs", "words": "closing costs", "amount": "900.00"}
      {"use": "prepaids", "words": "prepaids and escrow", "amount": "300.00"}
    ]
    "without_use": "0.00", "over_cap": "0.00", "cap_percent": "3", "cap_of": "value"
    "counts_towards_cap": "1200.00", "ltv_if_given": "66.06"
  }
  "appraisal_gap": "0.00"
  "calendar": [
    {"date": "2026-11-24", "what": "earnest_money", "words": "earnest money", "amount": "1000.00"}
    {"date": "2026-11-24", "what": "option_share", "words": "option deposit", "amount": "312.00"}
    {"date": "2027-01-15", "what": "closing", "words": "at closing", "amount": "34942.73"}
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
333 lines #e906b03e
= 0
