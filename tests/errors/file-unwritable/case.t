# A workbook for a folder that is not there: nothing is written anywhere.
$ quoin recheck ../../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5 % down" --workbook nowhere/check.xlsx
2> quoin: nowhere/check.xlsx: found no way to write it: No such file or directory
2>   expected the name of a file in a folder that you may write to
2>   check the folder and its permissions
2>   [file-unwritable]
= 1
