# Two columns of one name.
$ quoin check book.json
2> quoin: lots.csv:1:12: found the column "premium" twice
2>   1 | id,premium,premium
2>     |            ^^^^^^^
2>   expected each column once
2>   rename or remove one of the two
2>   [csv-column-repeated]
= 1
