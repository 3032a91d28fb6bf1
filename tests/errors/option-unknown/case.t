# An option that the price book does not have.
$ quoin adds ../../golden/data/buyer.json stoev --rates ../../golden/data/rates
2> quoin: found no option "stoev"
2>   expected the id of an option, such as those of 'quoin list options'
2>   did you mean "stove"?
2>   [option-unknown]
= 1
