# Where each figure comes from, for the lender partner.
$ quoin recheck data/buyer.json --rates data/rates --scenario "A third down"
Where each figure comes from
Two Lots by Nobody
Cabin plan (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
As of November 24, 2026; price book 1, good through December 31, 2026; closing January 15, 2027
A third down: $6,015.72 a month. A short loan: interest rate 6.000%, 1.000 points, APR 7.739%,
loan term 1 year, down payment $35,000.00 (33.94%), LTV 66.06%, 60-day rate lock
91 figures, each worked out a second time from its formula in exact fractions. All agree to the
last digit. Roundings are numbered as in docs/roundings.md.

The home
  Base price, Cabin: $100,000.00
      price book 1; from 11/1/2026; through 12/31/2026; Nobody
  Elevation, Plain: $0.00
      price book 1; from 11/1/2026; through 12/31/2026; Nobody
  Lot premium, lot 1: $0.00
      price book 1; from 11/1/2026; through 12/31/2026; Nobody
  Floor: Oak: $2,040.00
      = 480 × 4.25, rounded to the cent
      rounding 1; price book 1; from 11/1/2026; through 12/31/2026; Nobody
  Insulated flue: $900.00
      price book 1; from 11/1/2026; through 12/31/2026; Nobody
  Shelves: $180.00
      = 3 × 60, rounded to the cent
      rounding 1; price book 1; from 11/1/2026; through 12/31/2026; Nobody
  Wall color: Sand: $0.00
      price book 1; from 11/1/2026; through 12/31/2026; Nobody
  contract price: $103,120.00
      = Base price, Cabin + Elevation, Plain + Lot premium, lot 1 + Floor: Oak + Insulated flue +
        Shelves + Wall color: Sand
        with Base price, Cabin $100,000.00; Elevation, Plain $0.00; Lot premium, lot 1 $0.00;
        Floor: Oak $2,040.00; Insulated flue $900.00; Shelves $180.00; Wall color: Sand $0.00
  earnest money: $1,000.00
      price book 1; from 11/1/2026; through 12/31/2026; Nobody
  structural options in the price: $0.00
      price book 1; from 11/1/2026; through 12/31/2026; Nobody
  other options in the price: $3,120.00
      price book 1; from 11/1/2026; through 12/31/2026; Nobody
  deposit on structural options: 50%
      price book 1; from 11/1/2026; through 12/31/2026; Nobody
  deposit on other options: 10%
      price book 1; from 11/1/2026; through 12/31/2026; Nobody
  option deposit: $312.00
      = (largest of (structural options in the price; 0) × deposit on structural options ÷ 100
        rounded to the cent) + (largest of (other options in the price; 0) × deposit on other
        options ÷ 100 rounded to the cent)
        with structural options in the price $0.00; deposit on structural options 50%; other
        options in the price $3,120.00; deposit on other options 10%
      rounding 2; price book 1; from 11/1/2026; through 12/31/2026; Nobody
  deposits: $1,312.00
      = earnest money + option deposit
        with earnest money $1,000.00; option deposit $312.00

The loan
  value (the price, until the appraisal): $103,120.00
      = contract price
        with contract price $103,120.00
  down payment chosen: $35,000.00
      inquiry; the buyer's choice
  base loan amount: $68,120.00
      = largest of (contract price − down payment chosen; 0), rounded down to the dollar
        with contract price $103,120.00; down payment chosen $35,000.00
      rounding 4
  down payment: $35,000.00
      = contract price − base loan amount
        with contract price $103,120.00; base loan amount $68,120.00
  loan-to-value (LTV), as the tables use it: 66.05%
      = base loan amount × 100 ÷ value (the price, until the appraisal), cut off after 2 decimals
        with base loan amount $68,120.00; value (the price, until the appraisal) $103,120.00
      rounding 5
  largest loan, % of value: 95%
      short maximum_ltv: score >= 600; sample: invented
  largest loan the program allows: $97,964.00
      = value (the price, until the appraisal) × largest loan, % of value ÷ 100, rounded down to
        the cent
        with value (the price, until the appraisal) $103,120.00; largest loan, % of value 95%
      rounding 6
  loan amount: $68,120.00
      = base loan amount
        with base loan amount $68,120.00
  note rate: 6%
      rate sheet day; from 11/20/2026; through 12/4/2026; sample: Nobody's lender (none,
        invented)
  points at this rate: 1%
      rate sheet day; from 11/20/2026; through 12/4/2026; sample: Nobody's lender (none,
        invented)
  points, in percent: 1%
      = points at this rate
        with points at this rate 1%
  loan term, months: 12
      inquiry; the buyer's choice
  principal and interest, monthly: $5,862.85
      = level payment for (loan amount; note rate; loan term, months), rounded to the cent
        with loan amount $68,120.00; note rate 6%; loan term, months 12
      rounding 12

The monthly payment
  assessed value, % of market value: 100%
      here property taxes; sample: invented
  assessed value: $103,120.00
      = contract price × assessed value, % of market value ÷ 100, rounded to the dollar
        with contract price $103,120.00; assessed value, % of market value 100%
      rounding 19; here property taxes; sample: invented
  taxable value: $103,120.00
      = assessed value − smallest of (0; assessed value)
        with assessed value $103,120.00
  All levies, yearly: $1,237.44
      = taxable value × 12 ÷ 1000, rounded to the cent
        with taxable value $103,120.00
      rounding 20; here levy; sample: invented
  property taxes, yearly: $1,237.44
      = All levies, yearly
        with All levies, yearly $1,237.44
  district charges, yearly: $0.00
      = 0
  dwelling value, % of price: 80%
      here insurance; sample: invented
  dwelling value: $82,496.00
      = contract price × dwelling value, % of price ÷ 100, rounded to the dollar
        with contract price $103,120.00; dwelling value, % of price 80%
      rounding 19; here insurance; sample: invented
  homeowner's insurance per $1,000, yearly: 3.6
      here homeowner's insurance: any; sample: invented
  homeowner's insurance, yearly: $296.99
      = dwelling value × homeowner's insurance per $1,000, yearly ÷ 1000, rounded to the cent
        with dwelling value $82,496.00; homeowner's insurance per $1,000, yearly 3.6
      rounding 20; here insurance; sample: invented
  flood insurance, yearly: $0.00
      here flood insurance; sample: invented
  wind insurance, yearly: $0.00
      here wind insurance; sample: invented
  Association, monthly: $25.00
      here HOA dues; sample: invented
  HOA dues, monthly: $25.00
      = Association, monthly
        with Association, monthly $25.00
  property taxes, monthly: $103.12
      = property taxes, yearly ÷ 12, rounded to the cent
        with property taxes, yearly $1,237.44
      rounding 21
  district charges, monthly: $0.00
      = district charges, yearly ÷ 12, rounded to the cent
        with district charges, yearly $0.00
      rounding 21
  homeowner's insurance, monthly: $24.75
      = homeowner's insurance, yearly ÷ 12, rounded to the cent
        with homeowner's insurance, yearly $296.99
      rounding 21
  flood insurance, monthly: $0.00
      = flood insurance, yearly ÷ 12, rounded to the cent
        with flood insurance, yearly $0.00
      rounding 21
  wind insurance, monthly: $0.00
      = wind insurance, yearly ÷ 12, rounded to the cent
        with wind insurance, yearly $0.00
      rounding 21
  monthly payment, full taxes: $6,015.72
      = principal and interest, monthly + property taxes, monthly + district charges, monthly +
        homeowner's insurance, monthly + flood insurance, monthly + wind insurance, monthly + HOA
        dues, monthly
        with principal and interest, monthly $5,862.85; property taxes, monthly $103.12; district
        charges, monthly $0.00; homeowner's insurance, monthly $24.75; flood insurance, monthly
        $0.00; wind insurance, monthly $0.00; HOA dues, monthly $25.00

Closing costs
  Title and recording (services you can shop for): $900.00
      rounding 10; here closing costs; sample: invented
  closing costs the buyer pays: $900.00
      = Title and recording (services you can shop for)
        with Title and recording (services you can shop for) $900.00

Prepaids and escrow
  days in a year, for prepaid interest: 360
      rate sheet day; sample: Nobody's lender
  days from closing to the end of the month: 17
  prepaid interest, one day: $11.35
      = loan amount × note rate ÷ 100 ÷ days in a year, for prepaid interest, rounded to the cent
        with loan amount $68,120.00; note rate 6%; days in a year, for prepaid interest 360
      rounding 22
  prepaid interest: $192.95
      = prepaid interest, one day × days from closing to the end of the month
        with prepaid interest, one day $11.35; days from closing to the end of the month 17
  months of insurance prepaid: 12
      here escrow; sample: invented
  prepaid insurance: $296.99
      = (homeowner's insurance, yearly + flood insurance, yearly + wind insurance, yearly) ×
        months of insurance prepaid ÷ 12, rounded to the cent
        with homeowner's insurance, yearly $296.99; flood insurance, yearly $0.00; wind insurance,
        yearly $0.00; months of insurance prepaid 12
      rounding 21
  prepaid insurance and taxes: $296.99
      = prepaid insurance
        with prepaid insurance $296.99
  property taxes and district charges, due 6/30/2027: $618.72
      = (property taxes, yearly + district charges, yearly) × 50 ÷ 100, rounded to the cent
        with property taxes, yearly $1,237.44; district charges, yearly $0.00
      rounding 23
  property taxes and district charges, due 12/31/2027: $618.72
      = (property taxes, yearly + district charges, yearly) × 50 ÷ 100, rounded to the cent
        with property taxes, yearly $1,237.44; district charges, yearly $0.00
      rounding 23
  homeowner's insurance, due 1/15/2028: $296.99
      = homeowner's insurance, yearly
        with homeowner's insurance, yearly $296.99
  bills of the first escrow year: $1,534.43
      = property taxes and district charges, due 6/30/2027 + property taxes and district charges,
        due 12/31/2027 + homeowner's insurance, due 1/15/2028
        with property taxes and district charges, due 6/30/2027 $618.72; property taxes and
        district charges, due 12/31/2027 $618.72; homeowner's insurance, due 1/15/2028 $296.99
  paid into escrow, monthly: $127.87
      = bills of the first escrow year ÷ 12, rounded to the cent
        with bills of the first escrow year $1,534.43
      rounding 24; aggregate analysis; published: 12 CFR 1024.17(c), (d)
  cushion, months: 2
      here escrow; sample: invented
  cushion: $255.73
      = bills of the first escrow year × cushion, months ÷ 12, rounded down to the cent
        with bills of the first escrow year $1,534.43; cushion, months 2
      rounding 25; aggregate analysis; published: 12 CFR 1024.17(c), (d)
  lowest month-end balance, starting from zero: -$127.86
      = smallest of (0; paid into escrow, monthly × 1 − 0; paid into escrow, monthly × 2 − 0; paid
        into escrow, monthly × 3 − 0; paid into escrow, monthly × 4 − property taxes and district
        charges, due 6/30/2027; paid into escrow, monthly × 5 − property taxes and district
        charges, due 6/30/2027; paid into escrow, monthly × 6 − property taxes and district
        charges, due 6/30/2027; paid into escrow, monthly × 7 − property taxes and district
        charges, due 6/30/2027; paid into escrow, monthly × 8 − property taxes and district
        charges, due 6/30/2027; paid into escrow, monthly × 9 − property taxes and district
        charges, due 6/30/2027; paid into escrow, monthly × 10 − (property taxes and district
        charges, due 6/30/2027 + property taxes and district charges, due 12/31/2027); paid into
        escrow, monthly × 11 − (property taxes and district charges, due 6/30/2027 + property
        taxes and district charges, due 12/31/2027 + homeowner's insurance, due 1/15/2028); paid
        into escrow, monthly × 12 − (property taxes and district charges, due 6/30/2027 + property
        taxes and district charges, due 12/31/2027 + homeowner's insurance, due 1/15/2028))
        with paid into escrow, monthly $127.87; property taxes and district charges, due 6/30/2027
        $618.72; property taxes and district charges, due 12/31/2027 $618.72; homeowner's
        insurance, due 1/15/2028 $296.99
      rounding 25; aggregate analysis; published: 12 CFR 1024.17(c), (d)
  initial escrow deposit: $383.59
      = cushion − lowest month-end balance, starting from zero
        with cushion $255.73; lowest month-end balance, starting from zero -$127.86
      rounding 25; aggregate analysis; published: 12 CFR 1024.17(c), (d)

Credits and cash to close
  points: $681.20
      = loan amount × points, in percent ÷ 100, rounded to the cent
        with loan amount $68,120.00; points, in percent 1%
      rounding 9
  limit on interested party contributions, % of value: 3%
      short contribution_cap: any; sample: invented
  limit on interested party contributions: $3,093.60
      = value (the price, until the appraisal) × limit on interested party contributions, % of
        value ÷ 100, rounded down to the cent
        with value (the price, until the appraisal) $103,120.00; limit on interested party
        contributions, % of value 3%
      rounding 11
  credit: Opening weeks: $1,200.00
      inquiry and price book; sample: the offer
  part used for closing costs: $900.00
      = smallest of (credit: Opening weeks − 0; closing costs the buyer pays − 0; limit on
        interested party contributions − 0)
        with credit: Opening weeks $1,200.00; closing costs the buyer pays $900.00; limit on
        interested party contributions $3,093.60
  part used for prepaids and escrow: $300.00
      = smallest of (credit: Opening weeks − part used for closing costs; prepaid interest +
        prepaid insurance and taxes + initial escrow deposit − 0; limit on interested party
        contributions − part used for closing costs)
        with credit: Opening weeks $1,200.00; part used for closing costs $900.00; prepaid
        interest $192.95; prepaid insurance and taxes $296.99; initial escrow deposit $383.59;
        limit on interested party contributions $3,093.60
  part used for the upfront fee: $0.00
      = smallest of (credit: Opening weeks − (part used for closing costs + part used for prepaids
        and escrow); 0 − 0; limit on interested party contributions − (part used for closing costs
        + part used for prepaids and escrow))
        with credit: Opening weeks $1,200.00; part used for closing costs $900.00; part used for
        prepaids and escrow $300.00; limit on interested party contributions $3,093.60
  credits used: $1,200.00
      = part used for closing costs + part used for prepaids and escrow + part used for the
        upfront fee
        with part used for closing costs $900.00; part used for prepaids and escrow $300.00; part
        used for the upfront fee $0.00
  points and upfront fees that interested parties pay: $0.00
      = part used for the upfront fee
        with part used for the upfront fee $0.00
  cash needed: $36,254.73
      = down payment + points + closing costs the buyer pays + prepaid interest + prepaid
        insurance and taxes + initial escrow deposit − credits used
        with down payment $35,000.00; points $681.20; closing costs the buyer pays $900.00;
        prepaid interest $192.95; prepaid insurance and taxes $296.99; initial escrow deposit
        $383.59; credits used $1,200.00
  cash to close: $34,942.73
      = cash needed − deposits
        with cash needed $36,254.73; deposits $1,312.00

What the loan costs
  prepaid finance charge: $874.15
      = largest of (points; 0) + prepaid interest − points and upfront fees that interested
        parties pay
        with points $681.20; prepaid interest $192.95; points and upfront fees that interested
        parties pay $0.00
      12 CFR 1026; published: 1026.4, 1026.18
  amount financed: $67,245.85
      = loan amount − prepaid finance charge
        with loan amount $68,120.00; prepaid finance charge $874.15
      12 CFR 1026; published: 1026.18(b)
  interest in all payments: $2,234.15
      = (interest in months 1 to 12)
      rounding 13
  mortgage insurance in all payments: $0.00
      = (mortgage insurance in months 1 to 12)
  finance charge: $3,108.30
      = interest in all payments + mortgage insurance in all payments + prepaid finance charge
        with interest in all payments $2,234.15; mortgage insurance in all payments $0.00; prepaid
        finance charge $874.15
      12 CFR 1026; published: 1026.4, 1026.18(d)
  total interest percentage (TIP): 3.563%
      = (interest in all payments + prepaid interest) × 100 ÷ loan amount, rounded to 3 decimals
        with interest in all payments $2,234.15; prepaid interest $192.95; loan amount $68,120.00
      rounding 29; 12 CFR 1026; published: 1026.37(l)(3)
  loan costs, with points and fees a seller pays: $1,581.20
      = largest of (points; 0) + Title and recording (services you can shop for)
        with points $681.20; Title and recording (services you can shop for) $900.00
      12 CFR 1026; published: 1026.37(f)(1)-(3)
  total of payments: $72,128.30
      = (principal and interest in months 1 to 12) + mortgage insurance in all payments + loan
        costs, with points and fees a seller pays − points and upfront fees that interested
        parties pay + prepaid interest
        with mortgage insurance in all payments $0.00; loan costs, with points and fees a seller
        pays $1,581.20; points and upfront fees that interested parties pay $0.00; prepaid
        interest $192.95
      12 CFR 1026; published: 1026.38(o)(1), comment 38(o)(1)-1
  paid in 5 years, as disclosed: $72,128.30
      = (principal and interest in months 1 to 60) + (mortgage insurance in months 1 to 60) + loan
        costs, with points and fees a seller pays + prepaid interest
        with loan costs, with points and fees a seller pays $1,581.20; prepaid interest $192.95
      12 CFR 1026; published: 1026.37(l)(1)
  principal paid in 5 years, as disclosed: $68,120.00
      = (principal in months 1 to 60)
      12 CFR 1026; published: 1026.37(l)(1)
  whole months to the first payment: 1
      12 CFR 1026; published: Appendix J(b)(5)
  odd days before those months: 17
      12 CFR 1026; published: Appendix J(b)(5)
  APR, to 8 decimals: 7.73897453%
      rounding 30; 12 CFR 1026; published: Appendix J(b): the rate at which the next figure
        holds
  present value of all payments at the APR (the amount financed): $67,245.85
      = sum of all payments with mortgage insurance, each ÷ (1 + APR, to 8 decimals ÷ 1200) to the
        power of its months and ÷ (1 + odd days before those months ÷ 30 × APR, to 8 decimals ÷
        1200), rounded to the cent
        with APR, to 8 decimals 7.73897453%; whole months to the first payment 1; odd days before
        those months 17
      rounding 30; 12 CFR 1026; published: Appendix J(b)

This is an estimate as of November 24, 2026. It is not a Loan Estimate, an approval or an offer to
lend. Those come from a licensed loan originator (none is named here yet). The published program
rules and local law decide what applies. You may choose any lender.

Rates are from Nobody's lender (license: none, invented), dated November 20, 2026 and good through
December 4, 2026. A rate holds only once it is locked. These are sample rates, not an offer from
anyone.

Taxes, insurance, HOA dues and closing costs use the figures on file for Nowhere County (sample
figures). Interest starts at closing. The APR counts prepaid interest and the odd days of the first
period. Totals over the years keep taxes, insurance and dues at today's amounts.
= 0
$ quoin recheck data/buyer.json --rates data/rates --scenario "Nobody's"
2> quoin: found no loan named "Nobody's"
2>   expected one of "Ten percent down", "A third down"
2>   [scenario-unknown]
= 1
$ quoin recheck ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5% down" --json | digest
{
  "question": "recheck"
  "heading": {
    "community": "Oxbarrow Meadow", "builder": "Tarnwick Builders", "buyer": "Buyer 2"
    "prepared_by": "Sales desk, Oxbarrow Meadow", "originator": "", "plan": "Sorrel"
    "elevation": "Field", "lot": "4", "price_book_version": "2026-11"
    "price_book_expires": "2027-01-31", "as_of": "2026-11-24", "contract": "2026-12-05"
    "closing": "2027-05-20", "place": "Venning County", "sample_place": true
    "rate_sheet": "2026-11-20", "rates_date": "2026-11-20", "rates_good_through": "2026-12-18"
    "lender": "Sample lender", "license": "none, sample data", "sample_rates": true
  }
  "scenario": {
    "terms": {
      "name": "FHA, 3.5% down", "program": "fha", "program_name": "FHA, fixed rate", "months": 360
      "lock_days": 180, "score": 664, "rate": "6", "points": "-0.125", "apr": "6.742"
      "down_payment": "13851.00", "down_percent": "3.50", "ltv": "96.50", "down_from_cash": false
      "extra_principal": "0.00"
      "fine_print": "You pay two premiums: one at closing, usually added to the ..." 257 letters #0f36df3d
      "adjustable": null
    }
    "available": true, "refusals": [], "price": "395725.00", "value": "395725.00"
    "base_loan": "381874.00"
    "upfront_fee": {
      "name": "Upfront mortgage insurance premium", "percent": "1.75", "amount": "6682.80"
      "financed": "6682.00"
    }
    "loan": "388556.00"
    "monthly": {
      "principal_and_interest": "2329.59", "mortgage_insurance": "174.05"
      "property_tax": "444.00", "homeowners_insurance": "91.02", "flood_insurance": "0.00"
      "wind_insurance": "0.00", "association_dues": "64.50", "district_charges": "28.55"
      "total": "3131.71"
    }
    "first_year": {
      "months": 12
      "monthly": {
        "principal_and_interest": "2329.59", "mortgage_insurance": "174.05"
        "property_tax": "94.67", "homeowners_insurance": "91.02", "flood_insurance": "0.00"
        "wind_insurance": "0.00", "association_dues": "64.50", "district_charges": "15.53"
        "total": "2769.36"
      }
    }
    "temporary_buydown": null
    "mortgage_insurance": {
      "name": "Annual mortgage insurance premium", "annual_percent": "0.55"
      "first_monthly": "174.05", "payments": 360, "paid_up": false, "last_date": "2057-06-01"
      "whole_term": true, "on_request_payment": 0, "on_request_date": null
    }
    "cash": {
      "down_payment": "13851.00", "upfront_fee_in_cash": "0.80", "points": "-485.70"
      "principal_reduction": "0.00", "closing_costs": "4475.90", "prepaid_interest": "777.12"
      "prepaid_bills": "1753.41", "initial_escrow_deposit": "1690.66", "temporary_buydown": "0.00"
      "credits": "5848.50", "needed": "16214.69", "deposits": "5331.25", "to_close": "10883.44"
    }
    "credits_without_use": "0.00", "credits_over_cap": "0.00", "lender_credit_without_use": "0.00"
    "cost_of_credit": {
      "prepaid_finance_charge": "8760.92", "amount_financed": "379795.08"
      "finance_charge": "499405.97", "total_of_payments": "889919.47"
      "total_interest_percentage": "116.038", "disclosed_in_five_years": "160654.94"
      "disclosed_principal_in_five_years": "26987.74", "buyers_buydown": "0.00"
      "payment_levels": [], "first_period": {"months": 1, "odd_days": 12}, "apr": "6.742"
    }
    "first_payment": "2027-07-01", "payments": 360, "last_payment": "2329.16"
    "total_interest": "450095.97", "paid_in_five_years": "203835.41"
    "paid_over_loan": "1121520.94", "balance_after_five_years": "361568.26"
    "balance_after_ten_years": "325165.84"
  }
  "sections": [
    {
      "title": "The home"
      "figures": [
        {
          "id": "line_1", "name": "Base price, Sorrel", "unit": "dollars", "value": "389900.00"
          "shown": "$389,900.00", "formula": null, "inputs": [], "rounding": null
          "rule": "price book 2026-11", "effective": "2026-11-01", "until": "2027-02-01"
          "beyond_end": false, "status": null, "source": "Tarnwick Builders", "agrees": true
        }
        {
          "id": "line_2", "name": "Elevation, Field", "unit": "dollars", "value": "0.00"
          "shown": "$0.00", "formula": null, "inputs": [], "rounding": null
          "rule": "price book 2026-11", "effective": "2026-11-01", "until": "2027-02-01"
          "beyond_end": false, "status": null, "source": "Tarnwick Builders", "agrees": true
        }
        ...
        {
          "id": "deposits", "name": "deposits", "unit": "dollars", "value": "5331.25"
          "shown": "$5,331.25", "formula": "earnest money + option deposit"
          "inputs": ["earnest_money", "option_deposit"], "rounding": null, "rule": null
          "effective": null, "until": null, "beyond_end": false, "status": null, "source": null
          "agrees": true
        }
        17 rows: value 803512.50, rounding 3 #6009d017
      ]
    }
    ...
    7 rows #6288d280
  ]
  "figures": 145, "differences": 0
  "cautions": [
    {
      "code": "estimate", "about": []
      "words": "This is an estimate as of November 24, 2026. It is not a Lo..." 263 letters #23c23b25
    }
    {
      "code": "rates_until_locked", "about": []
      "words": "Rates are from Sample lender (license: none, sample data), ..." 205 letters #e4abcde2
    }
    {
      "code": "costs_as_known", "about": []
      "words": "Taxes, insurance, HOA dues and closing costs use the figure..." 276 letters #68c1cbdd
    }
  ]
}
2976 lines #d674cabf
= 0
$ quoin recheck --help
Each figure with its formula, inputs, rounding, rule, date and source
Usage: quoin recheck [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT REQUIRED    the loan's name in the inquiry
  --workbook TEXT             also write the figures as live formulas to this .xlsx file
  --force                     replace a file with that name even if quoin did not write it

Example:
  quoin recheck buyer.json --scenario "FHA, 3.5% down" --workbook check.xlsx

--json, --language, --width and --rates work with every command; 'quoin --help' explains them.

= 0

# A workbook ends in .xlsx, so that a slip cannot write over an inquiry.
$ quoin recheck data/buyer.json --scenario "Conventional, 5% down" --workbook data/buyer.json --force --rates data/rates
2> quoin: found --workbook data/buyer.json
2>   expected a name that ends in .xlsx
2>   [payment-input]
= 1
