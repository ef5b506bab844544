#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""water_reference.py WATER_MODEL: water against IAPWS and TEOS-10, the hanging line by shooting and a
short swing against SciPy's LSODA, all computed in this run.

WATER_MODEL prints what the program takes for water and where its own solvers have the fly; water_chain.py
holds the equations written anew. Exits 1 at a difference."""
import json
import subprocess
import sys

import gsw
import numpy as np
from iapws import IAPWS95
from iapws._iapws import _Viscosity

from water_chain import Hanging, Swinging

DENSITY = 1e-4      # relative
VISCOSITY = 5e-3    # relative, fresh water; what the correlation's authors claim is 1.5e-2
HANG = 1e-3         # relative, of the fly's depth
SWING_M = 0.01
ATMOSPHERE_MPA = 0.101325
ABSOLUTE = 35.16504 / 35.0  # salt by mass for a unit of practical salinity, on which EOS-80 stands (TEOS-10)

CASES = range(8)
HALF_FLOATING = 5   # its tip floats and is drawn under: our rule for that is no part of the equations
SWINGS = [(3, 12, 3.0), (6, 12, 1.5)]  # case, nodes, seconds from the moment the line comes tight
STEP_S = 3e-5       # implicit Euler is of first order; a chain so coarse needs short steps for this
LSODA = 1e-4        # its tolerance; a tenth of it moves the fly by less than 0.2 mm


def said(program, *words):
    run = subprocess.run([program, *map(str, words)], check=True, capture_output=True, text=True)
    return json.loads(run.stdout)


def water_agrees(program):
    fresh, salt, sticky = 0.0, 0.0, 0.0
    d = said(program, "water")
    rows = list(zip(d["temperature_c"], d["salinity_g_per_kg"], d["rho"], d["mu"]))
    for t, s, rho, mu in rows:
        salt = max(salt, abs(rho / gsw.rho_t_exact(s * ABSOLUTE, t, 0.0) - 1.0))
        if s > 0.0 or t == 0.0:  # pure water freezes at 0 C and one atmosphere
            continue
        pure = IAPWS95(T=t + 273.15, P=ATMOSPHERE_MPA)
        fresh = max(fresh, abs(rho / pure.rho - 1.0))
        sticky = max(sticky, abs(mu / _Viscosity(pure.rho, t + 273.15) - 1.0))
    print(f"{len(rows)} waters: density off by {fresh:.1e} (IAPWS-95) and {salt:.1e} (TEOS-10), "
          f"viscosity by {sticky:.1e} (IAPWS 2008) at most")
    return len(rows) >= 20 and fresh <= DENSITY and salt <= DENSITY and 0.0 < sticky <= VISCOSITY


def hanging_agrees(program, case):
    d = said(program, case, 25, 0, 1)
    theirs = Hanging(d).solve(1e-8)
    off = abs(d["hang_m"] / theirs - 1.0)
    print(f'{d["case"]}: hangs {d["hang_m"]:.5f} m deep, by shooting {theirs:.5f} m, off by {off:.1e}')
    return off <= HANG


def swing_agrees(program, case, nodes, seconds):
    d = said(program, case, nodes, seconds, STEP_S)
    ours = np.reshape(d["end_m"], (-1, 3))[-1]
    chain = Swinging(d)
    theirs = chain.fly_after(seconds, LSODA)
    apart, moved = np.linalg.norm(ours - theirs), np.linalg.norm(theirs - chain.x0[-1])
    print(f'{d["case"]}, {len(chain.x0)} nodes, {seconds} s: the fly moved {moved:.2f} m and is '
          f"{1e3 * apart:.2f} mm from LSODA's")
    return apart <= SWING_M and moved > 50 * SWING_M


def main():
    program = sys.argv[1]
    good = [water_agrees(program)]
    good += [hanging_agrees(program, case) for case in CASES if case != HALF_FLOATING]
    good += [swing_agrees(program, *swing) for swing in SWINGS]
    return 0 if all(good) else 1


if __name__ == "__main__":
    sys.exit(main())
