# What it can be paid with on the rates of the inquiry.
$ quoin programs data/buyer.json --rates data/rates
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
