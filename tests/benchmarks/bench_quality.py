"""Checking a large walked survey, against one Delaunay triangulation of its points by scipy.

Both in one process, one after the other: ``python -m tests.benchmarks.bench_quality [POINTS [KIND]]``. ``passes``: even
ground, one point in two hundred lifted; ``kerbs``: long streets with kerbs, crossed every 2.5 m; ``streets``: simulated
streets side by side, whose kerbs and ditches are walked along too; ``field``: natural ground.
"""

from __future__ import annotations

import resource
import sys
import time
from functools import partial
from typing import Callable, Dict

import numpy as np
from scipy.spatial import Delaunay

from plugin.core.points.pointset import PointSet, Status, make_points
from plugin.core.quality.check import check_survey
from tests.benchmarks.bench_contours import rolling_ground
from tests.benchmarks.bench_features import long_streets
from tests.core.simulated import simulate

SPACING, BETWEEN = 0.5, 4.0  # m, along and across the passes
RUN = 20  # points of a lifted pole
SIGMA = 0.015


def walked_survey(n: int, seed: int = 1) -> PointSet:
    """Passes to and fro over a square with a cross pass every 60 m; one point in two hundred is on a lifted pole."""
    rng = np.random.default_rng(seed)
    side = np.sqrt(n * SPACING / (1 / BETWEEN + 1 / 60))
    along = np.arange(0, side, SPACING)
    parts = []
    for apart, cross in ((BETWEEN, False), (60.0, True)):
        rows = np.arange(apart / 2, side, apart)
        u = np.tile(along, (len(rows), 1)) + rng.uniform(0, 0.05, (len(rows), len(along)))
        v = rows[:, None] + 0.15 * np.sin(u / 3.5 + rng.uniform(0, 6, (len(rows), 1)))
        u[1::2], v[1::2] = u[1::2, ::-1].copy(), v[1::2, ::-1].copy()
        x, y = (v, u) if cross else (u, v)
        parts.append(np.column_stack([x.ravel(), y.ravel()]))
    xy = np.vstack(parts)
    wander = np.repeat(rng.normal(0, SIGMA / 2, len(xy) // 150 + 1), 150)[: len(xy)]
    z = rolling_ground(xy[:, 0], xy[:, 1], rng) + wander
    for start in rng.integers(0, len(xy) - RUN, len(xy) // (200 * RUN)):
        z[start : start + RUN] += rng.uniform(0.1, 0.8)
    time_ = 1.75e9 + np.arange(len(xy)) * 0.42
    return make_points(xy[:, 0] + 5e5, xy[:, 1] + 5.7e6, z, time=time_, source_line=np.arange(len(xy)) + 1)


def side_by_side(family: str, n: int, seed: int = 7) -> PointSet:
    """Simulated surveys of a family, 130 m apart, turned and moved at random, walked one after the other."""
    rng = np.random.default_rng(seed)
    side = int(np.ceil(np.sqrt(n / 1500)))
    parts, start = [], 0.0
    while sum(len(part) for part in parts) < n:
        k = len(parts)
        one = simulate(family, 500 + k % 200).points
        turn = np.exp(1j * rng.uniform(0, 2 * np.pi))
        place = turn * ((one.easting - np.median(one.easting)) + 1j * (one.northing - np.median(one.northing)))
        place += complex(130 * (k % side), 130 * (k // side)) + complex(*rng.uniform(-5, 5, 2))
        seconds = start + 0.42 * np.arange(len(one))
        start = seconds[-1] + 30
        parts.append(np.column_stack([place.real + 5e5, place.imag + 5.7e6, one.height, 1.75e9 + seconds]))
    east, north, height, time_ = np.vstack(parts)[:n].T
    return make_points(east, north, height, time=time_, source_line=np.arange(n) + 1)


KINDS: Dict[str, Callable[[int], PointSet]] = {
    "passes": walked_survey,
    "kerbs": long_streets,
    "streets": partial(side_by_side, "street"),
    "field": partial(side_by_side, "field"),
}


def run(n: int = 1_000_000, kind: str = "passes") -> Dict[str, float]:
    """Seconds of both, their ratio and that of their processor time, and the most memory; prints one line.

    On a machine that others use too, the ratio of processor time tells more.
    """
    points = KINDS[kind](n)
    begin, busy = time.perf_counter(), time.process_time()
    Delaunay(np.column_stack([points.easting - 5e5, points.northing - 5.7e6]))
    theirs, their_busy = time.perf_counter() - begin, time.process_time() - busy
    begin, busy = time.perf_counter(), time.process_time()
    check = check_survey(points)
    ours, our_busy = time.perf_counter() - begin, time.process_time() - busy
    memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1e6
    rejected = int(np.count_nonzero(check.points.status == Status.REJECTED))
    print(
        f"check of {len(points)} points, {kind}: ours {ours:.1f} s, one scipy Delaunay {theirs:.1f} s, "
        f"ratio {ours / theirs:.2f}, of processor time {our_busy / their_busy:.2f}, rejected {rejected}, "
        f"at most {memory:.2f} GB at once"
    )
    ratios = {"ratio": ours / theirs, "processor_ratio": our_busy / their_busy}
    return {"ours": ours, "reference": theirs, **ratios, "rejected": rejected, "memory_gb": memory}


if __name__ == "__main__":
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000, *sys.argv[2:3])
