# An id with capitals and blanks.
$ quoin check book.json
2> quoin: book.json:11:12: found "Wood Stove"
2>   11 |     {"id": "Wood Stove", "name": "Wood stove", "area": "inside", "price": "2600"}
2>      |            ^^^^^^^^^^^^
2>   at /options/0/id
2>   expected lowercase letters and digits, with hyphens only between them
2>   [not-an-id]
= 1
