# A file that is not there; a near name is suggested.
$ quoin quote buyr.json
2> quoin: buyr.json: found no such file or folder
2>   expected an inquiry that can be read
2>   did you mean "buyer.json"?
2>   [file-missing]
= 1
