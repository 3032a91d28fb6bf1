# The answer of `shift` in JSON.
$ quoin shift data/buyer.json --scenario "A third down" --steps 1 --rates data/rates --json | digest
{
  "question": "shift"
  "heading": {
    "community": "Two Lots", "builder": "Nobody", "buyer": "Somebody", "prepared_by": ""
    "originator": "", "plan": "Cabin", "elevation": "Plain", "lot": "1", "price_book_version": "1"
    "price_book_expires": "2026-12-31", "as_of": "2026-11-24", "contract": "2026-11-24"
    "closing": "2027-01-15", "place": "Nowhere County", "sample_place": true, "rate_sheet": "day"
    "rates_date": "2026-11-20", "rates_good_through": "2026-12-04", "lender": "Nobody's lender"
    "license": "none, invented", "sample_rates": true
  }
  "step": "0.125", "contract_price": "103120.00"
  "scenarios": [
    {
      "terms": {
        "name": "A third down", "program": "short", "program_name": "A short loan", "months": 12
        "lock_days": 60, "score": 700, "rate": "6", "points": "1", "apr": "7.739"
        "down_payment": "35000.00", "down_percent": "33.94", "ltv": "66.06"
        "down_from_cash": false, "extra_principal": "0.00"
        "fine_print": "It is invented, for transcripts only.", "adjustable": null
      }
      "refusals": [], "monthly": "6015.72", "cash_needed": "36254.73"
      "cases": [
        {"name": "as quoted", "change": "none", "percent": "0", "amount": "0.00"}
        {"name": "price -1%", "change": "price", "percent": "-1", "amount": "-1031.20"}
        {"name": "price +1%", "change": "price", "percent": "1", "amount": "1031.20"}
        {"name": "options +$5,000.00", "change": "options", "percent": "0", "amount": "5000.00"}
        {"name": "appraisal -2%", "change": "appraisal", "percent": "-2", "amount": "101057.60"}
        {"name": "appraisal -5%", "change": "appraisal", "percent": "-5", "amount": "97964.00"}
      ]
      "rates": [
        {
          "steps": -1, "by": "-0.125", "rate": "5.875", "apr": "7.614"
          "cells": [
            {
              "refusals": [], "loan": "68120.00", "monthly": "6011.80", "cash_needed": "36250.82"
              "cash_to_close": "34938.82"
            }
            {
              "refusals": [], "loan": "67088.00", "monthly": "5921.76", "cash_needed": "36231.64"
              "cash_to_close": "34919.64"
            }
            ...
            {
              "refusals": [], "loan": "68120.00", "monthly": "6011.80", "cash_needed": "36250.82"
              "cash_to_close": "34938.82"
            }
            6 rows: loan 413719.00, monthly 36506.97, cash_needed 217602.71, cash_to_close 209730.71 #807d5b47
          ]
        }
        ...
        3 rows: steps 0, by 0.000, rate 18.000, apr 23.218 #ded99a44
      ]
      "locks": [
        {
          "days": 60, "ends": "2027-01-23", "covers_closing": true, "chosen": true, "points": "1"
          "extra_cash": "0.00"
        }
      ]
      "ratios": null, "ratios_unknown": []
    }
  ]
  "cautions": [
    {
      "code": "steps_no_forecast", "about": []
      "words": "A figure with a sign is the difference from the quote. Nobo..." 288 letters #86cc1fd7
    }
    {
      "code": "estimate", "about": []
      "words": "This is an estimate as of November 24, 2026. It is not a Lo..." 263 letters #23c23b25
    }
    ...
    {
      "code": "agent_license", "about": []
      "words": "For the sales agent: you may explain prices, and how progra..." 243 letters #a0d54217
    }
    5 rows #2c68e334
  ]
}
282 lines #7df15147
= 0
