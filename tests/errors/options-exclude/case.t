# Two options that cannot stand together.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:5:35: found heater: does not go with stove
2>   5 |   "selections": ["flue", "stove", "heater"],
2>     |                                   ^^^^^^^^
2>   at /selections/2
2>   expected one of the two
2>   remove one of them
2>   [options-exclude]
= 1
