# A picture outside of the price book's folder.
$ quoin check book.json
2> quoin: book.json:11:81: found "../deck.svg"
2>   11 |     {"id": "deck", "name": "Deck", "area": "inside", "price": "900", "picture": "../deck.svg"}
2>      |                                                                                 ^^^^^^^^^^^^^
2>   at /options/0/picture
2>   expected a file in the price book's folder or in one below it
2>   [file-elsewhere]
= 1
