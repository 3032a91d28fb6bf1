# A file too large to be one of these: 50 MB here.
$ quoin check large.json
2> quoin: large.json: found 50 MiB
2>   expected at most 16 MiB
2>   check that this is the file you meant
2>   [file-too-large]
= 1
