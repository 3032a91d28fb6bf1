# Two options of one id.
$ quoin check book.json
2> quoin: book.json:12:12: found "stove" for a second option
2>   12 |     {"id": "stove", "name": "Wood stove", "area": "inside", "price": "2600"}
2>      |            ^^^^^^^
2>   at /options/1/id
2>   expected each option once
2>   give one of them another id
2>   [id-repeated]
= 1
