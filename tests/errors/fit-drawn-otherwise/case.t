# A home of 30 feet between two side setbacks of 7 needs a lot of 44.
$ quoin check book.json
2> quoin: map.json:4:24: found lot 1, too small for the plan cabin as drawn
2>   4 |             "outline": [[0, 0], [40, 0], [40, 100], [0, 100]]}]
2>     |                        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /lots/0/outline
2>   expected a lot that holds it, as the price book says
2>   correct the outline, its setbacks or the lot's "plans"
2>   [fit-drawn-otherwise]
= 1
