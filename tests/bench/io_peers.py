#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""io_peers.py IO_BENCH: reading and writing a rig, with every check of ours, beside the parser under it into
its own tree, which checks no rule. Prints milliseconds and ratios; judges nothing."""
import json
import pathlib
import subprocess
import sys
import tempfile

SCALE = {"ns": 1e-6, "us": 1e-3, "ms": 1.0}


def main():
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "times.json"
        subprocess.run([sys.argv[1], f"--benchmark_out={path}", "--benchmark_min_time=0.2"], check=True,
                       stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        rows = {row["name"]: row["cpu_time"] * SCALE[row["time_unit"]]
                for row in json.loads(path.read_text())["benchmarks"]}
    for size, name in enumerate(("a sample rig", "64 parts of 64 sections")):
        for what, ours, peer in (("read", "ours", "peer"), ("write", "oursWriting", "peerWriting")):
            mine, theirs = rows[f"{ours}/{size}"], rows[f"{peer}/{size}"]
            print(f"{what:5} {name:24} {mine:9.3f} ms   plain JSON {theirs:9.3f} ms   {mine / theirs:5.2f} x")
        print(f"judge {name:24} {rows[f'analysing/{size}']:9.3f} ms")


if __name__ == "__main__":
    main()
