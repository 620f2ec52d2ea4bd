"""Courses of lines: chains and runs that are parts of the same line made one, and how much they tell."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .candidates import STEP
from .nodes import Nodes

#: Nodes of two courses so near (m) are of the same line.
SAME_LINE = 0.45
#: Gaps up to this (m) are bridged where both ends agree, and how far an end may be off (m, and m a metre of gap).
BRIDGE, OFF, OFF_SHARE = 15.0, 0.35, 0.10
#: Nodes that tell the direction of an end.
END_NODES = 5


@dataclass(frozen=True)
class Course:
    """Numbers of nodes in order; ``closed``: the last is joined to the first."""

    nodes: np.ndarray
    closed: bool = False


def side_of(nodes: Nodes, course: Course) -> int:
    """1 where the ground rises to the left of the course, -1 to the right, 0 where that is not told."""
    k = course.nodes
    dx, dy = np.gradient(nodes.x[k]), np.gradient(nodes.y[k])
    left = np.where(nodes.sided[k], dx * nodes.ey[k] - dy * nodes.ex[k], 0.0)
    return int(np.sign(np.sum(np.sign(left))))


def merge_courses(nodes: Nodes, courses: List[Course]) -> List[Course]:
    """Courses with nodes beside each other made one, in the order along the longest."""
    if len(courses) < 2:
        return courses
    of = np.concatenate([np.full(len(c.nodes), i) for i, c in enumerate(courses)])
    k = np.concatenate([c.nodes for c in courses])
    # Kinds lie on floors of their own.
    tree = cKDTree(np.column_stack([nodes.x[k], nodes.y[k], 100.0 * nodes.kind[k]]))
    pairs = tree.query_pairs(SAME_LINE, output_type="ndarray")
    a, b = of[pairs[:, 0]], of[pairs[:, 1]]
    agree = a != b
    sided = nodes.sided[k[pairs[:, 0]]] & nodes.sided[k[pairs[:, 1]]]
    same = (nodes.ex[k[pairs]] * nodes.ex[k[pairs[:, ::-1]]] + nodes.ey[k[pairs]] * nodes.ey[k[pairs[:, ::-1]]])[:, 0]
    agree &= ~sided | (same > 0)
    key, count = np.unique(np.sort(np.column_stack([a, b])[agree], axis=1), axis=0, return_counts=True)
    parent = list(range(len(courses)))
    for (i, j), number in zip(key.tolist(), count.tolist()):
        if number >= 2:
            parent[_root(parent, i)] = _root(parent, j)
    groups: Dict[int, List[int]] = {}
    for i in range(len(courses)):
        groups.setdefault(_root(parent, i), []).append(i)
    return [courses[g[0]] if len(g) == 1 else _union(nodes, [courses[i] for i in g]) for g in groups.values()]


def _root(parent: List[int], i: int) -> int:
    while parent[i] != i:
        parent[i] = parent[parent[i]]
        i = parent[i]
    return i


def _length(nodes: Nodes, course: Course) -> float:
    k = course.nodes
    return float(np.hypot(np.diff(nodes.x[k]), np.diff(nodes.y[k])).sum())


def _union(nodes: Nodes, courses: List[Course]) -> Course:
    longest = max(courses, key=lambda c: _length(nodes, c))
    others = np.unique(np.concatenate([c.nodes for c in courses if c is not longest]))
    others = others[~np.isin(others, longest.nodes)]
    base = longest.nodes
    place = np.append(0.0, np.cumsum(np.hypot(np.diff(nodes.x[base]), np.diff(nodes.y[base]))))
    where, away = along(
        np.column_stack([nodes.x[base], nodes.y[base]]), np.column_stack([nodes.x[others], nodes.y[others]])
    )
    near = away < 2 * SAME_LINE
    every = np.append(base, others[near])
    order = np.argsort(np.append(place, where[near]), kind="stable")
    return Course(every[order], longest.closed)


def along(line: np.ndarray, xy: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Metres (m,) along a path (k, 2) of the nearest places to ``xy`` (m, 2), ends drawn on; and distances (m,)."""
    a, d = line[:-1], np.diff(line, axis=0)
    long = np.maximum(np.hypot(d[:, 0], d[:, 1]), 1e-9)
    start = np.append(0.0, np.cumsum(long))[:-1]
    best, where = np.full(len(xy), np.inf), np.zeros(len(xy))
    for i in range(len(a)):
        t = ((xy - a[i]) @ d[i]) / long[i]
        low = -np.inf if i == 0 else 0.0
        high = np.inf if i == len(a) - 1 else long[i]
        t = np.clip(t, low, high)
        away = np.hypot(*(xy - a[i] - t[:, None] * d[i] / long[i]).T)
        # Where a path is drawn on, what lies on it counts first.
        drawn = away + 0.02 * (np.maximum(-t, 0) + np.maximum(t - long[i], 0))
        better = drawn < best
        best[better], where[better] = drawn[better], start[i] + t[better]
    return where, best


def _end(nodes: Nodes, k: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Place and outward unit direction of the end of a course whose nodes ``k`` start there."""
    few = k[:END_NODES]
    reach = np.hypot(nodes.x[k] - nodes.x[k[0]], nodes.y[k] - nodes.y[k[0]])
    if nodes.along[k[0]]:
        few = k[: max(END_NODES, int(np.searchsorted(reach, 8.0)))]
    xy = np.column_stack([nodes.x[few], nodes.y[few]])
    middle = xy.mean(axis=0)
    _, _, axes = np.linalg.svd(xy - middle)
    out = axes[0] if axes[0] @ (xy[0] - xy[-1]) > 0 else -axes[0]
    return middle + out * ((xy[0] - middle) @ out), out


def bridge_courses(nodes: Nodes, courses: List[Course]) -> List[Course]:
    """Courses joined end to end across gaps: the same kind, the same side up, like sizes, one direction."""
    if not courses:
        return courses
    number, place, out, kind, size, side = [], [], [], [], [], []
    for i, course in enumerate(courses):
        up = side_of(nodes, course)
        usual = float(np.median(nodes.size[course.nodes]))
        for k, turn in ((course.nodes, -1), (course.nodes[::-1], 1)):
            at, direction = _end(nodes, k)
            number.append(i)
            place.append(at)
            out.append(direction)
            kind.append(nodes.kind[k[0]])
            size.append(usual)
            side.append(up * turn)  # looking outward, the left side is up
    at, direction = np.array(place), np.array(out)
    pairs = cKDTree(at).query_pairs(BRIDGE, output_type="ndarray")
    fits = []
    for a, b in pairs.tolist():
        if kind[a] != kind[b] or side[a] * side[b] > 0 or (number[a] == number[b]):
            continue
        gap = at[b] - at[a]
        long = float(np.hypot(*gap))
        off_a = abs(direction[a][0] * gap[1] - direction[a][1] * gap[0])
        off_b = abs(direction[b][0] * gap[1] - direction[b][1] * gap[0])
        ahead = direction[a] @ gap > -0.2 and direction[b] @ gap < 0.2
        alike = abs(size[a] - size[b]) < 0.5 * max(size[a], size[b])
        if ahead and alike and max(off_a, off_b) < OFF + OFF_SHARE * long and direction[a] @ direction[b] < -0.5:
            fits.append((max(off_a, off_b) + 0.1 * long, a, b))
    joined: Dict[int, int] = {}
    parent = list(range(len(courses)))
    for _, a, b in sorted(fits):
        i, j = _root(parent, number[a]), _root(parent, number[b])
        if a in joined or b in joined or i == j:
            continue
        joined[a], joined[b] = b, a
        parent[i] = j
    return _string(courses, joined)


def _string(courses: List[Course], joined: Dict[int, int]) -> List[Course]:
    """Courses strung together; end 2 i is the start of course i, 2 i + 1 its end."""
    seen = [False] * len(courses)
    result = []
    for i in range(len(courses)):
        if seen[i] or (2 * i in joined and 2 * i + 1 in joined):
            continue
        end = 2 * i if 2 * i not in joined else 2 * i + 1
        parts: List[np.ndarray] = []
        first = i
        while True:
            number, enters_at_start = end // 2, end % 2 == 0
            seen[number] = True
            parts.append(courses[number].nodes if enters_at_start else courses[number].nodes[::-1])
            leaves = end ^ 1
            if leaves not in joined:
                break
            end = joined[leaves]
        result.append(courses[first] if len(parts) == 1 else Course(np.concatenate(parts)))
    return result


def close_courses(nodes: Nodes, courses: List[Course], usual: float) -> List[Course]:
    """Courses whose ends meet, made rings: ``usual`` is the distance of the nodes of a chain, metres."""
    result = []
    for course in courses:
        k = course.nodes
        if k[0] == k[-1]:
            course = Course(k[:-1], True)
        elif len(k) >= 8 and not course.closed:
            gap = np.hypot(nodes.x[k[-1]] - nodes.x[k[0]], nodes.y[k[-1]] - nodes.y[k[0]])
            _, start = _end(nodes, k)
            _, end = _end(nodes, k[::-1])
            meets = gap < 2.5 * usual and _length(nodes, course) > 6 * gap
            towards = np.array([nodes.x[k[0]] - nodes.x[k[-1]], nodes.y[k[0]] - nodes.y[k[-1]]]) / max(gap, 1e-9)
            if meets and start @ end < 0.3 and towards @ end > 0.3:
                course = Course(k, True)
        result.append(course)
    return result


def steps_only(nodes: Nodes, course: Course) -> bool:
    """Whether a course is one of steps."""
    return bool(nodes.kind[course.nodes[0]] == STEP)
