# An amount with a fraction of a cent.
$ quoin check book.json
2> quoin: book.json:11:70: found 2600.005
2>   11 |     {"id": "stove", "name": "Wood stove", "area": "inside", "price": 2600.005}
2>      |                                                                      ^^^^^^^^
2>   at /options/0/price
2>   expected dollars with at most two decimals, such as "12500.00"
2>   [not-money]
= 1
