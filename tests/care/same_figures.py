#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""same_figures.py FIRST SECOND FOLDER: runs each build of `figures` twice. A build says the same bytes each
time; two builds differ by no more than the tolerances below. Prints the greatest differences; exits 1."""
import json
import subprocess
import sys

# Of the greatest figure of a group. What a compiler may do differently is the last bit of an operation
# (-ffp-contract=off leaves it no more); a search that stops within a tolerance can end one step apart.
TOLERANCE = {"mass": 1e-12, "turnover": 1e-9, "hang-down": 1e-5, "swing": 1e-4, "cast": 1e-6}


def figures(program, folder):
    runs = [subprocess.run([program, folder], check=True, capture_output=True, text=True).stdout
            for _ in range(2)]
    if runs[0] != runs[1]:
        sys.exit(f"same_figures: {program} does not say the same twice")
    return runs[0].splitlines()


def main():
    first, second = (figures(program, sys.argv[3]) for program in sys.argv[1:3])
    if len(first) != len(second):
        sys.exit("same_figures: one says more than the other")
    worst, groups, equal = dict.fromkeys(TOLERANCE, 0.0), dict.fromkeys(TOLERANCE, 0), 0
    for a, b in zip(first, second):
        rig, group, ours = a.split("|")
        there, same_group, theirs = b.split("|")
        if (rig, group) != (there, same_group):
            sys.exit(f"same_figures: {rig} {group} beside {there} {same_group}")
        groups[group] += 1
        if ours == theirs:
            equal += 1
            continue
        ours, theirs = json.loads(ours), json.loads(theirs)
        if len(ours) != len(theirs):
            sys.exit(f"same_figures: {rig} {group}: {len(ours)} figures and {len(theirs)}")
        size = max(max(map(abs, ours)), 1e-300)
        worst[group] = max(worst[group], max(abs(x - y) for x, y in zip(ours, theirs)) / size)
    print(f"{equal} of {len(first)} groups of figures are equal to the last bit")
    bad = False
    for group, limit in TOLERANCE.items():
        bad |= not worst[group] <= limit or not groups[group]
        print(f"{group:10} {groups[group]:4} groups, greatest difference {worst[group]:.1e} (at most {limit:.0e})")
    sys.exit(1 if bad else 0)


if __name__ == "__main__":
    main()
