#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""air_peers.py AIR_BENCH AIR_MODEL: the unrolling line beside SciPy and MuJoCo, in one run.

AIR_BENCH times ours and MuJoCo's chain of hinges (bare chain, RK4, the longest fixed step that keeps
to the accuracy); here SciPy's solve_ivp is timed on the model that AIR_MODEL prints (air and bending
included, NumPy and LAPACK), the fastest of its methods and tolerances that keeps to the accuracy. All
cover 0.3 s of a reference cast to 1e-5 m. Prints tables and ratios beside the aims; judges nothing."""
import json
import pathlib
import subprocess
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / "reference"))
sys.path.insert(0, str(HERE))
from bench_rows import rows_of  # noqa: E402
from chain_model import ChainModel  # noqa: E402

ACCURACY_M = 1e-5
SPAN_S = 0.3
CASE = 2
TRIED = [(method, 10.0**-power) for method in ("RK45", "DOP853", "LSODA") for power in range(3, 8)]
AIM_SCIPY, AIM_HINGES = 20, 100


def scipy_ms(program, links):
    """(milliseconds, method, tolerance, error) of the fastest good run, or None."""
    words = [program, str(CASE), str(links), str(SPAN_S), "1"]
    model = ChainModel(json.loads(
        subprocess.run(words, check=True, capture_output=True, text=True).stdout))
    span = (0.0, SPAN_S)
    exact = solve_ivp(model.slope, span, model.start, method="DOP853", rtol=1e-10, atol=1e-12)
    exact = model.nodes(exact.y[:links, -1])
    best = None
    for method, tolerance in TRIED:
        begin = time.process_time()
        end = solve_ivp(model.slope, span, model.start, method=method, rtol=tolerance,
                        atol=tolerance)
        took = 1e3 * (time.process_time() - begin)
        error = np.linalg.norm(model.nodes(end.y[:links, -1]) - exact, axis=1).max()
        if end.success and error <= ACCURACY_M and (best is None or took < best[0]):
            best = (took, method, tolerance, error)
    return best


def table_of_casts(rows):
    print("whole casts, 200 links: ms, times real time, error m (98 % of the way); turnover us")
    for i in range(7):
        cast, edit = rows[f"wholeCast/{i}"], rows[f"turnoverOnAnEdit/{i}"]
        pace = 1e3 * cast["cast_s"] / cast["ms"]
        print(f'  case {i + 1}: {cast["ms"]:7.2f} ms {pace:6.1f} x {cast["error_m"]:8.1e} m '
              f'  turnover {1e3 * edit["ms"]:6.1f} us')


def line_of_stopping(rows):
    row = rows["stoppingCast"]
    print(f'a long cast of 800 links, asked to stop: ended {row["ms"]:.2f} ms behind on the average, '
          f'{row["worst_ms"]:.2f} ms at worst (aim 20)')


def table_of_peers(rows, program):
    print(f"{SPAN_S} s of cast to {ACCURACY_M:g} m, ms: ours in air, SciPy, ratio (aim "
          f"{AIM_SCIPY}); ours bare, hinges of MuJoCo, ratio (aim {AIM_HINGES})")
    for links in (50, 100, 200, 400, 800):
        ours, bare = rows[f"inAir/{links}"], rows[f"bare/{links}"]
        line = f'  {links:4d} links {ours["ms"]:9.2f}'
        peer = scipy_ms(program, links) if links <= 200 else None
        if peer:
            line += f' {peer[0]:9.1f} {peer[0] / ours["ms"]:7.1f} x ({peer[1]}, {peer[2]:.0e})'
        else:
            line += " " * 18 + "not run" if links > 200 else " no setting kept to the accuracy"
        line += f'   {bare["ms"]:9.2f}'
        hinges = rows.get(f"hinges/{links}")
        if hinges:
            whole = hinges["ms"] * hinges["steps"]
            checked = f'{hinges["error_m"]:.0e} m' if "error_m" in hinges else "our steps"
            line += f' {whole:10.1f} {whole / bare["ms"]:7.1f} x ({checked})'
        print(line)


def main():
    rows = rows_of(sys.argv[1])
    table_of_casts(rows)
    line_of_stopping(rows)
    table_of_peers(rows, sys.argv[2])


if __name__ == "__main__":
    main()
