# Two must-haves that cannot stand together.
$ quoin fit buyer.json --rates ../../golden/data/rates --monthly 9000 --cash 20000
2> quoin: buyer.json:6:14: found heater and stove as must-haves
2>   6 |              {"option": "heater", "rank": 2, "must": true}],
2>     |              ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /wishes/1
2>   expected must-haves that go together (heater: does not go with stove)
2>   remove "must" from one of the two
2>   [wishes-exclude]
= 1
