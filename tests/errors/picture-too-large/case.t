# A picture of too many pixels: a small file, yet far more than a page can hold once it is shown.
$ quoin check book.json
2> quoin: book.json:11:81: found a picture of 400000 kB
2>   11 |     {"id": "deck", "name": "Deck", "area": "inside", "price": "900", "picture": "deck.png"}
2>      |                                                                                 ^^^^^^^^^^
2>   at /options/0/picture
2>   expected at most 64000 kB
2>   save it smaller: its file counts, and 4 bytes a pixel
2>   [picture-too-large]
= 1
