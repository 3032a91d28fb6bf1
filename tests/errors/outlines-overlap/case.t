# Two rooms on the same ground.
$ quoin check book.json
2> quoin: cabin.json:6:56: found an outline that overlaps "hall"
2>   6 |         {"id": "den", "name": "Den", "outline": [[14, 0], [30, 0], [30, 20], [14, 20]]}]}]
2>     |                                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /floors/0/rooms/1/outline
2>   expected outlines that touch and do not overlap
2>   [outlines-overlap]
= 1
