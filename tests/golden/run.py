#!/usr/bin/env python3
# Runs transcripts: what a person types, and every line the program answers.
#
#   # A line of prose.
#   $ quoin payment --loan 250000 --rate 6.5 --years 30
#   ...standard output as it is...
#   2> a line of standard error
#   = 0
#
# What stands before "quoin", as in "$ TMPDIR=gone quoin ...", is set in its environment. An answer of
# hundreds of lines is piped to "digest" (digest.py): its shape, some rows, sums and checksums.
#
# Runs tests/golden/*.t, tests/errors/*/case.t and the sessions of README.md, then asks the program
# for its commands and options and fails for any that no transcript uses. With --approve the
# expectations are written anew: read the diff. Files may be named to run only those.
#
# Commands run in the transcript's folder; where that has a make.py, its input is too large to keep:
# make.py writes it into a folder of its own, for this run only, and the commands run there.
import difflib
import glob
import os
import re
import shlex
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

from digest import digest

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PROGRAM = os.environ.get("QUOIN", os.path.join(ROOT, "build/release/quoin"))
# Options that need no transcript of their own.
EXEMPT = {"-h", "OPTIONS", "SUBCOMMAND"}
DIGEST = " | digest"
RUNS = re.compile(r"\$ (\w+=\S* )*quoin\b")
NOT_EMPTY = "(nothing may be written on standard output when the input is refused)"


def answer_of(command, folder):
    words = shlex.split(command.removesuffix(DIGEST))
    environment = {k: v for k, v in os.environ.items() if k != "QUOIN_RATES"}
    while "=" in words[0]:
        name, value = words.pop(0).split("=", 1)
        environment[name] = value
    result = subprocess.run([PROGRAM] + words[1:], cwd=folder, env=environment, text=True,
                            capture_output=True, timeout=60, check=False)
    lines = result.stdout.splitlines()
    if command.endswith(DIGEST) and lines:
        lines = digest(result.stdout)
    if result.returncode == 1 and lines:
        lines.append(NOT_EMPTY)
    lines += [f"2> {line}".rstrip() for line in result.stderr.splitlines()]
    return lines + [f"= {result.returncode}"]


def transcript(path):
    """The file as it should be: prose and commands kept, answers from the program."""
    folder = os.path.dirname(path)
    maker = os.path.join(folder, "make.py")
    if not os.path.exists(maker):
        return answered(path, folder)
    with tempfile.TemporaryDirectory() as made:
        subprocess.run([sys.executable, maker], cwd=made, check=True)
        return answered(path, made)


def answered(path, folder):
    written = []
    answering = False
    with open(path, encoding="utf-8") as file:
        for line in file.read().splitlines():
            if RUNS.match(line):
                written += [line] + answer_of(line[2:], folder)
                answering = True
            elif answering:
                answering = not line.startswith("= ")
            else:
                written.append(line)
    return "\n".join(written) + "\n"


def readme(path):
    """Sessions of a Markdown file: fenced blocks whose first line runs the program."""
    with open(path, encoding="utf-8") as file:
        text = file.read()

    def fill(match):
        indent, body = match.group(1), match.group(2)
        first = body.splitlines()[0].strip()
        if not re.match(r"\$ (build/release/)?quoin ", first):
            return match.group(0)
        lines = answer_of(first[2:], ROOT)
        lines = [line for line in [first] + lines if not line.startswith("= 0")]
        return indent + "```\n" + "".join(
            f"{indent}{line}".rstrip() + "\n" for line in lines) + indent + "```"

    return re.sub(r"(?m)^([ ]*)```\n((?:.*\n)*?)\1```", fill, text)


def check(path, approve):
    with open(path, encoding="utf-8") as file:
        was = file.read()
    now = readme(path) if path.endswith(".md") else transcript(path)
    if was == now and NOT_EMPTY not in now:
        return ""
    if approve and NOT_EMPTY not in now:
        with open(path, "w", encoding="utf-8") as file:
            file.write(now)
        return ""
    name = os.path.relpath(path, ROOT)
    return "".join(difflib.unified_diff(was.splitlines(True), now.splitlines(True), name,
                                        name + " (now)"))


def used_words(paths):
    """For each command, the words its transcripts use; under "" those of the program itself."""
    used = {}
    for path in paths:
        with open(path, encoding="utf-8") as file:
            for line in file:
                if not RUNS.match(line):
                    continue
                words = shlex.split(line[2:].strip().removesuffix(DIGEST))
                words = words[words.index("quoin") + 1:]
                names = [w for w in words if not w.startswith("-")]
                for key in {"", names[0] if names else ""}:
                    used.setdefault(key, set()).update(w.split("=")[0] for w in words)
    return used


def unused(paths):
    used = used_words(paths)
    text = subprocess.run([PROGRAM, "--help"], capture_output=True, text=True, check=True).stdout
    commands = re.findall(r"(?m)^  ([a-z]+) {2,}", text.split("Subcommands:")[1])
    missing = [f"command {c}" for c in commands if c not in used]
    missing += [f"option {o}" for o in options_in(text) if o not in used.get("", set())]
    for command in commands:
        text = subprocess.run([PROGRAM, command, "--help"], capture_output=True, text=True,
                              check=True).stdout
        missing += [f"option {command} {o}" for o in options_in(text)
                    if o not in used.get(command, set())]
    return missing


def options_in(text):
    found = re.findall(r"(?m)^ +((?:-\w,)?--[\w-]+)", text)
    return [o for names in found for o in names.split(",") if o not in EXEMPT]


def main():
    approve = "--approve" in sys.argv
    named = [os.path.abspath(a) for a in sys.argv[1:] if not a.startswith("--")]
    paths = sorted(glob.glob(os.path.join(ROOT, "tests/golden/*.t")) +
                   glob.glob(os.path.join(ROOT, "tests/errors/*/case.t")))
    with ThreadPoolExecutor(2) as pool:
        everything = named or paths + [os.path.join(ROOT, "README.md")]
        differences = list(pool.map(lambda path: check(path, approve), everything))
    for difference in differences:
        sys.stdout.write(difference)
    missing = [] if named else unused(paths)
    for what in missing:
        print(f"no transcript in tests/golden uses {what}")
    different = sum(1 for difference in differences if difference)
    failed = different + len(missing)
    print(f"golden: {len(differences) - different} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
