"""Drawn courses as the lines and the marks of points that later stages get."""

from __future__ import annotations

from typing import List

import numpy as np

from ..points.pointset import PointSet
from .candidates import CONVEX, STEP
from .courses import Course
from .drawn import Drawn
from .found import Features, FoundKind, FoundLine
from .nodes import Nodes
from .passes import Passes

#: Slopes on the two sides of a bend go the same way where the flatter has not this share of the steeper.
FLAT = 0.3
#: Walk points on either side of a gate that a line explains.
EXPLAINED = 2


def hand_on(
    points: PointSet, passes: Passes, nodes: Nodes, courses: List[Course], read: np.ndarray, drawn: List[Drawn],
    evidence: np.ndarray, strong: np.ndarray, noise: float,
) -> Features:  # fmt: skip
    """The lines, strong ones first and these by evidence, and what points have to do with them."""
    order = sorted(range(len(courses)), key=lambda i: (not strong[i], -evidence[i]))
    lines = [_line(passes, nodes, courses[i], read, drawn[i], float(evidence[i]), bool(strong[i])) for i in order]
    on_line = np.full(len(points), -1, np.int64)
    step_after, explained = np.zeros(len(points), bool), np.zeros(len(points), bool)
    for number in range(len(order) - 1, -1, -1):
        i = order[number]
        k = courses[i].nodes
        k = k[~read[k]]
        walked = _walked_on(passes, nodes, k)
        on_line[passes.index[walked]] = number
        across = k[~nodes.along[k]]
        on_line[passes.index[nodes.point[across]]] = number
        on_line[passes.index[nodes.other[across]]] = number
        if not strong[i]:
            continue
        explained[passes.index[walked]] = True
        for shift in range(-EXPLAINED, EXPLAINED + 2):
            at = nodes.point[across] + shift
            good = (at >= 0) & (at < len(passes))
            good[good] &= passes.leg[at[good]] == nodes.leg[across[good]]
            explained[passes.index[at[good]]] = True
        if nodes.kind[k[0]] == STEP:
            step_after[passes.index[nodes.point[across]]] = True
    return Features(tuple(lines), on_line, step_after, explained, noise)


def _walked_on(passes: Passes, nodes: Nodes, k: np.ndarray) -> np.ndarray:
    """Walk points of the runs among nodes ``k``: from each to the next on the same leg."""
    parts = [np.empty(0, np.int64)]
    own = k[nodes.along[k]]
    for point in (nodes.point[own], nodes.other[own]):
        at = np.sort(point)
        a, b = at[:-1], at[1:]
        near = (passes.leg[a] == passes.leg[b]) & (passes.s[b] - passes.s[a] < 8.0)
        parts.append(at)
        counts = (b - a)[near]
        start = np.repeat(a[near], counts)
        parts.append(start + np.arange(len(start)) - np.repeat(np.cumsum(counts) - counts, counts))
    return np.unique(np.concatenate(parts))


def _kind(passes: Passes, nodes: Nodes, k: np.ndarray) -> FoundKind:
    """What the ground does at a course, by the slopes of the passes on both sides."""
    if nodes.kind[k[0]] == STEP:
        return FoundKind.STEP
    convex = nodes.kind[k[0]] == CONVEX
    across = k[~nodes.along[k]]
    both = True
    if len(across):
        last = len(passes) - 1
        here = nodes.point[across]
        back, fore = np.maximum(here - 2, 0), np.minimum(here + 3, last)
        middle = (passes.z[here] + passes.z[np.minimum(here + 1, last)]) / 2
        sign = -1.0 if convex else 1.0
        rise = sign * np.column_stack([passes.z[back] - middle, passes.z[fore] - middle])
        flatter, steeper = np.median(rise.min(axis=1)), np.median(rise.max(axis=1))
        both = bool(flatter > FLAT * steeper)
    if convex:
        return FoundKind.RIDGE if both else FoundKind.TOP
    return FoundKind.VALLEY if both else FoundKind.TOE


def _line(
    passes: Passes, nodes: Nodes, course: Course, read: np.ndarray, drawn: Drawn, evidence: float, strong: bool
) -> FoundLine:
    k = course.nodes[~read[course.nodes]]
    kind = _kind(passes, nodes, k)
    origin = passes.origin
    foot, top = drawn.foot + origin, drawn.top + origin
    is_step = kind == FoundKind.STEP
    rise = foot[:, 2] * 0 + (drawn.top - drawn.foot)[:, 2]
    usual = float(np.median(rise)) if is_step else float("nan")
    return FoundLine(
        kind=kind,
        easting=foot[:, 0],
        northing=foot[:, 1],
        height=foot[:, 2],
        top=top if is_step else np.empty((0, 3)),
        sigma_plan=drawn.plan,
        sigma_height=drawn.height,
        step=usual,
        sigma_step=float(np.median(drawn.step)) if is_step else float("nan"),
        bend=float("nan") if is_step else float(np.median(nodes.size[k])),
        passes=len(np.unique(np.append(nodes.leg[k], passes.leg[nodes.other[k]]))),
        evidence=evidence,
        strong=strong,
        bridged=_bridged(nodes, course, read, drawn),
        closed=course.closed,
    )


def _bridged(nodes: Nodes, course: Course, read: np.ndarray, drawn: Drawn) -> np.ndarray:
    """Mask (v - 1,) of the stretches between vertices that touch a reading, or a gap longer than twice the usual."""
    k = course.nodes
    long = np.hypot(np.diff(nodes.x[np.append(k, k[0])]), np.diff(nodes.y[np.append(k, k[0])]))
    usual = float(np.median(long[:-1])) if len(k) > 1 else 0.0
    gap = (long > 2.2 * usual) & (long > 3.0)
    after = np.append(k[1:], k[0])
    bridged = dict(zip(k.tolist(), (gap | read[k] | read[after]).tolist()))
    return np.array([bridged[node] for node in drawn.node[:-1].tolist()], bool)
