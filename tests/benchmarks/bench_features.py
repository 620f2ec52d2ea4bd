"""Lines found without codes: every bar over many seeds, and speed against one Delaunay triangulation by scipy.

``python -m tests.benchmarks.bench_features [SEEDS [POINTS]]``; 0 points leaves out the speed.
"""

from __future__ import annotations

import sys
import time
from dataclasses import replace
from itertools import product
from typing import Callable, Dict, List

import numpy as np
from scipy.spatial import Delaunay

from plugin.core.features.find import find_features
from plugin.core.points.pointset import PointSet, make_points
from tests.core.line_surfaces import score_surface
from tests.core.simulated_lines import FAMILIES, NATURAL, Site, ditch, score, street
from tests.core.simulated_places import PLACES

SEEDS = 30


def only_bottom(site: Site) -> Site:
    """The same site, asked for the bottom of its ditch alone."""
    nowhere = [replace(line, asked=line.asked & (line.kind != "top")) for line in site.lines]
    return replace(site, lines=tuple(nowhere))


def groups() -> Dict[str, Callable[[int], Site]]:
    """What each bar is measured on."""
    result: Dict[str, Callable[[int], Site]] = {
        f"kerbs {height} mm": lambda seed, h=height: street(seed, height=h / 1000) for height in (60, 80, 100, 120, 150)
    }
    for height, walk, between in product((60, 80, 120), ("square", "oblique", "mixed"), (2, 3, 4, 5)):
        result[f"{height} mm {walk} {between} m"] = lambda seed, h=height, w=walk, b=between: street(
            seed, height=h / 1000, between=float(b), walk=w
        )
    result["bottom, crossed too"] = lambda seed: only_bottom(ditch(seed, walk="bottom"))
    result["bottom, along"] = lambda seed: only_bottom(ditch(seed, walk="along"))
    return {**result, **FAMILIES, **PLACES}


def run_sites(seeds: int = SEEDS) -> None:
    """One line for each group of sites."""
    for name, make in groups().items():
        total = None
        for seed in range(seeds):
            site = make(seed)
            one = score(site, find_features(site.points))
            total = one if total is None else total + one
        assert total is not None
        print(f"{name:20} {total.told()}", flush=True)
        if name in NATURAL:
            assert total.drawn <= total.walked / 1000


def run_surfaces(seeds: int = SEEDS) -> None:
    """What the lines do to surfaces of streets."""
    makers = {"120 mm every 2 m": lambda seed: street(seed, height=0.12, between=2.0)}
    for name in ("square", "oblique", "mixed", "along", "junction"):
        makers[name] = FAMILIES[name]
    for name, make in makers.items():
        total = None
        for seed in range(seeds):
            site = make(seed)
            one = score_surface(site, find_features(site.points))
            total = one if total is None else total + one
        assert total is not None
        print(f"{name:20} {total.told()}", flush=True)


def long_streets(n: int, seed: int = 1) -> PointSet:
    """Parallel streets of 600 m with kerbs, each crossed every 2.5 m."""
    random = np.random.default_rng(seed)
    reach, half, between, length, face = 9.5, 3.5, 2.5, 600.0, 0.04
    v = np.arange(-reach, reach, 0.5)
    rows = np.arange(0, length, between)
    parts: List[np.ndarray] = []
    count, number = 0, 0
    while count < n:
        u = np.repeat(rows, len(v)) + random.normal(0, 0.05, len(rows) * len(v))
        across = np.tile(v, (len(rows), 1)) + random.uniform(-0.25, 0.25, (len(rows), 1))
        across[1::2] = across[1::2, ::-1].copy()
        across = across.ravel() + random.normal(0, 0.02, across.size)
        height = random.uniform(0.08, 0.15)
        step = height * np.clip((np.abs(across) - half) / face, 0, 1)
        z = 0.01 * u + 0.3 * np.sin(u / 40) - 0.02 * np.minimum(np.abs(across), half) + step
        drift = np.repeat(np.cumsum(random.normal(0, 0.002, len(rows))), len(v))
        z = z + drift + random.normal(0, 0.012, len(z))
        parts.append(np.column_stack([u, across + 30.0 * number, z]))
        count += len(z)
        number += 1
    xyz = np.vstack(parts)[:n]
    return make_points(xyz[:, 0] + 5e5, xyz[:, 1] + 5.7e6, xyz[:, 2] + 100)


def passes_with_kerbs(n: int, kerbs: bool = True) -> PointSet:
    """Passes 2 m apart over a square, across a kerb every 9 m or over even waves."""
    random = np.random.default_rng(2)
    rows = int(np.sqrt(n / 4))
    v = np.arange(4 * rows) * 0.5
    x = np.repeat(np.arange(rows) * 2.0, len(v)) + random.normal(0, 0.03, rows * len(v))
    y = np.tile(v, (rows, 1))
    y[1::2] = y[1::2, ::-1].copy()
    y = y.ravel() + random.normal(0, 0.03, y.size)
    ground = 0.12 * (np.floor(y / 9) % 2) if kerbs else 2 * np.sin(x / 30) * np.cos(y / 40)
    return make_points(x + 5e5, y + 5.7e6, 100 + ground + random.normal(0, 0.012, len(x)))


def uniform(n: int, walked: bool) -> PointSet:
    """Places at random over a square, in any order or as someone walks strips of 2 m."""
    random = np.random.default_rng(3)
    xy = random.uniform(0, np.sqrt(n), (n, 2))
    if walked:
        strip = (xy[:, 0] / 2).astype(np.int64)
        xy = xy[np.lexsort((np.where(strip % 2, -xy[:, 1], xy[:, 1]), strip))]
    return make_points(xy[:, 0] + 5e5, xy[:, 1] + 5.7e6, 100 + random.normal(0, 0.015, n))


SPEEDS: Dict[str, Callable[[int], PointSet]] = {
    "streets": long_streets,
    "passes": lambda n: passes_with_kerbs(n, kerbs=False),
    "kerbs all over": passes_with_kerbs,
    "uniform, walked": lambda n: uniform(n, walked=True),
    "uniform": lambda n: uniform(n, walked=False),
}


def run_speed(kind: str, n: int = 1_000_000) -> Dict[str, float]:
    """Seconds of processor time of both, in one process, and their ratio; prints one line."""
    points = SPEEDS[kind](n)
    n = len(points)
    busy = time.process_time()
    Delaunay(np.column_stack([points.easting - 5e5, points.northing - 5.7e6]))
    theirs = time.process_time() - busy
    busy = time.process_time()
    features = find_features(points)
    ours = time.process_time() - busy
    length = sum(line.length for line in features.strong)
    print(
        f"{kind}, features of {n} points: ours {ours:.1f} s, one scipy Delaunay {theirs:.1f} s (processor time), ratio "
        f"{ours / theirs:.2f}; {len(features.strong)} strong lines of {length / 1000:.1f} km"
    )
    return {"ours": ours, "theirs": theirs, "ratio": ours / theirs}


if __name__ == "__main__":
    many = int(sys.argv[1]) if len(sys.argv) > 1 else SEEDS
    points_of_speed = int(sys.argv[2]) if len(sys.argv) > 2 else 1_000_000
    for kind in SPEEDS if points_of_speed else ():
        run_speed(kind, points_of_speed)
    if many:
        run_sites(many)
        run_surfaces(many)
