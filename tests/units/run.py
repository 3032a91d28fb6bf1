#!/usr/bin/env python3
# The sources as the release build compiles them, twelve to a unit: what one file names for itself must
# not meet a name of its neighbors. The everyday build compiles each file alone and would not say so.
import json
import os
import re
import shlex
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

TOLD = 12  # lines of a unit that does not compile


def commands(folder):
    """How each unit is compiled: looked at alone, nothing is written."""
    with open(os.path.join(folder, "compile_commands.json"), encoding="utf-8") as file:
        entries = json.load(file)
    for entry in entries:
        if "/Unity/" in entry["file"]:
            words = shlex.split(entry["command"])
            out = words.index("-o")
            yield words[:out] + words[out + 2:] + ["-fsyntax-only"], entry["directory"]


def faults(command):
    words, folder = command
    done = subprocess.run(words, cwd=folder, text=True, capture_output=True, check=False)
    if done.returncode == 0:
        return []
    return [line for line in done.stderr.splitlines() if re.search(r"error:", line)][:TOLD]


def run(*words):
    """Ends the test where a step before it fails."""
    done = subprocess.run(words, text=True, capture_output=True, check=False)
    if done.returncode != 0:
        sys.exit(done.stdout + done.stderr)


def main():
    with tempfile.TemporaryDirectory() as folder:
        run("cmake", "--preset", "release", "-B", folder, "-D", "QUOIN_PAGE=OFF",
            "-D", "QUOIN_BROWSER_MODULE=OFF",
            "-D", f"CMAKE_CXX_COMPILER={os.environ['QUOIN_CXX']}",
            "-D", "CMAKE_EXPORT_COMPILE_COMMANDS=ON", "-D", "CMAKE_BUILD_TYPE=Debug")
        run("cmake", "-D", f"OUT={folder}/page_assets.cpp", "-D", "FILES=", "-P",
            "cmake/embed.cmake")
        units = list(commands(folder))
        with ThreadPoolExecutor(os.cpu_count()) as pool:
            found = [line for unit in pool.map(faults, units) for line in unit]
    print("\n".join(found))
    print(f"units: {len(units)}, {len(found)} faults")
    return 1 if found or len(units) < 20 else 0


if __name__ == "__main__":
    sys.exit(main())
