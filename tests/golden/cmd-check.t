# Files that are sound are named; what is wrong with the others follows, all of it at once.
$ quoin check data/book.json data/buyer.json data/rates/programs/short.json data/rates/sheets/day.json data/rates/places/here.json --rates data/rates
data/book.json: price book, sound
data/buyer.json: inquiry, sound
data/rates/programs/short.json: loan program, sound
data/rates/sheets/day.json: rate sheet, sound
data/rates/places/here.json: place, sound
= 0
$ quoin check data/no-such-book.json
2> quoin: data/no-such-book.json: found no such file
2>   expected a file that can be read
2>   check the name and the folder
2>   [file-missing]
= 1
$ quoin check data/bok.json
2> quoin: data/bok.json: found no such file
2>   expected a file that can be read
2>   did you mean "book.json"?
2>   [file-missing]
= 1
