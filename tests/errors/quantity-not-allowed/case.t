# A quantity below the least.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:5:52: found "-2" for shelves
2>   5 |   "selections": [{"option": "shelves", "quantity": "-2"}],
2>     |                                                    ^^^^
2>   at /selections/0/quantity
2>   expected a quantity from 1 to 8, in steps of 1
2>   [quantity-not-allowed]
= 1
