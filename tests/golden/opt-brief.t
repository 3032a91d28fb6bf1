# The answer alone, a line for each loan. Piped, a line is never broken; --width breaks it.
$ quoin quote --rates data/rates data/buyer.json --brief
= 0
$ quoin quote --rates data/rates data/buyer.json --brief --width 60 --language es
= 0
# Options that are asked about, each under each loan; one of them is in the home already.
$ quoin adds --rates data/rates data/buyer.json stove floor:oak walk-out --brief
= 0
# Without a name: what is chosen, together.
$ quoin adds --rates data/rates data/buyer.json --brief
= 0
$ quoin compare --rates data/rates data/buyer.json --brief
= 0
$ quoin cash --rates data/rates data/buyer.json --scenario "A third down" --brief
= 0
$ quoin afford --income 8400 --debts 450 --cash 60000 --rate 6.25 --as-of 2026-11-24 --brief
= 0
$ quoin fit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --monthly 3000 --cash 24000 --scenario "FHA, 3.5% down" --brief
= 0
$ quoin fit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --monthly 3300 --cash 26000 --scenario "FHA, 3.5% down" --brief --language es
= 0
$ quoin credit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --amount 10000 --scenario "FHA, 3.5% down" --brief
= 0
$ quoin shift ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5% down" --brief
= 0
$ quoin later ../../examples/oxbarrow-meadow/buyers/short-of-cash.json deck:treated --brief --language es
= 0
# JSON is what it was.
$ quoin quote --rates data/rates data/buyer.json --brief --json | digest
= 0
