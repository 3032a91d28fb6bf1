# A case that the table says it covers, and no row holds for.
$ quoin check short.json
2> quoin: short.json:4:13: found no row for score 600
2>   4 |     "rows": [{"score": "> 600", "value": "95"}, {"score": "< 600", "value": "80"}]}]}
2>     |             ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /rules/maximum_ltv/0/rows
2>   expected a row for every case
2>   add the row, or take the case out of "covers"
2>   [bands-gap]
= 1
