# The first member says what a file is; this one says something else.
$ quoin check book.json
2> quoin: book.json:1:1: found an object
2>   1 | {
2>     | ^
2>   expected "format": "quoin/pricebook/1", "quoin/inquiry/1", "quoin/program/1", "quoin/rates/1" or "quoin/place/1"
2>   make "format" the first field of the file
2>   [format-unknown]
= 1
