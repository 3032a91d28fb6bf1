# A workbook for a folder that is not there: nothing is written anywhere.
$ quoin recheck ../../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5% down" --workbook nowhere/check.xlsx
2> quoin: nowhere/check.xlsx: found a file that cannot be written: No such file or directory
2>   expected a file name in a folder where you may write
2>   check that the folder exists and that you may write to it
2>   [file-unwritable]
= 1
