# Two rows that both hold for one case.
$ quoin check short.json
2> quoin: short.json:4:50: found two rows for score <= 600
2>   4 |     "rows": [{"score": ">= 600", "value": "95"}, {"score": "<= 600", "value": "80"}]}]}
2>     |                                                  ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /rules/maximum_ltv/0/rows/1
2>   expected one row for every case
2>   it is in row 1 as well
2>   [bands-overlap]
= 1
