# A day that no calendar has.
$ quoin check book.json
2> quoin: book.json:4:57: found "2026-11-31"
2>   4 |   "version": "1", "effective": "2026-11-01", "expires": "2026-11-31",
2>     |                                                         ^^^^^^^^^^^^
2>   at /expires
2>   expected a real date, year first, such as "2026-11-24"
2>   [not-a-date]
= 1
