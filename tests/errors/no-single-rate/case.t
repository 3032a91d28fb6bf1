# Payments that come to less than was advanced, then a transaction that two rates fit.
$ quoin apr problem.json
2> quoin: problem.json:4:15: found no rate from 0% to 10,000% at which the payments pay back the advances
2>   4 |   "payments": [{"amount": "900", "periods": 1}]
2>     |               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /payments
2>   expected payments that come after the advances and add up to more
2>   [no-single-rate]
= 1
$ quoin apr two.json
2> quoin: two.json:4:15: found more than one rate at which the payments pay back the advances
2>   4 |   "payments": [{"amount": "230", "periods": 1}]
2>     |               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /payments
2>   expected payments that come after the advances and add up to more
2>   split the transaction where its balance changes sign
2>   [no-single-rate]
= 1
