# Options that need each other in a circle: neither could ever be chosen first.
$ quoin check book.json
2> quoin: book.json:11:5: found options that need each other: stove -> flue -> stove
2>   11 |     {"id": "stove", "name": "Wood stove", "area": "inside", "price": "2600", "requires": ["flue"
2>      |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /options/0
2>   expected requirements that end somewhere
2>   take one of the requirements out
2>   [requires-cycle]
= 1
