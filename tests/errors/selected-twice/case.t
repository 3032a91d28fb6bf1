# An option chosen a second time.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:5:26: found flue, chosen twice
2>   5 |   "selections": ["flue", "flue"],
2>     |                          ^^^^^^
2>   at /selections/1
2>   expected each option once
2>   remove one, or use "quantity"
2>   [selected-twice]
= 1
