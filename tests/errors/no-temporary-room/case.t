# A workbook is put together in a temporary folder: here TMPDIR names one that is not there.
$ TMPDIR=gone quoin recheck ../../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5 % down" --workbook check.xlsx
2> quoin: gone: found no way to write a temporary file there: No such file or directory
2>   expected a folder for temporary files, with room in it
2>   make room, or name another folder in TMPDIR
2>   [no-temporary-room]
= 1
