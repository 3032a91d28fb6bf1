# The same name twice in one object: which one counts would be a guess.
$ quoin check book.json
2> quoin: book.json:3:3: found "version" twice in one object
2>   3 |   "version": "2"
2>     |   ^^^^^^^^^
2>   expected each field once
2>   remove one of the two
2>   [member-repeated]
= 1
