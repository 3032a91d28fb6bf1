# A number that an option does not take.
$ quoin adds ../../golden/data/buyer.json shelves=12 lamps=much flue=2 --rates ../../golden/data/rates
2> quoin: found "12" for shelves
2>   expected a quantity from 1 to 8, in steps of 1
2>   [option-number]
2> quoin: found "much" for lamps
2>   expected an amount to spend
2>   [option-number]
2> quoin: found "2" for flue
2>   expected no quantity; the price book sets it
2>   [option-number]
= 1
