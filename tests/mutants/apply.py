#!/usr/bin/env python3
# Applies named plausible mistakes one at a time and expects the tests to go red.
#
#   python3 tests/mutants/apply.py            all of them (minutes; not part of the test run)
#   python3 tests/mutants/apply.py "expired"  those whose name holds the word
#   python3 tests/mutants/apply.py --check    only that every mistake still fits its file
import json
import os
import shutil
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))


def mutants():
    with open(os.path.join(ROOT, "tests/mutants/mutants.json"), encoding="utf-8") as file:
        return [m for m in json.load(file) if "name" in m]


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


def red(copy):
    """How the tests notice: a build that fails, a test program or the transcripts; None if not."""
    build = os.path.join(copy, "build/dev")
    made = subprocess.run(["cmake", "--build", build], capture_output=True, text=True, check=False)
    if made.returncode:
        return "does not compile"
    done = subprocess.run(["ctest", "--test-dir", build, "-j2", "--stop-on-failure", "--timeout", "60",
                           "-E", "script/(install|schemas|tidy|mutants)|headers/"],
                          capture_output=True, text=True, check=False)
    if done.returncode == 0:
        return None
    failed = [line for line in done.stdout.splitlines() if "***" in line]
    return failed[0].split(":", 1)[1].split("...")[0].strip() if failed else "a test"


def run(chosen):
    with tempfile.TemporaryDirectory() as folder:
        copy = os.path.join(folder, "quoin")
        shutil.copytree(ROOT, copy, ignore=shutil.ignore_patterns("build", ".git"))
        subprocess.run(["cmake", "--preset", "dev", "-DQUOIN_WERROR=OFF"], cwd=copy,
                       capture_output=True, check=True)
        if red(copy) is not None:
            print("the tests are red before any mistake is made")
            return 1
        survivors = 0
        for m in chosen:
            path = os.path.join(copy, m["file"])
            with open(path, encoding="utf-8") as file:
                text = file.read()
            with open(path, "w", encoding="utf-8") as file:
                file.write(text.replace(m["old"], m["new"]))
            how = red(copy)
            with open(path, "w", encoding="utf-8") as file:
                file.write(text)
            survivors += how is None
            print(f"{'caught' if how else 'NOT CAUGHT'}: {m['name']}"
                  f"{' (' + how + ')' if how else ''}", flush=True)
        print(f"mutants: {len(chosen) - survivors} of {len(chosen)} caught")
        return 1 if survivors else 0


def main():
    if "--check" in sys.argv:
        return check_fit()
    words = [a for a in sys.argv[1:] if not a.startswith("--")]
    return run([m for m in mutants() if not words or any(w in m["name"] for w in words)])


if __name__ == "__main__":
    sys.exit(main())
