# A price book that ends before it begins, then a closing before the contract.
$ quoin check book.json
2> quoin: book.json:4:57: found "2026-12-31"
2>   4 |   "version": "1", "effective": "2027-11-01", "expires": "2026-12-31",
2>     |                                                         ^^^^^^^^^^^^
2>   at /expires
2>   expected "effective" on or before "expires"
2>   [dates-reversed]
= 1
$ quoin quote buyer.json --rates ../../golden/data/rates
2> quoin: buyer.json:3:63: found "2027-01-15"
2>   3 |   "as_of": "2026-11-24", "contract": "2027-02-01", "closing": "2027-01-15",
2>     |                                                               ^^^^^^^^^^^^
2>   at /closing
2>   expected "contract" on or before "closing"
2>   [dates-reversed]
= 1
