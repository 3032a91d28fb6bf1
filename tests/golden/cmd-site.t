# Where the home can stand, and what another lot or plan would change.
$ quoin site data/buyer.json --rates data/rates
The lots and the plans
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
A move is figured under Ten percent down: A short loan: 6.250 % note rate, 0.000 points, APR
  6.422 %, 1 year, $10,312.00 down (10.00 %), LTV 90.00 %, 60-day lock

  lot            ground     plans                           for you                     premium
  1      free    level      every plan                      yours                         $0.00
  2      free    walk-out   every plan                      can be had                $5,000.00
        +$5,000.00 in price, +$396.27 a month, +$546.26 cash in all
  3      sold    level      every plan                                                    $0.00

  plan                                                            for you                  base price
  Cabin         ranch       600 sq ft, 1 bed, 1 bath              yours                   $100,000.00

Widths and setbacks are the price book's; the survey and the permit set decide what may be built
where.

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

# Under another way to pay.
$ quoin site data/buyer.json --scenario "A third down" --rates data/rates
The lots and the plans
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
A move is figured under A third down: A short loan: 6.000 % note rate, 1.000 points, APR
  7.739 %, 1 year, $35,000.00 down (33.94 %), LTV 66.06 %, 60-day lock

  lot            ground     plans                           for you                     premium
  1      free    level      every plan                      yours                         $0.00
  2      free    walk-out   every plan                      can be had                $5,000.00
        +$5,000.00 in price, +$436.53 a month, +$97.28 cash in all
  3      sold    level      every plan                                                    $0.00

  plan                                                            for you                  base price
  Cabin         ranch       600 sq ft, 1 bed, 1 bath              yours                   $100,000.00

Widths and setbacks are the price book's; the survey and the permit set decide what may be built
where.

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
