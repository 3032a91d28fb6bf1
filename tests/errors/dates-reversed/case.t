# A price book that ends before it begins.
$ quoin check book.json
2> quoin: book.json:4:57: found "2026-12-31"
2>   4 |   "version": "1", "effective": "2027-11-01", "expires": "2026-12-31",
2>     |                                                         ^^^^^^^^^^^^
2>   at /expires
2>   expected "effective" on or before "expires"
2>   [dates-reversed]
= 1
