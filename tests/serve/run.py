#!/usr/bin/env python3
# The local server as a client sees it: the same bytes as the command line, and every request that
# must be refused, most of them over raw sockets.
import glob
import http.client
import io
import json
import os
import re
import resource
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import unittest
import zipfile

# What the sanitizers watch keeps freed memory for a while, and takes ten times as long.
SANITIZED = "-fsanitize" in os.environ.get("QUOIN_CXX_FLAGS", "")
ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PROGRAM = os.environ.get("QUOIN", os.path.join(ROOT, "build/release/quoin"))
EXAMPLES = os.path.join(ROOT, "examples")
BUYERS = (sorted(glob.glob(os.path.join(EXAMPLES, "*/buyers/*.json"))) +
          [os.path.join(EXAMPLES, "first-home/buyer.json")])
ENVIRONMENT = {k: v for k, v in os.environ.items() if k != "QUOIN_RATES"}
sys.path.insert(0, os.path.join(ROOT, "tests/support"))
from hard_fit import write_hard_case  # noqa: E402
from processes import (DEADLINE, is_connected, is_waited_for, memory_of, until,  # noqa: E402
                       work_by_thread, work_of)

JSON_TYPE = {"Content-Type": "application/json"}
SECRET = "Somebody Private 7431"


class Server:
    """A running `quoin serve`; its output is read to the end when it stops."""

    def __init__(self, *words):
        self.process = subprocess.Popen([PROGRAM, "serve", "--port", "0", *words], text=True,
                                        stdout=subprocess.PIPE, stderr=subprocess.PIPE,
                                        env=ENVIRONMENT)
        self.said = ""
        while "Ctrl-C" not in self.said:
            line = self.process.stdout.readline()
            if not line:
                raise AssertionError("did not start: " + self.process.stderr.read())
            self.said += line
        found = re.search(r"http://(\S+):(\d+)/(?:#code=(\w+))?", self.said)
        self.host, self.port, self.code = found.group(1), int(found.group(2)), found.group(3)

    def stop(self, how=signal.SIGTERM):
        """Exit code, and all that was written."""
        self.process.send_signal(how)
        return self.wait()

    def wait(self):
        out, err = self.process.communicate(timeout=DEADLINE)
        return self.process.returncode, self.said + out + err

    def ask(self, method, path, body=None, headers=None):
        """(status, headers, body) of one request on a connection of its own."""
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=DEADLINE)
        try:
            connection.request(method, path, body, headers or {})
            answer = connection.getresponse()
            return answer.status, answer.headers, answer.read()
        finally:
            connection.close()

    def connect(self, address="127.0.0.1"):
        return socket.create_connection((address, self.port), timeout=DEADLINE)

    def raw(self, data, end=False, address="127.0.0.1"):
        """What comes back for these bytes, until the server closes or has answered in full."""
        with self.connect(address) as link:
            link.sendall(data)
            if end:
                link.shutdown(socket.SHUT_WR)
            got = b""
            while part := link.recv(65536):
                got += part
                if b"\r\nConnection: close" not in got and complete(got):
                    break
            return got


def complete(response):
    head, _, body = response.partition(b"\r\n\r\n")
    length = re.search(rb"Content-Length: (\d+)", head)
    return length is not None and len(body) >= int(length.group(1))


def status_of(response):
    return int(response.split(b" ", 2)[1]) if response.startswith(b"HTTP/1.1 ") else 0


def cases_of(server):
    return json.loads(server.ask("GET", "/api/cases")[2])


def command_line(question, *words):
    if question == "sheet":
        with tempfile.TemporaryDirectory() as folder:
            file = os.path.join(folder, "sheet.html")
            subprocess.run([PROGRAM, "sheet", *words, "-o", file], env=ENVIRONMENT, check=True,
                           capture_output=True, timeout=DEADLINE)
            with open(file, "rb") as sheet:
                return sheet.read()
    result = subprocess.run([PROGRAM, question, *words, "--json"], env=ENVIRONMENT,
                            timeout=DEADLINE, capture_output=True, check=True)
    return result.stdout


class Shared(unittest.TestCase):
    """Tests that use one server on the examples."""

    @classmethod
    def setUpClass(cls):
        cls.server = Server()
        cls.cases = cases_of(cls.server)
        cls.inquiry = cls.cases["price_books"][0]["inquiries"][0]["inquiry"]
        cls.body = json.dumps(cls.inquiry)

    @classmethod
    def tearDownClass(cls):
        code, said = cls.server.stop()
        assert code == 0, (code, said)

    def post(self, path, body=None, headers=None):
        return self.server.ask("POST", path, self.body if body is None else body,
                               {**JSON_TYPE, **(headers or {})})

    def refused(self, answer, status, problem):
        got, headers, body = answer
        self.assertEqual(got, status, body)
        self.assertEqual(headers["Content-Type"], "application/json")
        problems = json.loads(body)["problems"]
        self.assertIn(problem, [p["id"] for p in problems])
        for each in problems:
            self.assertEqual({"id", "file", "line", "column", "path", "found", "expected",
                              "advice"}, set(each))
        return problems

    def still_answers(self):
        self.assertEqual(self.post("/api/quote")[0], 200)


class Answers(Shared):
    def test_every_question_has_the_bytes_of_the_command_line(self):
        served = {os.path.join(EXAMPLES, each["id"]): each["inquiry"]
                  for book in self.cases["price_books"] for each in book["inquiries"]}
        self.assertEqual(sorted(served), sorted(BUYERS))
        compared = 0
        for path in BUYERS:
            names = [s["name"] for s in served[path]["scenarios"]]
            for question in self.cases["questions"]:
                options = {o["name"]: o for o in question["options"]}
                scenarios = names if "scenario" in options else [None]
                for scenario in scenarios:
                    words = ["--scenario", scenario] if scenario else []
                    query = [("scenario", scenario)] if scenario else []
                    needed = {"credit": [("amount", "10000")],
                              "fit": [("monthly", "4200"), ("cash", "60000")]}
                    for name, value in needed.get(question["name"], []):
                        words += ["--" + name, value]
                        query.append((name, value))
                    asked = "&".join(f"{name}={quoted(value)}" for name, value in query)
                    status, headers, body = self.post(f"/api/{question['name']}?{asked}",
                                                      json.dumps(served[path]))
                    refused = {"no-model", "no-means", "http-option-missing"}  # something is lacking
                    if status == 422 and json.loads(body)["problems"][0]["id"] in refused:
                        continue
                    self.assertEqual(status, 200, (question, path, body[:400]))
                    self.assertEqual(headers["Content-Type"], question["type"])
                    if question["name"] == "workbook":  # carries the time of its writing
                        self.assertTrue(zipfile.is_zipfile(io.BytesIO(body)), (path, scenario))
                        continue
                    self.assertEqual(body, command_line(question["name"], path, *words))
                    compared += 1
        self.assertGreater(compared, 50)

    def test_options_are_those_of_the_command_line(self):
        path = os.path.join(EXAMPLES, "oxbarrow-meadow/buyers/short-of-cash.json")
        bodies = {os.path.join(EXAMPLES, i["id"]): json.dumps(i["inquiry"])
                  for book in self.cases["price_books"] for i in book["inquiries"]}
        scenario = "FHA, 3.5% down"
        adjustable = os.path.join(EXAMPLES, "oxbarrow-meadow/buyers/moves-again.json")
        with open(adjustable, encoding="utf-8") as file:
            moving = next(s["name"] for s in json.load(file)["scenarios"]
                          if s["program"].endswith("-6"))
        for query, words in (
                (f"schedule?scenario={quoted(moving)}&index=3&index=4.5",
                 [adjustable, "--scenario", moving, "--index", "3,4.5"]),
                (f"schedule?scenario={quoted(moving)}&worst-case",
                 [adjustable, "--scenario", moving, "--worst-case"]),
                ("adds?option=fireplace", [path, "fireplace"]),
                ("adds?option=fireplace&option=recessed-lights=6",
                 [path, "fireplace", "recessed-lights=6"]),
                ("fit?monthly=3100&cash=30000&lots",
                 [path, "--monthly", "3100", "--cash", "30000", "--lots"]),
                (f"cash?scenario={quoted(scenario)}&appraised=390000",
                 [path, "--scenario", scenario, "--appraised", "390000"]),
                (f"credit?amount=10000&years=5&instead&scenario={quoted(scenario)}",
                 [path, "--amount", "10000", "--years", "5", "--instead",
                  "--scenario", scenario]),
                (f"shift?steps=2&step=0.25&scenario={quoted(scenario)}",
                 [path, "--steps", "2", "--step", "0.25", "--scenario", scenario]),
                (f"schedule?extra=150&scenario={quoted(scenario)}",
                 [path, "--scenario", scenario, "--extra", "150"])):
            question = query.split("?")[0]
            status, _, answer = self.post("/api/" + query, bodies[words[0]])
            self.assertEqual(status, 200, answer)
            self.assertEqual(answer, command_line(question, *words))

    def test_a_request_is_answered_in_the_language_that_it_accepts(self):
        served = {os.path.join(EXAMPLES, each["id"]): each["inquiry"]
                  for book in self.cases["price_books"] for each in book["inquiries"]}
        path = BUYERS[0]
        body = json.dumps(served[path]).encode()
        answers = {}
        for accepted, language in (("es-MX, en;q=0.5", "es"), ("en-US, es;q=0.9", "en"),
                                   ("de", "en")):
            status, headers, answer = self.post("/api/quote", body, {"Accept-Language": accepted})
            self.assertEqual((status, headers["Content-Language"]), (200, language))
            self.assertEqual(answer, command_line("quote", path, "--language", language))
            answers[language] = answer
        self.assertNotEqual(answers["es"], answers["en"])
        refused = self.post("/api/quote", b"{}", {"Accept-Language": "es"})
        self.assertEqual(refused[1]["Content-Language"], "es")
        self.assertIn("price_book", self.refused(refused, 422, "member-missing")[0]["found"])

    def test_the_glossary_is_served_in_the_language_that_is_accepted(self):
        for language in ("en", "es"):
            status, _, answer = self.server.ask("GET", "/api/terms", None,
                                                {"Accept-Language": language})
            self.assertEqual(status, 200)
            self.assertEqual(answer, command_line("terms", "--language", language))

    def test_cases_hold_every_inquiry_with_its_literals(self):
        for book in self.cases["price_books"]:
            for each in book["inquiries"]:
                with open(os.path.join(EXAMPLES, each["id"]), encoding="utf-8") as file:
                    written = json.load(file, parse_float=str, parse_int=str)
                written["price_book"] = book["id"]
                text = self.server.ask("GET", "/api/cases")[2]
                again = json.loads(text, parse_float=str, parse_int=str)
                served = [i["inquiry"] for b in again["price_books"] for i in b["inquiries"]
                          if i["id"] == each["id"]]
                self.assertEqual(served, [written])
        counts = [len(b["inquiries"]) for b in self.cases["price_books"]]
        self.assertEqual(counts, sorted(counts, reverse=True))

    def test_openapi_lists_the_same_questions(self):
        status, headers, body = self.server.ask("GET", "/api/openapi.json")
        self.assertEqual((status, headers["Content-Type"]), (200, "application/json"))
        api = json.loads(body)
        self.assertEqual(api["openapi"], "3.1.0")
        for question in self.cases["questions"]:
            operation = api["paths"]["/api/" + question["name"]]["post"]
            self.assertEqual([p["name"] for p in operation["parameters"]],
                             [o["name"] for o in question["options"]] + ["Accept-Language"])
        with open(os.path.join(ROOT, "schemas/inquiry.schema.json"), encoding="utf-8") as file:
            self.assertEqual(api["components"]["schemas"]["Inquiry"], json.load(file))

    def test_page_and_its_files(self):
        status, headers, body = self.server.ask("GET", "/")
        self.assertEqual(status, 200)
        policy = headers["Content-Security-Policy"]
        self.assertIn("default-src 'none'", policy)
        self.assertIn("frame-ancestors 'none'", policy)
        self.assertNotIn("unsafe-inline", policy)
        self.assertEqual(headers["X-Content-Type-Options"], "nosniff")
        self.assertEqual(headers["Referrer-Policy"], "no-referrer")
        if b"has no page" in body:
            self.assertNotIn(b"/assets/", body)
            return
        names = re.findall(rb'"(/assets/[^"]+)"', body)
        self.assertTrue(names)
        for name in names:
            plain = self.server.ask("GET", name.decode())
            self.assertEqual(plain[0], 200, name)
            self.assertIn("immutable", plain[1]["Cache-Control"])
            known = {"If-None-Match": plain[1]["ETag"]}
            again = self.server.ask("GET", name.decode(), headers=known)
            self.assertEqual((again[0], again[2]), (304, b""))
            packed = self.server.ask("GET", name.decode(), headers={"Accept-Encoding": "gzip"})
            if packed[1]["Content-Encoding"] == "gzip":
                self.assertEqual(gunzipped(packed[2]), plain[2])

    def test_head_has_no_body(self):
        status, headers, body = self.server.ask("HEAD", "/")
        self.assertEqual((status, body), (200, b""))
        self.assertGreater(int(headers["Content-Length"]), 100)

    def test_one_connection_takes_many_requests(self):
        connection = http.client.HTTPConnection("127.0.0.1", self.server.port, timeout=DEADLINE)
        for _ in range(50):
            connection.request("POST", "/api/quote", self.body, JSON_TYPE)
            self.assertEqual(len(connection.getresponse().read()) > 1000, True)
        connection.close()


class Pictures(Shared):
    def pictures(self):
        """(price book's id, file, address) of every picture."""
        found = [(book["id"], one["file"], one["address"]) for book in self.cases["price_books"]
                 for one in book["pictures"]]
        self.assertGreater(len(found), 10)
        return found

    def test_those_that_a_book_names_are_served_and_can_do_nothing(self):
        for book, file, address in self.pictures():
            status, headers, body = self.server.ask("GET", address)
            self.assertEqual(status, 200)
            with open(os.path.join(EXAMPLES, os.path.dirname(book), file), "rb") as beside:
                self.assertEqual(body, beside.read())
            self.assertEqual(headers["Content-Type"], "image/svg+xml")
            self.assertEqual(headers["X-Content-Type-Options"], "nosniff")
            self.assertEqual(headers.get_all("Content-Security-Policy"),
                             ["default-src 'none'; style-src 'unsafe-inline'; sandbox"])
            self.assertEqual(headers["Cache-Control"], "private, max-age=31536000, immutable")
            again = self.server.ask("GET", address, headers={"If-None-Match": headers["ETag"]})
            self.assertEqual((again[0], again[2]), (304, b""))

    def test_a_tour_tells_of_none_but_those(self):
        served = {file for book, file, _ in self.pictures() if book == self.inquiry["price_book"]}
        options = [option for area in json.loads(self.post("/api/tour")[2])["areas"]
                   for option in area["options"]]
        shown = {each["picture"] for option in options for each in [option, *option["forms"]]}
        self.assertGreater(len(shown), 10)
        self.assertLessEqual(shown - {""}, served)

    def test_nothing_else_is_reached(self):
        address = self.pictures()[0][2]
        folder = address[:address.rindex("/") + 1]
        for path in (folder, folder + "0" * 16 + ".svg", address + "/", address + ".svg",
                     folder + "pictures/elevation-sorrel-field.svg", folder + "../cases",
                     folder + "..%2f..%2fpricebook.json", folder + "oxbarrow-meadow/lots.csv"):
            self.refused(self.server.ask("GET", path), 404, "http-path-unknown")
        self.refused(self.server.ask("POST", address, "{}", JSON_TYPE), 405, "http-method")


class Inputs(Shared):
    def test_mistakes_have_their_place(self):
        wrong = dict(self.inquiry, plan="nothing-like-it")
        problems = self.refused(self.post("/api/quote", json.dumps(wrong, indent=1)), 422,
                                "name-unknown")
        self.assertEqual(problems[0]["path"], "/plan")
        self.assertGreater(problems[0]["line"], 1)

    def test_work_does_not_grow_with_what_is_sent(self):
        names = ", ".join(f'"k{i}": 1' for i in range(80_000))
        scenario = self.inquiry["scenarios"][0]
        many = [dict(scenario, name=str(i)) for i in range(2000)]
        wishes = [{"option": f"nothing-{i}"} for i in range(20_000)]
        cases = [("quote", "{%s}" % names, "too-many"),
                 ("adds", json.dumps(dict(self.inquiry, scenarios=many)), "too-many"),
                 ("quote", json.dumps(dict(self.inquiry, wishes=wishes)), "too-many"),
                 ("quote", "[" + "[]," * 300_000 + "1]", "too-many"),
                 ("quote", json.dumps(dict(self.inquiry, buyer="x" * 3000)), "text-too-long"),
                 ("quote", json.dumps(dict(self.inquiry, buyer="a\u202eb")), "text-not-plain"),
                 ("quote", json.dumps(dict(self.inquiry, cash="7" * 900_000)), "not-money")]
        for question, body, problem in cases:
            before = work_of(self.server.process.pid)
            answer = self.post(f"/api/{question}", body)
            self.assertLess(work_of(self.server.process.pid) - before, 1.5, problem)
            self.refused(answer, 422, problem)
            self.assertLess(len(answer[2]), 200_000)
        self.still_answers()

    def test_malformed_json(self):
        for body in ("{", "", "nul", "[1,2", '{"a":1,"a":2}', '{"format": 1}', "[]", '"text"',
                     "{\"format\":\"quoin/inquiry/1\"}", "[" * 100_000, "\xff\xfe"):
            status, _, answer = self.post("/api/quote", body.encode("latin-1"))
            self.assertEqual(status, 422, body[:40])
            self.assertTrue(json.loads(answer)["problems"], body[:40])
        self.still_answers()

    def test_other_price_books_cannot_be_reached(self):
        ids = ["../rates/programs/fha.json", "/etc/passwd", "pricebook.json",
               "./oxbarrow-meadow/pricebook.json", "oxbarrow-meadow/../first-home/pricebook.json",
               "oxbarrow-meadow//pricebook.json", EXAMPLES + "/oxbarrow-meadow/pricebook.json", ""]
        for name in ids:
            answer = self.post("/api/quote", json.dumps(dict(self.inquiry, price_book=name)))
            problems = self.refused(answer, 422, "name-unknown")
            self.assertEqual(problems[0]["path"], "/price_book")

    def test_a_new_buyer_begins_with_a_bare_home(self):
        for book in self.cases["price_books"]:
            first = book["first"]
            self.assertEqual(first["price_book"], book["id"])
            self.assertNotIn("selections", first)
            status, _, body = self.post("/api/quote", json.dumps(first))
            quote = json.loads(body)
            self.assertEqual((status, quote["options"]), (200, "0.00"))
            self.assertGreaterEqual(len(quote["scenarios"]), 5)
            self.assertTrue(all(one["available"] for one in quote["scenarios"]), body[:300])
            self.assertIn("assumed", first["comment"])

    def test_unknown_questions_and_options(self):
        self.refused(self.post("/api/nothing"), 404, "http-question-unknown")
        near = self.refused(self.post("/api/qoute"), 404, "http-question-unknown")
        self.assertIn("quote", near[0]["advice"])
        self.refused(self.post("/api/quote?scenario=x"), 422, "http-option-unknown")
        self.refused(self.post("/api/cash"), 422, "http-option-missing")
        self.refused(self.post("/api/cash?scenario=a&scenario=b"), 422, "http-option-repeated")
        self.refused(self.post("/api/cash?scenario=nothing"), 422, "scenario-unknown")
        self.refused(self.post("/api/schedule?scenario=x&worst-case&worst-case"), 422,
                     "http-option-repeated")
        self.refused(self.post("/api/adds?option=nothing"), 422, "option-unknown")
        self.refused(self.post("/api/adds?option=%FF%00"), 422, "option-unknown")
        self.refused(self.post("/api/adds?%FF"), 422, "http-option-unknown")
        name = quoted(self.inquiry["scenarios"][0]["name"])
        self.refused(self.post(f"/api/schedule?scenario={name}&extra=much"), 422, "payment-input")
        self.refused(self.post(f"/api/cash?scenario={name}&appraised=-1"), 422, "payment-input")
        self.refused(self.post("/api/fit?monthly=-1&cash=5"), 422, "payment-input")
        self.refused(self.post(f"/api/schedule?scenario={name}&worst-case"), 422, "payment-input")
        self.refused(self.post(f"/api/schedule?scenario={name}&worst-case&index=3"), 422,
                     "http-options-exclude")

    def test_methods(self):
        for method, path, allowed in (("GET", "/api/quote", "POST"),
                                      ("DELETE", "/api/cases", "GET"),
                                      ("POST", "/", "GET"), ("PUT", "/api/adds", "POST"),
                                      ("OPTIONS", "/api/quote", "POST"),
                                      ("PATCH", "/api/openapi.json", "GET")):
            headers = JSON_TYPE if method == "POST" else {}
            body = "{}" if method == "POST" else None
            answer = self.server.ask(method, path, body, headers)
            if method in ("PUT", "PATCH"):  # the client sends an empty length with these
                answer = self.server.ask(method, path, None, {"Content-Length": "0"})
            self.refused(answer, 405, "http-method")
            self.assertEqual(answer[1]["Allow"], allowed)

    def test_path_traversal(self):
        for path in ("/../etc/passwd", "/assets/../../etc/passwd",
                     "/assets/%2e%2e/%2e%2e/etc/passwd",
                     "/assets/..%2f..%2fetc%2fpasswd", "//etc/passwd", "/assets/%00", "/assets/",
                     "/assets/....//....//etc/passwd", "/api/../api/cases", "/api/%63ases/..",
                     "/assets/..\\..\\etc", "/" + "a" * 3000, "http://127.0.0.1/api/cases"):
            got = self.server.raw((f"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{self.server.port}\r\n"
                                   "Connection: close\r\n\r\n").encode())
            self.assertEqual(status_of(got), 404, (path, got[:200]))
            self.assertNotIn(b"root:", got)


class Guards(Shared):
    def get_with(self, *lines, path="/api/cases"):
        head = "\r\n".join([f"GET {path} HTTP/1.1", *lines, "Connection: close", "", ""])
        return self.server.raw(head.encode())

    def test_host_must_be_the_address(self):
        port = self.server.port
        for host in (f"127.0.0.1:{port}", f"localhost:{port}", f"LocalHost:{port}",
                     f"[::1]:{port}"):
            self.assertEqual(status_of(self.get_with(f"Host: {host}")), 200, host)
        for host in ("rebound.example", f"rebound.example:{port}", "127.0.0.1", "127.0.0.1:1",
                     f"127.0.0.1.rebound.example:{port}", f"127.0.0.1:{port}.rebound.example",
                     f"192.0.2.1:{port}", "", f"localhost.:{port}"):
            for path in ("/", "/api/cases"):
                got = self.get_with(f"Host: {host}", path=path)
                self.assertEqual(status_of(got), 403, (host, got[:100]))
                self.assertIn(b"http-host", got)
        self.assertEqual(status_of(self.get_with()), 403)
        twice = self.get_with(f"Host: 127.0.0.1:{port}", "Host: rebound.example")
        self.assertEqual(status_of(twice), 403)

    def test_origin_must_match(self):
        port = self.server.port
        own = {"Origin": f"http://127.0.0.1:{port}"}
        self.assertEqual(self.post("/api/quote", headers=own)[0], 200)
        for origin in ("https://elsewhere.example", "null", f"https://127.0.0.1:{port}",
                       "http://127.0.0.1", f"http://localhost:{port}",
                       f"http://127.0.0.1:{port}.elsewhere.example"):
            self.refused(self.post("/api/quote", headers={"Origin": origin}), 403, "http-origin")
        for site in ("cross-site", "same-site"):
            self.refused(self.post("/api/quote", headers={"Sec-Fetch-Site": site}), 403,
                         "http-origin")
        self.assertEqual(self.post("/api/quote", headers={"Sec-Fetch-Site": "same-origin"})[0], 200)

    def test_nothing_is_granted_to_other_origins(self):
        _, headers, _ = self.server.ask("OPTIONS", "/api/quote", headers={
            "Origin": "https://elsewhere.example", "Access-Control-Request-Method": "POST"})
        self.assertEqual([k for k in headers if k.lower().startswith("access-control")], [])

    def test_forms_cannot_post(self):
        for kind in ("text/plain", "application/x-www-form-urlencoded", "application/jsonp",
                     "multipart/form-data; boundary=x", "text/plain; application/json", ""):
            answer = self.server.ask("POST", "/api/quote", self.body, {"Content-Type": kind})
            self.refused(answer, 415, "http-content-type")
        self.refused(self.post("/api/quote", headers={"Content-Encoding": "gzip"}), 415,
                     "http-content-coding")
        self.assertEqual(self.post("/api/quote", headers={
            "Content-Type": "application/json; charset=utf-8"})[0], 200)

    def test_too_large_a_body(self):
        self.refused(self.post("/api/quote", b" " * (2 << 20)), 413, "http-too-large")
        pieces = (b"x" * 65536 for _ in range(32))
        connection = http.client.HTTPConnection("127.0.0.1", self.server.port, timeout=DEADLINE)
        connection.request("POST", "/api/quote", pieces, JSON_TYPE, encode_chunked=True)
        self.assertEqual(connection.getresponse().status, 411)
        connection.close()
        padded = self.body + " " * ((1 << 20) - len(self.body))
        self.assertEqual(self.post("/api/quote", padded)[0], 200)
        self.still_answers()

    def test_lengths_that_do_not_fit(self):
        head = f"Host: 127.0.0.1:{self.server.port}\r\nContent-Type: application/json\r\n"
        for lines in ("Content-Length: 2\r\nContent-Length: 3\r\n\r\n{}",
                      "Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n{}",
                      "Content-Length: -2\r\n\r\n{}", "Content-Length: 2x\r\n\r\n{}", "\r\n{}"):
            got = self.server.raw(f"POST /api/quote HTTP/1.1\r\n{head}{lines}".encode())
            self.assertEqual(status_of(got), 411, (lines, got[:80]))
        got = self.server.raw(
            f"GET /api/cases HTTP/1.1\r\n{head}Content-Length: 40\r\n\r\n"
            f"GET /api/openapi.json HTTP/1.1\r\n{head}\r\n".encode())
        self.assertEqual(status_of(got), 411)
        self.assertEqual(got.count(b"HTTP/1.1 "), 1)

    def test_broken_requests(self):
        for data in (b"\r\n\r\n", b"nonsense\r\n\r\n", b"GET / HTTP/9.9\r\n\r\n",
                     b"\x16\x03\x01\x02",
                     b"GET / HTTP/1.1\r\nHost\r\n\r\n", bytes(range(256)) * 40,
                     b"POST /api/quote HTTP/1.1\r\nX: " + b"y" * 100_000 + b"\r\n\r\n"):
            got = self.server.raw(data, end=True)
            self.assertNotIn(status_of(got), (200, 500), data[:40])
        self.still_answers()

    def test_truncated_body(self):
        head = (f"POST /api/quote HTTP/1.1\r\nHost: 127.0.0.1:{self.server.port}\r\n"
                "Content-Type: application/json\r\nContent-Length: 5000\r\n\r\n")
        got = self.server.raw((head + self.body[:100]).encode(), end=True)
        self.assertEqual(status_of(got), 400)
        self.assertIn(b"http-incomplete", got)
        self.still_answers()


class Slow(Shared):
    def test_slow_clients_do_not_stop_others_and_are_cut_off(self):
        head = (f"POST /api/quote HTTP/1.1\r\nHost: 127.0.0.1:{self.server.port}\r\n"
                "Content-Type: application/json\r\nContent-Length: 5000\r\n\r\n").encode()
        links = [self.server.connect() for _ in range(40)]
        stop = threading.Event()

        def drip():  # a byte now and then: no single read ever waits long
            sent = 0
            while not stop.wait(0.3):
                for link in links:
                    try:
                        link.sendall(head[sent:sent + 1] or b" ")
                    except OSError:
                        pass
                sent += 1

        dripping = threading.Thread(target=drip)
        dripping.start()
        try:
            for _ in range(10):
                self.still_answers()
            self.assertTrue(all(is_waited_for(link) for link in links), "answered beside them")
            for link in links:
                link.settimeout(DEADLINE)
                got = b"".join(iter(lambda: received(link), b""))
                self.assertNotEqual(status_of(got), 200)
        finally:
            stop.set()
            dripping.join()
            for link in links:
                link.close()
        self.still_answers()

    def crowd(self, count, sent):
        """So many connections, each of which has sent these bytes and no more."""
        links = [self.server.connect() for _ in range(count)]
        self.addCleanup(lambda: [link.close() for link in links])
        for link in links:
            link.setblocking(False)
            try:
                link.send(sent)
            except OSError:
                pass
        return links

    def answers_beside(self, count, sent):
        """Ordinary requests are answered before such a crowd has gone, and memory grows little."""
        self.still_answers()
        before = memory_of(self.server.process.pid)
        crowd = self.crowd(count, sent)
        for _ in range(5):
            self.still_answers()
            self.assertEqual(self.server.ask("GET", "/")[0], 200)
        self.assertTrue(any(is_connected(link) for link in crowd))
        grown = memory_of(self.server.process.pid) - before
        self.assertLess(grown, (500 if SANITIZED else 50) * 1024 * 1024)

    def test_a_thousand_half_heads(self):
        self.answers_beside(1000, b"GET / HTTP/1.1\r\nHost: ")

    def test_a_thousand_half_bodies(self):
        head = (f"POST /api/quote HTTP/1.1\r\nHost: 127.0.0.1:{self.server.port}\r\n"
                "Content-Type: application/json\r\nContent-Length: 1000000\r\n\r\n").encode()
        self.answers_beside(1000, head + b" " * 500_000)

    def test_a_thousand_who_read_nothing(self):
        ask = (f"GET /api/cases HTTP/1.1\r\nHost: 127.0.0.1:{self.server.port}\r\n\r\n").encode()
        self.answers_beside(1000, ask * 20)

    def test_a_body_is_asked_for_where_it_is_wanted(self):
        def told(host):
            with self.server.connect() as link:
                link.sendall((f"POST /api/quote HTTP/1.1\r\nHost: {host}\r\n"
                              "Content-Type: application/json\r\nExpect: 100-continue\r\n"
                              f"Content-Length: {len(self.body)}\r\n\r\n").encode())
                first = link.recv(65536)
                if not first.startswith(b"HTTP/1.1 100 "):
                    return status_of(first), None
                link.sendall(self.body.encode())
                return 100, status_of(link.recv(65536))
        self.assertEqual(told(f"127.0.0.1:{self.server.port}"), (100, 200))
        self.assertEqual(told("rebound.example"), (403, None))

    def test_requests_in_one_piece_are_answered_one_by_one(self):
        head = (f"POST /api/quote HTTP/1.1\r\nHost: 127.0.0.1:{self.server.port}\r\n"
                f"Content-Type: application/json\r\nContent-Length: {len(self.body)}\r\n")
        one = f"{head}\r\n{self.body}"
        last = f"{head}Connection: close\r\n\r\n{self.body}"
        with self.server.connect() as link:
            link.sendall((one + one + last).encode())
            got = b"".join(iter(lambda: received(link), b""))
        self.assertEqual(got.count(b"HTTP/1.1 200 "), 3, got[:300])

    def test_idle_connections_make_room(self):
        links = [self.server.connect() for _ in range(150)]
        try:
            self.still_answers()
            self.assertTrue(is_waited_for(links[-1]), "answered beside them")
        finally:
            for link in links:
                link.close()


def received(link):
    try:
        return link.recv(65536)
    except OSError:
        return b""


class LongWork(unittest.TestCase):
    """A search that would take many seconds."""

    def setUp(self):
        folder = tempfile.mkdtemp()
        self.addCleanup(shutil.rmtree, folder)
        write_hard_case(ROOT, folder)
        self.server = Server(folder, "--rates", os.path.join(ROOT, "tests/golden/data/rates"))
        self.addCleanup(lambda: self.server.process.poll() is None and self.server.stop())
        inquiry = cases_of(self.server)["price_books"][0]["inquiries"][0]["inquiry"]
        self.body = json.dumps(inquiry).encode()

    def ask(self):
        """A connection that waits for the answer to a long search."""
        link = self.server.connect()
        self.addCleanup(link.close)
        link.sendall(f"POST /api/fit?monthly=10000&cash=100000 HTTP/1.1\r\n"
                     f"Host: 127.0.0.1:{self.server.port}\r\nContent-Type: application/json\r\n"
                     f"Content-Length: {len(self.body)}\r\n\r\n".encode() + self.body)
        return link

    def searching(self, threads):
        """Returns once so many threads of the server are well into a search."""
        well_into = 10 if SANITIZED else 0.5  # seconds of a processor
        until(lambda: sum(work > well_into for work in
                          work_by_thread(self.server.process.pid).values()) >= threads,
              f"{threads} threads at work")

    def test_a_client_that_goes_away_frees_its_worker(self):
        workers = max(2, os.cpu_count())  # that work at once
        before = work_of(self.server.process.pid)
        links = [self.ask() for _ in range(2 * workers)]
        self.searching(workers)
        for link in links:
            self.assertTrue(is_waited_for(link))
            link.close()
        left = work_of(self.server.process.pid)
        self.assertEqual(self.server.ask("POST", "/api/quote", self.body, JSON_TYPE)[0], 200)
        after = work_of(self.server.process.pid)
        self.assertLess(after - left, left - before, "nobody searches on for those who left")

    def test_the_end_of_the_server_leaves_the_best_so_far(self):
        link = self.ask()
        self.searching(1)
        self.server.process.send_signal(signal.SIGTERM)
        got = b"".join(iter(lambda: received(link), b""))
        self.assertEqual(self.server.wait()[0], 0)
        home = json.loads(got.split(b"\r\n\r\n", 1)[1])["scenarios"][0]["homes"][0]
        self.assertEqual((home["fits"], home["proven"]), (True, False))
        self.assertGreater(float(home["gap"]), 0)


def idle_connection(server):
    """A connection on which one request was answered and no other follows."""
    link = server.connect()
    link.sendall(f"GET /api/cases HTTP/1.1\r\nHost: 127.0.0.1:{server.port}\r\n\r\n".encode())
    got = b""
    while not complete(got):
        got += link.recv(65536)
    return link


def stalled(server):
    """A connection on which a request has begun, as the server knows, and does not go on."""
    link = server.connect()
    link.sendall(f"POST /api/quote HTTP/1.1\r\nHost: 127.0.0.1:{server.port}\r\n"
                 "Content-Type: application/json\r\nExpect: 100-continue\r\n"
                 "Content-Length: 10\r\n\r\n".encode())
    if not link.recv(65536).startswith(b"HTTP/1.1 100 "):
        raise AssertionError("it did not ask for the body")
    return link


class Ending(unittest.TestCase):
    def test_signals_end_it_well(self):
        for how in (signal.SIGTERM, signal.SIGINT):
            server = Server()
            self.assertEqual(server.stop(how)[0], 0)

    def test_a_request_under_way_is_answered(self):
        server = Server()
        body = json.dumps(cases_of(server)["price_books"][0]["inquiries"][0]["inquiry"]).encode()
        head = (f"POST /api/adds HTTP/1.1\r\nHost: 127.0.0.1:{server.port}\r\n"
                "Content-Type: application/json\r\nExpect: 100-continue\r\n"
                f"Content-Length: {len(body)}\r\n\r\n").encode()
        with idle_connection(server) as idle, server.connect() as link:
            link.sendall(head)
            self.assertTrue(link.recv(65536).startswith(b"HTTP/1.1 100 "), "it is under way")
            server.process.send_signal(signal.SIGTERM)
            self.assertEqual(idle.recv(1), b"", "closed first of all when the server stops")
            link.sendall(body)
            got = b"".join(iter(lambda: received(link), b""))
        code, _ = server.wait()
        self.assertEqual((status_of(got), code), (200, 0))
        self.assertTrue(complete(got))

    def test_a_stalled_request_does_not_hold_it_up(self):
        servers = [Server(), Server()]  # one goes on, and waits as long as it always does
        links = [stalled(server) for server in servers]
        self.assertEqual(servers[1].stop()[0], 0)
        self.assertFalse(is_waited_for(links[1]))
        self.assertTrue(is_waited_for(links[0]), "the other still waits")
        servers[0].stop()
        for link in links:
            link.close()

    def test_nothing_of_a_request_is_logged(self):
        server = Server()
        inquiry = cases_of(server)["price_books"][0]["inquiries"][0]["inquiry"]
        for body in (dict(inquiry, buyer=SECRET), dict(inquiry, plan=SECRET), SECRET):
            server.ask("POST", f"/api/quote?x={quoted(SECRET)}", json.dumps(body), JSON_TYPE)
            server.ask("POST", "/api/quote", json.dumps(body), JSON_TYPE)
        server.raw(f"GET /{quoted(SECRET)} HTTP/1.1\r\nHost: x\r\n\r\n".encode())
        _, said = server.stop()
        for part in SECRET.split():
            self.assertNotIn(part, said)


class Starting(unittest.TestCase):
    def refusal(self, *words):
        result = subprocess.run([PROGRAM, "serve", *words], env=ENVIRONMENT, text=True,
                                timeout=DEADLINE, capture_output=True, check=False)
        self.assertEqual((result.returncode, result.stdout), (1, ""))
        return result.stderr

    def test_a_busy_port_is_named(self):
        server = Server()
        said = self.refusal("--port", str(server.port))
        server.stop()
        self.assertIn(f"127.0.0.1 port {server.port}: Address already in use", said)
        self.assertIn("--port", said)

    def test_other_addresses_need_the_code(self):
        address = own_address()
        if address is None:
            self.skipTest("this machine has no address but loopback")
        server = Server("--listen", address)
        self.assertRegex(server.code, "^[0-9a-f]{32}$")

        def asked(host, path, headers):
            connection = http.client.HTTPConnection(address, server.port, timeout=DEADLINE)
            connection.request("GET", path, headers={"Host": f"{host}:{server.port}", **headers})
            status = connection.getresponse().status
            connection.close()
            return status

        self.assertEqual(asked(address, "/", {}), 200)
        self.assertEqual(asked(address, "/api/cases", {}), 401)
        for wrong in ("", "0" * 32, server.code[:-1], server.code + "0", server.code.upper() + "x"):
            self.assertEqual(asked(address, "/api/cases", {"Quoin-Code": wrong}), 401)
        self.assertEqual(asked(address, f"/api/cases?code={server.code}", {}), 401)
        right = {"Quoin-Code": server.code}
        self.assertEqual(asked(address, "/api/cases", right), 200)
        picture = picture_of(address, server)
        self.assertEqual(asked(address, picture, {}), 401)
        self.assertEqual(asked(address, picture, right), 200)
        self.assertEqual(asked("rebound.example", "/api/cases", right), 403)
        with self.assertRaises(OSError):
            socket.create_connection(("127.0.0.1", server.port), timeout=5)
        server.stop()
        again = Server("--listen", "0.0.0.0")
        self.assertNotEqual(again.code, server.code)
        server = again
        self.assertEqual(asked(address, "/api/cases", {"Quoin-Code": again.code}), 200)
        self.assertEqual(asked("rebound.example", "/api/cases", {"Quoin-Code": again.code}), 403)
        again.stop()

    def test_what_is_not_sound_is_left_out_and_named(self):
        with tempfile.TemporaryDirectory() as folder:
            shutil.copytree(os.path.join(EXAMPLES, "first-home"), os.path.join(folder, "good"))
            os.makedirs(os.path.join(folder, "a/b/c"))
            good = os.path.join(folder, "good/pricebook.json")
            shutil.copy(good, os.path.join(folder, "a/b/deep.json"))
            shutil.copy(good, os.path.join(folder, "a/b/c/too-deep.json"))
            with open(good, encoding="utf-8") as file:
                broken = file.read().replace('"version"', '"versoin"', 1)
            with open(os.path.join(folder, "broken.json"), "w", encoding="utf-8") as file:
                file.write(broken)
            with open(os.path.join(folder, "note.json"), "w", encoding="utf-8") as file:
                file.write('{"shopping": ["milk"]}')
            with open(os.path.join(folder, "lost.json"), "w", encoding="utf-8") as file:
                file.write('{"format": "quoin/inquiry/1", "price_book": "../../etc/passwd"}')
            server = Server(folder)
            ids = [book["id"] for book in cases_of(server)["price_books"]]
            code, said = server.stop()
        self.assertEqual(ids, ["good/pricebook.json", "a/b/deep.json"])
        self.assertEqual(code, 0)
        self.assertIn("broken.json", said)
        self.assertIn("versoin", said)
        self.assertIn("lost.json", said)
        self.assertNotIn("note.json", said)

    def test_a_picture_with_a_fault_is_left_out_and_named(self):
        with tempfile.TemporaryDirectory() as folder:
            home = os.path.join(folder, "home")
            shutil.copytree(os.path.join(EXAMPLES, "first-home"), home)
            with open(os.path.join(home, "pricebook.json"), encoding="utf-8") as file:
                book = json.load(file)
            drawn = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 3">%s</svg>'
            for option, name, inside in ((0, "runs.svg", "<script/>"), (1, "draws.svg", "<rect/>")):
                book["options"][option]["picture"] = name
                with open(os.path.join(home, name), "w", encoding="utf-8") as file:
                    file.write(drawn % inside)
            with open(os.path.join(home, "pricebook.json"), "w", encoding="utf-8") as file:
                json.dump(book, file)
            server = Server(folder)
            cases = cases_of(server)["price_books"][0]
            tour = server.ask("POST", "/api/tour", json.dumps(cases["first"]), JSON_TYPE)[2]
            code, said = server.stop()
        self.assertEqual([one["file"] for one in cases["pictures"]], ["draws.svg"])
        shown = [option["picture"] for area in json.loads(tour)["areas"]
                 for option in area["options"] if option["picture"]]
        self.assertEqual(shown, ["draws.svg"])
        self.assertEqual(code, 0)
        self.assertIn("picture-active", said)
        self.assertNotIn("draws.svg", said)

    def test_a_folder_without_price_books(self):
        with tempfile.TemporaryDirectory() as folder:
            self.assertIn("no-price-book", self.refusal(folder, "--port", "0"))
            self.assertIn("file-missing", self.refusal(folder + "/none", "--port", "0"))


def picture_of(address, server):
    """The address of a picture, told to those who have the code."""
    connection = http.client.HTTPConnection(address, server.port, timeout=DEADLINE)
    connection.request("GET", "/api/cases", headers={"Quoin-Code": server.code})
    books = json.loads(connection.getresponse().read())["price_books"]
    connection.close()
    return next(one["address"] for book in books for one in book["pictures"])


def own_address():
    """An address of this machine beyond loopback; nothing is sent to find it."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as link:
        try:
            link.connect(("192.0.2.1", 9))
            address = link.getsockname()[0]
        except OSError:
            return None
    return None if address.startswith("127.") else address


def quoted(text):
    return "".join(c if c.isalnum() else f"%{ord(c):02X}" for c in text)


def gunzipped(data):
    import gzip
    return gzip.decompress(data)


if __name__ == "__main__":
    open_files = resource.getrlimit(resource.RLIMIT_NOFILE)[1]  # for a thousand connections
    resource.setrlimit(resource.RLIMIT_NOFILE, (min(open_files, 4096), open_files))
    unittest.main(verbosity=1)
