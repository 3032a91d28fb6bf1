# An option on a lot that cannot carry it.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:5:18: found walk-out: only on walk-out lots
2>   5 |   "selections": ["walk-out"],
2>     |                  ^^^^^^^^^^
2>   at /selections/0
2>   expected an option for this plan, elevation and lot
2>   remove it; 'quoin adds' shows what is available here
2>   [option-not-here]
= 1
