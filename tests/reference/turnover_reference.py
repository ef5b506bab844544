#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""turnover_reference.py GRAINWISE RIG...: the rolling loop against SciPy on the same equations.

Reads each rig's JSON by itself, takes diameters and scaled masses from `GRAINWISE report --json RIG`,
solves the loop's equations with DOP853 from breakpoint to breakpoint and looks for the least line
speed by bisection. Pace, time, end height, least speed, drive and nylon keep must agree to
TOLERANCE. Exits 1 at a difference, or when there is no rig to compare."""
import json
import math
import subprocess
import sys

import numpy as np
from scipy.integrate import quad, solve_ivp

TOLERANCE = 2e-4  # relative; the program promises 1e-4 for its grid, a point mass may add as much

GRAIN_KG, FOOT_M, INCH_M, G = 64.79891e-6, 0.3048, 0.0254, 9.80665
RHO, ACROSS, ALONG = 1.2, 1.1, 0.010
CASTS = {"short": (55, 5, 6, 13), "fine": (65, 3.5, 6, 13), "long-belly": (80, 4, 10, 13),
         "single-hand": (50, 2.5, 6, 11)}


class Piece:
    """A section from x = a (fly end) to x = b (rod end), in metres from the fly."""

    def __init__(self, a, b, section, ends_kg_m, ends_m, nylon):
        self.a, self.b, self.nylon = a, b, nylon
        self.mu, self.d = ends_kg_m, ends_m
        self.squared = "gr_per_ft" not in section
        self.root = "gr_per_ft" in section and ("floats" in section or "density_g_cm3" in section)

    def along(self, ends, x):
        return ends[1] + (ends[0] - ends[1]) * (x - self.a) / (self.b - self.a)

    def mass(self, x):
        if self.squared:
            return self.mu[1] * (self.diameter(x) / self.d[1])**2
        return self.along(self.mu, x)

    def diameter(self, x):
        if self.root:
            return self.d[1] * math.sqrt(self.along(self.mu, x) / self.mu[1])
        return self.along(self.d, x)


class Line:
    def __init__(self, rig, report):
        self.cast(rig)
        fly = rig["parts"][-1]
        self.fly = fly.get("wet_gr", fly["dry_gr"]) * GRAIN_KG
        self.area = fly.get("drag_area_cm2", 1.5) * 1e-4
        scaled = {(s["part"], s["section"]): s for s in report["sections"]}
        place, self.pieces, self.loops = 0.0, [], []
        for i in range(len(rig["parts"]) - 2, -1, -1):
            part = rig["parts"][i]
            loops = part.get("loops", {})
            self.add_loop(place, loops.get("fly_end_gr", 0))
            factor = report["parts"][i]["scaled_by"]
            for j in range(len(part["sections"]) - 1, -1, -1):
                section = part["sections"][j]
                end = place + section["length_ft"] * FOOT_M
                self.pieces.append(self.piece(place, end, part, section, scaled[(i, j)], factor))
                place = end
            self.add_loop(place, loops.get("rod_end_gr", 0))
        head_end = (report["totals"]["length_ft"] + self.overhang) * FOOT_M
        self.length = min(place, head_end)
        self.nylon = 0.0
        for piece in self.pieces:
            if not piece.nylon:
                break
            self.nylon = piece.b

    def cast(self, rig):
        style = next(p.get("style", "short") for p in rig["parts"] if p["kind"] == "head")
        if rig.get("rod", {}).get("hands", 2) == 1:
            style = "single-hand"
        own = rig.get("cast", {})
        usual = CASTS[style]
        self.speed = own.get("line_speed_ft_per_s", usual[0]) * FOOT_M
        self.loop = own.get("loop_ft", usual[1]) * FOOT_M
        self.launch = math.radians(own.get("launch_deg", usual[2]))
        self.rod_tip = own.get("rod_tip_ft", usual[3]) * FOOT_M
        self.overhang = own.get("overhang_ft", 3.0)

    def add_loop(self, x, grains):
        if grains > 0:
            self.loops.append((x, grains * GRAIN_KG))

    @staticmethod
    def piece(a, b, part, section, scaled, factor):
        d = [v * INCH_M for v in scaled["diameter_in"]]
        if "gr_per_ft" in section:
            typed = section["gr_per_ft"]
            mu = typed if isinstance(typed, list) else [typed, typed]
            mu = [v * factor * GRAIN_KG / FOOT_M for v in mu]
        else:
            mu = [rho * 1e3 * math.pi / 4 * v * v for rho, v in zip(scaled["density_g_cm3"], d)]
        nylon = "material" in section or part["kind"] in ("leader", "tippet")
        if part.get("style") == "coated":
            first = section.get("gr_per_ft", 9)
            first = first[0] if isinstance(first, list) else first
            nylon = "material" in section or first < 1.6
        return Piece(a, b, section, mu, d, nylon)


def breaks(line, start, window):
    marks = {p.b for p in line.pieces} | {x for x, _ in line.loops}
    marks |= {line.nylon, math.pi * line.loop / 4, window}
    inner = sorted(m for m in marks if 1e-9 < m < start - 1e-9)
    return [0.0] + [m for i, m in enumerate(inner) if i == 0 or m - inner[i - 1] > 1e-9] + [start]


def segments(line, start, window):
    """(piece, a, b, leg mass at a, shadow at a, point mass at a) from the fly on."""
    leg, shadow, rows = line.fly, 0.0, []
    marks = breaks(line, start, window)
    for a, b in zip(marks, marks[1:]):
        middle = 0.5 * (a + b)
        piece = next(p for p in line.pieces if p.a <= middle <= p.b)
        point = sum(m for x, m in line.loops if abs(x - a) < 1e-9)
        leg += point
        rows.append((piece, a, b, leg, shadow, point))
        leg += quad(piece.mass, a, b, epsabs=0, epsrel=1e-11)[0]
        shadow += quad(piece.diameter, a, b, epsabs=0, epsrel=1e-11)[0]
    return rows


def shadow_at(piece, a, x):
    return quad(piece.diameter, a, x, epsabs=0, epsrel=1e-9)[0]


class Loop:
    def __init__(self, line):
        self.line = line
        self.start = line.length - 1.0 - math.pi * line.loop / 4
        left, self.window = 20 * FOOT_M, 0.0
        for piece in line.pieces:
            if piece.nylon or left <= 1e-9:
                continue
            used = min(left, piece.b - piece.a)
            self.window, left = piece.a + used, left - used
        self.rows = [self.table(row) for row in segments(line, self.start, self.window)]

    @staticmethod
    def table(row):
        """Leg mass and shadow of a segment as polynomials through Chebyshev points."""
        piece, a, b, leg, shadow, point = row
        x = a + (b - a) * 0.5 * (1 - np.cos(np.pi * np.arange(9) / 8))
        legs = [leg + quad(piece.mass, a, v, epsabs=0, epsrel=1e-10)[0] for v in x]
        shadows = [shadow + shadow_at(piece, a, v) for v in x]
        fit = np.polynomial.Chebyshev.fit
        return piece, a, b, fit(x, legs, 8), fit(x, shadows, 8), point

    def bend(self, piece, x):
        return piece.diameter(x) * min(self.line.loop, 4 * x / math.pi)

    def need(self, piece, x, shadow, u, c):
        bend = self.bend(piece, x)
        skin = math.pi * ALONG * max(0.0, shadow - 0.29 * bend)
        return 0.5 * RHO * u * u * (self.line.area + skin) + 0.6 * RHO * ACROSS * bend * c * c / 6

    def run(self, speed):
        """(u, t, height, u at the nylon) at the fly, or None where the leg stops."""
        back, down = G * math.sin(self.line.launch), G * math.cos(self.line.launch)
        y, at_nylon = np.array([speed, 0.0, 0.0, 0.0]), 0.0
        for piece, a, b, leg, shadow, point in reversed(self.rows):
            def slope(x, y, piece=piece, leg=leg, shadow=shadow):
                u2 = y[0]**2 - y[1]**2
                if u2 <= (0.05 * speed)**2:
                    return np.full(4, np.nan)
                u, m, s = math.sqrt(u2), leg(x), shadow(x)
                az = down - 0.5 * RHO * ACROSS * s / m * y[1] * abs(y[1]) \
                    - 0.5 * RHO * self.line.area * u / m * y[1]
                pull = piece.mass(x) * u2 / 4
                dv = (pull - self.need(piece, x, s, u, u / 2)) / m - back + y[1] / u * az
                return np.array([dv, az, y[1], 1.0]) * (-2.0 / u)
            end = solve_ivp(slope, (b, a), y, method="DOP853", rtol=1e-9, atol=1e-11)
            y = end.y[:, -1]
            if not end.success or not np.all(np.isfinite(y)):
                return None
            if point > 0:  # passed as a short heavy piece: dV/ds = u over s = ln(M/(M - m))/2
                whole = 0.5 * math.log(leg(a) / (leg(a) - point))
                vz = y[1]
                y[0] = solve_ivp(lambda _, v: np.sqrt(v**2 - vz**2), (0, whole), [y[0]],
                                 rtol=1e-10, atol=1e-12).y[0, -1]
            if abs(a - self.line.nylon) < 1e-9 and a > 0:
                at_nylon = math.sqrt(y[0]**2 - y[1]**2)
        height = self.line.rod_tip + self.line.length * math.sin(self.line.launch) + \
            self.line.loop * math.cos(self.line.launch) - y[2]
        return math.sqrt(y[0]**2 - y[1]**2), y[3], height, at_nylon

    def least_speed(self, low=1.0, high=120.0):
        for _ in range(17):
            middle = math.sqrt(low * high)
            end = self.run(middle)
            if end is not None and end[2] >= 0:
                high = middle
            else:
                low = middle
        return math.sqrt(low * high)

    def drive(self):
        least = math.inf
        for piece, a, b, _, shadow, _ in self.rows:
            if piece.nylon or b > self.window + 1e-9:
                continue
            for x in np.linspace(a, b, 60):
                least = min(least, piece.mass(x) / 4 / self.need(piece, x, shadow(x), 1.0, 0.5))
        return least


def compare(program, path):
    with open(path, encoding="utf-8") as file:
        rig = json.load(file)
    words = [program, "report", "--json", path]
    report = json.loads(subprocess.run(words, check=True, capture_output=True, text=True).stdout)
    ours = report.get("turnover")
    if ours is None:
        print(f'{rig["name"]}: no turnover')
        return None
    loop = Loop(Line(rig, report))
    u, t, height, at_nylon = loop.run(loop.line.speed)
    found = {"fly_speed_m_per_s": u, "pace": u / loop.line.speed, "time_s": t,
             "end_height_m": height, "least_line_speed_m_per_s": loop.least_speed(),
             "drive": loop.drive()}
    if at_nylon > 0:
        found["nylon_keep"] = u / at_nylon
    off = {key: abs(ours[key] / value - 1.0) for key, value in found.items()}
    worst = max(off, key=off.get)
    print(f'{rig["name"]}: {worst} off by {off[worst]:.1e}')
    return off[worst] <= TOLERANCE


def main():
    results = [compare(sys.argv[1], path) for path in sys.argv[2:]]
    compared = [good for good in results if good is not None]
    return 0 if compared and all(compared) else 1


if __name__ == "__main__":
    sys.exit(main())
