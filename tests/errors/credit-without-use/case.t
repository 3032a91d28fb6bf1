# A credit that may pay nothing.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:6:15: found a credit that may pay nothing
2>   6 |   "credits": [{"name": "Grant", "from": "program", "amount": "2500", "uses": []}],
2>     |               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /credits/0
2>   expected at least one entry in "uses"
2>   name what it may pay: "closing costs", "prepaids", "points", ...
2>   [credit-without-use]
= 1
