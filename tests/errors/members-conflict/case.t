# An option with both a price and levels: it is one kind or the other.
$ quoin check book.json
2> quoin: book.json:11:5: found fields that are missing or do not go together
2>   11 |     {"id": "stove", "name": "Wood stove", "area": "inside", "price": "2600", "levels": [{"id": "
2>      |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /options/0
2>   expected one of "price", "levels", "choices", "allowance", or "parts" with "price"
2>   [members-conflict]
= 1
