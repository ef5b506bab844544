#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""water_peers.py WATER_BENCH WATER_MODEL: hang-down, swing and band beside SciPy, in one run.

WATER_BENCH times ours; here SciPy solves the same lines (tests/reference/water_chain.py): the hanging
line by RK45 and brentq to 1e-5 m, the beginning of a swing by LSODA with a banded Jacobian from the same
nodes in the same state (all of a swing would take it minutes).
Prints tables and ratios beside the aims; judges nothing."""
import json
import pathlib
import subprocess
import sys
import time

import numpy as np

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / "reference"))
sys.path.insert(0, str(HERE))
from bench_rows import rows_of  # noqa: E402
from water_chain import Hanging, Swinging  # noqa: E402

SWING_CASE, SWING_S, STEP_S, NODES = 3, 30.0, 0.02, 50
BAND_STEP_S, BAND_NODES, BAND_RUNS = 0.04, 30, 32
BEGINS_S, LOOSE, EXACT = 0.4, 1e-2, 1e-5
HALF_FLOATING = 5  # its tip floats and is drawn under: our rule for that is no part of the equations


def model(program, case, nodes, seconds, step):
    words = [program, str(case), str(nodes), str(seconds), str(step)]
    return json.loads(subprocess.run(words, check=True, capture_output=True, text=True).stdout)


def timed(work):
    begin = time.process_time()
    result = work()
    return result, 1e3 * (time.process_time() - begin)


def table_of_hanging(rows, program):
    print("hang-down (aim 60 us): ours us, depth m; SciPy ms, depth m, ratio")
    for case in range(8):
        row = rows[f"hanging/{case}"]
        line = f'  {row["label"]:28} {row["ms"] * 1e3:6.1f} us {row["depth_m"]:8.5f} m'
        if case == HALF_FLOATING:
            print(line + "   not run: what floats is drawn under")
            continue
        depth, ms = timed(lambda: Hanging(model(program, case, 25, 0, 1)).solve(1e-6))
        print(f'{line}   {ms:7.1f} ms {depth:8.5f} m {ms / row["ms"]:8.0f} x')


def line_of_scipy(row, program, nodes, step_s):
    """SciPy over the beginning of a swing, beside ours: no tolerance above the first makes it much faster."""
    chain = Swinging(model(program, SWING_CASE, nodes, BEGINS_S, step_s))
    exact = chain.fly_after(BEGINS_S, EXACT)
    fly, ms = timed(lambda: chain.fly_after(BEGINS_S, LOOSE))
    print(f'  the first {BEGINS_S:g} s in {nodes} nodes: ours {row["ms"]:.2f} ms, {row["error_m"]:.1e} m from steps of a '
          f'tenth; SciPy {ms:.0f} ms (LSODA, rtol {LOOSE:.0e}, {np.linalg.norm(fly - exact):.1e} m from {EXACT:.0e}) '
          f'{ms / row["ms"]:.0f} x', flush=True)


def table_of_swings(rows, program):
    print(f"swing of {SWING_S:g} s (aim 100 ms at {NODES} nodes)")
    for nodes in (25, 50, 100, 200, 400):
        row = rows[f"swinging/{nodes}"]
        print(f'  {row["nodes"]:4.0f} nodes {row["ms"]:8.2f} ms {1e3 * row["ms"] / row["nodes"]:7.1f} us a node '
              f' fly {row["depth_m"]:.3f} m deep, {row["error_m"]:.1e} m from steps of a tenth')
    line_of_scipy(rows["swingBegins"], program, NODES, STEP_S)
    whole = rows["wholeSwing"]
    print(f'  whole swing of the River, {whole["run_s"]:.0f} s of it: {whole["ms"]:.1f} ms')


def lines_of_band(rows, program):
    band = rows["band"]
    print(f'band of a rig, {band["runs"]:.0f} runs: {band["ms"]:.0f} ms; '
          f'{BAND_RUNS} such runs: {rows["runsOfTheBand"]["ms"]:.0f} ms (aim 2000)')
    line_of_scipy(rows["bandSwingBegins"], program, BAND_NODES, BAND_STEP_S)
    row = rows["stoppingBand"]
    print(f'a band asked to stop: ended {row["ms"]:.2f} ms behind on the average, {row["worst_ms"]:.2f} ms at worst '
          '(aim 50)')


def main():
    rows = rows_of(sys.argv[1])
    table_of_hanging(rows, sys.argv[2])
    table_of_swings(rows, sys.argv[2])
    lines_of_band(rows, sys.argv[2])


if __name__ == "__main__":
    main()
