# An option that the price book does not have.
$ quoin adds ../../golden/data/buyer.json stoev --rates ../../golden/data/rates
2> quoin: found no option named "stoev"
2>   expected the id of an option; 'quoin list options' shows them
2>   did you mean "stove"?
2>   [option-unknown]
= 1
