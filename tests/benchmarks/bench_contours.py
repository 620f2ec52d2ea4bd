"""Contours at 50 levels on a large TIN, against matplotlib's contour generator on the same triangles.

Both get the same ready triangulation, in one process, one after the other:
``python -m tests.benchmarks.bench_contours [POINTS]``.
"""

from __future__ import annotations

import sys
import time
from typing import Dict

import matplotlib._tri as _tri
import numpy as np
from matplotlib.tri import Triangulation
from scipy.spatial import Delaunay

from plugin.core.contours.lines import ContourOptions
from plugin.core.contours.trace import trace_contours
from plugin.core.surface.tin import GRID, Tin

LEVELS = 50


def rolling_ground(x: np.ndarray, y: np.ndarray, rng: np.random.Generator) -> np.ndarray:
    """Hills and hollows of some tens of metres' width with the noise of an RTK survey (15 mm)."""
    ground = 8 * np.sin(x / 90) * np.cos(y / 110) + 4 * np.sin(x / 37 + y / 53) + 1.5 * np.sin(x / 11) * np.sin(y / 13)
    return 100 + ground + rng.normal(0, 0.015, len(x))


def random_tin(n: int, seed: int = 1) -> Tin:
    """A TIN of ``n`` random points, one a square metre, triangulated by scipy."""
    rng = np.random.default_rng(seed)
    grid = np.unique(rng.integers(0, int(np.sqrt(n) / GRID), (n, 2)), axis=0)
    rng.shuffle(grid)
    xy = grid * GRID
    mesh = Delaunay(xy)
    return Tin(
        vertices=np.column_stack([xy, rolling_ground(xy[:, 0], xy[:, 1], rng)]),
        triangles=np.ascontiguousarray(mesh.simplices, dtype=np.int32),
        # scipy counts a neighbour by the corner opposite to it: corner i is opposite to edge i + 1.
        neighbours=np.ascontiguousarray(mesh.neighbors[:, [2, 0, 1]], dtype=np.int32),
        edge_kind=np.zeros(mesh.simplices.shape, dtype=np.uint8),
        grid=grid,
        origin=np.zeros(2),
        vertex_source=np.arange(len(xy)),
    )


def run(n: int = 1_000_000) -> Dict[str, float]:
    """Seconds of both, their ratio, and the length they drew; prints one line."""
    tin = random_tin(n)
    low, high = tin.height_range
    options = ContourOptions(interval=(high - low) / (LEVELS + 0.5), base=low)

    begin = time.perf_counter()
    contours = trace_contours(tin, options)
    ours = time.perf_counter() - begin
    levels = np.unique(contours.level)

    x, y, z = (np.ascontiguousarray(column) for column in tin.vertices.T)
    triangulation = Triangulation(x, y, tin.triangles)
    triangulation.neighbors  # noqa: B018  made beforehand, as ours come with the TIN
    begin = time.perf_counter()
    generator = _tri.TriContourGenerator(triangulation.get_cpp_triangulation(), z)
    made = [generator.create_contour(level) for level in levels]
    theirs = time.perf_counter() - begin

    # The vertices of the lines stand in for the lengths here; tests/core/test_contours.py compares those.
    points = sum(len(line) for level in made for line in (level[0] if isinstance(level, tuple) else level))
    assert len(levels) == LEVELS
    assert points == len(contours.xy), (points, len(contours.xy))
    print(
        f"contours {LEVELS} levels: ours {ours:.3f} s, matplotlib tricontour {theirs:.3f} s, ratio {ours / theirs:.3f}"
    )
    return {"ours": ours, "reference": theirs, "ratio": ours / theirs, "lines": len(contours), "points": points}


if __name__ == "__main__":
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
