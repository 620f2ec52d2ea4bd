"""Cross-sections, profile and grades on a large TIN, against the time scipy needs to triangulate the points.

``python -m tests.benchmarks.bench_alignment [POINTS]``. The bar for 1,000 cross-sections of 1,000,000 points: 2 s, or
half of scipy's time where that is longer.
"""

from __future__ import annotations

import sys
import time
from typing import Dict

import numpy as np
from scipy.spatial import Delaunay

from plugin.core.alignment.grades import crossfalls, grades
from plugin.core.alignment.line import make_alignment
from plugin.core.alignment.noise import survey_noise
from plugin.core.alignment.profile import make_profile
from plugin.core.alignment.sections import cut_sections
from plugin.core.alignment.study import RoadOptions, study_road
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import build_surface

from .bench_contours import random_tin

SECTIONS = 1000
HALF_WIDTH = 25.0


def winding_line(side: float) -> np.ndarray:
    """A line (k, 2) from corner to corner with bends of 100 m and more."""
    along = np.linspace(0.05, 0.95, 400)
    swing = 0.04 * side * np.sin(along * 12)
    return side * np.column_stack([along, along]) + swing[:, None] * np.array([-0.7, 0.7])


def run(n: int = 1_000_000) -> Dict[str, float]:
    begin = time.perf_counter()
    tin = random_tin(n)  # its triangulation is scipy's
    built = time.perf_counter() - begin
    line = make_alignment(winding_line(np.sqrt(n)), "bench")
    times = {}
    for name, work in (
        ("sections", lambda: cut_sections(line, np.linspace(0, line.length, SECTIONS), 25.0, 25.0, [("ground", tin)])),
        ("profile", lambda: make_profile(line, [("ground", tin)])),
        ("grades", lambda: grades(line, tin, 0.015, 5.0)),
        ("crossfalls", lambda: crossfalls(line, tin, 0.015, -3.0, 3.0, 5.0)),
    ):
        begin = time.perf_counter()
        result = work()
        times[name] = time.perf_counter() - begin
        if name == "sections":
            assert len(np.unique(result.cuts[0].section)) == SECTIONS
    said = ", ".join(f"{name} {seconds:.2f} s" for name, seconds in times.items())
    print(f"alignment on {n:,} points: {SECTIONS} {said} (bar for sections 2 s; making the TIN by scipy {built:.1f} s)")
    return {**times, "reference": built}


def run_road(n: int = 200_000) -> Dict[str, float]:
    """The whole study of 10 km of crowned road, points in passes along.

    The bar: one scipy Delaunay of the same points or 5 s.
    """
    rng = np.random.default_rng(4)
    offsets = np.linspace(-5.0, 5.0, 10)
    s = np.tile(np.linspace(0, 10_000.0, n // 10), 10)
    o = np.repeat(offsets, n // 10) + rng.normal(0, 0.1, len(s))
    z = 100 + 20 * np.sin(s / 600) - 0.025 * np.abs(o) + rng.normal(0, 0.012, len(s))
    points = make_points(s + 5e5, o + 5.7e6, z, time=1.7e9 + np.arange(len(s)) * 0.4)
    begin = time.perf_counter()
    Delaunay(np.column_stack([s, o]))
    theirs = time.perf_counter() - begin
    tin = build_surface(points).tin
    line = make_alignment(np.column_stack([np.linspace(5e5, 5e5 + 10_000, 101), np.full(101, 5.7e6)]), "road")
    noise = survey_noise(line, tin, points.time, 0.015, 0.009)
    begin = time.perf_counter()
    study = study_road(line, [("ground", tin)], noise, RoadOptions(lane=(-3.0, 3.0)))
    ours = time.perf_counter() - begin
    crowned = float(study.crossfalls.crowned.mean())
    print(f"study of 10 km of road from {n:,} points: {ours:.1f} s (bar 5 s or {theirs:.1f} s), crown in {crowned:.0%}")
    return {"ours": ours, "reference": theirs}


if __name__ == "__main__":
    run_road()
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
