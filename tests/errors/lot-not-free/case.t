# The lot is sold.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:4:49: found lot 3, which is sold
2>   4 |   "plan": "cabin", "elevation": "plain", "lot": "3",
2>     |                                                 ^^^
2>   at /lot
2>   expected an available lot
2>   choose another lot; 'quoin list lots' shows them
2>   [lot-not-free]
= 1
