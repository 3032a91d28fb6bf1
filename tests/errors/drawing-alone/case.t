# A drawing by itself: what it is held to stands in its price book.
$ quoin check cabin.json
2> quoin: cabin.json:1:1: found a drawing, which says nothing without its price book
2>   1 | {
2>     | ^
2>   expected the price book that names it
2>   run 'quoin check' on the price book
2>   [drawing-alone]
= 1
