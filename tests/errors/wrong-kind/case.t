# A value of another kind than it has to be.
$ quoin check book.json
2> quoin: book.json:5:12: found "inside"
2>   5 |   "areas": "inside",
2>     |            ^^^^^^^^
2>   at /areas
2>   expected a list in [ ]
2>   [wrong-kind]
= 1
