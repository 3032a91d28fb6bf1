# An option on a lot that cannot carry it.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:5:18: found walk-out: only on lots graded walk-out
2>   5 |   "selections": ["walk-out"],
2>     |                  ^^^^^^^^^^
2>   at /selections/0
2>   expected an option of this plan, elevation and lot
2>   take it out; 'quoin adds' says what can be had here
2>   [option-not-here]
= 1
