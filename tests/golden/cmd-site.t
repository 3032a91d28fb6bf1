# Where the home can stand, and what another lot or plan would change.
$ quoin site data/buyer.json --rates data/rates
The lots and the plans
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027

  lot            ground     plans                           for you                     premium
  1      free    level      every plan                      yours                         $0.00
  2      free    walk-out   every plan                      can be had                $5,000.00
  3      sold    level      every plan                                                    $0.00

  plan                                                            for you                  base price
  Cabin         ranch       600 sq ft, 1 bed, 1 bath              yours                   $100,000.00

Widths and setbacks are the price book's; the survey and the permit set decide what may be built
where.
= 0
