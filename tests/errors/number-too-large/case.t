# A number beyond any everyday size.
$ quoin check buyer.json
2> quoin: buyer.json:6:11: found 1e400
2>   6 |   "cash": 1e400,
2>     |           ^^^^^
2>   expected a smaller number
2>   check the number, and write it without an exponent
2>   [number-too-large]
= 1
