# A bay that adds floor, beside an option that is priced by the floor as it was.
$ quoin check book.json
