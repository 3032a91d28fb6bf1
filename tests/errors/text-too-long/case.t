# A name that no column and no sentence has room for.
$ quoin check book.json
2> quoin: book.json:11:29: found a text of 155 characters
2>   11 |     {"id": "stove", "name": "A stove for the cold half of the year, A stove for the cold half of
2>      |                             ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /options/0/name
2>   expected at most 120 characters
2>   shorten it
2>   [text-too-long]
= 1
