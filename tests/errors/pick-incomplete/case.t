# Levels, choices and allowances need to be told which, or how much.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:5:18: found floor without details
2>   5 |   "selections": ["floor"],
2>     |                  ^^^^^^^
2>   at /selections/0
2>   expected an object with its "level", "choice" or "spend"
2>   [pick-incomplete]
= 1
