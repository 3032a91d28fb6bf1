# The price book does not hold yet.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:3:12: found a price book that starts on November 1, 2026, used as of October 1, 2026
2>   3 |   "as_of": "2026-10-01", "closing": "2027-02-15",
2>     |            ^^^^^^^^^^^^
2>   at /as_of
2>   expected a price book in effect that day
2>   use the price book of that day, or set "as_of" to a later day
2>   [book-not-yet]
2> quoin: buyer.json:3:12: found no rate sheet dated on or before October 1, 2026
2>   3 |   "as_of": "2026-10-01", "closing": "2027-02-15",
2>     |            ^^^^^^^^^^^^
2>   at /as_of
2>   expected lending data with a rate sheet for that day
2>   use --rates DIR for a folder that has it, or change "as_of"
2>   [rates-missing]
= 1
