# A price that is no price.
$ quoin check book.json
2> quoin: book.json:7:60: found "-100000"
2>   7 | [{"id": "cabin", "name": "Cabin", "base_price": "-100000", "bedrooms": 1, "bathrooms": 1,
2>     |                                                 ^^^^^^^^^
2>   at /plans/0/base_price
2>   expected an amount above zero
2>   [out-of-range]
= 1
