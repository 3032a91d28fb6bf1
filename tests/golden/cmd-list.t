# What a price book holds.
$ quoin list plans data/book.json
Two Lots, Nobody: price book 1, in effect from November 1, 2026 through December 31, 2026

                                                                           elevation
  plan   name   style  sq ft  bedrooms  bathrooms   base price  elevation      price
  cabin  Cabin  ranch    600         1          1  $100,000.00  plain          $0.00
= 0
$ quoin list lots data/book.json
Two Lots, Nobody: price book 1, in effect from November 1, 2026 through December 31, 2026

  lot  status       premium  grade     plans  flood zone  note
  1    available      $0.00  level     all    no
  2    available  $5,000.00  walk-out  all    no
  3    sold           $0.00  level     all    no
= 0
$ quoin list options data/book.json
Two Lots, Nobody: price book 1, in effect from November 1, 2026 through December 31, 2026

  option      area     kind            name                price  unit   decide by
  floor:pine  inside   choice          Floor: Pine         $0.00  sq ft
  floor:oak   inside   choice          Floor: Oak          $4.25  sq ft
  stove       inside   upgrade         Wood stove      $2,600.00  each
  flue        inside   upgrade         Insulated flue    $900.00  each   frame
  heater      inside   upgrade         Gas heater      $1,800.00  each
  shelves     inside   upgrade         Shelves            $60.00  each
  walk-out    outside  upgrade         Walk-out door   $3,200.00  each   permit
  paint       inside   no-cost choice  Wall color                 each
  lamps       inside   allowance       Lamps             $300.00  each
  warm        inside   package         Warm package    $3,100.00  each
= 0
$ quoin list options data/book.json --csv
option,area,kind,name,price,unit,cutoff
floor:pine,inside,choice,Floor: Pine,0.00,sq ft,
floor:oak,inside,choice,Floor: Oak,4.25,sq ft,
stove,inside,upgrade,Wood stove,2600.00,each,
flue,inside,upgrade,Insulated flue,900.00,each,frame
heater,inside,upgrade,Gas heater,1800.00,each,
shelves,inside,upgrade,Shelves,60.00,each,
walk-out,outside,upgrade,Walk-out door,3200.00,each,permit
paint,inside,no-cost choice,Wall color,,each,
lamps,inside,allowance,Lamps,300.00,each,
warm,inside,package,Warm package,3100.00,each,
= 0
$ quoin list walls data/book.json
2> quoin list: WHAT: walls not in {plans,lots,options}
2>   'quoin list --help' explains it with an example
= 2
