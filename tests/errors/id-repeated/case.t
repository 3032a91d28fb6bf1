# Two options of one id.
$ quoin check book.json
2> quoin: book.json:12:12: found "stove" for a second option
2>   12 |     {"id": "stove", "name": "Wood stove", "area": "inside", "price": "2600"}
2>      |            ^^^^^^^
2>   at /options/1/id
2>   expected a different id for each option
2>   change one of the two ids
2>   [id-repeated]
= 1
