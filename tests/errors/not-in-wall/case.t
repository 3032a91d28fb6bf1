# A window one foot outside the wall.
$ quoin check book.json
