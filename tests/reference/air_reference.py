#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""air_reference.py AIR_MODEL: the unrolling line against SciPy's DOP853 on the same chain.

AIR_MODEL prints a reference cast as links with its own solution; the equations are written anew in
chain_model.py and integrated to 1e-11. Every node must agree to TOLERANCE_M in the loop phase and
near the turn, and the turn itself in time, fly speed and height. Exits 1 at a difference."""
import json
import subprocess
import sys

import numpy as np
from scipy.integrate import solve_ivp

from chain_model import ChainModel

TOLERANCE_M = 1e-6  # with a fifth of the usual step: what is left of RK4's own error
TURN = 1e-6         # relative, of time, speed and height at the turn
CASES = [(0, 60, 0.3), (1, 60, 0.6), (4, 120, 0.6), (6, 60, 0.8)]


def model_of(program, case, links, seconds):
    words = [program, str(case), str(links), str(seconds), "0.2"]
    return json.loads(subprocess.run(words, check=True, capture_output=True, text=True).stdout)


def solve(model, until, events=None):
    return solve_ivp(model.slope, (0.0, until), model.start, method="DOP853", rtol=1e-11,
                     atol=1e-12, events=events)


def places_agree(program, case, links, seconds):
    d = model_of(program, case, links, seconds)
    model = ChainModel(d)
    end = solve(model, d["time_s"]).y[:links, -1]
    apart = np.linalg.norm(model.nodes(end) - model.nodes(np.array(d["end_angle_rad"])), axis=1)
    print(f'{d["case"]}, {links} links, {seconds} s: largest distance {apart.max():.1e} m')
    return apart.max() <= TOLERANCE_M


def turn_agrees(program, case, links):
    d = model_of(program, case, links, 0)
    model = ChainModel(d)

    def lead(_, y):
        x = model.nodes(y[:links])[:, 0]
        return x[-1] - x[:-1].max()

    lead.terminal = True
    lead.direction = 1.0
    solution = solve(model, 1.2 * d["time_s"], lead)
    y = solution.y_events[0][0]
    x, above = model.nodes(y[:links])[-1]
    speed = np.linalg.norm(model.velocities(y[:links], y[links:])[-1])
    height = d["rod_tip_m"] + x * np.sin(d["launch_rad"]) + above * np.cos(d["launch_rad"])
    found = (solution.t_events[0][0], speed, height)
    ours = (d["time_s"], d["fly_speed_m_per_s"], d["end_height_m"])
    off = max(abs(a / b - 1.0) for a, b in zip(found, ours))
    print(f'{d["case"]}, {links} links, the turn: off by {off:.1e} at most')
    return d["turned"] and off <= TURN


def main():
    program = sys.argv[1]
    good = [places_agree(program, *case) for case in CASES]
    good += [turn_agrees(program, case, 60) for case in (0, 4)]
    return 0 if good and all(good) else 1


if __name__ == "__main__":
    sys.exit(main())
