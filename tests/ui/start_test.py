#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""start_test.py GRAINWISE SAMPLES: starts the program with one file, two, three, and one of each kind, as a file manager
or a terminal does, and reads from its trace which face it opens with which rigs; and asks it to end with its
first picture, as the benchmark of the start does (it must run under tests/support/with_screen.sh). Prints a line a start; exits 1 at the first that does not hold."""
import json
import os
import pathlib
import subprocess
import sys
import time

WAIT_S = 15


def kinds(rig):
    return [part["kind"] for part in json.loads(rig.read_text())["parts"]]


def started(program, *files):
    """What the program's first report says: key -> words."""
    trace = pathlib.Path(os.environ["XDG_RUNTIME_DIR"]) / "start-trace"
    env = {**os.environ, "GRAINWISE_TRACE": "1", "QT_FATAL_WARNINGS": "1"}
    with open(trace, "w") as log:
        process = subprocess.Popen([program, *map(str, files)], stdout=log, env=env)
    try:
        end = time.time() + WAIT_S
        while time.time() < end:
            if process.poll() is not None:
                sys.exit(f"the program ended with {process.returncode}")
            report = trace.read_text().split("settled\n")
            if len(report) > 1:
                found = {}
                for line in report[0].splitlines():
                    key, _, words = line.partition(" ")
                    if key != "at":
                        found[key] = words
                return found
            time.sleep(0.05)
        sys.exit("the window did not settle")
    finally:
        process.terminate()
        process.wait()


def first_picture(program, *files):
    """What the program says when it is to end with its first picture, and its exit code."""
    env = {**os.environ, "GRAINWISE_TRACE": "first-picture", "QT_FATAL_WARNINGS": "1"}
    ran = subprocess.run([program, *map(str, files)], stdout=subprocess.PIPE, env=env, timeout=WAIT_S)
    return ran.stdout, ran.returncode


def hold(what, holds):
    print(("ok    " if holds else "WRONG ") + what, flush=True)
    if not holds:
        sys.exit(1)


def main():
    program, samples = sys.argv[1], pathlib.Path(sys.argv[2])
    a, b, c = (samples / f"{name}.rig.json" for name in ("01-plain-winter", "06-under-the-film", "08-trout-two-hander"))
    deck = samples / "why-that-tip.deck.json"
    assert len({tuple(kinds(rig)) for rig in (a, b, c)}) == 3

    one = started(program, a)
    hold("one rig opens on the bench", one["face"] == "bench" and one["parts"].split() == kinds(a)
         and "beside" not in one)
    two = started(program, a, b)
    hold("two rigs open beside each other in Compare", two["face"] == "compare" and two["parts"].split() == kinds(a)
         and two["beside"].split() == kinds(b) and not two["said"])
    three = started(program, b, a, c)
    hold("of three the first two are compared, and that is said", three["face"] == "compare"
         and three["parts"].split() == kinds(b) and three["beside"].split() == kinds(a) and "Two rigs" in three["said"])
    shown = started(program, deck)
    hold("a deck opens in the Clinic", shown["face"] == "clinic")
    for name in ("corrow.pools", "bench.spools", "five-tip-family.shelf"):
        kept = started(program, samples / f"{name}.json")
        hold(f"{name}.json opens where such things are kept, and that is said",
             kept["face"] == "bench" and f"{name}.json" in kept["said"])
    both = started(program, c, deck)
    hold("a rig and a deck: the rig stands on the bench behind the Clinic", both["face"] == "clinic"
         and both["parts"].split() == kinds(c))
    hold("asked for its first picture it says once that it is usable, and ends well",
         first_picture(program, a) == (b"usable\n", 0))


if __name__ == "__main__":
    main()
