#!/usr/bin/env python3
# Opens the workbook of a recheck in Gnumeric, an independent spreadsheet, and compares every cell.
#
# The values that the file was written with are wiped first, so that what comes back was reckoned
# there: each formula cell must then agree with quoin's own figure to a ten-millionth of a cent of
# rounding noise. A schedule, its insurance and the worth of the payments at the APR are among them.
import json
import os
import re
import stat
import subprocess
import sys
import tempfile
import zipfile
from concurrent.futures import ThreadPoolExecutor
from xml.etree import ElementTree

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PROGRAM = os.environ.get("QUOIN", os.path.join(ROOT, "build/release/quoin"))
BUYERS = os.path.join(ROOT, "examples/oxbarrow-meadow/buyers")
MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
CLOSE = 1e-9
# One of each way to insure, to pay down and to change: (buyer, scenario).
CASES = [
    ("six-programs", "Conventional, 5% down, 30 years"),
    ("six-programs", "FHA, 3.5% down, 30 years"),
    ("six-programs", "VA, nothing down, first use"),
    ("six-programs", "USDA, nothing down, 30 years"),
    ("six-programs", "Conventional, 10% down, 15 years"),
    ("short-of-cash", "FHA, all available cash"),
    ("right-under-eighty", "Conventional, 30 years, paid ahead"),
    ("moves-again", "Fixed for 5 years"),
    ("moves-again", "Fixed, first two years bought down"),
]
failures = []


def check(holds, what):
    if not holds:
        failures.append(what)
        print(f"workbook: {what}")
    return holds


def quoin(*arguments):
    return subprocess.run([PROGRAM, *arguments], capture_output=True, text=True, timeout=60,
                          check=False)


def sheets_of(path):
    """Sheet name -> cell -> (formula or None, value text or None), strings left out."""
    with zipfile.ZipFile(path) as archive:
        book = ElementTree.fromstring(archive.read("xl/workbook.xml"))
        names = [sheet.get("name") for sheet in book.iter(f"{MAIN}sheet")]
        sheets = {}
        for index, name in enumerate(names, 1):
            tree = ElementTree.fromstring(archive.read(f"xl/worksheets/sheet{index}.xml"))
            cells = {}
            for cell in tree.iter(f"{MAIN}c"):
                if cell.get("t") in ("s", "inlineStr"):
                    continue
                formula = cell.find(f"{MAIN}f")
                value = cell.find(f"{MAIN}v")
                cells[cell.get("r")] = (None if formula is None else formula.text or "shared",
                                        None if value is None else value.text)
            sheets[name] = cells
    return sheets


def wiped(path, to):
    """A copy whose formula cells carry no value of ours."""
    with zipfile.ZipFile(path) as archive, zipfile.ZipFile(to, "w") as copy:
        for entry in archive.namelist():
            data = archive.read(entry)
            if entry.startswith("xl/worksheets/"):
                data = re.sub(rb"(</f>)<v>[^<]*</v>", rb"\1<v>0</v>", data)
            copy.writestr(entry, data)


def recalculated(path, folder):
    wiped(path, os.path.join(folder, "wiped.xlsx"))
    out = os.path.join(folder, "out.xlsx")
    subprocess.run(["ssconvert", "--recalc", os.path.join(folder, "wiped.xlsx"), out],
                   capture_output=True, timeout=120, check=True, cwd=folder)
    return sheets_of(out)


def compare(case, ours, theirs):
    """How many formula cells agreed."""
    agreed = 0
    for sheet, cells in ours.items():
        for cell, (formula, value) in cells.items():
            if formula is None:
                continue
            there = theirs[sheet].get(cell, (None, None))[1]
            try:
                close = abs(float(there) - float(value)) <= CLOSE * max(1.0, abs(float(value)))
            except (TypeError, ValueError):
                close = False
            if check(close, f"{case}: {sheet}!{cell} = {formula}: {there} there, {value} here"):
                agreed += 1
    return agreed


def run_case(case):
    buyer, scenario = case
    file = os.path.join(BUYERS, buyer + ".json")
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "check.xlsx")
        result = quoin("recheck", file, "--scenario", scenario, "--workbook", path, "--json")
        if not check(result.returncode == 0, f"{case}: {result.stderr}"):
            return 0
        check(stat.S_IMODE(os.stat(path).st_mode) == 0o600, f"{case}: open to others than its owner")
        check(os.listdir(folder) == ["check.xlsx"], f"{case}: leaves something behind")
        answer = json.loads(result.stdout)
        check(answer["differences"] == 0, f"{case}: the recheck finds differences")
        ours = sheets_of(path)
        check(list(ours) == ["home", "loan", "cash", "schedule"], f"{case}: sheets {list(ours)}")
        figures = sum(len(section["figures"]) for section in answer["sections"])
        check(answer["figures"] == figures, f"{case}: counts {figures} figures")
        return compare(case, ours, recalculated(path, folder))


def refusals():
    """Nothing is written where nothing can be."""
    with tempfile.TemporaryDirectory() as folder:
        file = os.path.join(BUYERS, "six-programs.json")
        missing = os.path.join(folder, "nowhere", "check.xlsx")
        result = quoin("recheck", file, "--scenario", CASES[0][1], "--workbook", missing)
        check(result.returncode == 1 and "[file-unwritable]" in result.stderr,
              f"a folder that is not there: {result.returncode} {result.stderr}")
        check(result.stdout == "", "an answer is printed though its workbook was not written")
        check(os.listdir(folder) == [], "something is left behind")


def main():
    with ThreadPoolExecutor(2) as pool:
        counts = list(pool.map(run_case, CASES))
    check(min(counts) > 1000, f"formula cells that agreed, by case: {counts}")
    refusals()
    print(f"workbook: {sum(counts)} formula cells of {len(CASES)} workbooks agree")
    return 1 if failures else 0


sys.exit(main())
