# The file ends inside an object: it was cut off, or a bracket is missing.
$ quoin check book.json
2> quoin: book.json:4:28: found end of input
2>   4 |   "areas": [{"id": "inside"
2>     |                            ^
2>   expected '}'
2>   look for a missing comma, quote or bracket here or just before
2>   [not-json]
= 1
