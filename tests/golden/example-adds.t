# The move-up couple of the example sits right under 80 % LTV: one more upgrade starts mortgage insurance.
$ quoin adds ../../examples/oxbarrow-meadow/buyers/right-under-eighty.json windows:triple opener
2> quoin: found no option "opener"
2>   expected the id of an option, such as those of 'quoin list options'
2>   [option-unknown]
= 1
