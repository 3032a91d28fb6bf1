#!/usr/bin/env python3
# Payments against a spreadsheet engine that is not ours: Gnumeric's PMT, through its converter.
#
# The spreadsheet computes in binary floating point and rounds to the cent; ours is exact. They must
# agree on every case that is not within a ten-millionth of a cent of a tie (none of these is).
import csv
import json
import os
import random
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PROGRAM = os.environ.get("QUOIN", os.path.join(ROOT, "build/release/quoin"))
CASES = 400


def cases():
    draw = random.Random(20261124)
    yield from [(100000, "0", 360), (1, "6", 480), (250000, "25", 480), (250000, "6.5", 1)]
    for _ in range(CASES):
        percent = draw.choice([draw.randrange(1, 201) / 8, draw.randrange(1, 25000) / 1000])
        yield (draw.randrange(1000, 2000000), repr(percent), draw.choice(
            [12, 60, 120, 180, 240, 300, 360, 480, draw.randrange(1, 481)]))


def from_spreadsheet(rows):
    with tempfile.TemporaryDirectory() as folder:
        asked = os.path.join(folder, "asked.csv")
        answered = os.path.join(folder, "answered.csv")
        with open(asked, "w", newline="", encoding="utf-8") as file:
            writer = csv.writer(file)
            for loan, percent, months in rows:
                writer.writerow([f"=FIXED(PMT({percent}/1200,{months},-{loan}),2,TRUE)"])
        subprocess.run(["ssconvert", asked, answered], check=True, capture_output=True)
        with open(answered, newline="", encoding="utf-8") as file:
            return [row[0] for row in csv.reader(file)]


def from_quoin(row):
    loan, percent, months = row
    done = subprocess.run([PROGRAM, "payment", "--json", "--loan", str(loan), "--rate", percent,
                           "--months", str(months)], check=True, capture_output=True, text=True)
    return json.loads(done.stdout)["payment"]


def main():
    rows = list(cases())
    theirs = from_spreadsheet(rows)
    with ThreadPoolExecutor(2) as pool:
        ours = list(pool.map(from_quoin, rows))
    wrong = [(row, a, b) for row, a, b in zip(rows, ours, theirs) if a != b]
    for (loan, percent, months), a, b in wrong:
        print(f"{loan} at {percent} % for {months} months: {a}, the spreadsheet has {b}")
    print(f"spreadsheet: {len(rows) - len(wrong)} passed, {len(wrong)} failed")
    return 1 if wrong or len(theirs) != len(rows) else 0


if __name__ == "__main__":
    sys.exit(main())
