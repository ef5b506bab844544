# SPDX-License-Identifier: GPL-3.0-or-later
"""Runs a Google Benchmark program and returns its rows by name."""
import json
import pathlib
import subprocess
import tempfile

SCALE = {"ns": 1e-6, "us": 1e-3, "ms": 1.0, "s": 1e3}
WALL = ("/real_time", "/manual_time")


def rows_of(program, *options):
    """name -> row, with `ms`: wall time where the benchmark asks for it, else processor time. What the
    name says about the way of timing is left off."""
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "times.json"
        subprocess.run([program, f"--benchmark_out={path}", "--benchmark_min_time=0.2", *options],
                       check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        rows = json.loads(path.read_text())["benchmarks"]
    named = {}
    for row in rows:
        name = row["name"]
        wall = any(word in name for word in WALL)
        for word in WALL:
            name = name.replace(word, "")
        name = name.split("/iterations:")[0]
        row["ms"] = row["real_time" if wall else "cpu_time"] * SCALE[row["time_unit"]]
        named[name] = row
    return named
