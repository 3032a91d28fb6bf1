# Stairs up that do not arrive where they should.
$ quoin check book.json
