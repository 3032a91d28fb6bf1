# A case that the table says it covers, and no row holds for: a score of 600, an LTV just over 90 %.
$ quoin check short.json
2> quoin: short.json:4:13: found no row for score 600
2>   4 |     "rows": [{"score": "> 600", "value": "95"}, {"score": "< 600", "value": "80"}]}]}
2>     |             ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /rules/maximum_ltv/0/rows
2>   expected a row for each case
2>   add the row, or remove the case from "covers"
2>   [bands-gap]
= 1
$ quoin check cap.json
2> quoin: cap.json:5:13: found no row for ltv 90.000000001
2>   5 |     "rows": [
2>     |             ^
2>   at /rules/contribution_cap/0/rows
2>   expected a row for each case
2>   add the row, or remove the case from "covers"
2>   [bands-gap]
= 1
