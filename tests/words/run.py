#!/usr/bin/env python3
# Holds that every sentence stands in a catalogue or in the data: each command of the transcripts is
# run, as it is and as JSON, by a program whose catalogue is in marked letters (mechanical.py), on data
# whose texts are in other marked letters. What is then left in Latin letters is a code, an id, a name
# of the command line or of a file, a date, or it fails. Asked in Spanish, which is not marked, the
# program may say nothing in marked letters.
#
#   run.py            all of it
#   run.py --show     the same, and prints what the first command answers
import csv
import glob
import html.parser
import json
import os
import re
import shlex
import shutil
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

SOURCE = os.environ["QUOIN_SOURCE"]
BUILD = os.environ["QUOIN_BUILD"]
PROGRAM = os.path.join(BUILD, "tests", "quoin-mechanical")
DATA_MARK = {ord(letter): chr(0x0561 + at)
             for at, letter in enumerate("abcdefghijklmnopqrstuvwxyz")}
DATA_MARK |= {ord(letter.upper()): chr(0x0531 + at)
              for at, letter in enumerate("abcdefghijklmnopqrstuvwxyz")}
# By the names of the schemas' definitions; a text of several languages keeps its keys.
SHOWN = {"text", "name", "words", "title", "note", "office_note", "texts", "names"}
PATHS = {"price_book", "lots"}
NOTES = ("note", "office_note")
PERSONS = {"prepared_by", "originator"}
MONTHS = ("January|February|March|April|May|June|July|August|September|October|November|December")
# Left as they are: what somebody typed or a file has, names of options and commands, codes, dates.
LEFT = re.compile("|".join([
    rf"\b(?:{MONTHS}) \d+, \d+", r'"[^"]*"', r"'[^']*'", r"--[a-z-]+(?: [\x21-\x7e]+)?",
    r"\[[a-z-]+\]", r"[\w./-]+\.(?:json|csv|html?|xlsx)\b", r"\bquoin\b", r"\b[A-Z]{1,2}\d+\b",
    # Sources are cited as they are printed.
    r"\b\d+ (?:CFR|USC)\b", r"\b\d{3,4}\.[0-9a-z.()-]+(?:, \([a-z]\))?", r"\bAppendix J[0-9a-z()]*",
    r"\bcomment [0-9a-z()-]+", r"\bHUD Reference Guide [0-9-]+", r"(?<=\s)\.(?:html|xlsx)\b",
    r"(?<![\w])[a-z](?![\w])"]))  # letters of remarks below a table
LATIN = re.compile(r"[A-Za-z][\w'’-]*")
COLUMNS = re.compile(r"[a-z_]+(?:,[a-z_]+)+")  # the first line of a CSV
CODE = re.compile(r"[a-z0-9_-]+")


class Schemas:
    """Which texts of a file are shown to people."""

    def __init__(self):
        self.by_format = {}
        for path in glob.glob(os.path.join(SOURCE, "schemas", "*.schema.json")):
            schema = read_json(path)
            self.by_format[schema["properties"]["format"]["const"]] = schema

    def marked(self, value):
        schema = self.by_format.get(value.get("format")) if isinstance(value, dict) else None
        return value if schema is None else self.walk(value, [schema], schema)

    def walk(self, value, schemas, root):
        schemas = list(self.opened(schemas, root))
        if isinstance(value, str):
            return value.translate(DATA_MARK) if None in schemas else value
        if isinstance(value, list):
            inner = [s["items"] for s in schemas if s and "items" in s]
            return [self.walk(each, inner, root) for each in value]
        if isinstance(value, dict):
            return {key: each if key in PATHS
                    else each.translate(DATA_MARK) if key in PERSONS and isinstance(each, str)
                    else self.walk(each, list(self.member(key, schemas)), root)
                    for key, each in value.items()}
        return value

    @staticmethod
    def opened(schemas, root):
        """Each with what it refers to; None for a text that is shown."""
        open_ones = list(schemas)
        while open_ones:
            schema = open_ones.pop()
            if not isinstance(schema, dict):
                continue
            yield schema
            for word in ("allOf", "anyOf", "oneOf"):
                open_ones += schema.get(word, [])
            open_ones += [schema[word] for word in ("then", "else") if word in schema]
            if "$ref" in schema:
                name = schema["$ref"].rsplit("/", 1)[1]
                if name in SHOWN:
                    yield None
                open_ones.append(root["$defs"][name])

    @staticmethod
    def member(key, schemas):
        for schema in schemas:
            if not schema:
                continue
            if key in schema.get("properties", {}):
                yield schema["properties"][key]
            for pattern, inner in schema.get("patternProperties", {}).items():
                if re.search(pattern, key):
                    yield inner
            if isinstance(schema.get("additionalProperties"), dict):
                yield schema["additionalProperties"]


def read_json(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file)


def mark_tree(folder, schemas):
    """Marks every file of data in place; gives the ids and keys that they hold."""
    ids = set()
    for path in glob.glob(os.path.join(folder, "**", "*.json"), recursive=True):
        ids.add(os.path.splitext(os.path.basename(path))[0])
        try:
            value = read_json(path)
        except (ValueError, RecursionError):
            continue  # one that a transcript shows to be refused
        made = schemas.marked(value)
        if made is value:
            continue
        ids |= set(words_of(made))
        with open(path, "w", encoding="utf-8") as file:
            json.dump(made, file, ensure_ascii=False, indent=1)
    for path in glob.glob(os.path.join(folder, "**", "*.csv"), recursive=True):
        mark_list(path)
    return ids


def mark_list(path):
    """The notes of a list of lots; its other columns are codes and figures."""
    with open(path, encoding="utf-8", newline="") as file:
        rows = list(csv.reader(file))
    notes = [at for at, name in enumerate(rows[0]) if name.startswith(NOTES)] if rows else []
    for row in rows[1:]:
        for at in notes:
            row[at:at + 1] = [text.translate(DATA_MARK) for text in row[at:at + 1]]
    if notes:
        with open(path, "w", encoding="utf-8", newline="") as file:
            csv.writer(file).writerows(rows)


def words_of(value):
    """Every key, and every text that is not marked."""
    if isinstance(value, dict):
        for key, each in value.items():
            yield key
            yield from words_of(each)
    elif isinstance(value, list):
        for each in value:
            yield from words_of(each)
    elif isinstance(value, str):
        yield value


class Shown(html.parser.HTMLParser):
    """The texts of a page, a line each."""

    def __init__(self):
        super().__init__()
        self.lines, self.hidden = [], False

    def handle_starttag(self, tag, attrs):
        self.hidden = tag == "style"
        self.lines += [value for name, value in attrs if name in ("aria-label", "title", "alt")]

    def handle_endtag(self, tag):
        self.hidden = False

    def handle_data(self, data):
        if not self.hidden:
            self.lines.append(data)


def lines_shown(text):
    """What a person reads of an answer in any form."""
    if text.lstrip().startswith(("{", "[")):
        return [line for value in json_texts(json.loads(text))
                for line in (lines_shown(value) if value.startswith("<svg") else value.split("\n"))]
    if text.startswith(("<!doctype", "<svg")):
        page = Shown()
        page.feed(text)
        return page.lines
    return text.split("\n")


def json_texts(value):
    """Every text of an answer that is no code."""
    if isinstance(value, dict):
        for each in value.values():
            yield from json_texts(each)
    elif isinstance(value, list):
        for each in value:
            yield from json_texts(each)
    elif isinstance(value, str) and not CODE.fullmatch(value):
        yield value


def latin_in(text, known):
    for line in lines_shown(text):
        if re.match(r"\s*\d* \| ", line):
            continue  # of the file that is refused
        if line.strip() in known or COLUMNS.fullmatch(line.strip()):
            continue
        rest = LEFT.sub(" ", line)
        if any(word not in known for word in LATIN.findall(rest)):
            yield line.strip()


def english_in(text):
    """What a Spanish answer took out of the English catalogue."""
    for line in lines_shown(text):
        if re.search("[А-я]", line):
            yield line.strip()


def commands():
    """What the transcripts type, with the folder it is typed in."""
    paths = glob.glob(os.path.join(SOURCE, "tests", "golden", "*.t"))
    for path in sorted(paths):
        with open(path, encoding="utf-8") as file:
            for line in file:
                if line.startswith("$ quoin ") and not re.search(r"--help|quoin (serve|take-home)", line):
                    # A narrow line may part a date, which is then no date.
                    typed = re.sub(r" --width[ =]\d+", "", line.removeprefix("$ quoin "))
                    yield shlex.split(typed.replace(" | digest", ""))


def forms(words):
    yield words
    if not {"--json", "--csv", "check", "sheet", "--version"} & set(words):
        yield words + ["--json"]
    if words[0] != "recheck":  # which is told in English alone
        yield words + ["--language", "es"]


def marked_words(words):
    """Names of loans are texts of the data; nothing else that is typed is one."""
    names = {"--scenario", "--against"}
    return [word.translate(DATA_MARK) if words[at - 1] in names else word
            for at, word in enumerate(words)]


def answer(words, folder, rates):
    environment = dict(os.environ, QUOIN_RATES=rates)
    with tempfile.TemporaryDirectory() as out:
        typed = [os.path.join(out, word) if word.endswith((".html", ".xlsx")) else word
                 for word in marked_words(words)]
        done = subprocess.run([PROGRAM] + typed, cwd=folder, env=environment, text=True,
                              capture_output=True, timeout=120, check=False)
        texts = [done.stdout, done.stderr]
        for path in glob.glob(os.path.join(out, "*.html")):
            with open(path, encoding="utf-8") as file:
                texts.append(file.read())
        return done.returncode, [text.replace(out, "") for text in texts if text]


def main():
    if not os.path.exists(PROGRAM):
        print("words: this build has no quoin-mechanical (units of several files): nothing to run")
        return 0
    failed, done, codes = {}, 0, {}
    with tempfile.TemporaryDirectory() as copy:
        for part in ("tests/golden", "examples", "rates"):
            shutil.copytree(os.path.join(SOURCE, part), os.path.join(copy, part))
        known = mark_tree(copy, Schemas())
        folder = os.path.join(copy, "tests/golden")
        asked = [form for words in commands() for form in forms(words)]
        with ThreadPoolExecutor(os.cpu_count()) as pool:
            told = pool.map(lambda words: answer(words, folder, os.path.join(copy, "rates")), asked)
            for words, (code, texts) in zip(asked, told):
                done += 1
                codes[code] = codes.get(code, 0) + 1
                if "--show" in sys.argv and done == 1:
                    print(texts[0])
                for text in texts if code != 2 else []:  # wrong use is told in English
                    lines = english_in(text) if "es" in words else latin_in(text, known)
                    for line in lines:
                        failed.setdefault(line, words)
    for line, words in failed.items():
        print(f"{shlex.join(words)}\n    {line[:160]}")
    print(f"words: {done} commands {codes}, {len(failed)} lines that no catalogue says")
    return 1 if failed or codes.get(0, 0) < 100 else 0


if __name__ == "__main__":
    sys.exit(main())
