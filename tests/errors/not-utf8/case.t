# Bytes that are no UTF-8: the file was saved in an older encoding.
$ quoin check book.json
2> quoin: book.json:3:19: found bytes that are not UTF-8
2>   3 |   "version": "caf?"
2>     |                   ^
2>   expected text in UTF-8
2>   save the file again as UTF-8
2>   [not-utf8]
= 1
