# A band that is not written as one.
$ quoin check short.json
2> quoin: short.json:4:24: found "over 600"
2>   4 |     "rows": [{"score": "over 600", "value": "95"}]}]}
2>     |                        ^^^^^^^^^^
2>   at /rules/maximum_ltv/0/rows/0/score
2>   expected a band such as "<= 90", "> 90, <= 95", "= 360" or "any"
2>   [not-a-band]
= 1
