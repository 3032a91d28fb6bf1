# A row of the list of lots with a cell too many: a comma inside a cell needs quotes.
$ quoin check book.json
2> quoin: lots.csv:3:1: found a row of 6 cells
2>   3 | 2,5000,free,level,wide, with a view
2>     | ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   expected 5 cells, one for each column of the first row
2>   put quotes around a cell that contains a comma
2>   [csv-cells]
= 1
