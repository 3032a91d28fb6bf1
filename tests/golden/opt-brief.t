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
{
  "question": "quote"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none, invented", "sample_rates": true
  }
  "lines": [
    {
      "kind": "base", "area": "", "id": "", "name": "Cabin", "detail": "", "quantity": "1"
      "unit": "each", "unit_price": "100000.00", "amount": "100000.00", "structural": false
      "work": [], "note": ""
    }
    {
      "kind": "elevation", "area": "", "id": "", "name": "Plain", "detail": "", "quantity": "1"
      "unit": "each", "unit_price": "0.00", "amount": "0.00", "structural": false, "work": []
      "note": ""
    }
    ...
    {
      "kind": "option", "area": "Inside", "id": "floor", "name": "Floor", "detail": "Oak"
      "quantity": "480", "unit": "sq_ft", "unit_price": "4.25", "amount": "2040.00"
      "structural": false, "work": [], "note": ""
    }
    ...
    {
      "kind": "choice", "area": "Inside", "id": "paint", "name": "Wall color", "detail": "Sand"
      "quantity": "1", "unit": "each", "unit_price": "0.00", "amount": "0.00", "structural": false
      "work": [], "note": ""
    }
    7 rows: quantity 488, unit_price 100964.25, amount 103120.00 #938809ed
  ]
  "options": "3120.00", "incentives": "0.00", "contract_price": "103120.00"
  "requests": [
    {
      "area": "Outside", "text": "A bench by the door", "status": "to_be_confirmed"
      "estimate": "350.00"
    }
  ]
  "open_choices": []
  "credits": [{"id": "opening", "name": "Opening weeks", "use": "closing_costs", "amount": "1200.00"}]
  "incentive_conditions": [], "incentive_lenders": []
  "deposits": {"earnest": "1000.00", "options": "312.00", "paid": null, "note": ""}
  "scenarios": [
    {
      "terms": {
        "name": "Ten percent down", "program": "short", "program_name": "A short loan"
        "months": 12, "lock_days": 60, "score": 700, "rate": "6.25", "points": "0", "apr": "6.422"
        "down_payment": "10312.00", "down_percent": "10.00", "ltv": "90.00"
        "down_from_cash": false, "extra_principal": "0.00"
        "fine_print": "It is invented, for transcripts only.", "adjustable": null
      }
      "available": true, "refusals": [], "price": "103120.00", "value": "103120.00"
      "base_loan": "92808.00"
      "upfront_fee": {"name": "", "percent": "0", "amount": "0.00", "financed": "0.00"}
      "loan": "92808.00"
      "monthly": {
        "principal_and_interest": "7998.32", "mortgage_insurance": "46.40"
        "property_tax": "103.12", "homeowners_insurance": "24.75", "flood_insurance": "0.00"
        "wind_insurance": "0.00", "association_dues": "25.00", "district_charges": "0.00"
        "total": "8197.59"
      }
      "first_year": {
        "months": 0
        "monthly": {
          "principal_and_interest": "7998.32", "mortgage_insurance": "46.40"
          "property_tax": "103.12", "homeowners_insurance": "24.75", "flood_insurance": "0.00"
          "wind_insurance": "0.00", "association_dues": "25.00", "district_charges": "0.00"
          "total": "8197.59"
        }
      }
      "temporary_buydown": null
      "mortgage_insurance": {
        "name": "Mortgage insurance", "annual_percent": "0.6", "first_monthly": "46.40"
        "payments": 2, "paid_up": false, "last_date": "2027-04-01", "whole_term": false
        "on_request_payment": 2, "on_request_date": "2027-04-01"
      }
      "cash": {
        "down_payment": "10312.00", "upfront_fee_in_cash": "0.00", "points": "0.00"
        "principal_reduction": "0.00", "closing_costs": "900.00", "prepaid_interest": "273.87"
        "prepaid_bills": "296.99", "initial_escrow_deposit": "383.59", "temporary_buydown": "0.00"
        "credits": "1200.00", "needed": "10966.45", "deposits": "1312.00", "to_close": "9654.45"
      }
      "credits_without_use": "0.00", "credits_over_cap": "0.00"
      "lender_credit_without_use": "0.00"
      "cost_of_credit": {
        "prepaid_finance_charge": "273.87", "amount_financed": "92534.13"
        "finance_charge": "3538.51", "total_of_payments": "97246.51"
        "total_interest_percentage": "3.713", "disclosed_in_five_years": "97246.51"
        "disclosed_principal_in_five_years": "92808.00", "buyers_buydown": "0.00"
        "payment_levels": [], "first_period": {"months": 1, "odd_days": 17}, "apr": "6.422"
      }
      "first_payment": "2027-03-01", "payments": 12, "last_payment": "7998.32"
      "total_interest": "3171.84", "paid_in_five_years": "108873.53"
      "paid_over_loan": "108873.53", "balance_after_five_years": "0.00"
      "balance_after_ten_years": "0.00"
    }
    ...
    2 rows: price 206240.00, value 206240.00, base_loan 160928.00, loan 160928.00, credits_without_use
      0.00, credits_over_cap 0.00, lender_credit_without_use 0.00, payments 24, last_payment 13861.12,
      total_interest 5405.99, paid_in_five_years 217316.85, paid_over_loan 217316.85,
      balance_after_five_years 0.00, balance_after_ten_years 0.00 #42a78b0e
  ]
  "cautions": [
    {
      "code": "estimate", "about": []
      "words": "This is an estimate as of November 24, 2026. It is not a Lo..." 263 letters #23c23b25
    }
    {
      "code": "rates_until_locked", "about": []
      "words": "Rates are from Nobody's lender (license: none, invented), d..." 203 letters #d004cc3c
    }
    ...
    {
      "code": "agent_license", "about": []
      "words": "For the sales agent: you may explain prices, and how progra..." 243 letters #a0d54217
    }
    5 rows #f59d8c85
  ]
}
407 lines #3e053420
= 0
