# Two corners in the wrong order: the outline crosses itself.
$ quoin check book.json
2> quoin: cabin.json:5:58: found a line that crosses itself or encloses nothing
2>   5 | ms": [{"id": "hall", "name": "Hall", "outline": [[0, 0], [30, 0], [0, 20], [30, 20]]}]}]
2>     |                                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /floors/0/rooms/0/outline
2>   expected three corners or more, in their order around
2>   [outline-unsound]
= 1
