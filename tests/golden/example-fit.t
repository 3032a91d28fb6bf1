# The wishes of a buyer of the example: one loan, on the lot in hand and on the others.
$ quoin fit ../../examples/oxbarrow-meadow/buyers/six-programs.json --monthly 4060 --cash 45000 --scenario "Conventional, 5 % down, 30 years"

$ quoin fit ../../examples/oxbarrow-meadow/buyers/six-programs.json --monthly 4000 --cash 40000 --lots --scenario "FHA, 3.5 % down, 30 years"
