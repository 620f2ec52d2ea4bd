"""Courses of lines: chains and runs that are parts of the same line made one."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .groups import group_median, neighbours
from .nodes import Nodes

#: Nodes of two courses so near (m) are of the same line.
SAME_LINE = 0.45
#: Nodes of different passes so near to each other (m) say the same.
TOO_NEAR = 0.5
#: Gaps up to this (m) are bridged where both ends agree, and how far an end may be off (m, and m a metre of gap).
BRIDGE, OFF, OFF_SHARE = 15.0, 0.35, 0.10
#: Nodes that tell the direction of an end.
END_NODES = 5
#: Fewer nodes than so beyond a link so many times as long as usual, and longer than so (m), are of no line whose
#: direction over so many nodes turns there by more than this (cosine of 30 degrees).
TAIL, LONG_LINK, LEAST_LONG, DIRECTION, AHEAD = 4, 2.2, 3.0, 4, 0.866
#: A course of so many nodes, and so many times as long as the gap between its ends, may be a ring.
LEAST_RING, RING_SHARE = 8, 6.0


@dataclass(frozen=True)
class Course:
    """Numbers of nodes in order; ``closed``: the last is joined to the first."""

    nodes: np.ndarray
    closed: bool = False


@dataclass(frozen=True)
class Listed:
    """The nodes of l courses one after another: ``k`` (n,) their numbers, ``of`` (n,) the course, ``counts`` (l,)."""

    k: np.ndarray
    of: np.ndarray
    counts: np.ndarray


def listed(courses: List[Course]) -> Listed:
    """All nodes of courses in one list."""
    counts = np.array([len(course.nodes) for course in courses], np.int64)
    k = np.concatenate([course.nodes for course in courses]) if courses else np.empty(0, np.int64)
    return Listed(k, np.repeat(np.arange(len(courses)), counts), counts)


def sides_of(nodes: Nodes, courses: List[Course]) -> np.ndarray:
    """(l,) 1 where the ground rises to the left of a course, -1 to the right, 0 where that is not told."""
    every = listed(courses)
    k = every.k
    before, after = neighbours(every.counts)
    dx, dy = nodes.x[k[after]] - nodes.x[k[before]], nodes.y[k[after]] - nodes.y[k[before]]
    left = np.where(nodes.sided[k], np.sign(dx * nodes.ey[k] - dy * nodes.ex[k]), 0.0)
    return np.sign(np.bincount(every.of, weights=left, minlength=len(courses)))


def lengths_of(nodes: Nodes, courses: List[Course]) -> np.ndarray:
    """Length (l,) of each course, metres."""
    every = listed(courses)
    _, after = neighbours(every.counts)
    k = every.k
    long = np.hypot(nodes.x[k[after]] - nodes.x[k], nodes.y[k[after]] - nodes.y[k])
    return np.bincount(every.of, weights=long, minlength=len(courses))


def merge_courses(nodes: Nodes, courses: List[Course]) -> List[Course]:
    """Courses with nodes beside each other made one, in the order along the longest."""
    if len(courses) < 2:
        return courses
    every = listed(courses)
    k, place = _samples(nodes, every)
    of = every.of[k]
    own = every.k[k]
    # Kinds lie on floors of their own.
    tree = cKDTree(np.column_stack([place, 100.0 * nodes.kind[own]]))
    pairs = tree.query_pairs(SAME_LINE, output_type="ndarray")
    pairs = pairs[of[pairs[:, 0]] != of[pairs[:, 1]]]
    a, b = own[pairs[:, 0]], own[pairs[:, 1]]
    same = nodes.ex[a] * nodes.ex[b] + nodes.ey[a] * nodes.ey[b] > 0
    pairs = pairs[same | ~(nodes.sided[a] & nodes.sided[b])]
    # Two nodes of each beside the other make them the same line.
    n = len(courses)
    met = np.concatenate([(of[one] * n + of[other]) * len(every.k) + k[one] for one, other in (pairs.T, pairs.T[::-1])])
    key, count = np.unique(np.unique(met) // len(every.k), return_counts=True)
    key = key[count >= 2]
    key = key[np.isin(key % n * n + key // n, key)]
    parent = list(range(len(courses)))
    for i, j in zip((key // n).tolist(), (key % n).tolist()):
        parent[_root(parent, i)] = _root(parent, j)
    groups: Dict[int, List[int]] = {}
    for i in range(len(courses)):
        groups.setdefault(_root(parent, i), []).append(i)
    long = lengths_of(nodes, courses)
    alone = [courses[g[0]] for g in groups.values() if len(g) == 1]
    several = [sorted(g, key=lambda i: -long[i]) for g in groups.values() if len(g) > 1]
    bases = [courses[g[0]] for g in several]
    rests = [np.concatenate([courses[i].nodes for i in g[1:]]) for g in several]
    return alone + _unions(nodes, bases, rests)


def _samples(nodes: Nodes, every: Listed) -> Tuple[np.ndarray, np.ndarray]:
    """Places (s, 2) of the listed nodes and, along runs, between them; and the listed node (s,) of each."""
    _, after = neighbours(every.counts)
    k, onward = every.k, every.k[after]
    dx, dy = nodes.x[onward] - nodes.x[k], nodes.y[onward] - nodes.y[k]
    run = nodes.along[k] & nodes.along[onward] & (nodes.leg[k] == nodes.leg[onward])
    pieces = np.where(run, np.clip(np.ceil(np.hypot(dx, dy) / (2 * SAME_LINE)), 1, 20), 1).astype(np.int64)
    row = np.repeat(np.arange(len(k)), pieces)
    share = (np.arange(len(row)) - np.repeat(np.cumsum(pieces) - pieces, pieces)) / pieces[row]
    return row, np.column_stack([nodes.x[k[row]] + share * dx[row], nodes.y[k[row]] + share * dy[row]])


def _root(parent: List[int], i: int) -> int:
    while parent[i] != i:
        parent[i] = parent[parent[i]]
        i = parent[i]
    return i


def _unions(nodes: Nodes, bases: List[Course], rests: List[np.ndarray]) -> List[Course]:
    """Each base with the nodes of its rest that lie beside it or go on from its ends, in the order along it."""
    if not bases:
        return []
    every = listed(bases)
    rest = np.concatenate(rests)
    group = np.repeat(np.arange(len(rests)), [len(r) for r in rests])
    x, y = nodes.x[every.k], nodes.y[every.k]
    _, after = neighbours(every.counts)
    number = np.arange(len(every.k))
    # Bases lie on floors of their own.
    tree = cKDTree(np.column_stack([x, y, 1e4 * every.of]))
    nearest = tree.query(np.column_stack([nodes.x[rest], nodes.y[rest], 1e4 * group]))[1]
    start = np.cumsum(every.counts) - every.counts
    place, best = np.zeros(len(rest)), np.full(len(rest), np.inf)
    for link in (np.maximum(nearest - 1, start[group]), nearest):
        link = np.where(after[link] == link, link - 1, link)
        dx, dy = x[link + 1] - x[link], y[link + 1] - y[link]
        long = np.maximum(np.hypot(dx, dy), 1e-9)
        ox, oy = nodes.x[rest] - x[link], nodes.y[rest] - y[link]
        share = (ox * dx + oy * dy) / long**2
        first, last = link == start[group], after[link + 1] == link + 1
        within = np.clip(share, np.where(first, -np.inf, 0.0), np.where(last, np.inf, 1.0))
        away = np.hypot(ox - within * dx, oy - within * dy)
        better = away < best
        best[better], place[better] = away[better], (link + within)[better]
    near = best < 2 * SAME_LINE
    k = np.append(every.k, rest[near])
    of = np.append(every.of, group[near])
    order = np.lexsort((np.append(number, place[near]), of))
    k, of = k[order], of[order]
    apart = _apart(nodes, k, of)
    k, of = k[apart], of[apart]
    counts = np.bincount(of, minlength=len(bases))
    end = np.cumsum(counts)
    return [Course(k[b - n : b], base.closed) for n, b, base in zip(counts.tolist(), end.tolist(), bases)]


def _apart(nodes: Nodes, k: np.ndarray, of: np.ndarray) -> np.ndarray:
    """Mask of nodes without those that stand at nearly the same place of their course as a surer one beside."""
    result = np.ones(len(k), bool)
    close = (of[1:] == of[:-1]) & (np.hypot(np.diff(nodes.x[k]), np.diff(nodes.y[k])) < TOO_NEAR)
    surer = nodes.sigma[k[:-1]] <= nodes.sigma[k[1:]]
    result[1:][close & surer] = False
    result[:-1][close & ~surer] = False
    return result


@dataclass(frozen=True)
class Ends:
    """The two ends of each course, ends 2 i and 2 i + 1 of course i.

    ``at``: (2 l, 2) places; ``out``: (2 l, 2) unit vectors outward.
    """

    at: np.ndarray
    out: np.ndarray


def ends_of(nodes: Nodes, courses: List[Course]) -> Ends:
    """Places and directions of the ends of courses, by their last few nodes."""
    every = listed(courses)
    start = np.cumsum(every.counts) - every.counts
    at, out = np.empty((2 * len(courses), 2)), np.empty((2 * len(courses), 2))
    few = np.arange(END_NODES)
    inside = few < every.counts[:, None]
    for end in (0, 1):
        own = np.minimum(few, every.counts[:, None] - 1)
        row = start[:, None] + (own if end == 0 else every.counts[:, None] - 1 - own)
        x, y = nodes.x[every.k[row]], nodes.y[every.k[row]]
        number = inside.sum(axis=1)
        mx, my = (x * inside).sum(axis=1) / number, (y * inside).sum(axis=1) / number
        dx, dy = (x - mx[:, None]) * inside, (y - my[:, None]) * inside
        angle = 0.5 * np.arctan2(2 * (dx * dy).sum(axis=1), (dx**2).sum(axis=1) - (dy**2).sum(axis=1))
        ux, uy = np.cos(angle), np.sin(angle)
        turn = np.where(ux * (x[:, 0] - x[:, -1]) + uy * (y[:, 0] - y[:, -1]) < 0, -1.0, 1.0)
        ux, uy = ux * turn, uy * turn
        reach = (x[:, 0] - mx) * ux + (y[:, 0] - my) * uy
        at[end::2] = np.column_stack([mx + reach * ux, my + reach * uy])
        out[end::2] = np.column_stack([ux, uy])
    return Ends(at, out)


def bridge_courses(nodes: Nodes, courses: List[Course]) -> List[Course]:
    """Courses joined end to end across gaps: the same kind, the same side up, like sizes, one direction."""
    if len(courses) < 2:
        return courses
    every = listed(courses)
    ends = ends_of(nodes, courses)
    kind = np.repeat([nodes.kind[course.nodes[0]] for course in courses], 2)
    size = np.repeat(group_median(nodes.size[every.k], every.of, len(courses)), 2)
    # Looking outward, this side is up.
    side = np.repeat(sides_of(nodes, courses), 2) * np.tile([-1, 1], len(courses))
    alone = np.repeat([course.closed for course in courses], 2)
    pairs = cKDTree(ends.at).query_pairs(BRIDGE, output_type="ndarray")
    a, b = pairs[:, 0], pairs[:, 1]
    gap = ends.at[b] - ends.at[a]
    long = np.hypot(gap[:, 0], gap[:, 1])
    off = [np.abs(ends.out[k][:, 0] * gap[:, 1] - ends.out[k][:, 1] * gap[:, 0]) for k in (a, b)]
    worst = np.maximum(off[0], off[1])
    fit = (kind[a] == kind[b]) & (a // 2 != b // 2) & (side[a] * side[b] <= 0) & ~alone[a] & ~alone[b]
    fit &= ((ends.out[a] * gap).sum(axis=1) > -0.2) & ((ends.out[b] * gap).sum(axis=1) < 0.2)
    fit &= np.abs(size[a] - size[b]) < 0.5 * np.maximum(size[a], size[b])
    fit &= (worst < OFF + OFF_SHARE * long) & ((ends.out[a] * ends.out[b]).sum(axis=1) < -0.5)
    cost = worst[fit] + 0.1 * long[fit]
    joined: Dict[int, int] = {}
    parent = list(range(len(courses)))
    for i, j in pairs[fit][np.argsort(cost, kind="stable")].tolist():
        one, other = _root(parent, i // 2), _root(parent, j // 2)
        if i in joined or j in joined or one == other:
            continue
        joined[i], joined[j] = j, i
        parent[one] = other
    return _string(courses, joined)


def _string(courses: List[Course], joined: Dict[int, int]) -> List[Course]:
    """Courses strung together at their ends ``joined``."""
    seen = [False] * len(courses)
    result = []
    for i in range(len(courses)):
        if seen[i] or (2 * i in joined and 2 * i + 1 in joined):
            continue
        end = 2 * i if 2 * i not in joined else 2 * i + 1
        parts: List[np.ndarray] = []
        while True:
            number, enters_at_start = end // 2, end % 2 == 0
            seen[number] = True
            parts.append(courses[number].nodes if enters_at_start else courses[number].nodes[::-1])
            if end ^ 1 not in joined:
                break
            end = joined[end ^ 1]
        result.append(courses[i] if len(parts) == 1 else Course(np.concatenate(parts)))
    return result


def close_courses(nodes: Nodes, courses: List[Course], usual: float) -> List[Course]:
    """Courses whose ends meet, made rings: ``usual`` is the distance of the nodes of a chain, metres."""
    if not courses:
        return courses
    ends = ends_of(nodes, courses)
    long = lengths_of(nodes, courses)
    towards = ends.at[0::2] - ends.at[1::2]
    gap = np.hypot(towards[:, 0], towards[:, 1])
    facing = (ends.out[0::2] * ends.out[1::2]).sum(axis=1) < 0.3
    ahead = (towards * ends.out[1::2]).sum(axis=1) > 0.3 * gap
    meets = (gap < 2.5 * usual) & (long > RING_SHARE * gap) & facing & ahead
    result = []
    for course, ring in zip(courses, meets.tolist()):
        if course.nodes[0] == course.nodes[-1]:
            result.append(Course(course.nodes[:-1], True))
        else:
            result.append(Course(course.nodes, course.closed or (ring and len(course.nodes) >= LEAST_RING)))
    return result


def without_tails(nodes: Nodes, courses: List[Course]) -> List[Course]:
    """Open courses without the few nodes at an end that lie beyond a gap and not ahead."""
    result = []
    for course in courses:
        for _ in (0, 1):  # each end in its turn
            k = course.nodes
            if not course.closed and len(k) >= TAIL + DIRECTION:
                course = Course(k[_tail(nodes, k) :])
            course = Course(course.nodes[::-1], course.closed)
        result.append(course)
    return result


def _tail(nodes: Nodes, k: np.ndarray) -> int:
    """How many of the first nodes ``k`` (n,) lie beyond a gap and not ahead of the rest."""
    xy = np.column_stack([nodes.x[k], nodes.y[k]])
    link = np.diff(xy, axis=0)
    long = np.hypot(link[:, 0], link[:, 1])
    gaps = np.flatnonzero(long[: TAIL - 1] > max(LONG_LINK * float(np.median(long)), LEAST_LONG))
    for gap in gaps[::-1].tolist():
        way = xy[gap + DIRECTION] - xy[gap + 1]
        if way @ link[gap] < AHEAD * np.hypot(*way) * long[gap]:
            return int(gap) + 1
    return 0
