"""A grid of heights from a large TIN, against scipy's linear interpolator on the same triangles.

Both get the same ready triangulation and the same cells, in one process, one after the other:
``python -m tests.benchmarks.bench_raster [POINTS]``.
"""

from __future__ import annotations

import sys
import time
import tracemalloc
from typing import Dict, Tuple

import numpy as np
from scipy.interpolate import LinearNDInterpolator
from scipy.spatial import Delaunay

from plugin.core.surface.raster import GridFrame, centres, sample_grid
from plugin.core.surface.tin import GRID, Tin

from .bench_contours import rolling_ground

SIDE = 1000
BAR = 0.1
TOLERANCE = 1e-9
LARGE_SIDE = 4000
LARGE_BAR_GIB = 1.0


def run(n: int = 1_000_000, side: int = SIDE, large_side: int = LARGE_SIDE) -> Dict[str, float]:
    """Seconds of both, their ratio, the largest difference and the memory of a large grid; prints them."""
    mesh, tin = _ground(n)
    extent = float(tin.vertices[:, :2].max())
    frame = GridFrame(0.0, 0.0, extent / side, side, side)

    begin = time.perf_counter()
    ours_grid = sample_grid(tin, *frame)
    ours = time.perf_counter() - begin

    places = np.stack(np.meshgrid(*centres(frame)), -1)
    begin = time.perf_counter()
    theirs_grid = LinearNDInterpolator(mesh, tin.vertices[:, 2])(places)
    theirs = time.perf_counter() - begin

    assert not np.any(np.isnan(ours_grid) & ~np.isnan(theirs_grid))
    assert np.count_nonzero(np.isnan(ours_grid) != np.isnan(theirs_grid)) < 10  # ours counts 0.1 mm beside the rim in
    difference = float(np.nanmax(np.abs(ours_grid - theirs_grid)))
    assert difference <= TOLERANCE, difference
    print(
        f"raster {side} x {side} from {len(tin.vertices):,} points: ours {ours:.3f} s, "
        f"scipy LinearNDInterpolator {theirs:.3f} s, ratio {ours / theirs:.4f} (bar {BAR}), "
        f"largest difference {difference:.1e} m"
    )
    del theirs_grid, places
    gib, seconds = _large(tin, extent, large_side)
    print(f"raster {large_side} x {large_side}: {seconds:.3f} s, {gib:.3f} GiB above the TIN (bar {LARGE_BAR_GIB})")
    return {
        "ours": ours,
        "reference": theirs,
        "ratio": ours / theirs,
        "difference": difference,
        "large_seconds": seconds,
        "large_gib": gib,
    }


def _ground(n: int) -> Tuple[Delaunay, Tin]:
    """``n`` random points, about one a square metre, triangulated by scipy, and the same triangles as a TIN."""
    rng = np.random.default_rng(1)
    grid = np.unique(rng.integers(0, int(np.sqrt(n) / GRID), (n, 2)), axis=0)
    rng.shuffle(grid)
    xy = grid * GRID
    mesh = Delaunay(xy)
    tin = Tin(
        vertices=np.column_stack([xy, rolling_ground(xy[:, 0], xy[:, 1], rng)]),
        triangles=np.ascontiguousarray(mesh.simplices, dtype=np.int32),
        # scipy counts a neighbour by the corner opposite to it: corner i is opposite to edge i + 1.
        neighbours=np.ascontiguousarray(mesh.neighbors[:, [2, 0, 1]], dtype=np.int32),
        edge_kind=np.zeros(mesh.simplices.shape, dtype=np.uint8),
        grid=grid,
        origin=np.zeros(2),
        vertex_source=np.arange(len(xy)),
    )
    return mesh, tin


def _large(tin: Tin, extent: float, side: int) -> Tuple[float, float]:
    """GiB of numpy's and Python's memory at the peak above what is held with the TIN, and the seconds taken."""
    tracemalloc.start()
    begin = time.perf_counter()
    grid = sample_grid(tin, 0.0, 0.0, extent / side, side, side)
    seconds = time.perf_counter() - begin
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert np.count_nonzero(np.isfinite(grid)) > 0.99 * side * side
    return peak / 2**30, seconds


if __name__ == "__main__":
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
