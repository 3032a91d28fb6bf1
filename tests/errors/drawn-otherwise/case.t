# A room two feet wider than the price book says.
$ quoin check book.json
