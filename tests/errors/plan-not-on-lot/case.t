# The plan does not fit the lot.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:4:11: found plan barn on lot 1
2>   4 |   "plan": "barn", "elevation": "plain", "lot": "1",
2>     |           ^^^^^^
2>   at /plan
2>   expected a plan that fits the lot: cabin
2>   change the plan or the lot
2>   [plan-not-on-lot]
= 1
