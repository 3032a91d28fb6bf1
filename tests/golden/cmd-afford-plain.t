# How much home on figures alone: no price book, no inquiry file.
$ quoin afford --income 8400 --debts 450 --cash 60000 --rate 6.25 --as-of 2026-11-24
up to $435,762.00 · $3,330.00 a month · $34,491.88 cash needed ·
  Conventional, fixed rate, 5% down: 6.250% (6.691% APR), 30 years, $21,789.00 down
up to $265,581.00 · $1,662.29 a month · $59,999.98 cash needed ·
  Conventional, fixed rate, 20% down: 6.250% (6.25% APR), 30 years, $53,117.00 down
up to $333,039.00 · $2,604.00 a month · $21,594.59 cash needed ·
  FHA, fixed rate, 3.5% down: 6.250% (6.962% APR), 30 years, $11,657.00 down
These are estimates as of November 24, 2026.

Highest price that fits
As of November 24, 2026; closing January 23, 2027
Assumed: property taxes of 1.2% of the price a year; property taxes due in two halves, on May 31
  and November 30; homeowner's insurance of 0.4% of the price a year; closing costs of 2% of the
  loan, none of them in the APR; mortgage insurance at the rates of Sample lender (sample
  figures), where the program has it; a credit score of 740.

Conventional, fixed rate, 5% down
  up to $435,762.00: $3,330.00 a month, $34,491.88 cash needed
    Conventional, fixed rate: interest rate 6.250%, 0.000 points, APR 6.691%, loan term 30 years,
    down payment $21,789.00 (5.00%), LTV 95.00%, 60-day rate lock
                                     needed       limit        left
    debt-to-income ratio of 45%   $3,780.00   $3,780.00       $0.00
    your cash                    $34,491.88  $60,000.00  $25,508.12
    What limits the price: debt-to-income ratio of 45%. Without that, you could go up to
    $758,040.00 (next limit: your cash).
    For a home at $440,762.00, you would need $84.92 more income a month or $38.21 less in monthly
    debts.

Conventional, fixed rate, 20% down
  up to $265,581.00: $1,662.29 a month, $59,999.98 cash needed
    Conventional, fixed rate: interest rate 6.250%, 0.000 points, APR 6.25%, loan term 30 years,
    down payment $53,117.00 (20.00%), LTV 80.00%, 60-day rate lock
                                     needed       limit       left
    debt-to-income ratio of 45%   $2,112.29   $3,780.00  $1,667.71
    your cash                    $59,999.98  $60,000.00      $0.02
    What limits the price: your cash. Without that, you could go up to $532,029.00 (next limit:
    debt-to-income ratio of 45%).
    For a home at $270,581.00, you would need $1,129.52 more cash.

FHA, fixed rate, 3.5% down
  up to $333,039.00: $2,604.00 a month, $21,594.59 cash needed
    FHA, fixed rate: interest rate 6.250%, 0.000 points, APR 6.962%, loan term 30 years, down
    payment $11,657.00 (3.50%), LTV 96.50%, 60-day rate lock
                                     needed       limit        left
    housing ratio of 31%          $2,604.00   $2,604.00       $0.00
    debt-to-income ratio of 43%   $3,054.00   $3,612.00     $558.00
    your cash                    $21,594.59  $60,000.00  $38,405.41
    What limits the price: housing ratio of 31%. Without that, you could go up to $404,404.00
    (next limit: debt-to-income ratio of 43%).
    For a home at $338,039.00, you would need $126.13 more income a month.

Ratios are guides from the published rules, not an approval. The housing ratio is the monthly
payment divided by gross monthly income. The debt-to-income ratio (DTI) adds monthly debts to that
payment. A lender looks at credit, income and assets, and may go above these ratios or stay below
them. What you can borrow and what suits you are two questions. A temporary buydown lowers the first
payments, but it does not raise the price that fits: loans are held to the note rate.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.
= 0
$ quoin afford --income 8400 --debts 450 --cash 60000 --rate 6.25 --years 15 --down 10 --property-tax 1.05 --insurance 0.35 --dues 60 --closing-costs 2.5 --score 701 --program va --program usda --taxes 1700 --persons 4 --region south --square-feet 1900 --as-of 2026-11-24
up to $455,269.00 · $4,148.28 a month · $59,999.98 cash needed ·
  VA, fixed rate, 10% down: 6.250% (6.446% APR), 15 years, $45,527.00 down
USDA, fixed rate, 10% down: no price works
These are estimates as of November 24, 2026.

Highest price that fits
As of November 24, 2026; closing January 23, 2027
Assumed: property taxes due in two halves, on May 31 and November 30; mortgage insurance at the
  rates of Sample lender (sample figures), where the program has it.

VA, fixed rate, 10% down
  up to $455,269.00: $4,148.28 a month, $59,999.98 cash needed
    VA, fixed rate: interest rate 6.250%, 0.000 points, APR 6.446%, loan term 15 years, down
    payment $45,527.00 (10.00%), LTV 90.00%, 60-day rate lock
                                       needed       limit     left
    DTI with 120% residual income   $4,598.28   $5,230.40  $632.12
    residual income                 $4,414.28   $5,247.00  $832.72
    your cash                      $59,999.98  $60,000.00    $0.02
    What limits the price: your cash. Without that, you could go up to $525,662.00 (next limit:
    DTI with 120% residual income).
    Each ratio is rounded to a whole percent before it is compared with the limit.
    Residual income: $1,003.00 must be left to live on after taxes, debts, the monthly payment and
    $266.00 for maintenance and utilities (1,900 sq ft).
    The debt-to-income ratio is over 41%. It passes here because you would have at least 120% of
    the residual income in the program's guide. The lender has to justify that in the file, and
    decides.
    For a home at $460,269.00, you would need $658.28 more cash.

USDA, fixed rate, 10% down
  No price works for this loan. At $100,000.00: the program has no loans with this term.

Ratios are guides from the published rules, not an approval. The housing ratio is the monthly
payment divided by gross monthly income. The debt-to-income ratio (DTI) adds monthly debts to that
payment. A lender looks at credit, income and assets, and may go above these ratios or stay below
them. What you can borrow and what suits you are two questions. A temporary buydown lowers the first
payments, but it does not raise the price that fits: loans are held to the note rate.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.
= 0
$ quoin afford --income 0 --rate 6.25 --program conventional --as-of 2026-11-24
Conventional, fixed rate, 5% down: no price works
Conventional, fixed rate, 20% down: no price works

Highest price that fits
As of November 24, 2026; closing January 23, 2027
Assumed: property taxes of 1.2% of the price a year; property taxes due in two halves, on May 31
  and November 30; homeowner's insurance of 0.4% of the price a year; closing costs of 2% of the
  loan, none of them in the APR; mortgage insurance at the rates of Sample lender (sample
  figures), where the program has it; as much cash as the home needs (--cash not given); a credit
  score of 740.

Conventional, fixed rate, 5% down
  No price works for this loan. The lowest price tried is $100,000.00:
                                  needed  limit  short by
    debt-to-income ratio of 45%  $764.18  $0.00   $764.18

Conventional, fixed rate, 20% down
  No price works for this loan. The lowest price tried is $100,000.00:
                                  needed  limit  short by
    debt-to-income ratio of 45%  $625.90  $0.00   $625.90

Ratios are guides from the published rules, not an approval. The housing ratio is the monthly
payment divided by gross monthly income. The debt-to-income ratio (DTI) adds monthly debts to that
payment. A lender looks at credit, income and assets, and may go above these ratios or stay below
them. What you can borrow and what suits you are two questions. A temporary buydown lowers the first
payments, but it does not raise the price that fits: loans are held to the note rate.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.
= 0
$ quoin afford --income 1000 --debts 1200 --cash 9000 --rate 6.25 --program fha --as-of 2026-11-24
FHA, fixed rate, 3.5% down: no price works

Highest price that fits
As of November 24, 2026; closing January 23, 2027
Assumed: property taxes of 1.2% of the price a year; property taxes due in two halves, on May 31
  and November 30; homeowner's insurance of 0.4% of the price a year; closing costs of 2% of the
  loan, none of them in the APR; mortgage insurance at the rates of Sample lender (sample
  figures), where the program has it; a credit score of 740.

FHA, fixed rate, 3.5% down
  No price works for this loan. The lowest price tried is $100,000.00:
                                    needed      limit   short by
    housing ratio of 31%           $781.88    $310.00    $471.88
    debt-to-income ratio of 43%  $1,981.88    $430.00  $1,551.88
    your cash                    $6,484.63  $9,000.00

Ratios are guides from the published rules, not an approval. The housing ratio is the monthly
payment divided by gross monthly income. The debt-to-income ratio (DTI) adds monthly debts to that
payment. A lender looks at credit, income and assets, and may go above these ratios or stay below
them. What you can borrow and what suits you are two questions. A temporary buydown lowers the first
payments, but it does not raise the price that fits: loans are held to the note rate.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.
= 0
$ quoin afford --income 8400 --rate 6.25 --down 2 --program fha --as-of 2026-11-24
FHA, fixed rate, 2% down: no price works

Highest price that fits
As of November 24, 2026; closing January 23, 2027
Assumed: property taxes of 1.2% of the price a year; property taxes due in two halves, on May 31
  and November 30; homeowner's insurance of 0.4% of the price a year; closing costs of 2% of the
  loan, none of them in the APR; mortgage insurance at the rates of Sample lender (sample
  figures), where the program has it; as much cash as the home needs (--cash not given); a credit
  score of 740.

FHA, fixed rate, 2% down
  No price works for this loan. At $100,000.00: the base loan amount, $98,000.00, is over the
  program's maximum of $96,500.00; it takes $1,500.00 more down.

Ratios are guides from the published rules, not an approval. The housing ratio is the monthly
payment divided by gross monthly income. The debt-to-income ratio (DTI) adds monthly debts to that
payment. A lender looks at credit, income and assets, and may go above these ratios or stay below
them. What you can borrow and what suits you are two questions. A temporary buydown lowers the first
payments, but it does not raise the price that fits: loans are held to the note rate.

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.
= 0
$ quoin afford --income -5 --rate 6
2> quoin: found --income -5
2>   expected dollars a month before taxes, such as 8400
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
2>   expected a date, year first, such as 2026-11-24
2>   [payment-input]
= 1
$ quoin afford
2> quoin afford: INQUIRY is required, or else --income and --rate
2>   'quoin afford --help' explains it with an example
= 2
$ quoin afford buyer.json --income 8400 --rate 6
2> quoin afford: use INQUIRY or figures such as --income, not both
2>   'quoin afford --help' explains it with an example
= 2

# The limit of 2026 is used beyond its year, and that is said; before the first limit nothing is.
$ quoin afford --income 20000 --cash 300000 --rate 6.0 --program fha --as-of 2027-01-02
up to $560,920.00 · $4,296.68 a month · $39,667.70 cash needed ·
  FHA, fixed rate, 3.5% down: 6.000% (6.706% APR), 30 years, $19,633.00 down
These are estimates as of January 2, 2027.

Highest price that fits
As of January 2, 2027; closing March 3, 2027
Assumed: property taxes of 1.2% of the price a year; property taxes due in two halves, on May 31
  and November 30; homeowner's insurance of 0.4% of the price a year; closing costs of 2% of the
  loan, none of them in the APR; mortgage insurance at the rates of Sample lender (sample
  figures), where the program has it; a credit score of 740.

FHA, fixed rate, 3.5% down
  up to $560,920.00: $4,296.68 a month, $39,667.70 cash needed
    FHA, fixed rate: interest rate 6.000%, 0.000 points, APR 6.706%, loan term 30 years, down
    payment $19,633.00 (3.50%), LTV 96.50%, 60-day rate lock
                                     needed        limit         left
    housing ratio of 31%          $4,296.68    $6,200.00    $1,903.32
    debt-to-income ratio of 43%   $4,296.68    $8,600.00    $4,303.32
    your cash                    $39,667.70  $300,000.00  $260,332.30
    What limits the price: the loan's own limits (the base loan amount, $541,288.00, is over the
    area's limit of $541,287.00; it takes $1.00 more down). Without that, you could go up to
    $1,486,443.00.
    For a home at $565,920.00, this loan is not available: the base loan amount, $546,112.00, is
    over the area's limit of $541,287.00; it takes $4,825.00 more down.

Ratios are guides from the published rules, not an approval. The housing ratio is the monthly
payment divided by gross monthly income. The debt-to-income ratio (DTI) adds monthly debts to that
payment. A lender looks at credit, income and assets, and may go above these ratios or stay below
them. What you can borrow and what suits you are two questions. A temporary buydown lowers the first
payments, but it does not raise the price that fits: loans are held to the note rate.

This is an estimate as of January 2, 2027. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

FHA, fixed rate: the program's loan limit is known only through December 31, 2026. The last one in
effect is used here.
= 0
$ quoin afford --income 20000 --cash 300000 --rate 6.0 --program fha --as-of 2024-12-15
FHA, fixed rate, 3.5% down: no price works

Highest price that fits
As of December 15, 2024; closing February 13, 2025
Assumed: property taxes of 1.2% of the price a year; property taxes due in two halves, on May 31
  and November 30; homeowner's insurance of 0.4% of the price a year; closing costs of 2% of the
  loan, none of them in the APR; a credit score of 740.

FHA, fixed rate, 3.5% down
  No price works for this loan. At $100,000.00: the program's loan limit is known only from
  January 1, 2025 on.

Ratios are guides from the published rules, not an approval. The housing ratio is the monthly
payment divided by gross monthly income. The debt-to-income ratio (DTI) adds monthly debts to that
payment. A lender looks at credit, income and assets, and may go above these ratios or stay below
them. What you can borrow and what suits you are two questions. A temporary buydown lowers the first
payments, but it does not raise the price that fits: loans are held to the note rate.

This is an estimate as of December 15, 2024. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.
= 0
