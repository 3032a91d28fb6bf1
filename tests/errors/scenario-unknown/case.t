# A scenario that the inquiry does not have.
$ quoin schedule ../../golden/data/buyer.json --scenario "A thrid down" --rates ../../golden/data/rates
2> quoin: found no loan named "A thrid down"
2>   expected one of "Ten percent down", "A third down"
2>   did you mean "A third down"?
2>   [scenario-unknown]
= 1

# A question about a loan, and an inquiry that has none.
$ quoin tour buyer.json --rates ../../golden/data/rates
2> quoin: found no loan in the inquiry
2>   expected at least one loan
2>   add one to "scenarios"
2>   [scenario-unknown]
= 1
