# SPDX-License-Identifier: GPL-3.0-or-later
"""The hanging and the swinging line as ordinary differential equations for SciPy, from what water_model
prints. Laws as in core/water/hang.h and line_dynamics.h, written anew; the drag of a cylinder straight
from Cheng (2013), without a table."""
import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

G = 9.80665
SKIN = 0.010
STRAIN = 1e-5
SKIN_OF_WATER = 0.003
CLEARANCE = 0.03


def cylinder_drag_re(re):
    """Cd times Re."""
    re = np.maximum(re, 1e-12)
    return (11.0 * re**0.25 + 0.9 * re * -np.expm1(-1000.0 / re)
            + 1.2 * re * -np.expm1(-(re / 4500.0) ** 0.7))


class Water:
    def __init__(self, data):
        self.surface, self.depth = data["surface_m_per_s"], data["depth_m"]
        self.rho, self.mu = data["rho"], data["mu"]
        self.fly_kg, self.fly_m3, self.fly_m2, self.broadside = data["fly"]
        keys = ("length_m", "mass_fly_end", "mass_rod_end", "diameter_fly_end", "diameter_rod_end")
        self.pieces = list(zip(*(data[key] for key in keys)))

    def current(self, z):
        share = np.clip(1.0 + np.minimum(z, 0.0) / self.depth, 0.0, 1.0)
        return self.surface * share ** (1.0 / 6.0)


class Hanging(Water):
    """The steady line, marched from the fly; the unknown is the fly's depth."""

    def slope(self, piece):
        length, m0, m1, d0, d1 = piece

        def f(s, y):
            tx, tz, z = y
            share = s / length
            m, d = m0 + share * (m1 - m0), d0 + share * (d1 - d0)
            wet = (m - self.rho * np.pi / 4 * d * d) * G
            tension = np.hypot(tx, tz)
            c, sn = -tx / tension, tz / tension
            u = float(self.current(z))
            re = u * abs(sn) * d * self.rho / self.mu
            kn = 0.5 * self.mu * float(cylinder_drag_re(re))
            kt = max(2.7 * self.mu * np.sqrt(re), 0.5 * self.rho * np.pi * d * SKIN * u * abs(c))
            return [-u * (kn * sn * sn + kt * c * c), wet - (kn - kt) * u * sn * c, sn]
        return f

    def too_high(self, depth, rtol):
        u = float(self.current(-depth))
        y = [-0.5 * self.rho * self.fly_m2 * u * u, (self.fly_kg - self.rho * self.fly_m3) * G, -depth]
        for piece in self.pieces:
            length, m0, m1, d0, d1 = piece
            floats = m0 + m1 < self.rho * np.pi / 4 * (d0 * d0 + d1 * d1)
            level = lambda s, y: y[1]  # noqa: E731
            level.terminal, level.direction = floats, -1
            run = solve_ivp(self.slope(piece), (0.0, length), y, rtol=rtol, atol=rtol * 1e-3, events=level)
            y = run.y[:, -1]
            if floats and run.status == 1:
                return y[2]
        raise ValueError("no floating line takes up the pull")

    def solve(self, rtol):
        return brentq(self.too_high, 1e-3, self.depth - CLEARANCE, args=(rtol,), xtol=1e-5)


class Swinging(Water):
    """Nodes and one-sided elastic elements from the moment the line comes tight; y holds x, v of every
    node but the rod tip, node by node, so that the Jacobian is banded."""

    def __init__(self, data):
        super().__init__(data)
        self.x0 = np.reshape(data["start_m"], (-1, 3))
        self.v0 = np.reshape(data["start_m_per_s"], (-1, 3))
        lengths, masses, diameters = [], [], []
        for piece, longest in reversed(list(zip(self.pieces, data["longest_m"]))):
            length, m0, m1, d0, d1 = piece
            n = max(1, int(np.ceil(length / (longest * data["mesh_scale"]) - 0.2)))
            share = 1.0 - (np.arange(n) + 0.5) / n
            lengths += [length / n] * n
            masses += list((m0 + share * (m1 - m0)) * length / n)
            diameters += list(d0 + share * (d1 - d0))
        fed = len(self.x0) - 1 - len(lengths)  # from the rod tip to the loose end, straight and just tight
        last = self.pieces[-1]
        first = np.linalg.norm(np.diff(self.x0[:fed + 1], axis=0), axis=1)
        self.length = np.concatenate([first, lengths])
        self.half_kg = 0.5 * np.concatenate([first * last[2], masses])
        self.diameter = np.concatenate([np.full(fed, last[4]), diameters])
        self.half_m3 = 0.5 * np.pi / 4 * self.diameter**2 * self.length
        self.mass = np.zeros(len(self.x0))
        self.mass[:-1] += self.half_kg
        self.mass[1:] += self.half_kg
        self.mass[-1] += self.fly_kg
        area = self.fly_m2 + (self.length * self.diameter).sum()
        self.stiff = max(300.0, 20.0 * 0.25 * self.rho * 1.2 * area * self.surface**2)
        self.bed = -max(0.0, self.depth - CLEARANCE)
        self.bed_stiff = np.maximum(40.0, self.mass * G / 0.005)
        self.fly_size = max(SKIN_OF_WATER, np.cbrt(6 / np.pi * self.fly_m3))

    def forces(self, x, v):
        force = np.zeros_like(x)
        force[:, 2] -= self.mass * G
        mass = self.mass[:, None, None] * np.eye(3)
        r = np.diff(x, axis=0)
        stretched = np.linalg.norm(r, axis=1)
        t = r / stretched[:, None]
        strain = stretched / self.length - 1.0
        pull = (0.5 * self.stiff * (strain + np.sqrt(strain**2 + STRAIN**2)))[:, None] * t
        force[:-1] += pull
        force[1:] -= pull
        size = np.maximum(self.diameter, SKIN_OF_WATER)
        across = np.eye(3) - t[:, :, None] * t[:, None, :]
        for nodes in (slice(0, -1), slice(1, None)):
            z = x[nodes, 2]
            wet = np.clip(0.5 - z / size, 0.0, 1.0)
            u = -v[nodes]
            u[:, 0] += self.current(z)
            along = (u * t).sum(axis=1)
            un = u - along[:, None] * t
            re = np.linalg.norm(un, axis=1) * self.diameter * self.rho / self.mu
            half = 0.5 * self.length * wet
            kn = 0.5 * self.mu * cylinder_drag_re(re) * half
            kt = half * np.maximum(2.7 * self.mu * np.sqrt(re),
                                   0.5 * self.rho * np.pi * self.diameter * SKIN * np.abs(along))
            force[nodes] += kn[:, None] * un + (kt * along)[:, None] * t
            force[nodes, 2] += self.rho * self.half_m3 * G * wet
            mass[nodes] += (self.rho * self.half_m3 * wet)[:, None, None] * across
        self.add_bed(x, v, force)
        self.add_fly(x[-1], v[-1], force[-1])
        return force, mass

    def add_bed(self, x, v, force):
        push = self.bed_stiff * np.maximum(0.0, self.bed - x[:, 2])
        force[:, 2] += push
        speed = np.sqrt(v[:, 0] ** 2 + v[:, 1] ** 2 + 0.02**2)
        force[:, :2] -= (0.4 * push / speed)[:, None] * v[:, :2]

    def add_fly(self, x, v, force):
        wet = np.clip(0.5 - x[2] / self.fly_size, 0.0, 1.0)
        force[2] += self.rho * self.fly_m3 * G * wet
        u = np.array([float(self.current(x[2])), 0.0, 0.0]) - v
        speed = np.linalg.norm(u)
        flat = u[2] / speed
        area = self.fly_m2 * (1.0 + (self.broadside - 1.0) * flat * flat)
        force += 0.5 * self.rho * area * wet * speed * u

    def slope(self, _, y):
        state = y.reshape(-1, 2, 3)
        x = np.concatenate([self.x0[:1], state[:, 0]])
        v = np.concatenate([np.zeros((1, 3)), state[:, 1]])
        force, mass = self.forces(x, v)
        a = np.linalg.solve(mass[1:], force[1:, :, None])[:, :, 0]
        return np.stack([v[1:], a], axis=1).ravel()

    def fly_after(self, seconds, rtol):
        start = np.stack([self.x0[1:], self.v0[1:]], axis=1).ravel()
        run = solve_ivp(self.slope, (0.0, seconds), start, method="LSODA", rtol=rtol, atol=rtol * 0.1,
                        lband=11, uband=11, t_eval=[seconds])
        if not run.success:
            raise ValueError(run.message)
        return run.y[-6:-3, -1]
