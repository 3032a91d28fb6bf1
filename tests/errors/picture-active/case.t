# An SVG picture that would run something. Scripts, styles, links and movement have no place in one.
$ quoin check book.json
2> quoin: book.json:11:81: found an SVG picture with <script>
2>   11 |     {"id": "deck", "name": "Deck", "area": "inside", "price": "900", "picture": "deck.svg"}
2>      |                                                                                 ^^^^^^^^^^
2>   at /options/0/picture
2>   expected shapes and texts alone
2>   [picture-active]
= 1
