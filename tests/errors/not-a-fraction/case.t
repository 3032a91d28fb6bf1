# A fraction of a unit-period with nothing under its stroke.
$ quoin apr problem.json
2> quoin: problem.json:4:59: found "19/0"
2>   4 |   "payments": [{"amount": "90", "periods": 1, "fraction": "19/0", "count": 12}]
2>     |                                                           ^^^^^^
2>   at /payments/0/fraction
2>   expected a whole number, or two with a slash between them, such as "19/30"
2>   [not-a-fraction]
= 1
