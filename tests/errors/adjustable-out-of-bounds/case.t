# An adjustable rate whose life cap lies under its margin: it could never reach index plus margin.
$ quoin quote buyer.json --rates rates
2> quoin: rates/sheets/day.json:6:5: found a margin of 9.25 and a rate that may never pass 6.25 + 2
2>   6 |     {"program": "moving", "months": 60, "lock_days": 60, "margin": "9.25",
2>     |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /ladders/0
2>   expected a margin that the rate and its life cap leave room for, and an initial term shorter than the loan
2>   check "margin", the rungs, and the program's "caps"
2>   [adjustable-out-of-bounds]
= 1
