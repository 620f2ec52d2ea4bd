"""Contours finished for the sheet on a large TIN: heights softened, traced, smoothed, labelled; and spot heights.

Against matplotlib's contour generator on the same ready triangles at the same 50 levels, which traces
only. One process, one after the other: ``python -m tests.benchmarks.bench_contour_finish [POINTS]``.
"""

from __future__ import annotations

import sys
import time
from typing import Dict

import matplotlib._tri as _tri
import numpy as np
from matplotlib.tri import Triangulation

from plugin.core.contours.labels import place_labels
from plugin.core.contours.lines import ContourOptions
from plugin.core.contours.smooth import smooth_contours
from plugin.core.contours.soften import soften_heights
from plugin.core.contours.spots import find_spots
from plugin.core.contours.trace import trace_contours

from .bench_contours import LEVELS, random_tin

MAX_SHIFT, HEIGHT_TOLERANCE = 0.25, 0.03
LABEL_SPACING, LABEL_HEIGHT = 50.0, 1.5


def run(n: int = 1_000_000) -> Dict[str, float]:
    """Seconds of each step, and the ratio of tracing, smoothing and labels to matplotlib's; prints one line.

    Softening the heights beforehand is a choice and stands apart, as do the spot heights.
    """
    tin = random_tin(n)
    low, high = tin.height_range
    options = ContourOptions(interval=(high - low) / (LEVELS + 0.5), base=low)

    begin = time.perf_counter()
    contours = trace_contours(tin, options)
    traced = time.perf_counter()
    smooth = smooth_contours(contours, tin, MAX_SHIFT)
    smoothed = time.perf_counter()
    labels = place_labels(smooth.contours, LABEL_SPACING, LABEL_HEIGHT, only_index=False)
    labelled = time.perf_counter()
    spots = find_spots(tin, 0.5 * options.interval)
    spotted = time.perf_counter()
    soften_heights(tin, HEIGHT_TOLERANCE)
    softened = time.perf_counter()
    levels = np.unique(contours.level)

    x, y, z = (np.ascontiguousarray(column) for column in tin.vertices.T)
    triangulation = Triangulation(x, y, tin.triangles)
    triangulation.neighbors  # noqa: B018  made beforehand, as ours come with the TIN
    start = time.perf_counter()
    generator = _tri.TriContourGenerator(triangulation.get_cpp_triangulation(), z)
    for level in levels:
        generator.create_contour(level)
    theirs = time.perf_counter() - start

    assert len(levels) == LEVELS
    assert 0 < smooth.achieved_shift <= MAX_SHIFT + 1e-12
    ours = labelled - begin
    print(
        f"contours {LEVELS} levels: traced {traced - begin:.3f} s, smoothed {smoothed - traced:.3f} s, "
        f"labelled {labelled - smoothed:.3f} s, together {ours:.3f} s; matplotlib tricontour {theirs:.3f} s, "
        f"ratio {ours / theirs:.3f}; spot heights {spotted - labelled:.3f} s, "
        f"heights softened {softened - spotted:.3f} s"
    )
    return {
        "trace": traced - begin,
        "smooth": smoothed - traced,
        "label": labelled - smoothed,
        "spots": spotted - labelled,
        "soften": softened - spotted,
        "reference": theirs,
        "ratio": ours / theirs,
        "points": len(contours.xy),
        "smooth_points": len(smooth.contours.xy),
        "labels": len(labels),
        "spot_heights": len(spots),
    }


if __name__ == "__main__":
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
