# A scenario that the inquiry does not have.
$ quoin schedule ../../golden/data/buyer.json --scenario "A thrid down" --rates ../../golden/data/rates
2> quoin: found no scenario "A thrid down"
2>   expected one of "Ten percent down", "A third down"
2>   did you mean "A third down"?
2>   [scenario-unknown]
= 1
