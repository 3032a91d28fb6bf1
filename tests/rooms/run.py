#!/usr/bin/env python3
# The drawings of the example's homes: well-formed SVG in whole hundredths of a foot, every room with
# its ground and every label inside it, nothing that a browser would fetch or run, and what options
# bring marked as chosen.
import functools
import glob
import json
import os
import re
import subprocess
import unittest
import xml.etree.ElementTree as ElementTree

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PROGRAM = os.environ.get("QUOIN", os.path.join(ROOT, "build/release/quoin"))
BUYERS = sorted(glob.glob(os.path.join(ROOT, "examples/oxbarrow-meadow/buyers/*.json")))
SVG = "{http://www.w3.org/2000/svg}"
TAGS = {SVG + tag for tag in ("svg", "title", "g", "path", "text")}
MOST_BYTES = 20_000


@functools.cache
def rooms(buyer, language="en"):
    told = subprocess.run([PROGRAM, "rooms", buyer, "--json", "--language", language],
                          capture_output=True, text=True, timeout=60, check=True)
    return json.loads(told.stdout)


def floors():
    for buyer in BUYERS:
        for language in ("en", "es"):
            for floor in rooms(buyer, language)["floors"]:
                yield floor, ElementTree.fromstring(floor["svg"])


def classes(element):
    return element.get("class", "").split()


def corners(path):
    """Of the one outline of a ground."""
    x = y = 0
    found = []
    for letter, figures in re.findall(r"([Mhvlz])([-\d ]*)", path):
        numbers = [int(n) for n in figures.split()]
        if letter == "M":
            x, y = numbers
        elif letter == "h":
            x += numbers[0]
        elif letter == "v":
            y += numbers[0]
        elif letter == "l":
            x, y = x + numbers[0], y + numbers[1]
        else:
            continue
        found.append((x, y))
    return found


def inside(point, outline):
    x, y = point
    odd = False
    for (ax, ay), (bx, by) in zip(outline, outline[1:] + outline[:1]):
        if (ay > y) != (by > y) and x < ax + (bx - ax) * (y - ay) / (by - ay):
            odd = not odd
    return odd


class Drawings(unittest.TestCase):
    def test_every_home_of_the_example_is_drawn(self):
        self.assertTrue(BUYERS)
        for buyer in BUYERS:
            self.assertGreaterEqual(len(rooms(buyer)["floors"]), 2, buyer)

    def test_a_drawing_is_lines_and_texts_alone(self):
        for floor, svg in floors():
            self.assertEqual({element.tag for element in svg.iter()} - TAGS, set())
            for element in svg.iter():
                self.assertEqual({"style", "href", "onclick", "id"} & set(element.keys()), set())
            self.assertRegex(svg.get("viewBox"), r"^0 0 \d+ \d+$")
            self.assertEqual(svg.get("role"), "img")
            self.assertIn(floor["name"], svg.get("aria-label"))
            self.assertLess(len(floor["svg"]), MOST_BYTES)

    def test_every_room_has_its_ground_and_its_label_within(self):
        labels = 0
        for floor, svg in floors():
            drawn = [g for g in svg.iter(SVG + "g") if "room" in classes(g)]
            self.assertEqual([g.get("data-room") for g in drawn],
                             [room["id"] for room in floor["rooms"]])
            for group, room in zip(drawn, floor["rooms"]):
                self.assertEqual(group.get("data-area", ""), room["area"])
                self.assertIn(room["size"], group.find(SVG + "title").text)
                ground = corners(group.find(SVG + "path").get("d"))
                self.assertGreaterEqual(len(ground), 4)
                words = []
                for text in group.findall(SVG + "text"):
                    words.append(text.text)
                    labels += 1
                    if text.get("transform") is None:
                        self.assertTrue(inside((int(text.get("x")), int(text.get("y"))), ground),
                                        room["name"])
                self.assertIn(" ".join(words).replace(" " + room["size"], ""), ("", room["name"]))
        self.assertGreater(labels, 100)

    def test_what_options_bring_is_chosen_and_nothing_else(self):
        chosen = 0
        for floor, svg in floors():
            brought = {room["id"] for room in floor["rooms"] if room["by"]}
            marked = {g.get("data-room") for g in svg.iter(SVG + "g") if "chosen" in classes(g)}
            self.assertEqual(marked, brought)
            lines = any("chosen" in classes(path) for path in svg.iter(SVG + "path"))
            parts = floor["openings"] + floor["stairs"] + floor["symbols"]
            parts += [room for room in floor["rooms"] if room["open"]]
            self.assertEqual(lines, any(part["by"] for part in parts))
            chosen += lines
        self.assertGreater(chosen, 0)


if __name__ == "__main__":
    unittest.main()
