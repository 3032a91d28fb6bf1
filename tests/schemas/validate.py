#!/usr/bin/env python3
"""Holds the JSON Schemas to the files they describe, and to refusing small mistakes.

Checks, in this order: each schema is valid, strict and self-contained; every shipped file is
accepted, and still is with a comment in every object; every change of changes.json, made in
memory in a shipped file, is accepted or refused as it says there. Needs python3-jsonschema.

    python3 tests/schemas/validate.py
"""
import copy
import json
import pathlib
import re
import sys

from jsonschema import Draft202012Validator, FormatChecker

ROOT = pathlib.Path(__file__).resolve().parents[2]
KINDS = ("pricebook", "drawing", "inquiry", "program", "rates", "place", "apr")
GONE = object()


class Tally:
    """Counts checks and prints the ones that fail."""

    def __init__(self):
        self.passed = self.failed = 0

    def check(self, good, message):
        if good:
            self.passed += 1
        else:
            self.failed += 1
            print(f"schemas: {message}")


def no_member_twice(pairs):
    names = [name for name, _ in pairs]
    twice = {name for name in names if names.count(name) > 1}
    if twice:
        raise ValueError(f"member {sorted(twice)[0]} stands twice")
    return dict(pairs)


def load(path):
    return json.loads(path.read_text(encoding="utf-8"), object_pairs_hook=no_member_twice)


def each_node(node, path=()):
    """Every value of a JSON tree with its path."""
    yield path, node
    if not isinstance(node, (dict, list)):
        return
    for key, child in node.items() if isinstance(node, dict) else enumerate(node):
        yield from each_node(child, path + (key,))


# Schemas ------------------------------------------------------------------------------------


def check_schema(kind, schema, tally):
    """A schema is valid, refers only to itself, uses all it defines, and leaves nothing open."""
    faults = list(Draft202012Validator(Draft202012Validator.META_SCHEMA).iter_errors(schema))
    tally.check(not faults, f"{kind}: not a valid schema: {faults[0].message if faults else ''}")
    tally.check(schema.get("$id") == f"urn:quoin:schema:{kind}:1", f"{kind}: wrong $id")
    used = {node["$ref"] for _, node in each_node(schema)
            if isinstance(node, dict) and isinstance(node.get("$ref"), str)}
    defined = {"#/$defs/" + name for name in schema["$defs"]}
    tally.check(used <= defined, f"{kind}: refers to nothing: {sorted(used - defined)}")
    tally.check(defined <= used, f"{kind}: defined but not used: {sorted(defined - used)}")
    for path, node in each_node(schema):
        if isinstance(node, dict) and node.get("type") == "object":
            where = f"{kind}: /{'/'.join(map(str, path))}"
            tally.check(node.get("additionalProperties") is False, f"{where}: open object")
            tally.check("comment" in node.get("properties", {}), f"{where}: refuses comments")


def check_shared_definitions(schemas, tally):
    """A definition of the same name is the same in every schema: one idea, one wording."""
    first = {}
    for kind, schema in schemas.items():
        for name, body in schema["$defs"].items():
            if name in OWN_MEANING:
                continue
            other = first.setdefault(name, (kind, body))
            tally.check(other[1] == body, f"{kind}: $defs/{name} differs from that of {other[0]}")


def check_caps(schemas, tally):
    """Every list has the cap of text/caps.hpp or of its own header; so have texts and names."""
    source = "".join((ROOT / "include/quoin" / header).read_text(encoding="utf-8")
                     for header in ("text/caps.hpp", "pricebook/drawing.hpp"))
    caps = {name: int(number.replace("'", ""))
            for name, number in re.findall(r"size_t (\w+) = ([\d']+);", source)}
    of_its_own = {("inquiry", name): caps[name] for name in
                  ("scenarios", "selections", "wishes", "requests", "incentives", "credits")}
    of_its_own |= {("inquiry", "uses"): caps["credit_uses"], ("pricebook", "plans"): caps["plans"],
                   ("pricebook", "options"): caps["options"]}
    drawn = {"floors": "floors", "changes": "changes", "outline": "corners",
             "when": "conditions", "unless": "conditions", "removes": "drawn", "rooms": "drawn",
             "openings": "drawn", "stairs": "drawn", "symbols": "drawn"}
    of_its_own |= {("drawing", name): caps[cap] for name, cap in drawn.items()}
    of_its_own |= {("drawing", "place"): 2}  # x, y
    lists = {key: 0 for key in of_its_own}
    for kind, schema in schemas.items():
        for path, node in each_node(schema):
            if not isinstance(node, dict) or node.get("type") != "array":
                continue
            top = path[:1] == ("properties",) and len(path) == 2
            key = (kind, path[-1])
            own = key in of_its_own and (top or kind == "drawing" or key == ("inquiry", "uses"))
            cap = of_its_own[key] if own else caps["list"]
            lists[key] = 1
            tally.check(node.get("maxItems") == cap,
                        f"{kind}: /{'/'.join(map(str, path))}: maxItems is not {cap}")
        texts = schema["$defs"]
        for name in ("text", "name") if "text" in texts else ():
            longest = texts[name].get("maxLength", texts[name].get("allOf", [{}])[-1].get("maxLength"))
            tally.check(longest == caps[name], f"{kind}: $defs/{name}: maxLength is not {caps[name]}")
    tally.check(all(lists.values()), f"a cap that no list has: {lists}")


def check_fee_methods(schema, tally):
    """A program may name every fee method of the table, and no other."""
    table = (ROOT / "src/loan/fees/table.hpp").read_text(encoding="utf-8")
    for member, kind in (("upfront", "UpfrontMethod"), ("annual", "AnnualMethod")):
        names = re.search(rf"extern const {kind} ([^;]*);", table).group(1).split(",")
        tally.check(schema["properties"][member]["properties"]["method"]["enum"] ==
                    [" ".join(name.strip().split("_")) for name in names],
                    f"program: /{member}/method: not the methods of {kind} in loan/fees/table.hpp")


# Names that two formats use for different things.
OWN_MEANING = {"incentive"}


# Shipped files ------------------------------------------------------------------------------


def shipped_files(tally):
    """All JSON files of rates/ and examples/ by kind: {kind: [(name, content)]}."""
    files = {kind: [] for kind in KINDS}
    for path in sorted([*ROOT.glob("rates/**/*.json"), *ROOT.glob("examples/**/*.json")]):
        name = str(path.relative_to(ROOT))
        try:
            content = load(path)
        except ValueError as error:
            tally.check(False, f"{name}: {error}")
            continue
        kind = str(content.get("format", "") if isinstance(content, dict) else "").split("/")
        known = len(kind) == 3 and kind[0] == "quoin" and kind[1] in KINDS
        tally.check(known, f"{name}: no known format")
        if known:
            files[kind[1]].append((name, content))
    for kind, found in files.items():
        tally.check(found, f"no {kind} file is shipped")
    return files


def leaves(error):
    """The errors at the bottom of an error, where alternatives nest."""
    if not error.context:
        return [error]
    return [leaf for inner in error.context for leaf in leaves(inner)]


def errors_of(validator, content):
    return [leaf for error in validator.iter_errors(content) for leaf in leaves(error)]


def with_comments(node):
    """The same content with a comment in every object."""
    if isinstance(node, dict):
        return {**{key: with_comments(child) for key, child in node.items()}, "comment": "why"}
    return [with_comments(child) for child in node] if isinstance(node, list) else node


def check_accepted(validators, files, tally):
    for kind, found in files.items():
        for name, content in found:
            for variant, text in ((content, ""), (with_comments(content), " with comments")):
                errors = errors_of(validators[kind], variant)
                place = "/".join(map(str, errors[0].absolute_path)) if errors else ""
                detail = f"/{place}: {errors[0].message[:160]}" if errors else ""
                tally.check(not errors, f"{name}{text}: refused: {detail}")


# Changes ------------------------------------------------------------------------------------


def resolve(content, steps):
    """The path for steps, where "?x" means the first item that has a member x; None if absent."""
    path, node = [], content
    for step in steps:
        if step.startswith("?"):
            step = next((i for i, item in enumerate(node)
                         if isinstance(item, dict) and step[1:] in item), None)
        elif isinstance(node, list):
            step = int(step) if int(step) < len(node) else None
        elif not isinstance(node, dict) or step not in node:
            step = None
        if step is None:
            return None
        path.append(step)
        node = node[step]
    return path


def changed(content, change):
    """The content with the change made in it, and where; (None, None) if it does not apply."""
    path = resolve(content, change["at"].split("/") if change["at"] else [])
    if path is None:
        return None, None
    content = copy.deepcopy(content)
    parent = content
    for step in path[:-1]:
        parent = parent[step]
    target = parent[path[-1]] if path else content
    if "set" in change:
        parent[path[-1]] = change["set"]
    elif "add" in change:
        target.update(change["add"])
    elif target.pop(change["drop"], GONE) is GONE:
        return None, None
    return content, path


def check_change(validator, found, change, accepted, tally):
    """Made in the first shipped file that has the place, it is accepted, or refused right there."""
    label = f"{change['kind']}: {change['what']}"
    for name, content in found:
        variant, path = changed(content, change)
        if variant is None:
            continue
        errors = errors_of(validator, variant)
        places = [list(error.absolute_path) for error in errors]
        refused_there = any(at == path[:-1] or at[:len(path)] == path for at in places)
        where = f"in {name} at /{'/'.join(map(str, path))}"
        if accepted:
            tally.check(not errors, f"{label}: refused {where}: {[e.message for e in errors][:1]}")
        else:
            tally.check(refused_there, f"{label}: accepted {where}")
        return
    tally.check(False, f"{label}: no shipped file has {change['at'] or 'this format'}")


def main():
    tally = Tally()
    schemas = {kind: load(ROOT / "schemas" / f"{kind}.schema.json") for kind in KINDS}
    for kind, schema in schemas.items():
        check_schema(kind, schema, tally)
    check_shared_definitions(schemas, tally)
    check_caps(schemas, tally)
    check_fee_methods(schemas["program"], tally)
    dates = FormatChecker(formats=("date",))
    validators = {kind: Draft202012Validator(schema, format_checker=dates)
                  for kind, schema in schemas.items()}
    files = shipped_files(tally)
    check_accepted(validators, files, tally)
    changes = load(pathlib.Path(__file__).with_name("changes.json"))
    for verdict in ("accepted", "refused"):
        for change in changes[verdict]:
            kind = change["kind"]
            check_change(validators[kind], files[kind], change, verdict == "accepted", tally)
    print(f"schemas: {tally.passed} passed, {tally.failed} failed")
    return 1 if tally.failed else 0


if __name__ == "__main__":
    sys.exit(main())
