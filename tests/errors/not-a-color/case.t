# A color that is not written as six digits.
$ quoin check book.json
