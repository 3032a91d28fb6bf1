# Of the rate sheets only the inquiry's own is read whole: a fault in another keeps no figure back.
$ quoin programs data/buyer.json --rates data/faulty-rates
The loan programs and the rates of the day
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027

A short loan (short)
  Twelve payments, so that a schedule fits on a page.
  It is invented, for transcripts only.
  1 year, locked 60 days: 6 % at 1, 6.25 % at 0

Points are percents of the loan before adjustments for score, loan to value and term; a minus is a
credit. An APR goes with a loan: 'quoin compare' shows it beside each rate.

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.

Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they
hold only when locked. They are samples, not anybody's offer.

Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs
from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep
taxes, insurance and dues as they are today.

For the agent: prices, and how programs work in general, are yours to explain; presenting particular
loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment
brings duties (12 CFR 1026.24).
= 0
# It is told where that sheet is used, and where all of them are read: by a check and by the server.
$ quoin quote ../errors/rates-missing/buyer.json --rates data/faulty-rates
2> quoin: data/faulty-rates/sheets/before.json:5:64: found a rung out of order
2>   5 | "rungs": [{"rate": "6.000", "points": "1.000"}, {"rate": "5.750", "points": "0.000"}]}]
2>     |                                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /ladders/0/rungs/1
2>   expected rates that rise while their points fall
2>   sort the rungs by rate
2>   [ladder-not-falling]
= 1
$ quoin check data/buyer.json --rates data/faulty-rates
2> quoin: data/faulty-rates/sheets/before.json:5:64: found a rung out of order
2>   5 | "rungs": [{"rate": "6.000", "points": "1.000"}, {"rate": "5.750", "points": "0.000"}]}]
2>     |                                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /ladders/0/rungs/1
2>   expected rates that rise while their points fall
2>   sort the rungs by rate
2>   [ladder-not-falling]
= 1
$ quoin serve data --port 0 --rates data/faulty-rates
2> quoin: data/faulty-rates/sheets/before.json:5:64: found a rung out of order
2>   5 | "rungs": [{"rate": "6.000", "points": "1.000"}, {"rate": "5.750", "points": "0.000"}]}]
2>     |                                                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
2>   at /ladders/0/rungs/1
2>   expected rates that rise while their points fall
2>   sort the rungs by rate
2>   [ladder-not-falling]
= 1
