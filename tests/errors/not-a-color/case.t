# A color that is not written as six digits.
$ quoin check book.json
2> quoin: book.json:11:79: found "sage"
2>   11 |     {"id": "deck", "name": "Deck", "area": "inside", "price": "900", "color": "sage"}
2>      |                                                                               ^^^^^^
2>   at /options/0/color
2>   expected a color such as "#8a9a7b"
2>   [not-a-color]
= 1
