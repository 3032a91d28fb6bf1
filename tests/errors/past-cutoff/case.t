# An option chosen after the build has gone past it.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:5:18: found flue after its cutoff: the build has reached "Framing"
2>   5 |   "selections": ["flue"],
2>     |                  ^^^^^^
2>   at /selections/0
2>   expected a choice made before "Framing"
2>   take it out, or ask the builder for a change order
2>   [past-cutoff]
= 1
