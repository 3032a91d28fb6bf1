# Of the rate sheets only the inquiry's own is read whole: a fault in another keeps no figure back.
$ quoin programs data/buyer.json --rates data/faulty-rates
Loan programs and their rates
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027

A short loan (short)
  Twelve payments, so that a schedule fits on a page.
  It is invented, for transcripts only.
  1 year, 60-day rate lock: 6.000% at 1.000 points, 6.250% at 0.000 points

Points are a percent of the loan amount, before adjustments for credit score, loan-to-value (LTV)
and loan term. Points below zero are a lender credit. An APR belongs to one loan: 'quoin compare'
shows it beside each interest rate.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none: invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
# It is told where that sheet is used, and where all of them are read: by a check and by the server.
$ quoin quote ../errors/rates-missing/buyer.json --rates data/faulty-rates
2> quoin: data/faulty-rates/sheets/before.json:5:64: found a rung out of order
2>   5 | "rungs": [{"rate": "6.000", "points": "1.000"}, {"rate": "5.750", "points": "0.000"}]}]
2>     |                                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /ladders/0/rungs/1
2>   expected rates that go up while their points go down
2>   sort the rungs by rate
2>   [ladder-not-falling]
= 1
$ quoin check data/buyer.json --rates data/faulty-rates
2> quoin: data/faulty-rates/sheets/before.json:5:64: found a rung out of order
2>   5 | "rungs": [{"rate": "6.000", "points": "1.000"}, {"rate": "5.750", "points": "0.000"}]}]
2>     |                                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /ladders/0/rungs/1
2>   expected rates that go up while their points go down
2>   sort the rungs by rate
2>   [ladder-not-falling]
= 1
$ quoin serve data --port 0 --rates data/faulty-rates
2> quoin: data/faulty-rates/sheets/before.json:5:64: found a rung out of order
2>   5 | "rungs": [{"rate": "6.000", "points": "1.000"}, {"rate": "5.750", "points": "0.000"}]}]
2>     |                                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /ladders/0/rungs/1
2>   expected rates that go up while their points go down
2>   sort the rungs by rate
2>   [ladder-not-falling]
= 1
