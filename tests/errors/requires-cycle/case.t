# Options that need each other in a circle: neither could ever be chosen first.
$ quoin check book.json
2> quoin: book.json:11:5: found options that need each other in a circle: stove -> flue -> stove
2>   11 |     {"id": "stove", "name": "Wood stove", "area": "inside", "price": "2600", "requires": ["flue"
2>      |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /options/0
2>   expected needs that do not lead back to where they began
2>   remove one of the needs
2>   [requires-cycle]
= 1
