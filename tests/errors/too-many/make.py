# Writes an APR problem with one payment more than a list may have.
import json

payment = {"amount": "100", "periods": 1}
with open("problem.json", "w", encoding="utf-8") as file:
    json.dump({"format": "quoin/apr/1", "unit_periods_per_year": 12,
               "advances": [{"amount": "1000", "periods": 0}], "payments": [payment] * 5001}, file)
