# Which wishes fit within a month and the cash: what is chosen, what is left out and why.
$ quoin fit data/buyer.json --rates data/rates --monthly 8400 --cash 12000
worth 0 · $103,120.00 · $8,197.59 a month · $10,966.45 cash needed ·
  Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down
nothing fits · over your cash limit by $24,254.73 · the closest home $103,120.00 ·
  $6,015.72 a month · $36,254.73 cash needed ·
  A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
These are estimates with sample rates, as of November 24, 2026.

Which wishes fit your limits
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Your limits: $8,400.00 a month and $12,000.00 cash needed, deposits included

Ten percent down
Price $103,120.00, $8,197.59 a month, $10,966.45 cash needed; $9,654.45 cash to close
  A short loan: interest rate 6.250%, 0.000 points, APR 6.422%, loan term 1 year, down payment
  $10,312.00 (10.00%), LTV 90.00%, 60-day rate lock
Worth 0. Proven: no choice within your limits is worth more, and none worth as much costs less a
  month. Choices looked into: 4.

                                          rank      worth        price     a month         cash

  chosen
  no wish

  left out: what each would add, and why it did not fit
  Wood stove                              1             1   +$2,600.00    +$206.06     +$284.16
        over your monthly limit by $3.65

To add Wood stove: raise your monthly limit by $3.65. No choice within your limits includes it.

A third down
Nothing fits. The closest home with your selections is over your cash limit by $24,254.73.
  Proven: no home comes closer.

Price $103,120.00, $6,015.72 a month, $36,254.73 cash needed; $34,942.73 cash to close
  A short loan: interest rate 6.000%, 1.000 points, APR 7.739%, loan term 1 year, down payment
  $35,000.00 (33.94%), LTV 66.06%, 60-day rate lock

A wish is worth its weight. If it has no weight, its place by rank decides: the last of your wishes
is worth 1, the one before it 2, and so on up to the first. What a wish left out would add is the
difference between two whole quotes. Your limits are for the monthly payment with full taxes and for
all the cash needed, deposits included.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
$ quoin fit data/buyer.json --rates data/rates --monthly 8000 --cash 9000 --scenario "Ten percent down"
nothing fits · over your monthly limit by $197.59 · over your cash limit by $1,966.45 ·
  the closest home $103,120.00 · $8,197.59 a month · $10,966.45 cash needed ·
  Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down
These are estimates with sample rates, as of November 24, 2026.

Which wishes fit your limits
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Your limits: $8,000.00 a month and $9,000.00 cash needed, deposits included

Ten percent down
Nothing fits. The closest home with your selections is over your monthly limit by $197.59 and
  your cash limit by $1,966.45. Proven: no home comes closer to either limit.

Price $103,120.00, $8,197.59 a month, $10,966.45 cash needed; $9,654.45 cash to close
  A short loan: interest rate 6.250%, 0.000 points, APR 6.422%, loan term 1 year, down payment
  $10,312.00 (10.00%), LTV 90.00%, 60-day rate lock

A wish is worth its weight. If it has no weight, its place by rank decides: the last of your wishes
is worth 1, the one before it 2, and so on up to the first. What a wish left out would add is the
difference between two whole quotes. Your limits are for the monthly payment with full taxes and for
all the cash needed, deposits included.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
= 0
$ quoin fit data/buyer.json --rates data/rates --monthly 8450 --cash 40000 --lots --scenario "Ten percent down" --nodes 5000
lot 1 · worth 1 · $105,720.00 · $8,403.65 a month · $11,250.61 cash needed ·
  Ten percent down: 6.250% (6.422% APR), 1 year, $10,572.00 down
These are estimates with sample rates, as of November 24, 2026.

Which wishes fit your limits
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Your limits: $8,450.00 a month and $40,000.00 cash needed, deposits included

Ten percent down
  lot       worth        price     a month         cash
  1             1  $105,720.00   $8,403.65   $11,250.61
  2                $108,120.00   $8,593.86   $11,512.71  nothing fits

On lot 1:
Price $105,720.00, $8,403.65 a month, $11,250.61 cash needed; $9,678.61 cash to close
  A short loan: interest rate 6.250%, 0.000 points, APR 6.422%, loan term 1 year, down payment
  $10,572.00 (10.00%), LTV 90.00%, 60-day rate lock
Worth 1. Proven: no choice within your limits is worth more, and none worth as much costs less a
  month. Choices looked into: 2.

                                          rank      worth        price     a month         cash

  chosen
  Wood stove                              1             1    $2,600.00

A wish is worth its weight. If it has no weight, its place by rank decides: the last of your wishes
is worth 1, the one before it 2, and so on up to the first. What a wish left out would add is the
difference between two whole quotes. Your limits are for the monthly payment with full taxes and for
all the cash needed, deposits included.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
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
Which wishes fit your limits and are worth the most, with proof
Usage: quoin fit [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --monthly TEXT REQUIRED     your limit for the monthly payment, in dollars
  --cash TEXT REQUIRED        your limit for cash needed, deposits included, in dollars
  --scenario TEXT             one loan, by its name in the inquiry; all loans if not given
  --lots                      also try every available lot that the plan fits
  --nodes TEXT                how many choices each search may look into before it stops; 2000000 if not given
  --brief                     one line for each loan, with what the payment rests on
  --progress                  show on standard error how far a long search is, even if that is not a terminal; Ctrl-C stops the search and shows the best so far

Example:
  quoin fit buyer.json --monthly 2150 --cash 24000 --lots

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0
$ quoin fit data/buyer.json --rates data/rates --monthly 8400 --cash 12000 --progress --scenario "A third down"
nothing fits · over your cash limit by $24,254.73 · the closest home $103,120.00 ·
  $6,015.72 a month · $36,254.73 cash needed ·
  A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down
These are estimates with sample rates, as of November 24, 2026.

Which wishes fit your limits
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
Your limits: $8,400.00 a month and $12,000.00 cash needed, deposits included

A third down
Nothing fits. The closest home with your selections is over your cash limit by $24,254.73.
  Proven: no home comes closer.

Price $103,120.00, $6,015.72 a month, $36,254.73 cash needed; $34,942.73 cash to close
  A short loan: interest rate 6.000%, 1.000 points, APR 7.739%, loan term 1 year, down payment
  $35,000.00 (33.94%), LTV 66.06%, 60-day rate lock

A wish is worth its weight. If it has no weight, its place by rank decides: the last of your wishes
is worth 1, the one before it 2, and so on up to the first. What a wish left out would add is the
difference between two whole quotes. Your limits are for the monthly payment with full taxes and for
all the cash needed, deposits included.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.

For the sales agent: you may explain prices, and how programs work in general. Presenting particular
loan terms for gain can require a license of your own (12 CFR 1008.103). An advertised payment calls
for further disclosures (12 CFR 1026.24).
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
