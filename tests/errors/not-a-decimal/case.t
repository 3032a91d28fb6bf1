# A number that is none.
$ quoin check book.json
2> quoin: book.json:8:29: found "six hundred"
2>   8 |              "square_feet": "six hundred", "elevations": [{"id": "plain", "name": "Plain", "pric
2>     |                             ^^^^^^^^^^^^^
2>   at /plans/0/square_feet
2>   expected a number with at most nine decimals, such as "6.125"
2>   [not-a-decimal]
= 1
