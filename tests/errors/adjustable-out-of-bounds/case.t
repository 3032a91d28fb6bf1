# An adjustable rate whose life cap lies under its margin: it could never reach index plus margin.
$ quoin quote buyer.json --rates rates
2> quoin: rates/sheets/day.json:6:5: found a margin of 9.25 and a rate that can never go above 6.25 + 2
2>   6 |     {"program": "moving", "months": 60, "lock_days": 60, "margin": "9.25",
2>     |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /ladders/0
2>   expected a margin no higher than the rate can go, and an initial term shorter than the loan term
2>   check "margin", the rungs and the program's "caps"
2>   [adjustable-out-of-bounds]
= 1
