# Two tables of one rule in force on the same day.
$ quoin check short.json
2> quoin: short.json:5:5: found two tables of maximum_ltv on the same day
2>   5 |     {"effective": "2026-06-01", "status": "sample", "source": "invented", "value": "percent", "d
2>     |     ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /rules/maximum_ltv/1
2>   expected only one table in effect on any day
2>   end the earlier one with "until"
2>   [dates-overlap]
= 1
