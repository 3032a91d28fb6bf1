# A picture of too many pixels: a small file, yet far more than a page can hold once it is shown.
$ quoin check book.json
