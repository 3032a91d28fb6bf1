# The floor plan as chosen: each room with its size, and what is there by an option. A price book
# without a drawing says so.
$ quoin rooms ../../examples/oxbarrow-meadow/buyers/six-programs.json
Floor plan
Oxbarrow Meadow by Tarnwick Builders
Teasel plan (ranch, 1,888 sq ft), elevation Orchard, lot 7, for Buyer 1
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 14, 2027
Prepared by Sales desk, Oxbarrow Meadow

Basement
  room                      size                    sq ft
  Stairs                    3' 1" x 17' 4"             67
  Unfinished basement       up to 53' 0" x 25' 0"   1,121
  Furnace room              31' 0" x 21' 1"           629
  Storage room              8' 4" x 6' 10"             68

Main floor: 1,884 sq ft to live in
  room                      size                     sq ft
  Entry                     up to 5' 4" x 10' 4"        56
  Coat closet               2' 4" x 3' 4"               11
  Stairs                    3' 4" x 13' 7"              53
  Study                     10' 1" x 10' 4"            116
  Hall                      up to 14' 10" x 14' 7"     111
  Great room                16' 1" x 22' 4"            364
  Dining room               15' 4" x 9' 7"             164
  Kitchen                   14' 4" x 9' 10"            154
  Pantry                    6' 7" x 3' 4"               26
  Laundry and mudroom       14' 4" x 5' 1"              83
  Half bath                 5' 10" x 3' 7"              25
  Hall bath                 5' 10" x 7' 1"              47
  Linen closet              2' 4" x 2' 4"                8
  Owner's bedroom           11' 10" x 14' 4"           184
  Walk-in closet            9' 7" x 5' 10"              64
  Owner's bath              9' 7" x 10' 10"            118
  Bedroom 2                 12' 4" x 9' 10"            130
  Closet                    4' 7" x 1' 10"              11
  Bedroom 3                 up to 12' 4" x 13' 4"      150
  Closet                    4' 1" x 1' 10"              11
  Garage                    21' 0" x 21' 4"            484
  Front porch               19' 0" x 7' 0"             133
  Deck                      16' 0" x 12' 0"            192  with Rear deck, 12 x 16 ft

Sizes are from wall to wall as drawn, to the inch; square feet are to the middle of inner walls and
the outside of outer ones. The construction drawings decide.
= 0
$ quoin rooms ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --language es
Distribución de la casa
Oxbarrow Meadow, de Tarnwick Builders
Plano Sorrel (de un piso, 1,612 pies cuadrados), fachada Field, lote 4, para Buyer 2
Al 24 de noviembre de 2026; lista de precios 2026-11, vigente hasta el 31 de enero de 2027; cierre
el 20 de mayo de 2027
Preparado por Sales desk, Oxbarrow Meadow

Sótano
  espacio                        medidas                  pies²
  Escalera                       12' 7" x 3' 4"              52
  Sótano sin terminar            hasta 49' 0" x 22' 9"      982
  Cuarto del calefactor          hasta 27' 0" x 19' 10"     518
  Bodega con tuberías para baño  7' 1" x 7' 1"               56  con Tuberías para un baño futuro

Planta principal: 1,608 pies² habitables
  espacio                   medidas                  pies²
  Entrada                   hasta 8' 1" x 18' 4"       105
  Clóset de abrigos         2' 1" x 3' 4"               10
  Escalera                  12' 7" x 3' 7"              52
  Pasillo                   hasta 10' 4" x 23' 10"     103
  Sala principal            15' 10" x 19' 1"           321
  Comedor                   8' 10" x 11' 10"           116
  Cocina                    hasta 16' 10" x 15' 1"     160
  Despensa                  8' 1" x 3' 7"               34
  Lavandería y recibidor    8' 4" x 7' 7"               72
  Baño del pasillo          7' 1" x 7' 4"               58
  Dormitorio principal      12' 4" x 11' 10"           163
  Vestidor                  6' 1" x 7' 4"               52
  Baño principal            12' 4" x 7' 0"              96
  Dormitorio 2              hasta 12' 4" x 9' 1"       106
  Clóset                    7' 4" x 1' 10"              18
  Dormitorio 3              12' 4" x 8' 8"             122
  Clóset                    2' 10" x 5' 10"             21
  Garaje                    21' 0" x 21' 4"            484
  Entrada techada           6' 0" x 4' 0"               24

Las medidas van de pared a pared según el dibujo, a la pulgada; los pies² llegan al centro de las
paredes interiores y al exterior de las exteriores. Deciden los planos de construcción.
= 0
$ quoin rooms data/buyer.json --rates data/rates
Floor plan
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027

The price book has no drawing of this plan.
= 0
$ quoin rooms --rates data/rates data/buyer.json --json | digest
{
  "question": "rooms"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none, invented", "sample_rates": true
  }
  "plan": "cabin", "floors": [], "notes": [], "cautions": []
}
30 lines #2b7ac8cb
= 0
