# A picture outside of the price book's folder.
$ quoin check book.json
