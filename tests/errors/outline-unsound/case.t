# Two corners in the wrong order: the outline crosses itself.
$ quoin check book.json
