# A name of nothing but blanks.
$ quoin check book.json
2> quoin: book.json:11:29: found empty text
2>   11 |     {"id": "stove", "name": "  ", "area": "inside", "price": "2600"}
2>      |                             ^^^^
2>   at /options/0/name
2>   expected some words
2>   [text-empty]
= 1
