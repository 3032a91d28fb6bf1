# More entries than a list is read with: 5,001 payments here.
$ quoin apr problem.json
2> quoin: problem.json:1:116: found a list of 5001 entries
2>   1 | [{"amount": "1000", "periods": 0}], "payments": [{"amount": "100", "periods": 1}, {"amount": "10
2>     |                                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /payments
2>   expected at most 5000 entries
2>   remove what you do not need
2>   [too-many]
= 1
