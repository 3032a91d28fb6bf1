# An incentive whose time is over on the contract day.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:6:25: found Opening weeks: only for contracts signed by December 15, 2026
2>   6 |   "incentives": [{"id": "opening", "use": "price"}],
2>     |                         ^^^^^^^^^
2>   at /incentives/0/id
2>   expected an incentive that applies here
2>   remove it
2>   [incentive-not-here]
= 1
