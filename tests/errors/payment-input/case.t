# A loan, rate or term that is none.
$ quoin payment --loan 250.000,00 --rate 6.5 --years 30
2> quoin: found --loan 250.000,00
2>   expected dollars from 0 to 9,000,000,000, with at most two decimals, such as 250000
2>   [payment-input]
= 1
