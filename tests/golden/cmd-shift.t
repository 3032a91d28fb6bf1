# What moves until the closing.
$ quoin shift data/buyer.json --rates data/rates

# The example: an income is given, so the ratios are said.
$ quoin shift ../../examples/oxbarrow-meadow/buyers/six-programs.json --scenario "FHA, 3.5 % down, 30 years" --steps 2 --step 0.25

# A conventional loan has the limit of automated underwriting beside its own.
$ quoin shift ../../examples/oxbarrow-meadow/buyers/six-programs.json --scenario "Conventional, 5 % down, 30 years" --steps 1

# Refused: no such scenario, steps, step.
$ quoin shift data/buyer.json --scenario "A thrd down" --rates data/rates
$ quoin shift data/buyer.json --steps 99 --rates data/rates
$ quoin shift data/buyer.json --step 0 --rates data/rates
