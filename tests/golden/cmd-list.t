# What a price book holds.
$ quoin list plans data/book.json
Two Lots, Nobody: price book 1, in force 2026-11-01 to 2026-12-31

                                                                           elevation
  plan   name   style  sq ft  bedrooms  bathrooms   base price  elevation      price
  cabin  Cabin  ranch    600         1          1  $100,000.00  plain          $0.00
= 0
$ quoin list lots data/book.json
Two Lots, Nobody: price book 1, in force 2026-11-01 to 2026-12-31

  lot  status    premium  grade     plans  flood zone  note
  1    free        $0.00  level     all    no
  2    free    $5,000.00  walk-out  all    no
  3    sold        $0.00  level     all    no
= 0
$ quoin list options data/book.json
Two Lots, Nobody: price book 1, in force 2026-11-01 to 2026-12-31

  option      area     kind               name                price  unit   cutoff
  floor:pine  inside   level              Floor: Pine         $0.00  sq ft
  floor:oak   inside   level              Floor: Oak          $4.25  sq ft
  stove       inside   upgrade            Wood stove      $2,600.00  each
  flue        inside   upgrade            Insulated flue    $900.00  each   frame
  heater      inside   upgrade            Gas heater      $1,800.00  each
  shelves     inside   upgrade            Shelves            $60.00  each
  walk-out    outside  upgrade            Walk-out door   $3,200.00  each   permit
  paint       inside   choice at no cost  Wall color                 each
  lamps       inside   allowance          Lamps             $300.00  each
  warm        inside   package            Warm package    $3,100.00  each
= 0
$ quoin list options data/book.json --csv
option,area,kind,name,price,unit,cutoff
floor:pine,inside,level,Floor: Pine,0.00,sq ft,
floor:oak,inside,level,Floor: Oak,4.25,sq ft,
stove,inside,upgrade,Wood stove,2600.00,each,
flue,inside,upgrade,Insulated flue,900.00,each,frame
heater,inside,upgrade,Gas heater,1800.00,each,
shelves,inside,upgrade,Shelves,60.00,each,
walk-out,outside,upgrade,Walk-out door,3200.00,each,permit
paint,inside,choice at no cost,Wall color,,each,
lamps,inside,allowance,Lamps,300.00,each,
warm,inside,package,Warm package,3100.00,each,
= 0
$ quoin list walls data/book.json
2> quoin list: WHAT: walls not in {plans,lots,options}
2>   'quoin list --help' explains it with an example
= 2
