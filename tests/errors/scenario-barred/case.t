# A workbook of a loan that cannot be had: there are no figures to write.
$ quoin recheck buyer.json --scenario "One percent down" --rates ../../golden/data/rates --workbook check.xlsx
2> quoin: found scenario "One percent down", which cannot be had
2>   expected a scenario with figures to write
2>   'quoin recheck' without --workbook says why
2>   [scenario-barred]
= 1
