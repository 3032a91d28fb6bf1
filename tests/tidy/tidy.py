#!/usr/bin/env python3
"""House rules that no compiler checks: floors, purity, exact numbers, headers, plain leftovers, styles.

    tidy.py [TREE]             prints `file:line: error: ... use X instead`, exits 1 if there is any
    tidy.py --umbrella [TREE]  writes include/quoin/quoin.hpp anew, in dependency order

The floors come from the table in TREE/src/README.md; the rules of one line each from RULES below.
"""

import re
import sys
from dataclasses import dataclass
from pathlib import Path

from styles import check_styles

TABLE = "src/README.md"
UMBRELLA = "include/quoin/quoin.hpp"
FAST_PATH = "src/loan/level_payment_fast.cpp"
TOP = "apps"  # the only floor with side effects
COLUMNS = 100
# Headers slow to compile, or of libraries slow to load: one file knows each.
LONE = {
    "CLI/CLI.hpp": "src/apps/parsing.cpp",
    "pugixml.hpp": "src/apps/harmless_svg.cpp",
    "httplib.h": "src/apps/whole/listener.cpp",
    "xlsxwriter.h": "src/apps/whole/workbook_file.cpp",
}
LEFTOVER = re.compile(r"\b(" + "|".join(("FIX" + "ME", "TO" + "DO", "X" + "XX")) + r")\b")
TEXT_FOLDERS = ("src", "include", "tests", "examples", "schemas", "cmake", "docs")
TEXT_ENDS = {".cpp", ".hpp", ".md", ".txt", ".cmake", ".json", ".csv", ".sh", ".py", ".in", ""}


@dataclass
class Floor:
    name: str
    floors: set
    libraries: set
    line: int  # of its row


@dataclass
class Rule:
    """A pattern that must not stand in code, and what to write in its place."""

    pattern: re.Pattern
    says: str
    exempt: tuple = ()


def rule(pattern, says, exempt=()):
    return Rule(re.compile(pattern), says, exempt)


# Held on every floor below apps, comments and text literals left out.
RULES = [
    rule(r"\b(?:float|double)\b", "binary floating point; use Decimal, Rate or Money instead",
         (FAST_PATH,)),
    rule(r"(?<![\w.'])(?:\d[\d']*\.\d*|\.\d+|\d[\d']*[eE][-+]?\d+)(?![\w.])",
         "a floating-point literal; use Decimal, Rate or Money instead", (FAST_PATH,)),
    rule(r"\b(?:std::)?(?:stof|stod|stold|strtof|strtod|strtold|atof)\s*\(",
         "text read as binary floating point; use Decimal instead", (FAST_PATH,)),
    rule(r"#\s*include\s*<(?:fstream|filesystem|cstdio|stdio\.h)>|\bstd::filesystem\b|"
         r"\bstd::[io]?fstream\b|\bfopen\s*\(",
         "a file opened below apps; let apps read it and use its text instead"),
    rule(r"\b(?:system_clock|steady_clock|high_resolution_clock|utc_clock)\b|"
         r"#\s*include\s*<(?:ctime|time\.h)>|\bstd::time\s*\(",
         "the clock asked below apps; use the inquiry's as-of date instead"),
    rule(r"\b(?:std::|secure_)?getenv\s*\(",
         "the environment read below apps; use a parameter instead"),
    rule(r"#\s*include\s*<(?:thread|mutex|shared_mutex|future|condition_variable|atomic)>|"
         r"\bstd::(?:j?thread|async|mutex)\b|\bthread_local\b",
         "a thread or lock below apps; use plain values and leave threads to apps instead"),
    rule(r"#\s*include\s*<iostream>|\bstd::(?:cout|cerr|clog|cin)\b|\bfmt::print(?:ln)?\s*\(|"
         r"(?<![\w.>])(?:std::)?(?:f?printf|puts|fputs|putchar)\s*\(",
         "output below apps; use a returned string instead"),
    rule(r"#\s*include\s*<random>|\b(?:std::)?s?rand\s*\(",
         "chance below apps; use a value that the caller gives instead"),
]


class Report:
    """Collects errors in the order they are found."""

    def __init__(self, root):
        self.root, self.errors = root, []

    def error(self, path, line, says):
        self.errors.append(f"{path.relative_to(self.root).as_posix()}:{line}: error: {says}")


def read_floors(root):
    """The rows of the floor table, in order from the ground up."""
    floors = {}
    text = (root / TABLE).read_text(encoding="utf-8", errors="replace")
    for number, line in enumerate(text.splitlines(), 1):
        cells = [cell.strip() for cell in line.strip().strip("|").split("|")]
        if len(cells) == 4 and re.fullmatch(r"`\w+`", cells[0]):
            name = cells[0].strip("`")
            floors[name] = Floor(name, *(set(re.findall(r"\w+", cell)) for cell in cells[2:]), number)
    return floors


DELETED = re.compile(r"=\s*delete\b")  # a deleted overload forbids what the rules forbid
CODE = re.compile(
    r'//(?:[^\n\\]|\\.|\\\n)*|/\*.*?\*/|R"([^(\s]*)\(.*?\)\1"|"(?:[^"\\\n]|\\.)*"'
    r"|(?<![0-9A-Fa-f])'(?:[^'\\\n]|\\.)+'", re.S)


def code_only(text):
    """The text with comments, strings and characters blanked, every line where it was."""
    def blank(match):
        found = match.group()
        if found.startswith(("//", "/*")):
            return re.sub(r"[^\n]", " ", found)
        return found[0] + re.sub(r"[^\n]", " ", found[1:-1]) + found[-1]
    return CODE.sub(blank, text)


def includes(text):
    """(line, name, angled) of each include."""
    for number, line in enumerate(text.splitlines(), 1):
        found = re.match(r'\s*#\s*include\s*(<([^>]+)>|"([^"]+)")', line)
        if found:
            yield number, found.group(2) or found.group(3), found.group(2) is not None


def allowed_text(names):
    return ", ".join(names) if names else "none"


def floor_of_include(name, floors):
    """The floor that <quoin/FLOOR/x.hpp> or "FLOOR/x.hpp" belongs to, or None."""
    parts = name.split("/")
    if parts[0] == "quoin":
        parts = parts[1:]
    return parts[0] if len(parts) > 1 and parts[0] in floors else None


def sources_of(root, floor):
    """The floor's sources and public headers."""
    for base in ("include/quoin", "src"):
        for path in sorted((root / base / floor.name).rglob("*")):
            if path.suffix in (".hpp", ".cpp"):
                yield path


def check_row(report, floor, floors):
    """The row allows only what something of the floor includes."""
    floors_used, libraries_used = set(), set()
    for path in sources_of(report.root, floor):
        for _, name, angled in includes(path.read_text(encoding="utf-8")):
            target = floor_of_include(name, floors)
            if target is not None:
                floors_used.add(target)
            elif angled:
                libraries_used.add(name.split("/")[0].removesuffix(".h")
                                   .removesuffix(".hpp"))
    unused = [each for each in floors if each in floor.floors - floors_used]
    for each in unused + sorted(floor.libraries - libraries_used):
        report.error(report.root / TABLE, floor.line, f"{floor.name} may use {each}, and nothing "
                     "of it does; use a row without it instead")


def check_include(report, path, floor, floors, number, name, angled):
    target = floor_of_include(name, floors)
    if target is not None:
        if target != floor.name and target not in floor.floors:
            usable = [each for each in floors if each in floor.floors]
            report.error(path, number, f"{floor.name} includes {name}, and may not know {target}; "
                         f"use only {allowed_text(usable)} instead ({TABLE})")
        return
    if name in (UMBRELLA.removeprefix("include/"), "quoin.hpp"):
        report.error(path, number, "the umbrella header inside the house; use the one header that "
                     "is needed instead")
        return
    lone = LONE.get(name)
    if floor.name == TOP and lone not in (None, path.relative_to(report.root).as_posix()):
        report.error(path, number, f"a second file that knows <{name}>; use what {lone} offers "
                     "instead")
    library = name.split("/")[0]
    if floor.name != TOP and angled and (library != name or name.endswith((".h", ".hpp"))):
        if library not in floor.libraries:
            report.error(path, number, f"{floor.name} includes <{name}>, and may not use "
                         f"{library}; use {allowed_text(sorted(floor.libraries) or ['std'])} "
                         f"instead ({TABLE})")


def check_floor_file(report, path, floor, floors):
    text = path.read_text(encoding="utf-8")
    for number, name, angled in includes(text):
        check_include(report, path, floor, floors, number, name, angled)
    if floor.name == TOP:
        return
    here = path.relative_to(report.root).as_posix()
    for number, line in enumerate(code_only(text).splitlines(), 1):
        for each in RULES:
            if here not in each.exempt and each.pattern.search(line) and not DELETED.search(line):
                report.error(path, number, each.says)


def check_cpp(report, path):
    """What holds for every C++ file, tests included."""
    lines = path.read_text(encoding="utf-8", errors="replace").splitlines() or [""]
    if not re.match(r"// \S.*\S", lines[0]) or re.match(r"// *(SPDX|Copyright)", lines[0]):
        report.error(path, 1, "no purpose; use a first line `// ` with one sentence instead")
    for number, line in enumerate(lines, 1):
        if len(line) > COLUMNS:
            report.error(path, number, f"{len(line)} columns; use at most {COLUMNS} instead")
    if path.suffix == ".hpp" and not any(line == "#pragma once" for line in lines):
        report.error(path, 1, "may be included twice; use `#pragma once` instead")


def check_leftovers(report, path):
    for number, line in enumerate(path.read_text(encoding="utf-8", errors="replace").splitlines(), 1):
        found = LEFTOVER.search(line)
        if found:
            report.error(path, number,
                         f"a leftover {found.group()}; use a finished line, or an issue, instead")


def public_headers(root, floors):
    """Public headers by floor, each after those it includes; names as they are included."""
    ordered = []
    base = root / "include"
    for floor in floors:
        waiting = sorted((base / "quoin" / floor).glob("*.hpp"))
        known = {path.relative_to(base).as_posix(): path for path in waiting}
        done = set()

        def visit(name):
            if name in done:
                return
            done.add(name)
            needs = [used for _, used, _ in includes(known[name].read_text(encoding="utf-8"))]
            for used in sorted(set(needs) & known.keys()):
                visit(used)
            ordered.append(name)

        for name in known:
            visit(name)
    return ordered


def umbrella_text(root, floors):
    lines = ["// Every public header, in dependency order: the order to read them in, too.",
             "#pragma once"]
    last = None
    for name in public_headers(root, floors):
        floor = name.split("/")[1]
        if floor != last:
            lines.append("")
            last = floor
        lines.append(f"#include <{name}>")
    return "\n".join(lines) + "\n"


def check_umbrella(report, root, floors):
    path = root / UMBRELLA
    wanted = public_headers(root, floors)
    if not wanted:
        return
    text = path.read_text(encoding="utf-8") if path.exists() else ""
    listed = [name for _, name, _ in includes(text)]
    remedy = "use `python3 tests/tidy/tidy.py --umbrella` instead of a list by hand"
    before = len(report.errors)
    for name in wanted:
        if name not in listed:
            report.error(root / "include" / name, 1, f"not listed in {UMBRELLA}; {remedy}")
    for number, name, _ in includes(text):
        if name not in wanted:
            report.error(path, number, f"lists {name}, which is not there; {remedy}")
    if before == len(report.errors) and listed != wanted:
        report.error(path, 1, f"not in dependency order; {remedy}")


def files(root, folders, ends):
    """Files of these folders, without the bad trees that test this script and npm's packages."""
    for folder in folders:
        for path in sorted((root / folder).rglob("*")):
            inside = path.relative_to(root).as_posix()
            ours = not inside.startswith("tests/tidy/bad/") and "node_modules" not in path.parts
            if path.is_file() and path.suffix in ends and ours:
                yield path


def check(root, rows=True):
    """The errors; without `rows`, a table that allows more than is used is none."""
    report = Report(root)
    floors = read_floors(root)
    if not floors:
        report.error(root / TABLE, 1, "no floor table; use rows `| `floor` | what | floors | "
                     "libraries |` instead")
        return report.errors
    for base in ("include/quoin", "src"):
        for folder in sorted(each for each in (root / base).glob("*") if each.is_dir()):
            sources = [each for each in sorted(folder.rglob("*")) if each.suffix in (".hpp", ".cpp")]
            if folder.name in floors:
                for path in sources:
                    check_floor_file(report, path, floors[folder.name], floors)
            elif sources:
                report.error(sources[0], 1, f"{folder.name} is no floor; use a folder of the "
                             f"table in {TABLE} instead")
    for floor in floors.values() if rows else ():
        check_row(report, floor, floors)
    for path in files(root, ("src", "include", "tests"), {".cpp", ".hpp"}):
        check_cpp(report, path)
    for path in files(root, TEXT_FOLDERS, TEXT_ENDS):
        check_leftovers(report, path)
    check_umbrella(report, root, floors)
    check_styles(report, root)
    return report.errors


def main(arguments):
    write = "--umbrella" in arguments
    trees = [each for each in arguments if each != "--umbrella"]
    root = Path(trees[0] if trees else Path(__file__).parents[2]).resolve()
    if write:
        (root / UMBRELLA).write_text(umbrella_text(root, read_floors(root)), encoding="utf-8")
        return 0
    errors = check(root)
    print("\n".join(errors) if errors else "tidy: nothing to say")
    return 1 if errors else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
