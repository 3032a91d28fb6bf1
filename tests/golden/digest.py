# A long answer as a person can read it in a diff: its shape, a few rows of each table, and for all
# that is left out a count, the sum of every column of numbers, and a checksum of the very text.
#
#   $ quoin schedule ... --csv | digest
#   payment,due,balance            the heading of a table
#   1,2027-07-01,409447.99         its first two rows
#   ...
#   360,2057-06-01,0.00            a row in which what had stood still moves, and the last
#   360 rows: payment 64980, balance 84211734.10 #5d0c13aa
#   = 0
#
# JSON is written with as many members to a line as fit; a list that would take more than a few
# lines is cut like a table, a long sentence after its first words.
import csv
import hashlib
import json
import re
from decimal import Decimal

WIDTH = 98
FEW = 12  # lines of a list that is shown whole
FIRST = 2  # rows
STILL = 3  # rows in which a column has stood still
CHANGES = 4  # that are shown
WORDS = 60  # letters of a long sentence
NUMBER = re.compile(r"-?\d+(\.\d+)?")


def checksum(text):
    return "#" + hashlib.sha256(text.encode()).hexdigest()[:8]


def number(value):
    """What a cell counts for, or None where it is no number."""
    if isinstance(value, int) and not isinstance(value, bool):
        return Decimal(value)
    if isinstance(value, str) and NUMBER.fullmatch(value):
        return Decimal(value)
    return None


def sums(rows):
    """The sum of each column that holds numbers alone (or nothing)."""
    told = []
    for name in rows[0]:
        cells = [row.get(name) for row in rows]
        numbers = [number(cell) for cell in cells if cell not in (None, "")]
        if numbers and None not in numbers:
            told.append(f"{name} {sum(numbers)}".strip())
    return ", ".join(told)


def shown(rows):
    """Which rows of a long table are shown, by their places."""
    moves = [at for at in range(STILL, len(rows)) if any(
        number(cell) is not None and cell != rows[at].get(name)
        and all(row.get(name) == cell for row in rows[at - STILL:at])
        for name, cell in rows[at - 1].items())]
    return sorted({*range(FIRST), *moves[:CHANGES], len(rows) - 1})


def cut(rows, lines_of, text):
    """Some rows of a table, and what all of them come to."""
    lines, next_at = [], 0
    places = shown(rows)
    if len(lines_of(0)) > FEW // 2:  # an entry as long as that stands for the others
        places = [0]
    for at in places:
        lines += ["..."] * (at > next_at) + lines_of(at)
        next_at = at + 1
    lines += ["..."] * (next_at < len(rows))
    told = sums(rows)
    return lines + wrapped(f"{len(rows)} rows{': ' if told else ''}{told} {checksum(text)}")


def wrapped(text):
    lines = [""]
    for word in text.split(" "):
        if lines[-1] and len(lines[-1]) + len(word) >= WIDTH:
            lines.append(" ")
        lines[-1] += (" " if lines[-1] else "") + word
    return lines


def drawn(value, width=WIDTH):
    """The lines of a value of JSON."""
    line = json.dumps(value, ensure_ascii=False)
    if isinstance(value, str) and len(line) > width:
        return [line[:WORDS] + f'..." {len(value)} letters {checksum(value)}']
    if len(line) <= width or not isinstance(value, (dict, list)):
        return [line]
    if isinstance(value, dict):
        return ["{", *inside(members(value, width - 2)), "}"]
    entries = [drawn(entry, width - 2) for entry in value]
    if len(value) > 1 and sum(len(lines) for lines in entries) > FEW:
        rows = [entry if isinstance(entry, dict) else {"": entry} for entry in value]
        return ["[", *inside(cut(rows, lambda at: entries[at], line)), "]"]
    return ["[", *inside([line for lines in entries for line in lines]), "]"]


def members(value, width):
    """The members of an object, as many to a line as fit."""
    lines, room = [], False
    for name, member in value.items():
        head = f'"{name}": '
        own = drawn(member, width - len(head))
        if len(own) > 1:
            own = drawn(member, width)
        own[0] = head + own[0]
        if len(own) == 1 and room and len(lines[-1]) + 2 + len(own[0]) <= width:
            lines[-1] += ", " + own[0]
        else:
            lines += own
        room = len(own) == 1
    return lines


def inside(lines):
    return ["  " + line for line in lines]


def digest(text):
    """The lines of an answer, JSON or CSV; the last tells a checksum of all its bytes."""
    if text.startswith(("{", "[")):
        return drawn(json.loads(text)) + [f"{len(text.splitlines())} lines {checksum(text)}"]
    lines = text.splitlines()
    rows = list(csv.DictReader(lines))
    return lines[:1] + cut(rows, lambda at: lines[1 + at:2 + at], text)
