#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""mass_reference.py GRAINWISE RIG...: mass and balance of rigs by numerical quadrature.

Reads each rig's JSON by itself, integrates mass per foot along every section with SciPy's adaptive
quadrature, and holds `GRAINWISE report --json RIG` against it: totals, centre of mass, each part,
each row of the profile, and the three-foot means of the joints. Nothing here knows a closed form.
Exits 1 at the first rig that differs by more than TOLERANCE, or when there is no rig to compare."""
import json
import math
import subprocess
import sys

from scipy.integrate import quad

TOLERANCE = 1e-9  # grains and feet, relative above one: what quadrature and printing leave

GRAIN_KG = 64.79891e-6
FOOT_M = 0.3048
INCH_M = 0.0254
MATERIAL = {"nylon": 1.14, "fluorocarbon": 1.78}
FLOATING = {"running-line": 0.90, "head": 0.86}


def ends(value):
    return (value, value) if isinstance(value, (int, float)) else tuple(value)


def density(section, kind):
    if "density_g_cm3" in section:
        return section["density_g_cm3"]
    if "material" in section:
        return MATERIAL[section["material"]]
    return FLOATING.get(kind, 0.88)


def gr_per_ft(section, kind):
    """Mass per foot, unscaled, as a function of the feet from the section's rod end."""
    length = section["length_ft"]
    if "gr_per_ft" in section:
        a, b = ends(section["gr_per_ft"])
        return lambda x: a + (b - a) * x / length
    a, b = ends(section["diameter_in"])
    rho = 1e3 * density(section, kind)

    def mass(x):
        d = (a + (b - a) * x / length) * INCH_M
        return rho * math.pi / 4 * d * d * FOOT_M / GRAIN_KG

    return mass


def integral(f, a, b):
    value, error = quad(f, a, b, epsabs=1e-13, epsrel=1e-13, limit=200)
    assert error < 1e-10 * max(1.0, abs(value)), "the quadrature did not converge"
    return value


def is_bare_nylon(part, section):
    if "material" in section:
        return True
    if part["kind"] == "leader" and part.get("style") == "coated":
        return gr_per_ft(section, "leader")(0.0) < 1.6
    return part["kind"] in ("leader", "tippet")


class Line:
    """Everything from the rear of the head to the fly."""

    def __init__(self, rig):
        self.pieces = []  # from, to, mass per foot of x from the piece's rod end, nylon, part
        self.points = []  # at, grains
        self.parts = []   # grains with loops, start, length
        at = 0.0
        for index, part in enumerate(rig["parts"]):
            if part["kind"] == "fly":
                wet = part.get("wet_gr", part["dry_gr"])
                self.points.append((at, wet))
                self.parts.append((wet, at, 0.0))
                continue
            counts = part["kind"] != "running-line"
            length = math.fsum(s["length_ft"] for s in part["sections"])
            start = at if counts else -length
            at, mass = self.lay(part, index, start, counts)
            self.parts.append((mass, start, length))
        self.end = at

    def lay(self, part, index, start, counts):
        laws = [gr_per_ft(s, part["kind"]) for s in part["sections"]]
        masses = [integral(f, 0, s["length_ft"]) for f, s in zip(laws, part["sections"])]
        loops = part.get("loops", {})
        rod_loop, fly_loop = loops.get("rod_end_gr", 0), loops.get("fly_end_gr", 0)
        scale = 1.0
        if "weighed" in part:
            scale = (part["weighed"]["mass_gr"] - rod_loop - fly_loop) / math.fsum(masses)
        elif "label_gr" in part:
            scale = part["label_gr"] / math.fsum(masses)
        at = start
        for section, law in zip(part["sections"], laws):
            to = at + section["length_ft"]
            if counts:
                scaled = lambda x, law=law: scale * law(x)
                self.pieces.append((at, to, scaled, is_bare_nylon(part, section), index))
            at = to
        if counts:
            self.points += [(start, rod_loop), (at, fly_loop)]
        return (at if counts else 0.0), scale * math.fsum(masses) + rod_loop + fly_loop

    def between(self, a, b, weight=lambda s: 1.0, nylon=None):
        sums = []
        for start, to, law, is_nylon, _ in self.pieces:
            low, high = max(a, start), min(b, to)
            if high > low and (nylon is None or nylon == is_nylon):
                sums.append(integral(lambda s: law(s - start) * weight(s), low, high))
        return math.fsum(sums)

    def moment(self):
        line = self.between(0.0, self.end, weight=lambda s: s)
        return line + math.fsum(at * grains for at, grains in self.points)

    def mass(self):
        return self.between(0.0, self.end) + math.fsum(grains for _, grains in self.points)

    def mean_beside(self, joint, towards_fly):
        """Mean gr/ft of the 3 ft of one sort of line beside a joint."""
        pieces = sorted(self.pieces, key=lambda p: p[0])
        row = [p for p in pieces if (p[0] >= joint - 1e-9 if towards_fly else p[1] <= joint + 1e-9)]
        row = row if towards_fly else row[::-1]
        sort, reach = row[0][3], joint
        for start, to, _, is_nylon, _ in row:
            if is_nylon != sort:
                break
            reach = to if towards_fly else start
        reach = min(reach, joint + 3.0) if towards_fly else max(reach, joint - 3.0)
        low, high = min(joint, reach), max(joint, reach)
        return self.between(low, high, nylon=sort) / (high - low)


def compare(what, ours, theirs):
    if abs(ours - theirs) > TOLERANCE * max(1.0, abs(theirs)):
        raise SystemExit(f"{what}: the report says {ours!r}, quadrature {theirs!r}")


def check(program, path):
    with open(path, encoding="utf-8") as file:
        rig = json.load(file)
    line = Line(rig)
    report = json.loads(subprocess.run([program, "report", "--json", path], check=True,
                                       capture_output=True, text=True).stdout)
    totals = report["totals"]
    compare(f"{path}: length", totals["length_ft"], line.end)
    compare(f"{path}: mass", totals["mass_gr"], line.mass())
    compare(f"{path}: centre of mass", totals["center_of_mass_ft"], line.moment() / line.mass())
    assert len(report["parts"]) == len(line.parts), f"{path}: parts"
    for reported, (mass, start, length) in zip(report["parts"], line.parts):
        where = f"{path}: {reported['name']}"
        compare(where + ": mass", reported["mass_gr"], mass)
        compare(where + ": start", reported["start_ft"], start)
        compare(where + ": length", reported["length_ft"], length)
    check_profile(path, report, line)
    for joint in report["junctions"]:
        ratio = line.mean_beside(joint["at_ft"], True) / line.mean_beside(joint["at_ft"], False)
        compare(f"{path}: ratio at {joint['at_ft']} ft", joint["ratio_3ft"], ratio)
    return len(report["junctions"]) + len(report["profile"])


def check_profile(path, report, line):
    rows = report["profile"]
    for row, following in zip(rows, rows[1:] + [None]):
        if following is not None and following["at_ft"] == row["at_ft"]:
            continue  # the last row at a place includes its point masses
        at = row["at_ft"]
        mass = line.between(0.0, at) + math.fsum(g for s, g in line.points if s <= at + 1e-9)
        compare(f"{path}: grains up to {at} ft", row["cumulative_gr"], mass)


def main():
    program, rigs = sys.argv[1], sys.argv[2:]
    compared = sum(check(program, path) for path in rigs)
    if compared == 0:
        raise SystemExit("nothing was compared")
    print(f"{len(rigs)} rigs, {compared} joints and rows agree with quadrature")


if __name__ == "__main__":
    main()
