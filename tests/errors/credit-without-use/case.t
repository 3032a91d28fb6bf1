# A credit that may pay nothing.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:6:15: found a credit with nothing to pay
2>   6 |   "credits": [{"name": "Grant", "from": "program", "amount": "2500", "uses": []}],
2>     |               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /credits/0
2>   expected at least one entry in "uses"
2>   say what it may pay, such as "closing costs", "prepaids" or "points"
2>   [credit-without-use]
= 1
