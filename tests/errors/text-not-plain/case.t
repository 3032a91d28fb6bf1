# A mark that turns the direction of writing, as text copied from elsewhere may hold; so are control characters.
$ quoin check book.json
2> quoin: book.json:11:29: found "Wood \u202Estove"
2>   11 |     {"id": "stove", "name": "Wood \u202estove", "area": "inside", "price": "2600"}
2>      |                             ^^^^^^^^^^^^^^^^^^
2>   at /options/0/name
2>   expected one line of text, without control characters or marks that change the writing direction
2>   type it instead of pasting it
2>   [text-not-plain]
= 1
