# Two scenarios of one name.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:7:14: found a second loan named "Ten"
2>   7 |     {"name": "Ten", "program": "short", "months": 12, "down": {"percent": "20"}}]
2>     |              ^^^^^
2>   at /scenarios/1/name
2>   expected a different name for each loan
2>   rename one of the two
2>   [scenario-repeated]
= 1
