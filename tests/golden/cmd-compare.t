# The loans side by side, with the catch in each and no verdict.
$ quoin compare data/buyer.json --rates data/rates
Loans side by side on one home
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
contract price $103,120.00

The month
                            Ten percent      A third
                                   down         down
  principal and interest      $7,998.32    $5,862.85
  mortgage insurance             $46.40        $0.00
  property tax                  $103.12      $103.12
  homeowner's insurance          $24.75       $24.75
  association dues               $25.00       $25.00
                            -----------  -----------
  a month, settled            $8,197.59    $6,015.72

  note rate                     6.250 %      6.000 %
  APR                           6.422 %      7.739 %
  points                          0.000        1.000
  term                           1 year       1 year
  rate lock                     60 days      60 days
  down payment               $10,312.00   $35,000.00
  down, of the price            10.00 %      33.94 %
  LTV                           90.00 %      66.06 %

The loan
                            Ten percent      A third
                                   down         down
  contract price            $103,120.00  $103,120.00
  down payment               $10,312.00   $35,000.00
  base loan                  $92,808.00   $68,120.00
  loan                       $92,808.00   $68,120.00
  mortgage insurance             $46.40         none
  insurance, a year              0.60 %         none
  last insured payment           4/2027         none
  ... if asked at 80 %           4/2027            -

Cash
                            Ten percent      A third
                                   down         down
  down payment               $10,312.00   $35,000.00
  points (credit if minus)        $0.00      $681.20
  closing costs                 $900.00      $900.00
  prepaid interest              $273.87      $192.95
  prepaid bills                 $296.99      $296.99
  escrow, first deposit         $383.59      $383.59
  credits                    -$1,200.00   -$1,200.00
                            -----------  -----------
  cash needed                $10,966.45   $36,254.73
  less deposits              -$1,312.00   -$1,312.00
  left to bring               $9,654.45   $34,942.73

The years
                            Ten percent      A third
                                   down         down
  paid in five years        $108,873.53  $108,443.32
  balance after five              $0.00        $0.00
  balance after ten               $0.00        $0.00
  interest, whole loan        $3,171.84    $2,234.15
  paid, whole loan          $108,873.53  $108,443.32
  payments                           12           12

When points pay back
  A third down: points take 6.250 % to 6.000 %, $673.04 more cash for $7.83 less a month; they
    never pay for themselves

Which has cost less, when: cash, payments and insurance so far and the balance owed
  Ten percent down against A third down: Ten percent down costs less through payment 4; A third
    down costs less from payment 5 on

The catch in each
  A short loan: It is invented, for transcripts only.

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
