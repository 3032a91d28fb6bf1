# A folder where a file should be.
$ quoin check .
2> quoin: .: found a folder
2>   expected a file that can be read
2>   name a file inside it
2>   [file-unreadable]
= 1
