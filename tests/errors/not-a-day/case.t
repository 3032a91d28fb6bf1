# A tax due day that not every year has, then one that no year has.
$ quoin check here.json
2> quoin: here.json:4:62: found "02-29"
2>   4 |   "property_tax": {"assessed_percent": "100", "due": [{"on": "02-29", "percent": "100"}]},
2>     |                                                              ^^^^^^^
2>   at /property_tax/due/0/on
2>   expected a day that comes every year, month first, such as "07-31"
2>   [not-a-day]
= 1
$ quoin check thirtieth.json
2> quoin: thirtieth.json:4:62: found "02-30"
2>   4 |   "property_tax": {"assessed_percent": "100", "due": [{"on": "02-30", "percent": "100"}]},
2>     |                                                              ^^^^^^^
2>   at /property_tax/due/0/on
2>   expected a day that comes every year, month first, such as "07-31"
2>   [not-a-day]
= 1
