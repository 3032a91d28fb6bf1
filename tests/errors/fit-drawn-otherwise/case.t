# A home of 30 feet between two side setbacks of 7 needs a lot of 44.
$ quoin check book.json
