# The price book no longer holds on the day of the inquiry.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:3:12: found a price book that ended on December 31, 2026, used as of January 4, 2027
2>   3 |   "as_of": "2027-01-04", "closing": "2027-02-15",
2>     |            ^^^^^^^^^^^^
2>   at /as_of
2>   expected a price book in effect that day
2>   get the current price book, or set "as_of" to an earlier day
2>   [book-expired]
= 1
