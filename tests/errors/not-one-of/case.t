# A word that is none of the allowed ones.
$ quoin check book.json
2> quoin: book.json:9:50: found "fre"
2>   9 |   "lots": [{"id": "1", "premium": "0", "status": "fre", "grade": "level"}],
2>     |                                                  ^^^^^
2>   at /lots/0/status
2>   expected one of "free", "held", "sold"
2>   did you mean "free"?
2>   [not-one-of]
= 1
