# A picture that is none: a text under a picture's name.
$ quoin check book.json
2> quoin: book.json:11:81: found a file that is no picture of a kind that is shown
2>   11 |     {"id": "deck", "name": "Deck", "area": "inside", "price": "900", "picture": "deck.svg"}
2>      |                                                                                 ^^^^^^^^^^
2>   at /options/0/picture
2>   expected PNG, JPEG, WebP or SVG
2>   [not-a-picture]
= 1
