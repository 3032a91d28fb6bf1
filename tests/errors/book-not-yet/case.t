# The price book does not hold yet.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:3:12: found a price book that begins on 2026-11-01, asked as of 2026-10-01
2>   3 |   "as_of": "2026-10-01", "closing": "2027-02-15",
2>     |            ^^^^^^^^^^^^
2>   at /as_of
2>   expected a price book in force
2>   use the price book of that day
2>   [book-not-yet]
2> quoin: buyer.json:3:12: found no rate sheet dated on or before 2026-10-01
2>   3 |   "as_of": "2026-10-01", "closing": "2027-02-15",
2>     |            ^^^^^^^^^^^^
2>   at /as_of
2>   expected lending data for this inquiry
2>   point to data that has it with --rates DIR, or change "as_of"
2>   [rates-missing]
= 1
