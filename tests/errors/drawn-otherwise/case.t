# A room two feet wider than the price book says.
$ quoin check book.json
2> quoin: cabin.json:3:13: found square_feet drawn as 640
2>   3 |   "floors": [
2>     |             ^
2>   at /floors
2>   expected 600, the price book's own, within 2%
2>   correct the drawing or the price book
2>   [drawn-otherwise]
= 1
