# A question about means, and an inquiry that states none.
$ quoin afford buyer.json --rates ../../golden/data/rates
2> quoin: found neither "income" nor "cash" in the inquiry
2>   expected an income or cash to figure a price from
2>   add "income": {"monthly": "8000"}, "debts" and "cash"
2>   [no-means]
= 1
