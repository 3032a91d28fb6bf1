# The quick answer with no files.
$ quoin payment --loan 250000 --rate 6.5 --years 30
  loan amount             $250,000.00
  interest rate                6.500%
  loan term                  30 years
                          -----------
  principal and interest    $1,580.17
  number of payments              360
  last payment              $1,580.55
  total interest          $318,861.58
  total of payments       $568,861.58

This is an estimate of the monthly principal and interest only. It has no points or fees, so the APR
equals the interest rate. It is not a Loan Estimate, an approval or an offer to lend. Taxes,
insurance, dues and mortgage insurance are extra. Only a licensed loan originator can make an offer.
= 0
$ quoin payment --loan 1000 --rate 0 --months 7 --json
{
  "question": "payment",
  "loan": "1000.00",
  "rate": "0",
  "apr": "0",
  "term_months": 7,
  "payment": "142.86",
  "total_interest": "0.00",
  "total_of_payments": "1000.00",
  "last_payment": "142.84",
  "months": 7,
  "cautions": [
    {
      "code": "principal_and_interest_alone",
      "about": [],
      "words": "This is an estimate of the monthly principal and interest only. It has no points or fees, so the APR equals the interest rate. It is not a Loan Estimate, an approval or an offer to lend. Taxes, insurance, dues and mortgage insurance are extra. Only a licensed loan originator can make an offer."
    }
  ]
}
= 0
$ quoin payment --loan 1000 --rate 25 --months 1 --json
{
  "question": "payment",
  "loan": "1000.00",
  "rate": "25",
  "apr": "25",
  "term_months": 1,
  "payment": "1020.83",
  "total_interest": "20.83",
  "total_of_payments": "1020.83",
  "last_payment": "1020.83",
  "months": 1,
  "cautions": [
    {
      "code": "principal_and_interest_alone",
      "about": [],
      "words": "This is an estimate of the monthly principal and interest only. It has no points or fees, so the APR equals the interest rate. It is not a Loan Estimate, an approval or an offer to lend. Taxes, insurance, dues and mortgage insurance are extra. Only a licensed loan originator can make an offer."
    }
  ]
}
= 0
$ quoin payment --loan 300000 --rate 25 --months 480 --json
{
  "question": "payment",
  "loan": "300000.00",
  "rate": "25",
  "apr": "25",
  "term_months": 480,
  "payment": "6250.31",
  "total_interest": "2704327.99",
  "total_of_payments": "3004327.99",
  "last_payment": "10429.50",
  "months": 480,
  "cautions": [
    {
      "code": "principal_and_interest_alone",
      "about": [],
      "words": "This is an estimate of the monthly principal and interest only. It has no points or fees, so the APR equals the interest rate. It is not a Loan Estimate, an approval or an offer to lend. Taxes, insurance, dues and mortgage insurance are extra. Only a licensed loan originator can make an offer."
    }
  ]
}
= 0
$ quoin payment --loan 12.345 --rate 6.5 --years 30
2> quoin: found --loan 12.345
2>   expected dollars from 0 to 9,000,000,000, with at most two decimals, such as 250000
2>   [payment-input]
= 1
$ quoin payment --loan 250000 --rate 1e400 --years 30
2> quoin: found --rate 1e400
2>   expected a yearly rate in percent, from 0 to 100, such as 6.5
2>   [payment-input]
= 1
$ quoin payment --loan 250000 --rate 6.5 --years 41
2> quoin: found --years 41
2>   expected a whole number of years from 1 to 40
2>   [payment-input]
= 1
$ quoin payment --loan 300000 --rate 0 --months 480 --json
{
  "question": "payment",
  "loan": "300000.00",
  "rate": "0",
  "apr": "0",
  "term_months": 480,
  "payment": "625.00",
  "total_interest": "0.00",
  "total_of_payments": "300000.00",
  "last_payment": "625.00",
  "months": 480,
  "cautions": [
    {
      "code": "principal_and_interest_alone",
      "about": [],
      "words": "This is an estimate of the monthly principal and interest only. It has no points or fees, so the APR equals the interest rate. It is not a Loan Estimate, an approval or an offer to lend. Taxes, insurance, dues and mortgage insurance are extra. Only a licensed loan originator can make an offer."
    }
  ]
}
= 0
$ quoin payment --loan -5 --rate 6.5 --months 360
2> quoin: found --loan -5
2>   expected dollars from 0 to 9,000,000,000, with at most two decimals, such as 250000
2>   [payment-input]
= 1
