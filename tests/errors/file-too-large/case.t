# A file too large to be one of these: 50 MB here.
$ quoin check large.json
2> quoin: large.json: found a file of 50 MiB
2>   expected at most 16 MiB
2>   check that this is the right file
2>   [file-too-large]
= 1
