# A quote in the list of lots that is never closed.
$ quoin check book.json
2> quoin: lots.csv:2:16: found a quote that is never closed, or a cell with text outside its quotes
2>   2 | 1,0,free,level,"corner lot
2>     |                ^
2>   expected quotes around the whole cell
2>   if a quote belongs to the text, type it twice
2>   [csv-quote]
= 1
