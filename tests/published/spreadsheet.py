#!/usr/bin/env python3
# Writes spreadsheet.csv: payments and schedules as a spreadsheet reckons them, for spreadsheet.cpp.
#
#   python3 tests/published/spreadsheet.py     needs Gnumeric's ssconvert
#
# Everything is the spreadsheet's own: PMT, ROUND, and each month in a cell of its own, the way a
# loan officer would lay it out. Cases come from a fixed seed, so that running it again writes the
# same file.
import csv
import random
import subprocess
import tempfile
from pathlib import Path

OUT = Path(__file__).with_name("spreadsheet.csv")
PAYMENTS = 2000
SCHEDULES = 60


def draw_case(draw):
    percent = draw.choice([draw.randrange(0, 201) / 8, draw.randrange(0, 25000) / 1000])
    months = draw.choice([12, 60, 120, 180, 240, 300, 360, 480, draw.randrange(1, 481)])
    return draw.randrange(1000, 2000000), f"{percent:g}", months


def column_name(index):
    return (chr(64 + index // 26) if index >= 26 else "") + chr(65 + index % 26)


def reckoned(cells):
    """The values of a sheet of formulas."""
    with tempfile.TemporaryDirectory() as folder:
        asked, answered = Path(folder, "asked.csv"), Path(folder, "answered.csv")
        with asked.open("w", newline="", encoding="utf-8") as file:
            csv.writer(file).writerows(cells)
        subprocess.run(["ssconvert", str(asked), str(answered)], check=True, capture_output=True)
        with answered.open(newline="", encoding="utf-8") as file:
            return list(csv.reader(file))


def payment_formula(loan, percent, months):
    return f"ROUND(PMT({percent}/1200,{months},-{loan}),2)"


def payments(cases):
    rows = reckoned([[f"=FIXED({payment_formula(*case)},2,TRUE)"] for case in cases])
    return [row[0] for row in rows]


def schedule_column(case, column):
    """Payment, last payment, total interest and a blank; then the balance of each month."""
    loan, percent, months = case
    first = 5  # the row of the loan itself; row first + k is after payment k
    cells = ["=" + payment_formula(*case)]
    last = f"{column}{first + months - 1}"
    cells.append(f"=FIXED({last}+ROUND({last}*{percent}/1200,2),2,TRUE)")
    cells.append(f"=FIXED({column}1*{months - 1}+VALUE({column}2)-{loan},2,TRUE)")
    cells += ["", str(loan)]
    for row in range(first, first + months - 1):
        above = f"{column}{row}"
        cells.append(f"=ROUND({above}+ROUND({above}*{percent}/1200,2)-{column}$1,2)")
    return cells


def schedules(cases):
    columns = [schedule_column(case, column_name(i)) for i, case in enumerate(cases)]
    height = max(map(len, columns))
    sheet = zip(*(column + [""] * (height - len(column)) for column in columns))
    _, last, interest = reckoned(sheet)[:3]
    return list(zip(last, interest))


def main():
    draw = random.Random(20261125)
    cases = [(100000, "0", 360), (1000, "6", 480), (250000, "25", 480), (250000, "6.5", 1)]
    cases += [draw_case(draw) for _ in range(PAYMENTS - len(cases))]
    rows = [[*case, payment, "", ""] for case, payment in zip(cases, payments(cases))]
    for row, (last, interest) in zip(rows, schedules(cases[:SCHEDULES])):
        row[4:] = [last, interest]
    version = subprocess.run(["ssconvert", "--version"], check=True, capture_output=True,
                             text=True).stdout.splitlines()[0]
    with OUT.open("w", newline="", encoding="utf-8") as file:
        file.write(f"# Written by spreadsheet.py with Gnumeric, {version}\n")
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(["loan", "percent", "months", "payment", "last_payment", "total_interest"])
        writer.writerows(rows)


if __name__ == "__main__":
    main()
