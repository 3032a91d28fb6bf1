# A file that cannot be written: the folder is not there, or not yours.
$ quoin sheet ../../golden/data/buyer.json -o nowhere/sheet.html --rates ../../golden/data/rates
2> quoin: nowhere/sheet.html: found no way to write it: No such file or directory
2>   expected the name of a file in a folder that you may write to
2>   check the folder and its permissions
2>   [file-unwritable]
= 1
