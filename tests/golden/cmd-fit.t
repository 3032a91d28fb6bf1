# Which wishes fit within a month and the cash: what is chosen, what is left out and why.
$ quoin fit data/buyer.json --rates data/rates --monthly 8400 --cash 12000
Which wishes fit
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
within $8,400.00 a month and $12,000.00 of cash in all

Ten percent down
price $103,120.00, $8,197.59 a month, $10,966.45 in cash: $9,654.45 to bring to the closing
  A short loan: 6.250 % note rate, 0.000 points, APR 6.422 %, 1 year, $10,312.00 down (10.00 %),
  LTV 90.00 %, 60-day lock
worth 0: proven, no choice within the limits is worth more, none worth as much costs less a
  month (4 looked into)

                                                rank      worth        price     a month         cash

  chosen
  no wish

  left out: what each would add to the above, and why it did not fit
  Wood stove                                    1             1   +$2,600.00    +$206.06     +$284.16
        over the month by $3.65

To have Wood stove as well: a month of $3.65 more; no choice within the limits holds it.

A third down
Nothing fits: the nearest home with what is selected is over the cash by $24,254.73. Proven:
  none is over by less.

price $103,120.00, $6,015.72 a month, $36,254.73 in cash: $34,942.73 to bring to the closing
  A short loan: 6.000 % note rate, 1.000 points, APR 7.739 %, 1 year, $35,000.00 down (33.94 %),
  LTV 66.06 %, 60-day lock

A wish is worth its weight, or n + 1 less its place among the n wishes by rank. What was left out is
figured as the difference of two whole quotes. Limits are on the settled month and on all the cash,
deposits among it.

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
$ quoin fit data/buyer.json --rates data/rates --monthly 8000 --cash 9000 --scenario "Ten percent down"
Which wishes fit
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
within $8,000.00 a month and $9,000.00 of cash in all

Ten percent down
Nothing fits: the nearest home with what is selected is over the month by $197.59 and the cash
  by $1,966.45. Proven: none is over the month, or over the cash, by less.

price $103,120.00, $8,197.59 a month, $10,966.45 in cash: $9,654.45 to bring to the closing
  A short loan: 6.250 % note rate, 0.000 points, APR 6.422 %, 1 year, $10,312.00 down (10.00 %),
  LTV 90.00 %, 60-day lock

A wish is worth its weight, or n + 1 less its place among the n wishes by rank. What was left out is
figured as the difference of two whole quotes. Limits are on the settled month and on all the cash,
deposits among it.

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
$ quoin fit data/buyer.json --rates data/rates --monthly 8450 --cash 40000 --lots --scenario "Ten percent down" --nodes 5000
Which wishes fit
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
within $8,450.00 a month and $40,000.00 of cash in all

Ten percent down
  lot       worth        price     a month         cash
  1             1  $105,720.00   $8,403.65   $11,250.61
  2                $108,120.00   $8,593.86   $11,512.71  nothing fits

On lot 1:
price $105,720.00, $8,403.65 a month, $11,250.61 in cash: $9,678.61 to bring to the closing
  A short loan: 6.250 % note rate, 0.000 points, APR 6.422 %, 1 year, $10,572.00 down (10.00 %),
  LTV 90.00 %, 60-day lock
worth 1: proven, no choice within the limits is worth more, none worth as much costs less a
  month (2 looked into)

                                                rank      worth        price     a month         cash

  chosen
  Wood stove                                    1             1    $2,600.00

A wish is worth its weight, or n + 1 less its place among the n wishes by rank. What was left out is
figured as the difference of two whole quotes. Limits are on the settled month and on all the cash,
deposits among it.

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
$ quoin fit data/buyer.json --rates data/rates --monthly -1 --cash 9000
2> quoin: found --monthly -1
2>   expected an amount from 0 to 1000000000, such as 2150
2>   [payment-input]
= 1
$ quoin fit data/buyer.json --rates data/rates --monthly 8000 --cash 9000 --nodes 0
2> quoin: found --nodes 0
2>   expected a whole number from 1 to 1000000000
2>   [payment-input]
= 1
$ quoin fit --help
Which wishes fit within a month and the cash: the most worth, proven
Usage: quoin fit [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --monthly TEXT REQUIRED     what a month may come to, in dollars
  --cash TEXT REQUIRED        all the cash there is, deposits among it, in dollars
  --scenario TEXT             the scenario's name in the inquiry; each of them if not given
  --lots                      on every free lot that the plan fits
  --nodes TEXT                how many choices each search may look into before it stops; 2000000 if not given
  --progress                  show on standard error how far a long search is, also where that is no terminal; Ctrl-C stops it with the best so far

Example:
  quoin fit buyer.json --monthly 2150 --cash 24000 --lots

--json and --rates DIR go with every command; 'quoin --help' explains them.

= 0
$ quoin fit data/buyer.json --rates data/rates --monthly 8400 --cash 12000 --progress --scenario "A third down"
Which wishes fit
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
within $8,400.00 a month and $12,000.00 of cash in all

A third down
Nothing fits: the nearest home with what is selected is over the cash by $24,254.73. Proven:
  none is over by less.

price $103,120.00, $6,015.72 a month, $36,254.73 in cash: $34,942.73 to bring to the closing
  A short loan: 6.000 % note rate, 1.000 points, APR 7.739 %, 1 year, $35,000.00 down (33.94 %),
  LTV 66.06 %, 60-day lock

A wish is worth its weight, or n + 1 less its place among the n wishes by rank. What was left out is
figured as the difference of two whole quotes. Limits are on the settled month and on all the cash,
deposits among it.

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
$ quoin fit data/buyer.json --rates data/rates --monthly 8000 --cash 90000000000
2> quoin: found --cash 90000000000
2>   expected an amount from 0 to 1000000000, such as 2150
2>   [payment-input]
= 1
$ quoin fit data/buyer.json --rates data/rates --monthly plenty --cash 9000
2> quoin: found --monthly plenty
2>   expected an amount from 0 to 1000000000, such as 2150
2>   [payment-input]
= 1
