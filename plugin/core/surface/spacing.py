"""How densely a survey was recorded: along the walk, and from pass to pass."""

from __future__ import annotations

import numpy as np

from ..points.pointset import PointSet

#: Records nearer than this (metres) are repetitions of one place, not steps of the walk.
_STANDING = 0.02


def recorded_spacing(points: PointSet) -> float:
    """Median plan distance (m) between used points that follow each other in the file; nan if there are none.

    The median bears with the jumps from line to line; steps below 2 cm (standing still) do not count.
    """
    used = points.used
    step = np.hypot(np.diff(points.easting[used]), np.diff(points.northing[used]))
    step = step[step >= _STANDING]
    return float(np.median(step)) if len(step) else float("nan")


def pass_spacing(lengths: np.ndarray) -> float:
    """Third quartile of the longest edge of each triangle, from edge lengths (m, 3) in metres; nan without triangles.

    Where points were stored while walking to and fro, nearly every triangle has one short edge along a
    pass and two that reach the next one, so this is about the distance of the passes; on a grid it is the
    diagonal of a cell. Up to a quarter of triangles that span gaps or the outline do not move it much,
    nor do many small ones along breaklines.
    """
    return float(np.percentile(lengths.max(axis=1), 75)) if len(lengths) else float("nan")
