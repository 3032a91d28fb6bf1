# The answer of `programs` in JSON.
$ quoin programs data/buyer.json --rates data/rates --json | digest
{
  "question": "programs"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none, invented", "sample_rates": true
  }
  "note": ""
  "programs": [
    {
      "id": "short", "name": "A short loan", "kind": "conventional"
      "choices": ["mi_premium", "mi_ends"]
      "summary": "Twelve payments, so that a schedule fits on a page."
      "fine_print": "It is invented, for transcripts only.", "upfront_fee": ""
      "annual_fee": "Mortgage insurance", "used_beyond_end": [], "not_known": []
      "ladders": [
        {
          "months": 12, "term": "1 year", "lock_days": 60
          "rungs": [{"rate": "6", "points": "1"}, {"rate": "6.25", "points": "0"}]
        }
      ]
    }
  ]
  "cautions": [
    {
      "code": "points_before_adjustments", "about": []
      "words": "Points are a percent of the loan amount, before adjustments..." 231 letters #25d49687
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
    5 rows #511110d1
  ]
}
88 lines #2e894a07
= 0

