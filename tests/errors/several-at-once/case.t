# Everything that is wrong in a file is said in one go, each with its line and path.
$ quoin check book.json
2> quoin: book.json:4:57: found "soon"
2>   4 |   "version": "1", "effective": "2026-11-01", "expires": "soon",
2>     |                                                         ^^^^^^
2>   at /expires
2>   expected a real date, year first, such as "2026-11-24"
2>   [not-a-date]
2> quoin: book.json:7:82: found true
2>   7 | ": "Cabin", "base_price": "100000", "bedrooms": true, "bathrooms": 1,
2>     |                                                 ^^^^
2>   at /plans/0/bedrooms
2>   expected a number with at most nine decimals, such as "6.125"
2>   [not-a-decimal]
2> quoin: book.json:11:29: found empty text
2>   11 |     {"id": "stove", "name": "", "area": "insid", "price": "2600.555", "colour": "red"}
2>      |                             ^^
2>   at /options/0/name
2>   expected some words
2>   [text-empty]
2> quoin: book.json:11:41: found no area named "insid"
2>   11 |     {"id": "stove", "name": "", "area": "insid", "price": "2600.555", "colour": "red"}
2>      |                                         ^^^^^^^
2>   at /options/0/area
2>   expected the id of an area that exists
2>   did you mean "inside"?
2>   [name-unknown]
2> quoin: book.json:11:59: found "2600.555"
2>   11 |     {"id": "stove", "name": "", "area": "insid", "price": "2600.555", "colour": "red"}
2>      |                                                           ^^^^^^^^^^
2>   at /options/0/price
2>   expected dollars with at most two decimals, such as "12500.00"
2>   [not-money]
2> quoin: book.json:11:71: found the unknown field "colour"
2>   11 |     {"id": "stove", "name": "", "area": "insid", "price": "2600.555", "colour": "red"}
2>      |                                                                       ^^^^^^^^
2>   at /options/0/colour
2>   expected a field that belongs here
2>   did you mean "color"?
2>   [member-unknown]
= 1
