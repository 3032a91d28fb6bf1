# The builder's color heads the sheet that buyers take home, on white paper.
$ quoin check book.json
2> quoin: book.json:3:84: found "#e0b040"
2>   3 |   "community": {"name": "Two Lots", "builder": "Nobody", "place": "here", "color": "#e0b040"},
2>     |                                                                                    ^^^^^^^^^
2>   at /community/color
2>   expected a color that can be read on white paper
2>   use a darker shade: a contrast of 4.5 or more
2>   [color-too-light]
= 1
