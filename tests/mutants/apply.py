#!/usr/bin/env python3
# Applies named plausible mistakes one at a time and expects the tests to go red.
#
#   python3 tests/mutants/apply.py            all of them (an hour; the test run tries ten: run-ten)
#   python3 tests/mutants/apply.py "expired"  those whose name holds the word
#   python3 tests/mutants/apply.py --check    only that every mistake still fits its file
#
#   --shard 1/3   every third of them, from the first
#   --resume      not those that build/mutants.json says were tried on this very text
#   --here        in this tree and its build/dev, not in a copy: for a tree that nobody else edits
#   --green       the tests are known to pass without a mistake: do not run them first
#
# A mistake counts as missed only when every test has passed with it. To get there fast, the test
# that caught it the last time (caught.json) is tried first, then the programs of its floor and of
# those above, then all the rest; each program is built only when it is its turn.
import hashlib
import json
import os
import re
import resource
import shutil
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
FLOORS = ["exact", "text", "pricebook", "lending", "home", "loan", "published", "inquiry",
          "answers", "render", "apps"]
CPU_SECONDS = 900  # of one test program; an endless loop is caught, a busy machine is not
CAUGHT = "tests/mutants/caught.json"
TRIED = "build/mutants.json"
UNFIT = "does not compile"  # a mistake that nobody could make is none: it counts as missed


def mutants():
    with open(os.path.join(ROOT, "tests/mutants/mutants.json"), encoding="utf-8") as file:
        return [m for m in json.load(file) if "name" in m]


def kept(path):
    path = os.path.join(ROOT, path)
    if not os.path.exists(path):
        return {}
    with open(path, encoding="utf-8") as file:
        return json.load(file)


def keep(path, values):
    path = os.path.join(ROOT, path)
    os.makedirs(os.path.dirname(path), exist_ok=True)
    with open(path, "w", encoding="utf-8") as file:
        json.dump(values, file, indent=1, sort_keys=True)
        file.write("\n")


def check_fit():
    bad = 0
    for m in mutants():
        with open(os.path.join(ROOT, m["file"]), encoding="utf-8") as file:
            count = file.read().count(m["old"])
        if count != 1:
            print(f"{m['name']}: its text stands {count} times in {m['file']}, must be once")
            bad += 1
    print(f"mutants: {len(mutants()) - bad} fit, {bad} do not")
    return 1 if bad else 0


def case_pattern(case):
    """How a test program is asked for one case."""
    return re.sub(r"([\\,\[\]*\"])", r"\\\1", case)


class Tree:
    """A source tree with its build, where the tests are run."""

    def __init__(self, root):
        self.root = root
        self.build = os.path.join(root, "build/dev")

    def make(self, *targets):
        chosen = ["--target", *targets] if targets else []
        done = subprocess.run(["cmake", "--build", self.build, "-j2", *chosen],
                              capture_output=True, text=True, check=False)
        return done.returncode == 0

    def program(self, floor, case=None):
        """The test that fails in a floor's program, as "FLOOR/CASE", or None."""
        if not self.make(f"tests-{floor}"):
            return UNFIT
        asked = [case_pattern(case)] if case else []
        done = subprocess.run(
            [os.path.join(self.build, "tests", f"tests-{floor}"), "--abort", "-r", "xml", *asked],
            cwd=self.root, capture_output=True, text=True, errors="replace", check=False,
            preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_CPU, (CPU_SECONDS, CPU_SECONDS)))
        if done.returncode == 0:
            return None
        begun = re.findall(r'<TestCase name="([^"]*)"', done.stdout)
        names = {"&lt;": "<", "&gt;": ">", "&quot;": '"', "&apos;": "'", "&amp;": "&"}
        name = re.sub("|".join(names), lambda found: names[found[0]], begun[-1]) if begun else "?"
        return f"{floor}/{name}"

    def ctest(self, *chosen):
        """The test that ctest says failed, or None."""
        if not self.make():
            return UNFIT
        done = subprocess.run(["ctest", "--test-dir", self.build, "-j2", "--stop-on-failure",
                               "--timeout", "3600", *chosen],
                              capture_output=True, text=True, check=False)
        if done.returncode == 0:
            return None
        failed = [line for line in done.stdout.splitlines() if "***" in line]
        return failed[0].split(":", 1)[1].split("...")[0].strip(" .") if failed else "a test"

    def red(self, file, last):
        """How the tests notice; None if they do not."""
        floor, _, case = (last or "").partition("/")
        if floor in FLOORS and case:
            how = self.program(floor, case)
            if how:
                return how
        elif floor == "script":
            how = self.ctest("-R", f"^{re.escape(last)}$")
            if how:
                return how
        own = file.split("/")[2 if file.startswith("include/") else 1]
        at = FLOORS.index(own) if own in FLOORS else 0
        for each in FLOORS[at:] + FLOORS[:at]:
            how = self.program(each)
            if how:
                return how
        for chosen in (["-R", "^script/golden$"],
                       ["-E", f"^({'|'.join(FLOORS)})/|^headers/|^sanitized/"
                        "|^script/(golden|page( used)?$|configure|install|schemas|tidy|mutants)"],
                       ["-R", "^script/page( used)?$"]):  # minutes
            how = self.ctest(*chosen)
            if how:
                return how
        return None


def attempt(tree, m, last):
    """How the tests notice one mistake; the file is afterwards as it was."""
    path = os.path.join(tree.root, m["file"])
    with open(path, encoding="utf-8") as file:
        text = file.read()
    try:
        with open(path, "w", encoding="utf-8") as file:
            file.write(text.replace(m["old"], m["new"]))
        return tree.red(m["file"], last)
    finally:
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)


def mark_of(m):
    """What a result holds for: the mistake and the text it is made in."""
    with open(os.path.join(ROOT, m["file"]), "rb") as file:
        return hashlib.sha256(file.read() + (m["old"] + m["new"]).encode()).hexdigest()[:16]


def try_all(tree, chosen, resume, green):
    if not green:
        how = tree.red("src/exact/", None)
        if how:
            print(f"the tests are red before any mistake is made: {how}")
            return 1
    caught, tried = kept(CAUGHT), kept(TRIED)
    missed = []
    for m in chosen:
        name, mark = m["name"], mark_of(m)
        done = resume and tried.get(name, {}).get("mark") == mark
        how = tried[name]["how"] if done else attempt(tree, m, caught.get(name))
        tried[name] = {"mark": mark, "how": how}
        keep(TRIED, tried)
        if how and how != UNFIT:
            caught[name] = how
            keep(CAUGHT, caught)
        else:
            missed.append(name)
        print(f"{'NOT CAUGHT' if name in missed else 'caught'}: {name}{' (' + how + ')' if how else ''}",
              flush=True)
    print(f"mutants: {len(chosen) - len(missed)} of {len(chosen)} caught")
    return 1 if missed else 0


def run(chosen, here, **how):
    if here:
        return try_all(Tree(ROOT), chosen, **how)
    with tempfile.TemporaryDirectory() as folder:
        copy = os.path.join(folder, "quoin")
        shutil.copytree(ROOT, copy, ignore=shutil.ignore_patterns("build", ".git"))
        subprocess.run(["cmake", "--preset", "dev", "-DQUOIN_WERROR=OFF",
                        "-DQUOIN_BROWSER_MODULE=OFF"], cwd=copy,
                       capture_output=True, check=True)
        return try_all(Tree(copy), chosen, **how)


def main(words):
    if "--check" in words:
        return check_fit()
    part, parts = 1, 1
    if "--shard" in words:
        at = words.index("--shard")
        part, parts = (int(number) for number in words[at + 1].split("/"))
        words = words[:at] + words[at + 2:]
    flags = {word for word in words if word.startswith("--")}
    wanted = [word for word in words if word not in flags]
    chosen = [m for m in mutants() if not wanted or any(word in m["name"] for word in wanted)]
    return run(chosen[part - 1::parts], "--here" in flags, resume="--resume" in flags,
               green="--green" in flags)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
