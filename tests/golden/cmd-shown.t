# The furnished model against what the plan includes and what this buyer has.
$ quoin shown data/buyer.json --rates data/rates
What the furnished model shows
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
the model is a Cabin, elevation Plain
lines with + come with your plan

                                                            for you               as shown

  Outside
    Walk-out door                                           not to be had
        only on lots graded walk-out

  Inside
    + Pine floor
    Floor: Oak, 480 sq ft                                   yours                $2,040.00
    Wood stove                                              extra                $2,600.00
    Wall color: Sand                                        choice at no cost
    Shelves, 4 of them                                      yours in part          $240.00
    The armchair                                            not for sale
                                                            -----------------  -----------
  everything shown that your plan and lot can have                               $4,880.00
  of that, not in your home                                                      $2,660.00

Prices are those of the price book on your plan. 'quoin adds' says what each one is a month.
= 0
