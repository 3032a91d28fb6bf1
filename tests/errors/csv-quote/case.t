# A quote in the list of lots that is never closed.
$ quoin check book.json
2> quoin: lots.csv:2:16: found a quote that is not closed or not alone in its cell
2>   2 | 1,0,free,level,"corner lot
2>     |                ^
2>   expected a cell in quotes from its first to its last character
2>   double a quote that belongs to the text
2>   [csv-quote]
= 1
