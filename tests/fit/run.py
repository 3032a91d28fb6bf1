#!/usr/bin/env python3
# A long search of fit, as a process: it says how far it is, an interrupt stops it with the best so
# far and a proven gap, and a second one ends it at once.
import json
import os
import pty
import re
import select
import shutil
import signal
import subprocess
import sys
import tempfile
import unittest

SOURCE = os.environ["QUOIN_SOURCE"]
sys.path.insert(0, os.path.join(SOURCE, "tests/support"))
from hard_fit import write_hard_case  # noqa: E402
from processes import DEADLINE  # noqa: E402

QUOIN = os.environ["QUOIN"]
LINE = b"looked into"  # of the progress
WIPED = b"\r +\r"  # once the search is over
RATES = os.path.join(SOURCE, "tests/golden/data/rates")


class LongSearch(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.mkdtemp()
        self.addCleanup(shutil.rmtree, self.folder)
        self.buyer = write_hard_case(SOURCE, self.folder)

    def start(self, *more, output=subprocess.PIPE, errors=subprocess.PIPE):
        search = subprocess.Popen(
            [QUOIN, "fit", self.buyer, "--rates", RATES, "--monthly", "10000", "--cash", "100000",
             "--nodes", "1000000000", *more],
            stdout=output, stderr=errors)
        if search.stdout:
            self.addCleanup(search.stdout.close)
        if search.stderr:
            self.addCleanup(search.stderr.close)
        self.addCleanup(lambda: (search.kill(), search.wait()))
        return search

    def read_until(self, file, sign):
        """What is written to a file, up to where a pattern is in it."""
        text = b""
        while not re.search(sign, text):
            self.assertTrue(select.select([file], [], [], DEADLINE)[0], text)
            text += os.read(file, 200)
        return text

    def test_an_interrupt_gives_the_best_so_far_and_the_gap(self):
        search = self.start("--progress")
        line = self.read_until(search.stderr.fileno(), LINE).decode()
        self.assertRegex(line, r"^\r[\d,]+ looked into, best worth [\d.]+, at most [\d.]+: lot 1, ")
        search.send_signal(signal.SIGINT)
        out, errors = search.communicate(timeout=DEADLINE)
        text = " ".join(out.decode().split())
        self.assertEqual(search.returncode, 0, errors)
        self.assertIn("the search was stopped", errors.decode())
        found = re.search(r"Worth ([\d.]+): the best of [\d,]+ choices looked into before the search "
                          r"stopped\. None is worth more than ([\d.]+) \(at most ([\d.]+)% more\)",
                          text)
        self.assertTrue(found, text)
        worth, most, share = (float(figure) for figure in found.groups())
        self.assertLess(worth, most)
        self.assertAlmostEqual(100 * (most / worth - 1), share, delta=0.0101)

    def test_the_json_of_a_stopped_search_says_that_it_is_not_proven(self):
        search = self.start("--progress", "--json")
        self.read_until(search.stderr.fileno(), LINE)
        search.send_signal(signal.SIGINT)
        out, _ = search.communicate(timeout=DEADLINE)
        home = json.loads(out)["scenarios"][0]["homes"][0]
        self.assertFalse(home["proven"])
        self.assertTrue(home["fits"])
        self.assertGreater(float(home["gap"]), 0)
        self.assertAlmostEqual(float(home["worth"]) + float(home["gap"]),
                               float(home["most_worth"]), places=6)

    def test_every_scenario_left_is_stopped_too(self):
        with open(self.buyer) as file:
            buyer = json.load(file)
        first = buyer["scenarios"][0]
        buyer["scenarios"] = [dict(first, name=f"Way {i}") for i in range(4)]
        with open(self.buyer, "w") as file:
            json.dump(buyer, file)
        search = self.start("--progress")
        self.read_until(search.stderr.fileno(), LINE)
        search.send_signal(signal.SIGINT)
        out, _ = search.communicate(timeout=DEADLINE)
        self.assertEqual(out.decode().count("before the search"), 4)

    def test_a_terminal_is_shown_the_line_without_asking(self):
        master, terminal = pty.openpty()
        search = self.start(errors=terminal)
        os.close(terminal)
        self.addCleanup(os.close, master)
        self.read_until(master, LINE)
        search.send_signal(signal.SIGINT)
        search.communicate(timeout=DEADLINE)
        self.assertEqual(search.returncode, 0)

    def test_no_line_where_nobody_asked(self):
        search = self.start()
        beside = self.start("--progress")  # later, and its line was due three times
        self.read_until(beside.stderr.fileno(), b"(?s)" + b".*".join([LINE] * 3))
        search.send_signal(signal.SIGINT)
        _, errors = search.communicate(timeout=DEADLINE)
        self.assertNotIn(b"looked into", errors)
        self.assertNotIn(b"\r", errors)
        self.assertEqual(search.returncode, 0)

    def test_the_second_interrupt_ends_at_once(self):
        reading, writing = os.pipe()  # full, so that the answer cannot be written and it lives on
        self.addCleanup(os.close, reading)
        os.set_blocking(writing, False)
        with self.assertRaises(BlockingIOError):
            while True:
                os.write(writing, bytes(65536))
        os.set_blocking(writing, True)
        search = self.start("--progress", output=writing)
        os.close(writing)
        self.read_until(search.stderr.fileno(), LINE)
        search.send_signal(signal.SIGINT)
        self.read_until(search.stderr.fileno(), WIPED)
        self.assertIsNone(search.poll(), "the first one lets it say what it has")
        search.send_signal(signal.SIGINT)
        self.assertEqual(search.wait(DEADLINE), -signal.SIGINT)


if __name__ == "__main__":
    unittest.main()
