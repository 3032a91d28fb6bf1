# No price book where the server was to find some.
$ quoin serve ../../golden/data/rates --rates ../../golden/data/rates
2> quoin: ../../golden/data/rates: found no usable price book in this folder
2>   expected a pricebook.json in it or up to two folders down
2>   'quoin check FILE' says what is wrong with one
2>   [no-price-book]
= 1
