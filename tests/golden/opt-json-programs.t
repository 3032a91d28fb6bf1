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
    "Points are percents of the loan before adjustments for scor..." 174 letters #22ce8e84
    "An estimate as of 24 November 2026: not a Loan Estimate, no..." 232 letters #1af3725c
    "Rates of 20 November 2026 from Nobody's lender (none: inven..." 161 letters #89207ae5
    "Taxes, insurance, dues and closing costs as known for Nowhe..." 244 letters #d2cb361d
    "For the agent: prices, and how programs work in general, ar..." 227 letters #c4dc73bc
  ]
}
64 lines #e90818e6
= 0

