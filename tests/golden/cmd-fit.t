# Which wishes fit within a month and the cash: what is chosen, what is left out and why.
$ quoin fit data/buyer.json --rates data/rates --monthly 8400 --cash 12000

# A month below the home itself.
$ quoin fit data/buyer.json --rates data/rates --monthly 8000 --cash 9000 --scenario "Ten percent down"

# On every free lot.
$ quoin fit data/buyer.json --rates data/rates --monthly 8450 --cash 40000 --lots --scenario "Ten percent down" --nodes 5000

# A limit that is none.
$ quoin fit data/buyer.json --rates data/rates --monthly -1 --cash 9000

$ quoin fit data/buyer.json --rates data/rates --monthly 8000 --cash 9000 --nodes 0
