# Two rooms on the same ground.
$ quoin check book.json
