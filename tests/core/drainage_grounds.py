"""Ground of known shape for the tests of drainage."""

from __future__ import annotations

from typing import Callable, Sequence, Tuple

import numpy as np

from plugin.core.surface.tin import GRID, Tin
from tests.core.surfaces import ORIGIN, delaunay_tin, tin_of


def plane(seed: int = 1, east: float = 0.03, north: float = 0.05, count: int = 2000, side: float = 100.0) -> Tin:
    rng = np.random.default_rng(seed)
    xy = np.rint(rng.uniform(0, side, (count, 2)) / GRID) * GRID
    return delaunay_tin(xy, 10 + east * xy[:, 0] + north * xy[:, 1])


def valley(fall: float = 0.1) -> Tin:
    """A V-channel along x = 5 that falls southward, in a square of 10 m: z = |x - 5| / 2 + fall y."""
    rng = np.random.default_rng(2)
    side = rng.uniform(0, 4.7, (400, 2)) * [1, 10 / 4.7]
    bed = np.column_stack([np.full(101, 5.0), np.linspace(0, 10, 101)])
    corners = np.array([[0, 0], [10, 0], [10, 10], [0, 10.0]])
    xy = np.concatenate([side, [10.0, 0.0] + side * [-1, 1], bed, corners])
    xy = np.rint(xy / GRID) * GRID
    return delaunay_tin(xy, np.abs(xy[:, 0] - 5) / 2 + fall * xy[:, 1])


def faceted(corners: Sequence[Tuple[float, float, float]], faces: Sequence[Tuple[int, int, int]], cuts: int = 4) -> Tin:
    """Flat faces, each cut into ``cuts`` ** 2 triangles; corners at whole multiples of ``cuts`` * ``GRID``."""
    xyz, triangles = np.array(corners, float), []
    places = []
    for face in faces:
        a, b, c = xyz[list(face)]
        number = {}
        for i in range(cuts + 1):
            for j in range(cuts + 1 - i):
                number[i, j] = len(places)
                places.append(a + (b - a) * i / cuts + (c - a) * j / cuts)
        for i, j in number:
            if i + j < cuts:
                triangles.append([number[i, j], number[i + 1, j], number[i, j + 1]])
            if i + j < cuts - 1:
                triangles.append([number[i + 1, j], number[i + 1, j + 1], number[i, j + 1]])
    place = np.array(places)
    grid = np.rint(place[:, :2] / GRID).astype(np.int64)
    same, first, back = np.unique(grid, axis=0, return_index=True, return_inverse=True)
    return tin_of(same, place[first, 2], back.ravel()[np.array(triangles)])


def octagon() -> np.ndarray:
    """Corners (8, 2) of an octagon about (0, 0)."""
    return np.array([[8, 0], [6, 6], [0, 8], [-6, 6], [-8, 0], [-6, -6], [0, -8], [6, -6]], float)


def cone(height: float, cuts: int = 4) -> Tin:
    """Eight flat sides up to ``height`` (down to it when negative) in the middle of an octagon, about (20, 20)."""
    rim = octagon() + 20
    corners = [(20, 20, height)] + [(x, y, 0.0) for x, y in rim]
    return faceted(corners, [(0, 1 + i, 1 + (i + 1) % 8) for i in range(8)], cuts)


def gridded(height: Callable[[np.ndarray, np.ndarray], np.ndarray], columns: np.ndarray, rows: np.ndarray) -> Tin:
    """Squares cut by one diagonal, with ``height(x, y)`` at their corners."""
    x, y = (a.ravel() for a in np.meshgrid(columns, rows))
    number = np.arange(len(x)).reshape(len(rows), len(columns))
    a, b, c, d = number[:-1, :-1], number[:-1, 1:], number[1:, 1:], number[1:, :-1]
    triangles = np.concatenate([np.stack([a, b, c], -1).reshape(-1, 3), np.stack([a, c, d], -1).reshape(-1, 3)])
    grid = np.rint(np.column_stack([x, y]) / GRID).astype(np.int64)
    return tin_of(grid, np.asarray(height(x, y), float), triangles)


def shuffled(tin: Tin, seed: int) -> Tuple[Tin, np.ndarray]:
    """The same surface with its points and triangles in another order, and the new number of each vertex."""
    rng = np.random.default_rng(seed)
    order = rng.permutation(len(tin.vertices))
    number = np.argsort(order)
    triangles = number[tin.triangles][rng.permutation(len(tin.triangles))]
    triangles = np.array([np.roll(t, k) for t, k in zip(triangles, rng.integers(0, 3, len(triangles)))])
    return tin_of(tin.grid[order], tin.vertices[order, 2], triangles, tin.origin), number


def turned(tin: Tin) -> Tin:
    """The same surface turned a quarter counter-clockwise about its origin."""
    grid = np.column_stack([-tin.grid[:, 1], tin.grid[:, 0]])
    return tin_of(grid, tin.vertices[:, 2], tin.triangles, tin.origin)


def turn(xy: np.ndarray) -> np.ndarray:
    return np.column_stack([-xy[:, 1], xy[:, 0]])


def fivefold(tin: Tin, rotate: bool) -> Tin:
    """The surface five times as large in plan, and rotated by the angle of the 3-4-5 triangle, exactly on the grid."""
    x, y = tin.grid.T
    grid = np.column_stack([3 * x - 4 * y, 4 * x + 3 * y]) if rotate else 5 * tin.grid
    return tin_of(grid, tin.vertices[:, 2], tin.triangles, tin.origin)


def iris(rise: float) -> Tin:
    """A ring of triangles like the blades of an iris, slanted so that water straight to or from the middle crosses
    all in one sense around; it rises outward by ``rise`` a metre (falls when negative) about a pit (summit)."""
    blades = 32
    turn = 2 * np.pi * np.arange(blades) / blades
    inner = np.column_stack([np.cos(turn), np.sin(turn)]) * 3
    outer = np.column_stack([np.cos(turn + 0.7), np.sin(turn + 0.7)]) * 12
    xy = np.concatenate([[[0, 0]], inner, outer]) + 20
    z = rise * np.concatenate([[0], np.full(blades, 3.0), np.full(blades, 12.0)])
    triangles = []
    for i in range(blades):
        j = (i + 1) % blades
        a, b = (1 + i, 1 + j), (1 + blades + i, 1 + blades + j)
        triangles += [(0, *a), (a[0], b[0], a[1]), (b[0], b[1], a[1])]
    return tin_of(np.rint(xy / GRID).astype(np.int64), z, np.array(triangles))


def gutter(seed: int, cross: float = 0.05, fall: float = 0.01, sigma: float = 0.01) -> Tin:
    """A gutter along x = 25 that falls south between planes, with noise; points every half metre along it."""
    rng = np.random.default_rng(seed)
    xy = rng.uniform(0, 50, (6000, 2))
    bed = np.column_stack([np.full(101, 25.0), np.linspace(0, 50, 101)])
    xy = np.concatenate([xy[np.abs(xy[:, 0] - 25) > 0.35], bed])
    return delaunay_tin(xy, np.abs(xy[:, 0] - 25) * cross + fall * xy[:, 1] + rng.normal(0, sigma, len(xy)))


__all__ = [
    "ORIGIN",
    "cone",
    "faceted",
    "fivefold",
    "gridded",
    "gutter",
    "iris",
    "octagon",
    "plane",
    "shuffled",
    "turn",
    "turned",
    "valley",
]
