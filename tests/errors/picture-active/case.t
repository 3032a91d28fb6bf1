# An SVG picture that would run something. Scripts, styles, links and movement have no place in one.
$ quoin check book.json
