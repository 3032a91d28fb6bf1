# No rate sheet is as old as the inquiry.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:3:12: found no rate sheet dated on or before November 2, 2026
2>   3 |   "as_of": "2026-11-02", "closing": "2027-01-15",
2>     |            ^^^^^^^^^^^^
2>   at /as_of
2>   expected lending data with a rate sheet for that day
2>   use --rates DIR for a folder that has it, or change "as_of"
2>   [rates-missing]
= 1
