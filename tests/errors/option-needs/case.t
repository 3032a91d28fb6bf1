# An option without what it needs.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:5:18: found stove: needs flue
2>   5 |   "selections": ["stove"],
2>     |                  ^^^^^^^
2>   at /selections/0
2>   expected flue among the selections
2>   add flue, or remove stove
2>   [option-needs]
= 1
