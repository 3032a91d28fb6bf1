#!/usr/bin/env python3
# A language that nobody speaks: the English catalogue with its letters in another alphabet.
#
#   mechanical.py SOURCE OUT    writes src/words/english.cpp and its areas, marked, into OUT
#
# A program with this catalogue says everything in marked letters; what it says in others, no
# catalogue says. Places of values, escapes and the code around a sentence stay.
import os
import re
import sys

MARKED = str.maketrans("abcdefghijklmnopqrstuvwxyz" "ABCDEFGHIJKLMNOPQRSTUVWXYZ",
                       "абцдефгхийклмнопярстувшчуз" "АБЦДЕФГХИЙКЛМНОПЯРСТУВШЧУЗ")
LITERAL = re.compile(r'"(?:[^"\\\n]|\\.)*"')
KEPT = re.compile(r"\{[^{}]*\}|\\.")


def marked(text):
    pieces, at = [], 0
    for kept in KEPT.finditer(text):
        pieces += [text[at:kept.start()].translate(MARKED), kept.group()]
        at = kept.end()
    return "".join(pieces) + text[at:].translate(MARKED)


def catalogue(source):
    lines = []
    for line in source.split("\n"):
        if line.startswith("#include"):
            line = line.replace('"../', '"words/')
        elif not line.lstrip().startswith("//"):
            line = LITERAL.sub(lambda found: marked(found.group()), line)
        lines.append(line)
    return "\n".join(lines)


def main():
    source, out = sys.argv[1:]
    files = ["english.cpp"] + ["english/" + name
                               for name in sorted(os.listdir(os.path.join(source, "english")))]
    os.makedirs(os.path.join(out, "english"), exist_ok=True)
    for name in files:
        with open(os.path.join(source, name), encoding="utf-8") as file:
            made = catalogue(file.read())
        with open(os.path.join(out, name), "w", encoding="utf-8") as file:
            file.write(made)


if __name__ == "__main__":
    main()
