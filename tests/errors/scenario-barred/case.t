# A workbook of a loan that cannot be had: there are no figures to write.
$ quoin recheck buyer.json --scenario "One percent down" --rates ../../golden/data/rates --workbook check.xlsx
2> quoin: found the loan "One percent down", which is not available
2>   expected a loan that is available
2>   'quoin recheck' without --workbook says why
2>   [scenario-barred]
= 1
