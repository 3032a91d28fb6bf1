# Stairs up to a floor that has none.
$ quoin check book.json
2> quoin: cabin.json:7:29: found stairs that do not arrive on the floor "loft"
2>   7 |                  "outline": [[2, 2], [6, 2], [6, 12], [2, 12]]}]},
2>     |                             ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /floors/0/stairs/0/outline
2>   expected stairs there with the same outline, leading back
2>   [stairs-unmatched]
= 1
