"""Drawn courses as the lines and the marks of points that later stages get."""

from __future__ import annotations

from typing import List, Tuple

import numpy as np

from ..points.pointset import PointSet
from .candidates import CONVEX, STEP
from .courses import Course, Listed, listed
from .drawn import Drawn
from .forks import join_forks
from .found import Features, FoundKind, FoundLine
from .groups import group_mean, group_median, neighbours
from .nodes import Nodes
from .passes import Passes

#: Slopes on the two sides of a bend go the same way where the flatter has not this share of the steeper.
FLAT = 0.3
#: Walk points on either side of a gate that a line explains.
EXPLAINED = 2
#: Places of a run farther apart (m) do not belong to one stretch.
RUN_GAP = 8.0


def hand_on(
    points: PointSet, passes: Passes, nodes: Nodes, courses: List[Course], read: np.ndarray, drawn: List[Drawn],
    evidence: np.ndarray, strong: np.ndarray, noise: float,
) -> Features:  # fmt: skip
    """The lines, strong ones first and these by evidence, and what points have to do with them."""
    order = np.lexsort((-evidence, ~strong))
    courses, drawn = [courses[i] for i in order], [drawn[i] for i in order]
    evidence, strong = evidence[order], strong[order]
    every = listed(courses)
    there = ~read[every.k]
    k, of = every.k[there], every.of[there]
    kinds = _kinds(passes, nodes, k, of, len(courses))
    sizes = group_median(nodes.size[k], of, len(courses))
    pairs = np.unique(np.column_stack([np.tile(of, 2), np.append(nodes.leg[k], passes.leg[nodes.other[k]])]), axis=0)
    shared = np.bincount(pairs[:, 0], minlength=len(courses))
    bridged = _bridged(nodes, every, read, np.array([course.closed for course in courses], bool))
    start = np.cumsum(every.counts) - every.counts
    of_vertex = np.repeat(np.arange(len(drawn)), [len(d.plan) for d in drawn])
    rise = np.concatenate([d.top[:, 2] - d.foot[:, 2] for d in drawn])
    steps = group_median(rise, of_vertex, len(drawn))
    doubts = group_median(np.concatenate([d.step for d in drawn]), of_vertex, len(drawn))
    lines = [
        _line(passes.origin, kinds[i], courses[i], drawn[i], bridged[start[i] + drawn[i].row[:-1] % every.counts[i]],
              (float(sizes[i]), float(steps[i]), float(doubts[i])), int(shared[i]), float(evidence[i]), bool(strong[i]))
        for i in range(len(courses))
    ]  # fmt: skip
    return Features(tuple(join_forks(lines)), *_marks(len(points), passes, nodes, k, of, strong), noise)


def _line(
    origin: np.ndarray, kind: FoundKind, course: Course, drawn: Drawn, bridged: np.ndarray,
    sizes: Tuple[float, float, float], passes: int, evidence: float, strong: bool,
) -> FoundLine:  # fmt: skip
    foot, top = drawn.foot + origin, drawn.top + origin
    step = kind == FoundKind.STEP
    return FoundLine(
        kind=kind,
        easting=foot[:, 0],
        northing=foot[:, 1],
        height=foot[:, 2],
        top=top if step else np.empty((0, 3)),
        sigma_plan=drawn.plan,
        sigma_height=drawn.height,
        step=sizes[1] if step else float("nan"),
        sigma_step=sizes[2] if step else float("nan"),
        bend=float("nan") if step else sizes[0],
        passes=passes,
        evidence=evidence,
        strong=strong,
        bridged=bridged,
        closed=course.closed,
    )


def _kinds(passes: Passes, nodes: Nodes, k: np.ndarray, of: np.ndarray, many: int) -> List[FoundKind]:
    """What the ground does at each of ``many`` courses of nodes ``k``, by the slopes of the passes on both sides."""
    across = ~nodes.along[k]
    last = len(passes) - 1
    here = nodes.point[k[across]]
    back, fore = np.maximum(here - 2, 0), np.minimum(here + 3, last)
    middle = (passes.z[here] + passes.z[np.minimum(here + 1, last)]) / 2
    sign = np.where(nodes.kind[k[across]] == CONVEX, -1.0, 1.0)
    rise = np.column_stack([sign * (passes.z[back] - middle), sign * (passes.z[fore] - middle)])
    flatter = group_median(rise.min(axis=1), of[across], many)
    steeper = group_median(rise.max(axis=1), of[across], many)
    # What a section gives says itself whether both its sides are steep.
    given = group_mean(np.isfinite(nodes.height[k]).astype(float), of, many) > 0.5
    sided = group_mean(nodes.sided[k].astype(float), of, many) > 0.5
    one_way = np.where(given, sided, flatter <= FLAT * steeper)
    kind = np.zeros(many, np.int64)
    kind[of] = nodes.kind[k]
    names = {True: {True: FoundKind.TOP, False: FoundKind.RIDGE}, False: {True: FoundKind.TOE, False: FoundKind.VALLEY}}
    return [
        FoundKind.STEP if number == STEP else names[number == CONVEX][one]
        for number, one in zip(kind.tolist(), one_way.tolist())
    ]


def _bridged(nodes: Nodes, every: Listed, read: np.ndarray, closed: np.ndarray) -> np.ndarray:
    """Mask (n,) of the listed nodes after which the line touches a reading, or a gap longer than twice the usual."""
    _, after = neighbours(every.counts)
    number = np.arange(len(after))
    start = np.cumsum(every.counts) - every.counts
    after = np.where((after == number) & closed[every.of], start[every.of], after)
    k, onward = every.k, every.k[after]
    long = np.hypot(nodes.x[onward] - nodes.x[k], nodes.y[onward] - nodes.y[k])
    linked = after != number
    usual = group_median(long[linked], every.of[linked], len(every.counts))[every.of]
    result: np.ndarray = read[k] | read[onward] | ((long > 2.2 * usual) & (long > 3.0))
    return result


def _marks(
    n: int, passes: Passes, nodes: Nodes, k: np.ndarray, of: np.ndarray, strong: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """``on_line, step_after, explained`` (n,) of :class:`Features`, for nodes ``k`` of lines ``of``."""
    on_line = np.full(n, -1, np.int64)
    step_after, explained = np.zeros(n, bool), np.zeros(n, bool)
    order = np.argsort(-of, kind="stable")  # the strongest line comes last and counts
    k, of = k[order], of[order]
    across = ~nodes.along[k]
    crossing, line = k[across], of[across]
    for point in (nodes.point[crossing], nodes.other[crossing]):
        on_line[passes.index[point]] = line
    walked, line = _walked_on(passes, nodes, k[~across], of[~across])
    on_line[passes.index[walked]] = line
    explained[passes.index[walked[strong[line]]]] = True
    crossing = crossing[strong[of[across]]]
    for shift in range(-EXPLAINED, EXPLAINED + 2):
        at = np.clip(nodes.point[crossing] + shift, 0, len(passes) - 1)
        at = at[passes.leg[at] == nodes.leg[crossing]]
        explained[passes.index[at]] = True
    step_after[passes.index[nodes.point[crossing[nodes.kind[crossing] == STEP]]]] = True
    return on_line, step_after, explained


def _walked_on(passes: Passes, nodes: Nodes, k: np.ndarray, of: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Walk points along the places ``k`` of runs: each and all to the next of the same line on its leg; and lines."""
    points, lines = [np.empty(0, np.int64)], [np.empty(0, np.int64)]
    for point in (nodes.point[k], nodes.other[k]):
        order = np.lexsort((point, -of))
        at, line = point[order], of[order]
        a, b = at[:-1], at[1:]
        near = (line[1:] == line[:-1]) & (passes.leg[a] == passes.leg[b]) & (passes.s[b] - passes.s[a] < RUN_GAP)
        counts = (b - a)[near]
        start = np.repeat(a[near], counts)
        points += [at, start + np.arange(len(start)) - np.repeat(np.cumsum(counts) - counts, counts)]
        lines += [line, np.repeat(line[:-1][near], counts)]
    point, line = np.concatenate(points), np.concatenate(lines)
    order = np.argsort(-line, kind="stable")
    return point[order], line[order]
