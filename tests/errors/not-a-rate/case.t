# A rate beyond 100 percent.
$ quoin check day.json
2> quoin: day.json:4:86: found "600"
2>   4 | onths": 12, "lock_days": 60, "rungs": [{"rate": "600", "points": "0"}]}]
2>     |                                                 ^^^^^
2>   at /ladders/0/rungs/0/rate
2>   expected a yearly rate from 0 to 100 percent, with at most six decimals
2>   [not-a-rate]
= 1
