#!/usr/bin/env python3
# The sheet a buyer takes home: every figure of the answers, every caution, nothing private, nothing
# for the agent, nothing that a browser would fetch or run; and the file it is written to. That it is
# two sides of paper is held where a browser prints it: tests/page/looks.mjs.
import glob
import html.parser
import json
import os
import stat
import subprocess
import tempfile
import unittest

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PROGRAM = os.environ.get("QUOIN", os.path.join(ROOT, "build/release/quoin"))
BUYERS = sorted(glob.glob(os.path.join(ROOT, "examples/oxbarrow-meadow/buyers/*.json")))
ENVIRONMENT = {k: v for k, v in os.environ.items() if k != "QUOIN_RATES"}
VOID = {"meta", "col", "link", "br"}
HOSTILE = "<script>alert('x')</script> & \"Co\" <b>"


def run(*words):
    return subprocess.run([PROGRAM, *words], env=ENVIRONMENT, capture_output=True, text=True,
                          timeout=60, check=False)


def answer(question, *words):
    return json.loads(run(question, *words, "--json").stdout)


def dollars(amount):
    sign, digits = ("-", amount[1:]) if amount.startswith("-") else ("", amount)
    whole, cents = digits.split(".")
    return f"{sign}${int(whole):,}.{cents}"


def short(amount):
    return dollars(amount).removesuffix(".00")


class Page(html.parser.HTMLParser):
    """Text, rows of cells and tags; a tag that is not closed in its order is a mistake."""

    def __init__(self, text):
        super().__init__()
        self.open, self.tags, self.words, self.rows, self.mistakes = [], [], [], [], []
        self.terms = []  # each label of a list with its value
        self.feed(text)
        self.close()
        self.mistakes += self.open

    def handle_starttag(self, tag, attributes):
        self.tags.append((tag, dict(attributes)))
        if tag == "tr":
            self.rows.append([])
        if tag in ("th", "td"):
            self.rows[-1].append("")
        if tag == "dt":
            self.terms.append(["", ""])
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        if not self.open or self.open.pop() != tag:
            self.mistakes.append(tag)

    def handle_data(self, data):
        if "style" in self.open:
            return
        if self.open and self.open[-1] == "small" and data.startswith("."):
            self.words[-1] += data  # the cents of a large figure
        else:
            self.words.append(data)
        if self.open and self.open[-1] in ("th", "td"):
            self.rows[-1][-1] += data
        for place, tag in enumerate(("dt", "dd")):
            if tag in self.open:
                self.terms[-1][place] += data

    @property
    def text(self):
        return " ".join(" ".join(self.words).replace("\u00a0", " ").split())

    def figures(self, label):
        """The cells of every row of this label."""
        return [cell for row in self.rows if row and row[0] == label for cell in row[1:]]

    def value(self, label):
        """What stands under this label, large or small."""
        values = [value for name, value in self.terms if name == label]
        return values[0] if len(values) == 1 else values

    def of_class(self, kind):
        return [tag for tag, given in self.tags if kind in (given.get("class") or "").split()]


class Sheet(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)
        self.file = os.path.join(self.folder.name, "sheet.html")

    def sheet(self, buyer, *words):
        result = run("sheet", buyer, "-o", self.file, *words)
        self.assertEqual(result.returncode, 0, result.stderr)
        with open(self.file, encoding="utf-8") as file:
            return file.read()

    def with_changes(self, path, **changes):
        with open(path, encoding="utf-8") as file:
            inquiry = json.load(file)
        inquiry["price_book"] = os.path.normpath(
            os.path.join(os.path.dirname(path), inquiry["price_book"]))
        inquiry.update(changes)
        path = os.path.join(self.folder.name, "buyer.json")
        with open(path, "w", encoding="utf-8") as file:
            json.dump(inquiry, file)
        return path

    def test_every_figure_of_the_quote(self):
        for buyer in BUYERS:
            quote = answer("quote", buyer)
            page = Page(self.sheet(buyer))
            for line in quote["lines"]:
                if line["kind"] not in ("choice", "in_package"):
                    self.assertIn(short(line["amount"]), page.text, line)
            self.assertEqual(page.value("Contract price"), short(quote["contract_price"]))
            usable = [s for s in quote["scenarios"] if not s["refusals"]]
            totals = [dollars(s["monthly"]["total"]) for s in usable]
            shown = page.figures("monthly payment, full taxes")
            self.assertEqual([c for c in shown if c != "-"], totals)
            needed = [dollars(s["cash"]["needed"]) for s in usable]
            self.assertEqual([c for c in page.figures("cash needed") if c != "-"], needed)
            for scenario in usable:
                self.assertIn(scenario["terms"]["name"], page.text)
                for part, amount in scenario["monthly"].items():
                    if amount != "0.00":
                        self.assertIn(dollars(amount), page.text, part)

    def test_terms_and_cautions_stand_beside(self):
        for buyer in BUYERS:
            page = Page(self.sheet(buyer))
            for label in ("interest rate", "APR", "loan term", "down payment", "rate lock"):
                self.assertTrue(page.figures(label), label)
            for label in ("interest rate", "APR", "loan term", "down payment"):
                self.assertRegex(page.value(label), r"\d", label)
            for words in ("Estimate as of November 24, 2026", "rates of November 20, 2026",
                          "Not a Loan Estimate, an approval or an offer to lend",
                          "Program rules and local law decide. You may choose any lender."):
                self.assertEqual(page.text.count(words), 1, words)
            codes = [each["code"] for each in answer("quote", buyer)["cautions"]]
            self.assertIn("agent_license", codes)
            codes.remove("agent_license")
            said = [given["data-caution"] for _, given in page.tags if "data-caution" in given]
            self.assertEqual(sorted(said), sorted(codes))
            for place in ("Prepared by", "Licensed loan originator", "License number"):
                self.assertIn(place, page.text)

    def test_the_loan_in_front(self):
        for buyer in BUYERS:
            scenarios = answer("compare", buyer)["scenarios"]
            usable = [s["terms"]["name"] for s in scenarios if not s["refusals"]]
            self.assertEqual(self.sheet(buyer), self.sheet(buyer, "--scenario", usable[0]))
            for scenario in scenarios:
                name = scenario["terms"]["name"]
                page = Page(self.sheet(buyer, "--scenario", name))
                for other in scenarios:
                    self.assertIn(other["terms"]["name"], page.text)
                if scenario["refusals"]:
                    self.assertIn("Not available:", page.text)
                    continue
                cash = answer("cash", buyer, "--scenario", name)
                month = short(cash["scenario"]["monthly"]["total"])
                self.assertIn(f"{name} {month} a month", page.text)
                self.assertEqual(page.value("cash needed"),
                                 short(cash["scenario"]["cash"]["needed"]))
                for day in cash["calendar"]:
                    self.assertIn(dollars(day["amount"].lstrip("-")), page.text)

    def test_plan_and_lot_are_drawn(self):
        for buyer in BUYERS:
            page = Page(self.sheet(buyer))
            floors = {floor["name"] for floor in answer("rooms", buyer)["floors"]}
            self.assertTrue(page.of_class("floor"))
            self.assertEqual(len(page.of_class("lot-map")), 1)
            self.assertTrue(any(name in page.text for name in floors))
            self.assertIn("Lot " + answer("quote", buyer)["heading"]["lot"], page.text)

    def test_nothing_for_the_agent(self):
        wishes = [{"option": "garage-heater", "rank": 1, "weight": 765432}]
        text = Page(self.sheet(self.with_changes(BUYERS[0], wishes=wishes))).text
        for words in ("sales agent", "1008.103", "1026.24", "765432", "765,432"):
            self.assertNotIn(words, text)

    def test_nothing_private(self):
        secret = {"income": {"monthly": "8431.07"}, "debts": {"monthly": "433.09"},
                  "cash": "98765.43", "score": 743}
        text = Page(self.sheet(self.with_changes(BUYERS[0], **secret))).text
        for value in ("8431", "8,431", "433.09", "98,765", "743"):
            self.assertNotIn(value, text, value)
        for word in ("income:", "debts", "credit score of"):
            self.assertNotIn(word, text)

    def test_text_stays_text(self):
        for member in ("buyer", "prepared_by", "originator"):
            text = self.sheet(self.with_changes(BUYERS[0], **{member: HOSTILE}))
            self.assertNotIn("<script", text)
            self.assertNotIn("<b>", text)
            self.assertIn(" ".join(HOSTILE.split()), Page(text).text)

    def test_it_stands_alone(self):
        for buyer in BUYERS:
            text = self.sheet(buyer)
            page = Page(text)
            self.assertEqual(page.mistakes, [])
            self.assertEqual({t for t, _ in page.tags} & {"script", "link", "img", "iframe", "a"},
                             set())
            for _, attributes in page.tags:
                self.assertEqual({"src", "href", "style", "onclick"} & set(attributes), set())
            for word in ("http:", "https:", "url(", "@import", ROOT):
                self.assertNotIn(word, text)
            self.assertIn("default-src 'none'", text)

    def test_the_file_is_its_owners_and_whole(self):
        self.sheet(BUYERS[0])
        self.assertEqual(stat.S_IMODE(os.stat(self.file).st_mode), 0o600)
        os.chmod(self.file, 0o644)
        with open(self.file, "a", encoding="utf-8") as file:
            file.write("x" * 1_000_000)
        self.assertTrue(self.sheet(BUYERS[0]).endswith("</html>\n"))
        self.assertEqual(stat.S_IMODE(os.stat(self.file).st_mode), 0o600)
        self.assertEqual(os.listdir(self.folder.name), ["sheet.html"])

    def test_nothing_is_written_where_it_cannot_be(self):
        folder = os.path.join(self.folder.name, "taken.html")
        os.mkdir(folder)
        result = run("sheet", BUYERS[0], "-o", folder)
        self.assertEqual((result.returncode, result.stdout), (1, ""))
        self.assertIn("[file-unwritable]", result.stderr)
        broken = self.with_changes(BUYERS[0], plan="none-such")
        self.assertEqual(run("sheet", broken, "-o", self.file).returncode, 1)
        self.assertEqual(sorted(os.listdir(self.folder.name)), ["buyer.json", "taken.html"])
        with open(broken, encoding="utf-8") as file:
            before = file.read()
        self.assertEqual(run("sheet", BUYERS[0], "-o", broken).returncode, 1)
        with open(broken, encoding="utf-8") as file:
            self.assertEqual(file.read(), before)


if __name__ == "__main__":
    unittest.main(verbosity=1)
