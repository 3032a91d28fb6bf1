# The answer of `rooms` in JSON.
$ quoin rooms ../../examples/oxbarrow-meadow/buyers/six-programs.json --rates ../../rates --json | digest
{
  "question": "rooms"
  "heading": {
    "community": "Oxbarrow Meadow", "builder": "Tarnwick Builders", "buyer": "Buyer 1"
    "prepared_by": "Sales desk, Oxbarrow Meadow", "originator": "", "plan": "Teasel"
    "elevation": "Orchard", "lot": "7", "price_book_version": "2026-11"
    "price_book_expires": "2027-01-31", "as_of": "2026-11-24", "contract": "2026-11-28"
    "closing": "2027-05-14", "place": "Venning County", "sample_place": true
    "rate_sheet": "2026-11-20", "rates_date": "2026-11-20", "rates_good_through": "2026-12-18"
    "lender": "Sample lender", "license": "none, sample data", "sample_rates": true
  }
  "plan": "teasel"
  "floors": [
    {
      "id": "basement", "name": "Basement", "square_feet": "0"
      "rooms": [
        {
          "id": "basement-stairs", "name": "Stairs", "area": "basement", "living": false
          "open": false, "square_feet": "66.5625", "width": "3.06", "depth": "17.37"
          "rectangular": true, "size": "3' 1\" x 17' 4\""
          "outline": [["28.25", "11"], ["32", "11"], ["32", "28.75"], ["28.25", "28.75"]]
          "by": []
        }
        ...
        4 rows: square_feet 1884.0000, width 95.37, depth 70.24 #eb97c428
      ]
      "openings": [
        {
          "id": "open-1", "kind": "cased", "from": ["0.5", "28.75"], "to": ["28.25", "28.75"]
          "opens": "left", "by": []
        }
        {
          "id": "open-2", "kind": "cased", "from": ["45", "22.5"], "to": ["45", "29.5"]
          "opens": "left", "by": []
        }
        ...
        {
          "id": "", "kind": "sliding_door", "from": ["43", "48"], "to": ["49", "48"]
          "opens": "left", "by": [{"option": "walk-out", "name": "Walk-out basement"}]
        }
        7 rows #c9507577
      ]
      "stairs": [
        {
          "id": "up", "to": "main"
          "outline": [["28.25", "14"], ["32", "14"], ["32", "25"], ["28.25", "25"]]
          "from": ["30.12", "25"], "toward": ["30.12", "14"], "by": []
        }
      ]
      "symbols": [
        {
          "id": "", "kind": "furnace"
          "outline": [["18", "21"], ["20.5", "21"], ["20.5", "23.5"], ["18", "23.5"]], "by": []
        }
        {
          "id": "", "kind": "water_heater"
          "outline": [["21.5", "21.25"], ["23.5", "21.25"], ["23.5", "23.25"], ["21.5", "23.25"]]
          "by": []
        }
      ]
      "svg": "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"floor\" d..." 3583 letters #0442a7ab
    }
    ...
    2 rows: square_feet 1884 #1aa7d3bd
  ]
  "notes": []
  "cautions": [
    {
      "code": "sizes_as_drawn", "about": []
      "words": "Sizes are from wall to wall as drawn, to the inch; square f..." 160 letters #03a72cc1
    }
  ]
}
2374 lines #0a87cf28
= 0
