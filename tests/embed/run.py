#!/usr/bin/env python3
# What cmake/embed.cmake puts into the program: the same bytes, also compressed; names by content in
# index.html; and nothing at all where there is no page.
import gzip
import hashlib
import os
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
COMPILER = os.environ.get("QUOIN_CXX", "c++")
INDEX = ('<!doctype html>\n<link href="/assets/a.css"><p title="a;b\\[1]$ {x}">\n'
         '<script src="/assets/a.js"></script><script src="/assets/aa.js"></script>\n')
FILES = {
    "index.html": INDEX.encode(),
    "a.js": b"const line = 'again';\n" * 200,
    "aa.js": b"const other = 1;\n" * 200,
    "a.css": b"p { color: black }\n",
    "dot.png": bytes(range(256)) * 3,
    "empty.txt": b"",
}
MAIN = """
#include "apps/whole/page_assets.hpp"
#include <cstdio>
int main() {
    for (const auto& asset : quoin::apps::page_assets()) {
        std::printf("%.*s|%.*s|%d|%zu|%zu\\n", int(asset.path.size()), asset.path.data(),
                    int(asset.type.size()), asset.type.data(), asset.forever ? 1 : 0,
                    asset.bytes.size(), asset.gzip.size());
        std::fwrite(asset.bytes.data(), 1, asset.bytes.size(), stdout);
        std::fwrite(asset.gzip.data(), 1, asset.gzip.size(), stdout);
    }
}
"""


def embedded(folder, files):
    """path -> (type, forever, bytes, gzip), out of a program that embeds these files."""
    out = os.path.join(folder, "made.cpp")
    subprocess.run(["cmake", "-D", f"OUT={out}", "-D", "FILES=" + "|".join(files), "-P",
                    os.path.join(ROOT, "cmake/embed.cmake")], check=True)
    main = os.path.join(folder, "main.cpp")
    with open(main, "w", encoding="utf-8") as file:
        file.write(MAIN)
    program = os.path.join(folder, "program")
    subprocess.run([COMPILER, "-std=c++20", "-I", os.path.join(ROOT, "src"), out, main, "-o",
                    program], check=True)
    said = subprocess.run([program], capture_output=True, check=True).stdout
    assets = {}
    while said:
        line, _, said = said.partition(b"\n")
        path, kind, forever, plain, packed = line.decode().split("|")
        plain, packed = int(plain), int(packed)
        assets[path] = (kind, forever == "1", said[:plain], said[plain:plain + packed])
        said = said[plain + packed:]
    return assets


def hashed(name, content):
    stem, ending = name.rsplit(".", 1)
    return f"/assets/{stem}-{hashlib.sha256(content).hexdigest()[:16]}.{ending}"


def check(condition, what):
    if not condition:
        sys.exit(f"embed: {what}")


def main():
    with tempfile.TemporaryDirectory() as folder:
        paths = []
        for name, content in FILES.items():
            paths.append(os.path.join(folder, name))
            with open(paths[-1], "wb") as file:
                file.write(content)
        assets = embedded(folder, paths)
        check(len(assets) == 2 * len(FILES) - 1, f"{len(assets)} paths: {sorted(assets)}")
        index = INDEX
        for name, content in FILES.items():
            if name == "index.html":
                continue
            plain, named = assets["/assets/" + name], assets[hashed(name, content)]
            check(plain[2] == content and named[2] == content, f"other bytes of {name}")
            check(not plain[1] and named[1], f"{name}: only the hashed name is for ever")
            if plain[3]:
                check(gzip.decompress(plain[3]) == content, f"other bytes of {name}.gz")
            index = index.replace(f'"/assets/{name}"', f'"{hashed(name, content)}"')
        check(assets["/assets/a.js"][3], "a.js was not compressed")
        check(assets["/"][2].decode() == index, "index.html: " + assets["/"][2].decode())
        check(assets["/"][0] == "text/html; charset=utf-8", assets["/"][0])
    with tempfile.TemporaryDirectory() as folder:
        check(embedded(folder, []) == {}, "files without a page")
    print("embed: every byte is there")


if __name__ == "__main__":
    main()
