# Two rows that both hold for one case: a score of 600, an LTV of 90 %.
$ quoin check short.json
2> quoin: short.json:4:50: found two rows for score <= 600
2>   4 |     "rows": [{"score": ">= 600", "value": "95"}, {"score": "<= 600", "value": "80"}]}]}
2>     |                                                  ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /rules/maximum_ltv/0/rows/1
2>   expected one row for each case
2>   row 1 has it too; change one of them
2>   [bands-overlap]
= 1
$ quoin check cap.json
2> quoin: cap.json:8:7: found two rows for ltv >= 90
2>   8 |       {"ltv": ">= 90", "value": "3"}
2>     |       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /rules/contribution_cap/0/rows/2
2>   expected one row for each case
2>   row 2 has it too; change one of them
2>   [bands-overlap]
= 1
