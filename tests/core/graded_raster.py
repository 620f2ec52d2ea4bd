"""Grading on a raster, with nothing shared with the program: distances to outlines, cell by cell."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np
from scipy import ndimage

from plugin.core.surface.locate import heights_at
from plugin.core.surface.predicates import orientation
from plugin.core.surface.tin import Tin
from tests.core.surfaces import ORIGIN


@dataclass
class Wanted:
    """An outline (k, 2) in metres from ``ORIGIN`` on a plane (height at the origin, rise east, rise north), metres out
    for each metre of cut and of fill."""

    ring: np.ndarray
    plane: Tuple[float, float, float]
    cut_run: float
    fill_run: float

    def level(self, x, y):  # type: ignore[no-untyped-def]
        return self.plane[0] + self.plane[1] * x + self.plane[2] * y


def distance(x: np.ndarray, y: np.ndarray, ring: np.ndarray) -> np.ndarray:
    """Distance of places from a ring's rim, 0 inside."""
    away, inside = np.full(x.shape, np.inf), np.zeros(x.shape, bool)
    for (ax, ay), (bx, by) in zip(ring, np.roll(ring, -1, axis=0)):
        dx, dy = bx - ax, by - ay
        t = np.clip(((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy), 0, 1)
        away = np.minimum(away, np.hypot(x - ax - t * dx, y - ay - t * dy))
        if ay != by:
            inside ^= ((ay > y) != (by > y)) & (x < ax + (y - ay) * dx / dy)
    away[inside] = 0
    return away


def graded(ground: np.ndarray, x: np.ndarray, y: np.ndarray, pads: List[Wanted]) -> np.ndarray:
    """The ground (r, c) with level pads graded into it one after another: what hangs together with each."""
    for pad in pads:
        away, level = distance(x, y, pad.ring), pad.level(x, y)
        wanted = np.clip(ground, level - away / pad.fill_run, level + away / pad.cut_run)
        moved = (np.abs(wanted - ground) > 0) | (away == 0)
        label = ndimage.label(moved)[0]
        own = np.unique(label[(away == 0) & (label > 0)])
        ground = np.where(np.isin(label, own), wanted, ground)
    return ground


def cells(side: float, size: float) -> Tuple[np.ndarray, np.ndarray]:
    s = (np.arange(round(side / size)) + 0.5) * size
    x, y = np.meshgrid(s, s)
    return x, y


def heights(tin: Tin, x: np.ndarray, y: np.ndarray) -> np.ndarray:
    found: np.ndarray = heights_at(tin, np.column_stack([x.ravel(), y.ravel()]) + ORIGIN).reshape(x.shape)
    return found


def check_sound(tin: Tin, plan_area: float) -> None:
    """A valid surface: neighbours agree, no edge is used twice, every triangle turns left, the area is whole."""
    edge = {}
    for t, corners in enumerate(tin.triangles.tolist()):
        for k in range(3):
            key = (corners[k], corners[(k + 1) % 3])
            assert key not in edge, "an edge is used twice"
            edge[key] = t
    for (a, b), t in edge.items():
        k = tin.triangles[t].tolist().index(a)
        assert tin.neighbours[t, k] == edge.get((b, a), -1)
    assert np.all(orientation(tin.grid[:, 0], tin.grid[:, 1], *tin.triangles.T) > 0)
    assert np.all(np.isfinite(tin.vertices))
    assert len(np.unique(tin.grid, axis=0)) == len(tin.grid)
    np.testing.assert_allclose(tin.plan_area, plan_area, rtol=0, atol=1e-3)
