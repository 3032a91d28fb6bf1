# A price book without a furnished model.
$ quoin shown buyer.json --rates ../../golden/data/rates
2> quoin: book.json: found no furnished model home in the price book
2>   expected a price book with "model"
2>   [no-model]
= 1
