"""Which courses are lines: regular enough, sharp enough, and not another's shadow."""

from __future__ import annotations

from typing import List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .alongside import LEAST_RUN
from .candidates import CONCAVE, STEEP_STEP, STEP
from .courses import Course
from .nodes import Nodes
from .passes import Passes
from .segments import Segments

#: Points of the near and of the far stretch on either side of a bend.
STRETCH = 3
#: A sharp bend has done so much (share) of its turning near its place; a smooth valley has not.
SHARP = 0.62
#: The sizes along a line differ at most so much (share, one robust standard deviation) beside their noise.
STEADY_STEP, STEADY_BEND = 0.35, 0.40
#: Where so large a share of a line's bends have three points on both sides, their sizes differ no more than this.
WELL_SHARE, STEADY_WELL = 0.4, 0.14
#: A bend so near a step (m) is its foot or top.
SHADOW = 0.7


def bend_near_and_far(passes: Passes, nodes: Nodes) -> Tuple[np.ndarray, np.ndarray]:
    """Change of slope (n,) over the nearest points on both sides, and over those beyond; nan where there are none."""
    sign = np.where(nodes.kind == CONCAVE, 1.0, -1.0)
    near = _slope(passes, nodes, 0, True) - _slope(passes, nodes, 0, False)
    far = _slope(passes, nodes, STRETCH, True) - _slope(passes, nodes, STRETCH, False)
    return sign * near, sign * far


def _slope(passes: Passes, nodes: Nodes, skip: int, ahead: bool) -> np.ndarray:
    columns = []
    for i in range(skip, skip + STRETCH):
        at = nodes.point + 1 + i if ahead else nodes.point - i
        columns.append(np.clip(at, 0, len(passes) - 1))
    at = np.array(columns)
    s, z = passes.s[at], passes.z[at]
    s = s - s.mean(axis=0)
    slope: np.ndarray = (s * z).sum(axis=0) / np.maximum((s * s).sum(axis=0), 1e-9)
    whole = (passes.leg[at] == nodes.leg).all(axis=0)
    return np.where(whole, slope, np.nan)


def regular(
    passes: Passes, segments: Segments, nodes: Nodes, courses: List[Course], read: np.ndarray, strong_bend: float
) -> np.ndarray:
    """Mask (lines,) of the courses whose sizes are steady and whose bends are large and sharp enough."""
    near, far = bend_near_and_far(passes, nodes)
    few = np.minimum(segments.count[segments.of_point[nodes.point]], segments.count[segments.of_point[nodes.other]])
    measured = (few >= STRETCH) & nodes.fine & ~nodes.along
    result = np.zeros(len(courses), bool)
    for i, course in enumerate(courses):
        k = course.nodes[~read[course.nodes]]
        is_step = nodes.kind[k[0]] == STEP
        fine = k[nodes.fine[k]] if np.count_nonzero(nodes.fine[k]) >= 3 else k
        size = nodes.size[fine]
        usual = float(np.median(size))
        spread = 1.4826 * float(np.median(np.abs(size - usual)))
        noise = float(np.median(size / nodes.t[fine]))
        unsteady = np.sqrt(max(spread**2 - noise**2, 0.0)) / usual
        if is_step:
            result[i] = unsteady <= STEADY_STEP
            continue
        across = k[~nodes.along[k]]
        if np.count_nonzero(nodes.along[k]) >= LEAST_RUN:
            result[i] = True  # walked along: its depth has been looked at
            continue
        here, beyond = near[across], far[across]
        known = np.isfinite(here) & np.isfinite(beyond)
        sharp = True
        if np.count_nonzero(known) >= 3:
            n, f = float(np.median(here[known])), float(np.median(beyond[known]))
            sharp = f < 0.5 * usual or n > SHARP * f
        well = k[measured[k]]
        if len(well) >= max(3, WELL_SHARE * len(k)):
            size = nodes.size[well]
            spread = float(np.sqrt(max(np.var(size) - np.median(size / nodes.t[well]) ** 2, 0.0)))
            steady = spread <= STEADY_WELL * float(np.median(size))
        else:
            steady = unsteady <= STEADY_BEND
        result[i] = sharp and steady and usual >= strong_bend
    return result


def shadows(nodes: Nodes, courses: List[Course], evidence: np.ndarray) -> np.ndarray:
    """Mask (lines,) of the bends that are foot or top of a step, or steps that are the steep side between two bends."""
    result = np.zeros(len(courses), bool)
    kinds = np.array([nodes.kind[c.nodes[0]] for c in courses])
    steps = np.flatnonzero(kinds == STEP)
    if not len(steps):
        return result
    k = np.concatenate([courses[i].nodes for i in steps])
    of = np.concatenate([np.full(len(courses[i].nodes), i) for i in steps])
    tree = cKDTree(np.column_stack([nodes.x[k], nodes.y[k]]))
    beside: dict = {}
    for i in np.flatnonzero(kinds != STEP).tolist():
        c = courses[i].nodes
        away, at = tree.query(np.column_stack([nodes.x[c], nodes.y[c]]), distance_upper_bound=4.0)
        found = np.isfinite(away)
        if not found.any():
            continue
        step = int(np.bincount(of[at[found]]).argmax())
        close = away[found][of[at[found]] == step]
        if np.count_nonzero(close < 1.5 * SHADOW) > 0.5 * len(c):
            beside.setdefault(step, []).append(i)
    for step, bends in beside.items():
        steep = float(np.median(nodes.size[courses[step].nodes])) >= STEEP_STEP
        both = len({int(kinds[i]) for i in bends if evidence[i] > 0.7 * evidence[step]}) == 2
        if steep and both:
            result[step] = True
        else:
            result[bends] = True
    return result
