#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""io_peers.py IO_BENCH: reading and writing a rig, with every check of ours, beside the parser under it into
its own tree, which checks no rule. Prints milliseconds and ratios; judges nothing."""
import sys

from bench_rows import rows_of


def main():
    rows = rows_of(sys.argv[1])
    for size, name in enumerate(("a sample rig", "64 parts of 64 sections")):
        for what, ours, peer in (("read", "ours", "peer"), ("write", "oursWriting", "peerWriting")):
            mine, theirs = rows[f"{ours}/{size}"]["ms"], rows[f"{peer}/{size}"]["ms"]
            print(f"{what:5} {name:24} {mine:9.3f} ms   plain JSON {theirs:9.3f} ms   {mine / theirs:5.2f} x")
        print(f"judge {name:24} {rows[f'analysing/{size}']['ms']:9.3f} ms")


if __name__ == "__main__":
    main()
