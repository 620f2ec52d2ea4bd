"""Cross-sections, profile and grades on a large TIN, against the time scipy needs to triangulate the points.

``python -m tests.benchmarks.bench_alignment [POINTS]``. The bar for 1,000 cross-sections of 1,000,000 points: 2 s, or
half of scipy's time where that is longer.
"""

from __future__ import annotations

import sys
import time
from typing import Dict

import numpy as np

from plugin.core.alignment.grades import crossfalls, grades
from plugin.core.alignment.line import make_alignment
from plugin.core.alignment.profile import make_profile
from plugin.core.alignment.sections import cut_sections

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


if __name__ == "__main__":
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
