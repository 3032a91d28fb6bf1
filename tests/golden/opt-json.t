# Every answer in JSON: money is text, to the cent; the cautions go with it.
$ quoin --json payment --loan 250000 --rate 6.5 --years 30
{
  "question": "payment",
  "loan": "250000.00",
  "rate": "6.5",
  "apr": "6.5",
  "term_months": 360,
  "payment": "1580.17",
  "total_interest": "318861.58",
  "total_of_payments": "568861.58",
  "last_payment": "1580.55",
  "months": 360,
  "cautions": [
    "An estimate of principal and interest alone, with no points or fees, so that the APR equals the rate: not a Loan Estimate, not an approval, not an offer to lend. Taxes, insurance, dues and mortgage insurance come on top. A licensed loan originator gives an offer."
  ]
}
= 0
$ quoin quote data/buyer.json --rates data/rates --json
{
  "question": "quote",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "lines": [
    {
      "kind": "base",
      "area": "",
      "id": "",
      "name": "Cabin",
      "detail": "",
      "quantity": "1",
      "unit": "each",
      "unit_price": "100000.00",
      "amount": "100000.00",
      "structural": false,
      "work": [],
      "note": ""
    },
    {
      "kind": "elevation",
      "area": "",
      "id": "",
      "name": "Plain",
      "detail": "",
      "quantity": "1",
      "unit": "each",
      "unit_price": "0.00",
      "amount": "0.00",
      "structural": false,
      "work": [],
      "note": ""
    },
    {
      "kind": "lot",
      "area": "",
      "id": "",
      "name": "1",
      "detail": "",
      "quantity": "1",
      "unit": "each",
      "unit_price": "0.00",
      "amount": "0.00",
      "structural": false,
      "work": [],
      "note": ""
    },
    {
      "kind": "option",
      "area": "Inside",
      "id": "floor",
      "name": "Floor",
      "detail": "Oak",
      "quantity": "480",
      "unit": "sq ft",
      "unit_price": "4.25",
      "amount": "2040.00",
      "structural": false,
      "work": [],
      "note": ""
    },
    {
      "kind": "option",
      "area": "Inside",
      "id": "flue",
      "name": "Insulated flue",
      "detail": "",
      "quantity": "1",
      "unit": "each",
      "unit_price": "900.00",
      "amount": "900.00",
      "structural": false,
      "work": [
        "structure"
      ],
      "note": ""
    },
    {
      "kind": "option",
      "area": "Inside",
      "id": "shelves",
      "name": "Shelves",
      "detail": "",
      "quantity": "3",
      "unit": "each",
      "unit_price": "60.00",
      "amount": "180.00",
      "structural": false,
      "work": [],
      "note": ""
    },
    {
      "kind": "choice",
      "area": "Inside",
      "id": "paint",
      "name": "Wall color",
      "detail": "Sand",
      "quantity": "1",
      "unit": "each",
      "unit_price": "0.00",
      "amount": "0.00",
      "structural": false,
      "work": [],
      "note": ""
    }
  ],
  "options": "3120.00",
  "incentives": "0.00",
  "contract_price": "103120.00",
  "requests": [
    {
      "area": "Outside",
      "text": "A bench by the door",
      "status": "to be confirmed",
      "estimate": "350.00"
    }
  ],
  "open_choices": [],
  "credits": [
    {
      "id": "opening",
      "name": "Opening weeks",
      "use": "closing costs",
      "amount": "1200.00"
    }
  ],
  "incentive_conditions": [],
  "incentive_lenders": [],
  "deposits": {
    "earnest": "1000.00",
    "options": "312.00",
    "paid": null,
    "note": ""
  },
  "scenarios": [
    {
      "terms": {
        "name": "Ten percent down",
        "program": "short",
        "program_name": "A short loan",
        "months": 12,
        "lock_days": 60,
        "score": 700,
        "rate": "6.25",
        "points": "0",
        "apr": "6.422",
        "down_payment": "10312.00",
        "down_percent": "10.00",
        "ltv": "90.00",
        "down_from_cash": false,
        "extra_principal": "0.00",
        "fine_print": "It is invented, for transcripts only.",
        "adjustable": null
      },
      "available": true,
      "refusals": [],
      "price": "103120.00",
      "value": "103120.00",
      "base_loan": "92808.00",
      "upfront_fee": {
        "name": "",
        "percent": "0",
        "amount": "0.00",
        "financed": "0.00"
      },
      "loan": "92808.00",
      "monthly": {
        "principal_and_interest": "7998.32",
        "mortgage_insurance": "46.40",
        "property_tax": "103.12",
        "homeowners_insurance": "24.75",
        "flood_insurance": "0.00",
        "wind_insurance": "0.00",
        "association_dues": "25.00",
        "district_charges": "0.00",
        "total": "8197.59"
      },
      "first_year": {
        "months": 0,
        "monthly": {
          "principal_and_interest": "7998.32",
          "mortgage_insurance": "46.40",
          "property_tax": "103.12",
          "homeowners_insurance": "24.75",
          "flood_insurance": "0.00",
          "wind_insurance": "0.00",
          "association_dues": "25.00",
          "district_charges": "0.00",
          "total": "8197.59"
        }
      },
      "temporary_buydown": null,
      "mortgage_insurance": {
        "name": "Mortgage insurance",
        "annual_percent": "0.6",
        "first_monthly": "46.40",
        "payments": 2,
        "paid_up": false,
        "last_date": "2027-04-01",
        "whole_term": false,
        "on_request_payment": 2,
        "on_request_date": "2027-04-01"
      },
      "cash": {
        "down_payment": "10312.00",
        "upfront_fee_in_cash": "0.00",
        "points": "0.00",
        "principal_reduction": "0.00",
        "closing_costs": "900.00",
        "prepaid_interest": "273.87",
        "prepaid_bills": "296.99",
        "initial_escrow_deposit": "383.59",
        "temporary_buydown": "0.00",
        "credits": "1200.00",
        "needed": "10966.45",
        "deposits": "1312.00",
        "to_close": "9654.45"
      },
      "credits_without_use": "0.00",
      "credits_over_cap": "0.00",
      "lender_credit_without_use": "0.00",
      "cost_of_credit": {
        "prepaid_finance_charge": "273.87",
        "amount_financed": "92534.13",
        "finance_charge": "3538.51",
        "total_of_payments": "97246.51",
        "total_interest_percentage": "3.713",
        "disclosed_in_five_years": "97246.51",
        "disclosed_principal_in_five_years": "92808.00",
        "buyers_buydown": "0.00",
        "payment_levels": [],
        "first_period": {
          "months": 1,
          "odd_days": 17
        },
        "apr": "6.422"
      },
      "first_payment": "2027-03-01",
      "payments": 12,
      "last_payment": "7998.32",
      "total_interest": "3171.84",
      "paid_in_five_years": "108873.53",
      "paid_over_loan": "108873.53",
      "balance_after_five_years": "0.00",
      "balance_after_ten_years": "0.00"
    },
    {
      "terms": {
        "name": "A third down",
        "program": "short",
        "program_name": "A short loan",
        "months": 12,
        "lock_days": 60,
        "score": 700,
        "rate": "6",
        "points": "1",
        "apr": "7.739",
        "down_payment": "35000.00",
        "down_percent": "33.94",
        "ltv": "66.06",
        "down_from_cash": false,
        "extra_principal": "0.00",
        "fine_print": "It is invented, for transcripts only.",
        "adjustable": null
      },
      "available": true,
      "refusals": [],
      "price": "103120.00",
      "value": "103120.00",
      "base_loan": "68120.00",
      "upfront_fee": {
        "name": "",
        "percent": "0",
        "amount": "0.00",
        "financed": "0.00"
      },
      "loan": "68120.00",
      "monthly": {
        "principal_and_interest": "5862.85",
        "mortgage_insurance": "0.00",
        "property_tax": "103.12",
        "homeowners_insurance": "24.75",
        "flood_insurance": "0.00",
        "wind_insurance": "0.00",
        "association_dues": "25.00",
        "district_charges": "0.00",
        "total": "6015.72"
      },
      "first_year": {
        "months": 0,
        "monthly": {
          "principal_and_interest": "5862.85",
          "mortgage_insurance": "0.00",
          "property_tax": "103.12",
          "homeowners_insurance": "24.75",
          "flood_insurance": "0.00",
          "wind_insurance": "0.00",
          "association_dues": "25.00",
          "district_charges": "0.00",
          "total": "6015.72"
        }
      },
      "temporary_buydown": null,
      "mortgage_insurance": {
        "name": "Mortgage insurance",
        "annual_percent": "0",
        "first_monthly": "0.00",
        "payments": 0,
        "paid_up": false,
        "last_date": null,
        "whole_term": false,
        "on_request_payment": 0,
        "on_request_date": null
      },
      "cash": {
        "down_payment": "35000.00",
        "upfront_fee_in_cash": "0.00",
        "points": "681.20",
        "principal_reduction": "0.00",
        "closing_costs": "900.00",
        "prepaid_interest": "192.95",
        "prepaid_bills": "296.99",
        "initial_escrow_deposit": "383.59",
        "temporary_buydown": "0.00",
        "credits": "1200.00",
        "needed": "36254.73",
        "deposits": "1312.00",
        "to_close": "34942.73"
      },
      "credits_without_use": "0.00",
      "credits_over_cap": "0.00",
      "lender_credit_without_use": "0.00",
      "cost_of_credit": {
        "prepaid_finance_charge": "874.15",
        "amount_financed": "67245.85",
        "finance_charge": "3108.30",
        "total_of_payments": "72128.30",
        "total_interest_percentage": "3.563",
        "disclosed_in_five_years": "72128.30",
        "disclosed_principal_in_five_years": "68120.00",
        "buyers_buydown": "0.00",
        "payment_levels": [],
        "first_period": {
          "months": 1,
          "odd_days": 17
        },
        "apr": "7.739"
      },
      "first_payment": "2027-03-01",
      "payments": 12,
      "last_payment": "5862.80",
      "total_interest": "2234.15",
      "paid_in_five_years": "108443.32",
      "paid_over_loan": "108443.32",
      "balance_after_five_years": "0.00",
      "balance_after_ten_years": "0.00"
    }
  ],
  "cautions": [
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today.",
    "* Marked work on gas, wiring, plumbing or structure follows local code, needs a permit, and is done by a licensed trade, now or later.",
    "For the agent: prices, and how programs work in general, are yours to explain; presenting particular loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment brings duties (12 CFR 1026.24)."
  ]
}
= 0
$ quoin adds data/buyer.json stove --rates data/rates --json
{
  "question": "adds",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "contract_price": "103120.00",
  "scenarios": [
    {
      "terms": {
        "name": "Ten percent down",
        "program": "short",
        "program_name": "A short loan",
        "months": 12,
        "lock_days": 60,
        "score": 700,
        "rate": "6.25",
        "points": "0",
        "apr": "6.422",
        "down_payment": "10312.00",
        "down_percent": "10.00",
        "ltv": "90.00",
        "down_from_cash": false,
        "extra_principal": "0.00",
        "fine_print": "It is invented, for transcripts only.",
        "adjustable": null
      },
      "per_thousand": "86.18",
      "monthly": {
        "principal_and_interest": "7998.32",
        "mortgage_insurance": "46.40",
        "property_tax": "103.12",
        "homeowners_insurance": "24.75",
        "flood_insurance": "0.00",
        "wind_insurance": "0.00",
        "association_dues": "25.00",
        "district_charges": "0.00",
        "total": "8197.59"
      },
      "refusals": []
    },
    {
      "terms": {
        "name": "A third down",
        "program": "short",
        "program_name": "A short loan",
        "months": 12,
        "lock_days": 60,
        "score": 700,
        "rate": "6",
        "points": "1",
        "apr": "7.739",
        "down_payment": "35000.00",
        "down_percent": "33.94",
        "ltv": "66.06",
        "down_from_cash": false,
        "extra_principal": "0.00",
        "fine_print": "It is invented, for transcripts only.",
        "adjustable": null
      },
      "per_thousand": "86.07",
      "monthly": {
        "principal_and_interest": "5862.85",
        "mortgage_insurance": "0.00",
        "property_tax": "103.12",
        "homeowners_insurance": "24.75",
        "flood_insurance": "0.00",
        "wind_insurance": "0.00",
        "association_dues": "25.00",
        "district_charges": "0.00",
        "total": "6015.72"
      },
      "refusals": []
    }
  ],
  "items": [
    {
      "id": "stove",
      "name": "Wood stove",
      "level": "",
      "area": "Inside",
      "standing": "offered",
      "wish": 1,
      "quantity": "1",
      "unit": "each",
      "structural": false,
      "work": [],
      "cutoff": "",
      "note": "",
      "later": null,
      "price": "2600.00",
      "along": [],
      "instead_of": [],
      "by_scenario": [
        {
          "scenario": "Ten percent down",
          "available": true,
          "per_month": "206.06",
          "monthly": {
            "principal_and_interest": "201.67",
            "mortgage_insurance": "1.17",
            "property_tax": "2.60",
            "homeowners_insurance": "0.62",
            "flood_insurance": "0.00",
            "wind_insurance": "0.00",
            "association_dues": "0.00",
            "district_charges": "0.00",
            "total": "206.06"
          },
          "cash_needed": "284.16",
          "cash_to_close": "24.16",
          "in_five_years": "2745.13",
          "over_loan": "2745.13",
          "jumps": []
        },
        {
          "scenario": "A third down",
          "available": true,
          "per_month": "226.99",
          "monthly": {
            "principal_and_interest": "223.77",
            "mortgage_insurance": "0.00",
            "property_tax": "2.60",
            "homeowners_insurance": "0.62",
            "flood_insurance": "0.00",
            "wind_insurance": "0.00",
            "association_dues": "0.00",
            "district_charges": "0.00",
            "total": "226.99"
          },
          "cash_needed": "50.67",
          "cash_to_close": "-209.33",
          "in_five_years": "2774.57",
          "over_loan": "2774.57",
          "jumps": []
        }
      ]
    }
  ],
  "stacked": [
    {
      "id": "floor:oak",
      "name": "Floor",
      "level": "Oak",
      "price": "2040.00",
      "by_scenario": [
        {
          "scenario": "Ten percent down",
          "available": true,
          "per_month": "161.68",
          "monthly": {
            "principal_and_interest": "158.23",
            "mortgage_insurance": "0.92",
            "property_tax": "2.04",
            "homeowners_insurance": "0.49",
            "flood_insurance": "0.00",
            "wind_insurance": "0.00",
            "association_dues": "0.00",
            "district_charges": "0.00",
            "total": "161.68"
          },
          "cash_needed": "222.74",
          "cash_to_close": "18.74",
          "in_five_years": "2153.68",
          "over_loan": "2153.68",
          "jumps": []
        },
        {
          "scenario": "A third down",
          "available": true,
          "per_month": "178.10",
          "monthly": {
            "principal_and_interest": "175.57",
            "mortgage_insurance": "0.00",
            "property_tax": "2.04",
            "homeowners_insurance": "0.49",
            "flood_insurance": "0.00",
            "wind_insurance": "0.00",
            "association_dues": "0.00",
            "district_charges": "0.00",
            "total": "178.10"
          },
          "cash_needed": "39.65",
          "cash_to_close": "-164.35",
          "in_five_years": "2176.95",
          "over_loan": "2176.95",
          "jumps": []
        }
      ]
    },
    {
      "id": "flue",
      "name": "Insulated flue",
      "level": "",
      "price": "900.00",
      "by_scenario": [
        {
          "scenario": "Ten percent down",
          "available": true,
          "per_month": "71.33",
          "monthly": {
            "principal_and_interest": "69.81",
            "mortgage_insurance": "0.40",
            "property_tax": "0.90",
            "homeowners_insurance": "0.22",
            "flood_insurance": "0.00",
            "wind_insurance": "0.00",
            "association_dues": "0.00",
            "district_charges": "0.00",
            "total": "71.33"
          },
          "cash_needed": "98.27",
          "cash_to_close": "8.27",
          "in_five_years": "950.21",
          "over_loan": "950.21",
          "jumps": []
        },
        {
          "scenario": "A third down",
          "available": true,
          "per_month": "78.58",
          "monthly": {
            "principal_and_interest": "77.46",
            "mortgage_insurance": "0.00",
            "property_tax": "0.90",
            "homeowners_insurance": "0.22",
            "flood_insurance": "0.00",
            "wind_insurance": "0.00",
            "association_dues": "0.00",
            "district_charges": "0.00",
            "total": "78.58"
          },
          "cash_needed": "17.44",
          "cash_to_close": "-72.56",
          "in_five_years": "960.38",
          "over_loan": "960.38",
          "jumps": []
        }
      ]
    },
    {
      "id": "shelves",
      "name": "Shelves",
      "level": "",
      "price": "180.00",
      "by_scenario": [
        {
          "scenario": "Ten percent down",
          "available": true,
          "per_month": "14.26",
          "monthly": {
            "principal_and_interest": "13.96",
            "mortgage_insurance": "0.08",
            "property_tax": "0.18",
            "homeowners_insurance": "0.04",
            "flood_insurance": "0.00",
            "wind_insurance": "0.00",
            "association_dues": "0.00",
            "district_charges": "0.00",
            "total": "14.26"
          },
          "cash_needed": "19.73",
          "cash_to_close": "1.73",
          "in_five_years": "190.03",
          "over_loan": "190.03",
          "jumps": []
        },
        {
          "scenario": "A third down",
          "available": true,
          "per_month": "15.72",
          "monthly": {
            "principal_and_interest": "15.50",
            "mortgage_insurance": "0.00",
            "property_tax": "0.18",
            "homeowners_insurance": "0.04",
            "flood_insurance": "0.00",
            "wind_insurance": "0.00",
            "association_dues": "0.00",
            "district_charges": "0.00",
            "total": "15.72"
          },
          "cash_needed": "3.53",
          "cash_to_close": "-14.47",
          "in_five_years": "192.08",
          "over_loan": "192.08",
          "jumps": []
        }
      ]
    }
  ],
  "whole": {
    "id": "",
    "name": "all of it",
    "level": "",
    "price": "3120.00",
    "by_scenario": [
      {
        "scenario": "Ten percent down",
        "available": true,
        "per_month": "247.27",
        "monthly": {
          "principal_and_interest": "242.00",
          "mortgage_insurance": "1.40",
          "property_tax": "3.12",
          "homeowners_insurance": "0.75",
          "flood_insurance": "0.00",
          "wind_insurance": "0.00",
          "association_dues": "0.00",
          "district_charges": "0.00",
          "total": "247.27"
        },
        "cash_needed": "340.74",
        "cash_to_close": "28.74",
        "in_five_years": "3293.92",
        "over_loan": "3293.92",
        "jumps": []
      },
      {
        "scenario": "A third down",
        "available": true,
        "per_month": "272.40",
        "monthly": {
          "principal_and_interest": "268.53",
          "mortgage_insurance": "0.00",
          "property_tax": "3.12",
          "homeowners_insurance": "0.75",
          "flood_insurance": "0.00",
          "wind_insurance": "0.00",
          "association_dues": "0.00",
          "district_charges": "0.00",
          "total": "272.40"
        },
        "cash_needed": "60.62",
        "cash_to_close": "-251.38",
        "in_five_years": "3329.41",
        "over_loan": "3329.41",
        "jumps": []
      }
    ]
  },
  "cautions": [
    "Each figure is the difference of two whole quotes, rounded as they are; what an option adds alone and what it adds stacked can differ by cents, and where a rule's line is crossed by more.",
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today.",
    "For the agent: prices, and how programs work in general, are yours to explain; presenting particular loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment brings duties (12 CFR 1026.24)."
  ]
}
= 0
$ quoin compare data/buyer.json --rates data/rates --json
{
  "question": "compare",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "contract_price": "103120.00",
  "scenarios": [
    {
      "terms": {
        "name": "Ten percent down",
        "program": "short",
        "program_name": "A short loan",
        "months": 12,
        "lock_days": 60,
        "score": 700,
        "rate": "6.25",
        "points": "0",
        "apr": "6.422",
        "down_payment": "10312.00",
        "down_percent": "10.00",
        "ltv": "90.00",
        "down_from_cash": false,
        "extra_principal": "0.00",
        "fine_print": "It is invented, for transcripts only.",
        "adjustable": null
      },
      "available": true,
      "refusals": [],
      "price": "103120.00",
      "value": "103120.00",
      "base_loan": "92808.00",
      "upfront_fee": {
        "name": "",
        "percent": "0",
        "amount": "0.00",
        "financed": "0.00"
      },
      "loan": "92808.00",
      "monthly": {
        "principal_and_interest": "7998.32",
        "mortgage_insurance": "46.40",
        "property_tax": "103.12",
        "homeowners_insurance": "24.75",
        "flood_insurance": "0.00",
        "wind_insurance": "0.00",
        "association_dues": "25.00",
        "district_charges": "0.00",
        "total": "8197.59"
      },
      "first_year": {
        "months": 0,
        "monthly": {
          "principal_and_interest": "7998.32",
          "mortgage_insurance": "46.40",
          "property_tax": "103.12",
          "homeowners_insurance": "24.75",
          "flood_insurance": "0.00",
          "wind_insurance": "0.00",
          "association_dues": "25.00",
          "district_charges": "0.00",
          "total": "8197.59"
        }
      },
      "temporary_buydown": null,
      "mortgage_insurance": {
        "name": "Mortgage insurance",
        "annual_percent": "0.6",
        "first_monthly": "46.40",
        "payments": 2,
        "paid_up": false,
        "last_date": "2027-04-01",
        "whole_term": false,
        "on_request_payment": 2,
        "on_request_date": "2027-04-01"
      },
      "cash": {
        "down_payment": "10312.00",
        "upfront_fee_in_cash": "0.00",
        "points": "0.00",
        "principal_reduction": "0.00",
        "closing_costs": "900.00",
        "prepaid_interest": "273.87",
        "prepaid_bills": "296.99",
        "initial_escrow_deposit": "383.59",
        "temporary_buydown": "0.00",
        "credits": "1200.00",
        "needed": "10966.45",
        "deposits": "1312.00",
        "to_close": "9654.45"
      },
      "credits_without_use": "0.00",
      "credits_over_cap": "0.00",
      "lender_credit_without_use": "0.00",
      "cost_of_credit": {
        "prepaid_finance_charge": "273.87",
        "amount_financed": "92534.13",
        "finance_charge": "3538.51",
        "total_of_payments": "97246.51",
        "total_interest_percentage": "3.713",
        "disclosed_in_five_years": "97246.51",
        "disclosed_principal_in_five_years": "92808.00",
        "buyers_buydown": "0.00",
        "payment_levels": [],
        "first_period": {
          "months": 1,
          "odd_days": 17
        },
        "apr": "6.422"
      },
      "first_payment": "2027-03-01",
      "payments": 12,
      "last_payment": "7998.32",
      "total_interest": "3171.84",
      "paid_in_five_years": "108873.53",
      "paid_over_loan": "108873.53",
      "balance_after_five_years": "0.00",
      "balance_after_ten_years": "0.00",
      "against_first": {
        "per_month": "0.00",
        "cash_needed": "0.00",
        "cash_to_close": "0.00"
      },
      "curve": [
        {
          "year": 0,
          "paid": "10966.45",
          "balance": "92808.00",
          "spent_and_owed": "103774.45"
        },
        {
          "year": 1,
          "paid": "108873.53",
          "balance": "0.00",
          "spent_and_owed": "107039.09"
        }
      ]
    },
    {
      "terms": {
        "name": "A third down",
        "program": "short",
        "program_name": "A short loan",
        "months": 12,
        "lock_days": 60,
        "score": 700,
        "rate": "6",
        "points": "1",
        "apr": "7.739",
        "down_payment": "35000.00",
        "down_percent": "33.94",
        "ltv": "66.06",
        "down_from_cash": false,
        "extra_principal": "0.00",
        "fine_print": "It is invented, for transcripts only.",
        "adjustable": null
      },
      "available": true,
      "refusals": [],
      "price": "103120.00",
      "value": "103120.00",
      "base_loan": "68120.00",
      "upfront_fee": {
        "name": "",
        "percent": "0",
        "amount": "0.00",
        "financed": "0.00"
      },
      "loan": "68120.00",
      "monthly": {
        "principal_and_interest": "5862.85",
        "mortgage_insurance": "0.00",
        "property_tax": "103.12",
        "homeowners_insurance": "24.75",
        "flood_insurance": "0.00",
        "wind_insurance": "0.00",
        "association_dues": "25.00",
        "district_charges": "0.00",
        "total": "6015.72"
      },
      "first_year": {
        "months": 0,
        "monthly": {
          "principal_and_interest": "5862.85",
          "mortgage_insurance": "0.00",
          "property_tax": "103.12",
          "homeowners_insurance": "24.75",
          "flood_insurance": "0.00",
          "wind_insurance": "0.00",
          "association_dues": "25.00",
          "district_charges": "0.00",
          "total": "6015.72"
        }
      },
      "temporary_buydown": null,
      "mortgage_insurance": {
        "name": "Mortgage insurance",
        "annual_percent": "0",
        "first_monthly": "0.00",
        "payments": 0,
        "paid_up": false,
        "last_date": null,
        "whole_term": false,
        "on_request_payment": 0,
        "on_request_date": null
      },
      "cash": {
        "down_payment": "35000.00",
        "upfront_fee_in_cash": "0.00",
        "points": "681.20",
        "principal_reduction": "0.00",
        "closing_costs": "900.00",
        "prepaid_interest": "192.95",
        "prepaid_bills": "296.99",
        "initial_escrow_deposit": "383.59",
        "temporary_buydown": "0.00",
        "credits": "1200.00",
        "needed": "36254.73",
        "deposits": "1312.00",
        "to_close": "34942.73"
      },
      "credits_without_use": "0.00",
      "credits_over_cap": "0.00",
      "lender_credit_without_use": "0.00",
      "cost_of_credit": {
        "prepaid_finance_charge": "874.15",
        "amount_financed": "67245.85",
        "finance_charge": "3108.30",
        "total_of_payments": "72128.30",
        "total_interest_percentage": "3.563",
        "disclosed_in_five_years": "72128.30",
        "disclosed_principal_in_five_years": "68120.00",
        "buyers_buydown": "0.00",
        "payment_levels": [],
        "first_period": {
          "months": 1,
          "odd_days": 17
        },
        "apr": "7.739"
      },
      "first_payment": "2027-03-01",
      "payments": 12,
      "last_payment": "5862.80",
      "total_interest": "2234.15",
      "paid_in_five_years": "108443.32",
      "paid_over_loan": "108443.32",
      "balance_after_five_years": "0.00",
      "balance_after_ten_years": "0.00",
      "against_first": {
        "per_month": "-2181.87",
        "cash_needed": "25288.28",
        "cash_to_close": "25288.28"
      },
      "curve": [
        {
          "year": 0,
          "paid": "36254.73",
          "balance": "68120.00",
          "spent_and_owed": "104374.73"
        },
        {
          "year": 1,
          "paid": "108443.32",
          "balance": "0.00",
          "spent_and_owed": "106608.88"
        }
      ]
    }
  ],
  "points": [
    {
      "scenario": "A third down",
      "rate": "6",
      "rate_without": "6.25",
      "extra_cash": "673.04",
      "saved_monthly": "7.83",
      "break_even": null,
      "stretches": [
        {
          "cheaper": "without",
          "from": 0,
          "to": null,
          "when": "throughout"
        }
      ],
      "words": "they never pay for themselves"
    }
  ],
  "orders": [
    {
      "first": "Ten percent down",
      "second": "A third down",
      "stretches": [
        {
          "cheaper": "Ten percent down",
          "from": 0,
          "to": 4,
          "when": "through payment 4"
        },
        {
          "cheaper": "A third down",
          "from": 5,
          "to": null,
          "when": "from payment 5 on"
        }
      ]
    }
  ],
  "cautions": [
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today.",
    "For the agent: prices, and how programs work in general, are yours to explain; presenting particular loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment brings duties (12 CFR 1026.24)."
  ]
}
= 0
$ quoin shown data/buyer.json --rates data/rates --json
{
  "question": "shown",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "model": {
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "",
    "note": ""
  },
  "included": [
    {
      "area": "Inside",
      "text": "Pine floor"
    }
  ],
  "items": [
    {
      "area": "Outside",
      "name": "Walk-out door",
      "as_shown": "",
      "quantity": null,
      "unit": "each",
      "standing": "not to be had",
      "price": null,
      "yours": null,
      "your_level": "",
      "why_not": "only on lots graded walk-out"
    },
    {
      "area": "Inside",
      "name": "Floor",
      "as_shown": "Oak",
      "quantity": "480",
      "unit": "sq ft",
      "standing": "yours",
      "price": "2040.00",
      "yours": "2040.00",
      "your_level": "Oak",
      "why_not": ""
    },
    {
      "area": "Inside",
      "name": "Wood stove",
      "as_shown": "",
      "quantity": null,
      "unit": "each",
      "standing": "extra",
      "price": "2600.00",
      "yours": null,
      "your_level": "",
      "why_not": ""
    },
    {
      "area": "Inside",
      "name": "Wall color",
      "as_shown": "Sand",
      "quantity": null,
      "unit": "each",
      "standing": "choice at no cost",
      "price": "0.00",
      "yours": "0.00",
      "your_level": "Sand",
      "why_not": ""
    },
    {
      "area": "Inside",
      "name": "Shelves",
      "as_shown": "",
      "quantity": "4",
      "unit": "each",
      "standing": "yours in part",
      "price": "240.00",
      "yours": "180.00",
      "your_level": "",
      "why_not": ""
    },
    {
      "area": "Inside",
      "name": "The armchair",
      "as_shown": "",
      "quantity": null,
      "unit": "each",
      "standing": "not for sale",
      "price": null,
      "yours": null,
      "your_level": "",
      "why_not": ""
    }
  ],
  "shown_total": "4880.00",
  "missing": "2660.00"
}
= 0
$ quoin schedule data/buyer.json --scenario "Ten percent down" --rates data/rates --json
{
  "question": "schedule",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "scenario": {
    "terms": {
      "name": "Ten percent down",
      "program": "short",
      "program_name": "A short loan",
      "months": 12,
      "lock_days": 60,
      "score": 700,
      "rate": "6.25",
      "points": "0",
      "apr": "6.422",
      "down_payment": "10312.00",
      "down_percent": "10.00",
      "ltv": "90.00",
      "down_from_cash": false,
      "extra_principal": "0.00",
      "fine_print": "It is invented, for transcripts only.",
      "adjustable": null
    },
    "available": true,
    "refusals": [],
    "price": "103120.00",
    "value": "103120.00",
    "base_loan": "92808.00",
    "upfront_fee": {
      "name": "",
      "percent": "0",
      "amount": "0.00",
      "financed": "0.00"
    },
    "loan": "92808.00",
    "monthly": {
      "principal_and_interest": "7998.32",
      "mortgage_insurance": "46.40",
      "property_tax": "103.12",
      "homeowners_insurance": "24.75",
      "flood_insurance": "0.00",
      "wind_insurance": "0.00",
      "association_dues": "25.00",
      "district_charges": "0.00",
      "total": "8197.59"
    },
    "first_year": {
      "months": 0,
      "monthly": {
        "principal_and_interest": "7998.32",
        "mortgage_insurance": "46.40",
        "property_tax": "103.12",
        "homeowners_insurance": "24.75",
        "flood_insurance": "0.00",
        "wind_insurance": "0.00",
        "association_dues": "25.00",
        "district_charges": "0.00",
        "total": "8197.59"
      }
    },
    "temporary_buydown": null,
    "mortgage_insurance": {
      "name": "Mortgage insurance",
      "annual_percent": "0.6",
      "first_monthly": "46.40",
      "payments": 2,
      "paid_up": false,
      "last_date": "2027-04-01",
      "whole_term": false,
      "on_request_payment": 2,
      "on_request_date": "2027-04-01"
    },
    "cash": {
      "down_payment": "10312.00",
      "upfront_fee_in_cash": "0.00",
      "points": "0.00",
      "principal_reduction": "0.00",
      "closing_costs": "900.00",
      "prepaid_interest": "273.87",
      "prepaid_bills": "296.99",
      "initial_escrow_deposit": "383.59",
      "temporary_buydown": "0.00",
      "credits": "1200.00",
      "needed": "10966.45",
      "deposits": "1312.00",
      "to_close": "9654.45"
    },
    "credits_without_use": "0.00",
    "credits_over_cap": "0.00",
    "lender_credit_without_use": "0.00",
    "cost_of_credit": {
      "prepaid_finance_charge": "273.87",
      "amount_financed": "92534.13",
      "finance_charge": "3538.51",
      "total_of_payments": "97246.51",
      "total_interest_percentage": "3.713",
      "disclosed_in_five_years": "97246.51",
      "disclosed_principal_in_five_years": "92808.00",
      "buyers_buydown": "0.00",
      "payment_levels": [],
      "first_period": {
        "months": 1,
        "odd_days": 17
      },
      "apr": "6.422"
    },
    "first_payment": "2027-03-01",
    "payments": 12,
    "last_payment": "7998.32",
    "total_interest": "3171.84",
    "paid_in_five_years": "108873.53",
    "paid_over_loan": "108873.53",
    "balance_after_five_years": "0.00",
    "balance_after_ten_years": "0.00"
  },
  "rate_way": "fixed",
  "at_closing": null,
  "rows": [
    {
      "month": 1,
      "due": "2027-03-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "483.38",
      "principal": "7514.94",
      "mortgage_insurance": "46.40",
      "balance": "85293.06",
      "from_buydown": "0.00"
    },
    {
      "month": 2,
      "due": "2027-04-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "444.23",
      "principal": "7554.09",
      "mortgage_insurance": "46.40",
      "balance": "77738.97",
      "from_buydown": "0.00"
    },
    {
      "month": 3,
      "due": "2027-05-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "404.89",
      "principal": "7593.43",
      "mortgage_insurance": "0.00",
      "balance": "70145.54",
      "from_buydown": "0.00"
    },
    {
      "month": 4,
      "due": "2027-06-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "365.34",
      "principal": "7632.98",
      "mortgage_insurance": "0.00",
      "balance": "62512.56",
      "from_buydown": "0.00"
    },
    {
      "month": 5,
      "due": "2027-07-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "325.59",
      "principal": "7672.73",
      "mortgage_insurance": "0.00",
      "balance": "54839.83",
      "from_buydown": "0.00"
    },
    {
      "month": 6,
      "due": "2027-08-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "285.62",
      "principal": "7712.70",
      "mortgage_insurance": "0.00",
      "balance": "47127.13",
      "from_buydown": "0.00"
    },
    {
      "month": 7,
      "due": "2027-09-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "245.45",
      "principal": "7752.87",
      "mortgage_insurance": "0.00",
      "balance": "39374.26",
      "from_buydown": "0.00"
    },
    {
      "month": 8,
      "due": "2027-10-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "205.07",
      "principal": "7793.25",
      "mortgage_insurance": "0.00",
      "balance": "31581.01",
      "from_buydown": "0.00"
    },
    {
      "month": 9,
      "due": "2027-11-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "164.48",
      "principal": "7833.84",
      "mortgage_insurance": "0.00",
      "balance": "23747.17",
      "from_buydown": "0.00"
    },
    {
      "month": 10,
      "due": "2027-12-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "123.68",
      "principal": "7874.64",
      "mortgage_insurance": "0.00",
      "balance": "15872.53",
      "from_buydown": "0.00"
    },
    {
      "month": 11,
      "due": "2028-01-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "82.67",
      "principal": "7915.65",
      "mortgage_insurance": "0.00",
      "balance": "7956.88",
      "from_buydown": "0.00"
    },
    {
      "month": 12,
      "due": "2028-02-01",
      "rate": "6.25",
      "payment": "7998.32",
      "interest": "41.44",
      "principal": "7956.88",
      "mortgage_insurance": "0.00",
      "balance": "0.00",
      "from_buydown": "0.00"
    }
  ],
  "years": [
    {
      "year": 1,
      "last_due": "2028-02-01",
      "payment": "95979.84",
      "interest": "3171.84",
      "principal": "92808.00",
      "mortgage_insurance": "92.80",
      "balance": "0.00",
      "from_buydown": "0.00"
    }
  ],
  "total_interest": "3171.84",
  "total_insurance": "92.80",
  "total_from_buydown": "0.00",
  "extra": null,
  "cautions": [
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today."
  ]
}
= 0
$ quoin list lots data/book.json --json
[
  {
    "lot": "1",
    "status": "free",
    "premium": "0.00",
    "grade": "level",
    "plans": "all",
    "flood_zone": "no",
    "note": ""
  },
  {
    "lot": "2",
    "status": "free",
    "premium": "5000.00",
    "grade": "walk-out",
    "plans": "all",
    "flood_zone": "no",
    "note": ""
  },
  {
    "lot": "3",
    "status": "sold",
    "premium": "0.00",
    "grade": "level",
    "plans": "all",
    "flood_zone": "no",
    "note": ""
  }
]
= 0
$ quoin check data/book.json --json --rates data/rates
{
  "files": [
    {
      "file": "data/book.json",
      "kind": "price book",
      "sound": true,
      "problems": [],
      "ending": []
    }
  ]
}
= 0
$ quoin cash data/buyer.json --scenario "A third down" --rates data/rates --json
{
  "question": "cash",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "scenario": {
    "terms": {
      "name": "A third down",
      "program": "short",
      "program_name": "A short loan",
      "months": 12,
      "lock_days": 60,
      "score": 700,
      "rate": "6",
      "points": "1",
      "apr": "7.739",
      "down_payment": "35000.00",
      "down_percent": "33.94",
      "ltv": "66.06",
      "down_from_cash": false,
      "extra_principal": "0.00",
      "fine_print": "It is invented, for transcripts only.",
      "adjustable": null
    },
    "available": true,
    "refusals": [],
    "price": "103120.00",
    "value": "103120.00",
    "base_loan": "68120.00",
    "upfront_fee": {
      "name": "",
      "percent": "0",
      "amount": "0.00",
      "financed": "0.00"
    },
    "loan": "68120.00",
    "monthly": {
      "principal_and_interest": "5862.85",
      "mortgage_insurance": "0.00",
      "property_tax": "103.12",
      "homeowners_insurance": "24.75",
      "flood_insurance": "0.00",
      "wind_insurance": "0.00",
      "association_dues": "25.00",
      "district_charges": "0.00",
      "total": "6015.72"
    },
    "first_year": {
      "months": 0,
      "monthly": {
        "principal_and_interest": "5862.85",
        "mortgage_insurance": "0.00",
        "property_tax": "103.12",
        "homeowners_insurance": "24.75",
        "flood_insurance": "0.00",
        "wind_insurance": "0.00",
        "association_dues": "25.00",
        "district_charges": "0.00",
        "total": "6015.72"
      }
    },
    "temporary_buydown": null,
    "mortgage_insurance": {
      "name": "Mortgage insurance",
      "annual_percent": "0",
      "first_monthly": "0.00",
      "payments": 0,
      "paid_up": false,
      "last_date": null,
      "whole_term": false,
      "on_request_payment": 0,
      "on_request_date": null
    },
    "cash": {
      "down_payment": "35000.00",
      "upfront_fee_in_cash": "0.00",
      "points": "681.20",
      "principal_reduction": "0.00",
      "closing_costs": "900.00",
      "prepaid_interest": "192.95",
      "prepaid_bills": "296.99",
      "initial_escrow_deposit": "383.59",
      "temporary_buydown": "0.00",
      "credits": "1200.00",
      "needed": "36254.73",
      "deposits": "1312.00",
      "to_close": "34942.73"
    },
    "credits_without_use": "0.00",
    "credits_over_cap": "0.00",
    "lender_credit_without_use": "0.00",
    "cost_of_credit": {
      "prepaid_finance_charge": "874.15",
      "amount_financed": "67245.85",
      "finance_charge": "3108.30",
      "total_of_payments": "72128.30",
      "total_interest_percentage": "3.563",
      "disclosed_in_five_years": "72128.30",
      "disclosed_principal_in_five_years": "68120.00",
      "buyers_buydown": "0.00",
      "payment_levels": [],
      "first_period": {
        "months": 1,
        "odd_days": 17
      },
      "apr": "7.739"
    },
    "first_payment": "2027-03-01",
    "payments": 12,
    "last_payment": "5862.80",
    "total_interest": "2234.15",
    "paid_in_five_years": "108443.32",
    "paid_over_loan": "108443.32",
    "balance_after_five_years": "0.00",
    "balance_after_ten_years": "0.00"
  },
  "costs": [
    {
      "section": "services shopped for",
      "name": "Title and recording",
      "amount": "900.00",
      "paid_by": "buyer",
      "finance_charge": false,
      "before_closing": false
    }
  ],
  "prepaids": [
    {
      "name": "interest, 17 days of $11.35",
      "due": null,
      "amount": "192.95"
    },
    {
      "name": "insurance, 12 months",
      "due": null,
      "amount": "296.99"
    }
  ],
  "escrow": {
    "deposit": "127.87",
    "initial_deposit": "383.59",
    "cushion": "255.73",
    "bills": [
      {
        "name": "property tax and district charges",
        "due": "2027-06-30",
        "amount": "618.72"
      },
      {
        "name": "property tax and district charges",
        "due": "2027-12-31",
        "amount": "618.72"
      },
      {
        "name": "homeowner's insurance",
        "due": "2028-01-15",
        "amount": "296.99"
      }
    ],
    "months": [
      {
        "month": "2027-02-01",
        "deposit": "383.59",
        "paid": "0.00",
        "balance": "383.59"
      },
      {
        "month": "2027-03-01",
        "deposit": "127.87",
        "paid": "0.00",
        "balance": "511.46"
      },
      {
        "month": "2027-04-01",
        "deposit": "127.87",
        "paid": "0.00",
        "balance": "639.33"
      },
      {
        "month": "2027-05-01",
        "deposit": "127.87",
        "paid": "0.00",
        "balance": "767.20"
      },
      {
        "month": "2027-06-01",
        "deposit": "127.87",
        "paid": "618.72",
        "balance": "276.35"
      },
      {
        "month": "2027-07-01",
        "deposit": "127.87",
        "paid": "0.00",
        "balance": "404.22"
      },
      {
        "month": "2027-08-01",
        "deposit": "127.87",
        "paid": "0.00",
        "balance": "532.09"
      },
      {
        "month": "2027-09-01",
        "deposit": "127.87",
        "paid": "0.00",
        "balance": "659.96"
      },
      {
        "month": "2027-10-01",
        "deposit": "127.87",
        "paid": "0.00",
        "balance": "787.83"
      },
      {
        "month": "2027-11-01",
        "deposit": "127.87",
        "paid": "0.00",
        "balance": "915.70"
      },
      {
        "month": "2027-12-01",
        "deposit": "127.87",
        "paid": "618.72",
        "balance": "424.85"
      },
      {
        "month": "2028-01-01",
        "deposit": "127.87",
        "paid": "296.99",
        "balance": "255.73"
      },
      {
        "month": "2028-02-01",
        "deposit": "127.87",
        "paid": "0.00",
        "balance": "383.60"
      }
    ]
  },
  "credits": {
    "used": [
      {
        "use": "closing costs",
        "amount": "900.00"
      },
      {
        "use": "prepaids and escrow",
        "amount": "300.00"
      }
    ],
    "without_use": "0.00",
    "over_cap": "0.00",
    "cap_percent": "3",
    "cap_of": "value",
    "counts_towards_cap": "1200.00",
    "ltv_if_given": "66.06"
  },
  "appraisal_gap": "0.00",
  "calendar": [
    {
      "date": "2026-11-24",
      "what": "earnest money",
      "amount": "1000.00"
    },
    {
      "date": "2026-11-24",
      "what": "share of options, at their selection",
      "amount": "312.00"
    },
    {
      "date": "2027-01-15",
      "what": "at closing",
      "amount": "34942.73"
    }
  ],
  "cautions": [
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today.",
    "For the agent: prices, and how programs work in general, are yours to explain; presenting particular loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment brings duties (12 CFR 1026.24)."
  ]
}
= 0
$ quoin tour data/buyer.json --rates data/rates --json
{
  "question": "tour",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "contract_price": "103120.00",
  "options": "3120.00",
  "stage": "",
  "model": "Cabin",
  "scenario": {
    "terms": {
      "name": "Ten percent down",
      "program": "short",
      "program_name": "A short loan",
      "months": 12,
      "lock_days": 60,
      "score": 700,
      "rate": "6.25",
      "points": "0",
      "apr": "6.422",
      "down_payment": "10312.00",
      "down_percent": "10.00",
      "ltv": "90.00",
      "down_from_cash": false,
      "extra_principal": "0.00",
      "fine_print": "It is invented, for transcripts only.",
      "adjustable": null
    },
    "available": true,
    "refusals": [],
    "price": "103120.00",
    "value": "103120.00",
    "base_loan": "92808.00",
    "upfront_fee": {
      "name": "",
      "percent": "0",
      "amount": "0.00",
      "financed": "0.00"
    },
    "loan": "92808.00",
    "monthly": {
      "principal_and_interest": "7998.32",
      "mortgage_insurance": "46.40",
      "property_tax": "103.12",
      "homeowners_insurance": "24.75",
      "flood_insurance": "0.00",
      "wind_insurance": "0.00",
      "association_dues": "25.00",
      "district_charges": "0.00",
      "total": "8197.59"
    },
    "first_year": {
      "months": 0,
      "monthly": {
        "principal_and_interest": "7998.32",
        "mortgage_insurance": "46.40",
        "property_tax": "103.12",
        "homeowners_insurance": "24.75",
        "flood_insurance": "0.00",
        "wind_insurance": "0.00",
        "association_dues": "25.00",
        "district_charges": "0.00",
        "total": "8197.59"
      }
    },
    "temporary_buydown": null,
    "mortgage_insurance": {
      "name": "Mortgage insurance",
      "annual_percent": "0.6",
      "first_monthly": "46.40",
      "payments": 2,
      "paid_up": false,
      "last_date": "2027-04-01",
      "whole_term": false,
      "on_request_payment": 2,
      "on_request_date": "2027-04-01"
    },
    "cash": {
      "down_payment": "10312.00",
      "upfront_fee_in_cash": "0.00",
      "points": "0.00",
      "principal_reduction": "0.00",
      "closing_costs": "900.00",
      "prepaid_interest": "273.87",
      "prepaid_bills": "296.99",
      "initial_escrow_deposit": "383.59",
      "temporary_buydown": "0.00",
      "credits": "1200.00",
      "needed": "10966.45",
      "deposits": "1312.00",
      "to_close": "9654.45"
    },
    "credits_without_use": "0.00",
    "credits_over_cap": "0.00",
    "lender_credit_without_use": "0.00",
    "cost_of_credit": {
      "prepaid_finance_charge": "273.87",
      "amount_financed": "92534.13",
      "finance_charge": "3538.51",
      "total_of_payments": "97246.51",
      "total_interest_percentage": "3.713",
      "disclosed_in_five_years": "97246.51",
      "disclosed_principal_in_five_years": "92808.00",
      "buyers_buydown": "0.00",
      "payment_levels": [],
      "first_period": {
        "months": 1,
        "odd_days": 17
      },
      "apr": "6.422"
    },
    "first_payment": "2027-03-01",
    "payments": 12,
    "last_payment": "7998.32",
    "total_interest": "3171.84",
    "paid_in_five_years": "108873.53",
    "paid_over_loan": "108873.53",
    "balance_after_five_years": "0.00",
    "balance_after_ten_years": "0.00"
  },
  "areas": [
    {
      "id": "outside",
      "name": "Outside",
      "included": [],
      "shown": [
        {
          "area": "Outside",
          "name": "Walk-out door",
          "as_shown": "",
          "quantity": null,
          "unit": "each",
          "standing": "not to be had",
          "price": null,
          "yours": null,
          "your_level": "",
          "why_not": "only on lots graded walk-out"
        }
      ],
      "options": [
        {
          "id": "walk-out",
          "name": "Walk-out door",
          "kind": "upgrade",
          "text": "",
          "note": "",
          "picked": false,
          "agreed": false,
          "wish": null,
          "structural": true,
          "work": [],
          "cutoff": "Permit drawings",
          "cutoff_passed": false,
          "one_of": "",
          "later": null,
          "quantity": null,
          "budget": null,
          "spend": null,
          "parts": [],
          "forms": [
            {
              "id": "",
              "name": "",
              "note": "",
              "state": "not to be had",
              "why": "only on lots graded walk-out",
              "price": "3200.00",
              "touch": null
            }
          ]
        }
      ],
      "requests": [
        {
          "text": "A bench by the door",
          "estimate": "350.00"
        }
      ]
    },
    {
      "id": "inside",
      "name": "Inside",
      "included": [
        "Pine floor"
      ],
      "shown": [
        {
          "area": "Inside",
          "name": "Floor",
          "as_shown": "Oak",
          "quantity": "480",
          "unit": "sq ft",
          "standing": "yours",
          "price": "2040.00",
          "yours": "2040.00",
          "your_level": "Oak",
          "why_not": ""
        },
        {
          "area": "Inside",
          "name": "Wood stove",
          "as_shown": "",
          "quantity": null,
          "unit": "each",
          "standing": "extra",
          "price": "2600.00",
          "yours": null,
          "your_level": "",
          "why_not": ""
        },
        {
          "area": "Inside",
          "name": "Wall color",
          "as_shown": "Sand",
          "quantity": null,
          "unit": "each",
          "standing": "choice at no cost",
          "price": "0.00",
          "yours": "0.00",
          "your_level": "Sand",
          "why_not": ""
        },
        {
          "area": "Inside",
          "name": "Shelves",
          "as_shown": "",
          "quantity": "4",
          "unit": "each",
          "standing": "yours in part",
          "price": "240.00",
          "yours": "180.00",
          "your_level": "",
          "why_not": ""
        },
        {
          "area": "Inside",
          "name": "The armchair",
          "as_shown": "",
          "quantity": null,
          "unit": "each",
          "standing": "not for sale",
          "price": null,
          "yours": null,
          "your_level": "",
          "why_not": ""
        }
      ],
      "options": [
        {
          "id": "floor",
          "name": "Floor",
          "kind": "levels",
          "text": "",
          "note": "",
          "picked": true,
          "agreed": false,
          "wish": null,
          "structural": false,
          "work": [],
          "cutoff": "",
          "cutoff_passed": false,
          "one_of": "",
          "later": null,
          "quantity": {
            "now": "480",
            "unit": "sq ft",
            "asked": false
          },
          "budget": null,
          "spend": null,
          "parts": [],
          "forms": [
            {
              "id": "pine",
              "name": "Pine",
              "note": "",
              "state": "offered",
              "why": "",
              "price": "0.00",
              "touch": {
                "takes_out": true,
                "price": "-2040.00",
                "per_month": "-161.67",
                "cash_needed": "-222.91",
                "cash_to_close": "-18.91",
                "jumps": [],
                "along": [],
                "instead_of": [],
                "brings": [],
                "drops": []
              }
            },
            {
              "id": "oak",
              "name": "Oak",
              "note": "",
              "state": "chosen",
              "why": "",
              "price": "2040.00",
              "touch": {
                "takes_out": true,
                "price": "-2040.00",
                "per_month": "-161.67",
                "cash_needed": "-222.91",
                "cash_to_close": "-18.91",
                "jumps": [],
                "along": [],
                "instead_of": [],
                "brings": [],
                "drops": []
              }
            }
          ]
        },
        {
          "id": "stove",
          "name": "Wood stove",
          "kind": "upgrade",
          "text": "",
          "note": "",
          "picked": false,
          "agreed": false,
          "wish": 1,
          "structural": false,
          "work": [],
          "cutoff": "",
          "cutoff_passed": false,
          "one_of": "",
          "later": null,
          "quantity": null,
          "budget": null,
          "spend": null,
          "parts": [],
          "forms": [
            {
              "id": "",
              "name": "",
              "note": "",
              "state": "offered",
              "why": "",
              "price": "2600.00",
              "touch": {
                "takes_out": false,
                "price": "2600.00",
                "per_month": "206.06",
                "cash_needed": "284.16",
                "cash_to_close": "24.16",
                "jumps": [],
                "along": [],
                "instead_of": [],
                "brings": [],
                "drops": []
              }
            }
          ]
        },
        {
          "id": "flue",
          "name": "Insulated flue",
          "kind": "upgrade",
          "text": "",
          "note": "",
          "picked": true,
          "agreed": false,
          "wish": null,
          "structural": false,
          "work": [
            "structure"
          ],
          "cutoff": "Framing",
          "cutoff_passed": false,
          "one_of": "",
          "later": null,
          "quantity": null,
          "budget": null,
          "spend": null,
          "parts": [],
          "forms": [
            {
              "id": "",
              "name": "",
              "note": "",
              "state": "chosen",
              "why": "",
              "price": "900.00",
              "touch": {
                "takes_out": true,
                "price": "-900.00",
                "per_month": "-71.33",
                "cash_needed": "-98.29",
                "cash_to_close": "-8.29",
                "jumps": [],
                "along": [],
                "instead_of": [],
                "brings": [],
                "drops": []
              }
            }
          ]
        },
        {
          "id": "heater",
          "name": "Gas heater",
          "kind": "upgrade",
          "text": "",
          "note": "",
          "picked": false,
          "agreed": false,
          "wish": null,
          "structural": false,
          "work": [
            "gas"
          ],
          "cutoff": "",
          "cutoff_passed": false,
          "one_of": "",
          "later": null,
          "quantity": null,
          "budget": null,
          "spend": null,
          "parts": [],
          "forms": [
            {
              "id": "",
              "name": "",
              "note": "",
              "state": "offered",
              "why": "",
              "price": "1800.00",
              "touch": {
                "takes_out": false,
                "price": "1800.00",
                "per_month": "142.66",
                "cash_needed": "196.66",
                "cash_to_close": "16.66",
                "jumps": [],
                "along": [],
                "instead_of": [],
                "brings": [],
                "drops": []
              }
            }
          ]
        },
        {
          "id": "shelves",
          "name": "Shelves",
          "kind": "upgrade",
          "text": "",
          "note": "",
          "picked": true,
          "agreed": false,
          "wish": null,
          "structural": false,
          "work": [],
          "cutoff": "",
          "cutoff_passed": false,
          "one_of": "",
          "later": null,
          "quantity": {
            "now": "3",
            "unit": "each",
            "asked": true,
            "lowest": "1",
            "highest": "8",
            "step": "1",
            "usual": "1",
            "limits": "a quantity from 1 to 8 in steps of 1"
          },
          "budget": null,
          "spend": null,
          "parts": [],
          "forms": [
            {
              "id": "",
              "name": "",
              "note": "",
              "state": "chosen",
              "why": "",
              "price": "180.00",
              "touch": {
                "takes_out": true,
                "price": "-180.00",
                "per_month": "-14.26",
                "cash_needed": "-19.73",
                "cash_to_close": "-1.73",
                "jumps": [],
                "along": [],
                "instead_of": [],
                "brings": [],
                "drops": []
              }
            }
          ]
        },
        {
          "id": "paint",
          "name": "Wall color",
          "kind": "choice",
          "text": "",
          "note": "",
          "picked": true,
          "agreed": false,
          "wish": null,
          "structural": false,
          "work": [],
          "cutoff": "",
          "cutoff_passed": false,
          "one_of": "",
          "later": null,
          "quantity": null,
          "budget": null,
          "spend": null,
          "parts": [],
          "forms": [
            {
              "id": "white",
              "name": "White",
              "note": "",
              "state": "offered",
              "why": "",
              "price": "0.00",
              "touch": {
                "takes_out": false,
                "price": "0.00",
                "per_month": "0.00",
                "cash_needed": "0.00",
                "cash_to_close": "0.00",
                "jumps": [],
                "along": [],
                "instead_of": [],
                "brings": [],
                "drops": []
              }
            },
            {
              "id": "sand",
              "name": "Sand",
              "note": "",
              "state": "chosen",
              "why": "",
              "price": "0.00",
              "touch": {
                "takes_out": true,
                "price": "0.00",
                "per_month": "0.00",
                "cash_needed": "0.00",
                "cash_to_close": "0.00",
                "jumps": [],
                "along": [],
                "instead_of": [],
                "brings": [],
                "drops": []
              }
            }
          ]
        },
        {
          "id": "lamps",
          "name": "Lamps",
          "kind": "allowance",
          "text": "",
          "note": "",
          "picked": false,
          "agreed": false,
          "wish": null,
          "structural": false,
          "work": [],
          "cutoff": "",
          "cutoff_passed": false,
          "one_of": "",
          "later": null,
          "quantity": null,
          "budget": "300.00",
          "spend": null,
          "parts": [],
          "forms": [
            {
              "id": "",
              "name": "",
              "note": "",
              "state": "included",
              "why": "",
              "price": "0.00",
              "touch": null
            }
          ]
        },
        {
          "id": "warm",
          "name": "Warm package",
          "kind": "package",
          "text": "",
          "note": "",
          "picked": false,
          "agreed": false,
          "wish": null,
          "structural": false,
          "work": [],
          "cutoff": "",
          "cutoff_passed": false,
          "one_of": "",
          "later": null,
          "quantity": null,
          "budget": null,
          "spend": null,
          "parts": [
            "Wood stove",
            "Insulated flue"
          ],
          "forms": [
            {
              "id": "",
              "name": "",
              "note": "",
              "state": "offered",
              "why": "",
              "price": "3100.00",
              "touch": {
                "takes_out": false,
                "price": "2200.00",
                "per_month": "174.36",
                "cash_needed": "240.44",
                "cash_to_close": "20.44",
                "jumps": [],
                "along": [],
                "instead_of": [],
                "brings": [],
                "drops": []
              }
            }
          ]
        }
      ],
      "requests": []
    }
  ],
  "incentives": [
    {
      "id": "opening",
      "name": "Opening weeks",
      "amount": "1200.00",
      "left": "0.00",
      "conditions": "",
      "lender": "",
      "expires": "2026-12-15",
      "close_by": null,
      "why_not": "",
      "uses": [
        "closing costs",
        "price"
      ],
      "used": [
        {
          "use": "closing costs",
          "amount": null,
          "given": "1200.00"
        }
      ]
    }
  ],
  "cautions": [
    "What a touch adds a month is the difference of two whole quotes, rounded as they are.",
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today.",
    "* Marked work on gas, wiring, plumbing or structure follows local code, needs a permit, and is done by a licensed trade, now or later.",
    "For the agent: prices, and how programs work in general, are yours to explain; presenting particular loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment brings duties (12 CFR 1026.24)."
  ]
}
= 0
$ quoin site data/buyer.json --rates data/rates --json
{
  "question": "site",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "lot": "1",
  "plan": "cabin",
  "elevation": "plain",
  "note": "",
  "terms": {
    "name": "Ten percent down",
    "program": "short",
    "program_name": "A short loan",
    "months": 12,
    "lock_days": 60,
    "score": 700,
    "rate": "6.25",
    "points": "0",
    "apr": "6.422",
    "down_payment": "10312.00",
    "down_percent": "10.00",
    "ltv": "90.00",
    "down_from_cash": false,
    "extra_principal": "0.00",
    "fine_print": "It is invented, for transcripts only.",
    "adjustable": null
  },
  "lots": [
    {
      "id": "1",
      "status": "free",
      "premium": "0.00",
      "grade": "level",
      "flood_zone": false,
      "plans": [],
      "every_plan": true,
      "note": "",
      "measures": [],
      "chosen": true,
      "fits": true,
      "can_be_had": true,
      "falls_out": [],
      "move": null
    },
    {
      "id": "2",
      "status": "free",
      "premium": "5000.00",
      "grade": "walk-out",
      "flood_zone": false,
      "plans": [],
      "every_plan": true,
      "note": "",
      "measures": [],
      "chosen": false,
      "fits": true,
      "can_be_had": true,
      "falls_out": [],
      "move": {
        "price": "5000.00",
        "per_month": "396.27",
        "cash_needed": "546.26",
        "cash_to_close": "546.26"
      }
    },
    {
      "id": "3",
      "status": "sold",
      "premium": "0.00",
      "grade": "level",
      "flood_zone": false,
      "plans": [],
      "every_plan": true,
      "note": "",
      "measures": [],
      "chosen": false,
      "fits": true,
      "can_be_had": false,
      "falls_out": [],
      "move": null
    }
  ],
  "plans": [
    {
      "id": "cabin",
      "name": "Cabin",
      "style": "ranch",
      "note": "",
      "base_price": "100000.00",
      "bedrooms": "1",
      "bathrooms": "1",
      "square_feet": "600",
      "measures": [
        {
          "name": "floor_sq_ft",
          "value": "480",
          "words": "floor 480 sq ft"
        }
      ],
      "elevations": [
        {
          "id": "plain",
          "name": "Plain",
          "note": "",
          "price": "0.00",
          "falls_out": [],
          "move": null
        }
      ],
      "chosen": true,
      "fits": true
    }
  ],
  "cautions": [
    "Widths and setbacks are the price book's; the survey and the permit set decide what may be built where.",
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today.",
    "For the agent: prices, and how programs work in general, are yours to explain; presenting particular loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment brings duties (12 CFR 1026.24)."
  ]
}
= 0
$ quoin programs data/buyer.json --rates data/rates --json
{
  "question": "programs",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "note": "",
  "programs": [
    {
      "id": "short",
      "name": "A short loan",
      "kind": "conventional",
      "summary": "Twelve payments, so that a schedule fits on a page.",
      "fine_print": "It is invented, for transcripts only.",
      "upfront_fee": "",
      "annual_fee": "Mortgage insurance",
      "used_beyond_end": [],
      "not_known": [],
      "ladders": [
        {
          "months": 12,
          "term": "1 year",
          "lock_days": 60,
          "rungs": [
            {
              "rate": "6",
              "points": "1"
            },
            {
              "rate": "6.25",
              "points": "0"
            }
          ]
        }
      ]
    }
  ],
  "cautions": [
    "Points are percents of the loan before adjustments for score, loan to value and term; a minus is a credit. An APR goes with a loan: 'quoin compare' shows it beside each rate.",
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today.",
    "For the agent: prices, and how programs work in general, are yours to explain; presenting particular loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment brings duties (12 CFR 1026.24)."
  ]
}
= 0

$ quoin credit data/buyer.json --amount 2500 --scenario "A third down" --rates data/rates --json
{
  "question": "credit",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "amount": "2500.00",
  "years": 7,
  "contract_price": "103120.00",
  "scenarios": [
    {
      "terms": {
        "name": "A third down",
        "program": "short",
        "program_name": "A short loan",
        "months": 12,
        "lock_days": 60,
        "score": 700,
        "rate": "6",
        "points": "1",
        "apr": "7.739",
        "down_payment": "35000.00",
        "down_percent": "33.94",
        "ltv": "66.06",
        "down_from_cash": false,
        "extra_principal": "0.00",
        "fine_print": "It is invented, for transcripts only.",
        "adjustable": null
      },
      "refusals": [],
      "contribution_cap": {
        "percent": "3",
        "of": "value",
        "amount": "3093.60",
        "taken": "1200.00",
        "concessions_alone": false
      },
      "without": {
        "off_price": "0.00",
        "rate": "6",
        "points": "1",
        "apr": "7.739",
        "buydown": "none",
        "paid_in_cash": "none",
        "pays": {
          "points": "0.00",
          "buydown": "0.00",
          "upfront_fee": "0.00",
          "closing_costs": "0.00",
          "prepaids": "0.00"
        },
        "without_use": "0.00",
        "over_cap": "0.00",
        "loan": "68120.00",
        "monthly_now": "6015.72",
        "monthly_after_three_years": "152.87",
        "cash_needed": "36254.73",
        "cash_to_close": "34942.73",
        "cost_over_years": {
          "3": "108443.32",
          "5": "108443.32",
          "7": "108443.32",
          "10": "108443.32",
          "30": "108443.32"
        },
        "cost_over_asked_years": "108443.32"
      },
      "each_use": [
        {
          "use": "off_price",
          "name": "off the price",
          "mix": {
            "off_price": "2500.00",
            "rate": "6",
            "points": "1",
            "apr": "7.739",
            "buydown": "none",
            "paid_in_cash": "none",
            "pays": {
              "points": "0.00",
              "buydown": "0.00",
              "upfront_fee": "0.00",
              "closing_costs": "0.00",
              "prepaids": "0.00"
            },
            "without_use": "0.00",
            "over_cap": "0.00",
            "loan": "65620.00",
            "monthly_now": "5797.45",
            "monthly_after_three_years": "149.77",
            "cash_needed": "36206.26",
            "cash_to_close": "34894.26",
            "cost_over_years": {
              "3": "105775.66",
              "5": "105775.66",
              "7": "105775.66",
              "10": "105775.66",
              "30": "105775.66"
            },
            "cost_over_asked_years": "105775.66"
          },
          "why_not": null
        },
        {
          "use": "costs",
          "name": "closing costs and prepaids",
          "mix": {
            "off_price": "0.00",
            "rate": "6",
            "points": "1",
            "apr": "7.739",
            "buydown": "none",
            "paid_in_cash": "none",
            "pays": {
              "points": "0.00",
              "buydown": "0.00",
              "upfront_fee": "0.00",
              "closing_costs": "0.00",
              "prepaids": "573.53"
            },
            "without_use": "1926.47",
            "over_cap": "0.00",
            "loan": "68120.00",
            "monthly_now": "6015.72",
            "monthly_after_three_years": "152.87",
            "cash_needed": "35681.20",
            "cash_to_close": "34369.20",
            "cost_over_years": {
              "3": "107869.79",
              "5": "107869.79",
              "7": "107869.79",
              "10": "107869.79",
              "30": "107869.79"
            },
            "cost_over_asked_years": "107869.79"
          },
          "why_not": null
        },
        {
          "use": "points",
          "name": "points",
          "mix": null,
          "why_not": "no lower rate to be had"
        },
        {
          "use": "buydown_1_0",
          "name": "temporary buydown 1-0",
          "mix": null,
          "why_not": "not with this loan"
        },
        {
          "use": "buydown_2_1",
          "name": "temporary buydown 2-1",
          "mix": null,
          "why_not": "not with this loan"
        },
        {
          "use": "buydown_3_2_1",
          "name": "temporary buydown 3-2-1",
          "mix": null,
          "why_not": "not with this loan"
        },
        {
          "use": "upfront_fee",
          "name": "upfront fee or single premium",
          "mix": null,
          "why_not": "not with this loan"
        }
      ],
      "lowest_payment": {
        "off_price": "2500.00",
        "rate": "6",
        "points": "1",
        "apr": "7.739",
        "buydown": "none",
        "paid_in_cash": "none",
        "pays": {
          "points": "0.00",
          "buydown": "0.00",
          "upfront_fee": "0.00",
          "closing_costs": "0.00",
          "prepaids": "0.00"
        },
        "without_use": "0.00",
        "over_cap": "0.00",
        "loan": "65620.00",
        "monthly_now": "5797.45",
        "monthly_after_three_years": "149.77",
        "cash_needed": "36206.26",
        "cash_to_close": "34894.26",
        "cost_over_years": {
          "3": "105775.66",
          "5": "105775.66",
          "7": "105775.66",
          "10": "105775.66",
          "30": "105775.66"
        },
        "cost_over_asked_years": "105775.66"
      },
      "least_cash": {
        "off_price": "1269.00",
        "rate": "6",
        "points": "1",
        "apr": "6.001",
        "buydown": "none",
        "paid_in_cash": "none",
        "pays": {
          "points": "668.51",
          "buydown": "0.00",
          "upfront_fee": "0.00",
          "closing_costs": "0.00",
          "prepaids": "561.55"
        },
        "without_use": "0.94",
        "over_cap": "0.00",
        "loan": "66851.00",
        "monthly_now": "5904.92",
        "monthly_after_three_years": "151.29",
        "cash_needed": "35000.00",
        "cash_to_close": "33688.00",
        "cost_over_years": {
          "3": "105859.02",
          "5": "105859.02",
          "7": "105859.02",
          "10": "105859.02",
          "30": "105859.02"
        },
        "cost_over_asked_years": "105859.02"
      },
      "least_cost": {
        "off_price": "2500.00",
        "rate": "6",
        "points": "1",
        "apr": "7.739",
        "buydown": "none",
        "paid_in_cash": "none",
        "pays": {
          "points": "0.00",
          "buydown": "0.00",
          "upfront_fee": "0.00",
          "closing_costs": "0.00",
          "prepaids": "0.00"
        },
        "without_use": "0.00",
        "over_cap": "0.00",
        "loan": "65620.00",
        "monthly_now": "5797.45",
        "monthly_after_three_years": "149.77",
        "cash_needed": "36206.26",
        "cash_to_close": "34894.26",
        "cost_over_years": {
          "3": "105775.66",
          "5": "105775.66",
          "7": "105775.66",
          "10": "105775.66",
          "30": "105775.66"
        },
        "cost_over_asked_years": "105775.66"
      },
      "frontier": [
        {
          "off_price": "2500.00",
          "rate": "6",
          "points": "1",
          "apr": "7.739",
          "buydown": "none",
          "paid_in_cash": "none",
          "pays": {
            "points": "0.00",
            "buydown": "0.00",
            "upfront_fee": "0.00",
            "closing_costs": "0.00",
            "prepaids": "0.00"
          },
          "without_use": "0.00",
          "over_cap": "0.00",
          "loan": "65620.00",
          "monthly_now": "5797.45",
          "monthly_after_three_years": "149.77",
          "cash_needed": "36206.26",
          "cash_to_close": "34894.26",
          "cost_over_years": {
            "3": "105775.66",
            "5": "105775.66",
            "7": "105775.66",
            "10": "105775.66",
            "30": "105775.66"
          },
          "cost_over_asked_years": "105775.66"
        },
        {
          "off_price": "2187.00",
          "rate": "6",
          "points": "1",
          "apr": "6.911",
          "buydown": "none",
          "paid_in_cash": "none",
          "pays": {
            "points": "313.00",
            "buydown": "0.00",
            "upfront_fee": "0.00",
            "closing_costs": "0.00",
            "prepaids": "0.00"
          },
          "without_use": "0.00",
          "over_cap": "0.00",
          "loan": "65933.00",
          "monthly_now": "5824.77",
          "monthly_after_three_years": "150.15",
          "cash_needed": "35899.29",
          "cash_to_close": "34587.29",
          "cost_over_years": {
            "3": "105796.51",
            "5": "105796.51",
            "7": "105796.51",
            "10": "105796.51",
            "30": "105796.51"
          },
          "cost_over_asked_years": "105796.51"
        },
        {
          "off_price": "1875.00",
          "rate": "6",
          "points": "1",
          "apr": "6.099",
          "buydown": "none",
          "paid_in_cash": "none",
          "pays": {
            "points": "625.00",
            "buydown": "0.00",
            "upfront_fee": "0.00",
            "closing_costs": "0.00",
            "prepaids": "0.00"
          },
          "without_use": "0.00",
          "over_cap": "0.00",
          "loan": "66245.00",
          "monthly_now": "5852.02",
          "monthly_after_three_years": "150.55",
          "cash_needed": "35593.39",
          "cash_to_close": "34281.39",
          "cost_over_years": {
            "3": "105817.64",
            "5": "105817.64",
            "7": "105817.64",
            "10": "105817.64",
            "30": "105817.64"
          },
          "cost_over_asked_years": "105817.64"
        },
        {
          "off_price": "1562.00",
          "rate": "6",
          "points": "1",
          "apr": "6.001",
          "buydown": "none",
          "paid_in_cash": "none",
          "pays": {
            "points": "665.58",
            "buydown": "0.00",
            "upfront_fee": "0.00",
            "closing_costs": "0.00",
            "prepaids": "272.42"
          },
          "without_use": "0.00",
          "over_cap": "0.00",
          "loan": "66558.00",
          "monthly_now": "5879.34",
          "monthly_after_three_years": "150.93",
          "cash_needed": "35286.42",
          "cash_to_close": "33974.42",
          "cost_over_years": {
            "3": "105838.49",
            "5": "105838.49",
            "7": "105838.49",
            "10": "105838.49",
            "30": "105838.49"
          },
          "cost_over_asked_years": "105838.49"
        },
        {
          "off_price": "1270.00",
          "rate": "6",
          "points": "1",
          "apr": "6.001",
          "buydown": "none",
          "paid_in_cash": "none",
          "pays": {
            "points": "668.50",
            "buydown": "0.00",
            "upfront_fee": "0.00",
            "closing_costs": "0.00",
            "prepaids": "561.50"
          },
          "without_use": "0.00",
          "over_cap": "0.00",
          "loan": "66850.00",
          "monthly_now": "5904.83",
          "monthly_after_three_years": "151.29",
          "cash_needed": "35000.13",
          "cash_to_close": "33688.13",
          "cost_over_years": {
            "3": "105858.11",
            "5": "105858.11",
            "7": "105858.11",
            "10": "105858.11",
            "30": "105858.11"
          },
          "cost_over_asked_years": "105858.11"
        },
        {
          "off_price": "1269.00",
          "rate": "6",
          "points": "1",
          "apr": "6.001",
          "buydown": "none",
          "paid_in_cash": "none",
          "pays": {
            "points": "668.51",
            "buydown": "0.00",
            "upfront_fee": "0.00",
            "closing_costs": "0.00",
            "prepaids": "561.55"
          },
          "without_use": "0.94",
          "over_cap": "0.00",
          "loan": "66851.00",
          "monthly_now": "5904.92",
          "monthly_after_three_years": "151.29",
          "cash_needed": "35000.00",
          "cash_to_close": "33688.00",
          "cost_over_years": {
            "3": "105859.02",
            "5": "105859.02",
            "7": "105859.02",
            "10": "105859.02",
            "30": "105859.02"
          },
          "cost_over_asked_years": "105859.02"
        }
      ]
    }
  ],
  "cautions": [
    "The money comes on top of the incentives and credits that the inquiry uses already, and the cap is on all of them together. It pays points first, then the buydown, closing costs, prepaids, a fee or premium in cash; never a down payment. In no mix does the buyer put more of their own into costs and points than without it. Money that options are credited with makes the price less and is reckoned as off the price.",
    "Cost is what has been spent and is still owed: cash, payments less what a buydown pays of them, insurance, taxes, dues, and the balance. The month is the settled one, now and after three years. Money off the price comes in whole dollars; between the amounts told the figures run evenly.",
    "Where such money depends on a lender, a title company or a date, its conditions say so. You may choose any lender, and then may have to go without it: compare the whole cost.",
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today.",
    "For the agent: prices, and how programs work in general, are yours to explain; presenting particular loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment brings duties (12 CFR 1026.24)."
  ]
}
= 0
$ quoin shift data/buyer.json --scenario "A third down" --steps 1 --rates data/rates --json
{
  "question": "shift",
  "heading": {
    "community": "Two Lots",
    "builder": "Nobody",
    "buyer": "Somebody",
    "prepared_by": "",
    "originator": "",
    "plan": "Cabin",
    "elevation": "Plain",
    "lot": "1",
    "price_book_version": "1",
    "price_book_expires": "2026-12-31",
    "as_of": "2026-11-24",
    "contract": "2026-11-24",
    "closing": "2027-01-15",
    "place": "Nowhere County",
    "sample_place": true,
    "rate_sheet": "day",
    "rates_date": "2026-11-20",
    "rates_good_through": "2026-12-04",
    "lender": "Nobody's lender",
    "license": "none: invented",
    "sample_rates": true
  },
  "step": "0.125",
  "contract_price": "103120.00",
  "scenarios": [
    {
      "terms": {
        "name": "A third down",
        "program": "short",
        "program_name": "A short loan",
        "months": 12,
        "lock_days": 60,
        "score": 700,
        "rate": "6",
        "points": "1",
        "apr": "7.739",
        "down_payment": "35000.00",
        "down_percent": "33.94",
        "ltv": "66.06",
        "down_from_cash": false,
        "extra_principal": "0.00",
        "fine_print": "It is invented, for transcripts only.",
        "adjustable": null
      },
      "refusals": [],
      "monthly": "6015.72",
      "cash_needed": "36254.73",
      "cases": [
        {
          "name": "as it stands",
          "change": "none",
          "percent": "0",
          "amount": "0.00"
        },
        {
          "name": "price -1 %",
          "change": "price",
          "percent": "-1",
          "amount": "-1031.20"
        },
        {
          "name": "price +1 %",
          "change": "price",
          "percent": "1",
          "amount": "1031.20"
        },
        {
          "name": "options +$5,000.00",
          "change": "options",
          "percent": "0",
          "amount": "5000.00"
        },
        {
          "name": "appraised -2 %",
          "change": "appraisal",
          "percent": "-2",
          "amount": "101057.60"
        },
        {
          "name": "appraised -5 %",
          "change": "appraisal",
          "percent": "-5",
          "amount": "97964.00"
        }
      ],
      "rates": [
        {
          "steps": -1,
          "by": "-0.125",
          "rate": "5.875",
          "apr": "7.614",
          "cells": [
            {
              "refusals": [],
              "loan": "68120.00",
              "monthly": "6011.80",
              "cash_needed": "36250.82",
              "cash_to_close": "34938.82"
            },
            {
              "refusals": [],
              "loan": "67088.00",
              "monthly": "5921.76",
              "cash_needed": "36231.64",
              "cash_to_close": "34919.64"
            },
            {
              "refusals": [],
              "loan": "69151.00",
              "monthly": "6101.76",
              "cash_needed": "36271.02",
              "cash_to_close": "34959.02"
            },
            {
              "refusals": [],
              "loan": "73120.00",
              "monthly": "6448.05",
              "cash_needed": "36347.59",
              "cash_to_close": "35035.59"
            },
            {
              "refusals": [],
              "loan": "68120.00",
              "monthly": "6011.80",
              "cash_needed": "36250.82",
              "cash_to_close": "34938.82"
            },
            {
              "refusals": [],
              "loan": "68120.00",
              "monthly": "6011.80",
              "cash_needed": "36250.82",
              "cash_to_close": "34938.82"
            }
          ]
        },
        {
          "steps": 0,
          "by": "0",
          "rate": "6",
          "apr": "7.739",
          "cells": [
            {
              "refusals": [],
              "loan": "68120.00",
              "monthly": "6015.72",
              "cash_needed": "36254.73",
              "cash_to_close": "34942.73"
            },
            {
              "refusals": [],
              "loan": "67088.00",
              "monthly": "5925.61",
              "cash_needed": "36235.55",
              "cash_to_close": "34923.55"
            },
            {
              "refusals": [],
              "loan": "69151.00",
              "monthly": "6105.73",
              "cash_needed": "36275.10",
              "cash_to_close": "34963.10"
            },
            {
              "refusals": [],
              "loan": "73120.00",
              "monthly": "6452.25",
              "cash_needed": "36352.01",
              "cash_to_close": "35040.01"
            },
            {
              "refusals": [],
              "loan": "68120.00",
              "monthly": "6015.72",
              "cash_needed": "36254.73",
              "cash_to_close": "34942.73"
            },
            {
              "refusals": [],
              "loan": "68120.00",
              "monthly": "6015.72",
              "cash_needed": "36254.73",
              "cash_to_close": "34942.73"
            }
          ]
        },
        {
          "steps": 1,
          "by": "0.125",
          "rate": "6.125",
          "apr": "7.865",
          "cells": [
            {
              "refusals": [],
              "loan": "68120.00",
              "monthly": "6019.63",
              "cash_needed": "36258.81",
              "cash_to_close": "34946.81"
            },
            {
              "refusals": [],
              "loan": "67088.00",
              "monthly": "5929.47",
              "cash_needed": "36239.46",
              "cash_to_close": "34927.46"
            },
            {
              "refusals": [],
              "loan": "69151.00",
              "monthly": "6109.70",
              "cash_needed": "36279.18",
              "cash_to_close": "34967.18"
            },
            {
              "refusals": [],
              "loan": "73120.00",
              "monthly": "6456.45",
              "cash_needed": "36356.26",
              "cash_to_close": "35044.26"
            },
            {
              "refusals": [],
              "loan": "68120.00",
              "monthly": "6019.63",
              "cash_needed": "36258.81",
              "cash_to_close": "34946.81"
            },
            {
              "refusals": [],
              "loan": "68120.00",
              "monthly": "6019.63",
              "cash_needed": "36258.81",
              "cash_to_close": "34946.81"
            }
          ]
        }
      ],
      "locks": [
        {
          "days": 60,
          "ends": "2027-01-23",
          "covers_closing": true,
          "chosen": true,
          "points": "1",
          "extra_cash": "0.00"
        }
      ],
      "ratios": null,
      "ratios_unknown": []
    }
  ],
  "cautions": [
    "A figure with a sign is the difference to the quote as it stands. Nobody knows where rates will be at the closing: these are steps, not a forecast. A rate moves as the whole ladder does, each rung with its points. Until a rate is locked it can be any of these, or past them.",
    "An estimate as of 24 November 2026: not a Loan Estimate, not an approval, not an offer to lend. A licensed loan originator gives those (none is named here yet); the published programs and local law decide. You may choose any lender.",
    "Rates of 20 November 2026 from Nobody's lender (none: invented), good through 4 December 2026; they hold only when locked. They are samples, not anybody's offer.",
    "Taxes, insurance, dues and closing costs as known for Nowhere County (sample figures). Interest runs from the closing; the APR counts prepaid interest and the odd first period. Totals over years keep taxes, insurance and dues as they are today.",
    "For the agent: prices, and how programs work in general, are yours to explain; presenting particular loan terms for gain can need a license of its own (12 CFR 1008.103), and an advertised payment brings duties (12 CFR 1026.24)."
  ]
}
= 0
