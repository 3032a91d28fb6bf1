# Brackets inside brackets without end.
$ quoin check book.json
2> quoin: book.json:1:42: found brackets more than 32 levels deep
2>   1 | {"areas": [[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]}
2>     |                                          ^
2>   expected at most 32 levels
2>   look for brackets that are never closed
2>   [too-deep]
= 1
