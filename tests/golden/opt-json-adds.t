# The answer of `adds` in JSON.
$ quoin adds data/buyer.json stove --rates data/rates --json | digest
{
  "question": "adds"
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
      "per_thousand": "86.18"
      "monthly": {
        "principal_and_interest": "7998.32", "mortgage_insurance": "46.40"
        "property_tax": "103.12", "homeowners_insurance": "24.75", "flood_insurance": "0.00"
        "wind_insurance": "0.00", "association_dues": "25.00", "district_charges": "0.00"
        "total": "8197.59"
      }
      "refusals": []
    }
    ...
    2 rows: per_thousand 172.25 #fc319ee5
  ]
  "items": [
    {
      "id": "stove", "name": "Wood stove", "level": "", "area": "Inside", "standing": "offered"
      "wish": 1, "quantity": "1", "unit": "each", "structural": false, "work": [], "cutoff": ""
      "note": "", "later": null, "price": "2600.00", "along": [], "instead_of": []
      "by_scenario": [
        {
          "scenario": "Ten percent down", "available": true, "per_month": "206.06"
          "monthly": {
            "principal_and_interest": "201.67", "mortgage_insurance": "1.17"
            "property_tax": "2.60", "homeowners_insurance": "0.62", "flood_insurance": "0.00"
            "wind_insurance": "0.00", "association_dues": "0.00", "district_charges": "0.00"
            "total": "206.06"
          }
          "cash_needed": "284.16", "cash_to_close": "24.16", "in_five_years": "2745.13"
          "over_loan": "2745.13", "jumps": []
        }
        ...
        2 rows: per_month 433.05, cash_needed 334.83, cash_to_close -185.17, in_five_years 5519.70,
          over_loan 5519.70 #7cb1da4e
      ]
    }
  ]
  "stacked": [
    {
      "id": "floor:oak", "name": "Floor", "level": "Oak", "price": "2040.00"
      "by_scenario": [
        {
          "scenario": "Ten percent down", "available": true, "per_month": "161.68"
          "monthly": {
            "principal_and_interest": "158.23", "mortgage_insurance": "0.92"
            "property_tax": "2.04", "homeowners_insurance": "0.49", "flood_insurance": "0.00"
            "wind_insurance": "0.00", "association_dues": "0.00", "district_charges": "0.00"
            "total": "161.68"
          }
          "cash_needed": "222.74", "cash_to_close": "18.74", "in_five_years": "2153.68"
          "over_loan": "2153.68", "jumps": []
        }
        ...
        2 rows: per_month 339.78, cash_needed 262.39, cash_to_close -145.61, in_five_years 4330.63,
          over_loan 4330.63 #4590b7b4
      ]
    }
    ...
    3 rows: price 3120.00 #7cba9f43
  ]
  "whole": {
    "id": "", "name": "all together", "level": "", "price": "3120.00"
    "by_scenario": [
      {
        "scenario": "Ten percent down", "available": true, "per_month": "247.27"
        "monthly": {
          "principal_and_interest": "242.00", "mortgage_insurance": "1.40", "property_tax": "3.12"
          "homeowners_insurance": "0.75", "flood_insurance": "0.00", "wind_insurance": "0.00"
          "association_dues": "0.00", "district_charges": "0.00", "total": "247.27"
        }
        "cash_needed": "340.74", "cash_to_close": "28.74", "in_five_years": "3293.92"
        "over_loan": "3293.92", "jumps": []
      }
      ...
      2 rows: per_month 519.67, cash_needed 401.36, cash_to_close -222.64, in_five_years 6623.33,
        over_loan 6623.33 #12bcdba2
    ]
  }
  "cautions": [
    {
      "code": "alone_and_stacked", "about": []
      "words": "Each figure is one whole quote minus another, with each quo..." 220 letters #7f279260
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
    5 rows #4b648470
  ]
}
388 lines #8fc57705
= 0
