# A seller cannot pay the down payment.
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:6:76: found a credit toward the down payment
2>   6 |   "credits": [{"name": "Gift", "from": "seller", "amount": "2500", "uses": ["down payment"]}],
2>     |                                                                            ^^^^^^^^^^^^^^^^
2>   at /credits/0/uses
2>   expected something that this credit may pay
2>   only a program may help with the down payment; put the credit toward costs or points
2>   [credit-use-not-allowed]
= 1
