# A name under which there is something else already: only what quoin wrote itself is replaced.
$ quoin recheck ../../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5% down" --workbook theirs.xlsx
2> quoin: theirs.xlsx: found a file that quoin did not write
2>   expected a new file name, or a file that quoin wrote before
2>   choose another name, or add --force to replace this file
2>   [file-not-ours]
= 1
