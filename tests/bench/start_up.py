#!/usr/bin/env python3
"""start_up.py BARE GRAINWISE RIG: starts a bare Qt window and the workbench in turn, each ending itself
when its first picture is painted; prints the medians of both, their ratio, and the peak memory."""
import os
import statistics
import subprocess
import sys
import time

RUNS = 15


def run(command):
    start = time.perf_counter()
    process = subprocess.Popen(command, env={**os.environ, "GRAINWISE_TRACE": "first-picture"},
                               stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    _, status, usage = os.wait4(process.pid, 0)
    if status:
        sys.exit(f"start_up: {command[0]} ended with status {status}")
    return time.perf_counter() - start, usage.ru_maxrss / 1024


def main():
    bare, grainwise, rig = sys.argv[1:4]
    rows = {"bare Qt window": [], "workbench": []}
    run([bare]), run([grainwise, rig])
    for _ in range(RUNS):
        rows["bare Qt window"].append(run([bare]))
        rows["workbench"].append(run([grainwise, rig]))
    medians = {}
    for name, runs in rows.items():
        seconds = statistics.median(r[0] for r in runs)
        memory = statistics.median(r[1] for r in runs)
        medians[name] = seconds
        print(f"start of a {name:16} {seconds * 1000:7.0f} ms  peak memory {memory:6.1f} MB")
    print(f"ratio workbench / bare window {medians['workbench'] / medians['bare Qt window']:.2f} (aim 2)")


if __name__ == "__main__":
    main()
