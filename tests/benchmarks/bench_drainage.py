"""All pits, ponds and catchments of a large TIN, against the time scipy takes to triangulate its points.

The ground is rolling, with the noise of an RTK survey. Bound: 3 times scipy's time.
``python -m tests.benchmarks.bench_drainage [POINTS]``.
"""

from __future__ import annotations

import sys
import time
from typing import Dict

from scipy.spatial import Delaunay

from plugin.core.drainage.catchments import find_catchments
from plugin.core.drainage.fates import find_fates
from plugin.core.drainage.flow import build_flow
from plugin.core.drainage.ponds import PondOptions, find_ponds

from .bench_contours import random_tin

BOUND = 3.0


def run(n: int = 1_000_000) -> Dict[str, float]:
    """Seconds of each step and of scipy, their ratio and what was found; prints one line."""
    tin = random_tin(n)
    begin = time.perf_counter()
    Delaunay(tin.vertices[:, :2])
    scipy = time.perf_counter() - begin

    marks = [time.perf_counter()]
    flow = build_flow(tin)
    marks.append(time.perf_counter())
    ponds = find_ponds(flow, PondOptions(sigma=0.015))
    marks.append(time.perf_counter())
    fates = find_fates(flow)
    marks.append(time.perf_counter())
    catchments = find_catchments(fates, ponds)
    marks.append(time.perf_counter())
    ways, pond, fate, catch = (b - a for a, b in zip(marks, marks[1:]))
    ours = marks[-1] - marks[0]
    assert abs(catchments.area.sum() - tin.plan_area) < 1e-9 * tin.plan_area
    print(
        f"drainage, {n:,} points: {ours:.1f} s (ways {ways:.1f}, ponds {pond:.1f}, division {fate:.1f}, "
        f"catchments {catch:.1f}); scipy's Delaunay {scipy:.1f} s; ratio {ours / scipy:.2f} (bound {BOUND:g}); "
        f"{len(flow.pits):,} pits, {len(ponds):,} ponds, {len(catchments):,} catchments, {fates.cuts} circles"
    )
    return {"ours": ours, "scipy": scipy, "ratio": ours / scipy, "pits": len(flow.pits), "ponds": len(ponds)}


if __name__ == "__main__":
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
