# The answer of `shown` in JSON.
$ quoin shown data/buyer.json --rates data/rates --json | digest
{
  "question": "shown"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none, invented", "sample_rates": true
  }
  "model": {"plan": "Cabin", "elevation": "Plain", "lot": "", "note": ""}
  "included": [{"area": "Inside", "text": "Pine floor"}]
  "items": [
    {
      "area": "Outside", "name": "Walk-out door", "as_shown": "", "quantity": null, "unit": "each"
      "standing": "unavailable", "price": null, "yours": null, "your_level": ""
      "why_not": "only on walk-out lots"
    }
    {
      "area": "Inside", "name": "Floor", "as_shown": "Oak", "quantity": "480", "unit": "sq_ft"
      "standing": "yours", "price": "2040.00", "yours": "2040.00", "your_level": "Oak"
      "why_not": ""
    }
    ...
    {
      "area": "Inside", "name": "The armchair", "as_shown": "", "quantity": null, "unit": "each"
      "standing": "decor", "price": null, "yours": null, "your_level": "", "why_not": ""
    }
    6 rows: quantity 484, price 4880.00, yours 2220.00 #0363087c
  ]
  "shown_total": "4880.00", "missing": "2660.00"
}
114 lines #ca0f03e6
= 0
