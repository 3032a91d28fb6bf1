# Two must-haves that cannot stand together.
$ quoin fit buyer.json --rates ../../golden/data/rates --monthly 9000 --cash 20000
