# A name of something that is not in the file.
$ quoin check book.json
2> quoin: book.json:11:51: found no area "insied"
2>   11 |     {"id": "stove", "name": "Wood stove", "area": "insied", "price": "2600"}
2>      |                                                   ^^^^^^^^
2>   at /options/0/area
2>   expected the id of an area that is there
2>   did you mean "inside"?
2>   [name-unknown]
= 1
