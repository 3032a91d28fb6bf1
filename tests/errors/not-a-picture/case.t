# A picture that is none: a text under a picture's name.
$ quoin check book.json
