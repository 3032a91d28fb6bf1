# A bay that adds floor, beside an option that is priced by the floor as it was.
$ quoin check book.json
2> quoin: cabin.json:8:5: found a change of floor_sq_ft as drawn, while options are priced by the same floor_sq_ft
2>   8 |     {"when": [{"option": "bay"}], "floor": "main",
2>     |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /changes/0
2>   expected a reason, which the agent sees
2>   add "not_priced" to the change
2>   [change-not-priced]
= 1
