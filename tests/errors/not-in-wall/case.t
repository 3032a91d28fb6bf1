# A window one foot outside the wall.
$ quoin check book.json
2> quoin: cabin.json:7:19: found an opening that lies in no wall
2>   7 |                   {"kind": "window", "from": [4, 21], "to": [8, 21]}]}]
2>     |                   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /floors/0/openings/1
2>   expected both ends on one side of a room of this floor
2>   [not-in-wall]
= 1
