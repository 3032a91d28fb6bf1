# One of two lots is on the map.
$ quoin check book.json
2> quoin: map.json:1:1: found no outline of lot 2
2>   1 | {
2>     | ^
2>   expected an outline for each lot of the book
2>   [lot-not-drawn]
= 1
