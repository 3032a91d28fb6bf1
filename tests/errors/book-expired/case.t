# The price book no longer holds on the day of the inquiry.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:3:12: found a price book that ended on 2026-12-31, asked as of 2027-01-04
2>   3 |   "as_of": "2027-01-04", "closing": "2027-02-15",
2>     |            ^^^^^^^^^^^^
2>   at /as_of
2>   expected a price book in force
2>   get the current price book, or set "as_of" back
2>   [book-expired]
= 1
