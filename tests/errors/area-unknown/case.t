# An area that the home does not have.
$ quoin tour ../../golden/data/buyer.json --rates ../../golden/data/rates --area insied
2> quoin: found no area of the home named "insied"
2>   expected one of "outside", "inside"
2>   did you mean "inside"?
2>   [area-unknown]
= 1
