# Medians and ratios out of one benchmark run, and the whole program from start to exit.
import json
import os
import resource
import statistics
import subprocess
import sys
import time


# What an answer may take, in microseconds: the time of a breath, with room for many of them.
TARGETS = [
    ("APR, 360 payments with falling MI", "apr_monthly", 15),
    ("one whole scenario, the slowest of six", "one_whole_scenario/", 60),
    ("adds on the example", "adds_whole_example", 10_000),
    ("how much home, one program, the slowest of six", "afford_one_program/", 1_000),
    ("a builder's money on the example", "credit_of_the_example/", 100_000),
    ("what moves, on the example", "shift_of_the_example", 20_000),
    ("fit on the example, 25 wishes, the slowest of six loans", "fit_example/", 50_000),
    ("fit of 60 wishes among 200 options, the slowest", "fit_generated/", 5_000_000),
]


def times(path):
    """Nanoseconds by name: the median where a row was run several times."""
    with open(path) as file:
        rows = json.load(file)["benchmarks"]
    unit = {"ns": 1.0, "us": 1e3, "ms": 1e6, "s": 1e9}
    runs = {}
    for row in rows:
        if "cpu_time" in row and row.get("run_type") != "aggregate":
            runs.setdefault(row["name"], []).append(row["cpu_time"] * unit[row["time_unit"]])
    return {name: statistics.median(each) for name, each in runs.items()}


def against_targets(ns):
    for name, row, target in TARGETS:
        found = [each for key, each in ns.items()
                 if key == row or (row.endswith("/") and key.startswith(row))]
        if found:
            slowest = max(found) / 1000
            print(f"{name}: {slowest:,.1f} us, target {target:,} us"
                  f" ({slowest / target:.2f} of it)")


def gaps(path):
    """The widest proven gap after five seconds of work, by the number of wishes."""
    with open(path) as file:
        rows = json.load(file)["benchmarks"]
    found = {}
    for row in rows:
        name = row["name"].split("/")
        if name[0] == "fit_worth_its_price" and "gap_percent" in row:
            found.setdefault(int(name[2]), []).append(row["gap_percent"])
    for wishes, each in sorted(found.items()):
        print(f"{wishes} wishes worth just what they cost: gap {statistics.median(each):.2f} % "
              f"(widest {max(each):.2f} %), target 0.50 %")


def ratio(ns, name, a, b):
    if a in ns and b in ns:
        print(f"{name}: {ns[a] / ns[b]:.2f}")


def whole_program(program):
    here = os.path.dirname(os.path.abspath(__file__))
    buyer = os.path.join(here, "../../examples/oxbarrow-meadow/buyers/six-programs.json")
    walls = []
    for _ in range(15):
        start = time.perf_counter()
        subprocess.run([program, "quote", buyer], stdout=subprocess.DEVNULL, check=True)
        walls.append((time.perf_counter() - start) * 1000)
    walls.sort()
    peak = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024
    print(f"quoin quote, start to exit: median {walls[7]:.1f} ms, slowest {walls[-1]:.1f} ms, "
          f"peak {peak:.1f} MiB")


def main():
    ns = times(sys.argv[1])
    ratio(ns, "schedule / bare integer loop", "schedule_quoin", "schedule_bare_loop")
    ratio(ns, "cpp_dec_float_50 / schedule", "schedule_dec_float_50", "schedule_quoin")
    ratio(ns, "QuantLib / schedule", "schedule_quantlib", "schedule_quoin")
    if "payment_decided" in ns:
        print(f"level payment: {ns['payment_decided']:.1f} ns")
    ratio(ns, "one whole scenario / APR", "one_whole_scenario/3", "apr_monthly")
    against_targets(ns)
    gaps(sys.argv[1])
    whole_program(sys.argv[2])


main()
