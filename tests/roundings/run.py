#!/usr/bin/env python3
"""Holds every call in the sources that rounds to the list in docs/roundings.md, and back.

A function that rounds is on the list by its file and name, in the table of figures or in the one
of what is no figure; a whole file or folder may be in the second. What the list names is there and
rounds, or, in *italics*, divides by itself. A number that a recheck gives is one of the list's.

    run.py            prints what is wrong here, and whether it would notice what is; exits 1 then
    run.py --calls    prints every function that rounds
"""

import re
import sys
import tempfile
from pathlib import Path

LIST = "docs/roundings.md"
SOURCES = ("src", "include/quoin")
PRIMITIVES = "exact/"  # where the rounding itself is written
ROUNDING = re.compile(r"\bRounding::(?:half_away|down|up)\b|\bnearest_cent\b|\brounding\b")
CALL = re.compile(r"\b(?:multiply_divide|divide_rounded|percent_of|per_thousand_of|times|part_of|"
                  r"to_dollars|rounded|rounded_to|whole_of)\s*(?:<[^<>()]*>)?\s*\(")
INTEREST = re.compile(r"\bmonthly_interest\s*\(")
NOT_A_NAME = {"if", "for", "while", "switch", "catch", "return", "sizeof", "requires", "noexcept"}


def code_of(text):
    """The text with comments and literals blanked, its length and lines kept."""
    pattern = re.compile(r'//[^\n]*|/\*.*?\*/|R"\((?:.*?)\)"|"(?:\\.|[^"\\\n])*"|'
                         r"(?<![0-9a-zA-Z])'(?:\\.|[^'\\\n])'", re.S)
    return pattern.sub(lambda found: re.sub(r"[^\n]", " ", found.group()), text)


def name_before(head):
    """The function whose parameters begin at the first parenthesis of a head, if it is one."""
    depth = 0
    for at, letter in enumerate(head):
        if letter == "<":
            depth += 1
        elif letter == ">" and depth:
            depth -= 1
        elif letter == "=" and not depth and "operator" not in head[:at]:
            return None
        elif letter == "(" and not depth:
            found = re.search(r"([~\w]+|operator\s*[^\s\w(]+)\s*$", head[:at])
            name = found.group(1) if found else None
            return None if name in NOT_A_NAME else name
    return None


def functions(code):
    """(name, start, end) of every function body outside of functions."""
    found, scopes, head = [], [], 0
    for at, letter in enumerate(code):
        if letter == "{":
            text = code[head:at]
            inside = bool(scopes) and scopes[-1][0] == "body"
            if inside:
                scopes.append(("body", None, at))
            elif re.search(r"\b(?:namespace|struct|class|enum|union)\b[^()]*$", text):
                scopes.append(("scope", None, at))
            else:
                name = name_before(re.sub(r"^\s*(?:#[^\n]*\n\s*)*", "", text))
                scopes.append(("body", name, at))
            head = at + 1
        elif letter == "}":
            if scopes:
                kind, name, start = scopes.pop()
                if kind == "body" and name:
                    found.append((name, start, at))
            head = at + 1
        elif letter == ";" or (letter == ":" and re.search(r"\b(?:public|private|protected)\s*$",
                                                           code[head:at])):
            head = at + 1
    return found


def arguments(code, opening):
    """The text between a parenthesis and the one that closes it."""
    depth = 0
    for at in range(opening, len(code)):
        depth += (code[at] == "(") - (code[at] == ")")
        if depth == 0:
            return code[opening + 1:at]
    return code[opening + 1:]


def rounding_calls(code):
    """Offsets of the calls that round."""
    calls = [each.start() for each in CALL.finditer(code)
             if ROUNDING.search(arguments(code, each.end() - 1))]
    return calls + [each.start() for each in INTEREST.finditer(code)]


class Sources:
    """Per file, without its ending: its functions, and which of them round."""

    def __init__(self, root):
        self.names, self.rounds, self.lines = {}, {}, {}
        for top in SOURCES:
            for path in sorted((root / top).rglob("*.[ch]pp")):
                unit = path.relative_to(root / top).with_suffix("").as_posix()
                if not unit.startswith(PRIMITIVES):
                    self.read(unit, code_of(path.read_text(encoding="utf-8")))

    def read(self, unit, code):
        bodies = functions(code)
        self.names.setdefault(unit, set()).update(name for name, _, _ in bodies)
        for at in rounding_calls(code):
            around = [name for name, start, end in bodies if start < at < end]
            name = around[0] if around else "(outside of a function)"
            self.rounds.setdefault(unit, set()).add(name)
            self.lines.setdefault((unit, name), code.count("\n", 0, at) + 1)


def table_rows(text, heading):
    """Cells of the table under a heading."""
    part = text[text.index(heading):]
    rows = [line for line in part.split("\n## ")[0].splitlines() if line.startswith("| ")]
    return [[cell.strip() for cell in row.strip("|").split(" | ")] for row in rows[2:]]


def places(cell):
    """(file, function, divides by itself) of a cell such as "loan/escrow `twelfth`, *`cut`*"."""
    unit = None
    for found in re.finditer(r"(\*?)`([^`]+)`|([a-z_]+/[a-z_/]*)", cell):
        if found.group(3):
            unit = found.group(3)
        else:
            yield unit, found.group(2), found.group(1) == "*"


def check(root):
    text = (root / LIST).read_text(encoding="utf-8")
    sources, wrong, listed = Sources(root), [], set()
    figures = table_rows(text, "# Where figures are rounded")
    others = table_rows(text, "## What is rounded and no figure")
    numbers = [row[0] for row in figures]
    if numbers != [str(n) for n in range(1, len(numbers) + 1)]:
        wrong.append(f"{LIST}: numbers that do not run from 1: {' '.join(numbers)}")
    for row in figures + others:
        cell = row[3] if len(row) > 3 else row[0]
        named = list(places(cell))
        if not named and row in figures:
            wrong.append(f"{LIST}: no function in: {' | '.join(row)}")
        for unit, name, itself in named:
            listed.add((unit, name))
            rounds = name in sources.rounds.get(unit, ())
            if name not in sources.names.get(unit, ()):
                wrong.append(f"{LIST}: {unit} has no function {name}")
            elif itself == rounds:
                wrong.append(f"{LIST}: {unit} {name} " + ("rounds by a call: no italics" if rounds
                                                        else "holds no call that rounds"))
    whole = [cell for row in others for cell in re.findall(r"^([a-z_]+/[a-z_/]*)$", row[0])]
    for prefix in whole:
        if not any(unit.startswith(prefix) for unit in sources.rounds):
            wrong.append(f"{LIST}: nothing is rounded in {prefix}")
    for unit, names in sorted(sources.rounds.items()):
        if any(unit == prefix or prefix.endswith("/") and unit.startswith(prefix)
               for prefix in whole):
            continue
        for name in sorted(names):
            if (unit, name) not in listed:
                wrong.append(f"{unit}:{sources.lines[unit, name]}: {name} rounds and is not in "
                             f"{LIST}; give it a number there, or a reason")
    return wrong + recheck_numbers(root, numbers)


def recheck_numbers(root, numbers):
    """Numbers that a recheck, or the proof of a fee, gives and the list has not."""
    wrong = []
    pattern = re.compile(r"\brounded_by\((\d+)\)|\brounding = (\d+)[;,]|, (\d+)\}")
    for path in (sorted((root / "src/answers/recheck").glob("*.cpp")) +
                 sorted((root / "src/loan/fees").glob("*.cpp"))):
        for found in pattern.finditer(path.read_text(encoding="utf-8")):
            number = next(filter(None, found.groups()))
            if number not in numbers:
                wrong.append(f"{path.name}: gives rounding {number}, which is not in {LIST}")
    return wrong


LISTED = """# Where figures are rounded

| no. | figure | rule | functions | ground |
| --- | --- | --- | --- | --- |
| 1 | fee | half away | loan/fee `fee`, *`own`* | ours |

## What is rounded and no figure

| functions | why it is none |
| --- | --- |
| answers/fit/ | bounds |
"""
FEE = """// Fees.
namespace quoin {
Money fee(Money loan) {
    return part_of(loan, 12, Rounding::half_away); // not percent_of(loan, p, Rounding::up)
}
Money own(Money loan) { return loan / 12; }
} // namespace quoin
"""
BOUND = "int bound(Money a) { return divide_rounded<int>(a.count(), 2, Rounding::up); }\n"
MORE = "Money more(Money a, Rounding rounding) { return times(a, two, rounding); }\n"
# What is changed in the small tree, and what has to be said of it.
FAULTS = [
    ({}, []),
    ({"src/loan/fee.cpp": FEE + MORE},
     ["loan/fee:8: more rounds and is not in docs/roundings.md; give it a number there, or a reason"]),
    ({"src/loan/more.cpp": "struct Fee {\n    " + MORE + "};\n"},
     ["loan/more:2: more rounds and is not in docs/roundings.md; give it a number there, or a "
      "reason"]),
    ({"src/loan/more.cpp": "Money fee(Money a) { return monthly_interest(a, rate); }\n"},
     ["loan/more:1: fee rounds and is not in docs/roundings.md; give it a number there, or a "
      "reason"]),
    ({"src/loan/fee.cpp": FEE.replace("half_away);", "half_away) + 0 * 1;")
      .replace("loan / 12", "to_dollars(loan, Rounding::down)")},
     ["docs/roundings.md: loan/fee own rounds by a call: no italics"]),
    ({"src/loan/fee.cpp": FEE.replace("part_of(loan, 12, Rounding::half_away)", "loan")},
     ["docs/roundings.md: loan/fee fee holds no call that rounds"]),
    ({"src/loan/fee.cpp": FEE.replace("own(", "renamed(")},
     ["docs/roundings.md: loan/fee has no function own"]),
    ({"src/answers/fit/bound.cpp": "int bound() { return 0; }\n"},
     ["docs/roundings.md: nothing is rounded in answers/fit/"]),
    ({"docs/roundings.md": LISTED.replace("| 1 |", "| 2 |")},
     ["docs/roundings.md: numbers that do not run from 1: 2"]),
    ({"src/answers/recheck/cash.cpp": "Ground ground() { return rounded_by(7); }\n"},
     ["cash.cpp: gives rounding 7, which is not in docs/roundings.md"]),
    ({"src/loan/fees/flat.cpp": 'const AnnualMethod flat{.name = "flat", .rounding = 7, .charge = charge};\n'},
     ["flat.cpp: gives rounding 7, which is not in docs/roundings.md"]),
]


def unnoticed():
    """Faults in a small tree that are not told as they should be."""
    wrong = []
    for changes, expected in FAULTS:
        files = {"docs/roundings.md": LISTED, "src/loan/fee.cpp": FEE,
                 "src/answers/fit/bound.cpp": BOUND, **changes}
        with tempfile.TemporaryDirectory() as folder:
            for name, text in files.items():
                path = Path(folder) / name
                path.parent.mkdir(parents=True, exist_ok=True)
                path.write_text(text, encoding="utf-8")
            said = check(Path(folder))
        if said != expected:
            wrong.append(f"roundings: of {sorted(changes)} it says {said}, not {expected}")
    return wrong


def main():
    root = Path(__file__).resolve().parents[2]
    if "--calls" in sys.argv:
        for unit, names in sorted(Sources(root).rounds.items()):
            print(unit, *(f"`{name}`" for name in sorted(names)))
        return 0
    wrong = check(root) + unnoticed()
    print("\n".join(wrong) if wrong else "roundings: every call is on the list")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
