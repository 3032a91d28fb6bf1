# Where each figure comes from, for the lender partner.
$ quoin recheck data/buyer.json --rates data/rates --scenario "A third down"
Where each figure comes from
Two Lots, Nobody
Cabin (ranch, 600 sq ft), elevation Plain, lot 1, for Somebody
as of 24 November 2026; price book 1, in force to 31 December 2026; closing 15 January 2027
A third down: $6,015.72 a month. A short loan: 6.000 % note rate, 1.000 points, APR 7.739 %, 1
year, $35,000.00 down (33.94 %), LTV 66.06 %, 60-day lock
91 figures, each reckoned a second time from its formula in exact fractions: all agree to the last
digit. Roundings are numbered as in docs/roundings.md.

The home
  Base price, Cabin: $100,000.00
      price book 1; from 2026-11-01; before 2027-01-01; Nobody
  Elevation, Plain: $0.00
      price book 1; from 2026-11-01; before 2027-01-01; Nobody
  Lot premium, lot 1: $0.00
      price book 1; from 2026-11-01; before 2027-01-01; Nobody
  Floor: Oak: $2,040.00
      = 480 × 4.25, to the cent
      rounding 1; price book 1; from 2026-11-01; before 2027-01-01; Nobody
  Insulated flue: $900.00
      price book 1; from 2026-11-01; before 2027-01-01; Nobody
  Shelves: $180.00
      = 3 × 60, to the cent
      rounding 1; price book 1; from 2026-11-01; before 2027-01-01; Nobody
  Wall color: Sand: $0.00
      price book 1; from 2026-11-01; before 2027-01-01; Nobody
  contract price: $103,120.00
      = Base price, Cabin + Elevation, Plain + Lot premium, lot 1 + Floor: Oak + Insulated flue +
        Shelves + Wall color: Sand
        with Base price, Cabin $100,000.00; Elevation, Plain $0.00; Lot premium, lot 1 $0.00;
        Floor: Oak $2,040.00; Insulated flue $900.00; Shelves $180.00; Wall color: Sand $0.00
  earnest money: $1,000.00
      price book 1; from 2026-11-01; before 2027-01-01; Nobody
  structural options among the lines: $0.00
      price book 1; from 2026-11-01; before 2027-01-01; Nobody
  other options among the lines: $3,120.00
      price book 1; from 2026-11-01; before 2027-01-01; Nobody
  deposit, of structural options: 50 %
      price book 1; from 2026-11-01; before 2027-01-01; Nobody
  deposit, of other options: 10 %
      price book 1; from 2026-11-01; before 2027-01-01; Nobody
  option deposit: $312.00
      = (the greatest of (structural options among the lines; 0) × deposit, of structural options
        ÷ 100 to the cent) + (the greatest of (other options among the lines; 0) × deposit, of
        other options ÷ 100 to the cent)
        with structural options among the lines $0.00; deposit, of structural options 50 %; other
        options among the lines $3,120.00; deposit, of other options 10 %
      rounding 2; price book 1; from 2026-11-01; before 2027-01-01; Nobody
  deposits: $1,312.00
      = earnest money + option deposit
        with earnest money $1,000.00; option deposit $312.00

The loan
  value (the price, until it is appraised): $103,120.00
      = contract price
        with contract price $103,120.00
  down payment asked for: $35,000.00
      inquiry; the buyer's choice
  base loan: $68,120.00
      = the greatest of (contract price − down payment asked for; 0), down to the dollar
        with contract price $103,120.00; down payment asked for $35,000.00
      rounding 4
  down payment: $35,000.00
      = contract price − base loan
        with contract price $103,120.00; base loan $68,120.00
  LTV, as the tables read it: 66.05 %
      = base loan × 100 ÷ value (the price, until it is appraised), cut to 2 decimals
        with base loan $68,120.00; value (the price, until it is appraised) $103,120.00
      rounding 5
  the most the program lends, of the value: 95 %
      short maximum_ltv: score >= 600; sample: invented
  the most the program lends: $97,964.00
      = value (the price, until it is appraised) × the most the program lends, of the value ÷ 100,
        down to the cent
        with value (the price, until it is appraised) $103,120.00; the most the program lends, of
        the value 95 %
      rounding 6
  loan: $68,120.00
      = base loan
        with base loan $68,120.00
  note rate: 6 %
      rate sheet day; from 2026-11-20; before 2026-12-05; sample: Nobody's lender (none:
        invented)
  points of this rate: 1 %
      rate sheet day; from 2026-11-20; before 2026-12-05; sample: Nobody's lender (none:
        invented)
  points: 1 %
      = points of this rate
        with points of this rate 1 %
  term: 12
      inquiry; the buyer's choice
  principal and interest, a month: $5,862.85
      = level payment of (loan; note rate; term), to the cent
        with loan $68,120.00; note rate 6 %; term 12
      rounding 12

The month
  assessed, of the market value: 100 %
      here property tax; sample: invented
  assessed value: $103,120.00
      = contract price × assessed, of the market value ÷ 100, to the dollar
        with contract price $103,120.00; assessed, of the market value 100 %
      rounding 19; here property tax; sample: invented
  taxable value: $103,120.00
      = assessed value − the least of (0; assessed value)
        with assessed value $103,120.00
  All levies, a year: $1,237.44
      = taxable value × 12 ÷ 1000, to the cent
        with taxable value $103,120.00
      rounding 20; here levy; sample: invented
  property tax, a year: $1,237.44
      = All levies, a year
        with All levies, a year $1,237.44
  district charges, a year: $0.00
      = 0
  dwelling value, of the price: 80 %
      here insurance; sample: invented
  dwelling value: $82,496.00
      = contract price × dwelling value, of the price ÷ 100, to the dollar
        with contract price $103,120.00; dwelling value, of the price 80 %
      rounding 19; here insurance; sample: invented
  homeowner's insurance, a year for each $1,000: 3.6
      here homeowner's insurance: any; sample: invented
  homeowner's insurance, a year: $296.99
      = dwelling value × homeowner's insurance, a year for each $1,000 ÷ 1000, to the cent
        with dwelling value $82,496.00; homeowner's insurance, a year for each $1,000 3.6
      rounding 20; here insurance; sample: invented
  flood insurance, a year: $0.00
      here flood insurance; sample: invented
  wind insurance, a year: $0.00
      here wind insurance; sample: invented
  Association, a month: $25.00
      here dues; sample: invented
  dues, a month: $25.00
      = Association, a month
        with Association, a month $25.00
  property tax, a month: $103.12
      = property tax, a year ÷ 12, to the cent
        with property tax, a year $1,237.44
      rounding 21
  district charges, a month: $0.00
      = district charges, a year ÷ 12, to the cent
        with district charges, a year $0.00
      rounding 21
  homeowner's insurance, a month: $24.75
      = homeowner's insurance, a year ÷ 12, to the cent
        with homeowner's insurance, a year $296.99
      rounding 21
  flood insurance, a month: $0.00
      = flood insurance, a year ÷ 12, to the cent
        with flood insurance, a year $0.00
      rounding 21
  wind insurance, a month: $0.00
      = wind insurance, a year ÷ 12, to the cent
        with wind insurance, a year $0.00
      rounding 21
  the month, settled: $6,015.72
      = principal and interest, a month + property tax, a month + district charges, a month +
        homeowner's insurance, a month + flood insurance, a month + wind insurance, a month +
        dues, a month
        with principal and interest, a month $5,862.85; property tax, a month $103.12; district
        charges, a month $0.00; homeowner's insurance, a month $24.75; flood insurance, a month
        $0.00; wind insurance, a month $0.00; dues, a month $25.00

Closing costs
  Title and recording (services shopped for): $900.00
      rounding 10; here closing costs; sample: invented
  closing costs of the buyer: $900.00
      = Title and recording (services shopped for)
        with Title and recording (services shopped for) $900.00

Prepaids and escrow
  days of the year for prepaid interest: 360
      rate sheet day; sample: Nobody's lender
  days from closing to the month's end: 17
  prepaid interest, a day: $11.35
      = loan × note rate ÷ 100 ÷ days of the year for prepaid interest, to the cent
        with loan $68,120.00; note rate 6 %; days of the year for prepaid interest 360
      rounding 22
  prepaid interest: $192.95
      = prepaid interest, a day × days from closing to the month's end
        with prepaid interest, a day $11.35; days from closing to the month's end 17
  months of insurance prepaid: 12
      here escrow; sample: invented
  insurance prepaid: $296.99
      = (homeowner's insurance, a year + flood insurance, a year + wind insurance, a year) ×
        months of insurance prepaid ÷ 12, to the cent
        with homeowner's insurance, a year $296.99; flood insurance, a year $0.00; wind insurance,
        a year $0.00; months of insurance prepaid 12
      rounding 21
  bills prepaid: $296.99
      = insurance prepaid
        with insurance prepaid $296.99
  property tax and district charges, due 2027-06-30: $618.72
      = (property tax, a year + district charges, a year) × 50 ÷ 100, to the cent
        with property tax, a year $1,237.44; district charges, a year $0.00
      rounding 23
  property tax and district charges, due 2027-12-31: $618.72
      = (property tax, a year + district charges, a year) × 50 ÷ 100, to the cent
        with property tax, a year $1,237.44; district charges, a year $0.00
      rounding 23
  homeowner's insurance, due 2028-01-15: $296.99
      = homeowner's insurance, a year
        with homeowner's insurance, a year $296.99
  bills of the first escrow year: $1,534.43
      = property tax and district charges, due 2027-06-30 + property tax and district charges, due
        2027-12-31 + homeowner's insurance, due 2028-01-15
        with property tax and district charges, due 2027-06-30 $618.72; property tax and district
        charges, due 2027-12-31 $618.72; homeowner's insurance, due 2028-01-15 $296.99
  into escrow, a month: $127.87
      = bills of the first escrow year ÷ 12, to the cent
        with bills of the first escrow year $1,534.43
      rounding 24; aggregate analysis; published: 12 CFR 1024.17(c), (d)
  months of cushion: 2
      here escrow; sample: invented
  cushion: $255.73
      = bills of the first escrow year × months of cushion ÷ 12, down to the cent
        with bills of the first escrow year $1,534.43; months of cushion 2
      rounding 25; aggregate analysis; published: 12 CFR 1024.17(c), (d)
  lowest month-end balance, begun with nothing: -$127.86
      = the least of (0; into escrow, a month × 1 − 0; into escrow, a month × 2 − 0; into escrow,
        a month × 3 − 0; into escrow, a month × 4 − property tax and district charges, due
        2027-06-30; into escrow, a month × 5 − property tax and district charges, due 2027-06-30;
        into escrow, a month × 6 − property tax and district charges, due 2027-06-30; into escrow,
        a month × 7 − property tax and district charges, due 2027-06-30; into escrow, a month × 8
        − property tax and district charges, due 2027-06-30; into escrow, a month × 9 − property
        tax and district charges, due 2027-06-30; into escrow, a month × 10 − (property tax and
        district charges, due 2027-06-30 + property tax and district charges, due 2027-12-31);
        into escrow, a month × 11 − (property tax and district charges, due 2027-06-30 + property
        tax and district charges, due 2027-12-31 + homeowner's insurance, due 2028-01-15); into
        escrow, a month × 12 − (property tax and district charges, due 2027-06-30 + property tax
        and district charges, due 2027-12-31 + homeowner's insurance, due 2028-01-15))
        with into escrow, a month $127.87; property tax and district charges, due 2027-06-30
        $618.72; property tax and district charges, due 2027-12-31 $618.72; homeowner's insurance,
        due 2028-01-15 $296.99
      rounding 25; aggregate analysis; published: 12 CFR 1024.17(c), (d)
  escrow, first deposit: $383.59
      = cushion − lowest month-end balance, begun with nothing
        with cushion $255.73; lowest month-end balance, begun with nothing -$127.86
      rounding 25; aggregate analysis; published: 12 CFR 1024.17(c), (d)

Credits and the cash to close
  points: $681.20
      = loan × points ÷ 100, to the cent
        with loan $68,120.00; points 1 %
      rounding 9
  interested parties may give, of the value: 3 %
      short contribution_cap: any; sample: invented
  the most that they may give: $3,093.60
      = value (the price, until it is appraised) × interested parties may give, of the value ÷
        100, down to the cent
        with value (the price, until it is appraised) $103,120.00; interested parties may give, of
        the value 3 %
      rounding 11
  credit: Opening weeks: $1,200.00
      inquiry and price book; sample: what was offered
  of it for closing costs: $900.00
      = the least of (credit: Opening weeks − 0; closing costs of the buyer − 0; the most that
        they may give − 0)
        with credit: Opening weeks $1,200.00; closing costs of the buyer $900.00; the most that
        they may give $3,093.60
  of it for prepaids and escrow: $300.00
      = the least of (credit: Opening weeks − of it for closing costs; prepaid interest + bills
        prepaid + escrow, first deposit − 0; the most that they may give − of it for closing
        costs)
        with credit: Opening weeks $1,200.00; of it for closing costs $900.00; prepaid interest
        $192.95; bills prepaid $296.99; escrow, first deposit $383.59; the most that they may give
        $3,093.60
  of it for the upfront fee: $0.00
      = the least of (credit: Opening weeks − (of it for closing costs + of it for prepaids and
        escrow); 0 − 0; the most that they may give − (of it for closing costs + of it for
        prepaids and escrow))
        with credit: Opening weeks $1,200.00; of it for closing costs $900.00; of it for prepaids
        and escrow $300.00; the most that they may give $3,093.60
  credits used: $1,200.00
      = of it for closing costs + of it for prepaids and escrow + of it for the upfront fee
        with of it for closing costs $900.00; of it for prepaids and escrow $300.00; of it for the
        upfront fee $0.00
  points and upfront fees that interested parties pay: $0.00
      = of it for the upfront fee
        with of it for the upfront fee $0.00
  cash needed: $36,254.73
      = down payment + points + closing costs of the buyer + prepaid interest + bills prepaid +
        escrow, first deposit − credits used
        with down payment $35,000.00; points $681.20; closing costs of the buyer $900.00; prepaid
        interest $192.95; bills prepaid $296.99; escrow, first deposit $383.59; credits used
        $1,200.00
  left to bring at closing: $34,942.73
      = cash needed − deposits
        with cash needed $36,254.73; deposits $1,312.00

What the loan costs
  prepaid finance charge: $874.15
      = the greatest of (points; 0) + prepaid interest − points and upfront fees that interested
        parties pay
        with points $681.20; prepaid interest $192.95; points and upfront fees that interested
        parties pay $0.00
      12 CFR 1026; published: 1026.4, 1026.18
  amount financed: $67,245.85
      = loan − prepaid finance charge
        with loan $68,120.00; prepaid finance charge $874.15
      12 CFR 1026; published: 1026.18(b)
  interest of all payments: $2,234.15
      = (interest of months 1 to 12)
      rounding 13
  mortgage insurance of all payments: $0.00
      = (mortgage insurance of months 1 to 12)
  finance charge: $3,108.30
      = interest of all payments + mortgage insurance of all payments + prepaid finance charge
        with interest of all payments $2,234.15; mortgage insurance of all payments $0.00; prepaid
        finance charge $874.15
      12 CFR 1026; published: 1026.4, 1026.18(d)
  total interest percentage: 3.563 %
      = (interest of all payments + prepaid interest) × 100 ÷ loan, to 3 decimals
        with interest of all payments $2,234.15; prepaid interest $192.95; loan $68,120.00
      rounding 29; 12 CFR 1026; published: 1026.37(l)(3)
  loan costs, points and fees that a seller pays among them: $1,581.20
      = the greatest of (points; 0) + Title and recording (services shopped for)
        with points $681.20; Title and recording (services shopped for) $900.00
      12 CFR 1026; published: 1026.37(f)(1)-(3)
  total of payments: $72,128.30
      = (principal and interest of months 1 to 12) + mortgage insurance of all payments + loan
        costs, points and fees that a seller pays among them − points and upfront fees that
        interested parties pay + prepaid interest
        with mortgage insurance of all payments $0.00; loan costs, points and fees that a seller
        pays among them $1,581.20; points and upfront fees that interested parties pay $0.00;
        prepaid interest $192.95
      12 CFR 1026; published: 1026.38(o)(1), comment 38(o)(1)-1
  in five years, as disclosed: $72,128.30
      = (principal and interest of months 1 to 60) + (mortgage insurance of months 1 to 60) + loan
        costs, points and fees that a seller pays among them + prepaid interest
        with loan costs, points and fees that a seller pays among them $1,581.20; prepaid interest
        $192.95
      12 CFR 1026; published: 1026.37(l)(1)
  principal paid in five years, as disclosed: $68,120.00
      = (principal of months 1 to 60)
      12 CFR 1026; published: 1026.37(l)(1)
  whole months to the first payment: 1
      12 CFR 1026; published: Appendix J(b)(5)
  odd days before them: 17
      12 CFR 1026; published: Appendix J(b)(5)
  APR, to eight decimals: 7.73897453 %
      rounding 30; 12 CFR 1026; published: Appendix J(b): the rate at which the next figure
        holds
  worth of all payments at the APR: the amount financed: $67,245.85
      = all payments and insurance, each ÷ (1 + APR, to eight decimals ÷ 1200) to the power of its
        months, and ÷ (1 + odd days before them ÷ 30 × APR, to eight decimals ÷ 1200), to the cent
        with APR, to eight decimals 7.73897453 %; whole months to the first payment 1; odd days
        before them 17
      rounding 30; 12 CFR 1026; published: Appendix J(b)

An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A
licensed loan originator gives those (none is named here yet); the published programs and local law
decide. You may choose any lender.

Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they
hold only when locked. They are samples, not anybody's offer.

Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs
from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep
taxes, insurance and dues as they are today.
= 0
$ quoin recheck data/buyer.json --rates data/rates --scenario "Nobody's"
2> quoin: found no scenario "Nobody's"
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
    "lender": "Sample lender", "license": "none: sample data", "sample_rates": true
  }
  "scenario": {
    "terms": {
      "name": "FHA, 3.5 % down", "program": "fha", "program_name": "FHA-insured fixed"
      "months": 360, "lock_days": 180, "score": 664, "rate": "6", "points": "-0.125"
      "apr": "6.742", "down_payment": "13851.00", "down_percent": "3.50", "ltv": "96.50"
      "down_from_cash": false, "extra_principal": "0.00"
      "fine_print": "There are two premiums: one at closing, usually added to th..." 261 letters #f9633c40
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
        17 rows: value 803512.50, rounding 3 #29f1a904
      ]
    }
    ...
    7 rows #71f6532e
  ]
  "figures": 145, "differences": 0
  "cautions": [
    {
      "code": "estimate", "about": []
      "words": "An estimate as of 24 November 2026: not a Loan Estimate, no..." 232 letters #1af3725c
    }
    {
      "code": "rates_until_locked", "about": []
      "words": "Rates of 20 November 2026 from Sample lender (none: sample ..." 163 letters #81cd8555
    }
    {
      "code": "costs_as_known", "about": []
      "words": "Taxes, insurance, dues and closing costs as known for Venni..." 244 letters #446f1b1b
    }
  ]
}
2976 lines #bf280884
= 0
$ quoin recheck --help
Each figure with its formula, inputs, rounding, rule, date and source
Usage: quoin recheck [OPTIONS] INQUIRY

Positionals:
  INQUIRY TEXT REQUIRED       the buyer's inquiry, a JSON file

Options:
  -h,--help                   Print this help message and exit
  --scenario TEXT REQUIRED    the scenario's name in the inquiry
  --workbook TEXT             also write the figures as live formulas to this .xlsx file
  --force                     replace a file of that name even if quoin did not write it

Example:
  quoin recheck buyer.json --scenario "FHA, 3.5 % down" --workbook check.xlsx

--json and --rates DIR go with every command; 'quoin --help' explains them.

= 0

# A workbook ends in .xlsx, so that a slip cannot write over an inquiry.
$ quoin recheck data/buyer.json --scenario "Conventional, 5% down" --workbook data/buyer.json --force --rates data/rates
2> quoin: found --workbook data/buyer.json
2>   expected a name that ends in .xlsx
2>   [payment-input]
= 1
