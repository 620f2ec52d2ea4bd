"""Small random terrains for the tests of contours, many of them in one TIN."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np
from scipy.spatial import Delaunay

from plugin.core.contours.lines import ContourOptions
from plugin.core.surface.tin import GRID, Tin
from plugin.core.units import LengthUnit

#: Contours every half foot, every second one (a whole foot) heavier, as of a small street survey.
HALF_FOOT = ContourOptions(interval=0.5, unit=LengthUnit.FOOT, index_every=2)

#: Terrains are squares of this side (m) in the cells of a square grid, twice as far apart.
SIDE = 10.0


@dataclass(frozen=True)
class Terrains:
    """``tin``: pieces that do not touch; ``of_vertex``: (n,) the terrain of each vertex."""

    tin: Tin
    count: int
    of_vertex: np.ndarray

    def of_place(self, xy: np.ndarray) -> np.ndarray:
        """The terrain in whose cell each place (k, 2) lies."""
        column, row = np.floor(xy.T / (2 * SIDE)).astype(np.int64)
        return row * cells_a_row(self.count) + column


def cells_a_row(count: int) -> int:
    return int(np.ceil(np.sqrt(count)))


def tin_of(xyz: np.ndarray, triangles: np.ndarray, marked: np.ndarray = np.empty((0, 2), int)) -> Tin:  # noqa: B008
    """A TIN of counter-clockwise triangles; ``marked``: pairs of vertices whose edges are breaklines."""
    a = np.asarray(triangles, dtype=np.int64)
    b, n = np.roll(a, -1, axis=1), len(xyz)
    edge, turned = (a * n + b).ravel(), (b * n + a).ravel()
    order = np.argsort(edge)
    place = order[np.minimum(np.searchsorted(edge, turned, sorter=order), len(edge) - 1)]
    keys = np.sort(np.asarray(marked, dtype=np.int64), axis=1)
    kind = np.isin(np.minimum(a, b) * n + np.maximum(a, b), keys[:, 0] * n + keys[:, 1])
    return Tin(
        vertices=np.array(xyz, dtype=float),
        triangles=a.astype(np.int32),
        neighbours=np.where(edge[place] == turned, place // 3, -1).reshape(-1, 3).astype(np.int32),
        edge_kind=kind.astype(np.uint8),
        grid=np.rint(np.asarray(xyz)[:, :2] / GRID).astype(np.int64),
        origin=np.array([432_000.0, 5_765_000.0]),
        vertex_source=np.arange(n),
    )


def delaunay_tin(xyz: np.ndarray, keep_triangle: np.ndarray | None = None) -> Tin:
    triangles = Delaunay(np.asarray(xyz)[:, :2]).simplices
    return tin_of(xyz, triangles if keep_triangle is None else triangles[keep_triangle])


def random_terrains(count: int, seed: int, ties: bool = False, breaklines: float = 0.0) -> Terrains:
    """``count`` terrains of 8 to 40 points.

    Heights are, by turns: hills with noise, nothing but noise, a tilted plane with noise, and steps
    like kerbs, from under one to a dozen metres high. With ``ties`` they are whole metres, so that
    levels meet vertices. ``breaklines``: share of the inner edges that are marked. Some rims are ragged
    and some terrains have holes, as triangles are left out at random in every third.
    """
    rng = np.random.default_rng(seed)
    of_vertex = np.repeat(np.arange(count), rng.integers(8, 41, count))
    grid = rng.integers(0, int(SIDE / GRID), (len(of_vertex), 2))
    # A third of the points are within a few millimetres of the one before, as along a vertical face.
    near = np.flatnonzero((rng.random(len(grid)) < 0.3) & (np.diff(of_vertex, prepend=-1) == 0))
    near = near[np.diff(near, prepend=-2) > 1]
    grid[near] = np.clip(grid[near - 1] + rng.integers(-40, 41, (len(near), 2)), 0, int(SIDE / GRID))
    cell = np.column_stack([of_vertex % cells_a_row(count), of_vertex // cells_a_row(count)])
    grid, first = np.unique(grid + cell * int(2 * SIDE / GRID), axis=0, return_index=True)
    of_vertex = of_vertex[first]
    xy = grid * GRID
    local = xy - 2 * SIDE * cell[first]
    height = _heights(local, of_vertex, count, rng)
    triangles = Delaunay(xy).simplices
    owner = of_vertex[triangles]
    keep = (owner[:, 0] == owner[:, 1]) & (owner[:, 1] == owner[:, 2])
    keep &= ~((rng.random(len(triangles)) < 0.1) & (owner[:, 0] % 3 == 0))
    corners = grid[triangles]
    one, two = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    keep &= one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0] > 0
    triangles = triangles[keep]
    marked = np.empty((0, 2), int)
    if breaklines:
        edges = np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]], triangles[:, [2, 0]]])
        edges, sides = np.unique(np.sort(edges, axis=1), axis=0, return_counts=True)
        marked = edges[(sides == 2) & (rng.random(len(edges)) < breaklines)]
    return Terrains(
        tin_of(np.column_stack([xy, np.rint(height) if ties else height]), triangles, marked), count, of_vertex
    )


def _heights(local: np.ndarray, of_vertex: np.ndarray, count: int, rng: np.random.Generator) -> np.ndarray:
    x, y = local.T
    wave, tilt = rng.uniform(0.3, 1.5, count)[of_vertex], rng.uniform(0, 1.2, (2, count))[:, of_vertex]
    size = 10 ** rng.uniform(-0.3, 0.8, count)[of_vertex]
    noise = rng.normal(0, 1, len(x))
    kinds = np.stack(
        [
            size * (np.sin(wave * x) * np.cos(wave * y) + 0.1 * noise),
            size * noise,
            tilt[0] * x + tilt[1] * y + 0.1 * noise,
            size * np.floor(tilt[0] * x) + 0.2 * tilt[1] * y + 0.01 * noise,
        ]
    )
    return kinds[of_vertex % 4, np.arange(len(x))]


def edges_of(tin: Tin, mask: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Ends (k, 2), (k, 2) in plan of the edges (m, 3) where ``mask`` holds."""
    triangle, edge = np.nonzero(mask)
    one, other = tin.triangles[triangle, edge], tin.triangles[triangle, (edge + 1) % 3]
    return tin.vertices[one, :2], tin.vertices[other, :2]
