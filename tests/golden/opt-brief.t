# The answer alone, a line for each loan. Piped, a line is never broken; --width breaks it.
$ quoin quote --rates data/rates data/buyer.json --brief
$103,120.00 · $8,197.59 a month · $10,966.45 cash needed · Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down · estimate with sample rates, November 24, 2026
$103,120.00 · $6,015.72 a month · $36,254.73 cash needed · A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down · estimate with sample rates, November 24, 2026
= 0
$ quoin quote --rates data/rates data/buyer.json --brief --width 60 --language es
$103,120.00 · $8,197.59 al mes ·
  $10,966.45 de efectivo necesario ·
  Ten percent down: 6.250% (APR 6.422%), 1 año, pago inicial
    $10,312.00 ·
  estimado con tasas de muestra, 24 de noviembre de 2026
$103,120.00 · $6,015.72 al mes ·
  $36,254.73 de efectivo necesario ·
  A third down: 6.000% (APR 7.739%), 1 año, pago inicial
    $35,000.00 ·
  estimado con tasas de muestra, 24 de noviembre de 2026
= 0
# Options that are asked about, each under each loan; one of them is in the home already.
$ quoin adds --rates data/rates data/buyer.json stove floor:oak walk-out --brief
Wood stove: +$2,600.00 · +$206.06 a month · +$284.16 cash needed · $8,403.65 a month in all · Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down · estimate with sample rates, November 24, 2026
Wood stove: +$2,600.00 · +$226.99 a month · +$50.67 cash needed · $6,242.71 a month in all · A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down · estimate with sample rates, November 24, 2026
Floor: Oak, in your home already: +$2,040.00 · +$161.67 a month · +$222.91 cash needed · $8,197.59 a month in all · Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down · estimate with sample rates, November 24, 2026
Floor: Oak, in your home already: +$2,040.00 · +$178.11 a month · +$39.65 cash needed · $6,015.72 a month in all · A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down · estimate with sample rates, November 24, 2026
Walk-out door: only on walk-out lots
= 0
# Without a name: what is chosen, together.
$ quoin adds --rates data/rates data/buyer.json --brief
your options together: +$3,120.00 · +$247.27 a month · +$340.74 cash needed · $8,197.59 a month in all · Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down · estimate with sample rates, November 24, 2026
your options together: +$3,120.00 · +$272.40 a month · +$60.62 cash needed · $6,015.72 a month in all · A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down · estimate with sample rates, November 24, 2026
= 0
$ quoin compare --rates data/rates data/buyer.json --brief
$8,197.59 a month · $10,966.45 cash needed · Ten percent down: 6.250% (6.422% APR), 1 year, $10,312.00 down · estimate with sample rates, November 24, 2026
$6,015.72 a month · $36,254.73 cash needed · -$2,181.87 a month · +$25,288.28 cash needed against Ten percent down · A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down · estimate with sample rates, November 24, 2026
= 0
$ quoin cash --rates data/rates data/buyer.json --scenario "A third down" --brief
$36,254.73 cash needed · $34,942.73 cash to close · $6,015.72 a month · A third down: 6.000% (7.739% APR), 1 year, $35,000.00 down · estimate with sample rates, November 24, 2026
= 0
$ quoin afford --income 8400 --debts 450 --cash 60000 --rate 6.25 --as-of 2026-11-24 --brief
up to $435,762.00 · $3,330.00 a month · $34,491.88 cash needed · Conventional, fixed rate, 5% down: 6.250% (6.691% APR), 30 years, $21,789.00 down · estimate, November 24, 2026
up to $265,581.00 · $1,662.29 a month · $59,999.98 cash needed · Conventional, fixed rate, 20% down: 6.250% (6.25% APR), 30 years, $53,117.00 down · estimate, November 24, 2026
up to $333,039.00 · $2,604.00 a month · $21,594.59 cash needed · FHA, fixed rate, 3.5% down: 6.250% (6.962% APR), 30 years, $11,657.00 down · estimate, November 24, 2026
= 0
$ quoin fit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --monthly 3000 --cash 24000 --scenario "FHA, 3.5% down" --brief
nothing fits · over your monthly limit by $131.71 · the closest home $395,725.00 · $3,131.71 a month · $16,214.69 cash needed · FHA, 3.5% down: 6.000% (6.742% APR), 30 years, $13,851.00 down · estimate with sample rates, November 24, 2026
= 0
$ quoin fit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --monthly 3300 --cash 26000 --scenario "FHA, 3.5% down" --brief --language es
valor 10 · $412,368.50 · $3,261.71 al mes · $16,983.77 de efectivo necesario · FHA, 3.5% down: 6.000% (APR 6.741%), 30 años, pago inicial $14,433.50 · estimado con tasas de muestra, 24 de noviembre de 2026
= 0
$ quoin credit ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --amount 10000 --scenario "FHA, 3.5% down" --brief
lowest cost over 7 years: $4,332.00 off the price, $5,284.17 to points (5.625% with 1.375 points), $383.83 to prepaids · $3,005.98 a month · $16,062.58 cash needed · FHA, 3.5% down: 5.625% (6.363% APR), 30 years, $13,699.00 down · estimate with sample rates, November 24, 2026
= 0
$ quoin shift ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5% down" --brief
$3,131.71 a month · $16,214.69 cash needed · at 5.500%: -$123.50 a month · at 6.500%: +$126.44 a month · FHA, 3.5% down: 6.000% (6.742% APR), 30 years, $13,851.00 down · estimate with sample rates, November 24, 2026
= 0
$ quoin later ../../examples/oxbarrow-meadow/buyers/short-of-cash.json deck:treated --brief --language es
Terraza 12 x 16: Madera tratada: +$9,800.00 · sumarla a su préstamo: $452.28 en el cierre, $76.54 al mes · pagar al constructor en efectivo: $9,885.29 en el cierre, -$1.28 al mes · pagar en efectivo tras el cierre: unos $13,500.00 · FHA, 3.5% down: 6.000% (APR 6.742%), 30 años, pago inicial $13,851.00 · estimado con tasas de muestra, 24 de noviembre de 2026
Terraza 12 x 16: Madera tratada: +$9,800.00 · sumarla a su préstamo: $0.43 en el cierre, $95.08 al mes · pagar al constructor en efectivo: $9,885.29 en el cierre, $14.54 al mes · pagar en efectivo tras el cierre: unos $13,500.00 · FHA, all available cash: 6.000% (APR 6.693%), 30 años, pago inicial $20,152.00 · estimado con tasas de muestra, 24 de noviembre de 2026
Terraza 12 x 16: Madera tratada: +$9,800.00 · sumarla a su préstamo: $111.13 en el cierre, $77.56 al mes · pagar al constructor en efectivo: $9,874.90 en el cierre, $14.54 al mes · pagar en efectivo tras el cierre: unos $13,500.00 · USDA, nothing down: 6.125% (APR 6.603%), 30 años, pago inicial $0.00 · estimado con tasas de muestra, 24 de noviembre de 2026
Terraza 12 x 16: Madera tratada: +$9,800.00 · sumarla a su préstamo: $416.92 en el cierre, $86.91 al mes · pagar al constructor en efectivo: $9,885.29 en el cierre, -$94.22 al mes · pagar en efectivo tras el cierre: unos $13,500.00 · Conventional, 3% down: 6.500% (APR 7.817%), 30 años, pago inicial $11,872.00 · estimado con tasas de muestra, 24 de noviembre de 2026
= 0
# JSON is what it was.
$ quoin quote --rates data/rates data/buyer.json --brief --json | digest
2> quoin quote: an answer has one form: use one of --json, --csv and --brief
2>   'quoin quote --help' explains it with an example
= 2
