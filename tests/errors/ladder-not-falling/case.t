# Rates out of order: a higher rate must cost fewer points.
$ quoin check day.json
2> quoin: day.json:5:48: found a rung out of order
2>   5 |     "rungs": [{"rate": "6.25", "points": "0"}, {"rate": "6.00", "points": "1"}]}]
2>     |                                                ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /ladders/0/rungs/1
2>   expected rates that go up while their points go down
2>   sort the rungs by rate
2>   [ladder-not-falling]
= 1
