# A plan that the price book has no drawing of.
$ quoin rooms data/buyer.json --rates data/rates
Floor plan
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027

The price book has no drawing of this plan.
= 0

# Two floors of the example, as this buyer has chosen them.
$ quoin rooms ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --rates ../../rates
Floor plan
Oxbarrow Meadow by Tarnwick Builders
Sorrel plan (ranch, 1,612 sq ft), elevation Field, lot 4, for Buyer 2
As of November 24, 2026; price book 2026-11, good through January 31, 2027; closing May 20, 2027
Prepared by Sales desk, Oxbarrow Meadow

Basement
  room                         size                     sq ft
  Stairs                       12' 7" x 3' 4"              52
  Unfinished basement          up to 49' 0" x 22' 9"      982
  Furnace room                 up to 27' 0" x 19' 10"     518
  Storage, plumbed for a bath  7' 1" x 7' 1"               56  with Rough plumbing for a bath

Main floor: 1,608 sq ft to live in
  room                      size                     sq ft
  Entry                     up to 8' 1" x 18' 4"       105
  Coat closet               2' 1" x 3' 4"               10
  Stairs                    12' 7" x 3' 7"              52
  Hall                      up to 10' 4" x 23' 10"     103
  Great room                15' 10" x 19' 1"           321
  Dining room               8' 10" x 11' 10"           116
  Kitchen                   up to 16' 10" x 15' 1"     160
  Pantry                    8' 1" x 3' 7"               34
  Laundry and mudroom       8' 4" x 7' 7"               72
  Hall bath                 7' 1" x 7' 4"               58
  Owner's bedroom           12' 4" x 11' 10"           163
  Walk-in closet            6' 1" x 7' 4"               52
  Owner's bath              12' 4" x 7' 0"              96
  Bedroom 2                 up to 12' 4" x 9' 1"       106
  Closet                    7' 4" x 1' 10"              18
  Bedroom 3                 12' 4" x 8' 8"             122
  Closet                    2' 10" x 5' 10"             21
  Garage                    21' 0" x 21' 4"            484
  Covered stoop             6' 0" x 4' 0"               24

Sizes are from wall to wall as drawn, to the inch; square feet are to the middle of inner walls and
the outside of outer ones. The construction drawings decide.
= 0

# In Spanish.
$ quoin rooms ../../examples/oxbarrow-meadow/buyers/right-under-eighty.json --rates ../../rates --language es
Distribución de la casa
Oxbarrow Meadow, de Tarnwick Builders
Plano Comfrey (de dos pisos, 2,694 pies cuadrados), fachada Quarry, lote 9, para Buyer 4
Al 24 de noviembre de 2026; lista de precios 2026-11, vigente hasta el 31 de enero de 2027; cierre
el 30 de julio de 2027
Preparado por Sales desk, Oxbarrow Meadow

Sótano
  espacio                   medidas                 pies²
  Escalera                  3' 1" x 12' 1"             47
  Sótano sin terminar       hasta 47' 0" x 33' 9"     906
  Cuarto del calefactor     14' 10" x 19' 4"          310
  Bodega                    8' 4" x 5' 10"             59

Planta principal: 1,322 pies² habitables
  espacio                   medidas                 pies²
  Entrada                   hasta 12' 10" x 5' 1"      67
  Escalera                  3' 4" x 12' 1"             47
  Estudio                   12' 1" x 10' 1"           137
  Clóset de abrigos         3' 1" x 2' 3"               9
  Baño completo             8' 7" x 5' 1"              51
  Pasillo                   hasta 22' 4" x 15' 1"     167
  Sala principal            20' 10" x 17' 10"         398
  Comedor                   12' 1" x 12' 10"          169
  Cocina                    13' 4" x 12' 10"          189
  Despensa                  5' 7" x 5' 1"              33
  Recibidor                 9' 4" x 5' 1"              55
  Garaje                    21' 4" x 21' 4"           484
  Entrada techada           8' 0" x 5' 0"              40
  Tercer espacio            9' 4" x 21' 0"            220  con Tercer espacio de garaje
  Terraza techada           16' 0" x 12' 0"           192  con Terraza 12 x 16

Planta alta: 1,372 pies² habitables
  espacio                   medidas                  pies²
  Pasillo de arriba         hasta 18' 10" x 11' 0"     101
  Escalera                  3' 1" x 12' 1"              47
  Clóset de blancos         4' 7" x 2' 1"               12
  Lavandería                6' 10" x 5' 0"              41
  Dormitorio principal      16' 10" x 11' 9"           217
  Vestidor                  4' 1" x 11' 9"              56
  Baño principal            14' 1" x 8' 3"             131
  Dormitorio 2              13' 4" x 11' 0"            159
  Vestidor                  4' 7" x 5' 3"               28
  Dormitorio 3              hasta 18' 7" x 11' 9"      211
  Clóset                    9' 4" x 2' 4"               28
  Dormitorio 4              hasta 21' 7" x 10' 4"      194
  Vestidor                  hasta 9' 10" x 6' 10"       63
  Baño del pasillo          6' 4" x 11' 9"              84

Las medidas van de pared a pared según el dibujo, a la pulgada; los pies² llegan al centro de las
paredes interiores y al exterior de las exteriores. Deciden los planos de construcción.
= 0
