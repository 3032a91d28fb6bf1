# A better level that costs less than the one before it.
$ quoin check book.json
2> quoin: book.json:12:16: found a level that costs less than the one before it, for cabin
2>   12 |      "levels": [{"id": "pine", "name": "Pine", "price": "900"}, {"id": "oak", "name": "Oak", "pr
2>      |                ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /options/0/levels
2>   expected levels in rising order of price
2>   reorder the levels
2>   [levels-not-rising]
= 1
