# A name of something that is not in the file.
$ quoin check book.json
2> quoin: book.json:11:51: found no area named "insied"
2>   11 |     {"id": "stove", "name": "Wood stove", "area": "insied", "price": "2600"}
2>      |                                                   ^^^^^^^^
2>   at /options/0/area
2>   expected the id of an area that exists
2>   did you mean "inside"?
2>   [name-unknown]
= 1

# A place that is not in the lending data.
$ quoin check county.json
2> quoin: county.json:3:67: found no place named "venning-conty"
2>   3 |   "community": {"name": "Two Lots", "builder": "Nobody", "place": "venning-conty"},
2>     |                                                                   ^^^^^^^^^^^^^^^
2>   at /community/place
2>   expected the id of a place that exists
2>   did you mean "venning-county"?
2>   [name-unknown]
= 1
