# How much home on figures alone: no price book, no inquiry file.
$ quoin afford --income 8400 --debts 450 --cash 60000 --rate 6.25 --as-of 2026-11-24
How much home
as of 24 November 2026; closing 23 January 2027
Assumed: property tax of 1.2 % of the price a year; the tax due in two halves, on 31 May and 30
  November; homeowner's insurance of 0.4 % of the price a year; closing costs of 2 % of the loan,
  none of them in the APR; mortgage insurance by the factors of Sample lender (sample data), where
  the program has it; a credit score of 740.

Conventional fixed, 5 % down
  up to $435,762.00: $3,330.00 a month, $34,491.88 of cash needed
    Conventional fixed: 6.250 % note rate, 0.000 points, APR 6.691 %, 30 years, $21,789.00 down
    (5.00 %), LTV 95.00 %, 60-day lock
                                                takes        most        left
    housing and debts over 45 % of income   $3,780.00   $3,780.00       $0.00
    the cash there is                      $34,491.88  $60,000.00  $25,508.12
    What binds: housing and debts over 45 % of income. Without it, up to $758,040.00, where the
    cash there is binds.
    A home of $440,762.00 would take $84.92 more income a month, or $38.21 less in debts.

Conventional fixed, 20 % down
  up to $265,581.00: $1,662.29 a month, $59,999.98 of cash needed
    Conventional fixed: 6.250 % note rate, 0.000 points, APR 6.25 %, 30 years, $53,117.00 down
    (20.00 %), LTV 80.00 %, 60-day lock
                                                takes        most       left
    housing and debts over 45 % of income   $2,112.29   $3,780.00  $1,667.71
    the cash there is                      $59,999.98  $60,000.00      $0.02
    What binds: the cash there is. Without it, up to $532,029.00, where housing and debts over
    45 % of income binds.
    A home of $270,581.00 would take $1,129.52 more cash.

FHA-insured fixed, 3.5 % down
  up to $333,039.00: $2,604.00 a month, $21,594.59 of cash needed
    FHA-insured fixed: 6.250 % note rate, 0.000 points, APR 6.962 %, 30 years, $11,657.00 down
    (3.50 %), LTV 96.50 %, 60-day lock
                                                takes        most        left
    housing over 31 % of income             $2,604.00   $2,604.00       $0.00
    housing and debts over 43 % of income   $3,054.00   $3,612.00     $558.00
    the cash there is                      $21,594.59  $60,000.00  $38,405.41
    What binds: housing over 31 % of income. Without it, up to $404,404.00, where housing and
    debts over 43 % of income binds.
    A home of $338,039.00 would take $126.13 more income a month.

Ratios are guides of the published rules, not an approval: a lender looks at credit, income and
assets, and may go above them or stay below. What a buyer can borrow and what suits them are two
questions. A temporary buydown lowers the first payments and lets nothing more: loans are held to
the note rate.

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.
= 0
$ quoin afford --income 8400 --debts 450 --cash 60000 --rate 6.25 --years 15 --down 10 --property-tax 1.05 --insurance 0.35 --dues 60 --closing-costs 2.5 --score 701 --program va --program usda --taxes 1700 --persons 4 --region south --square-feet 1900 --as-of 2026-11-24
How much home
as of 24 November 2026; closing 23 January 2027
Assumed: the tax due in two halves, on 31 May and 30 November; mortgage insurance by the factors
  of Sample lender (sample data), where the program has it.

VA-guaranteed fixed, 10 % down
  up to $455,269.00: $4,148.28 a month, $59,999.98 of cash needed
    VA-guaranteed fixed: 6.250 % note rate, 0.000 points, APR 6.446 %, 15 years, $45,527.00 down
    (10.00 %), LTV 90.00 %, 60-day lock
                                                     takes        most     left
    housing and debts by 120 % residual income   $4,598.28   $5,230.40  $632.12
    residual income for living                   $4,414.28   $5,247.00  $832.72
    the cash there is                           $59,999.98  $60,000.00    $0.02
    What binds: the cash there is. Without it, up to $525,662.00, where housing and debts by 120 %
    residual income binds.
    A ratio is rounded to a whole percent before it is held to the limit.
    Residual income: $1,003.00 must be left for living after taxes, debts, the month and $266.00
    for maintenance and utilities (1,900 sq ft).
    Housing and debts are over 41 % of the income. That is let pass here because at least 120 % of
    the residual income is left; the lender has to justify it in the file, and decides.
    A home of $460,269.00 would take $658.28 more cash.

USDA-guaranteed fixed, 10 % down
  No price fits: at $100,000.00 the program has no loans of this term.

Ratios are guides of the published rules, not an approval: a lender looks at credit, income and
assets, and may go above them or stay below. What a buyer can borrow and what suits them are two
questions. A temporary buydown lowers the first payments and lets nothing more: loans are held to
the note rate.

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.
= 0
$ quoin afford --income 0 --rate 6.25 --program conventional --as-of 2026-11-24
How much home
as of 24 November 2026; closing 23 January 2027
Assumed: property tax of 1.2 % of the price a year; the tax due in two halves, on 31 May and 30
  November; homeowner's insurance of 0.4 % of the price a year; closing costs of 2 % of the loan,
  none of them in the APR; mortgage insurance by the factors of Sample lender (sample data), where
  the program has it; as much cash as it takes (--cash not given); a credit score of 740.

Conventional fixed, 5 % down
  No price fits. The nearest, at $100,000.00, misses by what is below zero:
                                             takes   most      left
    housing and debts over 45 % of income  $764.18  $0.00  -$764.18

Conventional fixed, 20 % down
  No price fits. The nearest, at $100,000.00, misses by what is below zero:
                                             takes   most      left
    housing and debts over 45 % of income  $625.90  $0.00  -$625.90

Ratios are guides of the published rules, not an approval: a lender looks at credit, income and
assets, and may go above them or stay below. What a buyer can borrow and what suits them are two
questions. A temporary buydown lowers the first payments and lets nothing more: loans are held to
the note rate.

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.
= 0
$ quoin afford --income 1000 --debts 1200 --cash 9000 --rate 6.25 --program fha --as-of 2026-11-24
How much home
as of 24 November 2026; closing 23 January 2027
Assumed: property tax of 1.2 % of the price a year; the tax due in two halves, on 31 May and 30
  November; homeowner's insurance of 0.4 % of the price a year; closing costs of 2 % of the loan,
  none of them in the APR; mortgage insurance by the factors of Sample lender (sample data), where
  the program has it; a credit score of 740.

FHA-insured fixed, 3.5 % down
  No price fits. The nearest, at $100,000.00, misses by what is below zero:
                                               takes       most        left
    housing over 31 % of income              $781.88    $310.00    -$471.88
    housing and debts over 43 % of income  $1,981.88    $430.00  -$1,551.88
    the cash there is                      $6,484.63  $9,000.00   $2,515.37

Ratios are guides of the published rules, not an approval: a lender looks at credit, income and
assets, and may go above them or stay below. What a buyer can borrow and what suits them are two
questions. A temporary buydown lowers the first payments and lets nothing more: loans are held to
the note rate.

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.
= 0
$ quoin afford --income 8400 --rate 6.25 --down 2 --program fha --as-of 2026-11-24
How much home
as of 24 November 2026; closing 23 January 2027
Assumed: property tax of 1.2 % of the price a year; the tax due in two halves, on 31 May and 30
  November; homeowner's insurance of 0.4 % of the price a year; closing costs of 2 % of the loan,
  none of them in the APR; mortgage insurance by the factors of Sample lender (sample data), where
  the program has it; as much cash as it takes (--cash not given); a credit score of 740.

FHA-insured fixed, 2 % down
  No price fits: at $100,000.00 base loan $98,000.00 is over the program's most, $96,500.00:
  $1,500.00 more down is needed.

Ratios are guides of the published rules, not an approval: a lender looks at credit, income and
assets, and may go above them or stay below. What a buyer can borrow and what suits them are two
questions. A temporary buydown lowers the first payments and lets nothing more: loans are held to
the note rate.

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.
= 0
$ quoin afford --income -5 --rate 6
2> quoin: found --income -5
2>   expected gross dollars a month, such as 8400
2>   [payment-input]
= 1
$ quoin afford --income 8400 --rate 0
2> quoin: found --rate 0
2>   expected a yearly rate in percent, above 0 to 25, such as 6.25
2>   [payment-input]
= 1
$ quoin afford --income 8400 --rate 6 --program fah
2> quoin: found --program fah
2>   expected one of conventional, fha, usda, va
2>   [payment-input]
= 1
$ quoin afford --income 8400 --rate 6 --region north
2> quoin: found --region north
2>   expected northeast, midwest, south or west
2>   [payment-input]
= 1
$ quoin afford --income 8400 --rate 6 --years 0
2> quoin: found --years 0
2>   expected a whole number from 1 to 40
2>   [payment-input]
= 1
$ quoin afford --income 8400 --rate 6 --down 101
2> quoin: found --down 101
2>   expected a percent from 0 to 99
2>   [payment-input]
= 1
$ quoin afford --income 8400 --rate 6 --as-of 24.11.2026
2> quoin: found --as-of 24.11.2026
2>   expected a day, year first, such as 2026-11-24
2>   [payment-input]
= 1
$ quoin afford
2> quoin afford: INQUIRY, or --income and --rate, is required
2>   'quoin afford --help' explains it with an example
= 2
$ quoin afford buyer.json --income 8400 --rate 6
2> quoin afford: INQUIRY excludes figures in place of one, such as --income
2>   'quoin afford --help' explains it with an example
= 2

# The limit of 2026 is used beyond its year, and that is said; before the first limit nothing is.
$ quoin afford --income 20000 --cash 300000 --rate 6.0 --program fha --as-of 2027-01-02
How much home
as of 2 January 2027; closing 3 March 2027
Assumed: property tax of 1.2 % of the price a year; the tax due in two halves, on 31 May and 30
  November; homeowner's insurance of 0.4 % of the price a year; closing costs of 2 % of the loan,
  none of them in the APR; mortgage insurance by the factors of Sample lender (sample data), where
  the program has it; a credit score of 740.

FHA-insured fixed, 3.5 % down
  up to $560,920.00: $4,296.68 a month, $39,667.70 of cash needed
    FHA-insured fixed: 6.000 % note rate, 0.000 points, APR 6.706 %, 30 years, $19,633.00 down
    (3.50 %), LTV 96.50 %, 60-day lock
                                                takes         most         left
    housing over 31 % of income             $4,296.68    $6,200.00    $1,903.32
    housing and debts over 43 % of income   $4,296.68    $8,600.00    $4,303.32
    the cash there is                      $39,667.70  $300,000.00  $260,332.30
    What binds: the program's own limit (base loan $541,288.00 is over the area's limit,
    $541,287.00: $1.00 more down is needed). Without it, up to $1,486,443.00.
    A home of $565,920.00 is not to be had so: base loan $546,112.00 is over the area's limit,
    $541,287.00: $4,825.00 more down is needed.

Ratios are guides of the published rules, not an approval: a lender looks at credit, income and
assets, and may go above them or stay below. What a buyer can borrow and what suits them are two
questions. A temporary buydown lowers the first payments and lets nothing more: loans are held to
the note rate.

An estimate as of 2 January 2027: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.

FHA-insured fixed: the program's loan limit after 31 December 2026 is not in the data; the one in
force until then is used.
= 0
$ quoin afford --income 20000 --cash 300000 --rate 6.0 --program fha --as-of 2024-12-15
How much home
as of 15 December 2024; closing 13 February 2025
Assumed: property tax of 1.2 % of the price a year; the tax due in two halves, on 31 May and 30
  November; homeowner's insurance of 0.4 % of the price a year; closing costs of 2 % of the loan,
  none of them in the APR; a credit score of 740.

FHA-insured fixed, 3.5 % down
  No price fits: at $100,000.00 the program's loan limit before 1 January 2025 is not in the data.

Ratios are guides of the published rules, not an approval: a lender looks at credit, income and
assets, and may go above them or stay below. What a buyer can borrow and what suits them are two
questions. A temporary buydown lowers the first payments and lets nothing more: loans are held to
the note rate.

An estimate as of 15 December 2024: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.
= 0
