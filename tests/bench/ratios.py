# Ratios out of one benchmark run, and the whole program from start to exit.
import json
import os
import resource
import subprocess
import sys
import time


def times(path):
    with open(path) as file:
        rows = json.load(file)["benchmarks"]
    unit = {"ns": 1.0, "us": 1e3, "ms": 1e6, "s": 1e9}
    return {r["name"]: r["cpu_time"] * unit[r["time_unit"]] for r in rows if "cpu_time" in r
            and r.get("run_type") != "aggregate"}


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
    if "adds_whole_example" in ns:
        print(f"adds, whole example: {ns['adds_whole_example'] / 1e6:.2f} ms")
    whole_program(sys.argv[2])


main()
