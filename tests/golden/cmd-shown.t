# The furnished model against what the plan includes and what this buyer has.
$ quoin shown data/buyer.json --rates data/rates
What you see in the model home
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
The model home is the Cabin plan, elevation Plain.
Lines marked + come with your plan.

                                                            for you                 as shown

  Outside
    Walk-out door                                           not available
        only on walk-out lots

  Inside
    + Pine floor
    Floor: Oak, 480 sq ft                                   yours                  $2,040.00
    Wood stove                                              costs extra            $2,600.00
    Wall color: Sand                                        no-cost choice
    Shelves, 4 of them                                      yours in part            $240.00
    The armchair                                            decor, not for sale
                                                            -------------------  -----------
  everything shown that is available to you                                        $4,880.00
  of that, not in your home                                                        $2,660.00

Prices come from the price book, for your plan. 'quoin adds' shows what each option adds a month.
= 0
