#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""start_up.py BARE GRAINWISE RIG: starts a bare Qt window and the workbench in turn; each says when its
first picture is painted and ends. Prints the median and the least time of both until then, their ratio,
and the most memory held."""
import os
import statistics
import subprocess
import sys
import time

RUNS = 25


def run(command):
    start = time.perf_counter()
    process = subprocess.Popen(command, env={**os.environ, "GRAINWISE_TRACE": "first-picture"},
                               stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
    said = process.stdout.readline()
    took = time.perf_counter() - start
    _, status, usage = os.wait4(process.pid, 0)
    if status or said != b"usable\n":
        sys.exit(f"start_up: {command[0]} said {said} and ended with status {status}")
    return 1000 * took, usage.ru_maxrss * 1024 / 1e6


def main():
    bare, grainwise, rig = sys.argv[1:4]
    rows = {"bare Qt window": [], "workbench": []}
    run([bare]), run([grainwise, rig])
    for _ in range(RUNS):
        rows["bare Qt window"].append(run([bare]))
        rows["workbench"].append(run([grainwise, rig]))
    figures = {}
    for name, runs in rows.items():
        figures[name] = statistics.median(r[0] for r in runs), min(r[0] for r in runs)
        print(f"start of a {name:16} median {figures[name][0]:6.0f} ms  least {figures[name][1]:6.0f} ms  "
              f"memory {max(r[1] for r in runs):6.1f} MB")
    (bare, bare_least), (ours, ours_least) = figures["bare Qt window"], figures["workbench"]
    print(f"ratio workbench / bare window: median {ours / bare:.2f}, least {ours_least / bare_least:.2f} "
          "(aims: 2, and 120 MB)")


if __name__ == "__main__":
    main()
