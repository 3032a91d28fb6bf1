#!/usr/bin/env python3
# Writes docs/errors.md from the cases in tests/errors, or checks that it is up to date.
#
# Every name in include/quoin/text/problems.hpp has a folder here with the smallest input that causes it and a
# transcript, case.t, which tests/golden/run.py holds to what the program says. What the server says
# of a request is in tests/serve/refusals.json, held by tests/serve/run-refusals. --check compares.
import glob
import json
import os
import re
import sys

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PAGE = os.path.join(ROOT, "docs/errors.md")
# Cases that show more than one message.
SHOWS_SEVERAL = {"several-at-once"}
# Told after a hundred others, which would fill the page; tests/text/caps.cpp holds it.
TOO_LONG_TO_SHOW = {"too-many-problems"}

HEAD = """# What quoin says about your files

Written by `tests/errors/regenerate.py` from the cases in `tests/errors/`; each message here is what the program
says, word for word. Every message ends in its id in brackets.
"""

SERVED = """
# What `quoin serve` says of a request

An inquiry's own mistakes are answered in the words above, as JSON. These are about the request: each with its status and
what the answer's one problem says.
"""


def ids_in_source():
    with open(os.path.join(ROOT, "include/quoin/text/problems.hpp"), encoding="utf-8") as file:
        found = dict.fromkeys(re.findall(r'ROW\(\w+, "([a-z0-9-]+)"', file.read()))
    return [name for name in found
            if name not in TOO_LONG_TO_SHOW and not name.startswith("http-")]


def section(name):
    with open(os.path.join(ROOT, "tests/errors", name, "case.t"), encoding="utf-8") as file:
        lines = file.read().splitlines()
    prose = " ".join(line[2:] for line in lines if line.startswith("# "))
    session = []
    for line in lines:
        if line.startswith("$ "):
            session.append(line)
        elif line.startswith("2> "):
            session.append(line[3:])
        elif line and not line.startswith(("# ", "= ")):
            session.append(line)
    return f"\n## {name}\n\n{prose}\n\n```\n" + "\n".join(session) + "\n```\n"


def served(case):
    lines = [*case["request"], "", str(case["answer"]["status"]), case["answer"]["found"],
             f"  expected {case['answer']['expected']}"]
    if "advice" in case["answer"]:
        lines.append(f"  {case['answer']['advice']}")
    session = "\n".join([*lines, f"  [{case['id']}]"])
    session = session.replace("{host}", "127.0.0.1:PORT").replace("{scenario}", "NAME")
    return f"\n## {case['id']}\n\n{case['says']}\n\n```\n{session}\n```\n"


def page():
    names = ids_in_source() + sorted(SHOWS_SEVERAL)
    with open(os.path.join(ROOT, "tests/serve/refusals.json"), encoding="utf-8") as file:
        refusals = json.load(file)
    return (HEAD + "".join(section(name) for name in names) + SERVED +
            "".join(served(case) for case in refusals))


def mismatches():
    ids = set(ids_in_source())
    folders = {os.path.basename(os.path.dirname(path))
               for path in glob.glob(os.path.join(ROOT, "tests/errors/*/case.t"))}
    for missing in sorted(ids - folders):
        yield f"tests/errors/{missing}: no case for this message"
    for extra in sorted(folders - ids - SHOWS_SEVERAL):
        yield f"tests/errors/{extra}: no message has this id"
    for name in sorted(ids & folders):
        with open(os.path.join(ROOT, "tests/errors", name, "case.t"), encoding="utf-8") as file:
            if f"[{name}]" not in file.read():
                yield f"tests/errors/{name}/case.t: does not show [{name}]"


def main():
    problems = list(mismatches())
    for problem in problems:
        print(problem)
    if problems:
        return 1
    text = page()
    if "--check" not in sys.argv:
        with open(PAGE, "w", encoding="utf-8") as file:
            file.write(text)
        return 0
    with open(PAGE, encoding="utf-8") as file:
        if file.read() == text:
            print("docs/errors.md: up to date")
            return 0
    print("docs/errors.md: not up to date; run python3 tests/errors/regenerate.py")
    return 1


if __name__ == "__main__":
    sys.exit(main())
