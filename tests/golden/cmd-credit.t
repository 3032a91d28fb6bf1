# What a builder's money does in each use, and in the best mix.
$ quoin credit data/buyer.json --amount 2500 --rates data/rates

# The example, one loan, over another number of years.
$ quoin credit ../../examples/oxbarrow-meadow/buyers/six-programs.json --amount 10000 --scenario "Conventional, 5 % down, 30 years" --years 5

# In place of the incentive that the buyer uses: the cap has all its room.
$ quoin credit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --amount 10000 --scenario "Conventional, 3 % down" --instead

# Refused: no money, more than the home, no such scenario, no such years.
$ quoin credit data/buyer.json --amount 0 --rates data/rates
$ quoin credit data/buyer.json --amount -5 --rates data/rates
$ quoin credit data/buyer.json --amount 900000 --rates data/rates
$ quoin credit data/buyer.json --amount 2500 --scenario "A thrd down" --rates data/rates
$ quoin credit data/buyer.json --amount 2500 --years 0 --rates data/rates
