# A workbook is put together in a temporary folder: here TMPDIR names one that is not there.
$ TMPDIR=gone quoin recheck ../../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5% down" --workbook check.xlsx
2> quoin: gone: found a folder where no temporary file can be written: No such file or directory
2>   expected a folder for temporary files, with free space
2>   free up space, or set TMPDIR to another folder
2>   [no-temporary-room]
= 1
