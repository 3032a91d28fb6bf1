# A name that nothing reads, most often a slip of the keyboard.
$ quoin check book.json
2> quoin: book.json:11:5: found fields that are missing or do not go together
2>   11 |     {"id": "stove", "name": "Wood stove", "area": "inside", "prize": "2600"}
2>      |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /options/0
2>   expected one of "price", "levels", "choices", "allowance", or "parts" with "price"
2>   [members-conflict]
2> quoin: book.json:11:61: found the unknown field "prize"
2>   11 |     {"id": "stove", "name": "Wood stove", "area": "inside", "prize": "2600"}
2>      |                                                             ^^^^^^^
2>   at /options/0/prize
2>   expected a field that belongs here
2>   did you mean "price"?
2>   [member-unknown]
= 1
