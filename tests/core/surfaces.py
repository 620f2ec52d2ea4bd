"""Surfaces for the tests of what is asked of a TIN."""

from __future__ import annotations

from typing import Callable, Optional

import numpy as np
from matplotlib.cbook import get_sample_data

from plugin.core.surface.delaunay import triangulate
from plugin.core.surface.mesh import twins_of
from plugin.core.surface.predicates import orientation
from plugin.core.surface.tin import GRID, Tin

ORIGIN = np.array([432_000.0, 5_765_000.0])


def tin_of(grid: np.ndarray, z: np.ndarray, triangles: np.ndarray, origin: np.ndarray = ORIGIN) -> Tin:
    """A TIN of given triangles (m, 3) over whole-number plan coordinates (n, 2)."""
    triangles = np.asarray(triangles, np.int32).reshape(-1, 3)
    twin = twins_of(triangles.ravel())
    grid = np.asarray(grid, np.int64)
    return Tin(
        vertices=np.column_stack([grid * GRID, z]),
        triangles=triangles,
        neighbours=np.where(twin >= 0, twin // 3, -1).astype(np.int32).reshape(-1, 3),
        edge_kind=np.zeros(triangles.shape, np.uint8),
        grid=grid,
        origin=origin,
        vertex_source=np.arange(len(grid)),
    )


def delaunay_tin(
    xy: np.ndarray, z: np.ndarray, origin: np.ndarray = ORIGIN, keep: Optional[Callable[..., np.ndarray]] = None
) -> Tin:
    """The Delaunay TIN of places (n, 2) in metres from ``origin``, not negative.

    ``keep(x, y)``: mask (m,) of the triangles that stay, from their centroids; vertices without a triangle are dropped.
    """
    grid, first = np.unique(np.rint(np.asarray(xy) / GRID).astype(np.int64), axis=0, return_index=True)
    z = np.asarray(z, float)[first]
    triangles = triangulate(*np.ascontiguousarray(grid.T)).vertex.reshape(-1, 3)
    if keep is not None:
        centre = grid[triangles].mean(axis=1) * GRID
        triangles = triangles[keep(centre[:, 0], centre[:, 1])]
        used = np.unique(triangles)
        triangles, grid, z = np.searchsorted(used, triangles), grid[used], z[used]
    assert np.all(orientation(grid[:, 0], grid[:, 1], *triangles.T) > 0)
    return tin_of(grid, z, triangles, origin)


def random_tin(n: int, seed: int, side: float = 100.0, decimals: int = 4, keep=None) -> Tin:
    """A hilly TIN of ``n`` random places in a square."""
    rng = np.random.default_rng(seed)
    xy = np.round(rng.uniform(0, side, (n, 2)), decimals)
    return delaunay_tin(xy, hills(*xy.T) + rng.normal(0, 0.2, n), keep=keep)


def hills(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    return 100 + 5 * np.sin(x / 17) * np.cos(y / 23) + 0.05 * x


def ring(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """A square of 100 m with a hole in the middle and a bite out of its east side: a concave rim."""
    hole = np.hypot(x - 50, y - 50) < 18
    return ~hole & ~((x > 75) & (np.abs(y - 30) < 12))


def real_ground() -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Places (n, 2) in metres and heights (n,) of a real hillside in the USA, and its grid (rows, columns).

    The elevation grid of matplotlib's sample data (jacksboro_fault_dem.npz), spaced 30 m here.
    """
    with np.load(get_sample_data("jacksboro_fault_dem.npz", asfileobj=False)) as data:
        grid = data["elevation"].astype(float)
    y, x = np.mgrid[: grid.shape[0], : grid.shape[1]] * 30.0
    return np.column_stack([x.ravel(), y[::-1].ravel()]), grid.ravel(), grid
