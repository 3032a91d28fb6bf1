#!/usr/bin/env python3
# The engine as a browser's module: under node, the same bytes as the local server, for every example
# buyer, question and language, and for what must be refused.
#
# Skipped where the build has no module (QUOIN_BROWSER_MODULE, which needs emscripten).
import base64
import datetime
import http.client
import json
import os
import re
import subprocess
import sys
from urllib.parse import quote

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PROGRAM = os.environ.get("QUOIN", os.path.join(ROOT, "build/release/quoin"))
BUILD = os.path.join(os.environ.get("QUOIN_BUILD", os.path.dirname(PROGRAM)), "browser")
FOLDERS = [os.path.join(ROOT, "examples"), os.path.join(ROOT, "rates")]
SKIPPED = 77
DEADLINE = 120
LEAST = 800  # replies compared: fewer means that some were not asked
NEEDED = {"credit": "amount=10000", "fit": "monthly=4200&cash=60000", "later": "option=fireplace"}
OPTIONS = ("adds?option=fireplace&option=recessed-lights=6", "fit?monthly=3100&cash=30000&lots",
           "cash?scenario=FHA%2C+3.5%25+down&appraised=390000", "tour?office-notes",
           "credit?amount=10000&years=5&instead", "shift?steps=2&step=0.25",
           "schedule?scenario=FHA%2c%203.5%25%20down&extra=150")


class Server:
    """The local server on the examples."""

    def __init__(self):
        environment = {k: v for k, v in os.environ.items() if k != "QUOIN_RATES"}
        self.process = subprocess.Popen([PROGRAM, "serve", "--port", "0", FOLDERS[0]], text=True,
                                        stdout=subprocess.PIPE, env=environment)
        said = ""
        while "Ctrl-C" not in said:
            line = self.process.stdout.readline()
            if not line:
                sys.exit("the server did not start")
            said += line
        port = int(re.search(r"http://\S+:(\d+)/", said).group(1))
        self.link = http.client.HTTPConnection("127.0.0.1", port, timeout=DEADLINE)

    def reply(self, method, address, language, body=""):
        """(status, type, bytes)"""
        headers = {"Accept-Language": language}
        if method == "POST":
            headers["Content-Type"] = "application/json"
        self.link.request(method, address, body.encode() if body else None, headers)
        answer = self.link.getresponse()
        return answer.status, answer.headers["Content-Type"], answer.read()

    def stop(self):
        self.process.terminate()
        self.process.wait(DEADLINE)


class Module:
    """The module under node."""

    def __init__(self, today):
        self.process = subprocess.Popen(
            ["node", os.path.join(ROOT, "tests/browser/asked.mjs"), BUILD, today, *FOLDERS],
            text=True, stdin=subprocess.PIPE, stdout=subprocess.PIPE)
        self.unopened, self.empty, self.opened = (self.told() for _ in range(3))

    def told(self):
        line = self.process.stdout.readline()
        if not line:
            sys.exit("the module ended")
        told = json.loads(line)
        return told["status"], told["type"], base64.b64decode(told["body"])

    def reply(self, method, address, language, body=""):
        request = {"method": method, "address": address, "language": language, "body": body}
        self.process.stdin.write(json.dumps(request) + "\n")
        self.process.stdin.flush()
        return self.told()


def asked_of(inquiry, questions):
    """Every question about an inquiry, under each of its loans where one may be named."""
    for question in questions:
        if question["name"] == "workbook":
            continue
        needed = NEEDED.get(question["name"], "")
        names = [option["name"] for option in question["options"]]
        for scenario in inquiry["scenarios"] if "scenario" in names else [None]:
            said = [f"scenario={quote(scenario['name'])}"] if scenario else []
            yield f"/api/{question['name']}?" + "&".join(said + [needed] * bool(needed))


def refused(body):
    """Requests that are answered with problems."""
    yield "POST", "/api/quote", "{"
    yield "POST", "/api/quote", "[]"
    yield "POST", "/api/quote", body.replace('"price_book"', '"book"')
    yield "POST", "/api/quote", body.replace("price-book.json", "nobodys.json")
    yield "POST", "/api/quote?deck=1", body
    yield "POST", "/api/cash?scenario=a&scenario=b", body
    yield "POST", "/api/cash?scenario=nobody%27s", body
    yield "POST", "/api/credit", body
    yield "POST", "/api/credit?amount=%41", body
    yield "POST", "/api/credit?amount=99999999999999999999", body
    yield "GET", "/api/quote", ""
    yield "GET", "/api/quotes", ""
    yield "GET", "/api/Quote", ""
    yield "GET", "/api/" + "q" * 300, ""
    yield "GET", "/nothing", ""
    yield "POST", "/api/terms", "{}"


def requests(cases):
    """(method, address, body) of all that is compared."""
    yield "GET", "/api/terms", ""
    for book in cases["price_books"]:
        for picture in book["pictures"]:
            yield "GET", picture["address"], ""
        for each in book["inquiries"]:
            for address in asked_of(each["inquiry"], cases["questions"]):
                yield "POST", address, json.dumps(each["inquiry"], ensure_ascii=False)
    body = next(json.dumps(each["inquiry"]) for book in cases["price_books"]
                for each in book["inquiries"] if each["id"].endswith("short-of-cash.json"))
    for address in OPTIONS:
        yield "POST", "/api/" + address, body
    yield from refused(body)


def without_workbook(cases):
    cases["questions"] = [each for each in cases["questions"] if each["name"] != "workbook"]
    return cases


def without_names(body):
    """A refusal of a question that is not there names those that are: here all but the workbook."""
    return body.replace(b", workbook,", b",")


def compare(server, module):
    """How many replies were the same, by status, and those that were not."""
    same, faults = {}, []
    for language in ("en-US", "es-US"):
        cases = [json.loads(each.reply("GET", "/api/cases", language)[2])
                 for each in (server, module)]
        if without_workbook(cases[0]) != cases[1]:
            faults.append(f"/api/cases in {language}")
        for method, address, body in requests(cases[1]):
            wanted, got = (each.reply(method, address, language, body)
                           for each in (server, module))
            if (*wanted[:2], without_names(wanted[2])) == got:
                same[got[0]] = same.get(got[0], 0) + 1
            else:
                faults.append(f"{method} {address} in {language}: {wanted[0]} {wanted[2][:200]}, "
                              f"by the module {got[0]} {got[2][:200]}")
    return same, faults


def main():
    if not os.path.exists(os.path.join(BUILD, "quoin.wasm")):
        print("skipped: this build has no module for browsers (it needs emscripten)")
        return SKIPPED
    today = datetime.datetime.now(datetime.timezone.utc).date().isoformat()
    server, module = Server(), Module(today)
    same, faults = compare(server, module)
    server.stop()
    if module.unopened[0] != 404 or module.empty[0] != 422 or module.opened[0] != 200:
        faults.append(f"opened: {module.unopened}, {module.empty}, {module.opened}")
    if module.reply("POST", "/api/workbook?scenario=x", "en")[0] != 404:
        faults.append("a workbook is answered")
    print("\n".join(faults))
    print(f"compared: {same}, {len(faults)} faults")
    enough = sum(same.values()) >= LEAST and {200, 404, 405, 422} <= set(same)
    return 0 if enough and not faults else 1


if __name__ == "__main__":
    sys.exit(main())
