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
    "license": "none, invented", "sample_rates": true
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
          "id": "plain", "name": "Plain", "note": "", "picture": "", "color": "", "price": "0.00"
          "falls_out": [], "move": null
        }
      ]
      "chosen": true, "fits": true
    }
  ]
  "map": null
  "cautions": [
    {
      "code": "survey_decides", "about": []
      "words": "Lot widths and setbacks come from the price book. The surve..." 116 letters #49504e5d
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
    5 rows #fff44860
  ]
}
164 lines #6515e99a
= 0
