# An option chosen after the build has gone past it.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:5:18: found flue: too late; construction has reached "Framing"
2>   5 |   "selections": ["flue"],
2>     |                  ^^^^^^
2>   at /selections/0
2>   expected a choice made before "Framing"
2>   remove it, or ask the builder about a change order
2>   [past-cutoff]
= 1
