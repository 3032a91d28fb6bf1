# A name under which there is something else already: only what quoin wrote itself is replaced.
$ quoin recheck ../../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5 % down" --workbook theirs.xlsx
2> quoin: found no loan named "FHA, 3.5 % down"
2>   expected one of "FHA, 3.5% down", "FHA, all available cash", "USDA, nothing down", "Conventional, 3% down"
2>   did you mean "FHA, 3.5% down"?
2>   [scenario-unknown]
= 1
