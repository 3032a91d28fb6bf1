# One of two lots is on the map.
$ quoin check book.json
