#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""water_peers.py WATER_BENCH WATER_MODEL: hang-down, swing and band beside SciPy, in one run.

WATER_BENCH times ours; here SciPy solves the same lines (tests/reference/water_chain.py): the hanging
line by RK45 and brentq to 1e-5 m, the swing by LSODA with a banded Jacobian from the same nodes in the
same state. Its tolerance is the loosest whose fly ends as near to the exact one as ours does, or nearer.
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


def scipy_swing(program, error_m):
    data = model(program, SWING_CASE, NODES, SWING_S, STEP_S / 20)
    chain = Swinging(data)
    exact = chain.fly_after(SWING_S, 1e-8)
    fine = np.reshape(data["end_m"], (-1, 3))[-1]
    print(f"  the exact fly by SciPy (rtol 1e-8) and by ours in steps of {STEP_S / 20 * 1e3:g} ms "
          f"are {np.linalg.norm(exact - fine):.1e} m apart")
    for rtol in (1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 1e-5, 1e-6):
        fly, ms = timed(lambda: chain.fly_after(SWING_S, rtol))
        error = np.linalg.norm(fly - exact)
        if error <= error_m:
            return ms, rtol, error
    return None


def table_of_swings(rows, program):
    print(f"swing of {SWING_S:g} s (aim 100 ms at {NODES} nodes)")
    for nodes in (25, 50, 100, 200, 400):
        row = rows[f"swinging/{nodes}"]
        print(f'  {row["nodes"]:4.0f} nodes {row["ms"]:8.2f} ms {1e3 * row["ms"] / row["nodes"]:7.1f} us a node '
              f' fly {row["depth_m"]:.3f} m deep, {row["error_m"]:.1e} m from steps of a tenth')
    row = rows[f"swinging/{NODES}"]
    peer = scipy_swing(program, row["error_m"])
    if peer:
        print(f'  SciPy on the same {NODES} nodes {peer[0]:9.0f} ms (LSODA, rtol {peer[1]:.0e}, {peer[2]:.1e} m) '
              f'{peer[0] / row["ms"]:6.0f} x')
    else:
        print("  SciPy: no tolerance came as near")
    whole = rows["wholeSwing"]
    print(f'  whole swing of the River, {whole["run_s"]:.0f} s of it: {whole["ms"]:.1f} ms')


def main():
    rows = rows_of(sys.argv[1])
    table_of_hanging(rows, sys.argv[2])
    table_of_swings(rows, sys.argv[2])
    band = rows["band"]
    print(f'band of a rig, {band["runs"]:.0f} runs: {band["ms"]:.0f} ms; '
          f'32 such runs: {rows["runsOfTheBand"]["ms"]:.0f} ms (aim 2000)')


if __name__ == "__main__":
    main()
