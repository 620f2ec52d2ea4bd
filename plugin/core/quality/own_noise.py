"""How the heights of points repeat that a check has been over: for a surface that is built from a layer of them."""

from __future__ import annotations

from typing import Optional

import numpy as np

from ..features.find import find_features
from ..linework.constraints import Constraints, LineKind
from ..points.pointset import PointSet, Status
from ..progress import Progress, part, silent
from .crossings import breaks, find_meetings
from .noise import usual_noise
from .repeatability import Repeatability, repeatability
from .stretches import Fixed
from .walk import Walk, make_walk, walking_time
from .walk_check import shared_lines, with_found

_FEWEST = 20  # points of a walk


def own_noise(
    points: PointSet, constraints: Constraints, find_lines: bool = True, progress: Progress = silent
) -> Optional[Repeatability]:
    """How the heights of the walk repeat, None where the points show no walk.

    From the points that are used, neither flagged nor of a line, in the order of recording, measured as
    :func:`.walk_check.check_walk` does. ``constraints``: the lines at which the ground may step; ``find_lines``: those
    that the ground shows are not among them, and are looked for.
    """
    walked = (points.status == Status.USED) & ~points.alone
    walked &= np.isfinite(points.easting + points.northing + points.height)
    for line in constraints.lines:
        walked[line.points[line.points >= 0]] = False
    index = np.flatnonzero(walked)
    if len(index) < _FEWEST:
        return None
    plan = np.column_stack([points.easting[index], points.northing[index]])
    origin = np.floor(plan.min(axis=0))
    x, y = (plan - origin).T
    walk = make_walk(index, x, y, points.height[index])
    noise = usual_noise(walk)
    if not (np.isfinite(walk.spacing) and noise > 0):
        return None
    broken = breaks(walk, _segments(walk, points, constraints, origin, find_lines, part(progress, 0.0, 0.5)), noise)
    progress(0.6, "quality")
    meetings = find_meetings(walk, broken, noise)
    progress(0.8, "quality")
    return repeatability(walk, meetings, broken, walking_time(walk, points.time[index]), part(progress, 0.8, 1.0))


def _segments(
    walk: Walk, points: PointSet, constraints: Constraints, origin: np.ndarray, find_lines: bool, progress: Progress
) -> np.ndarray:
    """From vertex to vertex (k, 2, 2) of the breaklines, and of the lines that are found: plan, m from ``origin``."""
    lines = [line.xyz[:, :2] - origin for line in constraints.lines if line.kind & LineKind.BREAKLINE]
    known = [np.stack([xy[:-1], xy[1:]], axis=1) for xy in lines if np.isfinite(xy).all()]
    if find_lines:
        nothing = Fixed(np.empty((0, 3)), np.empty((0, 2), np.int64))
        found = with_found(nothing, shared_lines(find_features(points, progress=progress)), walk, points)
        known.append(found.xyz[found.lines][:, :, :2])
    return np.concatenate([np.empty((0, 2, 2)), *known])
