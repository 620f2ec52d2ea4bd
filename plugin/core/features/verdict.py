"""Which courses are lines: regular enough, sharp enough, and not another's shadow."""

from __future__ import annotations

from typing import Dict, List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .alongside import LEAST_RUN
from .candidates import CONCAVE, CONVEX, STEEP_SIDE, STEP
from .courses import Course, listed
from .groups import group_mean, group_median
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
#: A bend goes along with another if so many of its nodes (share) have one so near (m).
COMPANION, COMPANION_SHARE = 4.5, 0.6
#: A bend so near a step (m) is its foot or top.
SHADOW = 0.7
#: It is an edge of its own if so many of its nodes (share) stand out so far, and the step is higher than kerbs (m).
SEEN_SHARE, SEEN_T, OVER_KERBS = 0.5, 2.2, 0.22


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
    passes: Passes, segments: Segments, nodes: Nodes, courses: List[Course], read: np.ndarray, strong_bend: float,
    enough: np.ndarray,
) -> np.ndarray:  # fmt: skip
    """Mask (lines,) of the courses whose sizes are steady and whose bends are large and sharp enough.

    ``enough``: (lines,) bool, the evidence is.
    """
    many = len(courses)
    every = listed(courses)
    there = ~read[every.k]
    k, of = every.k[there], every.of[there]
    own = nodes.take(k)
    size, usual, unsteady = _unsteady(own, of, own.fine, many)
    steps = group_mean((own.kind == STEP).astype(float), of, many) > 0.5
    near, far = bend_near_and_far(passes, own)
    known = np.isfinite(near) & np.isfinite(far) & ~own.along
    n, f = group_median(near[known], of[known], many), group_median(far[known], of[known], many)
    smooth = (np.bincount(of[known], minlength=many) >= 3) & (f >= 0.5 * usual) & (n <= SHARP * f)
    few = np.minimum(segments.count[segments.of_point[own.point]], segments.count[segments.of_point[own.other]])
    well = (few >= STRETCH) & own.fine & ~own.along
    count, wells = np.bincount(of, minlength=many), np.bincount(of[well], minlength=many)
    mean = group_mean(size[well], of[well], many)
    spread = group_mean(size[well] ** 2, of[well], many) - mean**2
    noise = group_median(size[well] / own.t[well], of[well], many)
    even = np.sqrt(np.maximum(spread - noise**2, 0)) <= STEADY_WELL * mean
    steady = np.where(wells >= np.maximum(3, WELL_SHARE * count), even, unsteady <= STEADY_BEND)
    # Of what is walked along the depth has been looked at.
    walked = np.bincount(of[own.along], minlength=many) >= LEAST_RUN
    bends = walked | (~smooth & steady & (usual >= strong_bend))
    result: np.ndarray = np.where(steps, unsteady <= STEADY_STEP, bends)
    # A bend that is large and sharp and goes along with a regular one the other way is the rest of that ditch or bank.
    rest = ~steps & ~smooth & (usual >= strong_bend) & ~result
    for _ in range(2):  # the bottom beside one edge, then the other edge beside the bottom
        result |= rest & _companions(nodes, courses, result & enough)
    return result


def _companions(nodes: Nodes, courses: List[Course], sure: np.ndarray) -> np.ndarray:
    """Mask (lines,) of the bends most of whose nodes lie near a ``sure`` course of bends the other way."""
    every = listed(courses)
    kind = nodes.kind[every.k]
    result = np.zeros(len(courses), bool)
    xy = np.column_stack([nodes.x[every.k], nodes.y[every.k]])
    for own, other in ((CONVEX, CONCAVE), (CONCAVE, CONVEX)):
        base = sure[every.of] & (kind == other)
        asked = np.flatnonzero(kind == own)
        if not base.any() or not len(asked):
            continue
        away = cKDTree(xy[base]).query(xy[asked], distance_upper_bound=COMPANION)[0]
        share = group_mean(np.isfinite(away).astype(float), every.of[asked], len(courses))
        result |= np.nan_to_num(share) >= COMPANION_SHARE
    return result


def _unsteady(own: Nodes, of: np.ndarray, fine: np.ndarray, many: int) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Sizes of the nodes, the usual one of each course, and how much they scatter beside their noise (share).

    By the fine ones where there are three at least.
    """
    fine = fine | (np.bincount(of[fine], minlength=many) < 3)[of]
    size, group = own.size[fine], of[fine]
    usual = group_median(size, group, many)
    spread = 1.4826 * group_median(np.abs(size - usual[group]), group, many)
    # The height of a kerb may change along it, but neighbours are alike.
    same = group[1:] == group[:-1]
    change = 1.4826 / np.sqrt(2) * group_median(np.abs(np.diff(size))[same], group[1:][same], many)
    step = group_mean((own.kind == STEP).astype(float), of, many) > 0.5
    spread = np.where(step, np.fmin(spread, change), spread)
    noise = group_median(size / np.maximum(own.t[fine], 0.1), group, many)
    return own.size, usual, np.sqrt(np.maximum(spread**2 - noise**2, 0)) / usual


def shadows(nodes: Nodes, courses: List[Course], evidence: np.ndarray) -> np.ndarray:
    """Mask (lines,) of the bends that are foot or top of a step, or steps that are the steep side between two bends."""
    result = np.zeros(len(courses), bool)
    kinds = np.array([nodes.kind[c.nodes[0]] for c in courses])
    steps = np.flatnonzero(kinds == STEP)
    if not len(steps):
        return result
    every = listed(courses)
    step_nodes = nodes.kind[every.k] == STEP
    k, of = every.k[step_nodes], every.of[step_nodes]
    tree = cKDTree(np.column_stack([nodes.x[k], nodes.y[k]]))
    c, bend_of = every.k[~step_nodes], every.of[~step_nodes]
    away, at = tree.query(np.column_stack([nodes.x[c], nodes.y[c]]), distance_upper_bound=1.5 * SHADOW)
    close = np.isfinite(away)
    key, count = np.unique(np.column_stack([bend_of[close], of[at[close]]]), axis=0, return_counts=True)
    usual = group_median(nodes.size[every.k], every.of, len(courses))
    # Bends that are but the ends of high steps, or guessed from one point, tell nothing of their own.
    seen = group_mean((nodes.t[every.k] > SEEN_T).astype(float), every.of, len(courses))
    # Between two steep sides there is the bottom of a ditch; a kerb has one.
    both = group_mean((~nodes.sided[every.k]).astype(float), every.of, len(courses)) > SEEN_SHARE
    bottom = (kinds == CONCAVE) & both & (usual >= 2 * STEEP_SIDE)
    beside: Dict[int, List[int]] = {}
    for (bend, step), number in zip(key.tolist(), count.tolist()):
        if number > 0.5 * every.counts[bend]:
            beside.setdefault(step, []).append(bend)
    for step, bends in beside.items():
        told = [i for i in bends if evidence[i] > 0.5 * evidence[step] and seen[i] > SEEN_SHARE]
        if any(bottom[i] or (kinds[i] == CONVEX and usual[step] >= OVER_KERBS) for i in told):
            result[step] = True
        else:
            result[bends] = True
    # Beside several steps, as along a street past the mouth of another, it is foot or top of them all.
    steps = ~result[key[:, 1]] & ~bottom[key[:, 0]]
    among = np.bincount(key[steps, 0], weights=count[steps], minlength=len(courses))
    result |= among > 0.5 * every.counts
    return result
