# The answer of `tour` in JSON.
$ quoin tour data/buyer.json --rates data/rates --json | digest
{
  "question": "tour"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none, invented", "sample_rates": true
  }
  "contract_price": "103120.00", "options": "3120.00", "stage": "", "drawn": false
  "model": "Cabin"
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
  "all_areas": [
    {"id": "outside", "name": "Outside", "price": "0.00", "chosen": []}
    {
      "id": "inside", "name": "Inside", "price": "3120.00"
      "chosen": [
        {"option": "floor", "name": "Floor", "form": "Oak"}
        {"option": "flue", "name": "Insulated flue", "form": ""}
        {"option": "shelves", "name": "Shelves", "form": ""}
        {"option": "paint", "name": "Wall color", "form": "Sand"}
      ]
    }
  ]
  "areas": [
    {
      "id": "outside", "name": "Outside", "price": "0.00", "included": []
      "shown": [
        {
          "area": "Outside", "name": "Walk-out door", "as_shown": "", "quantity": null
          "unit": "each", "standing": "unavailable", "price": null, "yours": null
          "your_level": "", "why_not": "only on walk-out lots"
        }
      ]
      "options": [
        {
          "id": "walk-out", "name": "Walk-out door", "kind": "upgrade", "text": "", "note": ""
          "picture": "", "color": "", "picked": false, "agreed": false, "wish": null
          "structural": true, "work": [], "cutoff": "Permit drawings", "cutoff_passed": false
          "one_of": "", "later": null, "quantity": null, "budget": null, "spend": null
          "parts": []
          "forms": [
            {
              "id": "", "name": "", "note": "", "picture": "", "color": "", "state": "unavailable"
              "why": "only on walk-out lots", "price": "3200.00", "touch": null
            }
          ]
        }
      ]
      "requests": [{"text": "A bench by the door", "estimate": "350.00"}]
    }
    ...
    2 rows: price 3120.00 #5f4f1413
  ]
  "wishes": [{"option": "stove", "name": "Wood stove", "form": ""}]
  "incentives": [
    {
      "id": "opening", "name": "Opening weeks", "amount": "1200.00", "left": "0.00"
      "conditions": "", "lender": "", "expires": "2026-12-15", "close_by": null, "why_not": ""
      "uses": ["closing_costs", "price"]
      "used": [{"use": "closing_costs", "amount": null, "given": "1200.00"}]
    }
  ]
  "emptied": {
    "keeps": [], "price": "-3120.00", "per_month": "-247.27", "cash_needed": "-340.74"
    "cash_to_close": "-28.74"
  }
  "cautions": [
    {
      "code": "touch_is_difference", "about": []
      "words": "What an option changes is one whole quote minus another, wi..." 87 letters #b3a054a5
    }
    {
      "code": "estimate", "about": []
      "words": "This is an estimate as of November 24, 2026. It is not a Lo..." 263 letters #23c23b25
    }
    ...
    {
      "code": "agent_license", "about": []
      "words": "For the sales agent: you may explain prices, and how progra..." 243 letters #a0d54217
    }
    6 rows #7c09a365
  ]
}
806 lines #9596eaea
= 0
