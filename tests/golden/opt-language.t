# Answers and messages in Spanish; names in an inquiry stay as they were written.
$ quoin quote data/buyer.json --language es --rates data/rates
$103,120.00 · $8,197.59 al mes · $10,966.45 de efectivo necesario ·
  Ten percent down: 6.250% (APR 6.422%), 1 año, pago inicial $10,312.00
$103,120.00 · $6,015.72 al mes · $36,254.73 de efectivo necesario ·
  A third down: 6.000% (APR 7.739%), 1 año, pago inicial $35,000.00
Son estimados con tasas de muestra, al 24 de noviembre de 2026.

Precio de la vivienda y pago mensual
Two Lots, de Nobody
Plano Cabin (ranch, 600 pies cuadrados), fachada Plain, lote 1, para Somebody
Al 24 de noviembre de 2026; lista de precios 1, vigente hasta el 31 de diciembre de 2026; cierre
el 15 de enero de 2027

  Plano Cabin, precio base                                                          $100,000.00
  Fachada Plain                                                                           $0.00
  Recargo del lote 1                                                                      $0.00

  Inside
    Floor: Oak                                                480 pies² x $4.25       $2,040.00
    Insulated flue *                                                                    $900.00
    Shelves                                                          3 x $60.00         $180.00
    Wall color: Sand                                                                  sin costo
                                                              -----------------  --------------
  Precio del contrato                                                               $103,120.00

Solicitudes especiales: no están en el precio y el constructor aún debe confirmarlas
  Outside: A bench by the door, con un costo estimado de $350.00

Incentivos
  Opening weeks: $1,200.00 para costos de cierre

Depósitos (parte del efectivo necesario)
  depósito de buena fe, con el contrato       $1,000.00
  depósito por opciones, al elegirlas           $312.00

Pago mensual
                                 Ten percent      A third
                                        down         down
  capital e intereses              $7,998.32    $5,862.85
  seguro hipotecario                  $46.40        $0.00
  impuestos sobre la propiedad       $103.12      $103.12
  seguro de vivienda                  $24.75       $24.75
  cuotas de la asociación (HOA)       $25.00       $25.00
                                 -----------  -----------
  pago mensual                     $8,197.59    $6,015.72

  tasa de interés                     6.250%       6.000%
  APR                                 6.422%       7.739%
  puntos                               0.000        1.000
  plazo del préstamo                   1 año        1 año
  bloqueo de la tasa                 60 días      60 días
  pago inicial                    $10,312.00   $35,000.00
  pago inicial, % del precio          10.00%       33.94%
  relación préstamo-valor (LTV)       90.00%       66.06%

Efectivo necesario y efectivo para el cierre
                                  Ten percent      A third
                                         down         down
  pago inicial                     $10,312.00   $35,000.00
  puntos                                $0.00      $681.20
  costos de cierre                    $900.00      $900.00
  intereses prepagados                $273.87      $192.95
  seguros e impuestos prepagados      $296.99      $296.99
  depósito inicial de escrow          $383.59      $383.59
  créditos                         -$1,200.00   -$1,200.00
                                  -----------  -----------
  efectivo necesario               $10,966.45   $36,254.73
  depósitos                        -$1,312.00   -$1,312.00
  efectivo para el cierre           $9,654.45   $34,942.73

Esta es una estimación al 24 de noviembre de 2026. No es una Estimación del Préstamo (Loan
Estimate), ni una aprobación, ni una oferta de préstamo. Esas las da un originador de préstamos con
licencia (aquí aún no se nombra a nadie). Las reglas publicadas de los programas y las leyes locales
deciden qué se aplica. Usted puede elegir cualquier prestamista.

Las tasas son de Nobody's lender (licencia: none, invented), tienen fecha del 20 de noviembre de
2026 y son válidas hasta el 4 de diciembre de 2026. Una tasa se mantiene solo cuando se bloquea. Son
tasas de muestra, no una oferta de nadie.

Los impuestos, los seguros, las cuotas de la asociación (HOA) y los costos de cierre usan las cifras
registradas para este lugar: Nowhere County (cifras de muestra). Los intereses corren desde el
cierre. La APR incluye los intereses prepagados y los días adicionales del primer período. Los
totales a lo largo de los años mantienen los impuestos, los seguros y las cuotas en los montos de
hoy.

* Lo marcado incluye trabajos de gas, electricidad, plomería o estructura. Esos trabajos deben
cumplir el código local, necesitan un permiso y debe hacerlos un profesional con licencia, ahora o
más adelante.

Para el agente de ventas: usted puede explicar los precios y cómo funcionan los programas en
general. Presentar las condiciones de un préstamo en particular a cambio de un beneficio puede
exigir una licencia propia (12 CFR 1008.103). Anunciar un pago exige divulgar más datos (12 CFR
1026.24).
= 0
$ quoin compare data/buyer.json --language es --rates data/rates
$8,197.59 al mes · $10,966.45 de efectivo necesario ·
  Ten percent down: 6.250% (APR 6.422%), 1 año, pago inicial $10,312.00
$6,015.72 al mes · $36,254.73 de efectivo necesario · -$2,181.87 al mes ·
  +$25,288.28 de efectivo necesario frente a Ten percent down ·
  A third down: 6.000% (APR 7.739%), 1 año, pago inicial $35,000.00
Son estimados con tasas de muestra, al 24 de noviembre de 2026.

Préstamos lado a lado para una vivienda
Two Lots, de Nobody
Plano Cabin (ranch, 600 pies cuadrados), fachada Plain, lote 1, para Somebody
Al 24 de noviembre de 2026; lista de precios 1, vigente hasta el 31 de diciembre de 2026; cierre
el 15 de enero de 2027
Precio del contrato: $103,120.00

Pago mensual
                                 Ten percent      A third
                                        down         down
  capital e intereses              $7,998.32    $5,862.85
  seguro hipotecario                  $46.40        $0.00
  impuestos sobre la propiedad       $103.12      $103.12
  seguro de vivienda                  $24.75       $24.75
  cuotas de la asociación (HOA)       $25.00       $25.00
                                 -----------  -----------
  pago mensual                     $8,197.59    $6,015.72

  tasa de interés                     6.250%       6.000%
  APR                                 6.422%       7.739%
  puntos                               0.000        1.000
  plazo del préstamo                   1 año        1 año
  bloqueo de la tasa                 60 días      60 días
  pago inicial                    $10,312.00   $35,000.00
  pago inicial, % del precio          10.00%       33.94%
  relación préstamo-valor (LTV)       90.00%       66.06%

Préstamo
                                  Ten percent      A third
                                         down         down
  precio del contrato             $103,120.00  $103,120.00
  pago inicial                     $10,312.00   $35,000.00
  monto base del préstamo          $92,808.00   $68,120.00
  monto del préstamo               $92,808.00   $68,120.00
  seguro hipotecario                   $46.40       no hay
  porcentaje anual del seguro           0.60%       no hay
  último pago con seguro               4/2027       no hay
  si lo solicita con LTV del 80%       4/2027            -

Efectivo necesario y efectivo para el cierre
                                  Ten percent      A third
                                         down         down
  pago inicial                     $10,312.00   $35,000.00
  puntos                                $0.00      $681.20
  costos de cierre                    $900.00      $900.00
  intereses prepagados                $273.87      $192.95
  seguros e impuestos prepagados      $296.99      $296.99
  depósito inicial de escrow          $383.59      $383.59
  créditos                         -$1,200.00   -$1,200.00
                                  -----------  -----------
  efectivo necesario               $10,966.45   $36,254.73
  depósitos                        -$1,312.00   -$1,312.00
  efectivo para el cierre           $9,654.45   $34,942.73

A lo largo de los años
                                    Ten percent      A third
                                           down         down
  total pagado en 5 años            $108,873.53  $108,443.32
  saldo después de 5 años                 $0.00        $0.00
  saldo después de 10 años                $0.00        $0.00
  total de intereses                  $3,171.84    $2,234.15
  total pagado en todo el préstamo  $108,873.53  $108,443.32
  cantidad de pagos                          12           12

Punto de equilibrio de los puntos
  A third down: los puntos bajan la tasa de 6.250% a 6.000%. Cuestan $673.04 más en efectivo y
    ahorran $7.83 al mes. Nunca llegan al punto de equilibrio.

Qué préstamo cuesta menos, y cuándo
  Aquí, el costo es el efectivo, los pagos del préstamo y el seguro hipotecario hasta ese momento,
  más el saldo que aún se debe.
  Ten percent down frente a A third down: Ten percent down cuesta menos hasta el pago 4; A third
    down cuesta menos a partir del pago 5.

Lo que debe tener en cuenta de cada programa
  A short loan: It is invented, for transcripts only.

Esta es una estimación al 24 de noviembre de 2026. No es una Estimación del Préstamo (Loan
Estimate), ni una aprobación, ni una oferta de préstamo. Esas las da un originador de préstamos con
licencia (aquí aún no se nombra a nadie). Las reglas publicadas de los programas y las leyes locales
deciden qué se aplica. Usted puede elegir cualquier prestamista.

Las tasas son de Nobody's lender (licencia: none, invented), tienen fecha del 20 de noviembre de
2026 y son válidas hasta el 4 de diciembre de 2026. Una tasa se mantiene solo cuando se bloquea. Son
tasas de muestra, no una oferta de nadie.

Los impuestos, los seguros, las cuotas de la asociación (HOA) y los costos de cierre usan las cifras
registradas para este lugar: Nowhere County (cifras de muestra). Los intereses corren desde el
cierre. La APR incluye los intereses prepagados y los días adicionales del primer período. Los
totales a lo largo de los años mantienen los impuestos, los seguros y las cuotas en los montos de
hoy.

Para el agente de ventas: usted puede explicar los precios y cómo funcionan los programas en
general. Presentar las condiciones de un préstamo en particular a cambio de un beneficio puede
exigir una licencia propia (12 CFR 1008.103). Anunciar un pago exige divulgar más datos (12 CFR
1026.24).
= 0
$ quoin adds data/buyer.json --language es --rates data/rates
sus opciones juntas: +$3,120.00 · +$247.27 al mes · +$340.74 de efectivo necesario ·
  $8,197.59 al mes en total · Ten percent down: 6.250% (APR 6.422%), 1 año, pago inicial $10,312.00
sus opciones juntas: +$3,120.00 · +$272.40 al mes · +$60.62 de efectivo necesario ·
  $6,015.72 al mes en total · A third down: 6.000% (APR 7.739%), 1 año, pago inicial $35,000.00
Son estimados con tasas de muestra, al 24 de noviembre de 2026.

Lo que agrega cada opción
Two Lots, de Nobody
Plano Cabin (ranch, 600 pies cuadrados), fachada Plain, lote 1, para Somebody
Al 24 de noviembre de 2026; lista de precios 1, vigente hasta el 31 de diciembre de 2026; cierre
el 15 de enero de 2027
Precio del contrato ahora: $103,120.00

Agregar una opción a su vivienda tal como está: cambio en el precio y en el pago mensual
                                                         Ten percent    A third
                                                 precio         down       down
  Inside
    Wood stove                               +$2,600.00     +$206.06   +$226.99
        deseo 1
    Gas heater *                             +$1,800.00     +$142.66   +$157.14
    Warm package                             +$2,200.00     +$174.36   +$192.07

Quitar una opción que usted eligió: cambio en el precio y en el pago mensual
                                                         Ten percent    A third
                                                 precio         down       down
  Inside
    Floor: Oak                               -$2,040.00     -$161.67   -$178.11
    Insulated flue *                           -$900.00      -$71.33    -$78.58
    Shelves                                    -$180.00      -$14.26    -$15.72

No disponibles
  Walk-out door: solo en lotes de este tipo: con salida al patio

Sus opciones una tras otra, desde una vivienda sin opciones: cambio en precio y pago mensual
                                                         Ten percent    A third
                                                 precio         down       down
  Floor: Oak                                 +$2,040.00     +$161.68   +$178.10
  Insulated flue                               +$900.00      +$71.33    +$78.58
  Shelves                                      +$180.00      +$14.26    +$15.72
                                            -----------  -----------  ---------
  todo junto                                 +$3,120.00     +$247.27   +$272.40

Los préstamos
  Ten percent down: $8,197.59 al mes. A short loan: tasa de interés 6.250%, 0.000 puntos, APR
    6.422%, plazo del préstamo 1 año, pago inicial $10,312.00 (10.00%), LTV 90.00%, bloqueo de la
    tasa por 60 días. Regla general: cada $1,000 de préstamo cuestan $86.18 al mes.
  A third down: $6,015.72 al mes. A short loan: tasa de interés 6.000%, 1.000 puntos, APR
    7.739%, plazo del préstamo 1 año, pago inicial $35,000.00 (33.94%), LTV 66.06%, bloqueo de la
    tasa por 60 días. Regla general: cada $1,000 de préstamo cuestan $86.07 al mes.

Cada cifra es una cotización completa menos otra, y cada cotización se redondea antes. Por eso una
opción sola y la misma opción después de otras pueden diferir en centavos. La diferencia puede ser
mayor donde una regla del préstamo cambia a partir de cierto monto.

Esta es una estimación al 24 de noviembre de 2026. No es una Estimación del Préstamo (Loan
Estimate), ni una aprobación, ni una oferta de préstamo. Esas las da un originador de préstamos con
licencia (aquí aún no se nombra a nadie). Las reglas publicadas de los programas y las leyes locales
deciden qué se aplica. Usted puede elegir cualquier prestamista.

Las tasas son de Nobody's lender (licencia: none, invented), tienen fecha del 20 de noviembre de
2026 y son válidas hasta el 4 de diciembre de 2026. Una tasa se mantiene solo cuando se bloquea. Son
tasas de muestra, no una oferta de nadie.

Los impuestos, los seguros, las cuotas de la asociación (HOA) y los costos de cierre usan las cifras
registradas para este lugar: Nowhere County (cifras de muestra). Los intereses corren desde el
cierre. La APR incluye los intereses prepagados y los días adicionales del primer período. Los
totales a lo largo de los años mantienen los impuestos, los seguros y las cuotas en los montos de
hoy.

* Lo marcado incluye trabajos de gas, electricidad, plomería o estructura. Esos trabajos deben
cumplir el código local, necesitan un permiso y debe hacerlos un profesional con licencia, ahora o
más adelante.

Para el agente de ventas: usted puede explicar los precios y cómo funcionan los programas en
general. Presentar las condiciones de un préstamo en particular a cambio de un beneficio puede
exigir una licencia propia (12 CFR 1008.103). Anunciar un pago exige divulgar más datos (12 CFR
1026.24).
= 0
$ quoin cash data/buyer.json --language es --scenario "Ten percent down" --rates data/rates
$10,966.45 de efectivo necesario · $9,654.45 de efectivo para el cierre · $8,197.59 al mes ·
  Ten percent down: 6.250% (APR 6.422%), 1 año, pago inicial $10,312.00
Son estimados con tasas de muestra, al 24 de noviembre de 2026.

El efectivo que usted necesita
Two Lots, de Nobody
Plano Cabin (ranch, 600 pies cuadrados), fachada Plain, lote 1, para Somebody
Al 24 de noviembre de 2026; lista de precios 1, vigente hasta el 31 de diciembre de 2026; cierre
el 15 de enero de 2027
Ten percent down: $8,197.59 al mes. A short loan: tasa de interés 6.250%, 0.000 puntos, APR
6.422%, plazo del préstamo 1 año, pago inicial $10,312.00 (10.00%), LTV 90.00%, bloqueo de la tasa
por 60 días

Efectivo
  pago inicial                                                                        $10,312.00
  costos de cierre                                                                       $900.00
  intereses prepagados                                                                   $273.87
  seguros e impuestos prepagados                                                         $296.99
  depósito inicial de escrow                                                             $383.59
  créditos                                                                            -$1,200.00
                                                                  --------------  --------------
  efectivo necesario                                                                  $10,966.45
  depósitos                                                                           -$1,312.00
  efectivo para el cierre                                                              $9,654.45

Cuándo se paga
  depósito de buena fe                                            11/24/2026           $1,000.00
  depósito por opciones                                           11/24/2026             $312.00
  en el cierre                                                    1/15/2027            $9,654.45

Costos de cierre
                                                                                       total del
                                                                                       comprador
  servicios que puede comparar                                                           $900.00
    Title and recording                                                                  $900.00

Gastos prepagados
  intereses, 17 días a $16.11 por día                                                    $273.87
  seguro, 12 meses                                                                       $296.99

Cuenta de depósito en garantía (escrow): $383.59 en el cierre y luego $127.87 al mes. Siempre
conserva $255.73 o más.
  mes            depósitos      facturas         saldo
  2/2027           $383.59         $0.00       $383.59
  3/2027           $127.87         $0.00       $511.46
  4/2027           $127.87         $0.00       $639.33
  5/2027           $127.87         $0.00       $767.20
  6/2027           $127.87       $618.72       $276.35
  7/2027           $127.87         $0.00       $404.22
  8/2027           $127.87         $0.00       $532.09
  9/2027           $127.87         $0.00       $659.96
  10/2027          $127.87         $0.00       $787.83
  11/2027          $127.87         $0.00       $915.70
  12/2027          $127.87       $618.72       $424.85
  1/2028           $127.87       $296.99       $255.73
  2/2028           $127.87         $0.00       $383.60
  impuestos sobre la propiedad y cargos del distrito, vence el 6/30/2027: $618.72
  impuestos sobre la propiedad y cargos del distrito, vence el 12/31/2027: $618.72
  seguro de vivienda, vence el 1/15/2028: $296.99

Créditos
  se usa para los costos de cierre                                                       $900.00
  se usa para los gastos prepagados y la cuenta de escrow                                $300.00
  El vendedor y otras partes interesadas pueden contribuir hasta el 3% del valor de la vivienda.
  De estos créditos, $1,200.00 cuentan para ese límite.

Lo que cuesta el préstamo
  cargo financiero prepagado                                                               $273.87
  monto financiado                                                                      $92,534.13
  cargo financiero                                                                       $3,538.51
  total de pagos                                                                        $97,246.51
  en 5 años: pagado por el préstamo y sus costos, según se divulga                      $97,246.51
  en 5 años: capital pagado                                                             $92,808.00
  APR                                                                                       6.422%
  porcentaje total de intereses (TIP)                                                       3.713%

Esta es una estimación al 24 de noviembre de 2026. No es una Estimación del Préstamo (Loan
Estimate), ni una aprobación, ni una oferta de préstamo. Esas las da un originador de préstamos con
licencia (aquí aún no se nombra a nadie). Las reglas publicadas de los programas y las leyes locales
deciden qué se aplica. Usted puede elegir cualquier prestamista.

Las tasas son de Nobody's lender (licencia: none, invented), tienen fecha del 20 de noviembre de
2026 y son válidas hasta el 4 de diciembre de 2026. Una tasa se mantiene solo cuando se bloquea. Son
tasas de muestra, no una oferta de nadie.

Los impuestos, los seguros, las cuotas de la asociación (HOA) y los costos de cierre usan las cifras
registradas para este lugar: Nowhere County (cifras de muestra). Los intereses corren desde el
cierre. La APR incluye los intereses prepagados y los días adicionales del primer período. Los
totales a lo largo de los años mantienen los impuestos, los seguros y las cuotas en los montos de
hoy.

Para el agente de ventas: usted puede explicar los precios y cómo funcionan los programas en
general. Presentar las condiciones de un préstamo en particular a cambio de un beneficio puede
exigir una licencia propia (12 CFR 1008.103). Anunciar un pago exige divulgar más datos (12 CFR
1026.24).
= 0
$ quoin credit data/buyer.json --language es --amount 2500 --scenario "A third down" --rates data/rates
costo más bajo en todo el préstamo: $2,500.00 de rebaja del precio · $5,797.45 al mes ·
  $36,206.26 de efectivo necesario ·
  A third down: 6.000% (APR 7.739%), 1 año, pago inicial $35,000.00
Son estimados con tasas de muestra, al 24 de noviembre de 2026.

Lo que se puede hacer con $2,500.00 del constructor
Two Lots, de Nobody
Plano Cabin (ranch, 600 pies cuadrados), fachada Plain, lote 1, para Somebody
Al 24 de noviembre de 2026; lista de precios 1, vigente hasta el 31 de diciembre de 2026; cierre
el 15 de enero de 2027
Precio del contrato sin ese dinero: $103,120.00

A third down: $6,015.72 al mes sin ese dinero. A short loan: tasa de interés 6.000%, 1.000
  puntos, APR 7.739%, plazo del préstamo 1 año, pago inicial $35,000.00 (33.94%), LTV 66.06%,
  bloqueo de la tasa por 60 días

  La mejor combinación para cada meta
  pago más bajo ahora: $2,500.00 de rebaja del precio. Tasa de interés 6.000%, APR 7.739%.
    $5,797.45 al mes ahora, $149.77 al mes después de tres años. Efectivo necesario: $36,206.26.
    Costo en todo el préstamo: $105,775.66.
  menos efectivo: $1,269.00 de rebaja del precio, $668.51 para puntos (6.000% con 1.000 puntos),
    $561.55 para gastos prepagados; $0.94 quedan sin usar. Tasa de interés 6.000%, APR 6.001%.
    $5,904.92 al mes ahora, $151.29 al mes después de tres años. Efectivo necesario: $35,000.00.
    Costo en todo el préstamo: $105,859.02.
  costo más bajo en todo el préstamo: $2,500.00 de rebaja del precio. Tasa de interés 6.000%,
    APR 7.739%. $5,797.45 al mes ahora, $149.77 al mes después de tres años. Efectivo necesario:
    $36,206.26. Costo en todo el préstamo: $105,775.66.

                                  tasa de              al mes,  después de    efectivo
  todo para un solo uso           interés       APR      ahora   tres años   necesario   sin usar
  sin ese dinero                   6.000%    7.739%  $6,015.72     $152.87  $36,254.73      $0.00
  rebaja del precio                6.000%    7.739%  $5,797.45     $149.77  $36,206.26      $0.00
  costos de cierre y prepagados    6.000%    7.739%  $6,015.72     $152.87  $35,681.20  $1,926.47
  puntos: no hay una tasa más baja disponible
  reducción temporal 1-0: no con este préstamo
  reducción temporal 2-1: no con este préstamo
  reducción temporal 3-2-1: no con este préstamo
  cargo inicial o prima única: no con este préstamo

                                            todo el
  costo, con lo que aún se debe, tras      préstamo
  sin ese dinero                        $108,443.32
  rebaja del precio                     $105,775.66
  costos de cierre y prepagados         $107,869.79

  Combinaciones que ninguna otra supera a la vez en pago, efectivo y costo
                                                                                  costo en
  rebaja del   tasa de                     para puntos    al mes,    efectivo      todo el
      precio   interés       APR  buydown     y costos      ahora   necesario     préstamo
   $2,500.00    6.000%    7.739%   no hay        $0.00  $5,797.45  $36,206.26  $105,775.66
   $2,187.00    6.000%    6.911%   no hay      $313.00  $5,824.77  $35,899.29  $105,796.51
   $1,875.00    6.000%    6.099%   no hay      $625.00  $5,852.02  $35,593.39  $105,817.64
   $1,562.00    6.000%    6.001%   no hay      $938.00  $5,879.34  $35,286.42  $105,838.49
   $1,270.00    6.000%    6.001%   no hay    $1,230.00  $5,904.83  $35,000.13  $105,858.11
   $1,269.00    6.000%    6.001%   no hay    $1,230.06  $5,904.92  $35,000.00  $105,859.02

  El vendedor y otras partes interesadas pueden contribuir hasta el 3% del valor de la vivienda,
  es decir, $3,093.60. De eso ya se usan $1,200.00.

Este dinero se suma a los incentivos y créditos que ya se cuentan aquí. El límite a las
contribuciones los cubre a todos juntos. El dinero paga primero puntos, después el buydown, los
costos de cierre, los gastos prepagados y un cargo inicial o una prima en efectivo. Nunca paga el
pago inicial. En ninguna combinación paga usted más de su propio dinero en costos y puntos que sin
él. El dinero que se acredita a las opciones baja el precio, y aquí cuenta como rebaja del precio.

El costo es lo que usted ha gastado más lo que aún debe: efectivo, pagos menos lo que un buydown
paga de ellos, seguros, impuestos, cuotas y el saldo del préstamo. Los pagos mensuales, ahora y
después de tres años, cuentan los impuestos completos, cuando el condado valore la vivienda
terminada. La rebaja del precio va en dólares enteros. Entre los montos que se muestran, las cifras
cambian de manera uniforme.

Si el dinero depende de un prestamista, de una compañía de títulos o de una fecha, sus condiciones
lo dicen. Usted puede elegir cualquier prestamista, y entonces quizá no reciba ese dinero. Compare
el costo total.

Esta es una estimación al 24 de noviembre de 2026. No es una Estimación del Préstamo (Loan
Estimate), ni una aprobación, ni una oferta de préstamo. Esas las da un originador de préstamos con
licencia (aquí aún no se nombra a nadie). Las reglas publicadas de los programas y las leyes locales
deciden qué se aplica. Usted puede elegir cualquier prestamista.

Las tasas son de Nobody's lender (licencia: none, invented), tienen fecha del 20 de noviembre de
2026 y son válidas hasta el 4 de diciembre de 2026. Una tasa se mantiene solo cuando se bloquea. Son
tasas de muestra, no una oferta de nadie.

Los impuestos, los seguros, las cuotas de la asociación (HOA) y los costos de cierre usan las cifras
registradas para este lugar: Nowhere County (cifras de muestra). Los intereses corren desde el
cierre. La APR incluye los intereses prepagados y los días adicionales del primer período. Los
totales a lo largo de los años mantienen los impuestos, los seguros y las cuotas en los montos de
hoy.

Para el agente de ventas: usted puede explicar los precios y cómo funcionan los programas en
general. Presentar las condiciones de un préstamo en particular a cambio de un beneficio puede
exigir una licencia propia (12 CFR 1008.103). Anunciar un pago exige divulgar más datos (12 CFR
1026.24).
= 0
$ quoin shift data/buyer.json --language es --scenario "A third down" --rates data/rates
$6,015.72 al mes · $36,254.73 de efectivo necesario · con 5.500%: -$15.65 al mes ·
  con 6.500%: +$15.66 al mes · A third down: 6.000% (APR 7.739%), 1 año, pago inicial $35,000.00
Son estimados con tasas de muestra, al 24 de noviembre de 2026.

Qué puede cambiar antes del cierre
Two Lots, de Nobody
Plano Cabin (ranch, 600 pies cuadrados), fachada Plain, lote 1, para Somebody
Al 24 de noviembre de 2026; lista de precios 1, vigente hasta el 31 de diciembre de 2026; cierre
el 15 de enero de 2027
Precio del contrato según la cotización $103,120.00

A third down: $6,015.72 al mes, $36,254.73 de efectivo necesario. A short loan: tasa de interés
  6.000%, 1.000 puntos, APR 7.739%, plazo del préstamo 1 año, pago inicial $35,000.00 (33.94%),
  LTV 66.06%, bloqueo de la tasa por 60 días

  pago
  mensual                  según la                               opciones     tasación     tasación
  con              APR   cotización   precio -1%   precio +1%   +$5,000.00          -2%          -5%
  5.500%        7.237%      -$15.65     -$105.51      +$74.13     +$419.74      -$15.65      -$15.65
  5.625%        7.362%      -$11.74     -$101.66      +$78.10     +$423.93      -$11.74      -$11.74
  5.750%        7.488%       -$7.83      -$97.81      +$82.07     +$428.13       -$7.83       -$7.83
  5.875%        7.614%       -$3.92      -$93.96      +$86.04     +$432.33       -$3.92       -$3.92
  6.000%        7.739%    $6,015.72      -$90.11      +$90.01     +$436.53        $0.00        $0.00
  6.125%        7.865%       +$3.91      -$86.25      +$93.98     +$440.73       +$3.91       +$3.91
  6.250%        7.991%       +$7.83      -$82.39      +$97.96     +$444.93       +$7.83       +$7.83
  6.375%        8.116%      +$11.74      -$78.54     +$101.94     +$449.14      +$11.74      +$11.74
  6.500%        8.242%      +$15.66      -$74.68     +$105.91     +$453.34      +$15.66      +$15.66

  efectivo
  necesario                según la                               opciones     tasación     tasación
  con              APR   cotización   precio -1%   precio +1%   +$5,000.00          -2%          -5%
  5.500%        7.237%      -$15.98      -$34.99       +$3.88      +$79.94      -$15.98      -$15.98
  5.625%        7.362%      -$12.07      -$31.08       +$7.96      +$84.36      -$12.07      -$12.07
  5.750%        7.488%       -$7.99      -$27.00      +$12.04      +$88.61       -$7.99       -$7.99
  5.875%        7.614%       -$3.91      -$23.09      +$16.29      +$92.86       -$3.91       -$3.91
  6.000%        7.739%   $36,254.73      -$19.18      +$20.37      +$97.28        $0.00        $0.00
  6.125%        7.865%       +$4.08      -$15.27      +$24.45     +$101.53       +$4.08       +$4.08
  6.250%        7.991%       +$8.16      -$11.19      +$28.53     +$105.78       +$8.16       +$8.16
  6.375%        8.116%      +$12.07       -$7.28      +$32.61     +$110.20      +$12.07      +$12.07
  6.500%        8.242%      +$16.15       -$3.37      +$36.69     +$114.45      +$16.15      +$16.15

  Lo que cuesta cada bloqueo de la tasa con 6.000% (* su bloqueo)
                                                         puntos con    cambio en el
  bloqueo de la  si se bloquea hoy,                      la tasa de        efectivo
  tasa                        vence                             hoy       necesario
  60 días *               1/23/2027                           1.000           $0.00

Una cifra con signo es la diferencia con la cotización. Nadie sabe cómo estarán las tasas en el
cierre: estos son pasos, no un pronóstico. En cada paso, todas las tasas de la hoja de tasas se
mueven juntas, cada una con sus puntos. Hasta que usted bloquee una tasa, puede ser cualquiera de
estas, o ir más allá.

Esta es una estimación al 24 de noviembre de 2026. No es una Estimación del Préstamo (Loan
Estimate), ni una aprobación, ni una oferta de préstamo. Esas las da un originador de préstamos con
licencia (aquí aún no se nombra a nadie). Las reglas publicadas de los programas y las leyes locales
deciden qué se aplica. Usted puede elegir cualquier prestamista.

Las tasas son de Nobody's lender (licencia: none, invented), tienen fecha del 20 de noviembre de
2026 y son válidas hasta el 4 de diciembre de 2026. Una tasa se mantiene solo cuando se bloquea. Son
tasas de muestra, no una oferta de nadie.

Los impuestos, los seguros, las cuotas de la asociación (HOA) y los costos de cierre usan las cifras
registradas para este lugar: Nowhere County (cifras de muestra). Los intereses corren desde el
cierre. La APR incluye los intereses prepagados y los días adicionales del primer período. Los
totales a lo largo de los años mantienen los impuestos, los seguros y las cuotas en los montos de
hoy.

Para el agente de ventas: usted puede explicar los precios y cómo funcionan los programas en
general. Presentar las condiciones de un préstamo en particular a cambio de un beneficio puede
exigir una licencia propia (12 CFR 1008.103). Anunciar un pago exige divulgar más datos (12 CFR
1026.24).
= 0
$ quoin payment --loan 250000 --rate 6.5 --years 30 --language es
  monto del préstamo   $250,000.00
  tasa de interés           6.500%
  plazo del préstamo       30 años
                       -----------
  capital e intereses    $1,580.17
  cantidad de pagos            360
  último pago            $1,580.55
  total de intereses   $318,861.58
  total de pagos       $568,861.58

Esta es una estimación del pago mensual de capital e intereses solamente. No tiene puntos ni cargos,
así que la APR es igual a la tasa de interés. No es una Estimación del Préstamo (Loan Estimate), ni
una aprobación, ni una oferta de préstamo. Los impuestos, los seguros, las cuotas de la asociación
(HOA) y el seguro hipotecario son aparte. Solo un originador de préstamos con licencia puede hacerle
una oferta.
= 0
$ quoin quote data/no-such-buyer.json --language es
2> quoin: data/no-such-buyer.json: se encontró: un nombre sin archivo ni carpeta
2>   se esperaba: una consulta que se pueda leer
2>   revise el nombre y la carpeta
2>   [file-missing]
= 1
$ quoin quote ../../examples/oxbarrow-meadow/buyers/six-programs.json --language es
$497,660.00 · $3,957.34 al mes · $27,257.45 de efectivo necesario ·
  Conventional, 5% down, 30 years: 6.375% (APR 6.848%), 30 años, pago inicial $24,883.00
$497,660.00 · $3,660.42 al mes · $101,577.75 de efectivo necesario ·
  Conventional, 20% down, 20 years: 6.125% (APR 6.166%), 20 años, pago inicial $99,532.00
$497,660.00 · $4,573.27 al mes · $50,759.71 de efectivo necesario ·
  Conventional, 10% down, 15 years: 5.625% (APR 5.771%), 15 años, pago inicial $49,766.00
$497,660.00 · $3,888.70 al mes · $20,341.56 de efectivo necesario ·
  FHA, 3.5% down, 30 years: 5.875% (APR 6.608%), 30 años, pago inicial $17,419.00
$497,660.00 · $3,786.46 al mes · $2,402.99 de efectivo necesario ·
  VA, nothing down, first use: 5.875% (APR 6.097%), 30 años, pago inicial $0.00
$497,660.00 · $3,938.98 al mes · $3,032.37 de efectivo necesario ·
  USDA, nothing down, 30 years: 6.000% (APR 6.47%), 30 años, pago inicial $0.00
Son estimados con tasas de muestra, al 24 de noviembre de 2026.

Precio de la vivienda y pago mensual
Oxbarrow Meadow, de Tarnwick Builders
Plano Teasel (de un piso, 1,888 pies cuadrados), fachada Orchard, lote 7, para Buyer 1
Al 24 de noviembre de 2026; lista de precios 2026-11, vigente hasta el 31 de enero de 2027; cierre
el 14 de mayo de 2027
Preparado por Sales desk, Oxbarrow Meadow

  Plano Teasel, precio base                                                              $419,900.00
  Fachada Orchard                                                                          $7,400.00
  Recargo del lote 7                                                                      $18,500.00

  Exterior y estructura
    Terraza 12 x 16: Material compuesto *                                                 $14,900.00
        La vivienda no incluye terraza. Sin ella, la puerta corrediza conserva su
        baranda de protección.
    Colores exteriores: Pizarra, molduras blancas, puerta                                  sin costo
      roja
        Dos viviendas vecinas no pueden tener la misma combinación. Quien firma
        primero la conserva.

  Garaje
    Tomacorriente de 240 V para auto *                                                     $1,150.00
        Es solo el tomacorriente. El cargador lo pone usted.

  Entrada y escaleras
    Color de las paredes: Lino                                                             sin costo

  Sala principal y comedor
    Chimenea de gas *                                                                      $5,150.00
        El marco tiene su propio precio. Sin él, queda con paneles de yeso pintados
        y una repisa sencilla de madera.
    Marco de chimenea: Piedra a la repisa                                                  $2,380.00
    Pisos principales: Tablones de vinilo                             640 pies² x $3.25    $2,080.00
    Luces empotradas *                                                      8 x $165.00    $1,320.00
        La sala principal no incluye ninguna. Trae un tomacorriente para lámparas,
        con interruptor.

  Cocina
    Paquete para quien cocina                                                              $5,700.00
        Las encimeras son de cuarzo liso. Con cuarzo con vetas, los cuatro se pagan
        por separado. Comfrey ya incluye el cuarzo, por eso su precio es menor.
    Gabinetes de cocina: Arce shaker                                                       $3,300.00

  Baños
    Ducha principal: De azulejo *                                                          $3,600.00

  Lavandería y recibidor
    Gabinetes sobre las máquinas                              6 pies lineales x $215.00    $1,290.00
        La pared mide nueve pies. Cada gabinete mide 18 pulgadas de ancho.

  Sótano
    Sótano con salida al patio *                                                          $10,200.00
        El recargo del lote paga la pendiente, no esta pared. Sin esta opción, la
        pared trasera es de concreto con una ventana.

  Calefacción, energía y cableado
    Asignación para lámparas                                                                 $790.00
        Las lámparas de la casa modelo cuestan más del doble de la asignación. Si
        elige menos, no se le devuelve la diferencia.
                                                              -------------------------  -----------
  Precio del contrato                                                                    $497,660.00

Solicitudes especiales: no están en el precio y el constructor aún debe confirmarlas
  Lavandería y recibidor: Floor drain beside the washer, con un costo estimado de $650.00

Por elegir, sin costo
  Cocina: Tiradores de los gabinetes (si usted no elige: Níquel cepillado)
  Baños: Acabado de la grifería y accesorios (si usted no elige: Cromo)

Incentivos
  Inicio de invierno: $7,500.00 para costos de cierre
  Inicio de invierno: Debe firmar las opciones estructurales dentro de los 21 días posteriores
    al contrato, para que los cimientos se hagan antes de la primavera.

Depósitos (parte del efectivo necesario)
  depósito de buena fe, con el contrato       $5,000.00
  depósito por opciones, al elegirlas        $20,527.50
  El depósito de buena fe se paga al firmar el contrato. El depósito por opciones se paga al
  firmar cada opción. No se devuelve una vez pedido el trabajo.

Pago mensual
                              Conventional,  Conventional,  Conventional,   FHA, 3.5%    VA, nothing
                                5% down, 30      20% down,      10% down,    down, 30    down, first
                                      years       20 years       15 years       years            use
  capital e intereses             $2,949.51      $2,881.10      $3,689.44   $2,890.52      $3,007.14
  seguro hipotecario                $228.51          $0.00        $104.51     $218.86          $0.00
  impuestos sobre la                $567.22        $567.22        $567.22     $567.22        $567.22
    propiedad
  seguro de vivienda                $114.46        $114.46        $114.46     $114.46        $114.46
  cuotas de la asociación            $64.50         $64.50         $64.50      $64.50         $64.50
    (HOA)
  cargos del distrito                $33.14         $33.14         $33.14      $33.14         $33.14
                              -------------  -------------  -------------  ----------  -------------
  pago mensual, impuestos         $3,957.34      $3,660.42      $4,573.27   $3,888.70      $3,786.46
    completos
  con impuestos solo sobre        $3,492.48      $3,195.56      $4,108.41   $3,423.84      $3,321.60
    el terreno

  tasa de interés                    6.375%         6.125%         5.625%      5.875%         5.875%
  APR                                6.848%         6.166%         5.771%      6.608%         6.097%
  puntos                      crédito 0.125  crédito 0.125  crédito 0.375       0.000  crédito 0.125
  plazo del préstamo                30 años        20 años        15 años     30 años        30 años
  bloqueo de la tasa               180 días       180 días       180 días    180 días       180 días
  pago inicial                   $24,883.00     $99,532.00     $49,766.00  $17,419.00          $0.00
  pago inicial, % del precio          5.00%         20.00%         10.00%       3.50%          0.00%
  relación préstamo-valor            95.00%         80.00%         90.00%      96.50%        100.00%
    (LTV)

                                             USDA,
                                           nothing
                                          down, 30
                                             years
  capital e intereses                    $3,013.86
  seguro hipotecario                       $145.80
  impuestos sobre la propiedad             $567.22
  seguro de vivienda                       $114.46
  cuotas de la asociación (HOA)             $64.50
  cargos del distrito                       $33.14
                                       -----------
  pago mensual, impuestos completos      $3,938.98
  con impuestos solo sobre el terreno    $3,474.12

  tasa de interés                           6.000%
  APR                                        6.47%
  puntos                                     0.000
  plazo del préstamo                       30 años
  bloqueo de la tasa                      180 días
  pago inicial                               $0.00
  pago inicial, % del precio                 0.00%
  relación préstamo-valor (LTV)            100.00%

Efectivo necesario y efectivo para el cierre
                               Conventional,  Conventional,  Conventional,    FHA, 3.5%  VA, nothing
                                 5% down, 30      20% down,      10% down,     down, 30  down, first
                                       years       20 years       15 years        years          use
  pago inicial                    $24,883.00     $99,532.00     $49,766.00   $17,419.00        $0.00
  cargo inicial en efectivo            $0.00          $0.00          $0.00        $0.22        $0.69
  puntos                                   -              -              -        $0.00            -
  crédito del prestamista           -$590.97       -$497.66     -$1,679.60            -     -$635.45
  costos de cierre                 $4,627.50      $4,493.13      $4,582.71    $4,656.06    $4,713.51
  intereses prepagados             $1,506.96      $1,219.32      $1,259.64    $1,435.32    $1,493.28
  seguros e impuestos              $2,186.50      $2,186.50      $2,186.50    $2,186.50    $2,186.50
    prepagados
  depósito inicial de escrow       $2,144.46      $2,144.46      $2,144.46    $2,144.46    $2,144.46
  créditos                        -$7,500.00     -$7,500.00     -$7,500.00   -$7,500.00   -$7,500.00
                               -------------  -------------  -------------  -----------  -----------
  efectivo necesario              $27,257.45    $101,577.75     $50,759.71   $20,341.56    $2,402.99
  depósitos                      -$25,527.50    -$25,527.50    -$25,527.50  -$25,527.50  -$25,527.50
  efectivo para el cierre          $1,729.95     $76,050.25     $25,232.21            -            -
  efectivo que recibe en el                -              -              -    $5,185.94   $23,124.51
    cierre

                                          USDA,
                                        nothing
                                       down, 30
                                          years
  pago inicial                            $0.00
  cargo inicial en efectivo               $0.86
  puntos                                  $0.00
  crédito del prestamista                     -
  costos de cierre                    $4,692.51
  intereses prepagados                $1,508.04
  seguros e impuestos prepagados      $2,186.50
  depósito inicial de escrow          $2,144.46
  créditos                           -$7,500.00
                                    -----------
  efectivo necesario                  $3,032.37
  depósitos                         -$25,527.50
  efectivo para el cierre                     -
  efectivo que recibe en el cierre   $22,495.13

Esta es una estimación al 24 de noviembre de 2026. No es una Estimación del Préstamo (Loan
Estimate), ni una aprobación, ni una oferta de préstamo. Esas las da un originador de préstamos con
licencia (aquí aún no se nombra a nadie). Las reglas publicadas de los programas y las leyes locales
deciden qué se aplica. Usted puede elegir cualquier prestamista.

Las tasas son de Sample lender (licencia: none, sample data), tienen fecha del 20 de noviembre de
2026 y son válidas hasta el 18 de diciembre de 2026. Una tasa se mantiene solo cuando se bloquea.
Son tasas de muestra, no una oferta de nadie.

Los impuestos, los seguros, las cuotas de la asociación (HOA) y los costos de cierre usan las cifras
registradas para este lugar: Condado de Venning (cifras de muestra). Los intereses corren desde el
cierre. La APR incluye los intereses prepagados y los días adicionales del primer período. Los
totales a lo largo de los años mantienen los impuestos, los seguros y las cuotas en los montos de
hoy.

* Lo marcado incluye trabajos de gas, electricidad, plomería o estructura. Esos trabajos deben
cumplir el código local, necesitan un permiso y debe hacerlos un profesional con licencia, ahora o
más adelante.

Para el agente de ventas: usted puede explicar los precios y cómo funcionan los programas en
general. Presentar las condiciones de un préstamo en particular a cambio de un beneficio puede
exigir una licencia propia (12 CFR 1008.103). Anunciar un pago exige divulgar más datos (12 CFR
1026.24).
= 0
$ quoin fit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --language es | digest
2> quoin fit: --monthly is required
2>   'quoin fit --help' explains it with an example
= 2
$ quoin later ../../examples/oxbarrow-meadow/buyers/short-of-cash.json fireplace --scenario "FHA, 3.5% down" --language es
2> quoin later: no option "--scenario"
2>   'quoin later --help' explains it with an example
= 2
$ quoin quote data/buyer.json --language fr --rates data/rates
2> quoin quote: --language: fr not in {en,es}
2>   'quoin quote --help' explains it with an example
= 2
