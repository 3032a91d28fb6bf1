# Answers in JSON, as they are written: money is text, to the cent. Longer ones: opt-json-*.t.
$ quoin --json payment --loan 250000 --rate 6.5 --years 30
{
  "question": "payment",
  "loan": "250000.00",
  "rate": "6.5",
  "apr": "6.5",
  "term_months": 360,
  "payment": "1580.17",
  "total_interest": "318861.58",
  "total_of_payments": "568861.58",
  "last_payment": "1580.55",
  "months": 360,
  "cautions": [
    {
      "code": "principal_and_interest_alone",
      "about": [],
      "words": "This is an estimate of the monthly principal and interest only. It has no points or fees, so the APR equals the interest rate. It is not a Loan Estimate, an approval or an offer to lend. Taxes, insurance, dues and mortgage insurance are extra. Only a licensed loan originator can make an offer."
    }
  ]
}
= 0
$ quoin list lots data/book.json --json
[
  {
    "lot": "1",
    "status": "free",
    "premium": "0.00",
    "grade": "level",
    "plans": "all",
    "flood_zone": "no",
    "note": ""
  },
  {
    "lot": "2",
    "status": "free",
    "premium": "5000.00",
    "grade": "walk_out",
    "plans": "all",
    "flood_zone": "no",
    "note": ""
  },
  {
    "lot": "3",
    "status": "sold",
    "premium": "0.00",
    "grade": "level",
    "plans": "all",
    "flood_zone": "no",
    "note": ""
  }
]
= 0
$ quoin check data/book.json --json --rates data/rates
{
  "files": [
    {
      "file": "data/book.json",
      "kind": "price_book",
      "sound": true,
      "problems": [],
      "ending": []
    }
  ]
}
= 0
