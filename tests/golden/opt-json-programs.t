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
    "license": "none: invented", "sample_rates": true
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
      "words": "Points are percents of the loan before adjustments for scor..." 174 letters #22ce8e84
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
    5 rows #69e06e80
  ]
}
88 lines #aad1a396
= 0

