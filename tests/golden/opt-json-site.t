# The answer of `site` in JSON.
$ quoin site data/buyer.json --rates data/rates --json | digest
{
  "question": "site"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none: invented", "sample_rates": true
  }
  "lot": "1", "plan": "cabin", "elevation": "plain", "note": ""
  "terms": {
    "name": "Ten percent down", "program": "short", "program_name": "A short loan", "months": 12
    "lock_days": 60, "score": 700, "rate": "6.25", "points": "0", "apr": "6.422"
    "down_payment": "10312.00", "down_percent": "10.00", "ltv": "90.00", "down_from_cash": false
    "extra_principal": "0.00", "fine_print": "It is invented, for transcripts only."
    "adjustable": null
  }
  "lots": [
    {
      "id": "1", "status": "free", "premium": "0.00", "grade": "level", "flood_zone": false
      "plans": [], "every_plan": true, "note": "", "measures": [], "chosen": true, "fits": true
      "can_be_had": true, "falls_out": [], "move": null
    }
    {
      "id": "2", "status": "free", "premium": "5000.00", "grade": "walk_out", "flood_zone": false
      "plans": [], "every_plan": true, "note": "", "measures": [], "chosen": false, "fits": true
      "can_be_had": true, "falls_out": []
      "move": {
        "price": "5000.00", "per_month": "396.27", "cash_needed": "546.26"
        "cash_to_close": "546.26"
      }
    }
    {
      "id": "3", "status": "sold", "premium": "0.00", "grade": "level", "flood_zone": false
      "plans": [], "every_plan": true, "note": "", "measures": [], "chosen": false, "fits": true
      "can_be_had": false, "falls_out": [], "move": null
    }
    3 rows: id 6, premium 5000.00 #55f308fb
  ]
  "plans": [
    {
      "id": "cabin", "name": "Cabin", "style": "ranch", "note": "", "base_price": "100000.00"
      "bedrooms": "1", "bathrooms": "1", "square_feet": "600"
      "measures": [{"name": "floor_sq_ft", "value": "480", "words": "floor 480 sq ft"}]
      "elevations": [
        {
          "id": "plain", "name": "Plain", "note": "", "price": "0.00", "falls_out": []
          "move": null
        }
      ]
      "chosen": true, "fits": true
    }
  ]
  "cautions": [
    {
      "code": "survey_decides", "about": []
      "words": "Widths and setbacks are the price book's; the survey and th..." 103 letters #f2b6c650
    }
    {
      "code": "estimate", "about": []
      "words": "An estimate as of 24 November 2026: not a Loan Estimate, no..." 232 letters #1af3725c
    }
    ...
    {
      "code": "agent_license", "about": []
      "words": "For the agent: prices, and how programs work in general, ar..." 227 letters #c4dc73bc
    }
    5 rows #25df62ed
  ]
}
161 lines #d9c07f96
= 0
