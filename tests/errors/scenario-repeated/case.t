# Two scenarios of one name.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:7:14: found a second scenario "Ten"
2>   7 |     {"name": "Ten", "program": "short", "months": 12, "down": {"percent": "20"}}]
2>     |              ^^^^^
2>   at /scenarios/1/name
2>   expected each scenario under its own name
2>   rename one of the two
2>   [scenario-repeated]
= 1
