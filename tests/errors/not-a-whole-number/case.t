# A credit score off the scale.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:6:12: found 1200
2>   6 |   "score": 1200,
2>     |            ^^^^
2>   at /score
2>   expected a whole number from 300 to 850
2>   [not-a-whole-number]
= 1
