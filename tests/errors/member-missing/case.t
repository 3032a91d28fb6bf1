# Something that must be said is not.
$ quoin check book.json
2> quoin: book.json:11:5: found no "area" here
2>   11 |     {"id": "stove", "name": "Wood stove", "price": "2600"}
2>      |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /options/0
2>   expected an object with "area"
2>   add "area"
2>   [member-missing]
= 1
