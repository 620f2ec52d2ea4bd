"""Points that stand in found steps: in the surface the line stands for them.

The heights of foot and top are those of many points, smoothed along the line; each single one beside them has its own
noise, and between such a point and the line the surface would rise and fall by it: small closed contours all along a
kerb.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Sequence, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..features.ground_lines import places_along
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.pointset import MARKS, PointSet, Reason

STANDING = Text(
    "found_lines.standing",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points stand in found steps and agree with them in height; the lines stand for them in the surface. "
        "A point whose status was changed by hand stays.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "One point stands in a found step and agrees with it in height; the line stands for it in the surface. "
        "If its status were changed by hand, it would stay.",
    ),
)

#: So far (m) from foot or top a point stands in the line, so near it may be on either side of the step, and so far it
#: may lie past an end: the pass that crosses there wanders about it.
BESIDE, BETWEEN, PAST = 1.25, 0.4, 0.5
#: A height agrees with that of the line within so much (m), and a cross slope (m/m) of so much.
AGREES, SLOPE = 0.05, 0.05


def stand_in(points: PointSet, steps: Sequence[np.ndarray]) -> Tuple[PointSet, Tuple[Message, ...]]:
    """The points with the mark ``IN_LINE`` where one of ``steps``, courses (k, 3) of foot or top, stands for them.

    Such a point lies within ``BESIDE`` metres of foot or top and agrees with the nearer of both in height; within
    ``BETWEEN`` metres it may have any height between them. Points that no such line stands for lose the mark.
    """
    marked = np.zeros(len(points), bool)
    asked = np.flatnonzero(points.used & np.isfinite(points.easting + points.northing + points.height))
    if len(steps) and len(asked):
        xyz = np.column_stack([points.easting[asked], points.northing[asked], points.height[asked]])
        marked[asked] = _agree(xyz, steps)
    reasons = points.reasons & ~np.uint32(MARKS)
    reasons[marked] |= np.uint32(Reason.IN_LINE)
    result = replace(points, reasons=reasons)
    count = int(np.count_nonzero(result.in_line))
    return result, (message(STANDING, count=count),) if count else ()


def _agree(xyz: np.ndarray, steps: Sequence[np.ndarray]) -> np.ndarray:
    """Mask (n,) of the places ``xyz`` (n, 3) that agree with the courses beside them."""
    line = places_along(steps)
    tree = cKDTree(line[:, :2])
    away, nearest = tree.query(xyz[:, :2], distance_upper_bound=BESIDE)
    result = np.zeros(len(xyz), bool)
    near = np.flatnonzero(np.isfinite(away))
    near = near[~_beyond(xyz[near], line[nearest[near]], steps)]
    off = np.abs(xyz[near, 2] - line[nearest[near], 2])
    result[near] = off <= AGREES + SLOPE * away[near]
    within = near[(away[near] <= BETWEEN) & ~result[near]]
    for i, places in zip(within.tolist(), tree.query_ball_point(xyz[within, :2], BETWEEN)):
        height = line[places, 2]
        result[i] = height.min() - AGREES <= xyz[i, 2] <= height.max() + AGREES
    return result


def _beyond(xyz: np.ndarray, nearest: np.ndarray, steps: Sequence[np.ndarray]) -> np.ndarray:
    """Mask (n,) of the places well past an end of the course which comes nearest to them at ``nearest`` (n, 3)."""
    end = np.array([course[at, :2] for course in steps for at in (0, -1)])
    inward = np.array([course[at, :2] for course in steps for at in (1, -2)]) - end
    away, which = cKDTree(end).query(nearest[:, :2])
    along = ((xyz[:, :2] - end[which]) * inward[which]).sum(axis=1)
    result: np.ndarray = (away == 0) & (along < -PAST * np.hypot(*inward[which].T))
    return result
