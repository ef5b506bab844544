# SPDX-License-Identifier: GPL-3.0-or-later
"""The unrolling line's equations in NumPy, written from the equations alone: a chain of links under
gravity, air drag and bending. The links' tensions come from a banded solve of their constraint."""
import numpy as np
from scipy.linalg import solve_banded


class ChainModel:
    """`d` is what air_model prints."""

    def __init__(self, d):
        self.h = d["link_m"]
        self.m = np.array(d["node_mass_kg"])
        self.n = len(d["diameter_m"])
        diameter = np.array(d["diameter_m"])
        half = 0.5 * d["air_kg_per_m3"] * self.h
        self.across = half * d["across_drag"] * diameter
        self.along = half * np.pi * d["along_drag"] * diameter
        self.fly = 0.5 * d["air_kg_per_m3"] * d["fly_drag_m2"]
        self.bending = np.array(d["bending_N_m"])[1:]
        self.eta = d["bending_time_s"]
        self.gravity = np.array(d["gravity_m_per_s2"])
        self.start = np.concatenate([d["start_angle_rad"], d["start_rate_rad_per_s"]])

    def nodes(self, angle):
        """Places of the nodes, one row each."""
        steps = self.h * np.column_stack([np.cos(angle), np.sin(angle)])
        return np.vstack([[0.0, 0.0], np.cumsum(steps, axis=0)])

    def velocities(self, angle, rate):
        steps = self.h * rate[:, None] * np.column_stack([-np.sin(angle), np.cos(angle)])
        return np.vstack([[0.0, 0.0], np.cumsum(steps, axis=0)])

    def forces(self, angle, rate, e, normal, v):
        force = self.m[:, None] * self.gravity
        for share in (0.5 - np.sqrt(1.0 / 12.0), 0.5 + np.sqrt(1.0 / 12.0)):  # Gauss points
            at = (1.0 - share) * v[:-1] + share * v[1:]
            along = np.sum(at * e, axis=1)
            across = np.sum(at * normal, axis=1)
            drag = -0.5 * ((self.along * np.abs(along) * along)[:, None] * e +
                           (self.across * np.abs(across) * across)[:, None] * normal)
            force[:-1] += (1.0 - share) * drag
            force[1:] += share * drag
        force[-1] -= self.fly * np.linalg.norm(v[-1]) * v[-1]
        couple = self.bending * (np.diff(angle) + self.eta * np.diff(rate))
        on_link = np.zeros(self.n)
        on_link[:-1] += couple
        on_link[1:] -= couple
        pair = on_link[:, None] * normal / self.h
        force[1:] += pair
        force[:-1] -= pair
        return force

    def slope(self, _, y):
        angle, rate = y[:self.n], y[self.n:]
        e = np.column_stack([np.cos(angle), np.sin(angle)])
        normal = np.column_stack([-e[:, 1], e[:, 0]])
        free = self.forces(angle, rate, e, normal, self.velocities(angle, rate))
        inverse = 1.0 / self.m
        inverse[0] = 0.0
        g = free * inverse[:, None]
        g[0] = 0.0
        jump = np.diff(g, axis=0)
        bands = np.zeros((3, self.n))
        bands[1] = inverse[:-1] + inverse[1:]
        bands[0, 1:] = bands[2, :-1] = -np.sum(e[:-1] * e[1:], axis=1) * inverse[1:-1]
        tension = solve_banded((1, 1), bands, self.h * rate**2 + np.sum(e * jump, axis=1))
        pull = tension[:, None] * e
        acceleration = g.copy()
        acceleration[1:] -= pull * inverse[1:, None]
        acceleration[1:-1] += pull[1:] * inverse[1:-1, None]
        turning = np.sum(np.diff(acceleration, axis=0) * normal, axis=1) / self.h
        return np.concatenate([rate, turning])
