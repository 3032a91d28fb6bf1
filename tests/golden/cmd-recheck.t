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
$ quoin recheck ../../examples/oxbarrow-meadow/buyers/short-of-cash.json --scenario "FHA, 3.5 % down" --json
{
  "question": "recheck",
  "heading": {
    "community": "Oxbarrow Meadow",
    "builder": "Tarnwick Builders",
    "buyer": "Buyer 2",
    "prepared_by": "Sales desk, Oxbarrow Meadow",
    "originator": "",
    "plan": "Sorrel",
    "elevation": "Field",
    "lot": "4",
    "price_book_version": "2026-11",
    "price_book_expires": "2027-01-31",
    "as_of": "2026-11-24",
    "contract": "2026-12-05",
    "closing": "2027-05-20",
    "place": "Venning County",
    "sample_place": true,
    "rate_sheet": "2026-11-20",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-18",
    "lender": "Sample lender",
    "license": "none: sample data",
    "sample_rates": true
  },
  "scenario": {
    "terms": {
      "name": "FHA, 3.5 % down",
      "program": "fha",
      "program_name": "FHA-insured fixed",
      "months": 360,
      "lock_days": 180,
      "score": 664,
      "rate": "6",
      "points": "-0.125",
      "apr": "6.742",
      "down_payment": "13851.00",
      "down_percent": "3.50",
      "ltv": "96.50",
      "down_from_cash": false,
      "extra_principal": "0.00",
      "fine_print": "There are two premiums: one at closing, usually added to the loan, and one paid monthly. With less than 10 % down the monthly premium lasts as long as the loan and stops only when the loan is paid off or refinanced; with 10 % or more down it lasts eleven years.",
      "adjustable": null
    },
    "available": true,
    "refusals": [],
    "price": "395725.00",
    "value": "395725.00",
    "base_loan": "381874.00",
    "upfront_fee": {
      "name": "Upfront mortgage insurance premium",
      "percent": "1.75",
      "amount": "6682.80",
      "financed": "6682.00"
    },
    "loan": "388556.00",
    "monthly": {
      "principal_and_interest": "2329.59",
      "mortgage_insurance": "174.05",
      "property_tax": "444.00",
      "homeowners_insurance": "91.02",
      "flood_insurance": "0.00",
      "wind_insurance": "0.00",
      "association_dues": "64.50",
      "district_charges": "28.55",
      "total": "3131.71"
    },
    "first_year": {
      "months": 12,
      "monthly": {
        "principal_and_interest": "2329.59",
        "mortgage_insurance": "174.05",
        "property_tax": "94.67",
        "homeowners_insurance": "91.02",
        "flood_insurance": "0.00",
        "wind_insurance": "0.00",
        "association_dues": "64.50",
        "district_charges": "15.53",
        "total": "2769.36"
      }
    },
    "temporary_buydown": null,
    "mortgage_insurance": {
      "name": "Annual mortgage insurance premium",
      "annual_percent": "0.55",
      "first_monthly": "174.05",
      "payments": 360,
      "paid_up": false,
      "last_date": "2057-06-01",
      "whole_term": true,
      "on_request_payment": 0,
      "on_request_date": null
    },
    "cash": {
      "down_payment": "13851.00",
      "upfront_fee_in_cash": "0.80",
      "points": "-485.70",
      "principal_reduction": "0.00",
      "closing_costs": "4475.90",
      "prepaid_interest": "777.12",
      "prepaid_bills": "1753.41",
      "initial_escrow_deposit": "1690.66",
      "temporary_buydown": "0.00",
      "credits": "5848.50",
      "needed": "16214.69",
      "deposits": "5331.25",
      "to_close": "10883.44"
    },
    "credits_without_use": "0.00",
    "credits_over_cap": "0.00",
    "lender_credit_without_use": "0.00",
    "cost_of_credit": {
      "prepaid_finance_charge": "8760.92",
      "amount_financed": "379795.08",
      "finance_charge": "499405.97",
      "total_of_payments": "889919.47",
      "total_interest_percentage": "116.038",
      "disclosed_in_five_years": "160654.94",
      "disclosed_principal_in_five_years": "26987.74",
      "buyers_buydown": "0.00",
      "payment_levels": [],
      "first_period": {
        "months": 1,
        "odd_days": 12
      },
      "apr": "6.742"
    },
    "first_payment": "2027-07-01",
    "payments": 360,
    "last_payment": "2329.16",
    "total_interest": "450095.97",
    "paid_in_five_years": "203835.41",
    "paid_over_loan": "1121520.94",
    "balance_after_five_years": "361568.26",
    "balance_after_ten_years": "325165.84"
  },
  "sections": [
    {
      "title": "The home",
      "figures": [
        {
          "id": "line_1",
          "name": "Base price, Sorrel",
          "unit": "dollars",
          "value": "389900.00",
          "shown": "$389,900.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "line_2",
          "name": "Elevation, Field",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "line_3",
          "name": "Lot premium, lot 4",
          "unit": "dollars",
          "value": "4500.00",
          "shown": "$4,500.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "line_4",
          "name": "Exterior colors: Barn red, cream trim, black door",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "line_5",
          "name": "Garage door opener",
          "unit": "dollars",
          "value": "520.00",
          "shown": "$520.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "line_6",
          "name": "Main-floor flooring: Vinyl plank",
          "unit": "dollars",
          "value": "1755.00",
          "shown": "$1,755.00",
          "formula": "540 × 3.25, to the cent",
          "inputs": [],
          "rounding": 1,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "line_7",
          "name": "Cabinet pulls: Black",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "line_8",
          "name": "Rough plumbing for a bath",
          "unit": "dollars",
          "value": "1350.00",
          "shown": "$1,350.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "line_9",
          "name": "Leave out the lawn",
          "unit": "dollars",
          "value": "-2300.00",
          "shown": "-$2,300.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "contract_price",
          "name": "contract price",
          "unit": "dollars",
          "value": "395725.00",
          "shown": "$395,725.00",
          "formula": "Base price, Sorrel + Elevation, Field + Lot premium, lot 4 + Exterior colors: Barn red, cream trim, black door + Garage door opener + Main-floor flooring: Vinyl plank + Cabinet pulls: Black + Rough plumbing for a bath + Leave out the lawn",
          "inputs": [
            "line_1",
            "line_2",
            "line_3",
            "line_4",
            "line_5",
            "line_6",
            "line_7",
            "line_8",
            "line_9"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "earnest_money",
          "name": "earnest money",
          "unit": "dollars",
          "value": "5000.00",
          "shown": "$5,000.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "structural_options",
          "name": "structural options among the lines",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "other_options",
          "name": "other options among the lines",
          "unit": "dollars",
          "value": "1325.00",
          "shown": "$1,325.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "structural_share",
          "name": "deposit, of structural options",
          "unit": "percent",
          "value": "50",
          "shown": "50 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "other_share",
          "name": "deposit, of other options",
          "unit": "percent",
          "value": "25",
          "shown": "25 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "option_deposit",
          "name": "option deposit",
          "unit": "dollars",
          "value": "331.25",
          "shown": "$331.25",
          "formula": "(the greatest of (structural options among the lines; 0) × deposit, of structural options ÷ 100 to the cent) + (the greatest of (other options among the lines; 0) × deposit, of other options ÷ 100 to the cent)",
          "inputs": [
            "structural_options",
            "structural_share",
            "other_options",
            "other_share"
          ],
          "rounding": 2,
          "rule": "price book 2026-11",
          "effective": "2026-11-01",
          "until": "2027-02-01",
          "beyond_end": false,
          "status": null,
          "source": "Tarnwick Builders",
          "agrees": true
        },
        {
          "id": "deposits",
          "name": "deposits",
          "unit": "dollars",
          "value": "5331.25",
          "shown": "$5,331.25",
          "formula": "earnest money + option deposit",
          "inputs": [
            "earnest_money",
            "option_deposit"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        }
      ]
    },
    {
      "title": "The loan",
      "figures": [
        {
          "id": "value",
          "name": "value (the price, until it is appraised)",
          "unit": "dollars",
          "value": "395725.00",
          "shown": "$395,725.00",
          "formula": "contract price",
          "inputs": [
            "contract_price"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "down_asked",
          "name": "down payment asked for, of the value",
          "unit": "percent",
          "value": "3.5",
          "shown": "3.5 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "inquiry",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": "the buyer's choice",
          "agrees": true
        },
        {
          "id": "base_loan",
          "name": "base loan",
          "unit": "dollars",
          "value": "381874.00",
          "shown": "$381,874.00",
          "formula": "value (the price, until it is appraised) × (100 − down payment asked for, of the value) ÷ 100, down to the cent, down to the dollar",
          "inputs": [
            "value",
            "down_asked"
          ],
          "rounding": 3,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "down_payment",
          "name": "down payment",
          "unit": "dollars",
          "value": "13851.00",
          "shown": "$13,851.00",
          "formula": "contract price − base loan",
          "inputs": [
            "contract_price",
            "base_loan"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "ltv",
          "name": "LTV, as the tables read it",
          "unit": "percent",
          "value": "96.49",
          "shown": "96.49 %",
          "formula": "base loan × 100 ÷ value (the price, until it is appraised), cut to 2 decimals",
          "inputs": [
            "base_loan",
            "value"
          ],
          "rounding": 5,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "maximum_ltv",
          "name": "the most the program lends, of the value",
          "unit": "percent",
          "value": "96.5",
          "shown": "96.5 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "fha maximum_ltv: score >= 580",
          "effective": "2015-09-14",
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "12 USC 1709(b)(9) (3.5 % minimum investment); HUD Handbook 4000.1, II.A (minimum decision credit score); the handbook's start date is from memory",
          "agrees": true
        },
        {
          "id": "most_lent",
          "name": "the most the program lends",
          "unit": "dollars",
          "value": "381874.62",
          "shown": "$381,874.62",
          "formula": "value (the price, until it is appraised) × the most the program lends, of the value ÷ 100, down to the cent",
          "inputs": [
            "value",
            "maximum_ltv"
          ],
          "rounding": 6,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "loan_limit",
          "name": "loan limit of the area",
          "unit": "dollars",
          "value": "541287.00",
          "shown": "$541,287.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "fha loan_limit: area baseline",
          "effective": "2026-01-01",
          "until": "2027-01-01",
          "beyond_end": false,
          "status": "published",
          "source": "HUD Mortgagee Letter 2025-23, one unit: national floor and ceiling",
          "agrees": true
        },
        {
          "id": "upfront_percent",
          "name": "Upfront mortgage insurance premium, of the loan",
          "unit": "percent",
          "value": "1.75",
          "shown": "1.75 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "fha upfront_fee: any",
          "effective": "2023-03-20",
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "HUD Mortgagee Letter 2023-05; HUD Handbook 4000.1, Appendix 1.0; cap of 3 % in 12 USC 1709(c)(2)(A)",
          "agrees": true
        },
        {
          "id": "upfront_fee",
          "name": "Upfront mortgage insurance premium",
          "unit": "dollars",
          "value": "6682.80",
          "shown": "$6,682.80",
          "formula": "base loan × Upfront mortgage insurance premium, of the loan ÷ 100, to the cent",
          "inputs": [
            "base_loan",
            "upfront_percent"
          ],
          "rounding": 7,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "financed_fee",
          "name": "upfront fee in the loan",
          "unit": "dollars",
          "value": "6682.00",
          "shown": "$6,682.00",
          "formula": "Upfront mortgage insurance premium, down to the dollar",
          "inputs": [
            "upfront_fee"
          ],
          "rounding": 7,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "loan",
          "name": "loan",
          "unit": "dollars",
          "value": "388556.00",
          "shown": "$388,556.00",
          "formula": "base loan + upfront fee in the loan",
          "inputs": [
            "base_loan",
            "financed_fee"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "note_rate",
          "name": "note rate",
          "unit": "percent",
          "value": "6",
          "shown": "6 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "rate sheet 2026-11-20",
          "effective": "2026-11-20",
          "until": "2026-12-19",
          "beyond_end": false,
          "status": "sample",
          "source": "Sample lender (none: sample data)",
          "agrees": true
        },
        {
          "id": "points_of_rung",
          "name": "points of this rate",
          "unit": "percent",
          "value": "-0.5",
          "shown": "-0.5 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "rate sheet 2026-11-20",
          "effective": "2026-11-20",
          "until": "2026-12-19",
          "beyond_end": false,
          "status": "sample",
          "source": "Sample lender (none: sample data)",
          "agrees": true
        },
        {
          "id": "points_adjustment_1",
          "name": "adjustment Score",
          "unit": "percent",
          "value": "0.375",
          "shown": "0.375 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "rate sheet 2026-11-20 adjustment: score >= 640, < 680",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "Invented; no lender's or insurer's figures.",
          "agrees": true
        },
        {
          "id": "points_percent",
          "name": "points",
          "unit": "percent",
          "value": "-0.125",
          "shown": "-0.125 %",
          "formula": "points of this rate + adjustment Score",
          "inputs": [
            "points_of_rung",
            "points_adjustment_1"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "term",
          "name": "term",
          "unit": "months",
          "value": "360",
          "shown": "360",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "inquiry",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": "the buyer's choice",
          "agrees": true
        },
        {
          "id": "principal_and_interest",
          "name": "principal and interest, a month",
          "unit": "dollars",
          "value": "2329.59",
          "shown": "$2,329.59",
          "formula": "level payment of (loan; note rate; term), to the cent",
          "inputs": [
            "loan",
            "note_rate",
            "term"
          ],
          "rounding": 12,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        }
      ]
    },
    {
      "title": "The month",
      "figures": [
        {
          "id": "annual_percent",
          "name": "Annual mortgage insurance premium, a year",
          "unit": "percent",
          "value": "0.55",
          "shown": "0.55 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "fha annual_fee: term > 180; base_loan <= 726200; ltv > 95",
          "effective": "2023-03-20",
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "HUD Mortgagee Letter 2023-05 (mortgages endorsed on or after 20 March 2023)",
          "agrees": true
        },
        {
          "id": "upfront_in_loan",
          "name": "upfront premium that is in the loan",
          "unit": "percent",
          "value": "1.75",
          "shown": "1.75 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "mortgage_insurance",
          "name": "Annual mortgage insurance premium, a month at first",
          "unit": "dollars",
          "value": "174.05",
          "shown": "$174.05",
          "formula": "(((balance on HUD's schedule of months 0 to 11) ÷ 12 × Annual mortgage insurance premium, a year ÷ 100 to the cent) ÷ (1 + upfront premium that is in the loan ÷ 100) to the cent) ÷ 12, to the cent",
          "inputs": [
            "annual_percent",
            "upfront_in_loan"
          ],
          "rounding": 15,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "assessed_percent",
          "name": "assessed, of the market value",
          "unit": "percent",
          "value": "88",
          "shown": "88 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county property tax",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "assessed",
          "name": "assessed value",
          "unit": "dollars",
          "value": "348238.00",
          "shown": "$348,238.00",
          "formula": "contract price × assessed, of the market value ÷ 100, to the dollar",
          "inputs": [
            "contract_price",
            "assessed_percent"
          ],
          "rounding": 19,
          "rule": "venning-county property tax",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "exemption_1",
          "name": "Owner-occupied home",
          "unit": "dollars",
          "value": "24000.00",
          "shown": "$24,000.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county exemption",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "exemption_2",
          "name": "Owner-occupied home, third year on",
          "unit": "dollars",
          "value": "13930.00",
          "shown": "$13,930.00",
          "formula": "assessed value × 4 ÷ 100, to the dollar",
          "inputs": [
            "assessed"
          ],
          "rounding": 19,
          "rule": "venning-county exemption",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "taxable",
          "name": "taxable value",
          "unit": "dollars",
          "value": "310308.00",
          "shown": "$310,308.00",
          "formula": "assessed value − the least of (Owner-occupied home + Owner-occupied home, third year on; assessed value)",
          "inputs": [
            "assessed",
            "exemption_1",
            "exemption_2"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "levy_1",
          "name": "County, general, a year",
          "unit": "dollars",
          "value": "1339.91",
          "shown": "$1,339.91",
          "formula": "taxable value × 4.318 ÷ 1000, to the cent",
          "inputs": [
            "taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "levy_2",
          "name": "School district, a year",
          "unit": "dollars",
          "value": "2846.77",
          "shown": "$2,846.77",
          "formula": "taxable value × 9.174 ÷ 1000, to the cent",
          "inputs": [
            "taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "levy_3",
          "name": "Township, roads and bridges, a year",
          "unit": "dollars",
          "value": "380.44",
          "shown": "$380.44",
          "formula": "taxable value × 1.226 ÷ 1000, to the cent",
          "inputs": [
            "taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "levy_4",
          "name": "Fire protection, a year",
          "unit": "dollars",
          "value": "429.78",
          "shown": "$429.78",
          "formula": "taxable value × 1.385 ÷ 1000, to the cent",
          "inputs": [
            "taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "levy_5",
          "name": "Library, a year",
          "unit": "dollars",
          "value": "127.85",
          "shown": "$127.85",
          "formula": "taxable value × 0.412 ÷ 1000, to the cent",
          "inputs": [
            "taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "levy_6",
          "name": "Community college, a year",
          "unit": "dollars",
          "value": "203.25",
          "shown": "$203.25",
          "formula": "taxable value × 0.655 ÷ 1000, to the cent",
          "inputs": [
            "taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "levies",
          "name": "property tax, a year",
          "unit": "dollars",
          "value": "5328.00",
          "shown": "$5,328.00",
          "formula": "County, general, a year + School district, a year + Township, roads and bridges, a year + Fire protection, a year + Library, a year + Community college, a year",
          "inputs": [
            "levy_1",
            "levy_2",
            "levy_3",
            "levy_4",
            "levy_5",
            "levy_6"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "district_1",
          "name": "Oxbarrow drainage district, a year",
          "unit": "dollars",
          "value": "198.60",
          "shown": "$198.60",
          "formula": "taxable value × 0.64 ÷ 1000, to the cent",
          "inputs": [
            "taxable"
          ],
          "rounding": 20,
          "rule": "venning-county district",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "district_2",
          "name": "Street lighting and sidewalk district, a year",
          "unit": "dollars",
          "value": "144.00",
          "shown": "$144.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county district",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "districts",
          "name": "district charges, a year",
          "unit": "dollars",
          "value": "342.60",
          "shown": "$342.60",
          "formula": "Oxbarrow drainage district, a year + Street lighting and sidewalk district, a year",
          "inputs": [
            "district_1",
            "district_2"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "land_percent",
          "name": "the land, of the price",
          "unit": "percent",
          "value": "19",
          "shown": "19 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county land only",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_value",
          "name": "value of the land",
          "unit": "dollars",
          "value": "75188.00",
          "shown": "$75,188.00",
          "formula": "contract price × the land, of the price ÷ 100, to the dollar",
          "inputs": [
            "contract_price",
            "land_percent"
          ],
          "rounding": 19,
          "rule": "venning-county land only",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_assessed",
          "name": "assessed value",
          "unit": "dollars",
          "value": "66165.00",
          "shown": "$66,165.00",
          "formula": "value of the land × assessed, of the market value ÷ 100, to the dollar",
          "inputs": [
            "land_value",
            "assessed_percent"
          ],
          "rounding": 19,
          "rule": "venning-county property tax",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_taxable",
          "name": "taxable value",
          "unit": "dollars",
          "value": "66165.00",
          "shown": "$66,165.00",
          "formula": "assessed value − the least of (0; assessed value)",
          "inputs": [
            "land_assessed"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "land_levy_1",
          "name": "County, general, a year",
          "unit": "dollars",
          "value": "285.70",
          "shown": "$285.70",
          "formula": "taxable value × 4.318 ÷ 1000, to the cent",
          "inputs": [
            "land_taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_levy_2",
          "name": "School district, a year",
          "unit": "dollars",
          "value": "607.00",
          "shown": "$607.00",
          "formula": "taxable value × 9.174 ÷ 1000, to the cent",
          "inputs": [
            "land_taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_levy_3",
          "name": "Township, roads and bridges, a year",
          "unit": "dollars",
          "value": "81.12",
          "shown": "$81.12",
          "formula": "taxable value × 1.226 ÷ 1000, to the cent",
          "inputs": [
            "land_taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_levy_4",
          "name": "Fire protection, a year",
          "unit": "dollars",
          "value": "91.64",
          "shown": "$91.64",
          "formula": "taxable value × 1.385 ÷ 1000, to the cent",
          "inputs": [
            "land_taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_levy_5",
          "name": "Library, a year",
          "unit": "dollars",
          "value": "27.26",
          "shown": "$27.26",
          "formula": "taxable value × 0.412 ÷ 1000, to the cent",
          "inputs": [
            "land_taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_levy_6",
          "name": "Community college, a year",
          "unit": "dollars",
          "value": "43.34",
          "shown": "$43.34",
          "formula": "taxable value × 0.655 ÷ 1000, to the cent",
          "inputs": [
            "land_taxable"
          ],
          "rounding": 20,
          "rule": "venning-county levy",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_levies",
          "name": "property tax, a year",
          "unit": "dollars",
          "value": "1136.06",
          "shown": "$1,136.06",
          "formula": "County, general, a year + School district, a year + Township, roads and bridges, a year + Fire protection, a year + Library, a year + Community college, a year",
          "inputs": [
            "land_levy_1",
            "land_levy_2",
            "land_levy_3",
            "land_levy_4",
            "land_levy_5",
            "land_levy_6"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "land_district_1",
          "name": "Oxbarrow drainage district, a year",
          "unit": "dollars",
          "value": "42.35",
          "shown": "$42.35",
          "formula": "taxable value × 0.64 ÷ 1000, to the cent",
          "inputs": [
            "land_taxable"
          ],
          "rounding": 20,
          "rule": "venning-county district",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_district_2",
          "name": "Street lighting and sidewalk district, a year",
          "unit": "dollars",
          "value": "144.00",
          "shown": "$144.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county district",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "land_districts",
          "name": "district charges, a year",
          "unit": "dollars",
          "value": "186.35",
          "shown": "$186.35",
          "formula": "Oxbarrow drainage district, a year + Street lighting and sidewalk district, a year",
          "inputs": [
            "land_district_1",
            "land_district_2"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "dwelling_percent",
          "name": "dwelling value, of the price",
          "unit": "percent",
          "value": "80",
          "shown": "80 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county insurance",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "dwelling_value",
          "name": "dwelling value",
          "unit": "dollars",
          "value": "316580.00",
          "shown": "$316,580.00",
          "formula": "contract price × dwelling value, of the price ÷ 100, to the dollar",
          "inputs": [
            "contract_price",
            "dwelling_percent"
          ],
          "rounding": 19,
          "rule": "venning-county insurance",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "homeowner_rate",
          "name": "homeowner's insurance, a year for each $1,000",
          "unit": "per thousand",
          "value": "3.45",
          "shown": "3.45",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county homeowner's insurance: dwelling_value > 300000, <= 400000",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "Invented; deductible 1 % for wind and hail.",
          "agrees": true
        },
        {
          "id": "homeowner_yearly",
          "name": "homeowner's insurance, a year",
          "unit": "dollars",
          "value": "1092.20",
          "shown": "$1,092.20",
          "formula": "dwelling value × homeowner's insurance, a year for each $1,000 ÷ 1000, to the cent",
          "inputs": [
            "dwelling_value",
            "homeowner_rate"
          ],
          "rounding": 20,
          "rule": "venning-county insurance",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "flood_yearly",
          "name": "flood insurance, a year",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county flood insurance",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "wind_yearly",
          "name": "wind insurance, a year",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county wind insurance",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "dues_1",
          "name": "Oxbarrow Meadow association, a month",
          "unit": "dollars",
          "value": "46.00",
          "shown": "$46.00",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county dues",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "dues_2",
          "name": "Snow removal, walks and mailboxes, a month",
          "unit": "dollars",
          "value": "18.50",
          "shown": "$18.50",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county dues",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "dues",
          "name": "dues, a month",
          "unit": "dollars",
          "value": "64.50",
          "shown": "$64.50",
          "formula": "Oxbarrow Meadow association, a month + Snow removal, walks and mailboxes, a month",
          "inputs": [
            "dues_1",
            "dues_2"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "tax_month",
          "name": "property tax, a month",
          "unit": "dollars",
          "value": "444.00",
          "shown": "$444.00",
          "formula": "property tax, a year ÷ 12, to the cent",
          "inputs": [
            "levies"
          ],
          "rounding": 21,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "district_month",
          "name": "district charges, a month",
          "unit": "dollars",
          "value": "28.55",
          "shown": "$28.55",
          "formula": "district charges, a year ÷ 12, to the cent",
          "inputs": [
            "districts"
          ],
          "rounding": 21,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "homeowner_month",
          "name": "homeowner's insurance, a month",
          "unit": "dollars",
          "value": "91.02",
          "shown": "$91.02",
          "formula": "homeowner's insurance, a year ÷ 12, to the cent",
          "inputs": [
            "homeowner_yearly"
          ],
          "rounding": 21,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "flood_month",
          "name": "flood insurance, a month",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": "flood insurance, a year ÷ 12, to the cent",
          "inputs": [
            "flood_yearly"
          ],
          "rounding": 21,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "wind_month",
          "name": "wind insurance, a month",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": "wind insurance, a year ÷ 12, to the cent",
          "inputs": [
            "wind_yearly"
          ],
          "rounding": 21,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "month",
          "name": "the month, settled",
          "unit": "dollars",
          "value": "3131.71",
          "shown": "$3,131.71",
          "formula": "principal and interest, a month + property tax, a month + district charges, a month + homeowner's insurance, a month + flood insurance, a month + wind insurance, a month + dues, a month + Annual mortgage insurance premium, a month at first",
          "inputs": [
            "principal_and_interest",
            "tax_month",
            "district_month",
            "homeowner_month",
            "flood_month",
            "wind_month",
            "dues",
            "mortgage_insurance"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "first_year_tax_month",
          "name": "property tax, a month",
          "unit": "dollars",
          "value": "94.67",
          "shown": "$94.67",
          "formula": "property tax, a year ÷ 12, to the cent",
          "inputs": [
            "land_levies"
          ],
          "rounding": 21,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "first_year_district_month",
          "name": "district charges, a month",
          "unit": "dollars",
          "value": "15.53",
          "shown": "$15.53",
          "formula": "district charges, a year ÷ 12, to the cent",
          "inputs": [
            "land_districts"
          ],
          "rounding": 21,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "first_year_month",
          "name": "the month while tax is on land alone",
          "unit": "dollars",
          "value": "2769.36",
          "shown": "$2,769.36",
          "formula": "principal and interest, a month + property tax, a month + district charges, a month + homeowner's insurance, a month + flood insurance, a month + wind insurance, a month + dues, a month + Annual mortgage insurance premium, a month at first",
          "inputs": [
            "principal_and_interest",
            "first_year_tax_month",
            "first_year_district_month",
            "homeowner_month",
            "flood_month",
            "wind_month",
            "dues",
            "mortgage_insurance"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        }
      ]
    },
    {
      "title": "Closing costs",
      "figures": [
        {
          "id": "cost_1",
          "name": "Lender's underwriting fee (origination, a finance charge)",
          "unit": "dollars",
          "value": "1195.00",
          "shown": "$1,195.00",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "rate sheet 2026-11-20",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "Sample lender",
          "agrees": true
        },
        {
          "id": "cost_2",
          "name": "Tax service, life of loan (services not shopped for, a finance charge)",
          "unit": "dollars",
          "value": "84.00",
          "shown": "$84.00",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "rate sheet 2026-11-20",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "Sample lender",
          "agrees": true
        },
        {
          "id": "cost_3",
          "name": "Appraisal (services not shopped for)",
          "unit": "dollars",
          "value": "675.00",
          "shown": "$675.00",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_4",
          "name": "Credit report (services not shopped for)",
          "unit": "dollars",
          "value": "92.50",
          "shown": "$92.50",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_5",
          "name": "Flood determination, life of loan (services not shopped for, a finance charge)",
          "unit": "dollars",
          "value": "22.00",
          "shown": "$22.00",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_6",
          "name": "Settlement agent (services shopped for)",
          "unit": "dollars",
          "value": "595.00",
          "shown": "$595.00",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_7",
          "name": "Lender's title insurance (services shopped for)",
          "unit": "dollars",
          "value": "185.00",
          "shown": "$185.00",
          "formula": "185 + (the greatest of (the least of (loan; 100000) − 0; 0) × 4.1 ÷ 1000 to the cent) + (the greatest of (the least of (loan; 500000) − the least of (loan; 100000); 0) × 2.6 ÷ 1000 to the cent) + (the greatest of (loan − the least of (loan; 500000); 0) × 1.9 ÷ 1000 to the cent) − ((the greatest of (the least of (the least of (loan; contract price); 100000) − 0; 0) × 4.1 ÷ 1000 to the cent) + (the greatest of (the least of (the least of (loan; contract price); 500000) − the least of (the least of (loan; contract price); 100000); 0) × 2.6 ÷ 1000 to the cent) + (the greatest of (the least of (loan; contract price) − the least of (the least of (loan; contract price); 500000); 0) × 1.9 ÷ 1000 to the cent))",
          "inputs": [
            "loan",
            "contract_price"
          ],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_8",
          "name": "Title search and binder (services shopped for)",
          "unit": "dollars",
          "value": "410.00",
          "shown": "$410.00",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_9",
          "name": "Lot survey (services shopped for, paid by seller)",
          "unit": "dollars",
          "value": "460.00",
          "shown": "$460.00",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_10",
          "name": "Recording, deed and mortgage (taxes and government fees)",
          "unit": "dollars",
          "value": "168.00",
          "shown": "$168.00",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_11",
          "name": "Mortgage registration tax (taxes and government fees)",
          "unit": "dollars",
          "value": "699.40",
          "shown": "$699.40",
          "formula": "loan × 0.18 ÷ 100, to the cent",
          "inputs": [
            "loan"
          ],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_12",
          "name": "Deed transfer tax (taxes and government fees, paid by seller)",
          "unit": "dollars",
          "value": "870.60",
          "shown": "$870.60",
          "formula": "contract price × 0.22 ÷ 100, to the cent",
          "inputs": [
            "contract_price"
          ],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_13",
          "name": "Owner's title insurance (other, paid by seller)",
          "unit": "dollars",
          "value": "1178.89",
          "shown": "$1,178.89",
          "formula": "(the greatest of (the least of (contract price; 100000) − 0; 0) × 4.1 ÷ 1000 to the cent) + (the greatest of (the least of (contract price; 500000) − the least of (contract price; 100000); 0) × 2.6 ÷ 1000 to the cent) + (the greatest of (contract price − the least of (contract price; 500000); 0) × 1.9 ÷ 1000 to the cent)",
          "inputs": [
            "contract_price"
          ],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_14",
          "name": "Association's reserve, once (other)",
          "unit": "dollars",
          "value": "350.00",
          "shown": "$350.00",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cost_15",
          "name": "Ten-year structural warranty (other, paid by seller)",
          "unit": "dollars",
          "value": "640.00",
          "shown": "$640.00",
          "formula": null,
          "inputs": [],
          "rounding": 10,
          "rule": "venning-county closing costs",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "closing_costs",
          "name": "closing costs of the buyer",
          "unit": "dollars",
          "value": "4475.90",
          "shown": "$4,475.90",
          "formula": "Lender's underwriting fee (origination, a finance charge) + Tax service, life of loan (services not shopped for, a finance charge) + Appraisal (services not shopped for) + Credit report (services not shopped for) + Flood determination, life of loan (services not shopped for, a finance charge) + Settlement agent (services shopped for) + Lender's title insurance (services shopped for) + Title search and binder (services shopped for) + Recording, deed and mortgage (taxes and government fees) + Mortgage registration tax (taxes and government fees) + Association's reserve, once (other)",
          "inputs": [
            "cost_1",
            "cost_2",
            "cost_3",
            "cost_4",
            "cost_5",
            "cost_6",
            "cost_7",
            "cost_8",
            "cost_10",
            "cost_11",
            "cost_14"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        }
      ]
    },
    {
      "title": "Prepaids and escrow",
      "figures": [
        {
          "id": "per_diem_year",
          "name": "days of the year for prepaid interest",
          "unit": "days",
          "value": "360",
          "shown": "360",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "rate sheet 2026-11-20",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "Sample lender",
          "agrees": true
        },
        {
          "id": "prepaid_days",
          "name": "days from closing to the month's end",
          "unit": "days",
          "value": "12",
          "shown": "12",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "per_diem",
          "name": "prepaid interest, a day",
          "unit": "dollars",
          "value": "64.76",
          "shown": "$64.76",
          "formula": "loan × note rate ÷ 100 ÷ days of the year for prepaid interest, to the cent",
          "inputs": [
            "loan",
            "note_rate",
            "per_diem_year"
          ],
          "rounding": 22,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "prepaid_interest",
          "name": "prepaid interest",
          "unit": "dollars",
          "value": "777.12",
          "shown": "$777.12",
          "formula": "prepaid interest, a day × days from closing to the month's end",
          "inputs": [
            "per_diem",
            "prepaid_days"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "prepaid_insurance_months",
          "name": "months of insurance prepaid",
          "unit": "months",
          "value": "12",
          "shown": "12",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county escrow",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "prepaid_insurance",
          "name": "insurance prepaid",
          "unit": "dollars",
          "value": "1092.20",
          "shown": "$1,092.20",
          "formula": "(homeowner's insurance, a year + flood insurance, a year + wind insurance, a year) × months of insurance prepaid ÷ 12, to the cent",
          "inputs": [
            "homeowner_yearly",
            "flood_yearly",
            "wind_yearly",
            "prepaid_insurance_months"
          ],
          "rounding": 21,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "prepaid_tax_1",
          "name": "property tax and district charges on the land alone, due 2027-05-31",
          "unit": "dollars",
          "value": "661.21",
          "shown": "$661.21",
          "formula": "(property tax, a year + district charges, a year) × 50 ÷ 100, to the cent",
          "inputs": [
            "land_levies",
            "land_districts"
          ],
          "rounding": 23,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "prepaid_bills",
          "name": "bills prepaid",
          "unit": "dollars",
          "value": "1753.41",
          "shown": "$1,753.41",
          "formula": "insurance prepaid + property tax and district charges on the land alone, due 2027-05-31",
          "inputs": [
            "prepaid_insurance",
            "prepaid_tax_1"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "escrow_bill_1",
          "name": "property tax and district charges, due 2027-11-30",
          "unit": "dollars",
          "value": "2835.30",
          "shown": "$2,835.30",
          "formula": "(property tax, a year + district charges, a year) × 50 ÷ 100, to the cent",
          "inputs": [
            "levies",
            "districts"
          ],
          "rounding": 23,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "escrow_bill_2",
          "name": "homeowner's insurance, due 2028-05-20",
          "unit": "dollars",
          "value": "1092.20",
          "shown": "$1,092.20",
          "formula": "homeowner's insurance, a year",
          "inputs": [
            "homeowner_yearly"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "escrow_bill_3",
          "name": "property tax and district charges, due 2028-05-31",
          "unit": "dollars",
          "value": "2835.30",
          "shown": "$2,835.30",
          "formula": "(property tax, a year + district charges, a year) × 50 ÷ 100, to the cent",
          "inputs": [
            "levies",
            "districts"
          ],
          "rounding": 23,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "escrow_yearly",
          "name": "bills of the first escrow year",
          "unit": "dollars",
          "value": "6762.80",
          "shown": "$6,762.80",
          "formula": "property tax and district charges, due 2027-11-30 + homeowner's insurance, due 2028-05-20 + property tax and district charges, due 2028-05-31",
          "inputs": [
            "escrow_bill_1",
            "escrow_bill_2",
            "escrow_bill_3"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "escrow_monthly",
          "name": "into escrow, a month",
          "unit": "dollars",
          "value": "563.57",
          "shown": "$563.57",
          "formula": "bills of the first escrow year ÷ 12, to the cent",
          "inputs": [
            "escrow_yearly"
          ],
          "rounding": 24,
          "rule": "aggregate analysis",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "12 CFR 1024.17(c), (d)",
          "agrees": true
        },
        {
          "id": "cushion_months",
          "name": "months of cushion",
          "unit": "months",
          "value": "2",
          "shown": "2",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "venning-county escrow",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "An invented county. Levies, premiums and fees are of a plausible size; none is anybody's figure.",
          "agrees": true
        },
        {
          "id": "cushion",
          "name": "cushion",
          "unit": "dollars",
          "value": "1127.13",
          "shown": "$1,127.13",
          "formula": "bills of the first escrow year × months of cushion ÷ 12, down to the cent",
          "inputs": [
            "escrow_yearly",
            "cushion_months"
          ],
          "rounding": 25,
          "rule": "aggregate analysis",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "12 CFR 1024.17(c), (d)",
          "agrees": true
        },
        {
          "id": "lowest_balance",
          "name": "lowest month-end balance, begun with nothing",
          "unit": "dollars",
          "value": "-563.53",
          "shown": "-$563.53",
          "formula": "the least of (0; into escrow, a month × 1 − 0; into escrow, a month × 2 − 0; into escrow, a month × 3 − 0; into escrow, a month × 4 − 0; into escrow, a month × 5 − property tax and district charges, due 2027-11-30; into escrow, a month × 6 − property tax and district charges, due 2027-11-30; into escrow, a month × 7 − property tax and district charges, due 2027-11-30; into escrow, a month × 8 − property tax and district charges, due 2027-11-30; into escrow, a month × 9 − property tax and district charges, due 2027-11-30; into escrow, a month × 10 − property tax and district charges, due 2027-11-30; into escrow, a month × 11 − (property tax and district charges, due 2027-11-30 + homeowner's insurance, due 2028-05-20 + property tax and district charges, due 2028-05-31); into escrow, a month × 12 − (property tax and district charges, due 2027-11-30 + homeowner's insurance, due 2028-05-20 + property tax and district charges, due 2028-05-31))",
          "inputs": [
            "escrow_monthly",
            "escrow_bill_1",
            "escrow_bill_2",
            "escrow_bill_3"
          ],
          "rounding": 25,
          "rule": "aggregate analysis",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "12 CFR 1024.17(c), (d)",
          "agrees": true
        },
        {
          "id": "escrow_deposit",
          "name": "escrow, first deposit",
          "unit": "dollars",
          "value": "1690.66",
          "shown": "$1,690.66",
          "formula": "cushion − lowest month-end balance, begun with nothing",
          "inputs": [
            "cushion",
            "lowest_balance"
          ],
          "rounding": 25,
          "rule": "aggregate analysis",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "12 CFR 1024.17(c), (d)",
          "agrees": true
        }
      ]
    },
    {
      "title": "Credits and the cash to close",
      "figures": [
        {
          "id": "points",
          "name": "points (a credit if negative)",
          "unit": "dollars",
          "value": "-485.70",
          "shown": "-$485.70",
          "formula": "loan × points ÷ 100, to the cent",
          "inputs": [
            "loan",
            "points_percent"
          ],
          "rounding": 9,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "principal_reduction",
          "name": "principal reduced at closing, by what is left of it",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": "the least of (the greatest of (0 − points (a credit if negative) − (closing costs of the buyer + prepaid interest + bills prepaid + escrow, first deposit); 0); loan)",
          "inputs": [
            "points",
            "closing_costs",
            "prepaid_interest",
            "prepaid_bills",
            "escrow_deposit",
            "loan"
          ],
          "rounding": null,
          "rule": "premium pricing",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "HUD Reference Guide 2-06",
          "agrees": true
        },
        {
          "id": "upfront_in_cash",
          "name": "upfront fee paid in cash",
          "unit": "dollars",
          "value": "0.80",
          "shown": "$0.80",
          "formula": "the greatest of (Upfront mortgage insurance premium − upfront fee in the loan; 0)",
          "inputs": [
            "upfront_fee",
            "financed_fee"
          ],
          "rounding": 7,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "contribution_percent",
          "name": "interested parties may give, of the price",
          "unit": "percent",
          "value": "6",
          "shown": "6 %",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "fha contribution_cap: any",
          "effective": "2015-09-14",
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "HUD Handbook 4000.1, II.A, interested party contributions; the handbook's start date is from memory",
          "agrees": true
        },
        {
          "id": "contribution_cap",
          "name": "the most that they may give",
          "unit": "dollars",
          "value": "23743.50",
          "shown": "$23,743.50",
          "formula": "contract price × interested parties may give, of the price ÷ 100, down to the cent",
          "inputs": [
            "contract_price",
            "contribution_percent"
          ],
          "rounding": 11,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "credit_1",
          "name": "credit: Closing cost credit with the named lender",
          "unit": "dollars",
          "value": "5848.50",
          "shown": "$5,848.50",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "inquiry and price book",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "sample",
          "source": "what was offered",
          "agrees": true
        },
        {
          "id": "credit_1_use_1",
          "name": "of it for closing costs",
          "unit": "dollars",
          "value": "3990.20",
          "shown": "$3,990.20",
          "formula": "the least of (credit: Closing cost credit with the named lender − 0; the greatest of (closing costs of the buyer + points (a credit if negative); 0) − 0; the most that they may give − 0)",
          "inputs": [
            "credit_1",
            "closing_costs",
            "points",
            "contribution_cap"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "credit_1_use_2",
          "name": "of it for prepaids and escrow",
          "unit": "dollars",
          "value": "1858.30",
          "shown": "$1,858.30",
          "formula": "the least of (credit: Closing cost credit with the named lender − of it for closing costs; the greatest of (prepaid interest + bills prepaid + escrow, first deposit + the least of (closing costs of the buyer + points (a credit if negative); 0); 0) − 0; the most that they may give − of it for closing costs)",
          "inputs": [
            "credit_1",
            "credit_1_use_1",
            "prepaid_interest",
            "prepaid_bills",
            "escrow_deposit",
            "closing_costs",
            "points",
            "contribution_cap"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "credit_1_use_3",
          "name": "of it for the upfront fee",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": "the least of (credit: Closing cost credit with the named lender − (of it for closing costs + of it for prepaids and escrow); upfront fee paid in cash − 0; the most that they may give − (of it for closing costs + of it for prepaids and escrow))",
          "inputs": [
            "credit_1",
            "credit_1_use_1",
            "credit_1_use_2",
            "upfront_in_cash",
            "contribution_cap"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "credits",
          "name": "credits used",
          "unit": "dollars",
          "value": "5848.50",
          "shown": "$5,848.50",
          "formula": "of it for closing costs + of it for prepaids and escrow + of it for the upfront fee",
          "inputs": [
            "credit_1_use_1",
            "credit_1_use_2",
            "credit_1_use_3"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "sellers_points",
          "name": "points and upfront fees that interested parties pay",
          "unit": "dollars",
          "value": "0.00",
          "shown": "$0.00",
          "formula": "of it for the upfront fee",
          "inputs": [
            "credit_1_use_3"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "cash_needed",
          "name": "cash needed",
          "unit": "dollars",
          "value": "16214.69",
          "shown": "$16,214.69",
          "formula": "down payment + points (a credit if negative) + closing costs of the buyer + prepaid interest + bills prepaid + escrow, first deposit + upfront fee paid in cash + principal reduced at closing, by what is left of it − credits used",
          "inputs": [
            "down_payment",
            "points",
            "closing_costs",
            "prepaid_interest",
            "prepaid_bills",
            "escrow_deposit",
            "upfront_in_cash",
            "principal_reduction",
            "credits"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "cash_to_close",
          "name": "left to bring at closing",
          "unit": "dollars",
          "value": "10883.44",
          "shown": "$10,883.44",
          "formula": "cash needed − deposits",
          "inputs": [
            "cash_needed",
            "deposits"
          ],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        }
      ]
    },
    {
      "title": "What the loan costs",
      "figures": [
        {
          "id": "prepaid_finance_charge",
          "name": "prepaid finance charge",
          "unit": "dollars",
          "value": "8760.92",
          "shown": "$8,760.92",
          "formula": "the greatest of (points (a credit if negative); 0) + Upfront mortgage insurance premium + prepaid interest + Lender's underwriting fee (origination, a finance charge) + Tax service, life of loan (services not shopped for, a finance charge) + Flood determination, life of loan (services not shopped for, a finance charge) − points and upfront fees that interested parties pay",
          "inputs": [
            "points",
            "upfront_fee",
            "prepaid_interest",
            "cost_1",
            "cost_2",
            "cost_5",
            "sellers_points"
          ],
          "rounding": null,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "1026.4, 1026.18",
          "agrees": true
        },
        {
          "id": "amount_financed",
          "name": "amount financed",
          "unit": "dollars",
          "value": "379795.08",
          "shown": "$379,795.08",
          "formula": "loan − principal reduced at closing, by what is left of it − prepaid finance charge",
          "inputs": [
            "loan",
            "principal_reduction",
            "prepaid_finance_charge"
          ],
          "rounding": null,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "1026.18(b)",
          "agrees": true
        },
        {
          "id": "all_interest",
          "name": "interest of all payments",
          "unit": "dollars",
          "value": "450095.97",
          "shown": "$450,095.97",
          "formula": "(interest of months 1 to 360)",
          "inputs": [],
          "rounding": 13,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "all_insurance",
          "name": "mortgage insurance of all payments",
          "unit": "dollars",
          "value": "40549.08",
          "shown": "$40,549.08",
          "formula": "(mortgage insurance of months 1 to 360)",
          "inputs": [],
          "rounding": null,
          "rule": null,
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": null,
          "source": null,
          "agrees": true
        },
        {
          "id": "finance_charge",
          "name": "finance charge",
          "unit": "dollars",
          "value": "499405.97",
          "shown": "$499,405.97",
          "formula": "interest of all payments + mortgage insurance of all payments + prepaid finance charge",
          "inputs": [
            "all_interest",
            "all_insurance",
            "prepaid_finance_charge"
          ],
          "rounding": null,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "1026.4, 1026.18(d)",
          "agrees": true
        },
        {
          "id": "total_interest_percentage",
          "name": "total interest percentage",
          "unit": "percent",
          "value": "116.038",
          "shown": "116.038 %",
          "formula": "(interest of all payments + prepaid interest) × 100 ÷ loan, to 3 decimals",
          "inputs": [
            "all_interest",
            "prepaid_interest",
            "loan"
          ],
          "rounding": 29,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "1026.37(l)(3)",
          "agrees": true
        },
        {
          "id": "loan_costs",
          "name": "loan costs, points and fees that a seller pays among them",
          "unit": "dollars",
          "value": "9941.30",
          "shown": "$9,941.30",
          "formula": "the greatest of (points (a credit if negative); 0) + Upfront mortgage insurance premium + Lender's underwriting fee (origination, a finance charge) + Tax service, life of loan (services not shopped for, a finance charge) + Appraisal (services not shopped for) + Credit report (services not shopped for) + Flood determination, life of loan (services not shopped for, a finance charge) + Settlement agent (services shopped for) + Lender's title insurance (services shopped for) + Title search and binder (services shopped for)",
          "inputs": [
            "points",
            "upfront_fee",
            "cost_1",
            "cost_2",
            "cost_3",
            "cost_4",
            "cost_5",
            "cost_6",
            "cost_7",
            "cost_8"
          ],
          "rounding": null,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "1026.37(f)(1)-(3)",
          "agrees": true
        },
        {
          "id": "total_of_payments",
          "name": "total of payments",
          "unit": "dollars",
          "value": "889919.47",
          "shown": "$889,919.47",
          "formula": "(principal and interest of months 1 to 360) + mortgage insurance of all payments + loan costs, points and fees that a seller pays among them − points and upfront fees that interested parties pay + prepaid interest",
          "inputs": [
            "all_insurance",
            "loan_costs",
            "sellers_points",
            "prepaid_interest"
          ],
          "rounding": null,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "1026.38(o)(1), comment 38(o)(1)-1",
          "agrees": true
        },
        {
          "id": "disclosed_in_five_years",
          "name": "in five years, as disclosed",
          "unit": "dollars",
          "value": "160654.94",
          "shown": "$160,654.94",
          "formula": "(principal and interest of months 1 to 60) + (mortgage insurance of months 1 to 60) + loan costs, points and fees that a seller pays among them + prepaid interest",
          "inputs": [
            "loan_costs",
            "prepaid_interest"
          ],
          "rounding": null,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "1026.37(l)(1)",
          "agrees": true
        },
        {
          "id": "disclosed_principal_in_five_years",
          "name": "principal paid in five years, as disclosed",
          "unit": "dollars",
          "value": "26987.74",
          "shown": "$26,987.74",
          "formula": "(principal of months 1 to 60)",
          "inputs": [],
          "rounding": null,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "1026.37(l)(1)",
          "agrees": true
        },
        {
          "id": "first_months",
          "name": "whole months to the first payment",
          "unit": "months",
          "value": "1",
          "shown": "1",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "Appendix J(b)(5)",
          "agrees": true
        },
        {
          "id": "odd_days",
          "name": "odd days before them",
          "unit": "days",
          "value": "12",
          "shown": "12",
          "formula": null,
          "inputs": [],
          "rounding": null,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "Appendix J(b)(5)",
          "agrees": true
        },
        {
          "id": "apr",
          "name": "APR, to eight decimals",
          "unit": "percent",
          "value": "6.74215374",
          "shown": "6.74215374 %",
          "formula": null,
          "inputs": [],
          "rounding": 30,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "Appendix J(b): the rate at which the next figure holds",
          "agrees": true
        },
        {
          "id": "worth_at_apr",
          "name": "worth of all payments at the APR: the amount financed",
          "unit": "dollars",
          "value": "379795.08",
          "shown": "$379,795.08",
          "formula": "all payments and insurance, each ÷ (1 + APR, to eight decimals ÷ 1200) to the power of its months, and ÷ (1 + odd days before them ÷ 30 × APR, to eight decimals ÷ 1200), to the cent",
          "inputs": [
            "apr",
            "first_months",
            "odd_days"
          ],
          "rounding": 30,
          "rule": "12 CFR 1026",
          "effective": null,
          "until": null,
          "beyond_end": false,
          "status": "published",
          "source": "Appendix J(b)",
          "agrees": true
        }
      ]
    }
  ],
  "figures": 145,
  "differences": 0,
  "cautions": [
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Sample lender (none: sample data), good through 18 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Venning County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today."
  ]
}
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
$ quoin recheck data/buyer.json --scenario "Conventional, 5 % down" --workbook data/buyer.json --force --rates data/rates
2> quoin: found --workbook data/buyer.json
2>   expected a name that ends in .xlsx
2>   [payment-input]
= 1
